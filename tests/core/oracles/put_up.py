"""Walls, floors and strips tried out place by place: oracles for what is put up.

Shares no code with the questions. Inches, exact but for the case that is turned, in floats.
"""

import math
from fractions import Fraction
from itertools import pairwise

BESIDE = Fraction(3, 8)
"""Of a stud beside a screw's center; common practice, no source."""


def stud_centers(first, spacing, left, width, stud):
    """Centers from the case's left of the studs that a case hides a part of, found by walking."""
    found, at = [], first - left
    while at > -1000:
        at -= spacing
    while at < 1000:
        if at + stud / 2 > 0 and at - stud / 2 < width:
            found.append(at)
        at += spacing
    return found


def is_hit(place, center, stud, off):
    """Whether a place is in a stud, with wood beside it, wherever the stud is up to `off` away."""
    return all(
        center + error - stud / 2 + BESIDE <= place <= center + error + stud / 2 - BESIDE
        for error in (-off, Fraction(0), off)
    )


def is_clear(place, uprights, clear):
    """Whether a driver has room beside every upright (left face, right face) of a case."""
    return all(place <= left - clear or place >= right + clear for left, right in uprights)


def hittable(centers, stud, off, uprights, clear, width):
    """How many studs have a place, on any 64th, that is hit and clear."""
    return sum(
        any(
            is_hit(place, center, stud, off) and is_clear(place, uprights, clear)
            for step in range(-64, 65)
            if 0 < (place := center + Fraction(step, 64)) < width
        )
        for center in centers
    )


def along(line, x):
    """The height of a polyline [(x, y), …] at x."""
    for (x0, y0), (x1, y1) in pairwise(line):
        if x0 <= x <= x1:
            return y0 + (y1 - y0) * (x - x0) / (x1 - x0)
    raise ValueError(x)


def lowered(lines, steps=96):
    """Where a level board comes to rest that is lowered on polylines of a floor; tried at many
    places, and at every one of theirs."""
    heights = []
    for line in lines:
        first, last = line[0][0], line[-1][0]
        xs = [first + (last - first) * Fraction(step, steps) for step in range(steps + 1)]
        heights += [along(line, x) for x in (*xs, *(x for x, _ in line))]
    return max(heights)


def scribed(wall, lap, wide, compass, height):
    """What is left of a strip `wide` at a height, held upright with its outer edge on the wall, a
    polyline [(height, gap), …], and marked with a compass. x grows toward the wall."""
    touches = min(gap for _, gap in wall)
    inner = touches - wide
    mark = along(wall, height) - compass
    assert mark <= touches, "the line runs off the strip"
    return mark - inner


def turned_case(width, height, up, rack, turn):
    """(line to its left side at the top, at the bottom, rising and falling diagonal, how much
    lower its right foot is) of a case racked to the right by an angle, then turned to the right."""
    lean = rack + turn
    bottom_right = (width * math.cos(turn), -width * math.sin(turn))
    top_left = (height * math.sin(lean), height * math.cos(lean))
    top_right = (bottom_right[0] + top_left[0], bottom_right[1] + top_left[1])
    line = -3.0
    rising = math.hypot(*top_right)
    falling = math.dist(top_left, bottom_right)
    return up * math.sin(lean) - line, -line, rising, falling, -bottom_right[1]
