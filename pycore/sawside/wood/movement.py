"""How much of its width a board moves for each 1 % of moisture (Wood Handbook, chapter 13).

Equation 13-2, change = width x C x (M_F - M_I), holds where all moistures are from 6 to 14 %; C is
the coefficient of Table 13-5. Where one is outside, equation 13-3 takes the whole shrinkage S in
percent, from green to oven dry:

    change = width x (M_F - M_I) / (30 (100) / S - 30 + M_I)

up to 30 %, where drying wood begins to shrink. It follows from a width that shrinks evenly from
30 % to 0, here written down from that, since the chapter was not at hand. For a moisture now of
10 % it is the same as C, which is how a shrinkage is worked back where only C is on file:
S = 3000 C / (1 + 20 C).
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.wood.moisture import DAMPEST, DRIEST
from sawside.wood.numbers import number_text

SATURATED = Fraction(30)
"""Moisture in percent from which on wood keeps its size: fiber saturation, as a round number."""


@dataclass(frozen=True, slots=True)
class Rate:
    """The part of the width for each 1 % of moisture, one way across the grain.

    `working` is how it was worked out, blank for a coefficient as it is on file; `cited` says
    where its figure is from.
    """

    each: Fraction
    working: str
    cited: str


def within(*moistures):
    """Whether the coefficients hold for all of these, in percent."""
    return all(DRIEST <= moisture <= DAMPEST for moisture in moistures)


def shrinkage_of(coefficient):
    """The whole shrinkage in percent that a coefficient answers to; exact."""
    return 3000 * coefficient / (1 + 20 * coefficient)


def rate(moves, way, now, inside):
    """The `Rate` of a `Movement`, "tangential" or "radial", from the moisture now, in percent.

    By its coefficient where all moistures are `inside` the range of those; else by equation 13-3,
    for which `now` is at most `SATURATED`.
    """
    coefficient = getattr(moves, way)
    if inside:
        return Rate(coefficient, "", moves.cited)
    whole = moves.shrinkage
    shrinkage = shrinkage_of(coefficient) if whole is None else getattr(whole, way)
    each = 1 / (3000 / shrinkage - SATURATED + now)
    told = number_text(shrinkage, 3)
    working = (
        f"Change in width per 1%: 1 ÷ (30 × 100 ÷ {told} − 30 + "
        f"{number_text(now, 3)}) = {number_text(each, 5)}"
    )
    if whole is None:
        return Rate(
            each, working, f"{_BEYOND} {told}% worked back from its coefficient: {moves.cited}"
        )
    return Rate(each, working, f"{_BEYOND} {told}% from {whole.cited}")


_BEYOND = "equation 13-3, since a moisture is outside 6 to 14%, with the total shrinkage of"
