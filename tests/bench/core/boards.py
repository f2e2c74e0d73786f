"""Plans of sticks against known optima, against the oldest rule, and how long they take.

Classes u120, t60 and hard28 are published. The last, sticks with a kerf that were cut apart without
a rest, is of our own trade.
"""

import json
import random
from fractions import Fraction

from sawside.boards.planner import plan
from tests.bench.core import timed_plans
from tests.bench.core.inside import inside_pyodide
from tests.core.oracles.sawn_sticks import cut_apart, faults, first_fit_decreasing, published

SETS = 20
KERF = Fraction(1, 8)


def measure():
    """Yield boards.*_over_optimum and *_most_over, plans_wrong and ffd_bars_saved, in the steps of
    a plan that somebody waits for; `seconds_p95` and `seconds_most` are those of all these plans
    inside Pyodide (node's engine is Chromium's)."""
    wrong, saved, everything = 0, 0, []
    for name, sets in _classes():
        over = []
        for sizes, room, kerf, best in sets:
            request = timed_plans.request_of(sizes, room, kerf)
            found = plan(request)
            wrong += bool(faults(request, found))
            over.append(int(found.value) - best)
            with_kerf = [size + kerf for size in sizes]
            saved += first_fit_decreasing(with_kerf, room + kerf) - int(found.value)
            everything.append(([str(size) for size in sizes], str(room), str(kerf)))
        yield f"boards.{name}", sum(over)
        yield f"boards.{name.rpartition('_over_')[0]}_most_over", max(over)
    yield "boards.plans_wrong", wrong
    yield "boards.ffd_bars_saved", saved
    told = inside_pyodide(timed_plans.__file__, f"timed({json.dumps(everything)})")
    seconds = sorted(each[0] for each in told)
    yield "boards.seconds_p95", seconds[len(seconds) * 95 // 100]
    yield "boards.seconds_most", seconds[-1]


def _classes():
    """(name of the figure, its sets (sizes, room, kerf, the best number))."""
    for name in ("u120", "t60", "hard28"):
        sets = [(sizes, room, Fraction(0), best) for _, sizes, room, best in published(name)]
        yield f"{name}_over_optimum", sets
    planted = [cut_apart(random.Random(f"bench {n}"), 40, Fraction(96), KERF) for n in range(SETS)]
    yield "planted_over_optimum", [(each, Fraction(96), KERF, 40) for each in planted]
