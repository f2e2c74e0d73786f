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
_MOST_ROOMS = 4
"""Rooms whose parts are looked at, from the largest on: more would cost too much at each node."""

_MOST_LEASTS = 100
"""Of more sizes than that only so many, evenly apart, are tried as the shortest that counts."""

_MOST_SUMS = 80
"""Those that ask for most at first; the others hardly ever say no."""


@dataclass(frozen=True, slots=True)
class Sums:
    """One f: what it makes of each of the sizes, of all pieces together, and of each room."""

    sizes: tuple[int, ...]
    pieces: int
    rooms: dict[int, int]


def all_sums(sizes, counts, rooms):
    """The `Sums` of every f for pieces of `sizes`, so many of each, and sticks of these `rooms`;
    those that ask for most first."""
    rooms = sorted(set(rooms))
    made = {}
    for function in _functions(sizes, rooms):
        of_sizes = tuple(function(size) for size in sizes)
        of_rooms = {room: function(room) for room in rooms}
        pieces = sum(each * count for each, count in zip(of_sizes, counts, strict=True))
        if pieces:
            made[of_sizes, tuple(of_rooms.values())] = Sums(of_sizes, pieces, of_rooms)
    return tuple(sorted(made.values(), key=_asks_for, reverse=True)[:_MOST_SUMS])


def _asks_for(sums):
    """Sticks of the largest room, in thousandths."""
    return sums.pieces * 1000 // max(max(sums.rooms.values()), 1)


def _functions(sizes, rooms):
    yield lambda size: size
    for room in rooms[-_MOST_ROOMS:]:
        for parts in range(1, _MOST_PARTS):
            yield lambda size, parts=parts, room=room: size * parts // room
            yield lambda size, parts=parts, room=room: max(-(-size * parts // room) - 1, 0)
    largest = rooms[-1]
    leasts = sorted({size for size in sizes if 2 * size <= largest} | {0})
    for least in leasts[:: -(-len(leasts) // _MOST_LEASTS)]:
        yield lambda size, least=least: _all_or_nothing(size, least, largest)


def _all_or_nothing(size, least, room):
    return 0 if size < least else room if size > room - least else size


def could_hold(sums, sticks):
    """Whether no sum says that `sticks` (so many of each room) are too few; never a proof that
    they are enough."""
    return all(
        each.pieces <= sum(each.rooms.get(room, 0) * count for room, count in sticks.items())
        for each in sums
    )


def least_cost(sums, rooms, buys, costs):
    """What the sticks that are bought cost at least, in whole units; `rooms` are those on hand.

    By each sum: what is not held by those on hand is held at the lowest cost for each unit. None
    where nothing that can be bought holds it.
    """
    least = 0
    for each in sums:
        missing = each.pieces - sum(each.rooms.get(room, 0) for room in rooms)
        if missing <= 0:
            continue
        rates = [(each.rooms.get(room, 0), cost) for room, cost in zip(buys, costs, strict=True)]
        if not any(held for held, _ in rates):
            return None
        by_this = min(-(-missing * cost // held) for held, cost in rates if held)
        least = max(least, by_this)
    return least


class Lanes:
    """All sums at once, as one binary number with a lane for each.

    In a lane stands what the sticks that are left hold beyond the pieces that are left, above a
    bit that is lost where that is less than nothing: one subtraction and one look at those bits
    take the place of a loop over all sums.
    """

    def __init__(self, sums, rooms, numbers):
        most = sum(max(each.rooms.values()) for each in sums) + sum(each.pieces for each in sums)
        self._high = (most * (sum(numbers) + 1)).bit_length() + 1
        self._wide = self._high + 1
        self.sound = self._put([1] * len(sums)) << self._high
        self.sizes = [self._put(each) for each in zip(*(s.sizes for s in sums), strict=True)]
        self.rooms = {room: self._put(s.rooms[room] for s in sums) for room in rooms}
        self.start = self.sound - self._put(s.pieces for s in sums)
        for room, number in zip(rooms, numbers, strict=True):
            self.start += self.rooms[room] * number

    def _put(self, values):
        return sum(value << place * self._wide for place, value in enumerate(values))

    def after(self, lanes, room, fill):
        """The lanes once this is in a stick with that room; None where the rest can't go in."""
        lanes -= self.rooms[room]
        for i, number in fill:
            lanes += self.sizes[i] * number
        return lanes if lanes & self.sound == self.sound else None
