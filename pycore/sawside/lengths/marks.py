"""Marks: the graduations of a tape or rule, and rounding to one.

Rounding to the nearest graduation sends an exact tie to the even graduation (NIST Handbook 44,
appendix on rounding; NIST SP 811, B.7). A rounded value never travels without what was dropped:
number and mark are one frozen `Rounded`.
"""

from dataclasses import dataclass, field
from fractions import Fraction
from math import ceil, floor

from sawside.lengths.real import Exact, Real, settle, sign
from sawside.lengths.units import INCHES_PER

ROUNDINGS = ("nearest", "up", "down")


@dataclass(frozen=True, slots=True)
class Grid:
    """One way to divide a tape: `step` in inches, and how its graduations are written.

    `unit` is "in" or "mm". `division` is the denominator of a fraction of an inch (16), or None
    where graduations are written as decimals of the unit with `places` decimals.
    """

    name: str
    step: Fraction
    unit: str
    division: int | None
    places: int
    per: Fraction = field(init=False)
    """Graduations for each inch."""

    def __post_init__(self):
        object.__setattr__(self, "per", 1 / self.step)


def _fractional(division):
    return Grid(f"1/{division}", Fraction(1, division), "in", division, 0)


def _decimal(name, step, unit, places):
    return Grid(name, Fraction(step) * INCHES_PER[unit], unit, None, places)


GRIDS = {
    grid.name: grid
    for grid in (
        *(_fractional(division) for division in (2, 4, 8, 16, 32, 64)),
        _decimal(".01 in", "0.01", "in", 2),
        _decimal(".001 in", "0.001", "in", 3),
        _decimal("1 mm", "1", "mm", 0),
        _decimal("0.5 mm", "0.5", "mm", 1),
        _decimal("0.1 mm", "0.1", "mm", 1),
    )
}


FINEST = {
    "in": _decimal(".0001 in", "0.0001", "in", 4),
    "mm": _decimal("0.001 mm", "0.001", "mm", 3),
}
"""For what is less than the finest mark, such as a difference; nobody marks on these."""


@dataclass(frozen=True, slots=True)
class Rounded:
    """A length and the mark where it is found, both in inches.

    `settled` is False only when the exact value could not be told from a boundary between two
    marks, or from the mark itself, at the last refinement (see `real`).
    """

    exact: Exact
    mark: Fraction
    grid: Grid
    settled: bool = True

    @property
    def dropped(self) -> Exact:
        """Exact value less mark, in inches."""
        return self.exact - self.mark

    @property
    def direction(self):
        """The trade's word: "light" when the true length is a little under the mark."""
        return ("light", "exact", "heavy")[sign(self.dropped) + 1]


def to_mark(length, grid, rounding="nearest"):
    """Round an exact length (inches) to a mark of `grid`: "nearest", "up" or "down".

    Up and down are along the tape: up is always the larger number. Nearest sends an exact tie to
    the even graduation.
    """
    decide = {"nearest": _nearest, "up": ceil, "down": floor}[rounding]
    if not isinstance(length, Real):  # hundreds of them in one answer
        return Rounded(length, decide(length * grid.per) * grid.step, grid)
    number, settled = settle(length * grid.per, decide)
    mark = number * grid.step
    return Rounded(length, mark, grid, settled and sign(length - mark) != 0)


def _nearest(value):
    """The nearest whole number; `round` of a Fraction sends an exact tie to the even one."""
    return round(value)
