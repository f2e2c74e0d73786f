"""A length measured from a line of the tape instead of its hook, usually the 1-inch line."""

from sawside.drawing.along_tape import along_tape
from sawside.errors import Refusal
from sawside.lengths.display import decimal_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, length, own_tape


def compute(given, show):
    """The reading less the line that the piece starts at; a tape's stretch, never its hook."""
    between = given.reading - given.start
    if between <= 0:
        raise Refusal(
            "impossible",
            f"The far end at {show.text(given.reading)} is not past the line at "
            f"{show.text(given.start)}.",
            "Give the mark at the far end of the piece.",
            field="reading",
        )
    scale = given.tape.scale if given.tape else 1
    true = scale * between
    working = [
        f"{show.number(given.reading)} − {show.number(given.start)} = {show.number(between)}"
    ]
    if scale != 1:
        working.append(
            f"{given.tape.name}: each inch is {decimal_text(scale)}; "
            f"{show.number(between)} × {decimal_text(scale)}{show.equals(true)}"
        )
    words = (
        f"A piece along a tape, from the line at {show.text(given.start)} to "
        f"{show.text(given.reading)}: it is {show.text(true)} long."
    )
    return Reckoning(
        answers={"length": true},
        working=tuple(working),
        drawing=along_tape(words, given.start, given.reading, show.text(true), show),
    )


RECKONER = Reckoner(
    key="burned_inch",
    title="Burned inch: measure",
    asks="How long is a piece that I measured from the 1-inch line?",
    words=(
        "burn an inch", "burned inch", "cut an inch", "tape", "hook", "worn hook", "bent hook",
        "1-inch line", "start line", "measure", "offset",
    ),
    order=102,
    fields=(
        length("reading", "Mark at the far end", least="1/64 in"),
        length(
            "start",
            "Line that the piece starts at",
            help="The 1-inch line is usual; the 10-inch or 100 mm line is easier to take away.",
            default="1 in",
            most="10 ft",
        ),
        own_tape("tape", "Tape", help="Its stretch is corrected; its hook takes no part."),
    ),
    answers=(Answer("length", "Length"),),
    source="Arithmetic: far mark − start line. Starting at a line is common practice, no source.",
    compute=compute,
    example={"reading": "32 5/8", "start": "1"},
)  # fmt: skip
