"""The angle of a corner from lengths, and how far off it may be when each length may be off.

A triangle with legs a and b and c across has its corner between the legs where
tan(corner / 2)^2 = (c^2 - (a - b)^2) / ((a + b)^2 - c^2): the half-angle form of the law of
cosines, plane trigonometry.
"""

from fractions import Fraction
from itertools import product

from sawside.geometry.angles import arctangent, arctangent_of_root
from sawside.lengths.real import nearby, sqrt


def corner_of_three(one, other, across):
    """The corner between two legs (rational inches) in degrees, 0 to 180.

    ValueError where no triangle has these sides.
    """
    top = across * across - (one - other) ** 2
    bottom = (one + other) ** 2 - across * across
    if top <= 0 or bottom <= 0:
        raise ValueError("no triangle has these sides")
    return 2 * arctangent_of_root(top / bottom)


def corner_within(one, other, across, off):
    """The least and the greatest corner when each of the three lengths may be `off` either way.

    `off` is less than either leg. 0 and 180 where a flat triangle lies within reach. The corner
    grows with the distance across; along a leg it has at most one extreme, a greatest one where
    the triangle is square at the far end of the other leg, so the ends of each range and those
    places are all that need be tried.
    """
    legs = [(leg - off, leg + off) for leg in (one, other)]
    least = min((_flattened(*pair, across - off) for pair in product(*legs)), key=nearby)
    tried = list(product(*legs))
    for number, far in ((0, 1), (1, 0)):
        for leg in legs[far]:
            square = leg * leg - (across + off) ** 2
            best = nearby(sqrt(square)) if square > 0 else None
            if best is not None and legs[number][0] < best < legs[number][1]:
                tried.append((best, leg) if number == 0 else (leg, best))
    return least, max((_flattened(*pair, across + off) for pair in tried), key=nearby)


def _flattened(one, other, across):
    """The corner; folded shut or stretched straight where the sides are past any triangle."""
    if across <= abs(one - other):
        return Fraction(0)
    if across >= one + other:
        return Fraction(180)
    return corner_of_three(one, other, across)


def corner_of_slope(along, square_over, *, opens):
    """The corner of a bevel drawn on a board: `along` the edge, `square_over` from it, in inches.

    `opens` says that it is wider than a square, so that the line leans away from the edge.
    """
    lean = arctangent(square_over / along)
    return 180 - lean if opens else lean
