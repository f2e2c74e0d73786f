"""A piece cut square at both ends, seen on its face: a long one shortened by a break."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import break_across, dimension, drawing, label, polygon, rectangle
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
    shapes = _broken(drawn, across) if drawn < length else [rectangle(0, 0, drawn, across)]
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


def _broken(drawn, across):
    """Two halves with a break between them."""
    edge, far, breaks = break_across(drawn * 3 / 5, 0, across)
    left = polygon([(0, 0), *edge, (0, across)])
    right = polygon([*far, (drawn, across), (drawn, 0)])
    return [left, right, *breaks]
