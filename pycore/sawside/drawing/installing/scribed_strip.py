"""A strip beside a case, scribed to a wall, from the front: its height in scale, its width and the
wall exaggerated, and a note says so."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import nearby

_HIGH = 100
_WIDE = 110
"""Pixels of the strip as it is ripped."""
_CASE = 60
_NAMED = 5
"""Heights at which the width is written; of more of them the narrowest and widest are."""


@lazy
def scribed_strip(show, given, strip):
    """`strip` has its gaps as (height, gap), and what is `left` of it at each, exact inches."""
    first, last = (float(nearby(strip.gaps[end][0])) for end in (0, -1))
    scale = _HIGH / max(last - first, 1e-6)
    times = _WIDE / float(strip.wide.mark)
    points = [
        (times * float(strip.left(gap)), -(float(nearby(height)) - first) * scale)
        for height, gap in strip.gaps
    ]
    lap = times * float(nearby(strip.lap))
    back = _WIDE + 26
    shapes = [
        polygon([(lap - _CASE, 0), (lap, 0), (lap, -_HIGH), (lap - _CASE, -_HIGH)]),
        polygon([*points, (back, -_HIGH), (back, 0)], "hatch"),
        polygon([(0, 0), *points, (0, -_HIGH)]),
        line((lap, 0), (lap, -_HIGH), "hidden"),
        label((lap - _CASE / 2, 22), "case", "note"),
        label((back, 22), "wall", "note"),
        *_widths(show, strip, points),
        label((_WIDE / 2, -_HIGH - 44), f"rip {show.brief(strip.wide)}", "name"),
        label((_WIDE / 2, 46), "widths exaggerated", "note"),
    ]
    box = (lap - _CASE - 24, -_HIGH - 62, back + 60, 62)
    return drawing(_words(show, strip), box, shapes)


def _widths(show, strip, points):
    """The width at each height, along the strip from its inner edge to the wall."""
    told = list(zip(strip.gaps, points, strict=True))
    if len(told) > _NAMED:
        told = [pick(told, key=lambda each: each[0][1]) for pick in (min, max)]
    for (_, gap), (x, y) in told:
        if x:
            text = show.bare(strip.left(gap), "go in")
            yield dimension((0, y), (x, y), 0, text, "answer")


def _words(show, strip):
    widths = ", ".join(
        f"{show.brief(show.rounded(strip.left(gap), 'go in'))} wide {show.brief(height)} up"
        for height, gap in strip.gaps
    )
    compass = show.brief(on_fine_marks(strip.compass, show, "reach"))
    return f"A strip beside a case, scribed to the wall with a compass set to {compass}: {widths}."
