"""A place on the tape, told by counting marks, as a length."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.tape import stretch
from sawside.lengths.words import parts_in_words
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, choice, count

_DIVISIONS = (16, 2, 4, 8, 32, 64)


def compute(given, show):
    """The length: whole inches plus or minus the counted marks, on the counted division."""
    division = int(given.division)
    if given.marks > division:
        raise Refusal(
            "impossible",
            f"An inch in {parts_in_words(division)} has only {division} marks.",
            "Count from the numbered inch that is nearest.",
            field="marks",
        )
    past = given.side == "past"
    counted = Fraction(given.marks, division)
    length = given.inches + (counted if past else -counted)
    if length < 0:
        raise Refusal(
            "impossible",
            "That place is before the start of the tape.",
            "Count past the inch, or give a higher inch.",
            field="marks",
        )
    found = to_mark(length, GRIDS[f"1/{division}"])
    sign = "+" if past else "−"
    return Reckoning(
        answers={"length": found, "how": stretch(found)["words"]},
        working=(f"{given.inches} {sign} {given.marks} × 1/{division} = {show.pure(length)}",),
    )


RECKONER = Reckoner(
    key="read_the_tape",
    title="Read the tape",
    asks="What length is it, so many small marks past an inch?",
    words=("tape", "rule", "marks", "count", "sixteenths", "fraction", "measure"),
    order=30,
    fields=(
        count("inches", "Nearest numbered inch", help="The number printed there.", most="1200"),
        count("marks", "Small marks counted", help="From that inch to the place.", most="64"),
        choice("side", "The place is", {"past": "Past the inch", "short": "Short of the inch"}),
        choice(
            "division",
            "The small marks are",
            {str(each): parts_in_words(each).capitalize() for each in _DIVISIONS},
            help="Count the spaces in one inch when in doubt.",
        ),
    ),
    answers=(Answer("length", "Length"), Answer("how", "To find it again", "text")),
    source="Counting: inches ± marks × the division. Common practice, no source.",
    compute=compute,
    example={"inches": "14", "marks": "5", "side": "past", "division": "16"},
)
