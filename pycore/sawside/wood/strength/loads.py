"""What stands on shelves, by the foot or by the square foot, and pounds in other units."""

from sawside.lengths.units import INCHES_PER
from sawside.wood.numbers import metric, number_text, small_text
from sawside.wood.strength.shelf import Load
from sawside.wood.tables import entries
from sawside.wood.weights import KILOGRAMS_PER_POUND, POUNDS_IN

_FOOT = INCHES_PER["ft"]
_PER = {
    "lb": ("whole", POUNDS_IN["lb"]),
    "kg": ("whole", POUNDS_IN["kg"]),
    "lb/ft": ("length", 1 / _FOOT),
    "kg/m": ("length", 1 / KILOGRAMS_PER_POUND / INCHES_PER["m"]),
    "lb/ft²": ("area", 1 / _FOOT**2),
}
"""What a unit is a load for each of, and pounds for each inch or square inch in one of it."""

LOADS = entries("shelf_loads.csv", "amount")
"""Published and usual loads by their key, each with its source."""


def load_of(amount, unit):
    """A load given in lb, kg, lb/ft, kg/m or lb/ft²; exact pounds."""
    per, pounds = _PER[unit]
    return Load(per, amount * pounds)


def load_text(pounds_per_inch, show):
    """A load along a shelf likewise: "36.3 lb/ft (54 kg/m)"."""
    by_meter = f"{number_text(pounds_per_inch / _PER['kg/m'][1], 1)} kg/m"
    by_foot = number_text(pounds_per_inch / _PER["lb/ft"][1], 1)
    return by_meter if metric(show) else f"{by_foot} lb/ft ({by_meter})"


def density_text(pounds, show):
    """A weight per cubic foot, in millimeters as one per cubic meter: "545 kg/m³"."""
    if not metric(show):
        return f"{number_text(pounds, 1)} lb per cubic foot"
    meter = (INCHES_PER["m"] / _FOOT) ** 3
    return f"{small_text(pounds * KILOGRAMS_PER_POUND * meter, 7)} kg/m³"
