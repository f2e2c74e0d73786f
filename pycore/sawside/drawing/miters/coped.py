"""Walls from above with their moldings: which runs into each corner, and which is coped there."""

from math import cos, radians, sin

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import drawing, label, line, polygon
from sawside.geometry.coped import COPED, FREE

_SCREEN = 316
_ROOM = 88
_THICK = 13


@lazy
def coped_plan(show, pieces, corners):
    """The walls with the first fitted one at the top, as seen from above; moldings drawn thick."""
    by_wall = {piece.wall: piece for piece in pieces}
    walls = [by_wall[number] for number in sorted(by_wall)]
    lines = _walls(walls, corners, pieces[0].wall - 1)
    xs = [x for start, end, _ in lines for x, _ in (start, end)]
    ys = [y for start, end, _ in lines for _, y in (start, end)]
    pixel = max(max(xs) - min(xs), (max(ys) - min(ys)) * 0.8) / (_SCREEN - 2 * _ROOM)
    thick = _THICK * pixel
    shapes, names = [], []
    for piece, (start, end, turn) in zip(walls, lines, strict=True):
        along, inward = (cos(turn), sin(turn)), (-sin(turn), cos(turn))
        long = ((end[0] - start[0]) ** 2 + (end[1] - start[1]) ** 2) ** 0.5
        outline = _strip(piece, long, thick)
        shapes.append(polygon([_at(start, along, inward, *place) for place in outline]))
        shapes.append(line(start, end))
        x, y = _at(start, along, inward, long / 2, -16 * pixel)
        align = "middle" if abs(inward[0]) < 0.5 else ("end" if inward[0] > 0 else "start")
        names.append(
            label((x, y), f"wall {piece.wall}, fit {_ordinal(piece.order)}", "note", align)
        )
    room = 28 * pixel
    middle = (max(xs) + min(xs)) / 2
    half = _SCREEN * pixel / 2
    low = max(max(ys), min(ys) + 60 * pixel)
    box = (middle - half, min(ys) - room, middle + half, low + room)
    said = "; ".join(
        f"wall {piece.wall}, fit {_ordinal(piece.order)}, {show.brief(piece.back)}, left end "
        f"{piece.left.kind}, right end {piece.right.kind}"
        for piece in pieces
    )
    return drawing(f"The walls from above, not to scale: {said}.", box, [*shapes, *names])


def _ordinal(number):
    return f"{number}{ {1: 'st', 2: 'nd', 3: 'rd'}.get(number, 'th') }"


def _walls(walls, corners, first):
    """(start, end, direction in radians) of each wall, the first one level at the top."""
    turns = [0.0]
    for corner in corners[: len(walls) - 1]:
        turns.append(turns[-1] + 180 - float(corner))
    turns = [radians(turn - turns[first]) for turn in turns]
    place, lines = (0.0, 0.0), []
    for piece, turn in zip(walls, turns, strict=True):
        long = float(piece.length)
        end = (place[0] + long * cos(turn), place[1] + long * sin(turn))
        lines.append((place, end, turn))
        place = end
    return lines


def _strip(piece, long, thick):
    """The molding along its wall, drawn `thick`: (along, inward) corners from the left back."""
    left, right = (_cut(end, thick) for end in (piece.left, piece.right))
    return [(left[0], 0), (long - right[0], 0), (long - right[1], thick), (left[1], thick)]


def _cut(end, thick):
    """What an end takes off at back and face: a coped one ends at its neighbor's face."""
    if end.kind == FREE:
        return 0, 0
    turn = radians(float(end.corner))
    if end.kind == COPED:
        return thick / sin(turn), thick * (1 + cos(turn)) / sin(turn)
    back = max(thick * cos(turn) / sin(turn), 0)
    return back, back


def _at(start, along, inward, x, y):
    return start[0] + along[0] * x + inward[0] * y, start[1] + along[1] * x + inward[1] * y
