"""An area in square feet and square meters: how it is told, and what it is reckoned with."""

from fractions import Fraction

from sawside.lengths.plain_numbers import number_text
from sawside.lengths.units import INCHES_PER, SQUARE_FOOT

SQUARE_INCHES_IN = {"ft²": SQUARE_FOOT, "m²": INCHES_PER["m"] ** 2}
"""Exact square inches in one of a unit."""

_SMALL = Fraction(1, 4)


def area_text(square_inches, unit):
    """An area in a unit, "23.4 ft²", "2.17 m²", with two more places where it is small."""
    value, places = square_inches / SQUARE_INCHES_IN[unit], 1 if unit == "ft²" else 2
    return f"{number_text(value, places if value >= _SMALL else places + 2)} {unit}"


def unit_of_areas(show):
    """The unit of areas where lengths are told so: "m²" beside millimeters."""
    return "m²" if show.settings.display == "mm" else "ft²"
