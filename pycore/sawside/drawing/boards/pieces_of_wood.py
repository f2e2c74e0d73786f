"""Boards, sheets and sticks one below the other, in one scale, with what is bad of them."""

from sawside.drawing.shapes import drawing, label, rectangle
from sawside.lengths.real import nearby

MOST_DRAWN = 5
"""Rows that are drawn; the list has all of them."""

_SCREEN = 290
"""Pixels of the longest one on a narrow phone."""

_THIN, _ABOVE, _BELOW, _EDGE = 8, 14, 26, 12


def pieces_of_wood(words, pieces):
    """The drawing of `pieces`, each (title, length, width or None, bad, trim): exact inches, `bad`
    the stretches (from, to) along the length, `trim` what goes off each edge."""
    pixel = max(nearby(length) for _, length, *_ in pieces) / _SCREEN
    shapes, top = [], 0.0
    for name, length, width, bad, trim in pieces:
        long, high = nearby(length), max(nearby(width or 0), _THIN * pixel)
        shapes.append(label((0, top - _ABOVE * pixel), name, "name", "start"))
        shapes.append(rectangle(0, top, long, top + high))
        shapes += [
            rectangle(nearby(start), top, nearby(end), top + high, "hatch") for start, end in bad
        ]
        if trim:
            edge = nearby(trim)
            shapes.append(rectangle(edge, top + edge, long - edge, top + high - edge, "ghost"))
        top += high + (_ABOVE + _BELOW) * pixel
    edge, bottom = _EDGE * pixel, top - (_ABOVE + _BELOW) * pixel
    box = (-edge, -(_ABOVE + 16) * pixel, _SCREEN * pixel + edge, bottom + edge)
    return drawing(words, box, shapes)
