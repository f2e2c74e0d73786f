"""Lengths told by one person's settings: what a reckoner uses for its working and its drawing."""

from dataclasses import replace
from fractions import Fraction
from functools import lru_cache

from sawside.lengths.as_typed import given_marks
from sawside.lengths.display import brief_text, decimal_text, mark_text, mixed_text
from sawside.lengths.marks import Rounded, told_mark
from sawside.lengths.real import Real, settle, sign
from sawside.lengths.units import INCHES_PER

_MOST_DENOMINATOR = 1000


class Show:
    """Tells exact lengths (inches) by `settings`: where their mark is, and how they are written."""

    def __init__(self, settings, given=(), must=None):
        """`given` are lengths that the person gave: they are told as they are, never rounded.

        `must` is a key of `marks.MUSTS`, for what has none of its own and isn't rounded yet.
        """
        self.settings, self._must = settings, must
        self._typed, self._marks = given, None

    def by(self, must):
        """The same, where all that is told must go in or reach; as it is without a `must`."""
        return self._like(self._given, must)

    def _like(self, marks, must):
        made = Show(self.settings, must=must)
        made._marks = marks
        return made

    @property
    def _given(self):
        """{length: its `Rounded`}; found when first asked for, as a line often isn't told."""
        if self._marks is None:
            self._marks = given_marks(self._typed, self.settings)
        return self._marks

    def rounded(self, length, must=None):
        """The length with its mark; one that has its own mark already keeps it.

        `must` is a key of `marks.MUSTS`: what is not rounded by it yet is rounded again.
        """
        must = must or self._must
        if isinstance(length, Rounded):
            if must is None or length.must is not None:
                return length
            return told_mark(length.exact, length.grid, must=must)
        given = self.as_given(length, must)
        return given or told_mark(length, self.settings.grid, self.settings.rounding, must)

    def as_given(self, length, must=None):
        """A length `Rounded` on itself where it is one that the person gave, or None."""
        if not self._given or isinstance(length, Real) or length not in self._given:
            return None
        given = self._given[length]
        return given if must is None else replace(given, must=must)

    def telling(self, rounded):
        """The same, where this exact length is told as it is `rounded` here, wherever it stands."""
        if isinstance(rounded.exact, Real):
            return self
        return self._like(self._given | {rounded.exact: rounded}, self._must)

    def mark(self, length):
        """The mark where the length is found, in inches, exact."""
        return self.rounded(length).mark

    def text(self, length):
        """The mark with its unit, as a drawing shows it: 36 1/8″; 36 1/8″ (down) by a must."""
        rounded = self.rounded(length)
        return f"{mark_text(rounded, self.settings.display)}{rounded.way}"

    def brief(self, length, must=None):
        """The same where no small print stands beside it: ≈ says that it was rounded."""
        return brief_text(self.rounded(length, must), self.settings.display)

    def bare(self, length, must=None):
        """The same in a verdict, which says by itself what must go in: no "(down)" behind it."""
        rounded = self.rounded(length, must)
        return brief_text(rounded, self.settings.display).removesuffix(rounded.way)

    def number(self, length):
        """The exact length without its unit, as arithmetic shows it: 36 1/8, or 1.2990…

        Millimeters where lengths are told in them.
        """
        metric = self.settings.display == "mm"
        return self.pure(length * (1 / INCHES_PER["mm"]) if metric else length, decimals=metric)

    def term(self, length):
        """A length as it is added in a sum: " + 3/4", " − 3/4" of one below 0, "" of none."""
        way = sign(length)
        return f" {'+' if way > 0 else '−'} {self.number(abs(length))}" if way else ""

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


def angle_text(degrees, places=2):
    """An angle to a hundredth of a degree, everywhere in a question, or to as many `places`.

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
    text = angle_text(degrees)
    return f" {text}" if text.startswith("≈") else f" = {text}"
