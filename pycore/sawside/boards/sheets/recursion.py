"""The most that one sheet can give where each piece may come out of it as often as one likes.

P. C. Gilmore, R. E. Gomory, "The theory and computation of knapsack functions", Operations Research
14 (1966); J. E. Beasley, "Algorithms for unconstrained two-dimensional guillotine cutting", Journal
of the Operational Research Society 36 (1985): a part gives its best piece, or what both sides of
the best cut give. Only cuts at sums of pieces are looked at (normal patterns: J. C. Herz,
"Recursive computational procedure for two-dimensional stock cutting", IBM Journal of Research and
Development 16 (1972)), and of these only those that some sum fills up from the other end.
"""

from bisect import bisect_right
from operator import add

from sawside.boards.fills import OutOfStepsError
from sawside.boards.sheets.trees import chain

_FINE = 1 << 14
"""Units in the longest sheet up to which sums of pieces are looked at one by one."""


class Recursion:
    """`kinds` are (length, width, value, leaf of a tree); a room is (length, width), all whole.

    Raises `OutOfStepsError` where that is too much work, or the units are too fine to look at the
    sums one by one.
    """

    def __init__(self, kinds, room, steps):
        if max(room) > _FINE:
            raise OutOfStepsError
        self.kinds = [kind for kind in kinds if kind[0] <= room[0] and kind[1] <= room[1]]
        self.points = tuple(
            _points({kind[side] for kind in self.kinds}, room[side]) for side in (0, 1)
        )
        across, up = map(len, self.points)
        steps.spend(across * up * (across // 8 + up) // 20)
        self.splits = tuple(
            [_splits(points, i) for i in range(len(points))] for points in self.points
        )
        self.rows = []
        for i in range(across):
            self.rows.append(self._row(i))

    def _row(self, i):
        """What parts of the i-th length give, by their width."""
        row = self._pieces(i)
        for one, other in self.splits[0][i]:
            row = list(map(max, row, map(add, self.rows[one], self.rows[other])))
        for j, splits in enumerate(self.splits[1]):
            for one, other in splits:
                if row[one] + row[other] > row[j]:
                    row[j] = row[one] + row[other]
            if j and row[j - 1] > row[j]:
                row[j] = row[j - 1]
        return row

    def _pieces(self, i):
        row = [0] * len(self.points[1])
        for length, width, value, _ in self.kinds:
            if length <= self.points[0][i]:
                j = bisect_right(self.points[1], width - 1)
                if j < len(row):
                    row[j] = max(row[j], value)
        for j in range(1, len(row)):
            row[j] = max(row[j], row[j - 1])
        return row

    def most(self, length, width):
        """What a part of this size can give at most."""
        i = bisect_right(self.points[0], length) - 1
        j = bisect_right(self.points[1], width) - 1
        return self.rows[i][j] if min(i, j) >= 0 else 0

    def tree(self, length, width):
        """How a part of this size is cut up for that."""
        value = self.most(length, width)
        if not value:
            return None
        size = length, width
        for along in (0, 1):
            for at in self.points[along]:
                if not 0 < at < size[along]:
                    continue
                takes, leaves = list(size), list(size)
                takes[along], leaves[along] = at, size[along] - at
                if self.most(*takes) + self.most(*leaves) == value:
                    parts = (at, self.tree(*takes)), (size[along] - at, self.tree(*leaves))
                    return chain(along, parts)
        return next(
            kind[3]
            for kind in self.kinds
            if kind[2] == value and kind[0] <= length and kind[1] <= width
        )


def sums(sizes, most):
    """What sizes, each as often as one likes, add up to, from 0 up to `most`."""
    reached = 1
    for size in sizes:
        moved = size
        while moved <= most:
            reached |= reached << moved & (1 << most + 1) - 1
            moved *= 2
    return [at for at in range(most + 1) if reached >> at & 1]


def _points(sizes, most):
    """The sums, each moved back to the largest one that is left where it is laid from the end."""
    there = sums(sizes, most)
    return sorted({there[bisect_right(there, most - at) - 1] for at in there} | {0})


def _splits(points, i):
    """The pairs of points that a part as large as the i-th one is cut into."""
    made = []
    for one in range(1, i):
        if 2 * points[one] > points[i]:
            break
        made.append((one, bisect_right(points, points[i] - points[one]) - 1))
    return made
