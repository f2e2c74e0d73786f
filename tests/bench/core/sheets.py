"""Plans of sheets against published sheets and sheets that were cut apart, and how long they take.

The published sets ask for the most that one sheet gives; the planted ones, with a kerf and without
a rest, are of 1 to 3 sheets with 4 to 25 pieces each, that may not be turned and that may.
"""

import json
import random

from sawside.boards.fills import Steps
from sawside.boards.sheets.fullest import fullest
from sawside.boards.sheets.planner import plan_sheets
from sawside.boards.sheets.recursion import Recursion
from sawside.boards.sheets.whole import Item
from tests.bench.core import timed_sheets
from tests.bench.core.inside import inside_pyodide
from tests.core.oracles.sawn_sheets import faults, planted, published

STEPS = 1_000_000
SETS = 4


def measure():
    """Yield boards.gcut_wrong, cgcut_wrong, sheet_plans_wrong, planted_sheets_missed and
    planted_turned_missed; `sheet_seconds_p95` and `sheet_seconds_most` are those of the planted
    ones in the steps of a plan that somebody waits for, inside Pyodide."""
    yield "boards.gcut_wrong", sum(_gives(*each) != each[2] for each in published("gcut"))
    yield "boards.cgcut_wrong", sum(_worth(*each) != each[2] for each in published("cgcut"))
    everything, wrong = [], 0
    for name, turned in (("planted_sheets_missed", False), ("planted_turned_missed", True)):
        missed = 0
        for sheets, request in _planted(turned):
            found = plan_sheets(request, STEPS)
            missed += int(found.value) - sheets
            wrong += bool(faults(request, found))
            everything.append(_as_texts(request))
        yield f"boards.{name}", missed
    yield "boards.sheet_plans_wrong", wrong
    told = inside_pyodide(timed_sheets.__file__, f"timed({json.dumps(everything)})")
    seconds = sorted(each[0] for each in told)
    yield "boards.sheet_seconds_p95", seconds[len(seconds) * 95 // 100]
    yield "boards.sheet_seconds_most", seconds[-1]


def _planted(turned):
    """(how many sheets, the request) of sheets cut apart."""
    for sheets in (1, 2, 3):
        for pieces in (4, 8, 12, 18, 25):
            for seed in range(SETS):
                yield sheets, planted(random.Random(f"bench {seed}"), sheets, pieces, turned)


def _as_texts(request):
    """A request as `timed_sheets` takes it."""
    (sheet,) = request.to_buy
    sizes = [[str(each.length), str(each.width)] for each in request.panels]
    room = [str(sheet.length), str(sheet.width)]
    return [sizes, request.panels[0].grain, str(request.kerf), room]


def _gives(_, sheet, __, pieces):
    kinds = [(*piece[:3], ("item", place, False)) for place, piece in enumerate(pieces)]
    return Recursion(kinds, sheet, Steps(STEPS)).most(*sheet)


def _worth(_, sheet, __, pieces):
    items = [Item(length, width, most, False, ()) for length, width, _, most in pieces]
    values = [piece[2] for piece in pieces]
    best, _ = fullest(items, [item.count for item in items], values, sheet, Steps(STEPS))
    return best.used
