"""The shapes that a shelf bends in along its span: those of a beam, however it is held.

Each is the curve of a beam of one inch under one pound (`beam`): spread evenly, in the middle,
at the quarters, and at its ends where it stands over its supports. A sum of them takes the shape of
a shelf that twists as well; on two supports the first alone is within 1 part in 100 of it.
"""

from fractions import Fraction
from functools import lru_cache
from itertools import pairwise
from math import sqrt

from sawside.wood.strength.beam import Beam

SPREADS = ("even", "middle", "quarters")
_OUTER, _INNER = (sqrt(5 + 2 * sqrt(10 / 7)) / 3, sqrt(5 - 2 * sqrt(10 / 7)) / 3)
GAUSS = tuple(
    (place, weight / 900)
    for place, weight in (
        (-_OUTER, 322 - 13 * sqrt(70)),
        (-_INNER, 322 + 13 * sqrt(70)),
        (0.0, 512.0),
        (_INNER, 322 + 13 * sqrt(70)),
        (_OUTER, 322 - 13 * sqrt(70)),
    )
)
"""Places from -1 to 1 and weights by which a polynomial of degree 9 is summed, Gauss-Legendre."""


@lru_cache(maxsize=256)
def shapes_at(supports, overhang, part, derivative=0):
    """The shapes, or their derivatives, at a part of the span; `overhang` is one as well."""
    one = Fraction(1)
    beams = (Beam(supports, spread, one, one, overhang) for spread in SPREADS)
    shapes = [float(beam.drop_at(part, derivative)) for beam in beams]
    if overhang:
        shapes.append(float(_loaded_ends(overhang, part, derivative)))
    return tuple(shapes)


def _loaded_ends(over, part, derivative):
    """The drop under half a pound at each end, its slope or its curvature."""
    if 0 <= part <= 1:
        return over / 4 * (part * part - part, 2 * part - 1, 2)[derivative]
    beyond = -part if part < 0 else part - 1
    toward = (-1 if part < 0 else 1) ** derivative
    return (
        toward
        * (
            beyond * beyond * (3 * over - beyond) / 12 + over * beyond / 4,
            beyond * (2 * over - beyond) / 4 + over / 4,
            (over - beyond) / 2,
        )[derivative]
    )


def _many(overhang):
    return len(SPREADS) + bool(overhang)


def _stations(overhang):
    """Places along the left half, as parts of the span, and twice their weights."""
    ends = [-overhang] * bool(overhang) + [Fraction(0), Fraction(1, 4), Fraction(1, 2)]
    for left, right in pairwise(ends):
        half = (right - left) / 2
        for place, weight in GAUSS:
            yield left + half * (1 + Fraction(place)), 2 * float(half) * weight


@lru_cache(maxsize=16)
def products(supports, overhang):
    """The sums along the whole shelf of the products of shapes, for derivatives 0, 1 and 2.

    Exact but for the last digits; `overhang` is a part of the span.
    """
    many = _many(overhang)
    sums = [[[0.0] * many for _ in range(many)] for _ in range(3)]
    for part, weight in _stations(overhang):
        for derivative, table in enumerate(sums):
            values = shapes_at(supports, overhang, part, derivative)
            for row, one in zip(table, values, strict=True):
                for column, other in enumerate(values):
                    row[column] += weight * one * other
    return sums


@lru_cache(maxsize=16)
def _evenly(supports, overhang):
    """The mean of each shape over the whole shelf."""
    means = [0.0] * _many(overhang)
    long = float(1 + 2 * overhang)
    for part, weight in _stations(overhang):
        for at, value in enumerate(shapes_at(supports, overhang, part)):
            means[at] += weight / long * value
    return tuple(means)


def under(spread, supports, overhang):
    """The mean of each shape where a load of this spread lies."""
    if spread == "even":
        return _evenly(supports, overhang)
    return shapes_at(supports, overhang, Fraction(1, 2 if spread == "middle" else 4))
