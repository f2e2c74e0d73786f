"""A board of a drawer on the bench, with its length and width."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, rectangle
from sawside.lengths.marks import exact_of
from sawside.lengths.real import nearby

_SCREEN = 300


@lazy
def part_drawing(show, name, length, width):
    """The drawing of a part, in scale; its sizes may be rounded already."""
    long, wide = (float(nearby(exact_of(each))) for each in (length, width))
    pixel = max(long, wide) * 6 / 5 / _SCREEN
    texts = show.brief(length), show.brief(width)
    shapes = [
        rectangle(0, 0, long, wide),
        dimension((0, 0), (long, 0), 24 * pixel, texts[0], "answer"),
        dimension((0, wide), (0, 0), 24 * pixel, texts[1], "answer"),
    ]
    box = (-60 * pixel, -44 * pixel, long + 10 * pixel, wide + 12 * pixel)
    return drawing(f"{name}, {texts[0]} long and {texts[1]} wide.", box, shapes)
