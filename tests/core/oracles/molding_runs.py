"""Random runs of molding: cut as they were told, put up as solids along walls that were measured.

Each check takes a random number generator, asks with numbers of its own, and gives what is wrong as
sentences; none when all is right. Seen from above the walls are lines, found by vectors from their
lengths and corners; each layer lies on those lines moved out by what lies beneath.
"""

from fractions import Fraction

import numpy as np

from sawside.lengths.real import nearby
from tests.core.exactly import pieces
from tests.core.oracles.put_together import differ, inches, number
from tests.core.oracles.solid import NEAR, faces_meet, overlap, translation, vector
from tests.core.oracles.strips_together import corner_of, lay, stands

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


def _turned(corner):
    return float(180 - corner[1]) * (1 if corner[0] == "in" else -1)


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


def run(rng):
    """A run from end to end, with corners, joints and ends of every kind."""
    walls = rng.randint(2, 6)
    corners = [
        _corner(
            rng, rng.choice(["in", "out"]), Fraction(rng.randint(60 * STEPS, 140 * STEPS), STEPS)
        )
        for _ in range(walls - 1)
    ]
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


def loop(rng):
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
    headings = np.radians(np.cumsum([0.0, *(_turned(corner) for corner in corners[:-1])]))
    directions = np.column_stack([np.cos(headings), np.sin(headings)])
    lengths = [rng.uniform(15, 70) for _ in range(count - 2)]
    so_far = np.array(lengths) @ directions[:-2]
    last = np.linalg.solve(directions[-2:].T, -so_far)
    return [*lengths, *map(float, last)] if min(last) > 12 else None


class _Walls:
    """The lines of the walls, seen from above with y away from whoever faces the first one."""

    def __init__(self, lengths, corners, closed):
        self.count, self.closed = len(lengths), closed
        turns = [_turned(corner) for corner in corners]
        headings = -np.radians(np.cumsum([0.0, *turns[: self.count - 1]]))
        self.along = [vector(np.cos(each), np.sin(each), 0) for each in headings]
        self.out = [vector(each[1], -each[0], 0) for each in self.along]
        self.starts = [vector(0, 0, 0)]
        for along, long in zip(self.along, lengths, strict=True):
            self.starts.append(self.starts[-1] + along * long)

    def through(self, wall, offset):
        """How far the line of a wall is out, with all beneath it."""
        return self.starts[wall] @ self.out[wall] + offset

    def crossing(self, wall, offset):
        """Where the lines of a wall and of the next one cross, both `offset` out."""
        other = (wall + 1) % self.count
        rows = np.array([self.out[wall][:2], self.out[other][:2]])
        x, y = np.linalg.solve(rows, [self.through(each, offset) for each in (wall, other)])
        return vector(x, y, 0)


