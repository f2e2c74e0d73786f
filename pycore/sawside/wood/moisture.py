"""Moisture of wood in percent of its dry weight: in balance with the air, and through the year.

Balance with the air: Wood Handbook, FPL-GTR-282 (2021), equation 4-5, with the temperature T in
degrees Fahrenheit and the relative humidity h as a part of 1. It meets every cell of Table 4-2
within 0.07. Regions: Table 13-2.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.wood.tables import entries

DRIEST, DAMPEST = Fraction(6), Fraction(14)
"""Between these the coefficients of dimensional change hold (Wood Handbook, Table 13-5)."""

REGIONS = entries("moisture_regions.csv", "average")
"""Regions of the United States by key; each row has low and high beside the average."""


def _quadratic(constant, first, second):
    constant, first, second = (Fraction(each) for each in (constant, first, second))
    return lambda t: constant + first * t + second * t * t


_W = _quadratic("330", ".452", ".00415")
_K = _quadratic(".791", ".000463", "-.000000844")
_K1 = _quadratic("6.34", ".000775", "-.0000935")
_K2 = _quadratic("1.09", ".0284", "-.0000904")


def equilibrium(fahrenheit, humidity):
    """Moisture in percent of wood that has come to balance with the air.

    `fahrenheit` from 30 to 200, `humidity` in percent from 0 to 95: the range of Table 4-2. Exact.
    """
    h = Fraction(humidity) / 100
    w, k, k1, k2 = (of(Fraction(fahrenheit)) for of in (_W, _K, _K1, _K2))
    kh = k * h
    held = k1 * kh + 2 * k1 * k2 * kh**2
    return 1800 / w * (kh / (1 - kh) + held / (1 + k1 * kh + k1 * k2 * kh**2))


def fahrenheit(celsius):
    """A temperature in degrees Fahrenheit, exact."""
    return Fraction(celsius) * 9 / 5 + 32


@dataclass(frozen=True, slots=True)
class Year:
    """The driest and the dampest that wood gets through the year, in percent; how that is known."""

    low: Fraction
    high: Fraction
    cited: str


def year_of(region):
    """The year of a region."""
    row = REGIONS[region].row
    return Year(Fraction(row["low"]), Fraction(row["high"]), REGIONS[region].cited)
