"""A number that a person typed, told as it was typed and never rounded for show."""

import re
from fractions import Fraction
from functools import lru_cache

from sawside.lengths.display import brief_text
from sawside.lengths.fine import fine_grid
from sawside.lengths.marks import GRIDS, Grid, Rounded, finest_of, told_mark
from sawside.lengths.units import INCHES_PER, LENGTHS

_MOST_PARTS = 1000
_MOST_PLACES = 6
_GIVEN_PLACES = {"in": 4, "mm": 2}
"""Decimals that somebody types, as of a caliper: more come of the other system."""
_LARGEST = 10**9
_SIGNS = re.compile(r"[+×÷()\[]| − ")
_WORDS = re.compile(r"[^\W\d_]+")


def as_typed(reading, settings):
    """(`Rounded` on itself, its display) of a `Reading` of one number; None for a sum.

    `23/32` is on thirty-seconds and `5 7/12` on twelfths, `0.718` on thousandths, and `18 mm` on
    millimeters also where all else is in inches. None as well for what has no such end (`1/3 mm`).
    """
    words = _WORDS.findall(reading.echo)
    if reading.power != 1 or _SIGNS.search(reading.echo) or not all(map(LENGTHS.get, words)):
        return None
    in_inches = "″" in reading.echo or "′" in reading.echo
    display = ("in" if settings.display == "mm" else settings.display) if in_inches else "mm"
    grid = grid_of(reading.value, settings.grid, "in" if in_inches else "mm", "." in reading.echo)
    return grid and (Rounded(reading.value, reading.value, grid), display)


@lru_cache(maxsize=1024)  # many lines of a project have one thickness
def given_mark(value, settings):
    """A length (exact inches) that a person gave, where its text is not at hand, on itself.

    In the person's own system where that tells it exactly, else in the other: 18 mm, 0.718 in.
    None for what none of these tells: 30 1/3 in is on no tape, and a piece is cut to its mark.
    """
    if value.denominator > _LARGEST:
        return None
    for unit in ("mm",) if settings.display == "mm" else ("in", "mm"):
        grid = grid_of(value, settings.grid, unit, decimal=True)
        if grid and grid.places <= _GIVEN_PLACES[unit]:
            return Rounded(value, value, grid)
    return None


def given_marks(values, settings):
    """{value: its `Rounded`} of those that are not told exactly as all other lengths are."""
    finest = finest_of(settings.grid).per.numerator
    marks = {each: given_mark(each, settings) for each in values if finest % each.denominator}
    return {each: mark for each, mark in marks.items() if mark is not None}


def given_text(value, settings):
    """The same as text: "18 mm", "0.718″"; "≈ 45/64″" for such a sum."""
    rounded = given_mark(value, settings) or told_mark(value, fine_grid(settings))
    return brief_text(rounded, settings.display)


def grid_of(value, grid, unit, decimal):
    """The marks of a `unit` that a value (exact inches) lies on, or None.

    Those are the person's own, of `grid`, where it lies on them or on finer ones of their kind;
    else decimals where it is `decimal` or metric, or else parts of an inch.
    """
    told = told_mark(value, grid)
    if grid.unit == unit and told.direction == "exact":
        return told.grid
    if unit == "in" and not decimal:
        parts = value.denominator
        if parts > _MOST_PARTS:
            return None
        return GRIDS.get(f"1/{parts}") or Grid(f"1/{parts}", Fraction(1, parts), "in", parts, 0)
    size = value / INCHES_PER[unit]
    places = next((n for n in range(_MOST_PLACES + 1) if (size * 10**n).denominator == 1), None)
    if places is None:
        return None
    return Grid(f"{places} decimals", INCHES_PER[unit] / 10**places, unit, None, places)
