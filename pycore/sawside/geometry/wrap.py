"""A molding around corners in layers: what every piece of every layer measures.

A leg is one straight run. Each layer lies on the one beneath, so the face of a leg in one layer is
the back of that leg in the next. Where two legs meet, the cut halves their corner.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.geometry.angles import cosine, sine
from sawside.geometry.miter import allowance, half_corner
from sawside.lengths.real import Exact, nearby, sign

RIGHT_ANGLE = Fraction(90)


@dataclass(frozen=True, slots=True)
class Joint:
    """One end of a leg: its setting in degrees from square, 0 for a square end.

    Above 0 the face is longer than the back (an outside corner), below 0 shorter (an inside one).
    `free` ends meet no other leg; `scribe` tells the length left on such an end, or is None.
    """

    name: str
    setting: Fraction = Fraction(0)
    free: bool = False
    scribe: str | None = None


@dataclass(frozen=True, slots=True)
class Leg:
    """A run from joint to joint; `back` is how long it is at the back of the first layer.

    `is_cap` is a self-return: the small piece that closes an end with a miter of its own.
    """

    key: str
    name: str
    back: Exact
    left: Joint
    right: Joint
    is_cap: bool = False


@dataclass(frozen=True, slots=True)
class Piece:
    """A leg in one layer (from 1): inches at its back and its face, and what each end adds."""

    layer: int
    leg: Leg
    projection: Fraction
    back: Exact
    left_adds: Exact
    right_adds: Exact

    @property
    def face(self):
        """The length at the face."""
        return self.back + self.left_adds + self.right_adds

    @property
    def sides(self):
        """(long side, short side)."""
        back, face = self.back, self.face
        return (face, back) if face >= back else (back, face)

    @property
    def tip_to_tip(self):
        """What is cut off a stick: more than either side where one end opens and one closes."""
        return self.back + sum(
            (adds for adds in (self.left_adds, self.right_adds) if sign(adds) > 0), Fraction(0)
        )

    @property
    def is_between(self):
        """Whether neither side goes from tip to tip."""
        return sign(self.left_adds) * sign(self.right_adds) < 0


def outside_corner(name, degrees):
    """The joint at an outside corner, its degrees measured through what is wrapped."""
    return Joint(name, half_corner(degrees))


def inside_corner(name, degrees):
    """The joint at an inside corner, its degrees measured through the room."""
    return Joint(name, -half_corner(degrees))


def layered(legs, projections):
    """Every piece, layer by layer, each layer's legs from left to right."""
    pieces = []
    backs = [leg.back for leg in legs]
    for layer, projection in enumerate(projections, 1):
        made = [
            Piece(
                layer,
                leg,
                projection,
                back,
                _adds(projection, leg.left),
                _adds(projection, leg.right),
            )
            for leg, back in zip(legs, backs, strict=True)
        ]
        pieces += made
        backs = [piece.face for piece in made]
    return pieces


def _adds(projection, joint):
    size = allowance(projection, abs(joint.setting))
    return size if joint.setting >= 0 else -size


def cutting_order(pieces):
    """Layer by layer: first what is held between two joints, then what ends free, caps last.

    A free end can still be trimmed to the place; the longest comes first, because a piece that
    went wrong still makes a shorter one.
    """

    def rank(piece):
        free = piece.leg.left.free or piece.leg.right.free
        return piece.layer, 2 if piece.leg.is_cap else int(free), -nearby(piece.sides[0])

    return sorted(pieces, key=rank)


def off_a_parallel_wall(projection, corner):
    """How far a square end stands off a wall that runs parallel to the front, at the outer face.

    The side leaves the front at `corner` degrees: projection x |cos corner| / sin corner.
    """
    return projection * abs(cosine(corner)) / sine(corner)


def fewest_sticks(lengths, stick):
    """How many sticks of one length a few pieces need; every way to lay them out is tried.

    Meant for the handful of pieces of one layer. No piece may be longer than the stick.
    """
    lengths = list(lengths)
    best = len(lengths)

    def place(at, left):
        nonlocal best
        if len(left) >= best and at < len(lengths):
            return
        if at == len(lengths):
            best = min(best, len(left))
            return
        for number, rest in enumerate(left):
            if lengths[at] <= rest:
                place(at + 1, [*left[:number], rest - lengths[at], *left[number + 1 :]])
        place(at + 1, [*left, stick - lengths[at]])

    place(0, [])
    return best
