"""Cans as a finish is sold in, and which of them to buy for so much of it."""

from dataclasses import dataclass
from fractions import Fraction
from itertools import product
from math import floor

from sawside.lengths.areas import SQUARE_INCHES_IN
from sawside.lengths.plain_numbers import number_text
from sawside.lengths.words import listed
from sawside.wood.liquids import FLUID_OUNCES, MILLILITERS_PER_GALLON, OUNCES

_LEFT_OVER = Fraction(1, 3)
"""As few cans as leave at most this much of what is needed over (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Sold:
    """How a finish is sold: volumes here are US gallons, or liters.

    `cans` are (volume, one, many, most of them beside larger ones), the largest first: more of
    one size than that are a larger can. `poured` and `weighed` are (how many of the unit in one,
    its name): of a volume, and of a pound or kilogram.
    """

    cans: tuple[tuple[Fraction, str, str, int], ...]
    poured: tuple[int, str]
    weighed: tuple[int, str]
    area: str
    square_inches: Fraction
    places: int

    def amount(self, volume):
        """A volume as it is poured: "9.4 fl oz", "280 ml"."""
        each, unit = self.poured
        return f"{self._told(volume * each)} {unit}"

    def weight(self, weight):
        """A weight as it is put on a scale; it is in pounds or kilograms."""
        each, unit = self.weighed
        return f"{self._told(weight * each)} {unit}"

    def _told(self, value):
        return number_text(value, self.places if value >= _LITTLE else self.places + 1)

    def buy(self, volume):
        """The cans for a volume over 0: "1 quart and 1 half pint"."""
        counts = _cans_for([(size, most) for size, _, _, most in self.cans], volume)
        bought = zip(counts, self.cans, strict=True)
        return listed([_of(count, one, many) for count, (_, one, many, _) in bought if count])


_LITTLE = 2


def _of(count, one, many):
    if one[0].isdigit():
        return f"{count:,} × {one}"
    return f"{count:,} {one if count == 1 else many}"


def _cans_for(cans, volume):
    """How many of each can; `cans` are (volume, most of them), the largest first."""
    largest = cans[0][0]
    bulk = max(floor(volume / largest) - 1, 0)
    ways = product(range(bulk, bulk + 3), *(range(most + 1) for _, most in cans[1:]))
    enough = []
    for counts in ways:
        over = sum(n * size for n, (size, _) in zip(counts, cans, strict=True)) - volume
        if over >= 0:
            wasted = over > volume * _LEFT_OVER
            enough.append((wasted, over if wasted else 0, sum(counts), over, counts))
    return min(enough)[-1]


US = Sold(
    (
        (Fraction(1), "gallon", "gallons", 0),
        (Fraction(1, 4), "quart", "quarts", 3),
        (Fraction(1, 8), "pint", "pints", 1),
        (Fraction(1, 16), "half pint", "half pints", 1),
    ),
    (FLUID_OUNCES, "fl oz"),
    (OUNCES, "oz"),
    "ft²",
    SQUARE_INCHES_IN["ft²"],
    1,
)
METRIC = Sold(
    (
        (Fraction(5), "5 L", "5 L", 0),
        (Fraction(5, 2), "2.5 L", "2.5 L", 1),
        (Fraction(1), "1 L", "1 L", 2),
        (Fraction(1, 2), "500 ml", "500 ml", 1),
        (Fraction(1, 4), "250 ml", "250 ml", 1),
    ),
    (1000, "ml"),
    (1000, "g"),
    "m²",
    SQUARE_INCHES_IN["m²"],
    0,
)
COVERS_METRIC = (SQUARE_INCHES_IN["ft²"] / SQUARE_INCHES_IN["m²"]) / (MILLILITERS_PER_GALLON / 1000)
"""Square meters by the liter for each square foot by the gallon."""
