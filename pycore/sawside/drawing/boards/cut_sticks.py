"""Sticks one below the other, in one scale, each with its pieces and what is left."""

from sawside.drawing.shapes import drawing, label, rectangle
from sawside.lengths.real import nearby

MOST_DRAWN = 8
"""Sticks that are drawn; the list has all of them."""

_SCREEN = 290
"""Pixels of the longest stick on a narrow phone."""

_LETTER, _EDGE = 10, 12
_HIGH, _ROW, _ABOVE = 26, 62, 14


def cut_sticks(words, sticks):
    """The drawing of `sticks`, each (title, length, runs): exact inches, and what lies along it as
    (start, end, role, text). A text that has no room in its run is left out."""
    pixel = nearby(max(length for _, length, _ in sticks)) / _SCREEN
    shapes = []
    for row, (title, length, runs) in enumerate(sticks):
        top = row * _ROW * pixel
        shapes.append(label((0, top - _ABOVE * pixel), title, "name", "start"))
        shapes.append(rectangle(0, top, nearby(length), top + _HIGH * pixel, "waste"))
        for start, end, role, text in runs:
            left, right = nearby(start), nearby(end)
            shapes.append(rectangle(left, top, right, top + _HIGH * pixel, role))
            if text and (right - left) / pixel > len(text) * _LETTER:
                middle = (left + right) / 2, top + _HIGH / 2 * pixel
                shapes.append(label(middle, text, "note"))
    edge = _EDGE * pixel
    bottom = ((len(sticks) - 1) * _ROW + _HIGH) * pixel
    box = (-edge, -(_ABOVE + 16) * pixel, _SCREEN * pixel + edge, bottom + edge)
    return drawing(words, box, shapes)
