"""Random cases as solids, with the moldings on them cut as they were told and hung around them.

Seen from above x goes to the right and y away from whoever faces the case; its face frame's face
lies on y = 0, the frame's left edge on x = 0, the wall behind where the case ends. Each check takes
a random number generator, asks with numbers of its own, and gives what is wrong as sentences.
"""

import math
from fractions import Fraction
from itertools import combinations, pairwise

import numpy as np

from sawside.lengths.real import nearby
from tests.core.asking import inches
from tests.core.exactly import exactly, pieces
from tests.core.oracles.hung_moldings import solid_of
from tests.core.oracles.put_together import differ
from tests.core.oracles.random_forms import number
from tests.core.oracles.solid import NEAR, Solid, faces_meet, overlap, vector
from tests.core.oracles.strips_together import corner_of, lay

SHOWING = {"free": ("left", "right"), "left": ("right",), "right": ("left",), "walls": ()}
HIGH = 50.0
LEFT, RIGHT = "left", "right"


def box(low, high):
    """What lies between two corners."""
    names = [(side, axis) for side in ("low", "high") for axis in range(3)]
    normals = np.vstack([-np.eye(3), np.eye(3)])
    return Solid(tuple(names), normals, np.array([*(-each for each in low), *high], dtype=float))


class Case:
    """A case that was measured: its own box and that of its face frame, and what is asked of it."""

    def __init__(self, rng, molding):
        wide, deep, frame = number(rng, 16, 60), number(rng, 9, 24), number(rng, 0.5, 1)
        past = [number(rng, 0, 1.5) if molding != "strip" else Fraction(0) for _ in range(2)]
        if molding == "strip":
            frame = Fraction(0)
        self.built = rng.choice(sorted(SHOWING))
        self.scribe = number(rng, 0, 0.5) if rng.random() < 0.4 else Fraction(0)
        self.ends = {side: rng.choice(["wall", "cope", "return"]) for side in (LEFT, RIGHT)}
        self.short = {side: float(number(rng, 0, 2)) for side in (LEFT, RIGHT)}
        self.values = {
            "molding": molding,
            "built": self.built,
            "case_width": inches(wide),
            "case_depth": inches(deep),
            "scribe": inches(self.scribe),
            "kerf": "1/8 in",
            "waste": f"{rng.randint(0, 30)}",
        }
        if molding != "strip":
            self.values |= {"frame": inches(frame), "frame_left": inches(past[0])}
            self.values |= {"frame_right": inches(past[1])}
        for side in (LEFT, RIGHT):
            self.values[f"{side}_end"] = self.ends[side]
            self.values[f"{side}_short"] = inches(Fraction(self.short[side]))
        self.showing = SHOWING[self.built]
        self.past = dict(zip((LEFT, RIGHT), map(float, past), strict=True))
        self.right = float(wide + sum(past))
        self.back, frame = float(deep + frame), float(frame)
        left, right = self.past[LEFT], self.right - self.past[RIGHT]
        self.boxes = [box((left, frame, -HIGH), (right, self.back, HIGH))]
        if frame:
            self.boxes.append(box((0, 0, -HIGH), (self.right, frame, HIGH)))

    def lines(self):
        """(key of its piece, where it begins, where it ends) of each line in front of which there
        is molding, with the kinds of its ends, from left to right as one faces it."""
        corner, wide, far = "corner", self.right, self.back
        if LEFT in self.showing:
            yield "left_side", (0, far), (0, 0), (self.ends[LEFT], corner)
        kinds = [corner if side in self.showing else self.ends[side] for side in (LEFT, RIGHT)]
        yield "front", (0, 0), (wide, 0), tuple(kinds)
        if RIGHT in self.showing:
            yield "right_side", (wide, 0), (wide, far), (corner, self.ends[RIGHT])


def directions(start, stop):
    """Along a line, and away from the case."""
    along = vector(*stop, 0) - vector(*start, 0)
    along = along / np.linalg.norm(along)
    return along, vector(along[1], -along[0], 0)


def asked_for(case, kind, side, projection):
    """Where an end is to be, from its corner or wall inward: at the inside edge, at the outside."""
    if kind == "wall":
        return -float(case.scribe), -float(case.scribe)
    if kind == "corner":
        return 0.0, -projection
    if kind == "cope":  # the molding on the wall stands out as far: there the two faces cross
        return 0.0, projection
    return case.short[side] + projection, case.short[side]