class _Up:
    """One layer as it goes up: the solids by wall, `offset` out of the walls."""

    def __init__(self, walls, layer, thick, ends):
        self.walls, self.layer, self.ends = walls, layer, ends
        self.offset = float(sum(thick[: layer - 1]))
        self.thick, self.rest = float(thick[layer - 1]), float(sum(thick[layer:]))
        self.parts, self.solids = {}, {}

    def add(self, wall, part):
        """Hang a piece by its left end; give what is wrong at its right end."""
        walls, along = self.walls, self.walls.along[wall]
        made, back = _solid(part)
        start = walls.starts[wall] + walls.out[wall] * self.offset
        made = lay(made, back, along, left=start)
        made = made.moved(translation(*(-self._off(made, wall, part, "left") * along)))
        self.parts[wall], self.solids[wall] = part, made
        yield from _tip_to_tip(part, made, along)
        yield from differ(f"the right end of {part.name}", self._off(made, wall, part, "right"), 0)

    def _off(self, made, wall, part, side):
        """How far along its wall an end is from where it is to be."""
        walls, along = self.walls, self.walls.along[wall]
        before = wall - 1 if side == "left" else wall
        if walls.closed or 0 <= before < walls.count - 1:
            before %= walls.count
            if "corner" in getattr(part, side).angle:
                other = before if side == "left" else (before + 1) % walls.count
                out = walls.out[other]
                free = min(made.vertices() @ out) - walls.through(other, self.offset)
                return free / (along @ out)
            place = walls.crossing(before, self.offset)
            return (corner_of(made, side, "inside") - place) @ along
        kind, adds = self.ends[side]
        way = -1 if side == "left" else 1
        place = walls.starts[wall if side == "left" else wall + 1] + way * adds * along
        if kind == "return":
            return (corner_of(made, side, "outside") - place) @ along + way * self.rest
        if kind == "scarf":
            return (made.face(side).mean(axis=0) - place) @ along
        return (corner_of(made, side, "inside") - place) @ along

    def close(self, wall, joint):
        """What is wrong at the corner behind a wall."""
        other = (wall + 1) % self.walls.count
        one, two = self.solids[wall], self.solids[other]
        where = f"layer {self.layer}, corner {wall + 1}"
        if joint == "cope":
            yield from self._coped(wall, other, where)
            return
        if not faces_meet(one, "right", two, "left"):
            yield f"{where} doesn't meet"
        if overlap(one, two) > NEAR:
            yield f"{where}: the pieces overlap"

    def _coped(self, wall, other, where):
        """Where one piece butts and the next is coped over it, which goes up later."""
        ends = {wall: self.parts[wall].right, other: self.parts[other].left}
        coped = [each for each, end in ends.items() if end.cut == "coped"]
        butts = [each for each, end in ends.items() if end.angle.endswith("into the corner")]
        if len(coped) != 1 or len(butts) != 1:
            yield f"{where} isn't coped once"
            return
        if list(self.parts).index(butts[0]) > list(self.parts).index(coped[0]):
            yield f"{where}: what is coped goes up before what it is coped over"
        side = "right" if coped[0] == wall else "left"
        solid = self.solids[coped[0]]
        back, face = (corner_of(solid, side, each) for each in ("inside", "outside"))
        for part in (0, 1 / 3, 1):  # each depth of the profile meets the same depth of the other
            meets = self.walls.crossing(wall, self.offset + part * self.thick)
            yield from differ(
                f"{where} at {part:.2f} of its depth",
                max(abs(back + (face - back) * part - meets)),
                0,
            )
        if self.solids[butts[0]].depth(meets - (0, 0, 0.5)) < -NEAR:
            yield f"{where}: the face that is coped over doesn't reach the cope"

    def cap(self, side, part):
        """What is wrong where a self-return closes an end."""
        wall = 0 if side == "left" else self.walls.count - 1
        out, leg = self.walls.out[wall], self.solids[wall]
        made, back = _solid(part)
        turn = corner_of(leg, side, "inside")
        at = {"right": turn} if side == "left" else {"left": turn}
        made = lay(made, back, out if side == "left" else -out, **at)
        ends = ("left", "right") if side == "left" else ("right", "left")
        if not faces_meet(leg, ends[0], made, ends[1]):
            yield f"the {side} return doesn't meet"
        if overlap(leg, made) > NEAR:
            yield f"the {side} return overlaps"
        free = min(made.vertices() @ out) - self.walls.through(wall, 0)
        yield from differ(f"the {side} return from the wall", free, 0)


def _put_up(values, lengths, corners, thick, ends):
    """What is wrong with a run once it is up."""
    told = pieces("molding_run", **values)
    walls = _Walls(lengths, corners, ends is None)
    faults = []
    for layer in range(1, len(thick) + 1):
        up = _Up(walls, layer, thick, ends)
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


def _solid(part):
    """A part as it was told, and how long it is at the back."""
    return stands(part, face_is_long=_grows(part) > 0)


def _grows(part):
    """How much longer the face is than the back, as a part of the thickness, by the ends told."""
    grows = 0.0
    for side in ("left", "right"):
        angle = getattr(part, side).angle
        if "swung" in angle:
            turn = np.tan(np.radians(float(angle.split("°")[0].split(" ")[-1])))
            grows += turn if f"swung {side}" in angle else -turn
    return grows


def _tip_to_tip(part, made, along):
    low, high = made.extent(along)
    yield from differ(f"tip to tip of {part.name}", high - low, nearby(part.length))


def scarf(rng):
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
        first, second = _solid(one), _solid(two)
        first = lay(*first, along, left=vector(0, 0, 0))
        second = lay(*second, along, right=vector(float(sum(lengths)), 0, 0))
        faults += [*_tip_to_tip(one, first, along), *_tip_to_tip(two, second, along)]
        if not faces_meet(first, "right", second, "left") or overlap(first, second) > NEAR:
            faults.append(f"the scarf doesn't meet ({thick}, {degrees}, {lengths})")
    return faults


CHECKS = (run, loop, scarf)
