"""Cans bought by trying every number of each size, all in sixteenths of a gallon or 250 ml."""

from fractions import Fraction
from itertools import product

SIZES = {
    "us": {"gallon": 16, "quart": 4, "pint": 2, "half pint": 1},
    "metric": {"5 L": 20, "2.5 L": 10, "1 L": 4, "500 ml": 2, "250 ml": 1},
}


def best_cans(need, way):
    """(cans, what is left over as a part of the need) of the best purchase; `need` in those units.

    The fewest cans that leave a third over at most, or else what leaves the least.
    """
    sizes = list(SIZES[way].values())
    most = [int(need // size) + 2 for size in sizes]
    ways = []
    for counts in product(*(range(min(each, 6) + 1) for each in most)):
        over = Fraction(sum(n * size for n, size in zip(counts, sizes, strict=True))) - need
        if over >= 0:
            ways.append((sum(counts), over / need))
    few = [each for each in ways if each[1] <= Fraction(1, 3)]
    return min(few) if few else min(ways, key=lambda each: (each[1], each[0]))
