"""What is to be cut out of which sheets, and under which rules of the shop."""

from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Panel:
    """So many rectangles alike; `length` runs along the grain, both sides in exact inches above 0.

    `grain` is "fixed" where the length has to lie along that of the sheet, "free" where it may be
    turned. Panels with the same `match` are laid next to each other in one sheet in the order of
    `place`, with nothing but a kerf between them: `laid` "side" by side across the grain, or end
    to "end" along it (that of the first one goes for all). They are never turned.
    """

    length: Fraction
    width: Fraction
    count: int = 1
    name: str = ""
    grain: str = "fixed"
    match: str = ""
    place: int = 0
    laid: str = "side"


@dataclass(frozen=True, slots=True)
class Sheet:
    """Sheets, or wide boards, of one size in exact inches: so many on hand, or as many as one buys
    (None). A price is exact; all that can be bought have one, or none has."""

    length: Fraction
    width: Fraction
    count: int | None = None
    price: Fraction | None = None


@dataclass(frozen=True, slots=True)
class SheetRequest:
    """Everything that a plan is made of; lengths in exact inches.

    `trim` is what goes off each edge before all else, its kerf in it. `first` is which way the
    first cuts of a sheet run: "rip" along its length, "crosscut" across it, or "either". Cuts of
    one `level` run one way, those of the next one the other; there are at most `stages` of them,
    2, 3 or (None) any number. `handled` is the largest part, (length, width) either way round,
    that may be left to be cut further after the first level; None for any.
    """

    panels: tuple[Panel, ...]
    on_hand: tuple[Sheet, ...]
    to_buy: tuple[Sheet, ...]
    kerf: Fraction = Fraction(0)
    trim: Fraction = Fraction(0)
    first: str = "either"
    stages: int | None = None
    handled: tuple[Fraction, Fraction] | None = None

    @property
    def priced(self):
        """Whether the cost counts; else the number of sheets does."""
        return bool(self.to_buy) and all(sheet.price is not None for sheet in self.to_buy)
