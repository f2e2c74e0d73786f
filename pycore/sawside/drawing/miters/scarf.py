"""A scarfed run from above: the whole with its joints, and one joint large."""

from math import cos, radians, sin

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon, rectangle
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_text

_WIDE = 316
_MARGIN = 14
_MOST_SHOWN = 4
_BAR = 16


@lazy
def scarf_run(show, given, joints, scarf):
    """Drawn in pixels of a narrow screen: the run and the joint have scales of their own."""
    long = _WIDE - 2 * _MARGIN
    scale = long / float(given.run)
    shapes = [rectangle(_MARGIN, 0, _WIDE - _MARGIN, _BAR)]
    shown = joints[:_MOST_SHOWN]
    for row, joint in enumerate(shown):
        x = _MARGIN + float(nearby(joint)) * scale
        y = _BAR + 18 + 22 * row
        shapes.append(dimension((_MARGIN, _BAR), (x, _BAR), _BAR - y, show.brief(joint), "answer"))
    for joint in joints:
        x = _MARGIN + float(nearby(joint)) * scale
        shapes.append(line((x + 5, 0), (x - 5, _BAR), "cut"))
    text = f"run {show.brief(given.run)}"
    shapes.append(dimension((_MARGIN, 0), (_WIDE - _MARGIN, 0), 18, text, "given"))
    top = _BAR + 22 * len(shown) + 66
    shapes += _joint(show, given, scarf, top)
    return drawing(_words(show, given, joints, scarf), (0, -38, _WIDE, top + 166), shapes)


def _words(show, given, joints, scarf):
    places = ", ".join(show.brief(joint) for joint in joints)
    return (
        f"A run of {show.brief(given.run)} seen from above, face at the bottom, with "
        f"{len(joints)} {'joint' if len(joints) == 1 else 'joints'}, measured from the left end to "
        f"the center: {places}. Below, one joint: at {angle_text(scarf.degrees)} from square it "
        f"overlaps by {show.brief(scarf.overlap)}, and its face is {show.brief(scarf.face)} long. "
        "The right piece laps the left one."
    )


def _joint(show, given, scarf, top):
    """One joint, its parts drawn apart by a saw's width; the slope is drawn at most 70 degrees."""
    turn = radians(min(float(nearby(scarf.degrees)), 70))
    thick = min(64, 200 * cos(turn) / max(sin(turn), 0.01))
    lap = thick * sin(turn) / cos(turn)
    middle, gap, foot = _WIDE / 2, 5, top + thick
    high, low = middle + lap / 2, middle - lap / 2
    near, far = _MARGIN, _WIDE - _MARGIN
    left = [(near, top), (high - gap, top), (low - gap, foot), (near, foot)]
    right = [(high + gap, top), (far, top), (far, foot), (low + gap, foot)]
    overlap, face = f"overlap {show.brief(scarf.overlap)}", f"cut face {show.brief(scarf.face)}"
    thickness, setting = f"thickness {show.brief(given.thickness)}", angle_text(scarf.degrees)
    return [
        polygon(left),
        polygon(right),
        dimension((low, top), (high, top), 18, overlap, "answer"),
        label((near + 4, foot + 20), thickness, "note", "start"),
        label((far - 4, foot + 20), setting, "note", "end"),
        label((middle, foot + 52), face, "name"),
        label((near + 6, top + 16), "wall side", "note", "start"),
        label((far - 6, foot - 14), "face side", "note", "end"),
        label((middle, foot + 82), "right piece laps the left", "note"),
    ]
