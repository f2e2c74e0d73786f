"""A case as it is looked at: boxes laid flat, the far ones first, with the letters of the parts.

The boxes are those of `geometry/placed.py`. A view has x to the right and y down.
"""

from collections.abc import Callable
from dataclasses import dataclass
from itertools import chain
from math import dist
from typing import Any

from sawside.drawing.shapes import label, polygon
from sawside.geometry.placed import Box
from sawside.lengths.real import nearby

_APART = 1 / 16
"""So far two letters are from each other where they can be, of how large the case is."""


@dataclass(frozen=True, slots=True)
class Seen:
    """A piece of a part: its `key` in the drawing, its letter, whether it can be taken out, whether
    it closes the back of the case, whether it is a strip of edging, and whether it covers what is
    inside until it is opened."""

    key: str
    letter: str
    box: Box
    loose: bool = False
    behind: bool = False
    strip: bool = False
    covers: bool = False


@dataclass(frozen=True, slots=True)
class Way:
    """A way to look: from where to where a box goes across, up, and along the look, and how near it
    is, the larger the nearer."""

    across: Callable[[Box], tuple[Any, Any]]
    up: Callable[[Box], tuple[Any, Any]]
    along: Callable[[Box], tuple[Any, Any]]
    near: Callable[[Box], Any]


def _x(box):
    return box.across


def _y(box):
    return box.upward


def _z(box):
    return box.inward


FRONT = Way(_x, _y, _z, lambda box: -box.front)
SIDE = Way(_z, _y, _x, lambda box: box.right)
PLAN = Way(_x, _z, _y, lambda box: box.high)


def flat(box, way):
    """(left, top, right, bottom) of a box as it is looked at, as floats."""
    (left, right), (low, high) = (
        [float(nearby(end)) for end in ends] for ends in (way.across(box), way.up(box))
    )
    return left, -high, right, -low


def _outline(box, way):
    """Its corners; a notch that goes all along the look is cut out of them."""
    left, top, right, bottom = flat(box, way)
    notch = box.notch
    if notch is None or way.along(notch) != way.along(box):
        return [(left, top), (right, top), (right, bottom), (left, bottom)]
    _, upper, inner, _ = flat(notch, way)
    stands = [(right, bottom), (inner, bottom), (inner, upper), (left, upper)]
    return [(left, top), (right, top), *stands]


def seen_from(pieces, way):
    """The shapes of what one sees from outside."""
    ordered = sorted(pieces, key=lambda each: way.near(each.box))
    roles = [_role(each, way) for each in ordered]
    return _drawn(ordered, roles, way)


def cut_through(pieces, way, at):
    """The shapes of a cut at a place along the look: what is cut is wood, what stands behind it an
    outline, what is before it left out."""
    ordered = sorted(pieces, key=lambda each: way.near(each.box))
    cut = [each for each in ordered if _is_cut(each.box, way, at)]
    beyond = [each for each in ordered if way.along(each.box)[1] <= at and not each.strip]
    roles = ["ghost"] * len(beyond) + [_role(each, None) for each in cut]
    return _drawn(beyond + cut, roles, way)


def _is_cut(box, way, at):
    low, high = way.along(box)
    return low < at < high


def _role(piece, way):
    if (piece.behind or piece.covers) and way is FRONT:
        return "ghost"
    return "hatch" if piece.loose or piece.strip else "stock"


def _drawn(pieces, roles, way):
    """The outlines, then a letter on each part where it can be seen best."""
    shapes = [
        polygon(_outline(each.box, way), role, each.key)
        for each, role in zip(pieces, roles, strict=True)
    ]
    reaches = map(abs, chain(*(flat(each.box, way) for each in pieces)))
    spots, apart = {}, _APART * max(reaches, default=0)
    for number, (each, role) in enumerate(zip(pieces, roles, strict=True)):
        covers = [flat(later.box, way) for later in pieces[number + 1 :]]
        others = [spots[letter] for letter in spots if letter != each.letter]
        spot = _free_spot(flat(each.box, way), covers, others, apart)
        if spot and (role != "ghost" or each.letter not in spots):
            spots[each.letter] = spot
    return shapes, [label(spot, letter, "note") for letter, spot in sorted(spots.items())]


def _free_spot(own, covers, others, apart):
    """A place on a rectangle that no later one covers: the first that is `apart` from the `others`,
    or else the farthest from them; None where all is covered."""
    left, top, right, bottom = own
    spots = []
    for share in (1 / 2, 1 / 4, 3 / 4, 1 / 8, 7 / 8):
        for other in (1 / 2, 1 / 4, 3 / 4):
            x, y = left + (right - left) * share, top + (bottom - top) * other
            if not any(c[0] <= x <= c[2] and c[1] <= y <= c[3] for c in covers):
                spots.append((x, y))
    if not (spots and others):
        return spots[0] if spots else None
    return max(spots, key=lambda each: min(apart, *(dist(each, other) for other in others)))
