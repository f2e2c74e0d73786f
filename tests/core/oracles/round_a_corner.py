"""A box carried round a square corner of two halls: tried place by place, turned step by step.

It shares no code with the core and knows no formula: free places are searched by walking from one
to the next. The first hall comes up along y, `below` wide from x = 0; the second goes off along x,
`above` wide from y = 0. Both outer walls meet at (0, 0).
"""

from collections import deque
from math import cos, pi, sin


def goes_round(long, across, below, above, step, turns):
    """Whether some walk in steps of `step` and turns of 90° ÷ `turns` leads from far down the first
    hall into the second one; a walk may begin and end turned in any way."""
    hall = Hall(long, across, below, above)
    reach = long + across + max(below, above)
    many = int(reach / step) + 1
    starts = [
        (x, many, turn)
        for x in range(int(below / step) + 1)
        for turn in range(2 * turns)
        if hall.is_free(x * step, many * step, pi / 2 * turn / turns)
    ]
    seen, waiting = set(starts), deque(starts)
    while waiting:
        x, y, turn = waiting.popleft()
        if x >= many - 1:
            return True
        for by in ((1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1), (0, 0, -1)):
            place = (x + by[0], y + by[1], (turn + by[2]) % (2 * turns))
            if place in seen or not (0 <= place[0] <= many and 0 <= place[1] <= many):
                continue
            if hall.is_free(place[0] * step, place[1] * step, pi / 2 * place[2] / turns):
                seen.add(place)
                waiting.append(place)
    return False


class Hall:
    """The two halls, and a box in them by its center and turn."""

    def __init__(self, long, across, below, above):
        self.half, self.below, self.above = (long / 2, across / 2), below, above
        self.corners = {}

    def is_free(self, x, y, turn):
        """Whether a box about (x, y), its length `turn` radians from x, touches no wall."""
        if turn not in self.corners:
            self.corners[turn] = self._corners(turn)
        points = [(x + dx, y + dy) for dx, dy in self.corners[turn]]
        if min(px for px, _ in points) < 0 or min(py for _, py in points) < 0:
            return False
        return self._clear_of_inner_block(points, x, y, turn)

    def _corners(self, turn):
        long, across = self.half
        return [
            (
                i * long * cos(turn) - j * across * sin(turn),
                i * long * sin(turn) + j * across * cos(turn),
            )
            for i, j in ((1, 1), (1, -1), (-1, -1), (-1, 1))
        ]

    def _clear_of_inner_block(self, points, x, y, turn):
        """The block from (below, above) on: two shapes are apart where a line of either parts them;
        its own lines are level and upright, those of the box are its sides."""
        if max(px for px, _ in points) <= self.below or max(py for _, py in points) <= self.above:
            return True
        dx, dy = self.below - x, self.above - y
        long, across = self.half
        for way, half in ((turn, long), (turn + pi / 2, across)):
            ux, uy = cos(way), sin(way)
            # The block goes on for ever to larger x and y: only its corner can be its nearest.
            if ux >= -1e-12 and uy >= -1e-12 and dx * ux + dy * uy >= half:
                return True
            if ux <= 1e-12 and uy <= 1e-12 and -(dx * ux + dy * uy) >= half:
                return True
        return False
