"""A place on the tape, told by counting marks, as a length."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.display import mixed_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.tape import stretch
from sawside.lengths.words import fraction_in_words, parts_in_words
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, choice, count
from sawside.reckoners.tape.shared.tape_marks import divisions

_LARGER = [Fraction(number, 16) for number in range(1, 16)]


def compute(given, show):
    """The length: whole inches, a larger mark, and the small marks past or short of it."""
    division = int(given.division)
    larger = Fraction(given.larger)
    if division % larger.denominator:
        raise Refusal(
            "impossible",
            f"A tape in {parts_in_words(division)} has no mark at "
            f"{fraction_in_words(larger.numerator, larger.denominator)}.",
            "Choose another mark, or smaller divisions.",
            field="larger",
        )
    if given.marks > division:
        raise Refusal(
            "impossible",
            f"An inch in {parts_in_words(division)} has only {division} marks.",
            "Count from the nearest larger mark.",
            field="marks",
        )
    past = given.side == "past"
    counted = Fraction(given.marks, division)
    length = given.inches + larger + (counted if past else -counted)
    if length < 0:
        raise Refusal(
            "impossible",
            "That’s before the start of the tape.",
            "Count past the mark, or enter a higher inch.",
            field="marks",
        )
    found = to_mark(length, GRIDS[f"1/{division}"])
    start = f"{given.inches} + {larger}" if larger else str(given.inches)
    sign = "+" if past else "−"
    return Reckoning(
        answers={"length": found, "how": stretch(found)["words"]},
        working=(f"{start} {sign} {given.marks} × 1/{division} = {show.pure(length)}",),
        tape=found.grid,
    )


RECKONER = Reckoner(
    key="read_the_tape",
    title="Count the marks",
    asks="What’s the reading if I count little lines from a mark?",
    words=(
        "read a tape, tape measure, count marks, marks, sixteenths, eighths, lines, fraction, "
        "measure, ruler, rule, short of"
    ),
    order=100,
    fields=(
        count(
            "inches",
            "Numbered inch",
            help="The inch number you count from.",
            most="1200",
            in_short="inch {}",
        ),
        choice(
            "larger",
            "Count from",
            {"0": "The inch itself"} | {str(each): f"Its {mixed_text(each)}" for each in _LARGER},
            help="Start from the nearest 1/2, 1/4 or 1/8 to count fewer lines.",
        ),
        count("marks", "Lines counted", help="From there to your spot.", most="64"),
        choice("side", "Your spot is", {"past": "Past it", "short": "Short of it"}),
        choice(
            "division",
            "Smallest marks",
            divisions(16, 2, 4, 8, 32, 64),
            help="Not sure? Count the spaces in one inch.",
        ),
    ),
    answers=(Answer("length", "Length", must="agree"), Answer("how", "How to find it", "text")),
    source=("Counting: inches + larger mark ± marks × the division. Shop practice."),
    compute=compute,
    example={"inches": "14", "larger": "5/8", "marks": "2", "side": "past", "division": "16"},
)
