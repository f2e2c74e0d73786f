"""Plans of sheets of one size, each with the time it took.

This file is run inside Pyodide, where nothing but the core is at hand.
"""

import time
from fractions import Fraction

from sawside.boards.sheets.planner import plan_sheets
from sawside.boards.sheets.request import Panel, Sheet, SheetRequest


def request_of(sizes, grain, kerf, sheet):
    """Pieces out of sheets, as many as one buys; all sizes are numbers or texts of inches."""
    panels = tuple(Panel(Fraction(size[0]), Fraction(size[1]), grain=grain) for size in sizes)
    return SheetRequest(panels, (), (Sheet(*map(Fraction, sheet)),), Fraction(kerf))


def timed(sets):
    """[seconds, sheets, bound] of the plan of each set (sizes, grain, kerf, sheet), in the steps of
    a plan that somebody waits for."""
    told = []
    for each in sets:
        request = request_of(*each)
        start = time.perf_counter()
        found = plan_sheets(request)
        told.append([time.perf_counter() - start, int(found.value), int(found.bound)])
    return told
