"""A board from its face with slots in its upper edge, in scale along the joint."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, rectangle
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import nearby
from sawside.lengths.words import counted

_WIDE = 260
_LEAST_DEEP, _HIGH = 14, 64
"""Pixels of a phone: a slot is drawn so deep at the least, the board so high."""


@lazy
def slots_drawing(show, given, slots):
    """The drawing of the `Slots` of a joint; `given` says what was filled in."""
    long, along, deep = (float(nearby(each)) for each in (given.long, given.along, slots.depth))
    pixel = long / _WIDE
    deep, high = min(max(deep, _LEAST_DEEP * pixel), 40 * pixel), _HIGH * pixel
    shapes = [rectangle(0, 0, long, high)]
    for center in slots.centers:
        x = float(nearby(center))
        shapes.append(rectangle(x - along / 2, 0, x + along / 2, deep, "hatch"))
    first = float(nearby(slots.centers[0]))
    is_inset = slots.apart is not None
    shapes.append(
        dimension(
            (0, 0),
            (first, 0),
            24 * pixel,
            show.brief(slots.centers[0]),
            "given" if is_inset else "answer",
            "inset" if is_inset else None,
        )
    )
    if slots.apart is not None:
        second = float(nearby(slots.centers[1]))
        apart = show.brief(slots.apart)
        shapes.append(dimension((first, 0), (second, 0), 24 * pixel, apart, "answer"))
    whole = show.brief(given.long)
    shapes.append(dimension((long, high), (0, high), 24 * pixel, whole, field="long"))
    depth = show.brief(on_fine_marks(slots.depth, show, "reach"))
    shapes.append(label((long / 2, high * 3 / 4), f"slots {depth} deep", "note"))
    words = f"The edge of a board with {counted(len(slots.centers), 'slot')} {depth} deep."
    box = (-20 * pixel, -50 * pixel, long + 20 * pixel, high + 50 * pixel)
    return drawing(words, box, shapes)
