"""A mitered frame from its face, with its joints."""

from itertools import pairwise
from math import cos, pi, sin

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.real import nearby

_SCREEN = 328
_LARGEST, _SMALLEST = 9, 3.5
"""The inside is drawn between so many stock widths large, so that joints and texts can be seen."""

_FEW = 6
"""Up to so many sides one of them is long enough for its dimensions."""


@lazy
def rectangle_drawing(words, inside, widths, texts, angles):
    """A rectangle: `inside` (width, height), `widths` (upright, top, bottom), exact inches.

    `texts` are (outside width, outside height, inside width, inside height), `angles` the settings
    of the top and of an upright at their first joint.
    """
    side, top, bottom = (float(nearby(width)) for width in widths)
    wide, high = (float(nearby(each)) for each in inside)
    narrow, broad = min(side, top, bottom), max(side, top, bottom)
    wide, high = _drawn_inside(wide, high, _LARGEST * narrow, max(_SMALLEST * broad, 6 * narrow))
    right, low = wide + side, high + bottom
    inner = [(0, 0), (wide, 0), (wide, high), (0, high)]
    outer = [(-side, -top), (right, -top), (right, low), (-side, low)]
    pixel = (wide + 2 * side) / (_SCREEN - 132)
    dimensions = [
        dimension(outer[0], outer[1], 26 * pixel, texts[0], "answer"),
        dimension(outer[3], outer[0], 50 * pixel, texts[1], "answer"),
        dimension(inner[3], inner[2], -bottom - 22 * pixel, texts[2], "answer"),
        dimension(inner[2], inner[1], 46 * pixel, texts[3], "answer"),
    ]
    notes = [
        label((wide / 2, low + 44 * pixel), f"top miter {angles[0]}", "note"),
        label((wide / 2, low + 64 * pixel), f"side miter {angles[1]}", "note"),
    ]
    box = (-side - 104 * pixel, -top - 40 * pixel, right + 16 * pixel, low + 76 * pixel)
    return drawing(words, box, [*_ring(inner, outer), *dimensions, *notes])


def _drawn_inside(wide, high, largest, smallest):
    """A rectangle as long in proportion, within what is drawn: not to scale where it can't be."""
    shrink = min(1, largest / max(wide, high))
    return tuple(min(max(each * shrink, smallest), max(largest, smallest)) for each in (wide, high))


@lazy
def regular_drawing(words, count, inside, width, texts):
    """A regular frame; `inside` from its middle to the inner edge of a side, exact inches.

    `texts` are (long side, short side, cuts).
    """
    across = float(nearby(width))
    reach = min(max(float(nearby(inside)), 2.5 * across), _LARGEST * across / 2)
    inner, outer = (_corners(count, far) for far in (reach, reach + across))
    half = max(abs(x) for x, _ in outer)
    top, low = min(y for _, y in outer), max(y for _, y in outer)
    pixel = 2 * half / (_SCREEN - 60)
    shapes, foot = _ring(inner, outer), 12
    if count > _FEW:
        shapes += [
            label((0, (row - 1) * 22 * pixel), text, "note") for row, text in enumerate(texts)
        ]
    else:
        foot = 46
        shapes += [
            dimension(outer[0], outer[1], 28 * pixel, texts[0], "answer"),
            dimension(inner[1], inner[0], 20 * pixel, texts[1], "answer"),
            label((0, 0), texts[2], "note"),
        ]
    room = half + 30 * pixel
    return drawing(words, (-room, top - 12 * pixel, room, low + foot * pixel), shapes)


def _corners(count, reach):
    """The corners of a regular polygon, the first two at the ends of the lowest side, which is
    level; from there around as the hands of a clock go."""
    turn = pi / count
    radius = reach / cos(turn)
    angles = [pi / 2 - turn + 2 * turn * number for number in range(count)]
    return [(radius * cos(angle), radius * sin(angle)) for angle in angles]


def _ring(inner, outer):
    """The wood piece by piece, and the joints between."""
    around = [*zip(inner, outer, strict=True), (inner[0], outer[0])]
    pieces = [polygon([one[0], one[1], next_[1], next_[0]]) for one, next_ in pairwise(around)]
    return [*pieces, *(line(heel, toe, "cut") for heel, toe in around[:-1])]
