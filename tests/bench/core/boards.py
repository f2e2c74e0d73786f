"""Plans of sticks against known optima, against the oldest rule, and how long they take.

Class u120 is published; t60 is made as its paper says; the third, sticks with a kerf that were cut
apart without a rest, stands in for a published hard class that was not to be had.
"""

import random
import time
from fractions import Fraction

from sawside.boards.planner import plan
from sawside.boards.request import Piece, Request, Stock
from tests.core.oracles.sawn_sticks import (
    cut_apart,
    faults,
    first_fit_decreasing,
    published,
    triplets,
)

STEPS = 1_000_000
SETS = 20
KERF = Fraction(1, 8)


def measure():
    """Yield boards.*_over_optimum, plans_wrong, ffd_sticks_saved and seconds_p95."""
    seconds, wrong, saved = [], 0, 0
    for name, sets in (("u120", _u120()), ("t60", _t60()), ("planted", _planted())):
        over = []
        for sizes, room, kerf, best in sets:
            request = Request(tuple(map(Piece, sizes)), (), (Stock(room),), kerf)
            start = time.perf_counter()
            found = plan(request, STEPS)
            seconds.append(time.perf_counter() - start)
            wrong += bool(faults(request, found))
            over.append(int(found.value) - best)
            with_kerf = [size + kerf for size in sizes]
            saved += first_fit_decreasing(with_kerf, room + kerf) - int(found.value)
        yield f"boards.{name}_over_optimum", sum(over)
        yield f"boards.{name}_most_over", max(over)
    yield "boards.plans_wrong", wrong
    yield "boards.ffd_sticks_saved", saved
    yield "boards.seconds_p95", sorted(seconds)[len(seconds) * 95 // 100]


def _u120():
    for _, sizes, room, best in published():
        yield sizes, room, Fraction(0), best


def _t60():
    for seed in range(SETS):
        sizes = triplets(random.Random(f"bench {seed}"), 20)
        yield list(map(Fraction, sizes)), Fraction(1000), Fraction(0), 20


def _planted():
    for seed in range(SETS):
        length = Fraction(96)
        yield cut_apart(random.Random(f"bench {seed}"), 40, length, KERF), length, KERF, 40
