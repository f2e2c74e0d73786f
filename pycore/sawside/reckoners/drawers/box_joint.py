"""A box joint with whole pins: how many, how wide, and every line from the reference edge."""

from fractions import Fraction

from sawside.drawing.drawers.box_joint import box_joint_drawing
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.marks import GRIDS, told_mark
from sawside.lengths.words import counted
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.drawers.shared.joints.box_fields import FIELDS
from sawside.reckoners.drawers.shared.joints.box_pins import box_joint_of
from sawside.reckoners.drawers.shared.joints.hidden_groove import groove_between
from sawside.reckoners.shared.numbered import numbered
from sawside.wood.caution import Caution

_JIG = Caution(
    "Screw the jig to a miter gauge, and keep your hands clear.",
    "Screw the jig to a miter gauge, clamp the board to it, and keep your hands out of the blade’s "
    "path: it comes out behind the fence. The saw maker’s instructions for dado sets come first.",
)
_ENDS_WITHIN = Fraction(1, 32)
_SCRAP = "Test the fit on scrap. Pins should slide in by hand, with room for glue."


def compute(given, show):
    """The pins, their lines from the reference edge, the slots' depths, and how errors add up."""
    joint = box_joint_of(given, show)
    pin = _by_calipers(joint.pin, show)
    ends = {"end_slots": on_fine_marks(joint.end_slots, show, "reach")}
    rips = given.gives == "height"
    return Reckoning(
        main="height" if rips else "pin",
        answers={
            **({"height": joint.height} if rips else {}),
            "pin": pin,
            "number": joint.number,
            "lines": numbered("Line", [on_fine_marks(each, show) for each in joint.lines]),
            "first": _first(joint),
            "side_slots": on_fine_marks(joint.side_slots, show, "reach"),
            **(ends if joint.end_slots != joint.side_slots else {}),
            **({"extra": on_fine_marks(2 * given.proud, show, "reach")} if given.proud else {}),
            **_hidden(joint, show),
            "drift": on_fine_marks(joint.spaced * given.off, show),
        },
        working=tuple(_working(given, show, joint)),
        drawing=box_joint_drawing(show, given, joint, pin),
        cautions=(_drift(given, show, joint), _JIG, _SCRAP),
        verdict=_verdict(given, show, joint, pin),
    )


def _verdict(given, show, joint, pin):
    pins = counted(joint.number, "pin")
    if given.gives == "height":
        return f"Rip the boards to {show.bare(joint.height, 'go in')} for {pins}"
    return f"{pins}, {show.bare(pin)} wide each"


def _by_calipers(length, show):
    """A length on fine marks where it's exact there, or in thousandths of an inch: they add up."""
    fine = on_fine_marks(length, show)
    if fine.direction == "exact" or fine.grid.unit == "mm":
        return fine
    return told_mark(length, GRIDS[".001 in"])


def _first(joint):
    """Who begins with a pin, and who has how many."""
    names = ("Sides", "front and back") if joint.sides else ("Front and back", "sides")
    first = joint.first_pins
    return f"{names[0]}: {counted(first, 'pin')}; {names[1]}: {joint.number - first}"


def _hidden(joint, show):
    """Where the groove of a bottom doesn't show; nothing where there is no such place."""
    if joint.hidden is None:
        return {}
    place = groove_between(joint.hidden, show)
    return {"hidden": f"{place}, within a pin of the sides"}


def _drift(given, show, joint):
    total = fine_text(joint.spaced * given.off, show)
    each = fine_text(_ENDS_WITHIN / joint.spaced, show)
    return (
        f"Pins {fine_text(given.off, show)} too wide end {total} off after {joint.spaced}. To end "
        f"within {fine_text(_ENDS_WITHIN, show)}, set the jig to {each} or better, or leave the "
        "boards wide and rip them after."
    )


def _working(given, show, joint):
    pin, high, number = (*(show.number(each) for each in (joint.pin, given.height)), joint.number)
    fits = show.pure(given.height / given.pin, decimals=True)
    if given.gives == "height":
        yield f"Pins that fit: {high} ÷ {pin} = {fits}; whole, and as picked: {number}"
        total = show.rounded(joint.height, "go in")
        yield f"Board: {number} × {pin}{show.equals(total)}"
    else:
        yield f"Pins: {high} ÷ {show.number(given.pin)} = {fits}; nearest, as picked: {number}"
        yield f"Each: {high} ÷ {number} = {pin}"
    yield f"Last line: {number - 1} × {pin} = {show.number(joint.lines[-1])}"
    proud, ends = show.number(given.proud), joint.side_slots - given.proud
    yield f"Slots in the sides: {show.number(ends)} + {proud} = {show.number(joint.side_slots)}"
    if joint.end_slots != joint.side_slots:
        side, deep = show.number(given.thickness), show.number(joint.end_slots)
        yield f"Slots in front and back: {side} + {proud} = {deep}"
    if given.proud:
        yield f"Extra length: 2 × {proud} = {show.number(2 * given.proud)}"
    off, spaced = show.number(joint.spaced * given.off), joint.spaced
    yield f"Errors added up: {spaced} × {show.number(given.off)} = {off}"


RECKONER = Reckoner(
    key="box_joint",
    title="Box joint",
    asks="How wide are the pins, and where does each one go?",
    words=(
        "box joint, box joints, finger joint, finger joints, pins, fingers, box joint jig, pin "
        "width, whole pins, drawer joint"
    ),
    order=770,
    job="doors and drawers",
    picture={"wood": "M4 5h17v6h13v6H21v6h13v6H21v6H4z", "chalk": "M38 5v30", "ink": "M21 5v30"},
    basic=("height", "thickness", "pin", "gives"),
    fields=FIELDS,
    answers=(
        Answer("height", "Rip the boards to", must="go in"),
        Answer("pin", "Pin width", must="agree"),
        Answer("number", "Pins in the height", "count"),
        Answer("lines", "Lines, from the reference edge", "lengths", must="agree"),
        Answer("first", "Pins on each board", "text"),
        Answer("side_slots", "Slot depth in the sides", must="reach"),
        Answer("end_slots", "Slot depth in front and back", must="reach"),
        Answer("extra", "Extra length, jointed at both ends", must="reach"),
        Answer("hidden", "Bottom groove", "text"),
        Answer("drift", "Off at the far edge by a setting error", must="agree"),
    ),
    source=(
        "Arithmetic: height = pins × width; a pin of one board is a slot of the other. Common "
        "practice, no source: pins left 1/32 in proud, an odd number so both edges are alike."
    ),
    compute=compute,
    example={"height": "5", "thickness": "1/2", "pin": "1/4"},
)
