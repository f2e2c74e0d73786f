"""A row of holes at a constant pitch, and the zones where none may be. Inches, exact."""

from dataclasses import dataclass
from fractions import Fraction
from itertools import accumulate
from math import ceil, floor, lcm

from sawside.lengths.real import nearby, settle
from sawside.lengths.units import INCHES_PER

PITCHES = {"1": "1 in", "5/4": "1 1/4 in", "32 mm": "32 mm", "own": "My own"}
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
        steps, _ = settle((last - first) / pitch, floor)
        return cls(first, pitch, steps + 1)

    def center(self, number):
        """The center of a hole, each from its own exact place."""
        return self.first + (number - 1) * self.pitch

    def nearest(self, place):
        """The number of the hole nearest to a place; of two as near, the lower one."""
        number, _ = settle((place - self.first) / self.pitch + Fraction(1, 2), ceil)
        return min(max(number, 1), self.count)


@dataclass(frozen=True, slots=True)
class KeepOut:
    """A band that no hole may touch: its edges."""

    low: Fraction
    high: Fraction

    def touches(self, center, diameter):
        """Whether a hole would reach into the band."""
        return center + diameter / 2 > self.low and center - diameter / 2 < self.high


def most_equal(row, shelves, inside, thickness, rest):
    """The holes, rising, on which the openings are as equal as the row allows; None if none fit.

    A shelf lies `rest` above its hole, under a top at `inside`. Least is first the largest opening
    less the smallest, then the sum of their squares; of what is still equal the larger openings
    are at the bottom. Between given lowest and highest shelves the pitches are shared as evenly as
    they can be, so only those two are searched; no opening of a choice is farther from their mean
    than its largest is from its smallest, which ends the search.
    """
    inside, first = nearby(inside), row.first + rest
    lengths = (inside, thickness, first, row.pitch)
    scale = lcm(*(each.denominator for each in lengths)) * (shelves + 1)
    inside, thick, first, pitch = (int(each * scale) for each in lengths)
    mean = (inside - shelves * thick) // (shelves + 1)
    lowest = [
        (abs(opening - mean), opening, number)
        for number, opening in enumerate(range(first, first + pitch * row.count, pitch), 1)
    ]
    highest = [
        (abs(opening - mean), opening, number)
        for number, opening in ((number, inside - thick - below) for _, below, number in lowest)
    ]
    lowest, highest = sorted(lowest), sorted(highest)
    best = None
    for off, bottom, low in lowest:
        if best and off > best[0]:
            break
        for off_top, top, high in highest:
            if best and off_top > best[0]:
                break
            gaps = _shared(high - low, shelves - 1)
            if gaps is None:
                continue
            openings = (bottom, *(gap * pitch - thick for gap in gaps), top)
            if min(openings) <= 0:
                continue
            uneven = max(openings) - min(openings), sum(opening**2 for opening in openings)
            choice = *uneven, [-opening for opening in openings], [low, *gaps]
            best = choice if best is None else min(best, choice)
    return best and list(accumulate(best[-1]))


def _shared(pitches, gaps):
    """So many whole pitches in so many gaps, as evenly as can be, the larger ones first."""
    if not gaps:
        return [] if pitches == 0 else None
    each, more = divmod(pitches, gaps)
    return [each + 1] * more + [each] * (gaps - more) if each > 0 else None
