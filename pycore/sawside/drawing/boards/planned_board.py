"""A board in scale with the pieces that come out of it, each named, and what is left."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.drawing.shapes import dimension, drawing, label, rectangle
from sawside.lengths.real import nearby

_SCREEN = 290
"""Pixels of a board on a narrow phone."""

_LETTER, _LINE, _STICK, _EDGE, _OUT = 9, 15, 30, 14, 18


@dataclass(frozen=True, slots=True)
class Drawn:
    """A rectangle of a board: its corner and sides in exact inches (`width` None: all of it), its
    role, its text, and the key of the part that it is of."""

    x: Fraction
    y: Fraction
    length: Fraction
    width: Fraction | None
    role: str
    texts: tuple[str, ...] = ()
    part: str | None = None


def planned_board(words, length, width, sizes, rectangles):
    """The drawing of a board of this `length` and `width` (None: a stick), told by `sizes`, with
    its `Drawn` rectangles. Of the texts of one those are told that it has room for."""
    long = nearby(length)
    pixel = long / _SCREEN
    high = _STICK * pixel if width is None else max(nearby(width), _STICK * pixel)
    scale = 1 if width is None else high / nearby(width)
    shapes = [rectangle(0, 0, long, high, "waste")]
    for each in rectangles:
        shapes += _rectangle(each, high, scale, pixel)
    shapes.append(dimension((0, 0), (long, 0), _OUT * pixel, sizes[0]))
    if width is not None:
        shapes.append(dimension((0, high), (0, 0), _OUT * pixel, sizes[1]))
    edge = (_EDGE + _OUT) * pixel
    return drawing(words, (-edge, -edge, long + _EDGE * pixel, high + _EDGE * pixel), shapes)


def _rectangle(each, high, scale, pixel):
    left, wide = nearby(each.x), nearby(each.length)
    top = nearby(each.y) * scale if each.width is not None else 0
    tall = nearby(each.width) * scale if each.width is not None else high
    shapes = [rectangle(left, top, left + wide, top + tall, each.role, each.part)]
    room = max(int(tall / pixel) // _LINE, 0)
    texts = [text for text in each.texts if len(text) * _LETTER < wide / pixel][:room]
    first = top + tall / 2 - (len(texts) - 1) * _LINE * pixel / 2
    for number, text in enumerate(texts):
        at = left + wide / 2, first + number * _LINE * pixel
        shapes.append(label(at, text, "note"))
    return shapes
