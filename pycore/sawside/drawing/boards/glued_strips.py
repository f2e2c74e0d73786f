"""A panel of strips: its face as it is glued up with the finished panel in it, and its end."""

from itertools import pairwise
from math import cos, pi, sin

from sawside.drawing.shapes import dimension, drawing, label, line, rectangle
from sawside.lengths.real import nearby

_SCREEN = 290
_STEPS, _HIGH = 8, 0.8
_RINGS = (0.35, 0.75)
"""How much of half a strip's width the rings on its end reach."""


def glued_strips(words, rough, finished, widths, texts, *, thick, alternate):
    """The drawing. `rough` and `finished` are (length, width) in inches, `widths` those of the
    strips, `texts` (length, width, first strip) as told; `thick` is that of the strips."""
    (long, wide), (length, width) = (
        [nearby(each) for each in sizes] for sizes in (rough, finished)
    )
    pixel = max(long, wide) / _SCREEN
    shapes, top = [rectangle(0, 0, long, wide)], 0.0
    for strip in widths[:-1]:
        top += nearby(strip)
        shapes.append(line((0, top), (long, top)))
    left, high = (long - length) / 2, (wide - width) / 2
    shapes.append(rectangle(left, high, left + length, high + width, "ghost"))
    shapes.append(
        dimension((left, high), (left + length, high), 26 * pixel, texts[0], "given", "length")
    )
    shapes.append(
        dimension(
            (left + length, high),
            (left + length, high + width),
            26 * pixel,
            texts[1],
            "given",
            "width",
        )
    )
    first = nearby(widths[0])
    shapes.append(dimension((0, first), (0, 0), 26 * pixel, texts[2], "answer"))
    below = wide + 44 * pixel
    shapes.append(label((0, below - 12 * pixel), "end, larger", "note", "start"))
    end, bottom = _end(widths, nearby(thick), long, below, alternate=alternate)
    shapes += end
    side = 60 * pixel
    box = (-side, -52 * pixel, max(long, length) + side, bottom + 10 * pixel)
    return drawing(words, box, shapes)


def _end(widths, thick, long, top, *, alternate):
    """(shapes, its lower edge) of the end of the panel, as wide as the face is long at most."""
    scale = min(long / sum(nearby(each) for each in widths), long / 5 / thick)
    bottom, at, shapes = top + thick * scale, 0.0, []
    for number, each in enumerate(widths):
        wide = nearby(each) * scale
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
