"""A level base on a floor that isn't, from the front, with what goes under it. Along the run in
scale; the floor's slope and the base's height are exaggerated, and a note says so."""

from itertools import pairwise

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import drawing, label, line, polygon, rectangle
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import nearby

_WIDE = 240
_HIGH = 34
_GAP = 26
"""Pixels of the base, and of the widest gap under it."""
_NAMED = 4
"""Places under which what goes there is written; of more of them the highest and lowest are."""


@lazy
def base_on_floor(show, given, floor):
    """`floor` has its spots, each with a place along the run and how far it is down; what is
    written is what `floor.under` says of those at the front, or at the back without a front."""
    edge = "front" if any(spot.edge == "front" for spot in floor.spots) else "back"
    spots = [spot for spot in floor.spots if spot.edge == edge]
    read = sorted((spot for spot in floor.read if spot.edge == edge), key=lambda each: each.along)
    start, end = (float(nearby(at.along)) for at in (read[0], read[-1]))
    scale = _WIDE / (end - start)
    times = _GAP / float(floor.out) if floor.out else 0

    def place(spot):
        return (float(nearby(spot.along)) - start) * scale, times * float(floor.under(spot))

    points = [place(spot) for spot in read]
    left, right = points[0][0] - 14, points[-1][0] + 14
    face = [(left, points[0][1]), *points, (right, points[-1][1])]
    shapes = [
        polygon([*face, (right, _GAP + 12), (left, _GAP + 12)], "hatch"),
        rectangle(points[0][0], -_HIGH, points[-1][0], 0),
        *_joints(spots, place),
        line((left - 10, -_HIGH - 26), (right + 10, -_HIGH - 26), "center"),
        label((points[0][0], -_HIGH - 38), "your level line", "note", "start"),
        *_shims(show, floor, spots, place),
        label(((left + right) / 2, _GAP + 66), f"{edge}; slope exaggerated", "note"),
    ]
    box = (left - 30, -_HIGH - 56, right + 30, _GAP + 76)
    return drawing(_words(show, floor, edge, spots), box, shapes)


def _joints(spots, place):
    for _, spot in pairwise(spots):
        x, _ = place(spot)
        if spot is not spots[-1]:
            yield line((x, -_HIGH), (x, 0))


def _shims(show, floor, spots, place):
    """What goes under each place; two rows, so that neighbors have room."""
    shown = spots if len(spots) <= _NAMED else _ends(spots, floor)
    for row, spot in enumerate(shown):
        x, y = place(spot)
        under = floor.under(spot)
        text = show.brief(on_fine_marks(under, show, "reach")) if under else "0″"
        if y:
            yield line((x, 0), (x, y), "cut")
        yield label((x, _GAP + 26 + 20 * (row % 2)), text, "name")


def _ends(spots, floor):
    """The places that are highest and lowest."""
    return [min(spots, key=floor.under), max(spots, key=floor.under)]


def _words(show, floor, edge, spots):
    under = ", ".join(
        f"{spot.name} {show.brief(on_fine_marks(floor.under(spot), show, 'reach'))}"
        for spot in spots
    )
    return f"A level base from the front on its floor. Under it at the {edge}: {under}."
