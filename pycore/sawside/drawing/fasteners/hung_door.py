"""A door from the inside, with its hinges and the shelves behind it, in scale."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, rectangle
from sawside.lengths.real import nearby

_HIGH, _WIDE = 230, 150
"""So large the door is drawn at the most, in pixels of a phone."""


@lazy
def hung_door(show, given, centers, words):
    """The drawing of a door with hinges at `centers` (inches from its bottom edge)."""
    high, wide = (float(nearby(each)) for each in (given.height, given.width))
    pixel = max(high / _HIGH, wide / _WIDE)
    wide = max(wide, 40 * pixel)
    half, leaf = float(nearby(given.hinge)) / 2, 8 * pixel
    shapes = [rectangle(0, -high, wide, 0)]
    for each in given.shelves or ():
        if each + given.shelf <= given.height:
            bottom = -float(nearby(each))
            top = bottom - float(nearby(given.shelf))
            shapes += [line((0, y), (wide, y), "hidden") for y in (bottom, top)]
    for center in centers:
        y = -float(nearby(center))
        shapes.append(rectangle(-leaf, y - half, leaf, y + half, "hatch"))
        shapes.append(label((-14 * pixel, y), show.brief(center), "note", "end"))
    tall = show.brief(given.height)
    shapes.append(dimension((wide, 0), (wide, -high), -26 * pixel, tall, field="height"))
    across = show.brief(given.width)
    shapes.append(dimension((wide, 0), (0, 0), 26 * pixel, across, field="width"))
    box = (-90 * pixel, -high - 20 * pixel, wide + 70 * pixel, 60 * pixel)
    return drawing(words, box, shapes)
