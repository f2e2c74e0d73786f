"""A piece as it lies on the bench, long side up, with a cut at each end."""

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from sawside.drawing.shapes import arc, dimension, drawing, label, line, polygon
from sawside.lengths.real import Exact, nearby
from sawside.lengths.show import angle_text

_SCREEN = 328
"""Pixels of a drawing on a narrow phone: what is seen beside the piece keeps its size there."""


@dataclass(frozen=True, slots=True)
class Cut:
    """A cut across the face: degrees from square, and how much shorter it makes the short side."""

    degrees: Fraction
    allowance: Exact


def mitered_piece(show, width, long_side, short_side, cuts, *, given):
    """The drawing of a piece with two cuts; `given` ("long" or "short") is the side that was known.

    Measures are exact inches. A long piece is drawn shortened by a conventional break.
    """
    left, right = (nearby(cut.allowance) for cut in cuts)
    whole, across = nearby(long_side), nearby(width)
    drawn = min(whole, left + right + 4 * across)
    pixel = drawn * 9 / 8 / _SCREEN
    shapes = _stock(((0, 0), (drawn, 0), (drawn - right, across), (left, across)), drawn < whole)
    for cut, corner, foot in (
        (cuts[0], (0, 0), (left, across)),
        (cuts[1], (drawn, 0), (drawn - right, across)),
    ):
        shapes += _blade(cut, corner, foot, pixel)
    long_text, short_text = show.text(long_side), show.text(short_side)
    roles = {"long": ("given", "answer"), "short": ("answer", "given")}[given]
    long_ends = (0, 0), (drawn, 0)
    short_ends = (drawn - right, across), (left, across)
    shapes += [
        dimension(*long_ends, 30 * pixel, f"long side {long_text}", roles[0]),
        dimension(*short_ends, 30 * pixel, f"short side {short_text}", roles[1]),
        label(((left + 2 * drawn - right) / 4, across / 2), f"{show.text(width)} wide", "note"),
    ]
    words = (
        f"A piece {show.text(width)} wide. Its long side is {long_text}, its short side "
        f"{short_text}. From square, the left end is cut at {angle_text(cuts[0].degrees)}, the "
        f"right end at {angle_text(cuts[1].degrees)}."
    )
    middle, room = (left + drawn - right) / 2, 80 * pixel  # room for the text of the short side
    start, end = min(-drawn / 16, middle - room), max(drawn * 17 / 16, middle + room)
    return drawing(words, (start, -52 * pixel, end, across + 52 * pixel), shapes)


def _stock(outline, broken):
    """The wood: one outline, or two with a break between them, right of the middle."""
    if not broken:
        return [polygon(outline)]
    top_left, top_right, bottom_right, bottom_left = outline
    across = bottom_left[1]
    tooth, gap = across / 12, across / 8
    at = bottom_left[0] + (bottom_right[0] - bottom_left[0]) * 4 / 5
    edge = [(at + tooth * way, across * step / 3) for step, way in enumerate((0, 1, -1, 0))]
    far = [(x + gap, y) for x, y in edge]
    breaks = [line(*ends, "break") for side in (edge, far) for ends in pairwise(side)]
    left, right = [top_left, *edge, bottom_left], [*far, bottom_right, top_right]
    return [polygon(left), polygon(right), *breaks]


def _blade(cut, corner, foot, pixel):
    """The saw's path, a little beyond the piece at both sides, and its angle from square."""
    (x0, y0), (x1, y1) = corner, foot
    beyond = 18 * pixel
    slope = (x1 - x0) / (y1 - y0)
    path = line((x0 - slope * beyond, y0 - beyond), (x1 + slope * beyond, y1 + beyond), "cut")
    if cut.degrees == 0:
        return [path]
    sweep = -cut.degrees if slope > 0 else cut.degrees
    square = line(corner, (x0, y1), "hidden")
    return [path, square, arc(corner, y1 * 3 / 4, 90, sweep, angle_text(cut.degrees))]
