"""A request in whole numbers, each size with a kerf added.

What is cut off and what is left of it, each with a kerf added, add up to the part in hand with a
kerf added; so what searches knows of no kerf.
"""

from dataclasses import dataclass
from fractions import Fraction
from math import lcm

LENGTH, WIDTH = 0, 1
"""Which side of a part a cut divides: a crosscut its length, a rip its width."""


@dataclass(frozen=True, slots=True)
class Item:
    """So many alike: sides, whether it may be turned, and which panels these are, one for each.

    Of a block of matched panels `tree` says how it is cut apart, and `along` and `deep` on which
    side it is divided first and in how many levels.
    """

    length: int
    width: int
    count: int
    turns: bool
    panels: tuple[int, ...]
    tree: tuple | None = None
    along: int | None = None
    deep: int = 0

    @property
    def area(self):
        """With the kerfs, in square units."""
        return self.length * self.width


@dataclass(frozen=True, slots=True)
class Whole:
    """A request in units of 1/`unit` inch: `items` from large to small, sheets on hand and to buy
    as (length, width), the `costs` of these in units of `cost_unit` (1 each without prices).

    `first` is the side that the first cuts divide, None for either; `handled` sides are from long
    to short.
    """

    items: tuple[Item, ...]
    rooms: tuple[tuple[int, int], ...]
    hand: tuple[int, ...]
    buys: tuple[tuple[int, int], ...]
    costs: tuple[int, ...]
    cost_unit: Fraction
    kerf: int
    unit: int
    first: int | None
    stages: int | None
    handled: tuple[int, int] | None


def whole(request):
    """The `Whole` of a request, by the least common denominator of its lengths."""
    sides = [request.kerf, request.trim]
    for each in (*request.panels, *request.on_hand, *request.to_buy):
        sides += [each.length, each.width]
    unit = lcm(*(Fraction(side).denominator for side in sides))
    kerf = int(request.kerf * unit)
    rooms, buys = (
        tuple(_room(sheet, request, unit, kerf) for sheet in sheets)
        for sheets in (request.on_hand, request.to_buy)
    )
    prices = [sheet.price if request.priced else Fraction(1) for sheet in request.to_buy]
    cost_unit = Fraction(1, lcm(*(price.denominator for price in prices)))
    handled = request.handled and tuple(
        sorted((int(side * unit // 1) + kerf for side in request.handled), reverse=True)
    )
    return Whole(
        items=_items(request, unit, kerf),
        rooms=rooms,
        hand=tuple(s.count if min(r) else 0 for s, r in zip(request.on_hand, rooms, strict=True)),
        buys=buys,
        costs=tuple(int(price / cost_unit) for price in prices),
        cost_unit=cost_unit,
        kerf=kerf,
        unit=unit,
        first={"rip": WIDTH, "crosscut": LENGTH}.get(request.first),
        stages=request.stages,
        handled=handled or None,
    )


def _room(sheet, request, unit, kerf):
    length, width = (int((side - 2 * request.trim) * unit) for side in (sheet.length, sheet.width))
    return (length + kerf, width + kerf) if min(length, width) > 0 else (0, 0)


def _items(request, unit, kerf):
    alike, matched = {}, {}
    for place, panel in enumerate(request.panels):
        size = int(panel.length * unit) + kerf, int(panel.width * unit) + kerf
        if panel.match:
            matched.setdefault(panel.match, []).append((panel.place, place, size))
        else:
            turns = panel.grain == "free" and size[0] != size[1]
            if turns:
                size = tuple(sorted(size, reverse=True))
            alike.setdefault((*size, turns), []).extend([place] * panel.count)
    made = [
        Item(length, width, len(places), turns, tuple(places))
        for (length, width, turns), places in alike.items()
        if places
    ]
    for those in matched.values():
        ordered = [
            (place, size)
            for _, place, size in sorted(those)
            for _ in range(request.panels[place].count)
        ]
        if ordered:
            made.append(_block(ordered, request.panels[min(those)[1]].laid == "side"))
    return tuple(sorted(made, key=lambda item: (-item.area, -item.length, item.turns)))


def _block(ordered, side_by_side):
    """Matched panels as one item; what is shorter than the longest is cut to length by itself."""
    along = WIDTH if side_by_side else LENGTH
    most = max(size[1 - along] for _, size in ordered)
    parts, trimmed = [], False
    for number, (_, size) in enumerate(ordered):
        leaf, rest = ("panel", number), most - size[1 - along]
        if rest:
            leaf, trimmed = (1 - along, ((size[1 - along], leaf), (rest, None))), True
        parts.append((size[along], leaf))
    total = sum(size for size, _ in parts)
    sides = (most, total) if along == WIDTH else (total, most)
    tree = (along, tuple(parts)) if len(parts) > 1 else parts[0][1]
    if len(parts) == 1:
        return Item(*sides, 1, False, (ordered[0][0],))
    places = tuple(place for place, _ in ordered)
    return Item(*sides, 1, False, places, tree, along, 1 + trimmed)
