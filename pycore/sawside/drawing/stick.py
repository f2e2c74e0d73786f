"""A stick seen from the side, whole: what it is divided into, and the marks along it.

Texts that would run into each other are stacked above the stick, and left out where there is no
room; every one of them stands among the answers as well.
"""

from itertools import pairwise

from sawside.drawing.shapes import dimension, drawing, label, line, rectangle
from sawside.lengths.real import nearby

_SCREEN = 250
"""Pixels of the stick on a narrow phone; the rest is room for the texts at its ends."""

_LETTER = 8.5
"""Pixels of a letter, on the safe side."""

_EDGE = 39
"""Pixels left free at both ends of the stick."""

_LARGER = 1.3
"""How much wider a text may come out than it is here, as a picture may be drawn smaller."""

_GAP = 14
"""Pixels between two texts of one row."""

_ROWS = 4
_ROW = 22
_MOST_MARKS = 10
_HIGH = 44
_CLOSEST = 5
"""Pixels between two cuts below which they would be one gray patch."""


def stick(words, whole, runs, *, cuts=(), marks=(), dimensions=()):
    """The drawing of a stick `whole` inches long.

    `runs` are (start, end, role, name) along it, `cuts` the places where a blade passes, `marks`
    (place, text) above it, `dimensions` (start, end, text, role) below it, each in a row of its
    own. Places are exact inches from the left end.
    """
    pixel = nearby(whole) / _SCREEN
    high = _HIGH * pixel
    shapes = []
    for start, end, role, name in _seen(runs, pixel):
        left, right = nearby(start), nearby(end)
        shapes.append(rectangle(left, 0, right, high, role))
        if name and (right - left) / pixel > len(name) * _LETTER:
            shapes.append(label(((left + right) / 2, high / 2), name, "note"))
    shapes += [
        line((x, -high / 8), (x, high * 9 / 8), "cut") for x in _apart(cuts, _CLOSEST * pixel)
    ]
    placed = _placed(marks, pixel, nearby(whole))
    for x, middle, text, row in placed:
        top = -(row + 1) * _ROW * pixel
        shapes.append(line((x, 0), (x, top + _ROW * pixel / 3), "center"))
        shapes.append(label((middle, top), text, "name"))
    for row, (start, end, text, role) in enumerate(dimensions, 1):
        ends = (nearby(end), high), (nearby(start), high)
        shapes.append(dimension(*ends, 28 * row * pixel, text, role))
    rows = max((row for *_, row in placed), default=0) + 1
    edge = _EDGE * pixel
    bottom = high + (28 * len(dimensions) + 18) * pixel
    box = (-edge, -(rows * _ROW + 14) * pixel, nearby(whole) + edge, bottom)
    return drawing(words, box, shapes)


def _seen(runs, pixel):
    """The runs; those too short to be told apart are drawn as one, named by how many they are."""
    short, long = [], []
    for run in runs:
        (short if run[3] and nearby(run[1] - run[0]) < _CLOSEST * pixel else long).append(run)
    if len(short) < 2:
        return runs
    one = (short[0][0], short[-1][1], short[0][2], f"{len(short)} pieces")
    return [*long, one]


def _apart(places, least):
    """The places if they can be told apart in the drawing, else only the first and the last."""
    xs = [nearby(place) for place in places]
    if len(xs) > 2 and min(b - a for a, b in pairwise(xs)) < least:
        return [xs[0], xs[-1]]
    return xs


def _placed(marks, pixel, whole):
    """(place, middle of the text, text, row) of the marks that have room: the first and the last
    before the others. No text reaches past the picture's edge."""
    marks = list(marks)
    if len(marks) > _MOST_MARKS:
        last = len(marks) - 1
        marks = [marks[number * last // (_MOST_MARKS - 1)] for number in range(_MOST_MARKS)]
    rows = [[] for _ in range(_ROWS)]
    for number in sorted(range(len(marks)), key=lambda each: each not in (0, len(marks) - 1)):
        place, text = marks[number]
        x, half = nearby(place), (len(text) * _LETTER + _GAP) * pixel / 2
        room = max(_EDGE * pixel + whole / 2 - half * _LARGER, 0)
        middle = min(max(x, whole / 2 - room), whole / 2 + room)
        for row in rows:
            if all(abs(middle - other) >= half + taken for _, other, taken, _ in row):
                row.append((x, middle, half, text))
                break
    return [
        (x, middle, text, row) for row, placed in enumerate(rows) for x, middle, _, text in placed
    ]