def places(case, line, projection):
    """{(side, "inside" or "outside"): where that edge of a piece is to end, seen from above}."""
    start, stop, kinds = line
    along, out = directions(start, stop)
    wanted = {}
    for side, corner, inward, kind in zip(
        (LEFT, RIGHT), (start, stop), (along, -along), kinds, strict=True
    ):
        inside, outside = asked_for(case, kind, side, projection)
        wanted[side, "inside"] = vector(*corner, 0) + inward * inside
        wanted[side, "outside"] = vector(*corner, 0) + inward * outside + out * projection
    return wanted


def returns(case):
    """(side, the piece that it closes, out of that one's line) of each return."""
    lines = {key: (start, stop) for key, start, stop, _ in case.lines()}
    for side in (LEFT, RIGHT):
        if case.ends[side] == "return":
            key = f"{side}_side" if side in case.showing else "front"
            yield side, key, directions(*lines[key])[1]


def flat(rng):
    """A base, a band or a strip."""
    molding = rng.choice(["base", "strip"])
    case, thick, high = Case(rng, molding), number(rng, 1 / 4, 1.5), number(rng, 1, 6)
    case.values |= {"thickness": inches(thick), "molding_height": inches(high)}
    if molding == "base":
        bottom = number(rng, 0, 40)
        case.values |= {"bottom_at": inches(bottom)}
    told = exactly("case_molding", **case.values)
    parts = {part.key: part for part in pieces("case_molding", **case.values)}
    made = {}
    faults = [*_hang(case, parts, float(thick), made), *closed(case, made, NEAR)]
    faults += amounts(case, told, parts)
    if molding == "base":
        faults += differ("the top edge", told["top_line"], high + bottom)
    return [f"{each} ({case.values})" for each in faults]


def _hang(case, parts, thick, made):
    """Hang each piece by its left end, the returns last; what is wrong with their own ends."""
    for key, start, stop, kinds in case.lines():
        along, _ = directions(start, stop)
        solid, back = solid_of(parts[key])
        wanted = places(case, (start, stop, kinds), thick)
        made[key] = lay(solid, back, along, left=wanted[LEFT, "inside"])
        for (side, edge), place in wanted.items():
            off = max(abs(corner_of(made[key], side, edge) - place))
            yield from differ(f"{key}, {side} end, {edge}", off, 0)
    for side, key, out in returns(case):
        solid, back = solid_of(parts[f"{side}_self_return"])
        at = {RIGHT if side == LEFT else LEFT: corner_of(made[key], side, "inside")}
        made[f"{side}_self_return"] = lay(solid, back, out if side == LEFT else -out, **at)
        yield from dies_in_the_case(case, made[f"{side}_self_return"], side, out)


def dies_in_the_case(case, cap, side, out):
    """What is wrong where the square end of a return comes to the case: it lies on its surface."""
    corners = cap.vertices()
    reach = corners @ out
    end = corners[reach < reach.min() + NEAR].mean(axis=0)
    return differ(f"the {side} return off the case", max(e.depth(end) for e in case.boxes), 0)


def closed(case, made, near):
    """What is wrong at the joints, or where something runs into something else."""
    keys = [key for key, *_ in case.lines()]
    joints = list(pairwise(keys))
    for side, key, _ in returns(case):
        cap = f"{side}_self_return"
        joints.append((cap, key) if side == LEFT else (key, cap))
    for one, two in joints:
        if not faces_meet(made[one], RIGHT, made[two], LEFT):
            yield f"{one} and {two} don't meet"
    for one, two in combinations(made, 2):
        if overlap(made[one], made[two]) > near:
            yield f"{one} runs into {two}"
    for key, each in made.items():
        if any(overlap(each, wood) > near for wood in case.boxes):
            yield f"{key} runs into the case"


def amounts(case, told, parts):
    """What is told of the whole: the number of pieces, the packing and what to buy, where a cut of
    an eighth at 45 degrees takes its diagonal."""
    lines, caps = list(case.lines()), list(returns(case))
    yield from differ("the number of pieces", len(parts), len(lines) + len(caps))
    packing = {f"{side.capitalize()} side": case.past[side] for side in case.showing}
    told_packing = dict(told.get("packing", ()))
    for side, far in packing.items():
        yield from differ(f"packing, {side}", told_packing.get(side, 0), far)
    square = sum(kind == "wall" for *_, kinds in lines for kind in kinds) + len(caps)
    cuts = square + (2 * len(parts) - square) * math.sqrt(2)
    length = sum(float(nearby(part.length)) for part in parts.values())
    waste = 1 + float(case.values["waste"]) / 100
    yield from differ("to buy", told["stock"], (length + cuts / 8) * waste)


CHECKS = (flat,)
