"""What no plan can be better than, from prices of the items: where no sheet holds more than so much
worth, all items need so much of all sheets.

The most that a sheet holds, each item as often as one likes, is that of `Recursion`. Prices of
which much is needed are found step by step: what a best sheet has much of gets cheaper, as in the
cutting stock bound of P. C. Gilmore, R. E. Gomory, "Multistage cutting stock problems of two and
more dimensions", Operations Research 13 (1965).
"""

from collections import Counter
from contextlib import suppress
from fractions import Fraction

from sawside.boards.bounds import Sums
from sawside.boards.fills import OutOfStepsError
from sawside.boards.sheets.recursion import Recursion
from sawside.boards.sheets.trees import used

_ROUNDS = 40
_FINE = 1 << 20
"""Units of the dearest price."""


def pattern_sums(exact, known, steps):
    """Yield `Sums` as long as the steps last; `known` are those of other bounds, the best first,
    whose prices are begun with."""
    rooms = [room for room in dict.fromkeys((*exact.buys, *exact.rooms)) if min(room)]
    if not rooms:
        return
    counts = [item.count for item in exact.items]
    areas = [item.area for item in exact.items]
    starts = [areas, *(_with_some(sums, areas) for sums in known[:2])]
    with suppress(OutOfStepsError):
        for prices in starts:
            for step in range(_ROUNDS // len(starts)):
                sums, taken = _most(exact, prices, counts, rooms, steps)
                yield sums
                sheets = -(-sums.pieces // max(sums.rooms.values()))
                prices = [
                    Fraction(price * count * (step + 4), count * (step + 4) + much * sheets)
                    for price, much, count in zip(sums.sizes, taken, counts, strict=True)
                ]


def _with_some(sums, areas):
    """The prices of other sums, and a little for the area, so that none is for nothing."""
    most = max(sums.sizes)
    return [
        Fraction(price, most) + Fraction(area, 500 * max(areas))
        for price, area in zip(sums.sizes, areas, strict=True)
    ]


def _most(exact, prices, counts, rooms, steps):
    dearest = max(prices)
    prices = [int(price * _FINE / dearest) for price in prices]
    kinds = []
    for place, (item, price) in enumerate(zip(exact.items, prices, strict=True)):
        kinds.append((item.length, item.width, price, ("item", place, False)))
        if item.turns:
            kinds.append((item.width, item.length, price, ("item", place, True)))
    held, taken = {}, None
    for room in rooms:
        found = Recursion(kinds, room, steps)
        held[room] = found.most(*room)
        if taken is None:
            taken = Counter(used(found.tree(*room)))
    pieces = sum(price * count for price, count in zip(prices, counts, strict=True))
    return Sums(tuple(prices), pieces, held), [taken[i] for i in range(len(counts))]
