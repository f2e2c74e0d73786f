"""Compound cuts: the ends of boards that lean, where they meet on the line that halves a corner.

With s the lean and w the corner between the two boards' level lines (plane trigonometry, from the
half-corner plane in the board's own axes):

- across the face the cut is atan(sin s / tan(w/2)) from square,
- the blade is tilted asin(cos s x cos(w/2)) from square to the face.

A butt joint is cut along the neighbor's own plane: the same line across the face, and a tilt of
asin(sin s ^ 2 - cos s ^ 2 x cos w), the sine being the product of the two boards' normals.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.geometry.angles import arcsine, arctangent, arctangent_of_root, cosine, sine, tangent
from sawside.geometry.miter import half_corner
from sawside.lengths.real import Exact, Real, sqrt


@dataclass(frozen=True, slots=True)
class Lean:
    """How far a board leans from upright: in degrees, and what it reaches out (`sine`) and up
    (`cosine`) as parts of its width; `square` is that of the sine, rational where it can be."""

    degrees: Exact
    square: Exact
    sine: Exact
    cosine: Exact


def lean_of_degrees(degrees):
    """The lean of a rational number of degrees, from 0 to 90."""
    return Lean(degrees, (1 - cosine(2 * degrees)) / 2, sine(degrees), cosine(degrees))


def lean_of_square(square):
    """The lean whose sine has a rational square, from 0 to below 1."""
    degrees = arctangent_of_root(square / (1 - square))
    return Lean(degrees, square, sqrt(square), sqrt(1 - square))


def lean_of_legs(out, up):
    """The lean of a board that reaches `out` and `up`, in rational inches; `up` above 0."""
    return lean_of_square(out * out / (out * out + up * up))


def miter_and_tilt(lean, corner):
    """(miter, tilt) in degrees from square, at a corner between 0 and 180 degrees."""
    if lean.degrees in (0, 90):
        flat, upright = Fraction(0), half_corner(corner)
        return (flat, upright) if lean.degrees == 0 else (upright, flat)
    near = (1 + cosine(corner)) / 2
    miter = _angle_of_tangent(
        lean.square * near / (1 - near), lambda: lean.sine * tangent(half_corner(corner))
    )
    return miter, _angle_of_sine(
        (1 - lean.square) * near, lambda: lean.cosine * cosine(Fraction(corner) / 2)
    )


def _angle_of_tangent(square, ratio):
    """By the square where that is rational: 30 and 60 degrees then come out exact."""
    return arctangent(ratio()) if isinstance(square, Real) else arctangent_of_root(square)


def _angle_of_sine(square, ratio):
    """The same by the sine."""
    return arcsine(ratio()) if isinstance(square, Real) else lean_of_square(square).degrees


def butt_tilt(lean, corner):
    """The tilt in degrees of a cut along the neighbor's plane, at a corner of 90 to 180 degrees."""
    return arcsine(lean.square - (1 - lean.square) * cosine(corner))


def end_adds(out, corner):
    """How much a corner changes an edge that stands `out` further than the other, in inches."""
    return out * tangent(half_corner(corner))
