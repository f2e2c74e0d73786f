"""Names and factors of units, exact: what pint makes of `units.txt`, as `units.json` keeps it."""

import json
from fractions import Fraction
from pkgutil import get_data

__all__ = ["ANGLES", "BOARD_FOOT", "INCHES_PER", "LENGTHS", "METRIC", "MILE", "SQUARE_FOOT"]

_kept = json.loads(get_data(__package__, "units.json"))


def _factors(names):
    return {name: Fraction(factor) for name, factor in _kept[names].items()}


LENGTHS = _factors("lengths")
"""Every name of a length (`in`, `inches`, `mm`, …) and its inches, exact."""

ANGLES = _factors("angles")
"""Every name of an angle and its degrees."""

INCHES_PER = {unit: LENGTHS[unit] for unit in ("in", "ft", "yd", "mm", "cm", "m")}
"""Inches in each unit that a bare number may mean."""

SQUARE_FOOT = Fraction(_kept["square_foot"])
BOARD_FOOT = Fraction(_kept["board_foot"])
"""Square inches in a square foot, and cubic inches in a board foot (144 of each)."""

MILE = 5280 * LENGTHS["ft"]
"""The longest length that is answered, in inches."""

METRIC = ("mm", "cm", "m")
"""The units of a bare number in which a project is a metric one."""
