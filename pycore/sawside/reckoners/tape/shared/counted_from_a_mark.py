"""A place on the tape, told by counting marks, as a length."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.display import mixed_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.tape import stretch
from sawside.lengths.words import fraction_in_words, parts_in_words
from sawside.reckoners.declaration import Reckoning

LARGER = {"0": "The inch itself"} | {
    str(each): f"Its {mixed_text(each)}"
    for each in (Fraction(number, 16) for number in range(1, 16))
}
"""The marks of an inch that are counted from."""


def counted_from_a_mark(given, show):
    """The length: whole inches, a larger mark, and the small marks past or short of it."""
    division, larger = int(given.smallest), Fraction(given.larger)
    _check_marks(given, division, larger)
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
        main="length",
    )


def _check_marks(given, division, larger):
    """There is such a mark, and no more are counted than an inch has."""
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
