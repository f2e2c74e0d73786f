"""Plans of sticks of one length, each with the time it took.

This file is run inside Pyodide, where nothing but the core is at hand.
"""

import time
from fractions import Fraction

from sawside.boards.planner import plan
from sawside.boards.request import Piece, Request, Stock


def request_of(sizes, room, kerf):
    """Pieces out of sticks of one length, as many as one buys."""
    pieces = tuple(Piece(Fraction(size)) for size in sizes)
    return Request(pieces, (), (Stock(Fraction(room)),), Fraction(kerf))


def timed(sets):
    """[seconds, sticks, bound] of the plan of each set (sizes, room, kerf), all as texts, in the
    steps of a plan that somebody waits for."""
    told = []
    for each in sets:
        request = request_of(*each)
        start = time.perf_counter()
        found = plan(request)
        told.append([time.perf_counter() - start, int(found.value), int(found.bound)])
    return told
