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
    def cut(self):
        """The kind of cut in words."""
        if self.degrees == 0:
            return "square"
        return "flat miter" if self.way == "flat" else "edge miter"

    @property
    def set_up(self):
        """(turned from square, tilted from upright), degrees."""
        nothing = Fraction(0)
        return (self.degrees, nothing) if self.way == "flat" else (nothing, self.degrees)

    def at_the_saw(self):
        """How the piece lies and which way the saw is turned."""
        if self.degrees == 0:
            return "Square: the saw at 0."
        if self.way == "edge":
            return (
                f"Outside face up, the top of the blade tilted to the {self.side}, to "
                f"{angle_text(self.degrees)}."
            )
        return (
            "Flat on the table, long side against the fence, the front of the saw turned to the "
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
        cause = "the cut would go past square" if degrees is None else f"it takes over {STEEPEST}°"
        raise Refusal(
            "impossible",
            f"A piece {show.text(across)} wide can’t meet one {show.text(neighbor)} wide at a "
            f"{angle_text(corner)} corner: {cause}.",
            "Enter widths that are closer, or a corner nearer to square.",
        )
    return MiteredEnd(side, "flat", degrees, across, adds, corner, neighbor)
