"""A request in whole numbers, for the search.

n pieces with a kerf between each two fit into a stick where their lengths and n − 1 kerfs are no
more than what the trims leave. That is: lengths that each have a kerf added fit into what is left
with one kerf added. So the search knows of no kerf, nor of miters (`slants`).
"""

from dataclasses import dataclass
from fractions import Fraction
from math import gcd, lcm

from sawside.boards.slants import safe_models


@dataclass(frozen=True, slots=True)
class Whole:
    """A request in whole numbers: `sizes` from large to small, each with how many in `counts`;
    `pieces` are the places in the request of each size, as often as they are wanted.

    `rooms` are those of the stretches of what is on hand, `of_hand` the (place of the stick in
    `on_hand`, start, end) of each and `hand` how many there are; `buys` are those of `to_buy`, in
    its order. `costs` are what one of each costs, 1 each where there are no prices, in units of
    `cost_unit`. One unit is `unit` inches.
    """

    sizes: tuple[int, ...]
    counts: tuple[int, ...]
    pieces: tuple[tuple[int, ...], ...]
    rooms: tuple[int, ...]
    of_hand: tuple[tuple[int, Fraction, Fraction], ...]
    hand: tuple[int, ...]
    buys: tuple[int, ...]
    costs: tuple[int, ...]
    cost_unit: Fraction
    unit: Fraction


def whole(request, model=None):
    """The `Whole` of a request, by the least common denominator of its lengths; `model` is one of
    `slants`, the first of the safe ones where none is given."""
    model = model or safe_models(request)[0]
    stretches = tuple(
        (i, start, end)
        for i, stock in enumerate(request.on_hand)
        for start, end in request.sections(stock)
    )
    hand = [end - start + model.beyond for _, start, end in stretches]
    bought = [request.usable(stock) + model.beyond for stock in request.to_buy]
    unit = lcm(*(each.denominator for each in (*model.sizes, *hand, *bought)))
    numbers = [int(each * unit) for each in model.sizes]
    rooms = [int(each * unit) for each in (*hand, *bought)]
    common = gcd(*numbers, *rooms) or 1
    by_size = {}
    for place, (number, piece) in enumerate(zip(numbers, request.pieces, strict=True)):
        if piece.count:
            by_size.setdefault(number // common, []).extend([place] * piece.count)
    sizes = tuple(sorted(by_size, reverse=True))
    prices = [stock.price if request.priced else Fraction(1) for stock in request.to_buy]
    cost_unit = Fraction(1, lcm(*(price.denominator for price in prices)))
    in_units = tuple(max(each // common, 0) for each in rooms)
    return Whole(
        sizes,
        tuple(len(by_size[size]) for size in sizes),
        tuple(tuple(by_size[size]) for size in sizes),
        in_units[: len(hand)],
        stretches,
        tuple(
            request.on_hand[i].count if room else 0
            for (i, _, _), room in zip(stretches, in_units, strict=False)
        ),
        in_units[len(hand) :],
        tuple(int(price / cost_unit) for price in prices),
        cost_unit,
        Fraction(common, unit),
    )
