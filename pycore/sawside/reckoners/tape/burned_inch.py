"""A length measured, or laid out, from a line of the tape instead of its hook: the 1-inch line."""

from sawside.drawing.tape.along_tape import along_tape
from sawside.errors import Refusal
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import choice, length
from sawside.reckoners.tape.shared.burned_line import (
    STRETCHED,
    line_field,
    stretch_lines,
    stretch_of,
)


def compute(given, show):
    """By what is asked: the length of a piece, or the mark of a length."""
    return _length(given, show) if given.solve == "length" else _mark(given, show)


def _length(given, show):
    """The reading less the line that the piece starts at; a tape's stretch, never its hook."""
    between = given.reading - given.start
    if between <= 0:
        raise Refusal(
            "impossible",
            f"The far end at {show.text(given.reading)} isn’t past the line at "
            f"{show.text(given.start)}.",
            "Enter the mark at the far end of the piece.",
            field="reading",
        )
    true = stretch_of(given) * between
    words = (
        f"A piece along a tape, from the line at {show.brief(given.start)} to "
        f"{show.brief(given.reading)}: it is {show.brief(true)} long."
    )
    return Reckoning(
        answers={"length": true},
        working=(
            f"{show.number(given.reading)} − {show.number(given.start)} = {show.number(between)}",
            *stretch_lines(given, show, between, "×", show.equals(true)),
        ),
        drawing=along_tape(words, given.start, given.reading, show.brief(true), show),
        main="length",
        verdict=f"{show.brief(true)} long, from the {show.brief(given.start)} line",
    )


def _mark(given, show):
    """The line plus the length, the length in inches of the tape where that one is stretched."""
    reads = given.length / stretch_of(given)
    mark = given.start + reads
    told = show.brief(given.length)
    words = (
        f"A length of {told} laid out along a tape: from the line at {show.brief(given.start)} "
        f"to the mark at {show.brief(mark)}."
    )
    return Reckoning(
        answers={"mark": mark},
        working=(
            *stretch_lines(given, show, given.length, "÷", f" = {show.number(reads)}"),
            f"{show.number(given.start)} + {show.number(reads)}{show.equals(mark)}",
        ),
        drawing=along_tape(words, given.start, mark, told, show, given=True),
        main="mark",
        verdict=f"Mark at {show.brief(mark)}, from the {show.brief(given.start)} line",
    )


RECKONER = Reckoner(
    key="burned_inch",
    title="Burned inch",
    asks="I’m starting at the 1-inch line. Where do I mark, or how long is it?",
    words=(
        "burn an inch, burned inch, cut an inch, tape hook, worn hook, bent hook, 1-inch line, "
        "start line, an inch short, measure, mark, lay out, tape, offset"
    ),
    order=102,
    job="tape",
    picture={
        "wood": "M3 11h34v12H3z",
        "ink": "M10 11v12M17 11v6M24 11v6M31 11v6M3 23l7-12",
        "chalk": "M10 27v9M10 31.5h21m-3-3l3 3-3 3",
    },
    fields=(
        choice("solve", "Find", {"length": "Length", "mark": "Mark"}),
        length(
            "reading",
            "Mark at the far end",
            least="1/64 in",
            shown_when=("solve", ("length",)),
            in_short="{} at the far end",
        ),
        length(
            "length",
            "Length to lay out",
            least="1/64 in",
            shown_when=("solve", ("mark",)),
            in_short="{} to lay out",
        ),
        line_field(
            "Starting line",
            help="Usually the 1-inch line. The 10-inch or 100 mm line is easier to keep in mind.",
        ),
        STRETCHED,
    ),
    answers=(Answer("length", "Length", must="agree"), Answer("mark", "Mark at", must="agree")),
    source=(
        "Arithmetic: start line + length, or far mark − start line. Starting at a line is shop "
        "practice."
    ),
    compute=compute,
    example={"solve": "length", "reading": "32 5/8", "length": "31 5/8"},
    basic=("solve", "reading", "length", "start"),
)
