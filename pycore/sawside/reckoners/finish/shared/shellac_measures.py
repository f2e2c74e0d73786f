"""Weights and volumes of shellac as one measures them at the bench."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.lengths.plain_numbers import number_text
from sawside.wood.liquids import (
    FLUID_OUNCES,
    GALLONS_PER_POUND,
    GRAMS_PER_LITER,
    GRAMS_PER_POUND,
    MILLILITERS_PER_GALLON,
    OUNCES,
)

_LITTLE = 2


@dataclass(frozen=True, slots=True)
class Measures:
    """`per` turns a cut as it is typed into a weight to one volume of alcohol: ounces to a fluid
    ounce, grams to a milliliter. `room` is what one weight of flakes adds, in volume. `places` are
    the decimals that one can weigh and pour to."""

    weighed: str
    poured: str
    per: int
    room: Fraction
    places: int

    def weight(self, value):
        """A weight as it is put on a scale: "3.4 oz"."""
        return f"{self._told(value)} {self.weighed}"

    def volume(self, value):
        """A volume as it is poured: "13.3 fl oz"."""
        return f"{self._told(value)} {self.poured}"

    def _told(self, value):
        """With one more place where it is so little that it counts."""
        return number_text(value, self.places if value >= _LITTLE else self.places + 1)

    def flat(self, value):
        """A number for the working, to five digits behind the point at most."""
        return number_text(value, 5 if value < 10 else 3)

    def cut_text(self, cut):
        """A cut in pounds to the gallon and in grams to the liter."""
        pounds = cut if self.weighed == "oz" else cut / GRAMS_PER_LITER
        told = f"{number_text(pounds, 2)} lb cut", f"{number_text(pounds * GRAMS_PER_LITER)} g/L"
        return f"{told[0]} ({told[1]})" if self.weighed == "oz" else f"{told[1]} ({told[0]})"


US = Measures("oz", "fl oz", FLUID_OUNCES // OUNCES, GALLONS_PER_POUND * FLUID_OUNCES / OUNCES, 1)
METRIC = Measures("g", "ml", 1000, GALLONS_PER_POUND * MILLILITERS_PER_GALLON / GRAMS_PER_POUND, 0)
