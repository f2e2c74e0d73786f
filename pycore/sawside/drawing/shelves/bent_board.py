"""A bent board on its supports, seen from the front."""

from dataclasses import dataclass
from itertools import pairwise
from typing import Any

from sawside.drawing.shapes import line, polygon, rectangle


@dataclass(frozen=True, slots=True)
class Bent:
    """How a `Shelf` is drawn: where its top is when straight, how high it is seen, how
    many times as large it is bent, and the size of a pixel of the screen."""

    shelf: Any
    level: float
    room: float
    times: int
    pixel: float

    @property
    def under(self):
        """Where its underside is when straight."""
        return self.level + self.room


def board_on_supports(bent, curve):
    """The board as a bent outline on its two supports, or held between them; `curve` are places
    along it and their drops."""
    shelf, level, wide = bent.shelf, bent.level, 10 * bent.pixel
    over, long = float(shelf.overhang), curve[-1][0]
    if shelf.supports == "resting":
        curve = [(-wide, 0), *curve, (long + wide, 0)]
    top = [(x, level + drop * bent.times) for x, drop in curve]
    bottom = [(x, y + bent.room) for x, y in top]
    half = wide / 2 if over else 0
    rise = level - wide if shelf.supports == "fixed" else bent.under
    foot = bent.under + 14 * bent.pixel
    shapes = [
        rectangle(over - wide + half, rise, over + half, foot, "hatch"),
        rectangle(long - over - half, rise, long - over + wide - half, foot, "hatch"),
        polygon([*top, *reversed(bottom)]),
    ]
    if shelf.strip is not None and shelf.strip.under and shelf.strip.edges != "back":
        joint = [(x, y + float(shelf.thickness)) for x, y in top]
        shapes += [line(*ends, "edge") for ends in pairwise(joint)]
    return shapes


def back_edge(bent, curves):
    """The underside of the back edge as a line, where it bends otherwise than the front."""
    for curve in curves:
        points = [(x, bent.under + drop * bent.times) for x, drop in curve]
        yield from (line(*ends, "center") for ends in pairwise(points))
