"""Clamps and cauls for a glue-up: how many and how far apart. Common practice, no source.

The squeeze of a clamp spreads at about 45 degrees into the outer strip, so clamps twice as far
apart as that strip is wide reach all of the first glue line; no more than a foot apart in any case.
Nobody sets them closer than half a foot: a stiff batten along each edge makes a narrow strip wider.
"""

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from sawside.lengths.units import INCHES_PER
from sawside.reckoners.boards.shared.sold import exact
from sawside.wood.numbers import metric

_SIXTH = Fraction(1, 6)


@dataclass(frozen=True, slots=True)
class Clamping:
    """Clamps in spaces of `apart` between the two that are `end` from the ends; `most` apart is
    what was asked; `outer` is the narrower outer strip; `cauls` are pairs."""

    end: Fraction
    span: Fraction
    most: Fraction
    clamps: int
    cauls: int
    outer: Fraction

    @property
    def apart(self):
        """From clamp to clamp."""
        return self.span / (self.clamps - 1)

    @property
    def batten(self):
        """How wide a batten along each edge has to be for the squeeze to spread; 0 for none."""
        return max(self.apart / 2 - self.outer, Fraction(0))


def clamping_of(given, show, length, outer):
    """How strips of this `length` with an outer one this wide are clamped."""
    step = INCHES_PER["mm"] * 25 if metric(show) else Fraction(1)
    end = min(2 * step, length * _SIXTH)
    span = length - 2 * end
    most = min(max(2 * outer, 6 * step), 12 * step)
    if given.spacing:
        most = exact(given.spacing, show)
    clamps, cauls = ceil(span / most) + 1, ceil(span / (18 * step)) + 1
    return Clamping(end, span, most, clamps, cauls, outer)
