"""The plan of sheets that buys least: what is had at once, then better ones in so many steps.

The number of sheets (or their cost) is looked for from the least that any plan needs
(`area_bounds`). The same request and steps give the same plan on every machine.
"""

from collections import Counter
from fractions import Fraction

from sawside.boards.fills import Steps
from sawside.boards.sheets.cut_list import planned
from sawside.boards.sheets.plan import Cut, Part, PlannedSheet, SheetPlan
from sawside.boards.sheets.search import Search
from sawside.boards.sheets.whole import whole

__all__ = ["Cut", "Part", "PlannedSheet", "SheetPlan", "plan_sheets"]

STEPS = 300_000
"""Steps of a plan that somebody waits for."""


def plan_sheets(request, most_steps=STEPS):
    """The best `SheetPlan` that is found in so many steps, the same one every time.

    Raises `NoRoomError` where a panel goes into no sheet, or where those too large for what is on
    sale don't go into what is on hand (or were not found to).
    """
    exact = whole(request)
    search = Search(exact, Steps(most_steps))
    search.run()
    panels = [list(item.panels) for item in exact.items]
    sheets = []
    for (kind, i), tree in search.best:
        stock = (request.on_hand if kind == "hand" else request.to_buy)[i]
        room = (exact.rooms if kind == "hand" else exact.buys)[i]
        sheets.append(planned(exact, panels, stock, kind == "buy", room, tree, request.trim))
    bought = Counter(i for (kind, i), _ in search.best if kind == "buy")
    value = sum(exact.costs[i] * count for i, count in bought.items())
    unit = exact.cost_unit
    return SheetPlan(tuple(sheets), value * unit, Fraction(min(search.bound, value)) * unit)
