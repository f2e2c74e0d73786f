"""The length between two walls: tape into the corner, a block, the case, or two sticks."""

from sawside.drawing.tape.between_walls import between_walls
from sawside.errors import Refusal
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, choice, length, own_tape

_WAYS = {
    "case": "Tape case in the corner",
    "block": "Block in the corner",
    "bent": "Tape bent into the corner",
    "sticks": "Two sticks side by side",
}


def compute(given, show):
    """The inside length by the way that was taken; for a bent tape also its least and most."""
    if given.way == "sticks":
        return _sticks(given, show)
    working = []
    reading = given.reading
    if given.tape and given.tape.true(reading) != reading:
        reading = given.tape.true(reading)
        working.append(
            f"{given.tape.name} reads {show.number(given.reading)}; with its scale and its hook: "
            f"{show.number(given.tape.scale * given.reading)} + {show.number(given.tape.hook)}"
            f" = {show.number(reading)}"
        )
    if given.way == "bent":
        return _bent(given, reading, working, show)
    adds, name = _added(given)
    inside = reading + adds
    working.append(
        f"Reading and {name}: {show.number(reading)} + {show.number(adds)}{show.equals(inside)}"
    )
    return _told(given, show, inside, (given.reading, adds), working)


def _told(given, show, inside, parts, working, **bounds):
    """The answer; `parts` are the measures that it was made of, `bounds` the least and most."""
    return Reckoning(
        answers={"inside": inside, **bounds},
        working=tuple(working),
        drawing=between_walls(given.way, inside, parts, show),
    )


def _added(given):
    """What stands between the end of the tape and the wall."""
    if given.way == "block":
        return given.block, "block"
    if given.case is not None:
        return given.case, "case"
    if given.tape and given.tape.case is not None:
        return given.tape.case, "case"
    raise Refusal(
        "missing",
        "Case length is blank." if given.tape is None else "This tape has no case length yet.",
        "Fill it in, or choose a tape that has one in Settings.",
        field="case",
    )


def _bent(given, reading, working, show):
    if given.doubt >= reading:
        raise Refusal(
            "impossible",
            f"A reading of {show.text(reading)} ± {show.text(given.doubt)} could be nothing at "
            "all.",
            "Check both, or measure with a block.",
            field="doubt",
        )
    least, most = reading - given.doubt, reading + given.doubt
    working.append(
        f"Read in the bend: {show.number(reading)} ± {show.number(given.doubt)}, so from "
        f"{show.number(least)} to {show.number(most)}"
    )
    return _told(given, show, reading, (given.reading,), working, least=least, most=most)


def _sticks(given, show):
    shorter = min(given.first, given.second)
    if given.overlap >= shorter:
        raise Refusal(
            "impossible",
            f"The sticks overlap by {show.text(given.overlap)}, and the shorter one is only "
            f"{show.text(shorter)} long.",
            "Measure the overlap again, from end to end.",
            field="overlap",
        )
    inside = given.first + given.second - given.overlap
    line = (
        f"{show.number(given.first)} + {show.number(given.second)} − "
        f"{show.number(given.overlap)}{show.equals(inside)}"
    )
    parts = (given.first, given.second, given.overlap)
    return _told(given, show, inside, parts, (line,))


def _stick(key, label, **more):
    return length(key, label, least="1/64 in", shown_when=("way", ("sticks",)), **more)


RECKONER = Reckoner(
    key="inside_measure",
    title="Inside measure",
    asks="How wide is an opening the tape can’t reach across flat?",
    words=(
        "inside measure, inside measurement, opening, alcove, width, between walls, wall to "
        "wall, corner, tape case, bend, bent tape, pinch rods, pinch sticks, two sticks, slip "
        "sticks"
    ),
    order=104,
    job="tape",
    picture={
        "wood": "M3 4h5v32H3zM32 4h5v32h-5zM20 31V21l3-3h9v13zM8 27h12v4H8z",
        "chalk": "M8 10h24m-3-3l3 3-3 3M11 7l-3 3 3 3",
    },
    fields=(
        choice("way", "Measured with", _WAYS),
        length(
            "reading",
            "Tape reading",
            help="Where the blade comes out of the case, at the block, or in the corner.",
            least="1/64 in",
            shown_when=("way", ("case", "block", "bent")),
        ),
        own_tape(
            "tape",
            "Tape",
            help="Corrects for its error and uses its case length.",
            shown_when=("way", ("case", "block", "bent")),
        ),
        length(
            "case",
            "Case length",
            help=(
                "Back of the case to where the blade comes out. Often printed on the case; "
                "measure to be sure."
            ),
            least="1/2 in",
            most="12 in",
            blank_means="The tape’s case length from Settings.",
            shown_when=("way", ("case",)),
        ),
        length(
            "block",
            "Block length",
            help="A square-ended block you’ve measured, pushed into the corner.",
            least="1/64 in",
            shown_when=("way", ("block",)),
        ),
        length(
            "doubt",
            "Good to within ±",
            help="You can’t read a bend closely. A sixteenth is shop practice.",
            default="1/16 in",
            metric="1 mm",
            most="1 in",
            shown_when=("way", ("bent",)),
        ),
        _stick("first", "First stick", help="One end against one wall."),
        _stick("second", "Second stick", help="One end against the other wall."),
        _stick("overlap", "Overlap", help="How far the two run side by side."),
    ),
    answers=(
        Answer("inside", "Inside", must="agree"),
        Answer("least", "At least", must="be there"),
        Answer("most", "At most", must="reach"),
    ),
    source=(
        "Arithmetic: reading + case, reading + block, stick + stick − overlap. A sliding hook "
        "should read true pushed or pulled, as its maker says. Check yours on a block."
    ),
    compute=compute,
    example={"way": "sticks", "first": "24", "second": "20 1/4", "overlap": "6 11/16"},
)
