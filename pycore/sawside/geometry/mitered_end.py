"""One end of a piece as it is cut: its setting, what it adds, and how it is said and worked."""

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from sawside.errors import Refusal
from sawside.geometry.angles import tangent
from sawside.geometry.miter import allowance, half_corner, unequal_allowance, unequal_setting
from sawside.lengths.real import Exact, sign
from sawside.lengths.show import angle_equals, angle_text, degrees_text

STEEPEST = 80
"""Degrees from square; beyond it the tip of a piece is longer than six widths."""


@dataclass(frozen=True, slots=True)
class MiteredEnd:
    """How one end is cut: a setting from square across the face or across the thickness.

    `side` is "left" or "right" as one sees the piece with its long side up; `way` is "flat" or
    "edge", `across` the measure that is cut through, `adds` how much longer it makes the outside.
    `corner` and `neighbor` are None where the cut was not found from a corner.
    """

    side: str
    way: str
    degrees: Exact
    across: Fraction
    adds: Exact
    corner: Fraction | None = None
    neighbor: Fraction | None = None

    @property
    def how(self):
        """How it is cut: "square", "flat" or "edge"."""
        return "square" if self.degrees == 0 else self.way

    @property
    def set_up(self):
        """(turned from square, tilted from upright), degrees."""
        nothing = Fraction(0)
        return (self.degrees, nothing) if self.way == "flat" else (nothing, self.degrees)

    def at_the_saw(self):
        """How the piece lies and which way the saw is turned."""
        if self.degrees == 0:
            return "Square cut: saw at 0."
        if self.way == "edge":
            return (
                f"Lay it outside face up, top of the blade tilted {self.side}, to "
                f"{angle_text(self.degrees)}."
            )
        return (
            "Lay it flat, long points against the fence, saw swung "
            f"{'right' if self.side == 'left' else 'left'}, to {angle_text(self.degrees)}."
        )

    def worked(self, show):
        """The line of working that finds what it adds; None where there is nothing to work out."""
        side, across = self.side.capitalize(), show.number(self.across)
        if self.neighbor is not None:
            other, corner = show.number(self.neighbor), degrees_text(self.corner)
            return (
                f"{side} end, {across} wide meets {other} wide at {corner}°: ({other} + {across} × "
                f"cos {corner}°) ÷ sin {corner}°{show.equals(self.adds)}; arctan "
                f"({show.number(self.adds)} ÷ {across}){angle_equals(self.degrees)}; the piece "
                f"that it meets: 180 − {corner} − {degrees_text(self.degrees)}"
                f"{angle_equals(180 - self.corner - self.degrees)}"
            )
        if self.degrees == 0:
            return None
        setting = degrees_text(self.degrees)
        found = f"90 − {degrees_text(self.corner)} ÷ 2 = {setting}; " if self.corner else ""
        if self.degrees == 45:
            what = "width" if self.way == "flat" else "thickness"
            return f"{side} end: {found}a 45° end adds the {what} of the stock: {across}"
        return (
            f"{side} end: {found}{across} × tan {setting}° = "
            f"{across} × {show.pure(tangent(self.degrees))}{show.equals(self.adds)}"
        )


@lru_cache(maxsize=256)  # a project has many pieces of one stock
def end_of(side, way, degrees, across):
    """An end cut `degrees` from square, 0 to `STEEPEST`, through `across` inches."""
    return MiteredEnd(side, way, degrees, across, allowance(across, degrees))


def end_at_corner(side, across, corner):
    """An end that halves a corner of 20 to 180 degrees with a piece of the same width."""
    degrees = half_corner(corner)
    return MiteredEnd(side, "flat", degrees, across, allowance(across, degrees), corner)


def end_at_unequal(show, side, across, neighbor, corner):
    """An end that meets a piece of another width at a corner.

    Raises `Refusal` ("impossible", without a field) where the joint would have to lean the other
    way or be steeper than `STEEPEST`.
    """
    adds = unequal_allowance(across, neighbor, corner)
    degrees = unequal_setting(across, neighbor, corner) if sign(adds) > 0 else None
    if degrees is None or degrees > STEEPEST:
        cause = "put the cut past square" if degrees is None else f"need a cut over {STEEPEST}°"
        raise Refusal(
            "impossible",
            f"At a corner of {angle_text(corner)} a piece {show.text(across)} wide and one "
            f"{show.text(neighbor)} wide {cause}.",
            "Use widths closer to each other, or a corner closer to square.",
        )
    return MiteredEnd(side, "flat", degrees, across, adds, corner, neighbor)
