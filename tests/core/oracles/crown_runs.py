"""Random runs of crown, each piece sawn flat as it was told and hung along its wall as a solid.

Each check takes a random number generator and gives what is wrong as sentences.
"""

import re
from fractions import Fraction
from itertools import pairwise

import numpy as np

from sawside.lengths.real import nearby
from tests.core.at_the_saw import cut_flat
from tests.core.exactly import exactly, pieces
from tests.core.oracles.hung_moldings import Walls
from tests.core.oracles.put_together import differ
from tests.core.oracles.solid import faces_meet, overlap, translation, vector
from tests.core.oracles.sprung_corners import hung, molding

TOLD = re.compile(r"(Inside|Outside) corner, (.*?)°, face up: (.*?of the blade\.)")
TOUCHING = 1e-6
COUNTS = {"in": "inside", "out": "outside"}


class Sawn:
    """One piece as it was told: cut on the saw, with where its cuts meet its edges."""

    def __init__(self, part, edges, texts, ends, width, spring):
        made, self.width = molding(width, spring), width
        start = {"top": (0, width, 0), "bottom": (0, 0, 0)}
        made = self._sawn(made, "left", part.left, texts, ends[0], start)
        marks = {
            edge: (self._at(made, "left", edge) + edges[edge], y, 0)
            for edge, y in (("top", width), ("bottom", 0))
        }
        self.solid = self._sawn(made, "right", part.right, texts, ends[1], marks)

    def _sawn(self, made, side, end, texts, corner, marks):
        if corner is None:
            return made.cut(side, (-1 if side == "left" else 1, 0, 0), marks["bottom"])
        settings = (float(nearby(each)) for each in (end.turned, end.tilted))
        return cut_flat(made, texts[side, *corner], side, *settings, marks)

    def _at(self, made, side, edge):
        """Where along its length a cut meets an edge."""
        normal, offset = made.normal(side), made.offsets[made.names.index(side)]
        return (offset - normal[1] * (self.width if edge == "top" else 0)) / normal[0]

    def end(self, side, edge):
        """That place."""
        return vector(self._at(self.solid, side, edge), self.width if edge == "top" else 0, 0)


def crown_run(rng):
    """A run along two to four walls, the corners of any kind, its ends square or returned."""
    count = rng.randint(2, 4)
    corners = [
        (rng.choice(["in", "out"]), Fraction(rng.randint(600, 1790), 10)) for _ in range(count - 1)
    ]
    lengths = [Fraction(rng.randint(20 * 16, 60 * 16), 16) for _ in range(count)]
    spring, width = rng.choice([38, 45, rng.randint(200, 700) / 10]), rng.randint(8, 40) / 8
    edge, stops = rng.choice(["top", "bottom"]), [rng.choice(["wall", "return"]) for _ in range(2)]
    values = {
        "of": "run",
        "spring": f"{spring}",
        "width": f"{width} in",
        "tilts": rng.choice(["left", "right", "both"]),
        "measured_on": edge,
        "left_stop": stops[0],
        "right_stop": stops[1],
        "walls": [
            {"length": f"{long} in"}
            | ({"turn": COUNTS[corner[0]], "corner": f"{corner[1]}"} if corner else {})
            for long, corner in zip(lengths, [*corners, None], strict=True)
        ],
    }
    faults = _put_up(values, [float(each) for each in lengths], corners, stops, width, spring)
    return [f"{each} ({values})" for each in faults]


def _put_up(values, lengths, corners, stops, width, spring):
    told = exactly("crown", **values)
    parts = {part.key: part for part in pieces("crown", **values)}
    names = {label.split(". ", 1)[1]: at for at, (label, _) in enumerate(told["tops"])}
    walls = Walls(lengths, [(*corner, "miter") for corner in corners], closed=False)
    texts = texts_of(told, corners, stops)
    around = [None if stops[0] == "wall" else ("outside", 90.0)]
    around += [(COUNTS[turn], float(degrees)) for turn, degrees in corners]
    around.append(None if stops[1] == "wall" else ("outside", 90.0))
    made = {}
    for key, part in parts.items():
        ends = [None, around[0]] if key == "left_self_return" else [around[-1], None]
        if key.startswith("wall"):
            wall = int(key.split("_")[1]) - 1
            ends = around[wall : wall + 2]
        edges = {edge: told[f"{edge}s"][names[part.name]][1] for edge in ("top", "bottom")}
        made[key] = Sawn(part, edges, texts, ends, width, spring)
        found = [made[key].end("right", edge) - made[key].end("left", edge) for edge in edges]
        for edge, long in zip(edges, found, strict=True):
            yield from differ(f"the {edge} edge of {key}", np.linalg.norm(long), edges[edge])
        low, high = made[key].solid.extent((1, 0, 0))
        if key.startswith("wall"):
            yield from differ(
                f"tip to tip of {key}", high - low, told["pieces"][names[part.name]][1]
            )
    yield from _hung(made, walls, stops, values["measured_on"], width, spring)


def texts_of(told, corners, stops):
    """What is told for each (side, kind, corner)."""
    degrees = {float(corner) for _, corner in corners}
    degrees |= {90.0} if "return" in stops else set()
    texts = {}
    for side in ("left", "right"):
        text = told.get(f"{side}_flat", "")
        if len(degrees) == 1:
            text = text.replace(" corner,", f" corner, {degrees.copy().pop()}°,")
        for kind, corner, laid in TOLD.findall(text):
            texts[side, kind.lower(), float(corner)] = laid
    return texts


def _hung(made, walls, stops, edge, width, spring):
    """Each piece along its wall, its measured edge where it was measured; the joints closed."""
    reach = width * np.sin(np.radians(spring))
    solids, corners = [], []
    for wall in range(walls.count):
        along, piece = walls.along[wall], made[f"wall_{wall + 1}"]
        motion = hung(spring, along)
        start, stop = (motion(piece.end(side, edge)) * (1, 1, 0) for side in ("left", "right"))
        begins, ends = walls.starts[wall], walls.starts[wall + 1]
        if edge == "bottom" and wall == 0 and stops[0] == "return":
            begins = begins + along * reach
        if edge == "bottom" and wall == walls.count - 1 and stops[1] == "return":
            ends = ends - along * reach
        shift = translation(*(begins - start))
        yield from differ(f"wall {wall + 1}", np.abs(shift(stop) - ends).max(), 0)
        solids.append(piece.solid.moved(motion.then(shift)))
        corners.append([shift(motion(piece.end(side, "bottom"))) for side in ("left", "right")])
    joints = list(pairwise(solids))
    for key, wall, way in (("left_self_return", 0, 1), ("right_self_return", -1, -1)):
        if key in made:
            motion = hung(spring, walls.out[wall] * way)
            side = "right" if way == 1 else "left"
            at = corners[wall][0 if way == 1 else 1] - motion(made[key].end(side, "bottom"))
            cap = made[key].solid.moved(motion.then(translation(*at)))
            joints.append((cap, solids[0]) if way == 1 else (solids[-1], cap))
    for one, other in joints:
        if not faces_meet(one, "right", other, "left"):
            yield "a corner does not meet"
        if overlap(one, other) > TOUCHING:
            yield "two pieces overlap"


CHECKS = (crown_run,)
