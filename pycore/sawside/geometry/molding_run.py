"""A molding along walls or around a case in layers: what every piece of every layer measures.

A leg is one straight run. Each layer sits on the one beneath: the line where its legs lie is the
one where the faces beneath meet, so at a corner it grows by projection x tan(90 - corner / 2), and
in an inside corner it shrinks by that. A mitered end is cut along the line that halves the corner.
In an inside corner that is coped one piece runs in square; the other one is first mitered, which
shows where the faces cross, and sawn along that line.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.geometry.angles import cosine, sine
from sawside.geometry.miter import allowance, along_the_edge, half_corner
from sawside.lengths.real import Exact, sign

RIGHT_ANGLE = Fraction(90)
_NONE = Fraction(0)


@dataclass(frozen=True, slots=True)
class Joint:
    """One end of a leg.

    `kind` is "mitered", "returned" (to the small piece that closes it), "coped" (over the next leg,
    which is "butted" there), "scarfed" or "square" (it meets no other leg). `setting` is in degrees
    from square: above 0 the face is longer than the back (an outside corner), below 0 shorter (an
    inside one); of a scarf it is above 0. `scribe` tells the length left on a square end, or is
    None.
    """

    name: str
    kind: str = "square"
    setting: Exact = _NONE
    corner: Fraction | None = None
    scribe: str | None = None

    @property
    def is_free(self):
        """Whether it can be trimmed in place."""
        return self.kind == "square"

    @property
    def is_inside(self):
        """Whether it is in an inside corner."""
        return self.corner is not None and sign(self.setting) < 0

    def grows(self, projection):
        """How much longer the line of the next layer is at this end, in inches."""
        if self.corner is None:
            return _NONE
        size = allowance(projection, abs(self.setting))
        return size if sign(self.setting) >= 0 else -size

    def cut(self, projection, side):
        """(what it takes off the line at the back, what it adds to the back at the face)."""
        if self.kind == "butted":
            corner = self.corner
            leans = projection * cosine(corner) / sine(corner) if corner < RIGHT_ANGLE else _NONE
            return leans, _NONE
        if self.kind == "scarfed":  # the middle of the joint lies at the end of the line
            lap = allowance(projection, self.setting)
            return (lap / 2, lap) if side == "left" else (-lap / 2, -lap)
        return _NONE, self.grows(projection)


@dataclass(frozen=True, slots=True)
class Leg:
    """A run from joint to joint along wall `wall` (from 1); `line` is how long it is at the back of
    the first layer, in inches. `is_cap` is a self-return: the small piece that closes an end with a
    miter of its own."""

    key: str
    name: str
    wall: int
    line: Exact
    left: Joint
    right: Joint
    is_cap: bool = False

    @property
    def joints(self):
        """(left, right)."""
        return self.left, self.right

    @property
    def is_fixed(self):
        """Whether neither end can be trimmed in place."""
        return not (self.left.is_free or self.right.is_free)


@dataclass(frozen=True, slots=True)
class Piece:
    """A leg in one layer (from 1), in inches: what both ends take off its line at the back, what
    they add to the back at the face, and the `extra` that it is sprung in by."""

    layer: int
    leg: Leg
    projection: Fraction
    line: Exact
    taken: tuple[Exact, Exact]
    adds: tuple[Exact, Exact]
    extra: Fraction

    @property
    def back(self):
        """The length at the back."""
        return self.line - self.taken[0] - self.taken[1] + self.extra

    @property
    def face(self):
        """The length at the face."""
        return self.back + self.adds[0] + self.adds[1]

    @property
    def sides(self):
        """(long side, short side)."""
        back, face = self.back, self.face
        return (face, back) if face >= back else (back, face)

    @property
    def in_sight(self):
        """The length at the face that the pieces coped over its butted ends leave open; 0 or less
        where they meet before it."""
        hidden = _NONE
        for joint, taken in zip(self.leg.joints, self.taken, strict=True):
            if joint.kind == "butted":
                hidden += allowance(self.projection, abs(joint.setting)) - taken
        return self.face - self.extra - hidden

    @property
    def tip_to_tip(self):
        """What is cut off a stick: more than either side where one end opens and one closes."""
        return self.back + sum((adds for adds in self.adds if sign(adds) > 0), _NONE)

    def off_a_stick(self, kerf):
        """What it takes of a stick: its tips, and a cut of the kerf along it at each end."""
        left, right = (along_the_edge(kerf, adds, self.projection) for adds in self.adds)
        return self.tip_to_tip + left + right

    @property
    def is_between(self):
        """Whether neither side goes from tip to tip."""
        return sign(self.adds[0]) * sign(self.adds[1]) < 0

    @property
    def is_coped(self):
        """Whether it is coped at an end."""
        return any(joint.kind == "coped" for joint in self.leg.joints)


def outside_corner(name, degrees):
    """The joint at an outside corner, its degrees measured through what is wrapped."""
    return Joint(name, "mitered", half_corner(degrees), degrees)


def self_return(name):
    """The joint of a leg and of the small piece that closes it."""
    return Joint(name, "returned", RIGHT_ANGLE / 2, RIGHT_ANGLE)


def inside_corner(name, degrees, kind="mitered"):
    """The joint at an inside corner, its degrees measured through the room."""
    return Joint(name, kind, -half_corner(degrees), degrees)


def layered(legs, projections, extra=_NONE):
    """Every piece, layer by layer, each layer's legs from left to right.

    A piece between two inside corners is `extra` longer.
    """
    pieces = []
    lines = [leg.line for leg in legs]
    for layer, projection in enumerate(projections, 1):
        for leg, line in zip(legs, lines, strict=True):
            cuts = leg.left.cut(projection, "left"), leg.right.cut(projection, "right")
            taken, adds = zip(*cuts, strict=True)
            springs = leg.left.is_inside and leg.right.is_inside
            more = extra if springs else _NONE
            pieces.append(Piece(layer, leg, projection, line, taken, adds, more))
        lines = [
            line + leg.left.grows(projection) + leg.right.grows(projection)
            for leg, line in zip(legs, lines, strict=True)
        ]
    return pieces


def off_a_parallel_wall(projection, corner):
    """How far a square end stands off a wall that runs parallel to the front, at the outer face.

    The side leaves the front at `corner` degrees: projection x |cos corner| / sin corner.
    """
    return projection * abs(cosine(corner)) / sine(corner)
