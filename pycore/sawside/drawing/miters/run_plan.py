"""A run of molding seen from above: the walls, each piece with its number, each joint as it is cut.

The pieces are numbered in the order in which they are cut and go up. Walls and molding are drawn
so that joints stay legible, not to scale; figures are told.
"""

from sawside.drawing.lazy import lazy
from sawside.drawing.miters.run_path import path_of
from sawside.drawing.miters.run_pieces import LEGIBLE, center, outline_of, piece_drawn, thickness
from sawside.drawing.shapes import dimension, drawing, label, polygon
from sawside.lengths.show import angle_text

_BEHIND = 7
_MOST_DIMENSIONS = 6


@lazy
def run_plan(show, given, run, pieces, outermost=None):
    """The plan, with the middle wall of a row, or the longest, level; `pieces` in their order.

    `outermost` is what the outermost line of the molding is called, and its length by wall; else it
    is the outside face.
    """
    lengths = [float(wall.length) for wall in given.walls]
    turns = [float(corner.turned) for corner in run.corners]
    base = _base(lengths, run.closed)
    path = path_of(lengths, turns, closed=run.closed, base=base)
    layers = max(piece.layer for piece in pieces)
    thick = thickness(path.longs, run, layers)
    whole = thick * layers
    numbers = {piece: number for number, piece in enumerate(pieces, 1)}
    shapes = []
    for piece in sorted(pieces, key=lambda piece: piece.leg.wall):
        outline = outline_of(piece, path, thick, whole)
        shapes += piece_drawn(outline, piece, numbers[piece], thick)
    shapes = [*_walls(path, run), *shapes, *_angles(path, run, whole)]
    if layers == 1 and thick < LEGIBLE:
        shapes += _numbers_beside(path, numbers, whole)
    if len(lengths) <= _MOST_DIMENSIONS:
        shapes += _dimensions(show, given, run, path, whole, base)
        shapes += _outermost(show, run, path, whole, base, outermost or _faces(pieces))
    return drawing(_words(show, run, pieces), _box(shapes), shapes)


def _base(lengths, closed):
    if closed:
        return 0
    return len(lengths) // 2 if len(lengths) % 2 else lengths.index(max(lengths))


def _box(shapes):
    xs, ys = zip(*(place for shape in shapes for place in shape.get("points", ())), strict=True)
    return min(xs) - 8, min(ys) - 8, max(xs) + 8, max(ys) + 8


def _walls(path, run):
    """The case as a ghost, or the walls with what is behind them."""
    turns = {corner.turn for corner in run.corners}
    if turns == {"outside"}:
        places = list(dict.fromkeys(path.places))
        if len(places) == 3 and not run.closed:  # one corner: the far one of the case closes it
            (x0, y0), (x1, y1), (x2, y2) = places
            places.append((x0 + x2 - x1, y0 + y2 - y1))
        return [polygon(places, "ghost")]
    behind = path.offset(-_BEHIND)
    pairs = zip(path.places, path.places[1:], behind, strict=False)
    return [polygon([one, two, right, left], "hatch") for one, two, (left, right) in pairs]


def _angles(path, run, whole):
    """The corners that aren't square, and which are coped, beside them: in the room, or in what is
    wrapped."""
    for number, corner in enumerate(run.corners):
        told = [] if corner.degrees == 90 else [angle_text(corner.degrees)]
        told += ["cope"] if corner.is_coped else []
        if told:
            place = path.offset(whole + 16 if corner.turn == "inside" else -16)[number][1]
            yield label(place, ", ".join(told), "note")


def _numbers_beside(path, numbers, whole):
    """The numbers of a wall's pieces, where the layers are too thin for them."""
    by_wall = {}
    for piece, number in numbers.items():
        if not piece.leg.is_cap:
            by_wall.setdefault(piece.leg.wall - 1, []).append(f"{number}")
    for wall, texts in by_wall.items():
        yield label(center(path.offset(whole + 12)[wall]), ", ".join(texts), "note")


def _dimensions(show, given, run, path, whole, base):
    """The length of each wall where no two such lines cross: outside of a bend, beside a jog."""
    for at, wall in enumerate(given.walls):
        turns = _turns_of(run, at)
        start, stop = path.places[at], path.places[at + 1]
        text = show.brief(wall.length)
        if len(turns) == 2:
            yield label(center(path.offset(whole + 14)[at]), text)
        elif turns == {"outside"} and not _is_front(run, at, base):
            yield dimension(stop, start, whole + 24, text, field="walls")
        else:
            off = 44 if turns == {"outside"} else 26
            yield dimension(start, stop, off, text, field="walls")


def _turns_of(run, wall):
    count = len(run.legs)
    behind = [wall - 1, wall] if run.closed else [each for each in (wall - 1, wall) if each >= 0]
    return {run.corners[at % count].turn for at in behind if run.closed or at < len(run.corners)}


def _is_front(run, wall, base):
    """Whether a wall is the level one of a run that only has outside corners."""
    return wall == base and all(corner.turn == "outside" for corner in run.corners)


def _faces(pieces):
    """What the outermost line is called, and its length by wall: layers come in their order."""
    return "outside face", {piece.leg.wall: piece.face for piece in pieces if not piece.leg.is_cap}


def _outermost(show, run, path, whole, base, outermost):
    """The outermost line of the level one of such a run."""
    if run.corners and _is_front(run, base, base):
        name, lengths = outermost
        left, right = path.offset(whole)[base]
        text = f"{name} {show.brief(lengths[base + 1])}"
        yield dimension(right, left, 26, text, "answer")


def _words(show, run, pieces):
    layers = max(piece.layer for piece in pieces)
    corners = ", ".join(
        f"{corner.turn} {angle_text(corner.degrees)}{', coped' if corner.is_coped else ''}"
        for corner in run.corners
    )
    runs = ", ".join(
        f"{number} {piece.leg.name.lower()} {show.brief(piece.line)}"
        for number, piece in enumerate(pieces, 1)
        if not piece.leg.is_cap and piece.layer == 1
    )
    return (
        f"A molding of {layers} {'layer' if layers == 1 else 'layers'} "
        f"{'all the way around' if run.closed else 'from end to end'}, seen from above, not to "
        f"scale{f'; corners from left to right: {corners}' if corners else ''}. At the back of "
        f"the first layer, in cutting order: {runs}."
    )
