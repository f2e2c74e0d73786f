"""Where the pieces of a block meet: short lines at its edges, so that what it says can be read."""

from itertools import pairwise

from sawside.drawing.shapes import line
from sawside.lengths.real import nearby

TICK, _SHARE, _CLOSEST = 8, 0.2, 4
"""Pixels of a tick, how much of the block it takes at most, and how near to each other they are."""


def ticks(block, scale, pixel, top=0.0):
    """The ticks of a `Block` that is drawn `scale` times as wide as it is, from `top` on; none
    where they could not be told apart."""
    left, right = nearby(block.columns[0]), nearby(block.right)
    high, low = (top + nearby(place) * scale for place in (block.rows[0], block.bottom))
    for x in _apart(block.columns, 1, pixel):
        for end, by in ((high, _deep(low - high, pixel)), (low, -_deep(low - high, pixel))):
            yield line((x, end), (x, end + by))
    for place in _apart(block.rows, scale, pixel):
        y = top + place
        for end, by in ((left, _deep(right - left, pixel)), (right, -_deep(right - left, pixel))):
            yield line((end, y), (end + by, y))


def _deep(size, pixel):
    return min(TICK * pixel, size * _SHARE)


def _apart(places, scale, pixel):
    on = [nearby(place) * scale for place in places]
    if any(after - before < _CLOSEST * pixel for before, after in pairwise(on)):
        return []
    return on[1:]
