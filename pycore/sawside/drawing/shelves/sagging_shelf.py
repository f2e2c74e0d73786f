"""A loaded shelf from the front, bent larger than life, beside the most that it may bend."""

from dataclasses import dataclass

from sawside.drawing.shapes import dimension, drawing, label, line
from sawside.drawing.shelves.bent_board import Bent, back_edge, board_on_supports
from sawside.drawing.shelves.span_gauge import span_gauge
from sawside.drawing.shelves.standing import standing
from sawside.lengths.fine import fine_text
from sawside.lengths.real import nearby

_SCREEN = 328
_TIMES = (1, 2, 3, 5, 7, 10, 15, 20, 30, 50, 70, 100, 150, 200, 300, 500, 700, 1000)
_BEND, _STANDING, _LEAST_ROOM = 30, 24, 4
"""Pixels of the largest bend, of the tallest thing that stands there, of the thinnest board."""


@dataclass(frozen=True, slots=True)
class Judged:
    """What is drawn of a shelf: its `load` (a key), what its sag at once is multiplied by for
    `when` it is judged, the most sag in inches, and the longest span within it or None."""

    load: str
    factor: object
    when: str
    limit: object
    longest: object


def sagging_shelf(show, shelf, judged, captions):
    """The drawing of a `wood.strength.shelf.Shelf`; `captions` are lines below it.

    Of a shelf with strips the front edge is drawn, and the back edge as a line behind it.
    """
    over, span = (float(nearby(each)) for each in (shelf.overhang, shelf.span))
    long, most = span + 2 * over, float(nearby(judged.limit))
    pixel = long * 9 / 8 / _SCREEN
    curves = _curves(shelf, judged.factor)
    drops = [drop for curve in curves for _, drop in curve]
    rise, deep = -min(drops), max(*drops, most)
    times = max(size for size in _TIMES if size == 1 or (deep + rise) * size <= _BEND * pixel)
    room = max(float(nearby(_height(shelf))), _LEAST_ROOM * pixel)
    level = (16 + _STANDING) * pixel + rise * times
    bent = Bent(shelf, level, room, times, pixel)
    sag = fine_text(shelf.sag * judged.factor, show)
    shapes = [
        label((0, 8 * pixel), _larger(times), "note", "start"),
        *_stands(judged.load, shelf.spread, curves[0], bent, long),
        *board_on_supports(bent, curves[0]),
        *back_edge(bent, curves[1:]),
        *_limit(bent, (over, span, most), deep, fine_text(judged.limit, show)),
        *_sag(bent, curves, sag),
    ]
    below = bent.under + max(deep * times, 14 * pixel) + 48 * pixel
    if judged.longest:
        shapes += span_gauge(show, shelf.span, judged.longest, (0, below, long, pixel))
        below += 32 * pixel
    else:
        text = show.brief(shelf.span)
        shapes.append(dimension((over, below), (over + span, below), 0, text, "given", "span"))
        below += 6 * pixel
    for caption in captions:
        below += 16 * pixel
        shapes.append(label((long / 2, below), caption, "name"))
    words = _words(show, shelf, judged, times, sag, captions)
    return drawing(words, (-long / 16, 0, long * 17 / 16, below + 8 * pixel), shapes)


def _words(show, shelf, judged, times, sag, captions):
    bend = f"bend exaggerated {times}×" if times > 1 else "bend to scale"
    told = [f"sag {sag} {judged.when}, limit {fine_text(judged.limit, show)}", *captions]
    if judged.longest:
        longest = show.text(show.rounded(judged.longest, "stay under"))
        told.append(f"the longest span within the limit is {longest}")
    return (
        f"The loaded shelf from the front, {show.brief(shelf.span)} between its supports, its "
        f"{bend}: {'; '.join(told)}."
    )


def _larger(times):
    return f"Bend exaggerated {times}×" if times > 1 else "Bend to scale"


def _height(shelf):
    """What is seen from the front: the strip where one stands on the front edge."""
    strip = shelf.strip
    if strip is None or strip.edges == "back":
        return shelf.thickness
    if strip.under:
        return shelf.thickness + nearby(strip.height)
    return max(shelf.thickness, nearby(strip.height))


def _curves(shelf, factor):
    """The bent edge from the front, and that of the back where they differ."""
    edges = shelf.plate.edges if shelf.plate else None
    sags = (edges.front, edges.back) if edges else (shelf.sag,)
    return [_curve(shelf, float(nearby(sag * factor))) for sag in sags]


_STEPS = 24


def _curve(shelf, deep):
    """Places along the shelf and their drops, the largest of them `deep`: a beam's shape."""
    long = shelf.span + 2 * shelf.overhang
    places = [long * step / _STEPS for step in range(_STEPS + 1)]
    drops = [float(shelf.drop_at((along - shelf.overhang) / shelf.span)) for along in places]
    scale = deep / max(drops)
    return [(float(along), drop * scale) for along, drop in zip(places, drops, strict=True)]


def _stands(load, spread, curve, bent, long):
    """What stands on the shelf, within its ends."""

    def top(x):
        near = min(curve, key=lambda point: abs(point[0] - x))
        return bent.level + near[1] * bent.times

    inset = 4 * bent.pixel
    return standing(load, top, inset, long - inset, _STANDING * bent.pixel, spread)


def _limit(bent, measures, deep, text):
    """The straight shelf, and the line that it may bend to; its text stands below all of it."""
    over, span, most = measures
    low = bent.under + most * bent.times
    foot = bent.under + max(deep * bent.times, 14 * bent.pixel) + 14 * bent.pixel
    return [
        line((over, bent.under), (over + span, bent.under), "hidden"),
        line((over, low), (over + span, low), "cut"),
        label((over, foot), f"–·– limit {text}", "note", "start"),
    ]


def _sag(bent, curves, text):
    """How far down the lowest place is now."""
    x, drop = max((point for curve in curves for point in curve), key=lambda point: point[1])
    down = (x, bent.under), (x, bent.under + drop * bent.times)
    return [dimension(*down, 0, text, "answer")]
