"""A frame that is square, with both of its diagonals."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.fine import fine_text
from sawside.lengths.real import nearby

_SCREEN = 220
"""Pixels of the longer side on a narrow phone."""


@lazy
def square_frame(show, width, height, diagonal):
    """The drawing of a frame, exact inches, its diagonals the answer."""
    wide, high = nearby(width), nearby(height)
    pixel = max(wide, high) / _SCREEN
    wide, high = max(wide, 40 * pixel), max(high, 40 * pixel)
    corners = [(0, 0), (wide, 0), (wide, high), (0, high)]
    shapes = [
        polygon(corners),
        line(corners[3], corners[1], "center"),
        line(corners[0], corners[2], "center"),
        label((wide / 2, high / 2), show.brief(diagonal), "name"),
        dimension(
            (wide, high), (0, high), 30 * pixel, fine_text(width, show), "given", field="width"
        ),
        dimension((0, high), (0, 0), 30 * pixel, fine_text(height, show), "given", field="height"),
    ]
    words = (
        f"A frame {fine_text(width, show)} wide and {fine_text(height, show)} high; both "
        f"diagonals measure {show.brief(diagonal)} when it is square."
    )
    side = max(44 * pixel, (high - wide) / 2 + 10 * pixel)
    return drawing(words, (-side - 30 * pixel, -14 * pixel, wide + side, high + 50 * pixel), shapes)
