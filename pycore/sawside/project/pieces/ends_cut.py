"""The ends of a piece that was cut, against the ends that are asked for now.

What is kept of an end is the code of its cut and setting (`geometry/end.py`), and of the whole
piece how much shorter its short side is. That says whether an end is still the same, and how much
of the length other ends need.
"""

import re
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from sawside.geometry.angles import tangent
from sawside.geometry.end import BETWEEN
from sawside.project.pieces.size import inches
from sawside.reckoning.links import rational

_DEGREES = re.compile(r"(?:≈ )?(\d+(?:\.\d+)?)°")
_TENTHS = 10
_UPRIGHT = 90
_KEPT = Fraction(1, 10_000)
"""Inches: how far what is kept of a short side may be off (`size.short_side_of`), and more."""

_SIMPLE = re.compile(r"@(?:square|flat|edge) \*(?: (left|right))?")
_SQUARE = ("@square", "square")
_EDGE, _FACE = ("@edge", "@coped", "edge miter", "bevel"), ("@flat", "@compound", "flat miter")
"""How ends begin that go through the thickness, and others: codes, and a person's own words."""

_CLOSE = Fraction(1, 50)
"""Inches: how far what two settings take may be off what it was worked out to be, for the settings
are told to a tenth of a degree."""


@dataclass(frozen=True, slots=True)
class Ends:
    """Both ends: `said` is their code as it is kept with a piece, `take` how much shorter they make
    its short side (None: not known), `across` the mark that they are cut through (None: not known).
    """

    said: str
    take: Any
    across: Any

    def over(self, across, tolerance):
        """The same ends on a piece that was ripped to another width or thickness."""
        if not self.take or not across or not self.across:
            return self
        if abs(across - self.across) <= tolerance:
            return self
        return Ends(self.said, self.take * across / self.across, across)


def ends_of(piece, like):
    """The `Ends` of a piece as it was cut, where `like` are those that are asked for."""
    said = piece.get("ends", "")
    take = _of_squares(said)
    if "short_side" in piece:
        take = inches(piece["length"]) - inches(piece["short_side"])
    return Ends(said, take, _mark(piece, like.said))


def ends_now(part, size):
    """The `Ends` of a part, whose `size` as a piece is cut is `size_of`."""
    take = _of_squares(size["ends"])
    if part.short_side is not None:
        take = rational(part.length) - rational(part.short_side)
    return Ends(size["ends"], take, _mark(size, size["ends"]))


def same_ends(was, now, tolerance):
    """Whether no end is off by more than the tolerance, over what it is cut through.

    Where that is not known, the settings have to be the same to a tenth of a degree. Settings are
    told rounded: where both ends together take another length, they are not the same.
    """
    known = was.across == now.across and None not in (was.take, now.take)
    if known and abs(was.take - now.take) > 2 * tolerance + _KEPT:
        return False
    if was.said == now.said:
        return True
    before, after = _settings(was.said), _settings(now.said)
    if before[0] != after[0] or len(before[1]) != len(after[1]):
        return False
    return all(
        _same(one, other, now.across, tolerance)
        for one, other in zip(before[1], after[1], strict=True)
    )


def _same(one, other, across, tolerance):
    if one == other:
        return True
    if across is None or max(one, other) >= _UPRIGHT:
        return round(one * _TENTHS) == round(other * _TENTHS)
    return abs(tangent(one) - tangent(other)) * across <= tolerance


def needed_for(was, now, tolerance):
    """How much longer than asked a piece with the ends `was` must be for the ends `now`.

    In exact inches; None where nobody kept what it would take to know it.
    """
    was = was.over(now.across, tolerance)
    if was.take == 0 or was.take is now.take is None:
        return Fraction(0)
    if was.take is None or now.take is None:
        return None
    before, after = _shares(was), _shares(now)
    if before and after:  # an end that gets squarer is cut back, wherever the other one is
        each = zip(before, after, strict=True)
        return sum((max(one - other, Fraction(0)) for one, other in each), Fraction(0))
    return max(was.take - now.take, Fraction(0))


def _of_squares(said):
    ends = said.split(BETWEEN)
    return Fraction(0) if all(end.startswith(_SQUARE) for end in ends) else None


def _mark(size, said):
    """The measure that ends are cut through: the larger where it is not the same for both."""
    edge = any(each in said for each in _EDGE) and not any(each in said for each in _FACE)
    across = size.get("thickness" if edge else "width")
    return None if across is None else inches(across)


def _settings(said):
    """(the code of the ends without its numbers, the degrees in it)."""
    return _DEGREES.sub("*", said), [Fraction(each) for each in _DEGREES.findall(said)]


def _shares(ends):
    """What each end takes of both; None where that can't be told from the settings."""
    words, degrees = _settings(ends.said)
    kinds = [_SIMPLE.fullmatch(each) for each in words.split(BETWEEN)]
    if not len(kinds) == len(degrees) == 2 or not all(kinds) or not ends.across:
        return None
    if max(degrees) >= _UPRIGHT or kinds[0][1] == "right" or kinds[1][1] == "left":
        return None
    if degrees[0] == degrees[1]:
        return ends.take / 2, ends.take / 2
    left, right = (rational(tangent(each)) for each in degrees)
    if abs((left + right) * ends.across - ends.take) > max(_CLOSE, ends.across / 100):
        return None
    return ends.take * left / (left + right), ends.take * right / (left + right)
