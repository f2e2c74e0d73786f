"""Rise over run as a triangle, and a bar on two pins with its spacer."""

from math import cos, radians, sin

from sawside.drawing.shapes import arc, dimension, drawing, label, line, polygon

_WIDE = 10.0
_FLATTEST, _STEEPEST = 6, 64


def rise_over_run(words, degrees, run, rise, angle):
    """The triangle to draw on a board: `degrees` as a float below 90, the others are texts.

    A very flat or steep one is drawn less so, that its texts find room.
    """
    drawn = min(max(degrees, _FLATTEST), _STEEPEST)
    long, high = _WIDE * cos(radians(drawn)), _WIDE * sin(radians(drawn))
    pixel = long / (328 - 182)
    shapes = [
        polygon([(0, 0), (long, 0), (long, -high)], "space"),
        line((0, 0), (long, -high), "cut"),
        line((0, 0), (long, 0), "edge"),
        line((long, 0), (long, -high), "edge"),
        dimension((long, 0), (0, 0), 24 * pixel, f"run {run}", "given"),
        dimension((long, -high), (long, 0), 80 * pixel, f"rise {rise}", "answer"),
        label((0, -high - 16 * pixel), f"angle {angle}", "note", "start"),
        arc((0, 0), min(long, 3) * 0.8, -drawn, drawn, ""),
    ]
    box = (-26 * pixel, -high - 34 * pixel, long + 156 * pixel, 44 * pixel)
    return drawing(words, box, shapes)
