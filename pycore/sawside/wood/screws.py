"""Wood screws: sizes by number and millimeter, and lengths commonly sold. Those are from memory."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.lengths.units import INCHES_PER
from sawside.wood.tables import rows

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


@dataclass(frozen=True, slots=True)
class ScrewSize:
    """A size of wood screw: its shank and the lengths that it is sold in, inches."""

    name: str
    shank: Fraction
    shortest: Fraction
    longest: Fraction
    metric: bool

    def sold(self, least, most):
        """The shortest stock length from `least` up, or else the longest, none above `most`."""
        top = min(most, self.longest)
        enough = shortest_sold(max(least, self.shortest), self.metric)
        found = enough if enough and enough <= top else longest_sold(top, self.metric)
        return found if found and found >= self.shortest else None


def _sizes():
    for row in rows("screw_sizes.csv"):
        unit = INCHES_PER[row["unit"]]
        inches = (Fraction(row[key]) * unit for key in ("diameter", "shortest", "longest"))
        yield row["key"], ScrewSize(row["name"], *inches, row["unit"] == "mm")


SIZES = dict(_sizes())
"""Screws by number (ASME B18.6.1: .060 + .013 N in) and by millimeters, with their stock lengths;
each row of the table says how it is known."""


def own_size(shank, metric):
    """A screw of any other shank (inches): it may be sold in every length."""
    return ScrewSize("", shank, Fraction(0), _sold(metric)[-1], metric)
