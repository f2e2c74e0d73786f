"""Rectangles joined to larger ones until a sheet is full, from the bottom up.

P. Y. Wang, "Two algorithms for constrained two-dimensional cutting stock problems", Operations
Research 31 (1983): two that were made before are laid beside each other, along one side or the
other, if no more is wasted than a limit. Those that waste least are joined first. Of what was cut
apart without a rest, this finds the way back.
"""

from bisect import bisect_left, bisect_right, insort
from contextlib import suppress
from dataclasses import dataclass
from heapq import heappop, heappush

from sawside.boards.fills import OutOfStepsError
from sawside.boards.sheets.trees import chain

_LOOKS = 32
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

    def filling(self, room):
        """The tree of a sheet of this `room` that it is cut out of."""
        across = chain(1, ((self.width, self.tree()), (room[1] - self.width, None)))
        return chain(0, ((self.length, across), (room[0] - self.length, None)))


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


@dataclass(frozen=True, slots=True)
class Strip:
    """A rectangle that is as wide as a sheet, but for what may be wasted, or as long: its size
    along the other side, and what it wastes."""

    along: int
    size: int
    waste: int
    made: Joined


def strips(items, counts, room, waste, steps, most):
    """Up to `most` strips of this `room` that waste so much area at most, as far as they are found
    before the steps end. None is joined further where nothing can stand beside it: `covered` does
    that."""
    lanes = Counts(counts)
    found, seen, heap, closed = [], set(), [], _Closed(waste, items, counts)

    def put(made):
        key = made.length, made.width, made.counts
        if key not in seen:
            seen.add(key)
            area = made.length * made.width
            heappush(heap, (area - made.used, -area, len(seen), made))

    with suppress(OutOfStepsError):
        for made in _singles(items, counts, room, lanes):
            put(made)
        while heap and len(found) < most:
            *_, made = heappop(heap)
            across = list(_strips_of(made, room, waste))
            found += across
            if not any(_beyond(strip, made, room) < closed.least for strip in across):
                closed.add(made)
                for more in closed.joined(made, room, lanes, steps):
                    put(more)
    return found


def _strips_of(made, room, waste):
    for along, size, across in ((0, made.length, made.width), (1, made.width, made.length)):
        lost = size * room[1 - along] - made.used
        if lost <= waste and across <= room[1 - along]:
            yield Strip(along, size, lost, made)


def _beyond(strip, made, room):
    """What a strip leaves of the side that it should fill."""
    return room[1 - strip.along] - (made.width, made.length)[strip.along]


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
        self.least = min((min(item.length, item.width) for item in there), default=1)
        self.window = waste // self.least
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


class Cover:
    """The search for sheets of one `room`, made of `strips`, that hold all items between them."""

    def __init__(self, strips, counts, room, allow, steps):
        self.lanes, self.room, self.allow, self.steps = Counts(counts), room, allow, steps
        self.by_along = tuple([s for s in strips if s.along == along] for along in (0, 1))
        holds = self.lanes.of
        self.holding = [[s for s in strips if holds(s.made.counts, i)] for i in range(len(counts))]
        there = [i for i, count in enumerate(counts) if count]
        self.order = sorted(there, key=lambda i: len(self.holding[i]))
        self.failed = set()

    def sheets(self, left, number, waste):
        """Trees of so many sheets with all that is `left`, wasting so much area at most; None where
        there are none. Raises `OutOfStepsError`."""
        self.steps.spend(1)
        if not left:
            return [None] * number
        if not number or (left, number) in self.failed:
            return None
        place = next(i for i in self.order if self.lanes.of(left, i))
        for strip in self.holding[place]:
            if strip.waste <= waste and self.lanes.enough(strip.made.counts, left):
                found = self._more(left, number, waste, (), strip, 0)
                if found:
                    return found
        self.failed.add((left, number))
        return None

    def _more(self, left, number, waste, chosen, strip, start):
        """One strip more on the sheet that is begun: then it is full, or takes another one."""
        self.steps.spend(1)
        left, waste, chosen = left - strip.made.counts, waste - strip.waste, (*chosen, strip)
        along = strip.along
        rest = self.room[along] - sum(each.size for each in chosen)
        lost = rest * self.room[1 - along]
        if lost <= waste:
            tree = self._tree(along, chosen, rest)
            if self.allow(tree):
                found = self.sheets(left, number - 1, waste - lost)
                if found is not None:
                    return [tree, *found]
        for place in range(start, len(self.by_along[along])):
            other = self.by_along[along][place]
            self.steps.spend(1)
            fits = other.size <= rest and other.waste <= waste
            if fits and self.lanes.enough(other.made.counts, left):
                found = self._more(left, number, waste, chosen, other, place)
                if found:
                    return found
        return None

    def _tree(self, along, chosen, rest):
        parts = [(rest, None)]
        for strip in chosen:
            made = strip.made
            across = self.room[1 - along] - (made.width, made.length)[along]
            inner = made.width if along == 0 else made.length
            tree = chain(1 - along, ((inner, made.tree()), (across, None)))
            parts.append((strip.size, tree))
        return chain(along, parts)
