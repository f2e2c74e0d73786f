"""What a miter does to a piece: the difference between its long and its short edge."""

from fractions import Fraction

from sawside.geometry.angles import tangent


def allowance(width, angle):
    """How much longer one edge is than the other at an end cut `angle` degrees from square.

    `width` (inches) is measured across the face that the cut crosses at that angle. At 45 degrees
    the allowance is the width exactly (common practice, no source); in general it is
    width x tan(angle), plane trigonometry. `angle` from 0 up to, not including, 90.
    """
    return Fraction(width) * tangent(angle)
