"""Lengths told by one person's settings: what a reckoner uses for its working and its drawing."""

from fractions import Fraction
from functools import lru_cache

from sawside.lengths.display import decimal_text, mark_text, mixed_text
from sawside.lengths.marks import Rounded, to_mark
from sawside.lengths.real import Real, settle, sign
from sawside.lengths.units import INCHES_PER

_MOST_DENOMINATOR = 1000


class Show:
    """Tells exact lengths (inches) by `settings`: where their mark is, and how they are written."""

    def __init__(self, settings):
        self.settings = settings

    def rounded(self, length):
        """The length with its mark; one that has its own mark already keeps it."""
        if isinstance(length, Rounded):
            return length
        return to_mark(length, self.settings.grid, self.settings.rounding)

    def mark(self, length):
        """The mark where the length is found, in inches, exact."""
        return self.rounded(length).mark

    def text(self, length):
        """The mark with its unit, as a drawing shows it: 36 1/8″."""
        return mark_text(self.rounded(length), self.settings.display)

    def brief(self, length):
        """The same where no small print stands beside it: ≈ says that it was rounded."""
        approximate = "" if self.rounded(length).direction == "exact" else "≈ "
        return f"{approximate}{self.text(length)}"

    def number(self, length):
        """The exact length without its unit, as arithmetic shows it: 36 1/8, or 1.2990…

        Millimeters where lengths are told in them.
        """
        metric = self.settings.display == "mm"
        return self.pure(length * (1 / INCHES_PER["mm"]) if metric else length, decimals=metric)

    def pure(self, number, *, decimals=False):
        """A pure number as arithmetic shows it: a fraction where one can be read, or decimals."""
        if isinstance(number, Real) or decimals or number.denominator > _MOST_DENOMINATOR:
            return decimal_text(number, 4)
        return mixed_text(Fraction(number))

    def equals(self, length):
        """The end of a line of working: " = 36 1/8", or the mark that was rounded to as well."""
        rounded = self.rounded(length)
        end = f" = {self.number(rounded.exact)}"
        return end if rounded.direction == "exact" else f"{end} → {self.text(rounded)}"


def degrees_text(degrees):
    """Degrees as arithmetic shows them, in decimals and without their sign: 22.5, 31.6235…"""
    return decimal_text(degrees, 4)


def angle_text(degrees, places=1):
    """An angle as it is set on a saw, to a tenth of a degree or to as many `places` as asked.

    ≈ says that it was rounded.
    """
    if isinstance(degrees, Real):
        return _angle_text(degrees, places)
    return _remembered_angle_text(degrees, places)


def _angle_text(degrees, places):
    scale = 10**places
    steps, _ = settle(degrees * scale, round)
    text = f"{decimal_text(Fraction(steps, scale), places)}°"
    return text if sign(degrees * scale - steps) == 0 else f"≈ {text}"


_remembered_angle_text = lru_cache(maxsize=512)(_angle_text)
"""Most angles of a project are 45 or 90."""


def angle_equals(degrees):
    """The end of a line of working: " = 45°" or " ≈ 31.62°"."""
    text = angle_text(degrees, 2)
    return f" {text}" if text.startswith("≈") else f" = {text}"
