"""What no plan of sheets can be better than.

Where f and g are never less for more, with f(a) + f(b) <= f(a + b), the products f(length) times
g(width) of all that comes out of a sheet are at most that of the sheet: S. P. Fekete, J. Schepers,
"A general framework for bounds for higher-dimensional orthogonal packing problems", Mathematical
Methods of Operations Research 60 (2004). The functions are those of `boards/bounds`. Sides have a
kerf added.
"""

from math import isqrt

from sawside.boards.bounds import Sums, all_sums

_FUNCTIONS = 40
_FEWEST_FUNCTIONS = 12
_WORK = 400_000
"""Functions of each side, those that ask for most; fewer for many items: every pair of them is made
of every item, and so many of these are done at once."""

_MOST_SUMS = 60


def area_sums(exact):
    """The `Sums` of all pairs of functions, rooms being (length, width), the best first."""
    items = exact.items
    rooms = [room for room in {*exact.rooms, *exact.buys} if min(room)]
    if not rooms or not items:
        return ()
    counts = [item.count for item in items]
    turned = [item.turns for item in items]
    sides = [(item.length, item.width) for item in items]
    values = [side for pair in sides for side in pair]
    doubled = [count for count in counts for _ in (0, 1)]
    functions = max(min(_FUNCTIONS, isqrt(_WORK // len(items))), _FEWEST_FUNCTIONS)
    of_length, of_width = (
        all_sums(values, doubled, [room[side] for room in rooms])[:functions] for side in (0, 1)
    )
    made = {}
    for f in of_length:
        for g in of_width:
            sizes = tuple(
                min(f.sizes[2 * i] * g.sizes[2 * i + 1], f.sizes[2 * i + 1] * g.sizes[2 * i])
                if turned[i]
                else f.sizes[2 * i] * g.sizes[2 * i + 1]
                for i in range(len(items))
            )
            pieces = sum(size * count for size, count in zip(sizes, counts, strict=True))
            if pieces:
                held = {room: f.rooms[room[0]] * g.rooms[room[1]] for room in rooms}
                made[sizes, tuple(held.values())] = Sums(sizes, pieces, held)
    return tuple(sorted(made.values(), key=_asks_for, reverse=True)[:_MOST_SUMS])


def _asks_for(sums):
    return sums.pieces * 1000 // max(max(sums.rooms.values()), 1)
