"""The sheet that is worth most where there are only so many of each piece.

K. V. Viswanathan, A. Bagchi, "Best-first search methods for constrained two-dimensional cutting
stock problems", Operations Research 41 (1993): rectangles are joined from the bottom up, always
the one that promises most: its own worth, and what `Recursion` says can stand around it.
"""

from bisect import bisect_right
from heapq import heappop, heappush
from operator import add

from sawside.boards.fills import OutOfStepsError
from sawside.boards.sheets.joining import Counts, Joined
from sawside.boards.sheets.recursion import Recursion, sums


class Around:
    """What can come out of a sheet around a rectangle in its corner, at most: a strip is laid
    beside it, along one side or the other, and then more around both.

    Raises `OutOfStepsError` where that is too much work.
    """

    def __init__(self, recursion, room, steps):
        across, up = (sums({kind[i] for kind in recursion.kinds}, room[i]) for i in (0, 1))
        steps.spend(len(across) * len(up) * (len(across) // 8 + len(up)) // 20)
        self.points = across, up
        self.place_up = {at: j for j, at in enumerate(up)}
        self.rows = {}
        strips = {at: [recursion.most(at, high) for high in up] for at in across}
        for at in reversed(across):
            self.rows[at] = self._row(at, room, strips)

    def _row(self, at, room, strips):
        across, up = self.points
        row = [0] * len(up)
        for strip in across:
            if strip and at + strip <= room[0]:
                row = list(map(max, row, map(add, self.rows[at + strip], strips[strip])))
        mine = strips[at]
        for j in range(len(up) - 1, -1, -1):
            if j + 1 < len(up):
                row[j] = max(row[j], row[j + 1])
            for k in range(1, len(up)):
                if up[j] + up[k] > room[1]:
                    break
                row[j] = max(row[j], row[self.place_up[up[j] + up[k]]] + mine[k])
        longer = bisect_right(across, at)
        if longer < len(across):
            row = list(map(max, row, self.rows[across[longer]]))
        return row

    def most(self, length, width):
        """For a rectangle of this size, whose sides are sums of pieces."""
        return self.rows[length][self.place_up[width]]


def fullest(items, counts, values, room, steps):
    """The best `Joined` that is found in the steps, `used` being its value, and whether no sheet is
    worth more."""
    kinds = [
        (*sides, value, ("item", place, turned))
        for place, (item, value) in enumerate(zip(items, values, strict=True))
        for *sides, turned in _ways(item)
        if counts[place]
    ]
    around = Around(Recursion(kinds, room, steps), room, steps)
    lanes, best = Counts(counts), None
    heap, seen, closed = [], {}, []

    def put(made):
        nonlocal best
        key = made.length, made.width, made.counts
        if seen.get(key, -1) >= made.used:
            return
        seen[key] = made.used
        if best is None or made.used > best.used:
            best = made
        promise = made.used + around.most(made.length, made.width)
        if promise > best.used:
            heappush(heap, (-promise, -made.used, len(seen), made))

    try:
        for length, width, value, leaf in kinds:
            if length <= room[0] and width <= room[1]:
                put(Joined(length, width, lanes.one(leaf[1]), value, leaf))
        while heap and -heap[0][0] > best.used:
            *_, made = heappop(heap)
            closed.append(made)
            steps.spend(1 + len(closed) // 4)
            for other in closed:
                counted = made.counts + other.counts
                if lanes.enough(counted, lanes.most):
                    for more in _beside(made, other, counted, room):
                        put(more)
    except OutOfStepsError:
        return best, False
    return best, True


def _ways(item):
    yield item.length, item.width, False
    if item.turns:
        yield item.width, item.length, True


def _beside(made, other, counts, room):
    used = made.used + other.used
    length = made.length + other.length
    if length <= room[0]:
        yield Joined(length, max(made.width, other.width), counts, used, (0, made, other))
    width = made.width + other.width
    if width <= room[1]:
        yield Joined(max(made.length, other.length), width, counts, used, (1, made, other))
