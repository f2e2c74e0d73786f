"""Which fault made the gap that is seen: the setting of the saw, or the length of a piece.

What is open evenly comes from a length; what is open more at one end than at the other, from the
angle: at the toe (outside) from cuts that are too near to square, at the heel from the reverse.
"""

from sawside.drawing.miters.open_joint import open_joint
from sawside.errors import Refusal
from sawside.geometry.ring import face_length, true_setting, wedge_off
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_equals, angle_text, degrees_text
from sawside.reckoners.declaration import Reckoning
from sawside.reckoners.miters.shared.gaps.ring_fields import setting_worked


def cause_of_a_gap(given, show):
    """How far off a setting (degrees) or a length (inches) is, from the gap at heel and toe."""
    true = true_setting(given.corners)
    face = face_length(given.width, true)
    _check_gap(given, show, face)
    faults = [fault for find in (_of_angle, _of_length) if (fault := find(given, show, face))]
    names, causes, remedies, answers, lines = zip(*faults, strict=True)
    fault = " and ".join(names).capitalize()
    return Reckoning(
        main="fault",
        verdict=f"{fault}: {' and '.join(remedies)}",
        answers={
            "fault": fault,
            "told": f"{_sentence(causes)}.",
            **{key: answer for each in answers for key, answer in each.items()},
        },
        working=(setting_worked(given.corners), *lines),
        drawing=_drawing(given, show, true),
    )


def _sentence(parts):
    text = " and ".join(parts)
    return f"{text[0].upper()}{text[1:]}"


def _check_gap(given, show, face):
    largest = max(given.heel, given.toe)
    if largest == 0:
        raise Refusal(
            "impossible",
            "The joint is closed at both ends.",
            "Enter a gap at the heel, at the toe, or both.",
            field="toe",
        )
    if 4 * largest > face:
        raise Refusal(
            "impossible",
            f"A gap of {fine_text(largest, show)} is more than a quarter of the joint, which is "
            f"{show.text(face)} long.",
            "Measure the gap with a feeler gauge or a rule, or check Stock width.",
            field="toe" if given.toe > given.heel else "heel",
        )


def _of_angle(given, show, _face):
    """(name, cause, remedy, answers, line of working) of a wrong setting; None for an even gap."""
    more, at_toe = abs(given.toe - given.heel), given.toe > given.heel
    if not more:
        return None
    true = true_setting(given.corners)
    off = wedge_off(given.width, true, more, at_toe=at_toe)
    way = "too low (closer to square)" if at_toe else "too high"
    right = true + off if at_toe else true - off
    wider, turned = show.number(more), degrees_text(true)
    return (
        "Angle",
        f"the saw was set {way} by {angle_text(off)} on both cuts",
        f"{'increase' if at_toe else 'decrease'} the miter {angle_text(off)} (from "
        f"{angle_text(true)} to {angle_text(right)}) on both pieces",
        {"setting_off": off, "all_off": off / given.corners},
        f"Wider at the {'toe' if at_toe else 'heel'} by {wider}: arctan ({wider} × cos {turned}° ÷ "
        f"(2 × {show.number(given.width)} {'−' if at_toe else '+'} {wider} × sin {turned}°))"
        f"{angle_equals(off)}",
    )


def _of_length(given, show, face):
    """The same of a wrong length; None for a joint that is closed at one end."""
    even = min(given.heel, given.toe)
    if not even:
        return None
    along = even * face / given.width
    return (
        "Length",
        f"a piece is {fine_text(along, show)} short",
        f"cut the short piece again, {fine_text(along, show)} longer",
        {"length_off": on_fine_marks(along, show)},
        f"Open evenly: {show.number(even)} ÷ cos {degrees_text(true_setting(given.corners))}° = "
        f"{show.number(along)} along the piece",
    )


def _drawing(given, show, true):
    gaps = given.heel, given.toe
    texts = [fine_text(gap, show) if gap else "closed" for gap in gaps]
    words = f"A joint at the heel: {texts[0]}, at the toe: {texts[1]}. The gap is exaggerated."
    largest = float(nearby(max(gaps)))
    return open_joint(
        words, float(true), *(0.04 + 0.46 * float(gap) / largest for gap in gaps), texts
    )
