"""A length as marks to count on the tape: "2 thirty-seconds past the five-eighths"."""

from sawside.lengths.display import decimal_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.tape import from_the_inch, stretch
from sawside.lengths.units import INCHES_PER
from sawside.lengths.words import parts_in_words
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, choice, length
from sawside.reckoners.tape.shared.tape_marks import divisions


def compute(given, show):
    """The mark on the division, and the two ways to count to it."""
    grid = _grid(given.division, show.settings.grid)
    found = to_mark(given.length, grid, show.settings.rounding)
    answers = {"mark": found, "how": stretch(found)["words"]}
    if grid.division:
        answers["from_inch"] = from_the_inch(found)
    number = given.length / (grid.step if grid.division else INCHES_PER["mm"])
    unit = parts_in_words(grid.division) if grid.division else "millimeters"
    typed = show.number(given.length)
    if grid.division and show.settings.display == "mm":
        typed += f" ÷ {decimal_text(1 / INCHES_PER['mm'])}"
    elif not grid.division and show.settings.display != "mm":
        typed += f" × {decimal_text(1 / INCHES_PER['mm'])}"
    if grid.division:
        typed += f" × {grid.division}"
    line = f"{typed} = {decimal_text(number, 3)} {unit}"
    if found.direction != "exact":
        line += f", to the mark: {show.text(found)}"
    return Reckoning(answers=answers, working=(line,))


def _grid(division, own):
    """The grid of marks that a tape has: that of the settings where it is one, or the nearest."""
    if division != "settings":
        return GRIDS["1 mm" if division == "mm" else f"1/{division}"]
    if own.unit == "mm":
        return own if own.places == 0 or own.name == "0.5 mm" else GRIDS["1 mm"]
    return own if own.division else GRIDS["1/16"]


RECKONER = Reckoner(
    key="marks_to_count",
    title="Find a length on the tape",
    asks="Where is this length on my tape?",
    words=(
        "find on a tape measure, count marks, marks, lines, call out, sixteenths, eighths, "
        "ruler, rule, short of"
    ),
    order=101,
    job="tape",
    picture={
        "wood": "M3 10h34v16H3z",
        "ink": "M7 26v-9M11.5 26v-4M16 26v-6M20.5 26v-4M25 26v-9M34 26v-6",
        "chalk": "M29.5 37V22m-3 7l3-3 3 3",
    },
    fields=(
        length("length", "Length", help="A fraction, a decimal or millimeters."),
        choice(
            "division",
            "Smallest marks",
            {"settings": "From Settings"} | divisions(2, 4, 8, 16, 32, 64) | {"mm": "Millimeters"},
        ),
    ),
    answers=(
        Answer("mark", "On the tape", must="agree"),
        Answer("how", "Counted from the nearest larger mark", "text"),
        Answer("from_inch", "Counted from the inch", "text"),
    ),
    source="Counting from the nearest larger mark is shop practice.",
    compute=compute,
    example={"length": "29 3/4", "division": "settings"},
)
