"""What no plan can be better than, from sums that any stick has to hold to.

A function f that is never less for more, with f(a) + f(b) <= f(a + b), tells of every stick that
the f of what is in it add up to f of its room at most. So the f of all pieces are at most the f of
all sticks. Three families of f:

- parts of a room, rounded: S. P. Fekete, J. Schepers, "New classes of fast lower bounds for bin
  packing problems", Mathematical Programming 91 (2001), u(k);
- pieces over half a room count as all of it where nothing longer than t goes beside them, and those
  below t not at all: the bound L2 of S. Martello, P. Toth, "Lower bounds and reduction procedures
  for the bin packing problem", Discrete Applied Mathematics 28 (1990);
- the length itself.
"""

from dataclasses import dataclass

_MOST_PARTS = 30


@dataclass(frozen=True, slots=True)
class Sums:
    """One f: what it makes of all pieces together, and of a stick of each room."""

    pieces: int
    rooms: dict[int, int]


def all_sums(sizes, counts, rooms):
    """The `Sums` of every f for pieces of `sizes`, so many of each, and sticks of these `rooms`."""
    rooms = sorted(set(rooms))
    made = {}
    for function in _functions(sizes, rooms):
        pieces = sum(function(size) * count for size, count in zip(sizes, counts, strict=True))
        if pieces:
            values = {room: function(room) for room in rooms}
            key = tuple(values.values())
            made[key] = max(made.get(key, Sums(0, {})), Sums(pieces, values), key=_pieces)
    return tuple(made.values())


def _pieces(sums):
    return sums.pieces


def _functions(sizes, rooms):
    yield lambda size: size
    for room in rooms:
        for parts in range(1, _MOST_PARTS):
            yield lambda size, parts=parts, room=room: size * parts // room
            yield lambda size, parts=parts, room=room: max(-(-size * parts // room) - 1, 0)
    largest = rooms[-1]
    for least in {size for size in sizes if 2 * size <= largest} | {0}:
        yield lambda size, least=least: _all_or_nothing(size, least, largest)


def _all_or_nothing(size, least, room):
    return 0 if size < least else room if size > room - least else size


def could_hold(sums, sticks):
    """Whether no sum says that `sticks` (so many of each room) are too few; never a proof that
    they are enough."""
    return all(
        each.pieces <= sum(each.rooms[room] * count for room, count in sticks.items())
        for each in sums
    )


def least_cost(sums, rooms, buys, costs):
    """What the sticks that are bought cost at least, in whole units; `rooms` are those on hand.

    By each sum: what is not held by those on hand is held at the lowest cost for each unit. None
    where nothing that can be bought holds it.
    """
    least = 0
    for each in sums:
        missing = each.pieces - sum(each.rooms[room] for room in rooms)
        if missing <= 0:
            continue
        rates = [(each.rooms[room], cost) for room, cost in zip(buys, costs, strict=True)]
        if not any(held for held, _ in rates):
            return None
        by_this = min(-(-missing * cost // held) for held, cost in rates if held)
        least = max(least, by_this)
    return least
