"""A slot with its screw or pin in it, as seen along the fastener, enlarged."""

from math import cos, pi, sin

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.real import nearby

_SCREEN = 328
_POINTS = 16


@lazy
def slot(slot_, name, texts, words):
    """One slot (`away`, `towards` and `shank` in inches); the fixed line lies at the left.

    `texts` are those of its length, of how far it runs in, and out; `words` say those two, {} and
    {}, in a sentence for somebody who doesn't see the picture.
    """
    shank, inward, outward = (
        float(nearby(each)) for each in (slot_.shank, slot_.towards, slot_.away)
    )
    half, long = shank / 2, shank + inward + outward
    pixel = long * 5 / 3 / _SCREEN
    middle = 50 * pixel + half
    start, end = half, long - half
    outline = _arc(end, middle, half, -pi / 2) + _arc(start, middle, half, pi / 2)
    at = half + inward
    round_ = _arc(at, middle, half, -pi / 2) + _arc(at, middle, half, pi / 2)
    foot = middle + half
    up = ", rounded up" if any("≈" in text for text in texts) else ""
    shapes = [
        polygon(outline, "hatch"),
        polygon(round_),
        line((at, middle - half - 10 * pixel), (at, foot + 10 * pixel), "center"),
        dimension((0, middle), (long, middle), half + 24 * pixel, texts[0], "answer"),
        label((long / 2, foot + 26 * pixel), f"{name}{up}", "name"),
        label((long / 2, foot + 50 * pixel), f"moves in {texts[1]}, out {texts[2]}", "note"),
    ]
    said = f"{name}{up}: a slot {texts[0]} long. {words.format(*texts[1:])}"
    return drawing(said, (-long / 3, 0, long * 4 / 3, foot + 68 * pixel), shapes)


def _arc(x, y, radius, start):
    """Half a circle, clockwise as seen."""
    steps = (start + pi * step / _POINTS for step in range(_POINTS + 1))
    return [(x + radius * cos(turn), y + radius * sin(turn)) for turn in steps]
