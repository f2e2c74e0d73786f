"""A case from the front with the studs behind it and the screws that go into them.

In scale, but for the height of a tall case: it is shortened, and a note says so."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, polygon, rectangle
from sawside.lengths.real import nearby
from sawside.lengths.words import counted

_SCREEN = 230
"""Pixels of the case's width on a narrow phone."""
_TALL = 3 / 5
"""Of its width: a taller case is drawn no higher, so that its screws can be told apart."""
_DIMENSIONED = 4
"""Screws that have a dimension each; more of them have their number alone."""
_STRIP = 14
"""Pixels that a strip is high."""


@lazy
def studs_behind(show, given, studs, bays):
    """`given` holds width, height, side, stud and strips in inches; `studs` have their center and
    screw from the case's left, `bays` their left and right faces."""
    wide, pixel = float(nearby(given.width)), float(nearby(given.width)) / _SCREEN
    ups = [float(nearby(each)) for each in given.strips or ()]
    tall = float(nearby(given.height)) if given.height else max([*ups, 0]) + _TALL * wide
    high = min(tall, _TALL * wide)
    up = [each * high / tall for each in ups]
    strips = [high - each for each in up] or [_STRIP * pixel]
    screws = [(at, stud.screw) for at, stud in enumerate((s for s in studs if s.screw), 1)]
    shapes = [
        rectangle(0, 0, wide, high, "space"),
        *(_strip(y, given, bays, pixel) for y in strips),
        *_uprights(given, bays, wide, high),
        *(_behind(given, stud, high, pixel) for stud in studs),
        *(_screw(float(place.mark), y, 4.5 * pixel) for _, place in screws for y in strips),
        *_places(show, screws, pixel),
        dimension((wide, high), (0, high), 44 * pixel, show.brief(given.width), field="width"),
    ]
    if given.height:
        text = show.brief(given.height)
        shapes.append(dimension((0, high), (0, 0), 34 * pixel, text, field="height"))
    if high < tall:
        shapes.append(label((wide / 2, high + 92 * pixel), "height not to scale", "note"))
    rows = 1 if len(screws) > _DIMENSIONED else len(screws)
    box = (-72 * pixel, -(54 + 26 * rows) * pixel, wide + 36 * pixel, high + 108 * pixel)
    return drawing(_words(show, given, studs, screws), box, shapes)


def _strip(y, given, bays, pixel):
    half = _STRIP * pixel / 2
    left, right = bays[0].left, bays[-1].right
    return rectangle(float(nearby(left)), y - half, float(nearby(right)), y + half)


def _uprights(given, bays, wide, high):
    """The sides and the dividers."""
    faces = [0.0]
    for bay in bays:
        faces += [float(nearby(bay.left)), float(nearby(bay.right))]
    faces.append(wide)
    for left, right in zip(faces[::2], faces[1::2], strict=True):
        yield rectangle(left, 0, right, high)


def _behind(given, stud, high, pixel):
    """A stud, dashed, past the case at both ends."""
    center, half = float(nearby(stud.center)), float(nearby(given.stud)) / 2
    past = 20 * pixel
    return rectangle(center - half, -past, center + half, high + past, "ghost")


def _screw(x, y, dot):
    return polygon([(x - dot, y), (x, y - dot), (x + dot, y), (x, y + dot)], "hatch")


def _places(show, screws, pixel):
    """The place of each screw from the case's left, above it; the first one nearest to it."""
    if len(screws) > _DIMENSIONED:
        for at, place in screws:
            yield label((float(place.mark), -34 * pixel), str(at), "name")
        return
    for row, (at, place) in enumerate(screws):
        text = f"{at}: {show.brief(place)}"
        offset = (32 + 26 * row) * pixel
        yield dimension((0, 0), (float(place.mark), 0), offset, text, "answer")


def _words(show, given, studs, screws):
    high = f" and {show.brief(given.height)} high" if given.height else ""
    size = f"A case {show.brief(given.width)} wide{high}"
    behind = counted(len(studs), "stud")
    if not screws:
        return f"{size} from the front, {behind} behind it, none of which takes a screw."
    places = ", ".join(f"screw {at} {show.brief(place)}" for at, place in screws)
    return f"{size} from the front, {behind} behind it. From its left side: {places}."
