"""Volumes of liquids, weights, and shellac as flakes in alcohol."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.lengths.units import INCHES_PER
from sawside.wood.weights import KILOGRAMS_PER_POUND

OUNCES = 16
FLUID_OUNCES = 128
"""Ounces in a pound; fluid ounces in a US gallon."""
MILLILITERS_PER_GALLON = 231 / (INCHES_PER["cm"] ** 3)
"""A US gallon is 231 cubic inches (NIST Handbook 44, appendix C)."""
GRAMS_PER_POUND = KILOGRAMS_PER_POUND * 1000
GRAMS_PER_LITER = GRAMS_PER_POUND / MILLILITERS_PER_GALLON * 1000
"""Grams in a liter for each pound in a gallon: 119.83."""

GALLONS_PER_POUND = Fraction(1, 10)
"""What a pound of flakes adds to the alcohol that it is dissolved in: two pounds make 1.2 gallons
of one, three 1.3 and four 1.4 (a woodworking magazine's table of cuts, read in a copy)."""


@dataclass(frozen=True, slots=True)
class Shellac:
    """Flakes dissolved in alcohol: one weight and one volume in whatever units; exact.

    `room` is the volume that one weight of flakes adds.
    """

    flakes: Fraction
    alcohol: Fraction
    room: Fraction

    @property
    def volume(self):
        """The volume of both together."""
        return self.alcohol + self.room * self.flakes

    @classmethod
    def of_volume(cls, volume, cut, room):
        """So much of a cut, which is the weight of flakes to a volume of alcohol alone."""
        alcohol = volume / (1 + room * cut)
        return cls(cut * alcohol, alcohol, room)

    def add(self, flakes, alcohol):
        """The same with more in it."""
        return Shellac(self.flakes + flakes, self.alcohol + alcohol, self.room)
