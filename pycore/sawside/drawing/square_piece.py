"""A piece cut square at both ends, seen on its face: a long one shortened by a break."""

from itertools import pairwise

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.marks import exact_of
from sawside.lengths.real import nearby

_SCREEN = 300


@lazy
def square_piece(show, name, long, wide, *, marks=(), given=False):
    """The drawing. `marks` are places along the piece (inches) where a screw goes.

    With marks nothing is left out, so that they stand where they are. `given` says that the
    length was measured and not asked for. `long` may be rounded already.
    """
    length, width = nearby(exact_of(long)), nearby(wide)
    across = max(width, length / 12) if marks else width
    drawn = length if marks else min(length, 4 * width)
    pixel = drawn * 6 / 5 / _SCREEN
    shapes = _broken(drawn, across) if drawn < length else [_face(0, drawn, across)]
    dot = 4 * pixel
    for mark in marks:
        x, y = nearby(mark), across / 2
        shapes.append(polygon([(x - dot, y), (x, y - dot), (x + dot, y), (x, y + dot)], "hatch"))
    role = "given" if given else "answer"
    shapes.append(dimension((0, 0), (drawn, 0), 28 * pixel, show.brief(long), role))
    shapes.append(label((drawn / 2, across + 20 * pixel), f"{show.brief(wide)} wide", "note"))
    words = f"{name}, {show.brief(long)} long and {show.brief(wide)} wide, cut square at both ends."
    if marks:
        words += f" {len(marks)} {'screw' if len(marks) == 1 else 'screws'} along it."
    side = drawn / 10
    return drawing(words, (-side, -50 * pixel, drawn + side, across + 36 * pixel), shapes)


def _face(left, right, across):
    return polygon([(left, 0), (right, 0), (right, across), (left, across)])


def _broken(drawn, across):
    """Two halves with a break between them."""
    at, tooth, gap = drawn * 3 / 5, across / 12, across / 8
    edge = [(at + tooth * way, across * step / 3) for step, way in enumerate((0, 1, -1, 0))]
    far = [(x + gap, y) for x, y in edge]
    left = polygon([(0, 0), *edge, (0, across)])
    right = polygon([*far, (drawn, across), (drawn, 0)])
    breaks = [line(*ends, "break") for side in (edge, far) for ends in pairwise(side)]
    return [left, right, *breaks]
