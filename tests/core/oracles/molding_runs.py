"""Random runs of molding: cut as they were told, put up as solids along walls that were measured.

Each check takes a random number generator, asks with numbers of its own, and gives what is wrong as
sentences; none when all is right.
"""

from fractions import Fraction

import numpy as np

from tests.core.asking import inches
from tests.core.exactly import pieces
from tests.core.oracles.hung_moldings import Up, Walls, solid_of, tip_to_tip, turned
from tests.core.oracles.put_together import differ
from tests.core.oracles.random_forms import number
from tests.core.oracles.solid import NEAR, faces_meet, overlap, vector
from tests.core.oracles.strips_together import lay

STEPS = 50
"""Of a degree: half of a corner then has two decimals, as it is told."""
LOOPS = {
    "room": ("in", "in", "in", "in"),
    "island": ("out", "out", "out", "out"),
    "bay": ("in", "in", "in", "in", "in", "in"),
    "column": ("out", "out", "out", "out", "out", "out"),
    "room with a jog": ("out", "in", "in", "in", "in", "in"),
    "room with a chimney breast": ("in", "out", "out", "in", "in", "in", "in", "in"),
}


def _corner(rng, turn, degrees, joint=None):
    joint = joint or rng.choice(["cope", "miter"])
    return turn, degrees, joint if turn == "in" else "miter"


def _any_corner(rng):
    """One of a room or case, or now and then one as flat as those of a bow window, mitered."""
    turn = rng.choice(["in", "out"])
    if rng.random() < 0.3:
        return _corner(rng, turn, Fraction(rng.randint(140 * STEPS, 179 * STEPS), STEPS), "miter")
    return _corner(rng, turn, Fraction(rng.randint(60 * STEPS, 140 * STEPS), STEPS))


def _rows(lengths, corners):
    """The walls as typed; an outside corner now and then as it is read past 180."""
    rows = []
    for at, long in enumerate(lengths):
        row = {"length": long}
        if at < len(corners):
            turn, degrees, joint = corners[at]
            read = 360 - degrees if turn == "out" and at % 2 else degrees
            row |= {"turn": f"{turn}side", "corner": f"{read}"}
            row |= {"joint": joint} if turn == "in" else {}
        rows.append(row)
    return rows


def _layers(rng):
    return [number(rng, 1 / 8, 1, 32) for _ in range(rng.randint(1, 3))]


def _asked(rng, lengths, corners, thick, **more):
    values = {
        "walls": _rows(lengths, corners),
        "layers": [{"projection": inches(each)} for each in thick],
    }
    if rng.random() < 0.5:
        values["first"] = f"{rng.randint(1, len(lengths))}"
    return values | more


def molding_run(rng):
    """A run from end to end, with corners, joints and ends of every kind."""
    walls = rng.randint(2, 6)
    corners = [_any_corner(rng) for _ in range(walls - 1)]
    lengths = [number(rng, 10, 60) for _ in range(walls)]
    for wall in range(1, walls - 1):  # a jog that may be less deep than the molding is thick
        if {corners[wall - 1][0], corners[wall][0]} == {"in", "out"} and rng.random() < 0.4:
            corners[wall - 1 : wall + 1] = [
                _corner(rng, corner[0], 90 + Fraction(rng.randint(-50, 50), STEPS), corner[2])
                for corner in corners[wall - 1 : wall + 1]
            ]
            lengths[wall] = number(rng, 1 / 2, 3)
    thick = _layers(rng)
    values = _asked(rng, [inches(each) for each in lengths], corners, thick)
    ends = {side: _end_of(rng, side, values) for side in ("left", "right")}
    return _put_up(values, [float(each) for each in lengths], corners, thick, ends)


def _end_of(rng, side, values):
    """(kind, what the end adds to its wall) of one end."""
    kind = rng.choice(["wall", "board", "return", "scarf", "open"])
    values[f"{side}_end"] = kind
    scribe, board = number(rng, 0, 1), number(rng, 1 / 8, 1)
    adds = 0.0
    if kind in ("wall", "board"):
        values[f"{side}_scribe"] = inches(scribe)
        adds += float(scribe)
    if kind == "board":
        values[f"{side}_board"] = inches(board)
        adds -= float(board)
    if kind == "scarf":
        values[f"{side}_scarf"] = f"{rng.randint(15, 60)}"
    return kind, adds


