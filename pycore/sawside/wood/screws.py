"""Lengths in which wood screws are commonly sold, in inches and in millimeters. From memory."""

from fractions import Fraction

from sawside.lengths.units import INCHES_PER

_INCHES = ("1/2 5/8 3/4 7/8 1 9/8 5/4 3/2 13/8 7/4 2 9/4 5/2 11/4 3 7/2 4 9/2 5 6").split()
_MILLIMETERS = "12 16 20 25 30 35 40 45 50 60 70 80 90 100 120 140 160".split()
STUD_HOLD = Fraction(1)
"""Inches that a screw goes into a stud at the least. Common practice, no source."""


def _sold(metric):
    unit = INCHES_PER["mm"] if metric else Fraction(1)
    return [Fraction(each) * unit for each in (_MILLIMETERS if metric else _INCHES)]


def longest_sold(most, metric):
    """The longest screw that is sold, no longer than `most`, in inches; None where there is none.

    `metric` says that it is bought by the millimeter.
    """
    return max((each for each in _sold(metric) if each <= most), default=None)


def shortest_sold(least, metric):
    """The shortest screw that is sold, no shorter than `least`, in inches; None as above."""
    return min((each for each in _sold(metric) if each >= least), default=None)
