"""Sheets one below the other, in one scale, each with its panels and what is left."""

from itertools import pairwise

from sawside.drawing.shapes import dimension, drawing, label, rectangle
from sawside.lengths.real import nearby

MOST_DRAWN = 6
"""Sheets that are drawn; the list has all of them."""

_SCREEN = 270
"""Pixels of the longest sheet on a narrow phone."""

_LETTER, _LINE = 10, 20
"""Pixels of a letter, and of a line of text, in a wide font."""

_ABOVE, _BESIDE, _BELOW, _EDGE = 16, 46, 44, 12


def cut_sheets(words, sheets):
    """The drawing of `sheets`, each (title, sheet, texts of its length and width, their fields,
    parts); a part is (what has x, y, length and width in exact inches, role, (name, size)). A text
    that has no room in its part is left out."""
    pixel = nearby(max(sheet.length for _, sheet, *_ in sheets)) / _SCREEN
    shapes, top = [], 0.0
    for title, sheet, sides, fields, parts in sheets:
        length, width = nearby(sheet.length), nearby(sheet.width)
        shapes.append(label((0, top - _ABOVE * pixel), title, "name", "start"))
        shapes.append(rectangle(0, top, length, top + width, "waste"))
        for part, role, texts in parts:
            shapes += _part(part, role, texts, top, pixel)
        bottom = top + width
        corners = (0, bottom), (length, bottom), (length, top)
        for side, (start, end) in enumerate(pairwise(corners)):
            out = -16 * pixel
            shapes.append(dimension(start, end, out, sides[side], field=fields[side]))
        top = bottom + (_BELOW + _ABOVE + 14) * pixel
    edge = _EDGE * pixel
    box = (
        -edge,
        -(_ABOVE + 16) * pixel,
        (_SCREEN + _BESIDE) * pixel + edge,
        top - (_ABOVE + 14) * pixel,
    )
    return drawing(words, box, shapes)


def _part(part, role, texts, top, pixel):
    left, near = nearby(part.x), top + nearby(part.y)
    length, width = nearby(part.length), nearby(part.width)
    yield rectangle(left, near, left + length, near + width, role)
    name, size = (text if len(text) * _LETTER * pixel < length else "" for text in texts)
    lines = [text for text in (name, size) if text]
    if len(lines) * _LINE * pixel > width:
        lines = lines[-1:] if _LINE * pixel < width else []
    middle = near + width / 2
    for number, text in enumerate(lines):
        at = middle + (number - (len(lines) - 1) / 2) * _LINE * pixel
        yield label((left + length / 2, at), text, "note")
