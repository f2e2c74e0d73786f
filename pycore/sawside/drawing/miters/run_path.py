"""The line of a run of molding as it is drawn: in pixels of a narrow screen, not to scale.

Short walls are drawn longer and long ones shorter, so that each has room for its joints. Seen from
above, x to the right and y down, the molding lies at the right hand of whoever walks the line.
"""

from dataclasses import dataclass
from math import cos, hypot, radians, sin

_WIDE, _HIGH = 200, 170
_LEAST = 0.34
"""Of the longest wall as it is drawn."""
_ROUNDS = 40


@dataclass(frozen=True, slots=True)
class Path:
    """The corners of the line (the first one again at the end of a loop), and the direction of
    each wall."""

    places: list
    directions: list
    closed: bool

    @property
    def longs(self):
        """How long each wall is drawn."""
        pairs = zip(self.places, self.places[1:], strict=False)
        return [hypot(x - left, y - top) for (left, top), (x, y) in pairs]

    def offset(self, offset):
        """The (left, right) place of each wall `offset` out of the line: where two walls meet, on
        the line that halves their corner."""
        count = len(self.directions)
        outs = [outward(direction) for direction in self.directions]
        found = []
        for wall in range(count):
            ends = []
            for at, other in ((wall, wall - 1), (wall + 1, wall + 1)):
                x, y = self.places[at]
                one = outs[wall]
                meets = self.closed or 0 <= other < count
                two = outs[other % count] if meets else one
                share = offset / (1 + one[0] * two[0] + one[1] * two[1])
                ends.append((x + (one[0] + two[0]) * share, y + (one[1] + two[1]) * share))
            found.append(tuple(ends))
        return found


def outward(direction):
    """From the line to the face."""
    x, y = direction
    return -y, x


def path_of(lengths, turns, *, closed, base):
    """The `Path` of walls so long in inches, with degrees turned behind each; `base` is drawn
    level."""
    heading, headings = 0.0, []
    for at in range(len(lengths)):
        headings.append(heading)
        heading += turns[at] if at < len(turns) else 0
    headings = [radians(each - headings[base]) for each in headings]
    directions = [(cos(each), sin(each)) for each in headings]
    longest = max(lengths)
    drawn = [_LEAST + (1 - _LEAST) * each / longest for each in lengths]
    if closed:
        drawn = _closing(drawn, directions)
    places = [(0.0, 0.0)]
    for long, (x, y) in zip(drawn, directions, strict=True):
        places.append((places[-1][0] + long * x, places[-1][1] + long * y))
    if closed:
        places[-1] = places[0]
    return Path(_scaled(places), directions, closed)


def _scaled(places):
    xs, ys = zip(*places, strict=True)
    wide, high = max(xs) - min(xs), max(ys) - min(ys)
    scale = min(_WIDE / max(wide, 0.01), _HIGH / max(high, 0.01))
    return [(x * scale, y * scale) for x, y in places]


def _closing(drawn, directions):
    """The lengths changed as little as need be to come back to the start; a few rounds of least
    squares, as none may become too short."""
    xx = sum(x * x for x, _ in directions)
    xy = sum(x * y for x, y in directions)
    yy = sum(y * y for _, y in directions)
    whole = xx * yy - xy * xy
    for _ in range(_ROUNDS):
        off_x = sum(long * x for long, (x, _) in zip(drawn, directions, strict=True))
        off_y = sum(long * y for long, (_, y) in zip(drawn, directions, strict=True))
        along, across = (yy * off_x - xy * off_y) / whole, (xx * off_y - xy * off_x) / whole
        drawn = [
            max(long - x * along - y * across, _LEAST)
            for long, (x, y) in zip(drawn, directions, strict=True)
        ]
    return drawn
