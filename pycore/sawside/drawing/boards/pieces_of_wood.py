"""Boards, sheets and sticks one below the other, in one scale, with what is bad of them."""

from itertools import pairwise

from sawside.drawing.boards.bad_wood import crossed_out
from sawside.drawing.shapes import drawing, label, rectangle
from sawside.lengths.real import nearby

MOST_DRAWN = 5
"""Rows that are drawn; the list has all of them."""

_SCREEN = 290
"""Pixels of the longest one on a narrow phone."""

_TALL, _LEAST = 240, 40
"""Pixels that all of them take together where the wood has room for that, and the wood at least."""

_THIN, _ABOVE, _BELOW, _EDGE = 8, 14, 22, 12
_LETTER, _LINE, _BESIDE, _FEW = 9, 20, 5, 3


def pieces_of_wood(words, pieces):
    """The drawing of `pieces`, each (title, length, width or None, bad, trim): exact inches, `bad`
    the stretches (from, to, text) along the length in order, `trim` what goes off each edge. The
    text of a stretch stands on the wood beside it, where that has room and pieces are few; a
    narrow board that has any is drawn wide enough for it."""
    wood = max(_TALL - len(pieces) * (_ABOVE + _BELOW), _LEAST)
    longest = max(nearby(length) for _, length, *_ in pieces)
    pixel = max(longest / _SCREEN, sum(nearby(width or 0) for _, _, width, *_ in pieces) / wood)
    shapes, top = [], 0.0
    for name, length, width, bad, trim in pieces:
        is_told = bad and len(pieces) <= _FEW
        least = (_LINE if is_told else _THIN) * pixel
        long, high = nearby(length), max(nearby(width or 0), least)
        shapes.append(label((0, top - _ABOVE * pixel), name, "name", "start"))
        shapes.append(rectangle(0, top, long, top + high))
        for start, end, _ in bad:
            shapes += crossed_out(nearby(start), top, nearby(end), top + high)
        shapes += _texts(bad, long, top + high / 2, pixel) if is_told else []
        if trim:
            edge = nearby(trim)
            shapes.append(rectangle(edge, top + edge, long - edge, top + high - edge, "ghost"))
        top += high + (_ABOVE + _BELOW) * pixel
    edge, bottom = _EDGE * pixel, top - (_ABOVE + _BELOW) * pixel
    box = (-edge, -(_ABOVE + 16) * pixel, _SCREEN * pixel + edge, bottom + edge)
    return drawing(words, box, shapes)


def _texts(bad, long, middle, pixel):
    """Where each stretch is, on the clear wood behind it, or else before it."""
    ends = [(nearby(start), nearby(end)) for start, end, _ in bad]
    free = [after - before for (_, before), (after, _) in pairwise([(0, 0), *ends, (long, long)])]
    for number, (_, _, text) in enumerate(bad):
        start, end = ends[number]
        wide = (len(text) * _LETTER + 2 * _BESIDE) * pixel
        for place, at, align in ((number + 1, end, "start"), (number, start, "end")):
            if free[place] >= wide:
                free[place] -= wide
                by = (_BESIDE if align == "start" else -_BESIDE) * pixel
                yield label((at + by, middle), text, "note", align)
                break
