"""The pieces of a run of molding as they are drawn from above: each joint as it is cut."""

from math import cos, radians, sin, tan

from sawside.drawing.miters.run_path import outward
from sawside.drawing.shapes import label, line, polygon

_THICK, _THIN, _ALL = 22.0, 7.0, 45.0
"""A layer at most and at least, and all layers together as far as that goes."""
LEGIBLE = 15
_UNDERCUT = 0.4
"""How far a coped end is drawn leaning back from its edge, as a part of its thickness."""


def thickness(longs, run, layers):
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


def outline_of(piece, path, thick, whole):
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


def piece_drawn(outline, piece, number, thick):
    """The piece, its cuts that are not square, and its number in it."""
    left_back, right_back, right_face, left_face = outline
    yield polygon(outline)
    if not piece.leg.is_cap:
        ends = ((left_back, left_face), (right_back, right_face))
        for joint, cut in zip(piece.leg.joints, ends, strict=True):
            if joint.kind in ("mitered", "returned", "coped", "scarfed"):
                yield line(*cut, "cut")
        if thick >= LEGIBLE:
            yield label(center(outline), f"{number}", "note")


def center(places):
    """The middle of some places."""
    xs, ys = zip(*places, strict=True)
    return sum(xs) / len(xs), sum(ys) / len(ys)
