"""Where to mark a length that is laid off from a line of the tape instead of its hook."""

from sawside.drawing.tape.along_tape import along_tape
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, length
from sawside.reckoners.tape.shared.burned_line import (
    STRETCHED,
    start_field,
    stretch_lines,
    stretch_of,
)


def compute(given, show):
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
    )


RECKONER = Reckoner(
    key="burned_inch_mark",
    title="Burned inch: mark",
    asks="I’m starting at the 1-inch line. Where do I mark?",
    words=(
        "burn an inch, burned inch, cut an inch, mark, lay out, tape hook, worn hook, 1-inch "
        "line, start line, an inch short, tape, offset"
    ),
    order=103,
    job="tape",
    picture={
        "wood": "M3 14h34v12H3z",
        "ink": "M10 14v12M17 14v6M24 14v6M3 26l7-12",
        "chalk": "M31 5v30M27 5l4 5 4-5",
    },
    fields=(
        length("length", "Length to lay out", least="1/64 in"),
        start_field("Starting line", "add"),
        STRETCHED,
    ),
    answers=(Answer("mark", "Mark at", must="agree"),),
    source="Arithmetic: start line + length. Starting at a line is shop practice.",
    compute=compute,
    example={"length": "31 5/8", "start": "1"},
)
