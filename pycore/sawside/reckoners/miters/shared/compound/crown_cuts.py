"""A piece of sprung molding as it was filled in: its mitered ends, and both of its edges."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.geometry.compound import end_adds, miter_and_tilt
from sawside.geometry.miter import half_corner
from sawside.lengths.real import Exact, sign
from sawside.lengths.show import angle_text
from sawside.reckoners.fields import choice
from sawside.reckoners.miters.shared.compound.crown_spring import Spring, spring_of
from sawside.reckoners.miters.shared.compound.saw import EDGES, OTHER, CompoundCut, lay
from sawside.reckoners.miters.shared.corner_field import FLATTEST, corner_field, corner_of

SIDES = ("left", "right")
_KINDS = {"inside": "Inside corner", "outside": "Outside corner", "square": "Square"}


@dataclass(frozen=True, slots=True)
class CrownEnd:
    """A mitered end: its corner in degrees, how it is sawn with the molding flat, and what it makes
    the top edge longer, as a part of the face width (`ratio`) and in inches where that is known."""

    side: str
    kind: str
    corner: Fraction
    sawn: CompoundCut
    ratio: Exact
    adds: Exact | None

    @property
    def held(self):
        """What the saw is turned to with the molding in its place, in degrees."""
        return half_corner(self.corner)

    @property
    def flat_text(self):
        """How it is cut with the molding flat on its back."""
        return f"{_KINDS[self.kind]}, face up: {self.sawn.at_the_saw}"

    @property
    def held_text(self):
        """How it is cut with the molding upside down in its place."""
        return (
            "Top edge on the table, bottom edge against the fence: miter "
            f"{self.sawn.laid.turn} {angle_text(self.held)}, bevel 0. Mark the bottom edge. "
            f"Keep the part to the {self.side} of the blade."
        )


@dataclass(frozen=True, slots=True)
class CrownPiece:
    """A piece with both its ends, None for a square one, and its edges {"top", "bottom"} in inches,
    None where no length was measured. `tips` is the molding that it takes, where that is known
    better than by the bottom edge."""

    spring: Spring
    ends: tuple[CrownEnd | None, CrownEnd | None]
    edges: dict | None
    tips: Exact | None = None

    @property
    def mitered(self):
        """The ends that are mitered, from left to right."""
        return [end for end in self.ends if end]

    @property
    def tip_to_tip(self):
        """From tip to tip: neither edge, where one reaches further at each end.

        A mitered piece is as wrong a hair long as a hair short, so this is told as its edges are,
        by the person's own rounding; the stock to buy is what is rounded up.
        """
        if self.tips is not None:
            return self.tips
        out = (end.adds for end in self.mitered if end.kind == "outside")
        return self.edges["bottom"] + sum(out, Fraction(0))


def end_fields(side, shown_when):
    """The fields of the "left" or the "right" end of one piece."""
    name, end = side.capitalize(), f"{side}_end"
    shown = (shown_when, (end, ("inside", "outside")))
    about = {"help": "As you face the crown on the wall.", "shown_when": (shown_when,)}
    return (
        choice(end, f"{name} end", _KINDS, **about),
        corner_field(f"{side}_corner", f"Corner at the {side} end", least=20, shown_when=shown),
    )


def piece_of(given, show):
    """The `CrownPiece` that was filled in.

    Raises `Refusal` where both ends are square, the spring or the face width can't be had, or
    nothing is left of an edge.
    """
    spring = spring_of(given, show)
    ends = tuple(_end_of(given, spring, side) for side in SIDES)
    mitered = [end for end in ends if end]
    if not mitered:
        raise Refusal(
            "impossible",
            "Both ends are square: there is no corner to cut for.",
            "Choose an inside or an outside corner at one end.",
            field="right_end",
        )
    return CrownPiece(spring, ends, _edges_of(given, show, spring, mitered))


def _end_of(given, spring, side):
    kind = getattr(given, f"{side}_end")
    if kind == "square":
        return None
    corner = corner_of(given, f"{side}_corner", most=FLATTEST, outside=kind == "outside")
    return end_at(given, spring, side, kind, corner)


def end_at(given, spring, side, kind, corner):
    """The `CrownEnd` at an "inside" or an "outside" corner in degrees."""
    outside = kind == "outside"
    laid = lay(side, outside, outside, given.tilts, given.measured_on)
    sawn = CompoundCut(*miter_and_tilt(spring.lean, corner), laid)
    way = 1 if outside else -1
    adds = None if spring.width is None else way * end_adds(spring.projection, corner)
    return CrownEnd(side, kind, corner, sawn, way * end_adds(spring.lean.sine, corner), adds)


def ends_at(given, spring, joints):
    """The `CrownEnd` at each of the (left, right) `Joint` of a leg, None for a square one."""
    return tuple(
        None
        if joint.corner is None
        else end_at(given, spring, side, "inside" if joint.is_inside else "outside", joint.corner)
        for side, joint in zip(SIDES, joints, strict=True)
    )


def _edges_of(given, show, spring, mitered):
    if given.measured is None:
        return None
    if spring.width is None:
        raise Refusal(
            "missing",
            "Face width is blank, and the other edge depends on it.",
            "Fill it in, or leave the length blank.",
            field="width",
        )
    known, other = given.measured_on, OTHER[given.measured_on]
    more = grows(mitered)
    length = given.measured + (more if known == "bottom" else -more)
    if sign(length) <= 0:
        raise Refusal(
            "impossible",
            f"Nothing is left of the {EDGES[other]}: the corners take {show.text(abs(more))} of "
            f"{show.text(given.measured)}.",
            "Use a longer piece, or narrower crown.",
            field="measured",
        )
    return {known: given.measured, other: length}


def grows(mitered):
    """How much longer the ends make the top edge than the bottom one, in inches."""
    if not mitered:
        return Fraction(0)
    left, right = mitered[0], mitered[-1]
    if left.corner == right.corner and left.kind != right.kind:
        return Fraction(0)  # an outside and an inside corner that are alike cancel out, exactly
    return sum((end.adds for end in mitered), Fraction(0))
