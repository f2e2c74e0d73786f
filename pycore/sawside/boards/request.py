"""What is to be cut out of what, in exact inches and degrees."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.boards.slants import steepest


@dataclass(frozen=True, slots=True)
class Piece:
    """So many alike; the length in exact inches, more than 0, along the longer of its two edges.

    `left` and `right` are how its ends are mitered across the width of the stick: exact degrees
    from square, less than 90 either way. Above 0 the near edge is the longer one at that end, below
    0 the far one: 45 and 45 is a side of a frame, 45 and -45 has both cuts parallel.
    """

    length: Fraction
    count: int = 1
    name: str = ""
    left: Fraction = Fraction(0)
    right: Fraction = Fraction(0)

    @property
    def square(self):
        """Whether neither end is mitered."""
        return not (self.left or self.right)


@dataclass(frozen=True, slots=True)
class Stock:
    """Sticks of one length, in exact inches: so many on hand, or as many as one buys (None).

    A price is exact, in any one currency; all that can be bought have one, or none has. `bad` are
    stretches (from, to) of one on hand that neither piece nor cut may touch, measured from the end
    that the pieces are measured from; they may overlap, and reach past the ends.
    """

    length: Fraction
    count: int | None = None
    price: Fraction | None = None
    bad: tuple[tuple[Fraction, Fraction], ...] = ()


@dataclass(frozen=True, slots=True)
class Request:
    """Everything that a plan is made of; `trim` is what is lost at each end, its kerf in it.

    `width` is that of the sticks, for mitered ends. With `turning` a piece may be turned end for
    end and over, as a flat strip may; without it all lie the same way, as molding does. `least` is
    the shortest offcut worth keeping: of plans that buy as little, the one with the longest offcut
    is looked for, if it is that long.
    """

    pieces: tuple[Piece, ...]
    on_hand: tuple[Stock, ...]
    to_buy: tuple[Stock, ...]
    kerf: Fraction = Fraction(0)
    trim: Fraction = Fraction(0)
    width: Fraction = Fraction(0)
    turning: bool = True
    least: Fraction = Fraction(0)

    @property
    def priced(self):
        """Whether the cost counts; else the number of sticks does."""
        return bool(self.to_buy) and all(stock.price is not None for stock in self.to_buy)

    def usable(self, stock):
        """What the trims leave of a stick without bad stretches."""
        return stock.length - 2 * self.trim

    def sections(self, stock):
        """(start, end) of what can be used of a stick, from its measured end; none where nothing
        is left.

        At a bad stretch a piece is cut off clear of it, so the kerf there comes off the good wood,
        that of the steepest cut; the ends of the stick lose their trim.
        """
        found, start = [], self.trim
        kerf = steepest(self).by(self.kerf).up
        for bad_from, bad_to in sorted(stretch for stretch in stock.bad if stretch[0] < stretch[1]):
            if bad_to > 0 and bad_from < stock.length:
                found.append((start, min(bad_from - kerf, stock.length - self.trim)))
                start = max(start, bad_to + kerf)
        found.append((start, stock.length - self.trim))
        return tuple((start, end) for start, end in found if start < end)
