"""Plans of sheets against published sheets and sheets that were cut apart, and how long they take.

The published sets ask for the most that one sheet gives; the planted ones, with a kerf and without
a rest, are of 1 to 3 sheets with 4 to 25 pieces each that may not be turned.
"""

import random
import time

from sawside.boards.fills import Steps
from sawside.boards.sheets.fullest import fullest
from sawside.boards.sheets.planner import plan_sheets
from sawside.boards.sheets.recursion import Recursion
from sawside.boards.sheets.whole import Item
from tests.core.oracles.sawn_sheets import faults, planted, published

STEPS = 1_000_000
SETS = 4


def measure():
    """Yield boards.gcut_wrong, cgcut_wrong, planted_sheets_missed, sheet_plans_wrong and
    sheet_seconds_p95."""
    yield "boards.gcut_wrong", sum(_gives(*each) != each[2] for each in published("gcut"))
    yield "boards.cgcut_wrong", sum(_worth(*each) != each[2] for each in published("cgcut"))
    seconds, missed, wrong = [], 0, 0
    for sheets in (1, 2, 3):
        for pieces in (4, 8, 12, 18, 25):
            for seed in range(SETS):
                request = planted(random.Random(f"bench {seed}"), sheets, pieces)
                start = time.perf_counter()
                found = plan_sheets(request, STEPS)
                seconds.append(time.perf_counter() - start)
                missed += int(found.value) - sheets
                wrong += bool(faults(request, found))
    yield "boards.planted_sheets_missed", missed
    yield "boards.sheet_plans_wrong", wrong
    yield "boards.sheet_seconds_p95", sorted(seconds)[len(seconds) * 95 // 100]


def _gives(_, sheet, __, pieces):
    kinds = [(*piece[:3], ("item", place, False)) for place, piece in enumerate(pieces)]
    return Recursion(kinds, sheet, Steps(STEPS)).most(*sheet)


def _worth(_, sheet, __, pieces):
    items = [Item(length, width, most, False, ()) for length, width, _, most in pieces]
    values = [piece[2] for piece in pieces]
    best, _ = fullest(items, [item.count for item in items], values, sheet, Steps(STEPS))
    return best.used
