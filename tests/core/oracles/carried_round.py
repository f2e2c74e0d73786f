"""A case carried round a square corner, any face down, level or tilted: by sampled angles alone.

It shares no code with the core: corners of the box in plan are placed against both outer walls, and
whether the inner corner lies in the box is asked of its four sides.
"""

from itertools import permutations
from math import cos, pi, sin

TURNS = 90
TILTS = 90


def rounds(sizes, below, above, headroom):
    """Whether a case of three `sizes` goes round; all in inches, floats."""
    return any(
        round_in_plan(long, across, below, above)
        for upright, along, across in set(permutations(sizes))
        for long in _shadows(upright, along, headroom)
    )


def _shadows(upright, along, headroom):
    """How long it is in plan, level and with one end ever higher, until it meets the ceiling."""
    for step in range(TILTS + 1):
        tilt = pi / 2 * step / TILTS
        if along * sin(tilt) + upright * cos(tilt) > headroom + 1e-9:
            return
        yield along * cos(tilt) + upright * sin(tilt)


def round_in_plan(long, across, below, above):
    """Whether a rectangle goes from one hall into the other: slid as it is, or turned all the way
    with both ends on the outer walls."""
    turns = [pi / 2 * step / TURNS for step in range(TURNS + 1)]
    if any(_slides(long, across, below, above, turn) for turn in turns):
        return True
    if across > min(below, above) or across > long:
        return False
    return all(not _holds(long, across, below, above, turn) for turn in turns)


def _slides(long, across, below, above, turn):
    wide = long * abs(cos(turn)) + across * abs(sin(turn))
    high = long * abs(sin(turn)) + across * abs(cos(turn))
    return wide <= below + 1e-9 and high <= above + 1e-9


def _holds(long, across, below, above, turn):
    """Whether the inner corner is inside of the box whose long side leans on both outer walls."""
    foot, head = (0.0, long * sin(turn)), (long * cos(turn), 0.0)
    in_x, in_y = across * sin(turn), across * cos(turn)
    box = [foot, head, (head[0] + in_x, head[1] + in_y), (foot[0] + in_x, foot[1] + in_y)]
    sides = zip(box, [*box[1:], box[0]], strict=True)
    crosses = [(u - x) * (above - y) - (v - y) * (below - x) for (x, y), (u, v) in sides]
    return min(crosses) > 1e-9
