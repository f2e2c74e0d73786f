"""Sets of drill bits, by the step from one to the next, and the bit of a set for a hole."""

from fractions import Fraction
from math import ceil, floor

from sawside.lengths.marks import GRIDS, Rounded

SETS = {
    "64": ("By 64ths", GRIDS["1/64"]),
    "32": ("By 32nds", GRIDS["1/32"]),
    "16": ("By 16ths", GRIDS["1/16"]),
    "half_mm": ("By 0.5 mm", GRIDS["0.5 mm"]),
    "tenth_mm": ("By 0.1 mm", GRIDS["0.1 mm"]),
}
"""(name, grid of the bits) by key. Common practice, no source."""


def bit_over(least, bits):
    """The thinnest bit of a set that something slips through that is `least` inches thick: never
    one that is as thick."""
    grid = SETS[bits][1]
    return (floor(least * grid.per) + 1) * grid.step


def bit_under(most, bits):
    """The thickest bit of a set that is no thicker than `most` inches; None where none is."""
    grid = SETS[bits][1]
    return (floor(most * grid.per) * grid.step) or None


def bit_near(wanted, most, bits):
    """The bit of a set nearest to `wanted` and no thicker than `most`, inches; None where none is.

    Halfway between two it is the thinner one: too tight a hole can be drilled again.
    """
    grid = SETS[bits][1]
    near = ceil(wanted * grid.per - Fraction(1, 2)) * grid.step
    return near if 0 < near <= most else bit_under(most, bits)


def as_bit(diameter, bits):
    """A bit (inches) on the marks of its own set."""
    return Rounded(diameter, diameter, SETS[bits][1])
