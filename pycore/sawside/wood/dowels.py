"""Dowels as they are commonly sold: the diameters, and the lengths of each, in inches or in
millimeters. Common practice, no source."""

from fractions import Fraction

from sawside.lengths.units import INCHES_PER

_INCHES = {"1/4": "1 5/4", "5/16": "3/2", "3/8": "3/2 2", "1/2": "2"}
_MILLIMETERS = {"6": "30", "8": "30 35 40", "10": "40"}


def _sold(metric):
    """{diameter: its lengths}, in inches."""
    unit = INCHES_PER["mm"] if metric else Fraction(1)
    return {
        Fraction(diameter) * unit: [Fraction(long) * unit for long in lengths.split()]
        for diameter, lengths in (_MILLIMETERS if metric else _INCHES).items()
    }


def diameters_sold(most, metric):
    """The diameters that are sold, no thicker than `most`: inches, thickest first.

    `metric` says that they are bought by the millimeter.
    """
    return sorted((each for each in _sold(metric) if each <= most), reverse=True)


def lengths_sold(diameter, metric):
    """The lengths of a diameter that is sold, or of all where it is not: inches, longest first."""
    sold = _sold(metric)
    every = {each for lengths in sold.values() for each in lengths}
    return sorted(sold.get(diameter, every), reverse=True)
