"""Random cases with crown on them: each piece sawn flat as it was told, and hung on the case."""

import math

from sawside.lengths.real import nearby
from tests.core.asking import inches
from tests.core.exactly import exactly, pieces
from tests.core.oracles.crown_runs import TOUCHING, Sawn, texts_of
from tests.core.oracles.put_together import differ
from tests.core.oracles.random_forms import number
from tests.core.oracles.solid import translation
from tests.core.oracles.sprung_corners import hung
from tests.core.oracles.wrapped_cases import (
    LEFT,
    RIGHT,
    Case,
    amounts,
    closed,
    dies_in_the_case,
    directions,
    places,
    returns,
)

KINDS = {"cope": ("inside", 90.0), "return": ("outside", 90.0), "corner": ("outside", 90.0)}
EDGES = {"inside": "bottom", "outside": "top"}


def crown(rng):
    """Crown by its spring and face width, its top edge at the top of the case or a little above."""
    case = Case(rng, "crown")
    spring, width = rng.choice([38, 45, rng.randint(200, 700) / 10]), rng.randint(8, 24) / 8
    high, rise = number(rng, 20, 90), number(rng, 0, 0.25)
    case.values |= {"found": "angle", "spring": f"{spring}", "width": f"{width} in"}
    case.values |= {"case_height": inches(high), "rise": inches(rise)}
    case.values |= {"tilts": rng.choice(["left", "right", "both"])}
    told = exactly("case_molding", **case.values)
    parts = {part.key: part for part in pieces("case_molding", **case.values)}
    saw, made = _Saw(case, told, parts, width, spring), {}
    faults = [*_hang(case, saw, made), *_hang_returns(case, saw, made)]
    faults += [*closed(case, made, TOUCHING), *amounts(case, told, parts)]
    drop = width * math.cos(math.radians(spring))
    faults += differ("the bottom edge", told["bottom_line"], float(high + rise) - drop)
    return [f"{each} ({case.values})" for each in faults]


class _Saw:
    """Cuts the pieces as they were told."""

    def __init__(self, case, told, parts, width, spring):
        turns = [(kind, 90) for *_, kinds in case.lines() for kind in kinds if kind != "wall"]
        self.texts = texts_of(told, turns, case.ends.values())
        self.told, self.parts, self.width, self.spring = told, parts, width, spring
        self.reach = width * math.sin(math.radians(spring))

    def cut(self, key, kinds):
        """A piece with ends of these kinds."""
        corners = [KINDS.get(kind) for kind in kinds]
        return Sawn(self.parts[key], self._edges(key), self.texts, corners, self.width, self.spring)

    def _edges(self, key):
        """How long both edges were told to be: those of a return with its part."""
        part, edges = self.parts[key], {}
        if key.endswith("return"):
            longs = part.short_side, part.long_side
            return {
                edge: float(nearby(each)) for edge, each in zip(EDGES.values(), longs, strict=True)
            }
        for edge in EDGES.values():
            by_name = {name.split(". ", 1)[1]: each for name, each in self.told.get(f"{edge}s", ())}
            edges[edge] = by_name.get(part.name, float(nearby(part.length)))
        return edges


def _hang(case, saw, made):
    """Hang each piece by its left end; what is wrong with the ends of both its edges."""
    for key, start, stop, kinds in case.lines():
        piece, wanted = saw.cut(key, kinds), places(case, (start, stop, kinds), saw.reach)
        motion = _brought(piece, saw, directions(start, stop)[0], LEFT, wanted[LEFT, "inside"])
        made[key] = piece.solid.moved(motion)
        for (side, edge), place in wanted.items():
            off = max(abs(motion(piece.end(side, EDGES[edge])) * (1, 1, 0) - place))
            yield from differ(f"{key}, {side} end, {EDGES[edge]} edge", off, 0)


def _brought(piece, saw, along, side, place):
    """The motion that hangs a piece along a line, the bottom edge of an end at a place."""
    motion = hung(saw.spring, along)
    return motion.then(translation(*(place - motion(piece.end(side, "bottom")) * (1, 1, 0))))


def _hang_returns(case, saw, made):
    """The small pieces, each at the end that it closes."""
    lines = {line[0]: line[1:] for line in case.lines()}
    for side, key, out in returns(case):
        cap = f"{side}_self_return"
        piece = saw.cut(cap, ("wall", "return") if side == LEFT else ("return", "wall"))
        place = places(case, lines[key], saw.reach)[side, "inside"]
        along, end = (out, RIGHT) if side == LEFT else (-out, LEFT)
        made[cap] = piece.solid.moved(_brought(piece, saw, along, end, place))
        yield from dies_in_the_case(case, made[cap], side, out)


CHECKS = (crown,)
