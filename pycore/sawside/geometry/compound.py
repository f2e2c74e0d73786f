"""Compound cuts: the ends of boards that lean, where they meet on the line that halves a corner.

A lean is told by the square of its sine, from upright: a rational one keeps what is exact exact.
With s the lean and w the corner between the two boards' level lines (plane trigonometry, from the
half-corner plane in the board's own axes):

- across the face the cut is atan(sin s / tan(w/2)) from square,
- the blade is tilted asin(cos s x cos(w/2)) from square to the face.

A butt joint is cut along the neighbor's own plane: the same line across the face, and a tilt of
asin(sin s ^ 2 - cos s ^ 2 x cos w), the sine being the product of the two boards' normals.
"""

from dataclasses import dataclass

from sawside.geometry.angles import arcsine, arctangent_of_root, cosine, tangent
from sawside.geometry.miter import half_corner
from sawside.lengths.real import Exact, sqrt


@dataclass(frozen=True, slots=True)
class Lean:
    """How far a board leans from upright, by the square of its sine, between 0 and 1."""

    square: Exact

    @property
    def sine(self):
        """What the board reaches out, as a part of its width."""
        return sqrt(self.square)

    @property
    def cosine(self):
        """How high the board reaches, as a part of its width."""
        return sqrt(1 - self.square)

    @property
    def degrees(self):
        """The lean from upright in degrees."""
        return arctangent_of_root(self.square / (1 - self.square))


def lean_of_degrees(degrees):
    """The lean of an exact number of degrees, from 0 to below 90."""
    return Lean((1 - cosine(2 * degrees)) / 2)


def lean_of_legs(out, up):
    """The lean of a board that reaches `out` and `up`, in rational inches; `up` above 0."""
    return Lean(out * out / (out * out + up * up))


def miter_and_tilt(lean, corner):
    """(miter, tilt) in degrees from square, at a corner between 0 and 180 degrees."""
    near = (1 + cosine(corner)) / 2
    miter = arctangent_of_root(lean.square * near / (1 - near))
    sine_squared = (1 - lean.square) * near
    return miter, arctangent_of_root(sine_squared / (1 - sine_squared))


def butt_tilt(lean, corner):
    """The tilt in degrees of a cut along the neighbor's plane, at a corner of 90 to 180 degrees."""
    return arcsine(lean.square - (1 - lean.square) * cosine(corner))


def end_adds(out, corner):
    """How much a corner changes an edge that stands `out` further than the other, in inches."""
    return out * tangent(half_corner(corner))