def molding_loop(rng):
    """A run all the way around, in a room or around what stands in it."""
    name = rng.choice(sorted(LOOPS))
    turns = LOOPS[name]
    lengths, corners = None, None
    while lengths is None:
        corners = _corners_of_a_loop(rng, turns)
        lengths = _closed(rng, corners)
    thick = _layers(rng)
    typed = [f"{each:.9f} in" for each in lengths]
    values = _asked(rng, typed, corners, thick, around="closed")
    return _put_up(values, lengths, corners, thick, None)


def _corners_of_a_loop(rng, turns):
    """Corners near those of a regular one, which turn exactly once around."""
    inside = turns.count("in") - turns.count("out")
    usual = 180 - Fraction(360, abs(inside)) if len(set(turns)) == 1 else Fraction(90)
    off = [Fraction(rng.randint(-5 * STEPS, 5 * STEPS), STEPS) for _ in turns[1:]]
    signed = [each if turn == "in" else -each for each, turn in zip(off, turns[1:], strict=True)]
    rest = -sum(signed) if turns[0] == "in" else sum(signed)
    return [
        _corner(rng, turn, usual + each) for turn, each in zip(turns, (rest, *off), strict=True)
    ]


def _closed(rng, corners):
    """Lengths of walls that come back to their start, or None where the last two can't."""
    if not all(50 <= corner[1] <= 145 for corner in corners):
        return None
    count = len(corners)
    headings = np.radians(np.cumsum([0.0, *(turned(corner) for corner in corners[:-1])]))
    directions = np.column_stack([np.cos(headings), np.sin(headings)])
    lengths = [rng.uniform(15, 70) for _ in range(count - 2)]
    so_far = np.array(lengths) @ directions[:-2]
    last = np.linalg.solve(directions[-2:].T, -so_far)
    return [*lengths, *map(float, last)] if min(last) > 12 else None


def _put_up(values, lengths, corners, thick, ends):
    """What is wrong with a run once it is up."""
    told = pieces("molding_run", **values)
    walls = Walls(lengths, corners, ends is None)
    faults = []
    for layer in range(1, len(thick) + 1):
        up = Up(walls, layer, thick, ends)
        for part in told:
            if part.layer == layer and "wall" in part.key:
                faults += up.add(int(part.key.split("_")[-1]) - 1, part)
        if len(up.solids) != walls.count:
            return [f"a piece is missing ({values})"]
        for wall, corner in enumerate(corners):
            faults += up.close(wall, corner[2])
        for part in told:
            if part.layer == layer and "self_return" in part.key:
                faults += up.cap(part.key.split("_")[2], part)
    capped = sum(kind == "return" for kind, _ in (ends or {}).values())
    faults += differ("the number of pieces", len(told), len(thick) * (walls.count + capped))
    return [f"{each} ({values})" for each in faults]


def molding_scarf(rng):
    """A run that goes on in another one: the scarfs of both meet, in each layer."""
    thick, degrees = _layers(rng), rng.randint(10, 70)
    lengths = [number(rng, 10, 60) for _ in range(2)]
    layers = [{"projection": inches(each)} for each in thick]
    told = []
    for side, far, long in zip(("right", "left"), ("left", "right"), lengths, strict=True):
        values = {"walls": [{"length": inches(long)}], "layers": layers, f"{far}_end": "open"}
        values |= {f"{side}_end": "scarf", f"{side}_scarf": f"{degrees}"}
        told.append(pieces("molding_run", **values))
    faults, along = [], vector(1, 0, 0)
    for one, two in zip(*told, strict=True):
        first, second = solid_of(one), solid_of(two)
        first = lay(*first, along, left=vector(0, 0, 0))
        second = lay(*second, along, right=vector(float(sum(lengths)), 0, 0))
        faults += [*tip_to_tip(one, first, along), *tip_to_tip(two, second, along)]
        if not faces_meet(first, "right", second, "left") or overlap(first, second) > NEAR:
            faults.append(f"the scarf doesn't meet ({thick}, {degrees}, {lengths})")
    return faults


CHECKS = (molding_run, molding_loop, molding_scarf)
