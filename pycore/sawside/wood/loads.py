"""What stands on shelves, by the foot or by the square foot, and pounds in other units."""

from fractions import Fraction

from sawside.lengths.units import INCHES_PER
from sawside.wood.numbers import number_text
from sawside.wood.shelf import Load
from sawside.wood.tables import entries

_KILOGRAMS_PER_POUND = Fraction("0.45359237")
_FOOT = INCHES_PER["ft"]
CUBIC_INCHES_PER_CUBIC_FOOT = _FOOT**3
_PER = {
    "lb": ("whole", Fraction(1)),
    "kg": ("whole", 1 / _KILOGRAMS_PER_POUND),
    "lb/ft": ("length", 1 / _FOOT),
    "kg/m": ("length", 1 / _KILOGRAMS_PER_POUND / INCHES_PER["m"]),
    "lb/ft²": ("area", 1 / _FOOT**2),
}
"""What a unit is a load for each of, and pounds for each inch or square inch in one of it."""

LOADS = entries("shelf_loads.csv", "amount")
"""Published and usual loads by their key, each with its source."""


def load_of(amount, unit):
    """A load given in lb, kg, lb/ft, kg/m or lb/ft²; exact pounds."""
    per, pounds = _PER[unit]
    return Load(per, amount * pounds)


def weight_text(pounds):
    """A weight in both systems: "108.9 lb (49.4 kg)"."""
    kilograms = pounds * _KILOGRAMS_PER_POUND
    return f"{number_text(pounds, 1)} lb ({number_text(kilograms, 1)} kg)"


def load_text(pounds_per_inch):
    """A load along a shelf in both systems: "36.3 lb/ft (54 kg/m)"."""
    by_foot = pounds_per_inch / _PER["lb/ft"][1]
    by_meter = pounds_per_inch / _PER["kg/m"][1]
    return f"{number_text(by_foot, 1)} lb/ft ({number_text(by_meter, 1)} kg/m)"
