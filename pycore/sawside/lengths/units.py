"""Names and factors of units, from `units.txt` by way of pint: the only file that knows pint.

pint is asked once, at import. What is read at a key press are the tables made here, so that
reading never waits for pint.
"""

from fractions import Fraction
from pkgutil import get_data

import pint

__all__ = [
    "ANGLES",
    "BOARD_FOOT",
    "INCHES_PER",
    "LENGTHS",
    "MILE",
    "SQUARE_FOOT",
    "convert",
    "registry",
]


def _registry():
    made = pint.UnitRegistry(None, non_int_type=Fraction, cache_folder=None)
    made.load_definitions(get_data(__package__, "units.txt").decode("utf-8").splitlines())
    return made


registry = _registry()


def convert(value, from_unit, to_unit):
    """An exact `value` in another unit of `units.txt`; pint decides, so not for a key press."""
    return Fraction(registry.convert(Fraction(value), from_unit, to_unit))


def _factors(dimension, into):
    return {
        name: convert(1, name, into)
        for name in registry
        if registry.Quantity(1, name).check(dimension)
    }


LENGTHS = _factors("[length]", "inch")
"""Every name of a length (`in`, `inches`, `mm`, …) and its inches, exact."""

ANGLES = _factors("[angle]", "degree")
"""Every name of an angle and its degrees."""

INCHES_PER = {unit: LENGTHS[unit] for unit in ("in", "ft", "yd", "mm", "cm", "m")}
"""Inches in each unit that a bare number may mean."""

SQUARE_FOOT = convert(1, "foot ** 2", "inch ** 2")
BOARD_FOOT = convert(1, "board_foot", "inch ** 3")
"""Square inches in a square foot, and cubic inches in a board foot (144 of each)."""

MILE = 5280 * LENGTHS["ft"]
"""The longest length that is answered, in inches."""

METRIC = ("mm", "cm", "m")
"""The units of a bare number in which a project is a metric one."""
