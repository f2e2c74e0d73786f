"""Openings that get smaller from the bottom up: how many fit, and how high each is. Exact inches.

`way` is the class of the series (`geometry.graduation`), `grade` its step or ratio, None where
that is worked out.
"""

from sawside.errors import Refusal
from sawside.lengths.real import sign
from sawside.reckoners.shelves.shared.case_fields import (
    MOST_SHELVES,
    refuse_no_room,
    refuse_too_many,
)

_BLAMED = ("highest", "lowest", "step", "percent")
"""The fields that a refusal names, the first one that is filled in."""


def most_shelves(given, show, way, inside, grade, blank):
    """As many shelves as leave at least the highest opening that was given."""
    shelves, fits = 0, True
    while fits and shelves <= MOST_SHELVES:
        shelves += 1
        if "height" in blank:
            fits = way.from_lowest(given.lowest, grade, shelves + 1)[-1] >= given.highest
        else:
            needed = sum(way.from_highest(given.highest, grade, shelves + 1))
            fits = needed + shelves * given.thickness <= inside
    refuse_too_many(shelves if fits else shelves - 1, "highest")
    if shelves == 1:
        raise Refusal(
            "impossible",
            f"Even one shelf won’t leave {show.text(given.highest)} at the top.",
            "Enter a smaller top opening.",
            field="highest",
        )
    return shelves - 1


def openings_of(given, show, way, inside, shelves, lowest, highest, grade):
    """Every opening from the bottom up; "impossible" where they vanish or grow upwards."""
    try:
        openings = _series(given, show, way, inside, shelves, lowest, highest, grade)
    except ValueError:
        openings = [0]
    blamed = next(key for key in _BLAMED if getattr(given, key) is not None)
    if any(sign(each) <= 0 for each in (openings[0], openings[-1])):
        raise Refusal(
            "impossible",
            "With these numbers the smallest opening closes up.",
            "Use fewer shelves, a smaller step or another opening.",
            field=blamed,
        )
    if openings[-1] > openings[0]:
        raise Refusal(
            "impossible",
            f"The openings would get bigger toward the top, from {show.text(openings[0])} to "
            f"{show.text(openings[-1])}.",
            "Enter a bigger bottom opening or a smaller top one.",
            field=blamed,
        )
    return openings


def _series(given, show, way, inside, shelves, lowest, highest, grade):
    """The openings by what is known of them; ValueError where there are no such openings."""
    terms = shelves + 1
    if inside is None:
        if grade is None:
            return way.between(lowest, highest, terms)
        if lowest is None:
            return way.from_highest(highest, grade, terms)
        return way.from_lowest(lowest, grade, terms)
    refuse_no_room(show, shelves, shelves * given.thickness, inside)
    clear = inside - shelves * given.thickness
    if grade is not None:
        return way.filling(clear, grade, terms)
    if lowest is None:
        return way.filling_from_highest(clear, highest, terms)
    return way.filling_from_lowest(clear, lowest, terms)
