"""What is to be cut out of what, and the same as whole numbers.

n pieces with a kerf between each two fit into a stick where their lengths and n − 1 kerfs are no
more than what the trims leave. That is: lengths that each have a kerf added fit into what is left
with one kerf added. So the search knows of no kerf.
"""

from dataclasses import dataclass
from fractions import Fraction
from math import gcd, lcm


@dataclass(frozen=True, slots=True)
class Piece:
    """So many alike; the length in exact inches, more than 0."""

    length: Fraction
    count: int = 1
    name: str = ""


@dataclass(frozen=True, slots=True)
class Stock:
    """Sticks of one length, in exact inches: so many on hand, or as many as one buys (None).

    A price is exact, in any one currency; all that can be bought have one, or none has.
    """

    length: Fraction
    count: int | None = None
    price: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Request:
    """Everything that a plan is made of; `trim` is what is lost at each end, its kerf in it."""

    pieces: tuple[Piece, ...]
    on_hand: tuple[Stock, ...]
    to_buy: tuple[Stock, ...]
    kerf: Fraction = Fraction(0)
    trim: Fraction = Fraction(0)

    @property
    def priced(self):
        """Whether the cost counts; else the number of sticks does."""
        return bool(self.to_buy) and all(stock.price is not None for stock in self.to_buy)

    def usable(self, stock):
        """What the trims leave of a stick."""
        return stock.length - 2 * self.trim


@dataclass(frozen=True, slots=True)
class Whole:
    """A request in whole numbers: `sizes` from large to small, each with how many in `counts`.

    `rooms` are those of `on_hand` and `buys` those of `to_buy`, in its order; `costs` are what one
    of each costs, 1 each where there are no prices, in units of `cost_unit`.
    """

    sizes: tuple[int, ...]
    counts: tuple[int, ...]
    rooms: tuple[int, ...]
    buys: tuple[int, ...]
    costs: tuple[int, ...]
    cost_unit: Fraction


def whole(request):
    """The `Whole` of a request, by the least common denominator of its lengths."""
    added = [piece.length + request.kerf for piece in request.pieces]
    hand, bought = (
        [request.usable(stock) + request.kerf for stock in stocks]
        for stocks in (request.on_hand, request.to_buy)
    )
    unit = lcm(*(each.denominator for each in (*added, *hand, *bought)))
    numbers = [int(each * unit) for each in added]
    rooms = [int(each * unit) for each in (*hand, *bought)]
    common = gcd(*numbers, *rooms) or 1
    counted = {}
    for number, piece in zip(numbers, request.pieces, strict=True):
        if piece.count:
            counted[number // common] = counted.get(number // common, 0) + piece.count
    sizes = tuple(sorted(counted, reverse=True))
    prices = [stock.price if request.priced else Fraction(1) for stock in request.to_buy]
    cost_unit = Fraction(1, lcm(*(price.denominator for price in prices)))
    return Whole(
        sizes,
        tuple(counted[size] for size in sizes),
        tuple(max(int(each * unit) // common, 0) for each in hand),
        tuple(max(int(each * unit) // common, 0) for each in bought),
        tuple(int(price / cost_unit) for price in prices),
        cost_unit,
    )
