"""A row of holes at a constant pitch, and the zones where none may be. Inches, exact."""

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from sawside.lengths.units import INCHES_PER

PITCHES = {
    "1": "1 in",
    "5/4": "1 1/4 in",
    "32 mm": "32 mm",
    "own": "My own",
}
"""Pitches that are common in the trade (common practice, no source)."""


def pitch_of(chosen, own):
    """The pitch in inches of one of `PITCHES`; `own` is the one typed."""
    return (
        own if chosen == "own" else {"32 mm": 32 * INCHES_PER["mm"]}.get(chosen) or Fraction(chosen)
    )


@dataclass(frozen=True, slots=True)
class HoleRow:
    """Holes numbered from 1 up: the first one's center, the pitch, and how many."""

    first: Fraction
    pitch: Fraction
    count: int

    @classmethod
    def up_to(cls, first, pitch, last):
        """The row whose last center is not above `last`; ValueError when not even the first is."""
        if first > last:
            raise ValueError("the first hole is above the last")
        return cls(first, pitch, (last - first) // pitch + 1)

    def center(self, number):
        """The center of a hole, each from its own exact place."""
        return self.first + (number - 1) * self.pitch

    def nearest(self, place):
        """The number of the hole nearest to a place; of two as near, the lower one."""
        number = ceil((place - self.first) / self.pitch + Fraction(1, 2))
        return min(max(number, 1), self.count)


@dataclass(frozen=True, slots=True)
class KeepOut:
    """A band that no hole may touch: its edges."""

    low: Fraction
    high: Fraction

    def touches(self, center, diameter):
        """Whether a hole would reach into the band."""
        return center + diameter / 2 > self.low and center - diameter / 2 < self.high
