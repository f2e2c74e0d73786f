"""How many hinges a door has, and where they go clear of shelves. Exact inches and pounds."""

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import ceil, prod

from sawside.errors import impossible, quoted
from sawside.lengths.fine import fine_text, limit_text
from sawside.reckoners.shared.door_weight import Weighed, density_of, pounds_of_door
from sawside.wood.weights import POUNDS_IN

BY_HEIGHT = ((40, 2), (60, 3), (80, 4))
"""Up to so many inches so many hinges. Common practice, no source."""
MOST = 12
"""No door has more hinges."""
_FEWEST = 2
_EACH = 20
"""One more for every so many inches beyond the last of those."""
_LEAST_END, _MOST_END = Fraction(2), Fraction(4)
"""Between the door's end and a hinge: its own length, within these. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Hung:
    """The hinges of a door: `centers` from its bottom edge up, `wished` where they would be without
    shelves; `pounds` is its weight or None; `by_height` and `by_weight` (or None) are how many the
    two rules ask for."""

    centers: list[Fraction]
    wished: list[Fraction]
    pounds: Fraction | None
    by_height: int
    by_weight: int | None

    @property
    def asked(self):
        """How many there have to be."""
        return max(self.by_height, self.by_weight or 0)


def pounds_of(given, key):
    """A weight of the form in pounds, in whichever unit it was given; None where it is blank."""
    amount = getattr(given, f"{key}_{given.units}")
    return None if amount is None else amount * POUNDS_IN[given.units]


def hung(given, show):
    """The `Hung` of a form; "impossible" where hinges don't fit, or no place is clear."""
    pounds = pounds_of(given, "weight") or pounds_of_door([weighed(given, show)])
    rating = pounds_of(given, "rating")
    if rating and pounds is None:
        raise impossible(
            f"{quoted(given.material.name)} has no weight in Settings.",
            "Enter the door’s weight, or choose another wood.",
            f"weight_{given.units}",
        )
    by_height = _by_height(given.height)
    by_weight = rating and ceil(pounds / rating)
    if given.count is None and by_weight and by_weight > MOST:
        raise impossible(
            f"With that rating this door takes {by_weight} hinges.",
            "Use stronger hinges, or check the rating and the weight.",
            f"rating_{given.units}",
        )
    many = given.count or max(by_height, by_weight or 0)
    _check_many(given, show, many)
    end = _inset(given, many)
    _check_inset(given, show, many, end)
    first, last = (_clear(given, show, each) for each in (end, given.height - end))
    step = (last - first) / (many - 1)
    between = [first + step * number for number in range(1, many - 1)]
    centers = [first, *(_clear(given, show, each) for each in between), last]
    _check_apart(given, show, centers)
    return Hung(centers, [end, *between, given.height - end], pounds, by_height, by_weight)


def weighed(given, show):
    """The whole door as what it weighs is figured from."""
    sizes = given.height, given.width, given.thickness
    told = " × ".join(show.number(each) for each in sizes)
    return Weighed("Weight", told, prod(sizes), density_of(given.material))


def _by_height(height):
    for most, many in BY_HEIGHT:
        if height <= most:
            return many
    most, many = BY_HEIGHT[-1]
    return many + ceil((height - most) / _EACH)


def _inset(given, many):
    """From an end to the center of its hinge; less than usual on a low door."""
    if given.inset is not None:
        return given.inset
    usual = max(min(given.hinge, _MOST_END), _LEAST_END)
    return min(usual, (given.height - many * given.hinge) / (2 * many)) + given.hinge / 2


def _clear(given, show, wished):
    """The place nearest to one that is wished for where a hinge is clear of shelves and ends."""
    half = given.hinge / 2
    barred = [
        (each - half - given.clear, each + given.shelf + half + given.clear)
        for each in given.shelves or ()
    ]
    places = [wished, *(end for bar in barred for end in bar)]
    free = [
        each
        for each in places
        if half <= each <= given.height - half and not any(a < each < b for a, b in barred)
    ]
    if not free:
        raise impossible(
            f"No place on the door is clear of the shelves for a hinge "
            f"{fine_text(given.hinge, show)} long.",
            "Use a shorter hinge, or leave less clear of the shelves.",
            "hinge",
        )
    return min(free, key=lambda each: (abs(each - wished), each))


def _check_many(given, show, many):
    if many * given.hinge > given.height:
        raise impossible(
            f"{many} hinges {fine_text(given.hinge, show)} long don’t fit on a door "
            f"{fine_text(given.height, show)} tall.",
            f"Use hinges of {limit_text(given.height / many, show, 'stay under')} or less"
            f"{', or fewer' if many > _FEWEST else ''}.",
            "hinge" if given.count is None else "count",
        )


def _check_inset(given, show, many, end):
    most = (given.height - (many - 1) * given.hinge) / 2
    if end < given.hinge / 2 or end > most:
        raise impossible(
            f"With their centers {fine_text(end, show)} from the ends, {many} hinges "
            f"{fine_text(given.hinge, show)} long overlap or stick out past the door.",
            f"Enter from {limit_text(given.hinge / 2, show, 'reach')} to "
            f"{limit_text(most, show, 'stay under')}.",
            "inset",
        )


def _check_apart(given, show, centers):
    for number, (low, high) in enumerate(pairwise(centers), 1):
        if high - low < given.hinge:
            raise impossible(
                f"Between the shelves, hinges {number} and {number + 1} would overlap.",
                f"Use fewer hinges, or shorter ones than {fine_text(given.hinge, show)}.",
                "hinge" if given.count is None else "count",
            )
