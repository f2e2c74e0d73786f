"""A length measured from a line of the tape instead of its hook, usually the 1-inch line."""

from sawside.drawing.tape.along_tape import along_tape
from sawside.errors import Refusal
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, length
from sawside.reckoners.tape.shared.burned_line import (
    STRETCHED,
    start_field,
    stretch_lines,
    stretch_of,
)


def compute(given, show):
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
    )


RECKONER = Reckoner(
    key="burned_inch",
    title="Burned inch: measure",
    asks="I measured from the 1-inch line. How long is it?",
    words=(
        "burn an inch, burned inch, cut an inch, tape hook, worn hook, bent hook, 1-inch line, "
        "start line, measure, tape, offset"
    ),
    order=102,
    job="tape",
    picture={
        "wood": "M3 11h34v12H3z",
        "ink": "M10 11v12M17 11v6M24 11v6M31 11v6M3 23l7-12",
        "chalk": "M10 27v9M10 31.5h21m-3-3l3 3-3 3",
    },
    fields=(
        length("reading", "Mark at the far end", least="1/64 in"),
        start_field("Starting line", "subtract"),
        STRETCHED,
    ),
    answers=(Answer("length", "Length", must="agree"),),
    source="Arithmetic: far mark − start line. Starting at a line is shop practice.",
    compute=compute,
    example={"reading": "32 5/8", "start": "1"},
)
