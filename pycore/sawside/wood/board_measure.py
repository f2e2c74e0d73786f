"""How much wood a board is counted as: board feet by volume and by surface measure, square feet.

Sources:
- A board foot is 1 ft by 1 ft by 1 in, 144 cubic inches: NIST Handbook 44, appendix C (from
  memory).
- Surface measure: rules of the National Hardwood Lumber Association (NHLA), read in the summary of
  the American Hardwood Export Council. The width as it is in inches, times the length in whole
  feet (what is over is dropped), divided by 12, to the nearest whole number; times the rough
  thickness in inches, under 1 in counted as 1 in. A rest of just one half goes up and down in turn
  over a pile of boards: for one board it is taken up here, the more that it may cost.
- Softwood is counted by its nominal thickness, under 1 in as 1 in, its nominal width and its actual
  length: NIST PS 20 (from memory).
"""

from fractions import Fraction

from sawside.lengths.units import BOARD_FOOT, INCHES_PER, SQUARE_FOOT

_FOOT = INCHES_PER["ft"]
_LEAST_THICKNESS = Fraction(1)
"""Inches: thinner wood is counted as this thick, by both rules."""


def board_feet(thickness, width, length):
    """The board feet of a volume; exact inches."""
    return thickness * width * length / BOARD_FOOT


def square_feet(width, length):
    """The square feet of a face; exact inches."""
    return width * length / SQUARE_FOOT


def whole_feet(length):
    """The whole feet of a length in exact inches; what is over is dropped.

    2438 mm are 8 ft: what is less than half a millimeter short of a foot is that foot.
    """
    return (length + INCHES_PER["mm"] / 2) // _FOOT


def surface_measure(width, length):
    """The surface measure of a hardwood board, a whole number; 0 for one too small to count."""
    return (2 * width * whole_feet(length) + 12) // 24


def counted_thickness(thickness):
    """The thickness by which rough hardwood and nominal softwood are counted, in inches."""
    return max(thickness, _LEAST_THICKNESS)
