"""Rectangles joined to larger ones until a sheet is full, from the bottom up.

P. Y. Wang, "Two algorithms for constrained two-dimensional cutting stock problems", Operations
Research 31 (1983): two that were made before are laid beside each other, along one side or the
other, if no more is wasted than a limit. Those that waste least are joined first. Of what was cut
apart without a rest, this finds the way back.
"""

from bisect import bisect_left, bisect_right, insort
from dataclasses import dataclass
from heapq import heappop, heappush

from sawside.boards.fills import OutOfStepsError
from sawside.boards.sheets.trees import chain

_LOOKS = 8
"""So many looks at whether two go together are a step."""


@dataclass(frozen=True, slots=True)
class Joined:
    """A rectangle: its sides, how many of each item are in it (as `Counts` holds them), what of
    its area is used, and what it is made of."""

    length: int
    width: int
    counts: int
    used: int
    made_of: tuple

    def tree(self):
        """How it is cut apart."""
        if self.made_of[0] == "item":
            return self.made_of
        along, one, other = self.made_of
        parts = []
        for each in (one, other):
            sides = (each.length, each.width)
            across = (self.length, self.width)[1 - along] - sides[1 - along]
            tree = each.tree()
            if across:
                tree = chain(1 - along, ((sides[1 - along], tree), (across, None)))
            parts.append((sides[along], tree))
        return chain(along, parts)


class Counts:
    """How many of each item, as one binary number with a lane for each and a guard bit above it."""

    def __init__(self, counts):
        self.wide = max(counts, default=1).bit_length() + 1
        self.high = sum(1 << (place + 1) * self.wide - 1 for place in range(len(counts)))
        self.most = sum(count << place * self.wide for place, count in enumerate(counts))

    def one(self, place):
        """One of this item."""
        return 1 << place * self.wide

    def of(self, counts, place):
        """How many of an item there are."""
        return counts >> place * self.wide & (1 << self.wide) - 1

    def enough(self, counts, most):
        """Whether none of them is more than in `most`."""
        return (most | self.high) - counts & self.high == self.high


def full_sheets(items, counts, room, waste, steps, most):
    """Up to `most` sheets of this `room`, as `Joined`, that waste so much area at most; those that
    are found before the steps end, and whether there are no more."""
    lanes = Counts(counts)
    found, seen, heap, closed = [], set(), [], _Closed(waste, items, counts)

    def put(made):
        key = made.length, made.width, made.counts
        if key not in seen:
            seen.add(key)
            area = made.length * made.width
            heappush(heap, (area - made.used, -area, len(seen), made))
            if made.used >= room[0] * room[1] - waste:
                found.append(made)

    try:
        for made in _singles(items, counts, room, lanes):
            put(made)
        while heap and len(found) < most:
            *_, made = heappop(heap)
            closed.add(made)
            for more in closed.joined(made, room, lanes, steps):
                put(more)
    except OutOfStepsError:
        return found, False
    return found, not heap


def _singles(items, counts, room, lanes):
    for place, (item, count) in enumerate(zip(items, counts, strict=True)):
        sides = ((item.length, item.width, False), (item.width, item.length, True))
        for length, width, turned in sides if item.turns else sides[:1]:
            if count and length <= room[0] and width <= room[1]:
                leaf = "item", place, turned
                yield Joined(length, width, lanes.one(place), item.area, leaf)


class _Closed:
    """What has been joined with everything before it, by both sides."""

    def __init__(self, waste, items, counts):
        there = [item for item, count in zip(items, counts, strict=True) if count]
        self.waste = waste
        least = min((min(item.length, item.width) for item in there), default=1)
        self.window = waste // least
        self.by_side = ({}, {})
        self.sides = ([], [])

    def add(self, made):
        for across, side in ((0, made.width), (1, made.length)):
            if side not in self.by_side[across]:
                self.by_side[across][side] = []
                insort(self.sides[across], side)
            self.by_side[across][side].append(made)

    def joined(self, made, room, lanes, steps):
        """Yield what comes of `made` beside each of them, along the length and the width."""
        for along in (0, 1):
            mine = (made.length, made.width)
            across = mine[1 - along]
            sides = self.sides[along]
            start = bisect_left(sides, across - self.window)
            end = bisect_right(sides, across + self.window)
            most = room[along] - mine[along]
            for side in sides[start:end]:
                others = self.by_side[along][side]
                steps.spend(1 + len(others) // _LOOKS)
                for other in others:
                    size = other.width if along else other.length
                    if size <= most and lanes.enough(made.counts + other.counts, lanes.most):
                        long, high = size + mine[along], max(across, side)
                        used = made.used + other.used
                        if long * high - used <= self.waste:
                            sides_of = (high, long) if along else (long, high)
                            counts = made.counts + other.counts
                            yield Joined(*sides_of, counts, used, (along, made, other))


def covered(sheets, counts, number, steps):
    """So many of the `Joined` sheets that hold all items between them, or None; each is used so
    often as its items last. Raises `OutOfStepsError`."""
    lanes = Counts(counts)
    holding = [[s for s in sheets if lanes.of(s.counts, place)] for place in range(len(counts))]
    order = sorted(
        (place for place, count in enumerate(counts) if count), key=lambda p: len(holding[p])
    )

    def search(left, number):
        steps.spend(1)
        if not left:
            return []
        if not number:
            return None
        place = next(p for p in order if lanes.of(left, p))
        for sheet in holding[place]:
            steps.spend(1)
            if lanes.enough(sheet.counts, left):
                rest = search(left - sheet.counts, number - 1)
                if rest is not None:
                    return [sheet, *rest]
        return None

    return search(lanes.most, number)
