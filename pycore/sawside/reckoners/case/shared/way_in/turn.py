"""Whether a box goes round a square corner, seen from above: exact, for any rational sizes.

While it turns, the ends of its outer long side slide along both outer walls: then the corner
inside is nearest to it. Turned so far that it stands θ to one wall, it keeps clear of that corner
while above × sin θ + below × cos θ − length × sin θ × cos θ is at least as much as it is across
(the ladder round the corner, a worked example of any calculus text, with a breadth). With
t = tan(θ/2) that is a polynomial of degree four that must not be less than 0 from t = 0 to 1.
"""

from fractions import Fraction
from itertools import pairwise
from math import lcm

_HALVINGS = 40
"""Of the turn: what is still undecided then is off by less than a billionth of an inch."""
FINE = 1 << 10
"""Parts of an inch in which the longest is found, down."""


def goes_round(one, other, below, above):
    """Whether a box with sides `one` and `other` in plan goes from a hall `below` wide into one
    `above` wide; exact inches, and touching is passing."""
    across, along = sorted((one, other))
    if across > min(below, above):
        return False
    return along <= max(below, above) or _turns(along, across, below, above)


def _turns(along, across, below, above):
    zeroth, first = below - across, 2 * (above - along)
    second, third, fourth = -2 * across, 2 * (above + along), -(below + across)
    scale = 12 * lcm(*(Fraction(each).denominator for each in (along, across, below, above)))
    p0, p1, p2, p3, p4 = (int(each * scale) for each in (zeroth, first, second, third, fourth))
    return _never_less(
        (
            p0,
            p0 + p1 // 4,
            p0 + p1 // 2 + p2 // 6,
            p0 + 3 * p1 // 4 + p2 // 2 + p3 // 4,
            p0 + p1 + p2 + p3 + p4,
        ),
        _HALVINGS,
    )


def _never_less(heights, halvings):
    """Whether a curve of Bernstein `heights`, whole numbers, is never less than 0 from 0 to 1."""
    if min(heights) >= 0:
        return True
    if heights[0] < 0 or heights[-1] < 0:
        return False
    if halvings == 0:
        return True
    first, last, row = [], [], list(heights)
    for level in range(4, -1, -1):
        first.append(row[0] << level)
        last.append(row[-1] << level)
        row = [low + high for low, high in pairwise(row)]
    return _never_less(first, halvings - 1) and _never_less(last[::-1], halvings - 1)


def most(fits, limit):
    """The most length, down to a part of an inch (`FINE`), up to a `limit`, that `fits`; 0 where
    none does. What is shorter than one that fits has to fit as well."""
    low, high = 0, int(limit * FINE) + 1
    while high - low > 1:
        middle = (low + high) // 2
        if fits(Fraction(middle, FINE)):
            low = middle
        else:
            high = middle
    return Fraction(low, FINE)
