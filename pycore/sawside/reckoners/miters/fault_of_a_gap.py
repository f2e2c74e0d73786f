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
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, count, length


def compute(given, show):
    """How far off a setting (degrees) or a length (inches) is, from the gap at heel and toe."""
    heel, toe, width = given.heel, given.toe, given.width
    if heel == toe == 0:
        raise Refusal(
            "impossible",
            "The joint is closed at both ends.",
            "Give the gap at the heel, at the toe, or both.",
            field="toe",
        )
    true = true_setting(given.corners)
    face = face_length(width, true)
    more, even = abs(toe - heel), min(heel, toe)
    if 4 * max(heel, toe) > face:
        raise Refusal(
            "impossible",
            f"A gap of {fine_text(max(heel, toe), show)} is more than a quarter of the joint, "
            f"which is {show.text(face)} long.",
            "Measure the gap with a feeler or a rule, or check Stock width.",
            field="toe" if toe > heel else "heel",
        )
    answers, working = {}, [f"True setting: 180 ÷ {given.corners} = {degrees_text(true)}°"]
    faults = []
    if more:
        off = wedge_off(width, true, more, at_toe=toe > heel)
        way = "too small, nearer to square," if toe > heel else "too large"
        faults.append(f"the saw was set {way} by {angle_text(off, 2)} at each of the two cuts")
        answers |= {"setting_off": off, "all_off": off / given.corners}
        more_, true_ = show.number(more), degrees_text(true)
        sign_ = "−" if toe > heel else "+"
        working.append(
            f"Wider at the {'toe' if toe > heel else 'heel'} by {more_}: arctan ({more_} × cos "
            f"{true_}° ÷ (2 × {show.number(width)} {sign_} {more_} × sin {true_}°))"
            f"{angle_equals(off)}"
        )
    if even:
        along = even * face / width
        faults.append(f"a piece is {fine_text(along, show)} short along its length")
        answers["length_off"] = on_fine_marks(along, show)
        working.append(
            f"Open evenly: {show.number(even)} ÷ cos {degrees_text(true)}° = "
            f"{show.number(along)} along the piece"
        )
    verdict = " and ".join(faults)
    answers["fault"] = " and ".join(
        name for name, there in (("Angle", more), ("Length", even)) if there
    ).capitalize()
    answers["told"] = f"{verdict[0].upper()}{verdict[1:]}."
    texts = [fine_text(each, show) if each else "closed" for each in (heel, toe)]
    words = f"A joint at the heel: {texts[0]}, at the toe: {texts[1]}. The gap is drawn wider."
    largest = float(nearby(max(heel, toe)))
    drawn = [0.04 + 0.46 * float(each) / largest for each in (heel, toe)]
    return Reckoning(
        answers=answers,
        working=tuple(working),
        drawing=open_joint(words, float(true), *drawn, texts),
    )


RECKONER = Reckoner(
    key="fault_of_a_gap",
    title="Which fault made this gap",
    asks="A mitered joint gapes: is the angle wrong, or a length?",
    words="gap, miter, open joint, heel, toe, error, fault, angle off, too short, feeler, correct",
    order=231,
    fields=(
        count("corners", "Corners", help="Of the whole ring.", default="4", least="3", most="24"),
        length(
            "width",
            "Stock width",
            help="Across the face of the miter.",
            least="1/64 in",
            most="4 ft",
        ),
        length(
            "heel",
            "Gap at the heel",
            help="At the inside of the joint, square to the cut.",
            default="0 in",
            most="6 in",
        ),
        length(
            "toe",
            "Gap at the toe",
            help="At the outside of the joint, square to the cut.",
            default="0 in",
            most="6 in",
        ),
    ),
    answers=(
        Answer("fault", "What is wrong", "text"),
        Answer("told", "How it came about", "text"),
        Answer("setting_off", "Each cut is off by", "angle"),
        Answer("all_off", "Or, other joints pulled tight, by", "angle"),
        Answer("length_off", "A piece is short by", must="agree"),
    ),
    source="Plane trigonometry; the corner itself is taken to be true.",
    compute=compute,
    example={"corners": "4", "width": "2 1/4", "heel": "0", "toe": "1/32"},
)
