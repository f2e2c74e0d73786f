"""Dovetails at a corner: the tails' width, and every line at the end and at the shoulder."""

from sawside.drawing.drawers.tails import tails_drawing
from sawside.geometry.angles import arctangent
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.show import angle_equals
from sawside.lengths.words import counted
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.drawers.shared.joints.dovetail_fields import FIELDS
from sawside.reckoners.drawers.shared.joints.hidden_groove import groove_between
from sawside.reckoners.drawers.shared.joints.tails import dovetails_of
from sawside.wood.caution import Caution

_CLAMP = Caution(
    "Clamp the board, and pare away from yourself.",
    "Clamp the board, and keep both hands behind the chisel. With a router, clamp a backer behind "
    "the board and wear eye protection. The router and jig makers’ instructions come first.",
)
_MARKED = "Cut the tails first and mark the pins from them. Keep the same edge down on every part."


def compute(given, show):
    """The tails and pins, their lines from the reference edge, and what may be too narrow."""
    joint = dovetails_of(given, show)
    angle = arctangent(1 / given.slope)
    return Reckoning(
        answers={
            "at_end": _lines(joint.at_end, show),
            "at_shoulder": _lines(joint.at_shoulder, show),
            "tail": on_fine_marks(joint.tail, show),
            "tails": joint.tails,
            "wide_pin": on_fine_marks(joint.pin + 2 * joint.lean, show),
            "tail_line": on_fine_marks(joint.deep, show),
            "pin_line": on_fine_marks(given.tail_board, show),
            "hidden": f"{groove_between(joint.at_shoulder[0], show)}, within the first tail",
            "angle": angle,
        },
        working=tuple(_working(given, show, joint, angle)),
        drawing=tails_drawing(show, joint, counted(joint.tails, "tail")),
        cautions=(*_weak(given, show, joint), _MARKED, _CLAMP),
        verdict=f"Tail lines from the edge ({counted(joint.tails, 'tail')})",
    )


def _lines(tails, show):
    """Both lines of each tail, from the reference edge."""
    return [
        (f"Tail {number} {which}", on_fine_marks(place, show))
        for number, ends in enumerate(tails, 1)
        for which, place in zip(("from", "to"), ends, strict=True)
    ]


def _weak(given, show, joint):
    """What is too narrow to cut, or to hold."""
    tool = fine_text(given.tool, show)
    if joint.pin < given.tool and joint.tails > 1:
        yield (
            f"Pins {fine_text(joint.pin, show)} wide leave no room for a {tool} chisel or bit "
            "between the tails. Use wider pins or a narrower tool."
        )
    narrow = joint.tail - 2 * joint.lean
    if narrow < given.tool:
        yield (
            f"At the shoulder line the tails are {fine_text(narrow, show)} wide, narrower than "
            f"the {tool} chisel or bit. Use fewer tails."
        )
    if joint.half < joint.pin / 2:
        yield "A thin half pin can split off at the edge. Half a pin is the least that’s usual."
    if not 6 <= given.slope <= 8:
        yield (
            "A slope of 6 to 1 for softwood, 8 to 1 for hardwood is usual (shop practice). "
            "Straighter tails pull out; more flare leaves weak corners."
        )


def _working(given, show, joint, angle):
    high, half, pin, deep, tail, lean = (
        show.number(each)
        for each in (joint.height, joint.half, joint.pin, joint.deep, joint.tail, joint.lean)
    )
    many, slope = joint.tails, show.pure(given.slope)
    if given.kind == "blind":
        yield f"Tail length: {show.number(given.pin_board)} − {show.number(given.lap)} = {deep}"
    between = f" − {many - 1} × {pin}" if many > 1 else ""
    yield f"Tail: ({high} − 2 × {half}{between}) ÷ {many} = {tail}"
    yield f"Sides come in {deep} ÷ {slope} = {lean}"
    wide, narrow = joint.pin + 2 * joint.lean, joint.tail - 2 * joint.lean
    yield f"Pin at its wide end: {pin} + 2 × {lean} = {show.number(wide)}"
    yield f"Tail at the shoulder line: {tail} − 2 × {lean} = {show.number(narrow)}"
    if many > 1:
        yield f"Tail to tail: {tail} + {pin} = {show.number(joint.tail + joint.pin)}"
    yield f"Angle: arctan (1 ÷ {slope}){angle_equals(angle)}"


RECKONER = Reckoner(
    key="dovetail_layout",
    title="Dovetail layout",
    asks="Where do I mark the tails and pins?",
    words=(
        "dovetail, dovetails, dovetail layout, tails, tails and pins, half-blind dovetail, "
        "through dovetail, dovetail slope, dovetail angle, half pin, tail board, pin board, "
        "drawer joint, dovetail spacing"
    ),
    order=780,
    job="doors and drawers",
    picture={
        "wood": "M4 4h14v4l16-3v13l-16-3v10l16-3v13l-16-3v4H4z",
        "chalk": "M38 5v13M38 22v13",
        "ink": "M18 4v32",
    },
    basic=("height", "tails", "pin_board", "kind"),
    fields=FIELDS,
    answers=(
        Answer("at_end", "Lines at the ends of the tails", "lengths", must="agree"),
        Answer("at_shoulder", "Lines at the shoulder line", "lengths", must="agree"),
        Answer("tail", "Tail width at the end", must="agree"),
        Answer("tails", "Tails", "count"),
        Answer("wide_pin", "Pin width at its wide end", must="agree"),
        Answer("tail_line", "Shoulder line on the tail board", must="agree"),
        Answer("pin_line", "Shoulder line on the pin board", must="agree"),
        Answer("hidden", "Bottom groove", "text"),
        Answer("angle", "Angle from square", "angle"),
    ),
    source=(
        "Plane geometry: board = half pins + pins + tails, each side of a tail comes in its "
        "length ÷ slope. Common practice, no source: 6 to 1 or 8 to 1, a tail for every 1 1/2 in, "
        "pins no narrower than the chisel."
    ),
    compute=compute,
    example={"height": "5", "tails": "3", "pin_board": "3/4", "kind": "blind"},
)
