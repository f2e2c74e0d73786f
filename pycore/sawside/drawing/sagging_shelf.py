"""A loaded shelf from the front, twice: to scale, and with its sag drawn larger."""

from fractions import Fraction
from itertools import pairwise

from sawside.drawing.later import later
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.real import nearby

_SCREEN = 328
_STEPS = 24
_TIMES = (1, 2, 5, 10, 20, 50, 100, 200, 500, 1000)


@later
def sagging_shelf(show, shelf, sag, told):
    """The drawing of a `wood.shelf.Shelf` that sags by `sag` (exact inches), told as text."""
    over, span, deep = (float(nearby(each)) for each in (shelf.overhang, shelf.span, sag))
    long = span + 2 * over
    pixel = long * 9 / 8 / _SCREEN
    scale = _scale(shelf, deep)
    curve = [_place(shelf, scale, step) for step in range(_STEPS + 1)]
    rise = -min(drop for _, drop in curve)
    times = max(each for each in _TIMES if each == 1 or (deep + rise) * each <= 44 * pixel)
    high = float(nearby(_height(shelf)))
    room = max(high, 1 * pixel)
    first, second = 30 * pixel, 128 * pixel + room + rise * times
    shapes = [label((0, first - 18 * pixel), "To scale", "note", "start")]
    shapes += _drawn(curve, first, 1, room, shelf, pixel)
    shapes.append(
        dimension(
            (over, first + room), (over + span, first + room), -32 * pixel,
            show.brief(shelf.span), "given",
        )
    )  # fmt: skip
    shapes.append(label((0, second - rise * times - 18 * pixel), _larger(times), "note", "start"))
    shapes += _drawn(curve, second, times, room, shelf, pixel)
    shapes.append(line((over, second), (over + span, second), "hidden"))
    low = max(drop for _, drop in curve) * times
    below = second + low + room + 18 * pixel
    shapes.append(label((long / 2, below), f"sag {told}", "name"))
    words = (
        f"The shelf from the front, {show.brief(shelf.span)} between its supports, first to scale, "
        f"then with its sag drawn {times} times as large. It sags by {told}."
    )
    margin = long / 16
    return drawing(words, (-margin, 0, long + margin, below + 14 * pixel), shapes)


def _larger(times):
    return f"Sag drawn {times} times as large" if times > 1 else "Sag as it is"


def _height(shelf):
    """What is seen from the front: the strip where one stands on the front edge."""
    strip = shelf.strip
    if strip is None or strip.edges == "back":
        return shelf.thickness
    if strip.under:
        return shelf.thickness + nearby(strip.height)
    return max(shelf.thickness, nearby(strip.height))


def _scale(shelf, deep):
    lowest = max(shelf.drop_at(Fraction(1, 2)), shelf.drop_at(-shelf.overhang / shelf.span))
    return deep / float(lowest)


def _place(shelf, scale, step):
    """A place of the curve: from the left end of the shelf, and its drop."""
    long = shelf.span + 2 * shelf.overhang
    along = long * step / _STEPS
    return float(along), float(shelf.drop_at((along - shelf.overhang) / shelf.span)) * scale


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
        polygon([(a, rise), (b, rise), (b, foot), (a, foot)], "hatch")
        for a, b in (
            (over - wide + half, over + half),
            (long - over - half, long - over + wide - half),
        )
    ]
    shapes.append(polygon([*top, *reversed(bottom)]))
    if shelf.strip is not None and shelf.strip.under and shelf.strip.edges != "back":
        joint = [(x, place + float(shelf.thickness)) for x, place in top]
        shapes += [line(*ends, "edge") for ends in pairwise(joint)]
    return shapes
