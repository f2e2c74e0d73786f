"""A piece that lies along a tape, away from its hook: both ends close up, a break between them."""

from fractions import Fraction
from itertools import pairwise

from sawside.drawing.shapes import dimension, drawing, label, line, rectangle
from sawside.drawing.tape.ruler import WIDTH, Ruler
from sawside.lengths.real import nearby

_WINDOW = 130
"""Pixels of tape at each end of a long piece."""

_HIGH = 36
_MARGIN = Fraction(5, 4)


def along_tape(words, low, high, text, show, *, given=False):
    """The drawing of a piece from the mark `low` to the mark `high` of a tape, exact inches.

    `text` is that of its length; `given` says that it was known, and that the mark at its end
    is the answer.
    """
    metric = show.settings.display == "mm"
    seen = 1 if metric else 2  # inches of tape in each window
    first, last = nearby(low), nearby(high)
    if last - first <= seen:
        whole = Ruler(first - _MARGIN, last + _MARGIN, 0, WIDTH, metric=metric)
        rulers, ends, aligned = [whole], (whole.at(low), whole.at(high)), ("end", "start")
        pieces = [ends]
    else:
        before, after = seen * Fraction(1, 4), seen * Fraction(3, 4)
        rulers = [
            Ruler(first - before, first + after, 0, _WINDOW, metric=metric),
            Ruler(last - after, last + before, WIDTH - _WINDOW, WIDTH, metric=metric),
        ]
        ends, aligned = (rulers[0].at(low), rulers[1].at(high)), ("start", "end")
        pieces = [(ends[0], _WINDOW + 16), (WIDTH - _WINDOW - 16, ends[1])]
    shapes = [shape for ruler in rulers for shape in ruler.shapes(0)]
    for left, right in pieces:
        shapes.append(rectangle(left, -_HIGH, right, 0))
    if len(pieces) > 1:
        shapes += [shape for x in (pieces[0][1], pieces[1][0]) for shape in _broken(x)]
    for x, place, align, answer in zip(ends, (low, high), aligned, (False, given), strict=True):
        for top, bottom in ((-_HIGH, 30), (54, 64)):  # past the numbers of the tape
            shapes.append(line((x, top), (x, bottom), "center"))
        shapes.append(label((x, 74), show.brief(place), "name" if answer else "note", align))
    top = [(x, -_HIGH) for x in ends]
    known = ("given", "length") if given else ("answer",)
    shapes.append(dimension(*top, 22, text, *known))
    return drawing(words, (0, -_HIGH - 40, WIDTH, 90), shapes)


def _broken(x):
    """A conventional break across the piece."""
    points = [(x, -_HIGH - 4), (x - 5, -_HIGH * 2 / 3), (x + 5, -_HIGH / 3), (x, 4)]
    return [line(*ends, "break") for ends in pairwise(points)]
