"""A loaded shelf from the front, twice: to scale, and with its sag drawn larger."""

from itertools import pairwise

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon, rectangle
from sawside.lengths.real import nearby

_SCREEN = 328
_STEPS = 24
_TIMES = (1, 2, 5, 10, 20, 50, 100, 200, 500, 1000)


@lazy
def sagging_shelf(show, shelf, captions):
    """The drawing of a `wood.shelf.Shelf`; `captions` tell its sag, a line each.

    What is drawn of a shelf with strips is its front edge, and the back edge as a line behind it.
    """
    over, span = (float(nearby(each)) for each in (shelf.overhang, shelf.span))
    edges = shelf.plate.edges if shelf.plate else None
    front, back = (edges.front, edges.back) if edges else (shelf.sag, shelf.sag)
    long = span + 2 * over
    pixel = long * 9 / 8 / _SCREEN
    curve, behind = (_curve(shelf, float(nearby(sag))) for sag in (front, back))
    deep, rise, times = _enlarged([drop for _, drop in (*curve, *behind)], 44 * pixel)
    room = max(float(nearby(_height(shelf))), 1 * pixel)
    first, second = 30 * pixel, 116 * pixel + room + rise * times
    ends = (over, first + room), (over + span, first + room)
    shapes = [
        label((0, first - 18 * pixel), "To scale", "note", "start"),
        *_drawn(curve, first, 1, room, shelf, pixel),
        dimension(*ends, -32 * pixel, show.brief(shelf.span), "given"),
        label((0, second - rise * times - 18 * pixel), _larger(times), "note", "start"),
        *_drawn(curve, second, times, room, shelf, pixel),
    ]
    if edges:
        behind = [(x, second + drop * times) for x, drop in behind]
        shapes += [line(*step, "edge") for step in pairwise(behind)]
    shapes.append(line((over, second), (over + span, second), "hidden"))
    below = second + deep * times + room
    for caption in captions:
        below += 18 * pixel
        shapes.append(label((long / 2, below), caption, "name"))
    margin = long / 16
    box = (-margin, 0, long + margin, below + 14 * pixel)
    return drawing(_words(show, shelf, times, captions), box, shapes)


def _words(show, shelf, times, captions):
    return (
        f"The shelf from the front, {show.brief(shelf.span)} between its supports, first to scale, "
        f"then with its sag {f'exaggerated {times}×' if times > 1 else 'to scale too'}: "
        f"{'; '.join(captions)}."
    )


def _enlarged(drops, room):
    """(deepest drop, highest rise, how many times as large both are drawn to fit in `room`)."""
    deep, rise = max(drops), -min(drops)
    return deep, rise, max(size for size in _TIMES if size == 1 or (deep + rise) * size <= room)


def _larger(times):
    return f"Sag exaggerated {times}×" if times > 1 else "Sag to scale"


def _height(shelf):
    """What is seen from the front: the strip where one stands on the front edge."""
    strip = shelf.strip
    if strip is None or strip.edges == "back":
        return shelf.thickness
    if strip.under:
        return shelf.thickness + nearby(strip.height)
    return max(shelf.thickness, nearby(strip.height))


def _curve(shelf, deep):
    """Places along the shelf and their drops, the largest of them `deep`: a beam's shape."""
    long = shelf.span + 2 * shelf.overhang
    places = [long * step / _STEPS for step in range(_STEPS + 1)]
    drops = [float(shelf.drop_at((along - shelf.overhang) / shelf.span)) for along in places]
    scale = deep / max(drops)
    return [(float(along), drop * scale) for along, drop in zip(places, drops, strict=True)]


def _drawn(curve, y, times, high, shelf, pixel):
    """The shelf as a bent outline on its two supports, or held between them."""
    over, wide = float(shelf.overhang), 10 * pixel
    long = curve[-1][0]
    if shelf.supports == "resting":
        curve = [(-wide, 0), *curve, (long + wide, 0)]
    top = [(x, y + drop * times) for x, drop in curve]
    bottom = [(x, place + high) for x, place in top]
    half = wide / 2 if over else 0
    rise = y - wide if shelf.supports == "fixed" else y + high
    foot = y + high + 14 * pixel
    shapes = [
        rectangle(over - wide + half, rise, over + half, foot, "hatch"),
        rectangle(long - over - half, rise, long - over + wide - half, foot, "hatch"),
        polygon([*top, *reversed(bottom)]),
    ]
    if shelf.strip is not None and shelf.strip.under and shelf.strip.edges != "back":
        joint = [(x, place + float(shelf.thickness)) for x, place in top]
        shapes += [line(*ends, "edge") for ends in pairwise(joint)]
    return shapes
