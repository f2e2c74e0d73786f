"""A door from above, closed and open against what it touches."""

from math import cos, radians, sin

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import arc, circle, dimension, drawing, label, polygon, rectangle
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_text

_WIDE = 200
"""So wide it is drawn at the most, in pixels of a phone."""


@lazy
def swing_drawing(show, given, swing, words):
    """The drawing of a `Swing`: the case is above, the room below; its hinge edge is at x = 0."""
    wide, pin, deep = (float(each) for each in (given.width, swing.pin, swing.deep))
    degrees = float(nearby(swing.opens))
    wall = None if given.wall is None else float(given.wall)
    shapes = [polygon(each, "ghost") for each in _door(given)]
    opened = [[_turned(place, pin, deep, degrees) for place in each] for each in _door(given)]
    places = [place for each in opened for place in each]
    left = min(x for x, _ in places) if wall is None else min(-wall, min(x for x, _ in places))
    low = max(y for _, y in places)
    pixel = max((wide - left) / _WIDE, low / 150)
    shapes += [rectangle(0, -14 * pixel, wide, -4 * pixel, "space")]
    if wall is not None:
        shapes.append(rectangle(-wall - 12 * pixel, -14 * pixel, -wall, low + 8 * pixel, "hatch"))
        text = show.brief(given.wall)
        shapes.append(dimension((-wall, 0), (0, 0), 26 * pixel, text, "given", "wall"))
    shapes += [polygon(each) for each in opened]
    shapes.append(circle((pin, deep), 2.5 * pixel, "hole"))
    shapes.append(
        dimension((0, 0), (wide, 0), 48 * pixel, show.brief(given.width), "given", "width")
    )
    shapes.append(arc((pin, deep), wide * 0.45, 0, degrees, angle_text(swing.opens)))
    shapes.append(label((wide / 2, low + 30 * pixel), _note(given, show), "note"))
    start = min(left, -(wall or 0)) - 40 * pixel
    box = (start, -84 * pixel, max(wide, pin) + 40 * pixel, low + 44 * pixel)
    return drawing(words, box, shapes)


def _door(given):
    """The outlines of the closed door: its leaf, and its handle if it has one."""
    wide, thick = float(given.width), float(given.thickness)
    yield [(0.0, 0.0), (wide, 0.0), (wide, thick), (0.0, thick)]
    if given.handle and given.handle_wide:
        right, out = wide - float(given.handle_from), thick + float(given.handle)
        left = right - float(given.handle_wide)
        yield [(left, thick), (right, thick), (right, out), (left, out)]


def _turned(place, pin, deep, degrees):
    """A place of the closed door, after it has opened by so many degrees."""
    past, before, turn = place[0] - pin, place[1] - deep, radians(degrees)
    return (
        pin + past * cos(turn) - before * sin(turn),
        deep + past * sin(turn) + before * cos(turn),
    )


def _note(given, show):
    handle = f", handle {show.brief(given.handle)} out" if given.handle else ""
    return f"door {show.brief(given.thickness)} thick{handle}"
