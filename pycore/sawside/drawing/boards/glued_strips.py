"""A panel of strips: its face as it is glued up with the finished panel in it, and its end."""

from itertools import pairwise
from math import cos, pi, sin

from sawside.drawing.shapes import dimension, drawing, label, line, rectangle
from sawside.lengths.real import nearby

_SCREEN = 316
"""Pixels of the drawing on a narrow phone; the face has what the texts at its sides leave."""

_GIVEN, _ANSWER, _NOTE = 9, 10.5, 8.8
"""Pixels of a letter of a given size, of an answer, and of a note."""

_LEAST, _LINE, _OUT, _TOP, _BELOW = 120, 15, 24, 34, 30
_STEPS, _HIGH = 8, 0.8
_RINGS = (0.35, 0.75)
"""How much of half a strip's width the rings on its end reach."""

_LEFT, _APEX, _RIGHT = 0.66, 0.8, 0.94
"""Where along the panel the triangle across its strips is; their names are before it."""


def glued_strips(words, rough, finished, strips, texts, *, thick, alternate):
    """The drawing. `rough` and `finished` are (length, width) in inches, `strips` (width, names):
    the first of the names that has room is told on a strip. `texts` (length, width, first strip)
    are as told; `thick` is that of the strips."""
    (long, wide), (length, width) = (
        [nearby(each) for each in sizes] for sizes in (rough, finished)
    )
    sides = [_OUT + 6 + len(texts[2]) * _ANSWER, 10 + len(texts[1]) * _GIVEN]
    pixel = max(long, wide) / max(_SCREEN - sum(sides), _LEAST)
    shapes = _face([(nearby(each), names) for each, names in strips], long, pixel)
    left, high = (long - length) / 2, (wide - width) / 2
    right, low = left + length, high + width
    shapes.append(rectangle(left, high, right, low, "ghost"))
    shapes.append(dimension((left, high), (right, high), _OUT * pixel, texts[0], field="length"))
    beside = sides[1] / 2 * pixel
    shapes.append(dimension((right, high), (right, low), beside, texts[1], field="width"))
    strip = (0, nearby(strips[0][0])), (0, 0)
    shapes.append(dimension(*strip, _OUT / 2 * pixel, texts[2], "answer"))
    below = wide + _BELOW * pixel
    shapes.append(label((0, below - 11 * pixel), "end, larger", "note", "start"))
    widths = [nearby(each) for each, _ in strips]
    room = max(long, _LEAST * pixel)
    end, bottom = _end(widths, nearby(thick), room, below, alternate=alternate)
    shapes += end
    spare = max(_SCREEN - sum(sides) - max(long, length) / pixel, 0) / 2
    before, after = ((side + spare) * pixel for side in sides)
    box = (-before, -_TOP * pixel, max(long, length) + after, bottom + 8 * pixel)
    return drawing(words, box, shapes)


def _face(strips, long, pixel):
    """The strips beside each other, their names, and a triangle across them."""
    wide = sum(width for width, _ in strips)
    shapes, top = [rectangle(0, 0, long, wide)], 0.0
    for width, names in strips:
        if top:
            shapes.append(line((0, top), (long, top)))
        room = _LEFT * long / pixel
        name = next((each for each in names if (len(each) + 1) * _NOTE < room), "")
        if name and width > _LINE * pixel:
            shapes.append(label((_LEFT * long / 2, top + width / 2), name, "note"))
        top += width
    if len(strips) > 1:
        base = wide - strips[-1][0] / 2
        corners = [(_LEFT * long, base), (_APEX * long, strips[0][0] / 2), (_RIGHT * long, base)]
        shapes += [line(*ends, "break") for ends in pairwise([*corners, corners[0]])]
    return shapes


def _end(widths, thick, room, top, *, alternate):
    """(shapes, its lower edge) of the end of the panel, as wide as `room` at most."""
    scale = min(room / sum(widths), room / 5 / thick)
    bottom, at, shapes = top + thick * scale, 0.0, []
    for number, each in enumerate(widths):
        wide = each * scale
        shapes.append(rectangle(at, top, at + wide, bottom))
        base = top if alternate and number % 2 else bottom
        for part in _RINGS:
            shapes += _ring(at + wide / 2, part * wide / 2, base, top + bottom - base)
        at += wide
    return shapes, bottom


def _ring(center, reach, base, other):
    """An arch of a ring from one face of a strip towards the other."""
    points = [
        (
            center - reach * cos(pi * step / _STEPS),
            base + _HIGH * (other - base) * sin(pi * step / _STEPS),
        )
        for step in range(_STEPS + 1)
    ]
    return [line(*ends, "hidden") for ends in pairwise(points)]
