"""What a miter does to a piece: its setting, and the difference between long and short edge.

A setting is an angle from square, as on the saw's own scale: 0 is a square cut. The angle between
the edge of the piece and the cut is the rest of 90.
"""

from fractions import Fraction

from sawside.geometry.angles import arctangent, cosine, sine, tangent
from sawside.lengths.real import sqrt


def allowance(width, angle):
    """How much longer one edge is than the other at an end cut `angle` degrees from square.

    `width` (inches) is measured across the face that the cut crosses at that angle. At 45 degrees
    the allowance is the width exactly (common practice, no source); in general it is
    width x tan(angle), plane trigonometry. `angle` from 0 up to, not including, 90.
    """
    return Fraction(width) * tangent(angle)


def half_corner(corner):
    """The setting for two pieces of one width at a corner (degrees between their edges, 0 to 180).

    The cut halves the corner, and is set from square: 90 less half of it.
    """
    return 90 - corner * Fraction(1, 2)


def unequal_allowance(width, other, corner):
    """How much longer the outer edge is where a piece meets one of another width.

    The joint runs from the inner corner to the outer one, where the two outer edges cross:
    (other + width x cos corner) / sin corner, plane trigonometry. At 90 degrees that is the width
    of the other piece. Not above 0 where the outer edges cross before the inner corner.
    """
    return (other + width * cosine(corner)) / sine(corner)


def unequal_setting(width, other, corner):
    """The setting of the piece of `width` at such a joint; the other's is 180 - corner - this."""
    if width == other:
        return half_corner(corner)
    return arctangent(unequal_allowance(width, other, corner) / width)


def along_the_edge(kerf, adds, width):
    """How much of the edge a cut of `kerf` takes, where it crosses `width` and `adds` to the edge.

    kerf / cos(setting), told by the tangent of the setting, adds / width.
    """
    slope = adds / width
    return kerf * sqrt(1 + slope * slope)
