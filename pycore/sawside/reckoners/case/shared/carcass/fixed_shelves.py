"""How high the fixed shelves of a bay are: evenly spaced on marks, or as given. Inches."""

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from sawside.errors import Refusal
from sawside.lengths.marks import told_mark
from sawside.lengths.words import counted
from sawside.reckoners.case.shared.carcass.as_measured import measured_text


@dataclass(frozen=True, slots=True)
class FixedShelves:
    """From the case bottom up: `lows` are the lower faces of the shelves, `openings` what is clear
    below each and above the last. `even` is what equal openings share, None for listed heights."""

    lows: tuple[Fraction, ...]
    openings: tuple[Fraction, ...]
    even: Fraction | None


def fixed_shelves_of(given, inside, thick, show):
    """The `FixedShelves` of a form in a clear height `inside`; "impossible" where they don't fit
    as they are listed."""
    listed = given.shelf_heights
    if listed:
        return FixedShelves(tuple(listed), _checked(given, inside, thick, show), None)
    many = given.fixed
    even = (inside - many * thick) / (many + 1)
    exact = [number * even + (number - 1) * thick for number in range(1, many + 1)]
    marked = [told_mark(low, show.settings.grid).mark for low in exact] if even > 0 else exact
    lows = marked if min(_between(marked, inside, thick)) > 0 else exact
    return FixedShelves(tuple(lows), _between(lows, inside, thick), even)


def _between(lows, inside, thick):
    """The openings that shelves with these lower faces leave."""
    edges = [-thick, *lows, inside]
    return tuple(upper - lower - thick for lower, upper in pairwise(edges))


def _checked(given, inside, thick, show):
    """The openings between the listed shelves; "impossible" where there are others than `fixed`
    says, or they are out of order, or one has no opening."""
    listed = given.shelf_heights
    if len(listed) != given.fixed:
        many = counted(given.fixed, "fixed shelf", "fixed shelves")
        raise Refusal(
            "impossible",
            f"There {'is' if given.fixed == 1 else 'are'} {many} per bay, but "
            f"{counted(len(listed), 'height')}.",
            f"Enter {counted(len(listed), 'fixed shelf', 'fixed shelves')} per bay, or change the "
            "heights.",
            field="shelf_heights",
        )
    openings = _between(listed, inside, thick)
    for number, opening in enumerate(openings, 1):
        if opening <= 0:
            raise _no_opening(number, listed, inside, thick, show)
    return openings


def _no_opening(number, listed, inside, thick, show):
    """The refusal of an opening, by its number from the bottom up, that isn't there."""
    if number > len(listed):
        most = measured_text(inside - thick, show)
        return Refusal(
            "impossible",
            f"Shelf {number - 1} runs into the top of the case: its lower face is "
            f"{measured_text(listed[-1], show)} above the bottom.",
            f"Enter less than {most}.",
            field="shelf_heights",
        )
    if number == 1:
        sentence = "Shelf 1 rests on the bottom of the case."
    else:
        sentence = f"Shelf {number} is no higher than the top of shelf {number - 1}."
    return Refusal(
        "impossible",
        sentence,
        "Enter the heights from the bottom up, with room between shelves.",
        field="shelf_heights",
    )
