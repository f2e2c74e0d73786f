"""A wrap seen from above: what it goes around, the layers, and the corners.

Runs are drawn short and of one length, so that layers and miters stay legible; figures are told.
"""

from itertools import pairwise
from math import cos, radians, sin

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_text

_RUN = 5
_SIDE = 2.6
_SCREEN = 316
_LEGIBLE = 17


@lazy
def wrap_plan(show, legs, pieces, corners, *, inside):
    """The plan, front at the bottom. `corners` are (left, right) in degrees as measured, None
    where there is none; `inside` says that the molding runs inside an alcove."""
    layers = max(piece.layer for piece in pieces)
    steps = [nearby(next(p.projection for p in pieces if p.layer == n + 1)) for n in range(layers)]
    offsets = [float(sum(steps[:count])) for count in range(layers + 1)]
    path, directions = _path(legs, corners, offsets[-1], inside)
    rows = [_offset(path, directions, offset) for offset in offsets]
    xs, ys = zip(*(point for row in rows for point in row), strict=True)
    margin = (max(xs) - min(xs)) * 0.05
    pixel = (max(xs) - min(xs)) * 1.1 / _SCREEN
    front = next(at for at, leg in enumerate(legs) if leg.key == "front")
    fronts = [(row[front], row[front + 1]) for row in rows]
    shapes = [
        *_layers(legs, pieces, rows),
        *_wrapped(rows[0], inside, pixel),
        *_names(fronts, pixel),
        *_corners(fronts, corners, inside, pixel),
        *_dimensions(show, legs[front], pieces, fronts, inside, pixel),
    ]
    low = max(ys) + (0 if inside else 44 * pixel)
    box = (min(xs) - margin, min(ys) - 12 * pixel, max(xs) + margin, low + 12 * pixel)
    return drawing(_words(show, legs, pieces, corners, inside), box, shapes)


def _layers(legs, pieces, rows):
    """The outline of every piece between the row of its back and that of its face."""
    for piece in pieces:
        at = legs.index(piece.leg)
        inner, outer = rows[piece.layer - 1], rows[piece.layer]
        yield polygon([inner[at], inner[at + 1], outer[at + 1], outer[at]])


def _names(fronts, pixel):
    """The name of each layer in its front, where there is room; `fronts` from back to face."""
    layers = len(fronts) - 1
    (left, top), (right, _) = fronts[0]
    if (fronts[-1][0][1] - top) / layers <= _LEGIBLE * pixel:
        return
    for number, ((back, _), (face, _)) in enumerate(pairwise(fronts), 1):
        name = f"layer {number}" if layers > 1 else "front"
        yield label(((left + right) / 2, (back[1] + face[1]) / 2), name, "note")


def _corners(fronts, corners, inside, pixel):
    """The measured corners, beside them: in the case, or in the room."""
    for (x, y), way, corner in zip(fronts[-1 if inside else 0], (1, -1), corners, strict=True):
        if corner is not None:
            place = (x + way * 30 * pixel, y + (15 if inside else -15) * pixel)
            yield label(place, angle_text(corner, 2), "note")


def _dimensions(show, leg, pieces, fronts, inside, pixel):
    """What was measured of the front `leg`, and its outermost face at a case."""
    start, stop = fronts[0]
    given = f"{'back wall' if inside else 'front'} {show.brief(leg.back)}"
    yield dimension(start, stop, 44 * pixel * (-2.2 if inside else 1), given, "given")
    if not inside:
        last = [piece for piece in pieces if piece.leg is leg][-1]
        start, stop = fronts[-1]
        face = f"outside face {show.brief(last.face)}"
        yield dimension(stop, start, 26 * pixel, face, "answer")


def _path(legs, corners, total, inside):
    """Corners of the wrapped line from left to right, and the direction of each leg."""
    square = 90.0
    turns = [float(square if corner is None else corner) for corner in corners]
    if inside:
        turns = [360 - turn for turn in turns]
    away = [
        (cos(radians(turns[0])), -sin(radians(turns[0]))),
        (-cos(radians(turns[1])), -sin(radians(turns[1]))),
    ]
    wide, side = _RUN * total, _SIDE * total
    path, directions = [(0.0, 0.0), (wide, 0.0)], [(1.0, 0.0)]
    if corners[0] is not None:
        x, y = away[0]
        path.insert(0, (x * side, y * side))
        directions.insert(0, (-x, -y))
    if corners[1] is not None:
        x, y = away[1]
        path.append((wide + x * side, y * side))
        directions.append((x, y))
    if legs[0].is_cap:
        path.insert(0, path[0])
        directions.insert(0, _outward(directions[0]))
    if legs[-1].is_cap:
        path.append(path[-1])
        x, y = _outward(directions[-1])
        directions.append((-x, -y))
    return path, directions


def _outward(direction):
    """From the wrapped line to the face, for a leg that runs from left to right."""
    x, y = direction
    return -y, x


def _offset(path, directions, offset):
    """The path `offset` further out: at a corner along the line that halves it."""
    outward = [_outward(direction) for direction in directions]
    points = []
    for at, (x, y) in enumerate(path):
        one = outward[max(at - 1, 0)]
        other = outward[min(at, len(outward) - 1)]
        share = offset / (1 + one[0] * other[0] + one[1] * other[1])
        points.append((x + (one[0] + other[0]) * share, y + (one[1] + other[1]) * share))
    return points


def _wrapped(row, inside, pixel):
    """The edge of what is wrapped: the case (a ghost), or the walls of the alcove."""
    if not inside:
        if len({*row}) == 3:  # one side only: the far corner of the case closes the outline
            (x0, y0), (x1, y1), (x2, y2) = dict.fromkeys(row)
            return [polygon([*row, (x0 + x2 - x1, y0 + y2 - y1)], "ghost")]
        return [polygon(row, "ghost")]
    behind = [(x, y - 5 * pixel) for x, y in row]
    return [
        shape
        for run, back in zip(pairwise(row), pairwise(behind), strict=True)
        for shape in (line(*run), *([line(*back, "hidden")] if run[0][1] == run[1][1] else []))
    ]


def _words(show, legs, pieces, corners, inside):
    layers = max(piece.layer for piece in pieces)
    around = "inside an alcove" if inside else "around a case"
    turns = " and ".join(angle_text(corner, 2) for corner in corners if corner is not None)
    runs = ", ".join(f"{leg.name} {show.brief(leg.back)}" for leg in legs if not leg.is_cap)
    return (
        f"A molding of {layers} {'layer' if layers == 1 else 'layers'} {around}, seen from above, "
        f"not to scale; corners {turns}. At the back of the first layer, from left to right: "
        f"{runs}."
    )
