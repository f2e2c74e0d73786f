"""Sticks one below the other, in one scale, each with its pieces and what is left."""

from sawside.drawing.shapes import drawing, label, polygon, rectangle
from sawside.lengths.real import nearby

MOST_DRAWN = 8
"""Sticks that are drawn; the list has all of them."""

_SCREEN = 290
"""Pixels of the longest stick on a narrow phone."""

_LETTER, _EDGE = 10, 12
_HIGH, _ROW, _ABOVE = 26, 62, 14


def cut_sticks(words, sticks):
    """The drawing of `sticks`, each (title, length, runs): exact inches, and what lies along it,
    with (start, end) of its `near` and its `far` edge, a `role` and a `text`. A text that has no
    room in its run is left out."""
    pixel = nearby(max(length for _, length, _ in sticks)) / _SCREEN
    shapes = []
    for row, (title, length, runs) in enumerate(sticks):
        top = row * _ROW * pixel
        shapes.append(label((0, top - _ABOVE * pixel), title, "name", "start"))
        shapes.append(rectangle(0, top, nearby(length), top + _HIGH * pixel, "waste"))
        for run in runs:
            near, far = ([nearby(place) for place in edge] for edge in (run.near, run.far))
            corners = [(place, top) for place in far]
            corners += [(place, top + _HIGH * pixel) for place in reversed(near)]
            shapes.append(polygon(corners, run.role))
            left, right = max(near[0], far[0]), min(near[1], far[1])
            if run.text and (right - left) / pixel > len(run.text) * _LETTER:
                middle = (left + right) / 2, top + _HIGH / 2 * pixel
                shapes.append(label(middle, run.text, "note"))
    edge = _EDGE * pixel
    bottom = ((len(sticks) - 1) * _ROW + _HIGH) * pixel
    box = (-edge, -(_ABOVE + 16) * pixel, _SCREEN * pixel + edge, bottom + edge)
    return drawing(words, box, shapes)
