"""Units by way of pint from `units.txt`: the only file that knows pint.

What a reading needs are the tables that `tables` makes and `units.json` keeps. No other module
imports this one, so that no start and no key press waits for pint.
"""

from fractions import Fraction
from pkgutil import get_data

import pint

__all__ = ["convert", "registry", "tables"]


def _registry():
    made = pint.UnitRegistry(None, non_int_type=Fraction, cache_folder=None)
    made.load_definitions(get_data(__package__, "units.txt").decode("utf-8").splitlines())
    return made


registry = _registry()
"""The units of `units.txt` and no others, with rationals for numbers."""


def convert(value, from_unit, to_unit):
    """An exact `value` in another unit of `units.txt`; pint decides, so not for a key press."""
    return Fraction(registry.convert(Fraction(value), from_unit, to_unit))


def tables():
    """What `units.json` keeps: exact factors as text, each by its name.

    Lengths in inches, angles in degrees, and the square inches in a square foot and the cubic
    inches in a board foot.
    """
    return {
        "lengths": _factors("[length]", "inch"),
        "angles": _factors("[angle]", "degree"),
        "square_foot": str(convert(1, "foot ** 2", "inch ** 2")),
        "board_foot": str(convert(1, "board_foot", "inch ** 3")),
    }


def _factors(dimension, into):
    return {
        name: str(convert(1, name, into))
        for name in registry
        if registry.Quantity(1, name).check(dimension)
    }
