"""A run of molding seen from above: the walls, each piece with its number, each joint as it is cut.

The pieces are numbered in the order in which they are cut and go up. Walls and molding are drawn
so that joints stay legible, not to scale; figures are told.
"""

from math import cos, radians, sin, tan

from sawside.drawing.lazy import lazy
from sawside.drawing.miters.run_path import outward, path_of
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.show import angle_text

_THICK, _THIN, _ALL = 22.0, 7.0, 45.0
"""A layer at most and at least, and all layers together as far as that goes."""
_LEGIBLE = 15
_BEHIND = 7
_MOST_DIMENSIONS = 6
_UNDERCUT = 0.4
"""How far a coped end is drawn leaning back from its edge, as a part of its thickness."""


@lazy
def run_plan(show, given, run, pieces):
    """The plan, with the middle wall of a row, or the longest, level; `pieces` in their order."""
    lengths = [float(wall.length) for wall in given.walls]
    turns = [float(corner.turned) for corner in run.corners]
    base = _base(lengths, run.closed)
    path = path_of(lengths, turns, closed=run.closed, base=base)
    layers = len(given.layers)
    thick = _thick(path.longs, run, layers)
    whole = thick * layers
    numbers = {piece: number for number, piece in enumerate(pieces, 1)}
    shapes = []
    for piece in sorted(pieces, key=lambda piece: piece.leg.wall):
        outline = _outline(piece, path, thick, whole)
        shapes += _piece(outline, piece, numbers[piece], thick)
    shapes = [*_walls(path, run), *shapes, *_angles(path, run, whole)]
    if layers == 1 and thick < _LEGIBLE:
        shapes += _numbers_beside(path, numbers, whole)
    if len(lengths) <= _MOST_DIMENSIONS:
        shapes += _dimensions(show, given, run, path, whole, base)
        shapes += _outermost(show, run, path, whole, base, pieces)
    return drawing(_words(show, given, run, pieces), _box(shapes), shapes)


def _base(lengths, closed):
    if closed:
        return 0
    return len(lengths) // 2 if len(lengths) % 2 else lengths.index(max(lengths))


def _box(shapes):
    xs, ys = zip(*(place for shape in shapes for place in shape.get("points", ())), strict=True)
    return min(xs) - 8, min(ys) - 8, max(xs) + 8, max(ys) + 8


def _thick(longs, run, layers):
    """How thick a layer is drawn: thinner where inside corners would leave nothing of a wall."""
    thick = max(min(_THICK, _ALL / layers), _THIN)
    for leg in run.legs:
        takes = sum(_takes(joint) for joint in leg.joints)
        if takes > 0 and not leg.is_cap:
            thick = min(thick, (longs[leg.wall - 1] - 12) / takes / layers)
    return max(thick, _THIN / 2)


def _takes(joint):
    """How much of a wall an end takes, for each 1 that the molding is thick."""
    if joint.kind == "returned":
        return 1
    return tan(radians(-float(joint.setting))) if joint.is_inside else 0


def _outline(piece, path, thick, whole):
    """The corners of a piece as drawn: its back from left to right, its face from right to left."""
    leg, under = piece.leg, thick * (piece.layer - 1)
    start, stop = path.offset(under)[leg.wall - 1]
    along = path.directions[leg.wall - 1]
    out = outward(along)
    if leg.is_cap:
        return _cap(piece, path, (under, under + thick, whole), along, out)
    corners = []
    for end, way, joint, side in ((start, 1, leg.left, "left"), (stop, -1, leg.right, "right")):
        back, face = _cut(joint, thick, whole - under, side)
        corners.append(_moved(end, along, way * back, out, 0))
        corners.append(_moved(end, along, way * face, out, thick))
    left_back, left_face, right_back, right_face = corners
    return [left_back, right_back, right_face, left_face]


def _cut(joint, thick, above, side):
    """What an end takes off its line at the back and at the face, as drawn; `above` is how far the
    layer and all above it stand out."""
    degrees = float(joint.setting)
    if joint.kind == "mitered":
        return 0, -thick * tan(radians(degrees))
    if joint.kind == "returned":
        return above, above - thick
    if joint.kind == "scarfed":
        half = thick / 2 if side == "left" else -thick / 2
        return half, -half
    if joint.kind == "square":
        return 0, 0
    turn = radians(float(joint.corner))
    if joint.kind == "butted":
        back = max(thick * cos(turn) / sin(turn), 0)
        return back, back
    return thick / sin(turn) + _UNDERCUT * thick, thick * (1 + cos(turn)) / sin(turn)


def _cap(piece, path, depths, along, out):
    """The small piece that closes an end: its back along the end, its face beyond it. `depths` are
    those of its back, of its face and of all layers."""
    left = piece.leg.key.startswith("left")
    foot = path.places[0 if left else -1]
    way = -1 if left else 1
    near, far, whole = depths
    places = ((near - whole, 0), (near - whole, near), (far - whole, far), (far - whole, 0))
    return [_moved(foot, along, way * x, out, y) for x, y in places]


def _moved(place, along, x, out, y):
    return place[0] + along[0] * x + out[0] * y, place[1] + along[1] * x + out[1] * y


def _piece(outline, piece, number, thick):
    """The piece, its cuts that are not square, and its number in it."""
    left_back, right_back, right_face, left_face = outline
    yield polygon(outline)
    if not piece.leg.is_cap:
        ends = ((left_back, left_face), (right_back, right_face))
        for joint, cut in zip(piece.leg.joints, ends, strict=True):
            if joint.kind in ("mitered", "returned", "coped", "scarfed"):
                yield line(*cut, "cut")
        if thick >= _LEGIBLE:
            yield label(_center(outline), f"{number}", "note")


def _center(places):
    xs, ys = zip(*places, strict=True)
    return sum(xs) / len(xs), sum(ys) / len(ys)


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
        told = [] if corner.degrees == 90 else [angle_text(corner.degrees, 2)]
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
        yield label(_center(path.offset(whole + 12)[wall]), ", ".join(texts), "note")


def _dimensions(show, given, run, path, whole, base):
    """The length of each wall where no two such lines cross: outside of a bend, beside a jog."""
    for at, wall in enumerate(given.walls):
        turns = _turns_of(run, at)
        start, stop = path.places[at], path.places[at + 1]
        text = show.brief(wall.length)
        if len(turns) == 2:
            yield label(_center(path.offset(whole + 14)[at]), text)
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


def _outermost(show, run, path, whole, base, pieces):
    """The face of the outermost layer of the level one of such a run."""
    if run.corners and _is_front(run, base, base):
        face = [p for p in pieces if p.leg.wall == base + 1 and not p.leg.is_cap][-1].face
        left, right = path.offset(whole)[base]
        yield dimension(right, left, 26, f"outside face {show.brief(face)}", "answer")


def _words(show, given, run, pieces):
    layers = len(given.layers)
    corners = ", ".join(
        f"{corner.turn} {angle_text(corner.degrees, 2)}{', coped' if corner.is_coped else ''}"
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
