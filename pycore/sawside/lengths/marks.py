"""Marks: the graduations of a tape or rule, and rounding to one.

Rounding to the nearest graduation sends an exact tie to the even graduation (NIST Handbook 44,
appendix on rounding; NIST SP 811, B.7). A rounded value never travels without what was dropped:
number and mark are one frozen `Rounded`.

To round to a mark is one thing (`to_mark`), to tell a length another (`told_mark`): what lies on
finer marks of the same kind is told exactly, nothing but nothing is told as 0, and what must go in
or reach is rounded that way whatever the person chose.
"""

from dataclasses import dataclass, field, replace
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


_DECIMALS = {
    "in": tuple(
        _decimal(f".{'1':0>{places}} in", f"1e-{places}", "in", places) for places in range(4, 25)
    ),
    "mm": tuple(
        _decimal(f"0.{'1':0>{places}} mm", f"1e-{places}", "mm", places) for places in range(3, 25)
    ),
}
NAMED = GRIDS | {grid.name: grid for grids in _DECIMALS.values() for grid in grids}
"""Every grid that a mark may be on by its name, but those that only hold what was typed."""
FINEST = {unit: decimals[0] for unit, decimals in _DECIMALS.items()}
"""For what is less than the finest mark, such as a difference; nobody marks on these."""

_KINDS = (
    ("1/2", "1/4", "1/8", "1/16", "1/32", "1/64"),
    (".01 in", ".001 in"),
    ("1 mm", "0.5 mm", "0.1 mm"),
)
_LADDERS = {
    name: tuple(GRIDS[finer] for finer in kind[at:])
    for kind in _KINDS
    for at, name in enumerate(kind)
}
"""Each grid and those of its kind that are finer, the finest last."""

MUSTS = {
    "go in": ("down", "so it fits"),
    "stay under": ("down", "to stay within the limit"),
    "be there": ("down", "so you can count on it"),
    "reach": ("up", "so it’s enough"),
}
"""What a length must do: which way it is rounded, and why, in the words for it."""


@dataclass(frozen=True, slots=True)
class Rounded:
    """A length and the mark where it is found, both in inches.

    `settled` is False only when the exact value could not be told from a boundary between two
    marks, or from the mark itself, at the last refinement (see `real`). `must` is the key of
    `MUSTS` by which it was rounded, or None where the nearest mark was as good.
    """

    exact: Exact
    mark: Fraction
    grid: Grid
    settled: bool = True
    must: str | None = None

    @property
    def dropped(self) -> Exact:
        """Exact value less mark, in inches."""
        return self.exact - self.mark

    @property
    def direction(self):
        """The trade's word: "light" when the true length is a little under the mark."""
        return ("light", "exact", "heavy")[sign(self.dropped) + 1]

    @property
    def why(self):
        """Which way it had to be rounded, and why: "rounded down so it fits"; "" without."""
        if self.must is None or self.direction == "exact":
            return ""
        return f"rounded {' '.join(MUSTS[self.must])}"

    @property
    def way(self):
        """The same behind a number where there is little room: " (down)"; "" without."""
        return f" ({MUSTS[self.must][0]})" if self.why else ""


def exact_of(value):
    """The exact length of what may be `Rounded` already."""
    return value.exact if isinstance(value, Rounded) else value


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


def finest_of(grid):
    """The finest grid of the same kind, on which every length is told exactly that lies on it."""
    return _LADDERS[grid.name][-1]


def told_mark(length, grid, rounding="nearest", must=None):
    """Where an exact length (inches) is told, for a person whose marks are those of `grid`.

    What lies on finer marks of the same kind, up to sixty-fourths, thousandths or tenths of a
    millimeter, is told exactly. All else is rounded to `grid`, by `must` (a key of `MUSTS`) where
    there is one; and where that mark would be 0 and the length is not, to the first finer one that
    is not. What must go in may also lie halfway between two marks: so no more of it is lost, and
    no wider a gap shows, than by the nearest mark.
    """
    ladder = _LADDERS.get(grid.name, (grid,))
    if must is not None:
        rounding = MUSTS[must][0]
    if not isinstance(length, Real) and not ladder[-1].per.numerator % length.denominator:
        at = next(each for each in ladder if (length * each.per).denominator == 1)
        return Rounded(length, length, at, must=must)
    if must == "go in":
        ladder = ladder[1:] or ladder
    rounded = to_mark(length, ladder[0], rounding)
    if rounded.mark == 0:
        rounded = _not_nothing(rounded, (*ladder[1:], *_DECIMALS[grid.unit]), rounding)
    return rounded if must is None else replace(rounded, must=must)


def _not_nothing(rounded, finer, rounding):
    """A mark that is 0, or the first of finer ones that is not, where the length is not 0 either.

    Nothing is told beyond the last of them: one step of it stands for all that is less.
    """
    way = sign(rounded.exact)
    if way == 0:
        return rounded
    for grid in finer:
        found = to_mark(rounded.exact, grid, rounding)
        if found.mark != 0:
            return found
    return Rounded(rounded.exact, way * grid.step, grid)


def _nearest(value):
    """The nearest whole number; `round` of a Fraction sends an exact tie to the even one."""
    return round(value)
