"""Doors in their opening from the front, in scale: their members, and the sizes of both."""

from itertools import pairwise

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, rectangle
from sawside.lengths.real import nearby

_WIDE, _HIGH = 180, 110
"""So large they are drawn at the most, in pixels of a phone."""


@lazy
def doors_drawing(show, given, doors, frame):
    """The drawing of `Doors` in their opening; `frame` is that of each, or None of a slab.

    x goes from the opening's left edge, y down from its top. Doors keep their places to a hair:
    what is spare is between them, or to the right.
    """
    across, up = doors.across, doors.up
    wide, high = (float(nearby(each.opening)) for each in (across, up))
    door = float(across.cut), float(up.cut)
    pixel = max(wide / _WIDE, high / _HIGH)
    lefts = _lefts(across)
    low = high - float(up.start)
    shapes = [rectangle(0, 0, wide, high, "space")]
    for left in lefts:
        shapes += _door(frame, left, low, door)
    if across.start < 0:
        edges = ((0, 0), (wide, 0), (wide, high), (0, high), (0, 0))
        shapes += [line(a, b, "hidden") for a, b in pairwise(edges)]
    shapes += _sizes(show, given, doors, (wide, high), (lefts[0], low, *door), pixel)
    below = max(high, low) + 54 * pixel
    shapes.append(label((wide / 2, below), _note(show, frame, doors), "note"))
    side = max(-lefts[0], 0)
    box = (-66 * pixel - side, -36 * pixel - side, wide + 84 * pixel + side, below + 10 * pixel)
    return drawing(_words(show, doors), box, shapes)


def _lefts(span):
    """The left edges of the doors, what is spare shared between them."""
    many = span.count - 1
    more = float(nearby(span.spare)) / many if many else 0.0
    step = float(span.cut) + float(span.between) + more
    return [float(span.start) + number * step for number in range(span.count)]


def _door(frame, left, low, door):
    """One door: its members over a panel, or a slab."""
    wide, high = door
    if frame is None:
        yield rectangle(left, low - high, left + wide, low)
        return
    yield rectangle(left, low - high, left + wide, low, "hatch")
    for member in frame.members:
        length, width = (float(each) for each in (member.shoulder, member.width))
        across, up = (width, length) if member.upright else (length, width)
        for x, y in member.places:
            at, foot = left + float(x), low - float(y)
            yield rectangle(at, foot - up, at + across, foot)


def _sizes(show, given, doors, opening, door, pixel):
    """The opening's size above and at the left, a door's below and at the right."""
    (wide, high), (left, low, across, up) = opening, door
    back = given.known == "door"
    first, second = ("answer", "given") if back else ("given", "answer")
    fields = (None, None, "width", "height") if back else ("width", "height", None, None)
    top, side = min(low - up, 0), min(left, 0)
    outs = max(wide, wide - left)
    texts = [
        *(show.brief(span.needs or span.opening) for span in (doors.across, doors.up)),
        *(show.brief(span.size) for span in (doors.across, doors.up)),
    ]
    return [
        dimension((0, 0), (wide, 0), 24 * pixel - top, texts[0], first, fields[0]),
        dimension((0, high), (0, 0), 34 * pixel - side, texts[1], first, fields[1]),
        dimension((left + across, low), (left, low), 26 * pixel, texts[2], second, fields[2]),
        dimension((outs, low - up), (outs, low), 34 * pixel, texts[3], second, fields[3]),
    ]


def _note(show, frame, doors):
    if frame is None:
        return "slab door" if doors.count == 1 else "slab doors"
    widths = (frame.stile, frame.top, frame.bottom)
    stile, top, bottom = (show.brief(each, "go in") for each in widths)
    if stile == top == bottom:
        return f"stiles and rails {stile}"
    rails = top if top == bottom else f"{top} and {bottom}"
    return f"stiles {stile}; rails {rails}"


def _words(show, doors):
    many = "A door" if doors.count == 1 else f"{doors.count} doors, each"
    return (
        f"{many} {show.brief(doors.across.size)} wide and {show.brief(doors.up.size)} high, in an "
        f"opening {show.brief(doors.across.needs or doors.across.opening)} wide and "
        f"{show.brief(doors.up.needs or doors.up.opening)} high."
    )
