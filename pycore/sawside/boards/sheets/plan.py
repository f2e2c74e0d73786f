"""A plan of sheets: the cuts of each, in the order in which they are made."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.boards.sheets.request import Sheet


@dataclass(frozen=True, slots=True)
class Part:
    """A rectangle of a sheet in exact inches: its corner (`x` along the sheet's length from its
    left end, `y` across from its near edge), its `length` along x and `width` along y.

    `panel` is the place in the request of the panel that it is, once it is finished; None for what
    is cut further and for offcuts, which no later cut cuts.
    """

    x: Fraction
    y: Fraction
    length: Fraction
    width: Fraction
    panel: int | None = None


@dataclass(frozen=True, slots=True)
class Cut:
    """One straight cut from edge to edge of the part in hand.

    `way` is "rip" (the blade runs along the sheet's length) or "crosscut". `at` is how far the
    blade's near side is from the part's reference edge: its near edge for a rip, its left end for
    a crosscut; that is, the size of what comes off. `part` is which one is cut: 0 the trimmed
    sheet, 2 n + 1 what cut n (from 0) `takes` off, 2 n + 2 what it `leaves` beyond the kerf.
    `leaves` is None where the kerf eats all of the rest.
    """

    level: int
    way: str
    at: Fraction
    part: int
    takes: Part
    leaves: Part | None


@dataclass(frozen=True, slots=True)
class PlannedSheet:
    """One sheet: its stock, whether it has to be bought, its cuts in order, and the offcuts.

    Where a panel is as large as the trimmed sheet there is no cut, and `whole` is its place in the
    request; else that is None.
    """

    stock: Sheet
    bought: bool
    cuts: tuple[Cut, ...]
    offcuts: tuple[Part, ...]
    whole: int | None = None


@dataclass(frozen=True, slots=True)
class SheetPlan:
    """Sheets cut up. `value` is the cost where there are prices, else how many sheets are bought;
    no plan has less than `bound`."""

    sheets: tuple[PlannedSheet, ...]
    value: Fraction
    bound: Fraction

    @property
    def proved(self):
        """Whether no plan buys less."""
        return self.value == self.bound
