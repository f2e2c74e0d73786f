"""Moldings hung along walls as solids, as they were told: where their ends are, and their corners.

Seen from above the walls are lines, found by vectors from their lengths and corners; each layer
lies on those lines moved out by what lies beneath. y points away from whoever faces the first one.
"""

import numpy as np

from sawside.lengths.real import nearby
from tests.core.oracles.put_together import differ
from tests.core.oracles.solid import NEAR, faces_meet, overlap, translation, vector
from tests.core.oracles.strips_together import corner_of, lay, stands


def turned(corner):
    """Degrees that a run turns at a corner, ("in" or "out", degrees, …): above 0 for "in"."""
    return float(180 - corner[1]) * (1 if corner[0] == "in" else -1)


class Walls:
    """The lines of the walls, seen from above with y away from whoever faces the first one."""

    def __init__(self, lengths, corners, closed):
        self.count, self.closed = len(lengths), closed
        turns = [turned(corner) for corner in corners]
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


class Up:
    """One layer as it goes up: the solids by wall, `offset` out of the walls."""

    def __init__(self, walls, layer, thick, ends):
        self.walls, self.layer, self.ends = walls, layer, ends
        self.offset = float(sum(thick[: layer - 1]))
        self.thick, self.rest = float(thick[layer - 1]), float(sum(thick[layer:]))
        self.parts, self.solids = {}, {}

    def add(self, wall, part):
        """Hang a piece by its left end; give what is wrong at its right end."""
        walls, along = self.walls, self.walls.along[wall]
        made, back = solid_of(part)
        start = walls.starts[wall] + walls.out[wall] * self.offset
        made = lay(made, back, along, left=start)
        made = made.moved(translation(*(-self._off(made, wall, part, "left") * along)))
        self.parts[wall], self.solids[wall] = part, made
        yield from tip_to_tip(part, made, along)
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
        made, back = solid_of(part)
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


def solid_of(part):
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


def tip_to_tip(part, made, along):
    """What is wrong with how long a piece is from tip to tip."""
    low, high = made.extent(along)
    yield from differ(f"tip to tip of {part.name}", high - low, nearby(part.length))
