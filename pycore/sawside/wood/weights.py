"""A weight in pounds and in kilograms: how it is told, and what it is reckoned with.

It reads no table, so that what tells the answers of every question can import it.
"""

from fractions import Fraction

from sawside.lengths.plain_numbers import number_text
from sawside.lengths.units import INCHES_PER

CUBIC_INCHES_PER_CUBIC_FOOT = INCHES_PER["ft"] ** 3
KILOGRAMS_PER_POUND = Fraction("0.45359237")
POUNDS_IN = {"lb": Fraction(1), "kg": 1 / KILOGRAMS_PER_POUND}
"""Exact pounds in one of a unit (the international pound of 1959)."""


def weight_text(pounds, show):
    """A weight in both systems, "108.9 lb (49.4 kg)"; in kilograms where lengths are metric.

    `pounds` exact, from 0 up.
    """
    kilograms = f"{number_text(pounds * KILOGRAMS_PER_POUND, 1)} kg"
    if show.settings.display == "mm":
        return kilograms
    return f"{number_text(pounds, 1)} lb ({kilograms})"
