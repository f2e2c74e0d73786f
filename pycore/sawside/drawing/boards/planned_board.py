"""A board with the pieces that come out of it, each with its mark, and named where there is room,
what is bad of it, and what is left."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.drawing.shapes import dimension, drawing, label, line, rectangle
from sawside.lengths.real import nearby

_SCREEN = 290
"""Pixels of a board on a narrow phone."""

_LETTER, _LINE, _STICK, _EDGE, _OUT = 9, 15, 30, 14, 18

_HIGHEST = 110
"""Pixels: so high a narrow board is drawn at most, for the marks of its strips."""


@dataclass(frozen=True, slots=True)
class Drawn:
    """A rectangle of a board: its corner and sides in exact inches (`width` None: all of it), its
    role, its mark and texts, and the key of the part that it is of."""

    x: Fraction
    y: Fraction
    length: Fraction
    width: Fraction | None
    role: str
    mark: str = ""
    texts: tuple[str, ...] = ()
    part: str | None = None


def planned_board(words, length, width, sizes, rectangles, bad=()):
    """The drawing of a board of this `length` and `width` (None: a stick), told by `sizes`, with
    its `Drawn` rectangles and the stretches (from, to) that are `bad`. The mark of a rectangle is
    always told, of its texts those that it has room for."""
    long = nearby(length)
    pixel = long / _SCREEN
    high = _high(width, rectangles, pixel)
    scale = 1 if width is None else high / nearby(width)
    if width is not None and scale > 1:
        words += " Drawn wider than it is."
    shapes = [rectangle(0, 0, long, high, "waste")]
    for start, end in bad:
        shapes += _bad(max(nearby(start), 0), min(nearby(end), long), high)
    for each in rectangles:
        shapes += _rectangle(each, high, scale, pixel)
    shapes.append(dimension((0, 0), (long, 0), _OUT * pixel, sizes[0]))
    if width is not None:
        shapes.append(dimension((0, high), (0, 0), _OUT * pixel, sizes[1]))
    edge = (_EDGE + _OUT) * pixel
    return drawing(words, (-edge, -edge, long + _EDGE * pixel, high + _EDGE * pixel), shapes)


def _high(width, rectangles, pixel):
    """How high a board is drawn: in scale, or higher for what is written on its strips."""
    if width is None:
        return _STICK * pixel
    narrowest = min((each.width for each in rectangles if each.mark and each.width), default=width)
    wanted = min(nearby(width / narrowest) * _LINE, _HIGHEST)
    return max(nearby(width), max(wanted, _STICK) * pixel)


def _bad(left, right, high):
    """A stretch that no piece may have: crossed out."""
    return [
        rectangle(left, 0, right, high, "ghost"),
        line((left, 0), (right, high), "hidden"),
        line((left, high), (right, 0), "hidden"),
    ]


def _rectangle(each, high, scale, pixel):
    left, wide = nearby(each.x), nearby(each.length)
    top = nearby(each.y) * scale if each.width is not None else 0
    tall = nearby(each.width) * scale if each.width is not None else high
    shapes = [rectangle(left, top, left + wide, top + tall, each.role, each.part)]
    room = max(int(tall / pixel) // _LINE, 0)
    texts = _texts(each, wide / pixel)[: max(room, 1 if each.mark else 0)]
    first = top + tall / 2 - (len(texts) - 1) * _LINE * pixel / 2
    for number, text in enumerate(texts):
        at = left + wide / 2, first + number * _LINE * pixel
        shapes.append(label(at, text, "note"))
    return shapes


def _texts(each, wide):
    """The mark, with the name where that has room beside it, and what else has room."""
    name, *more = each.texts or ("",)
    lines = [text for text in more if len(text) * _LETTER < wide]
    named = f"{each.mark} {name}".strip()
    if len(named) * _LETTER < wide:
        return [named, *lines]
    return [each.mark, *lines] if each.mark else lines
