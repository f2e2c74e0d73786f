"""A piece that stands on edge at the saw, seen from above: its back against the fence.

The person stands at the lower side of the picture, where the face of the piece is; left and right
are as seen from there.
"""

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.real import Exact, nearby, sign
from sawside.lengths.show import angle_text

_SCREEN = 316
"""Pixels of a drawing on a narrow phone."""
_HIGHEST = 88
_FENCE = 10


@dataclass(frozen=True, slots=True)
class EdgeCut:
    """A cut through the thickness: degrees from square, below 0 where the face is the shorter
    side, and what it adds to the face. `note` stands in place of the setting of a square end.
    `chamfer` is how deep a chamfer at that end reaches from the face, None for a cut all through.
    """

    degrees: Exact
    adds: Exact
    note: str | None = None
    chamfer: Exact | None = None

    def told(self, side):
        """The setting in words, seen by the person at the saw."""
        if sign(self.degrees) == 0:
            return self.note or "square"
        toward = side if sign(self.degrees) > 0 else {"left": "right", "right": "left"}[side]
        return f"{angle_text(abs(self.degrees), 2)}, saw turned {toward}"


@lazy
def edge_piece(show, name, thickness, back, cuts, *, note=None):
    """The drawing of a piece `thickness` inches thick, `back` inches long where it touches the
    fence, with two `EdgeCut`s. A long piece is drawn shortened by a conventional break. `note` is
    a line of its own. Where tips stand out at the back and at the face, so that the piece is longer
    than both, its length from tip to tip is a dimension too."""
    thick, whole = nearby(thickness), nearby(back)
    left, right = (min(max(nearby(cut.adds), -3 * thick), 3 * thick) for cut in cuts)
    long = min(whole, 5 * thick + max(0, -left) + max(0, -right))
    ends = [
        _end(corner, foot, cut, thick)
        for corner, foot, cut in zip((0, long), (-left, long + right), cuts, strict=True)
    ]
    start, end = min(0, -left), max(long, long + right)
    wide = max((end - start) * 9 / 8, thick * _SCREEN / _HIGHEST)
    pixel, middle = wide / _SCREEN, (start + end) / 2
    shapes = [
        polygon([(start, -_FENCE * pixel), (end, -_FENCE * pixel), (end, 0), (start, 0)], "hatch"),
        *_stock(*ends, long < whole, thick),
        *(_blade(*end[-2:], 14 * pixel) for end in ends),
    ]
    face = back + cuts[0].adds + cuts[1].adds
    sides = {"back": back, "face": face}
    longer = sign(face - back)
    which = {
        "back": ("", "long side ", "short side ")[-longer],
        "face": ("", "long side ", "short side ")[longer],
    }
    roles = ("answer", "given") if longer < 0 else ("given", "answer")
    texts = [f"{side}: {which[side]}{show.brief(length)}" for side, length in sides.items()]
    if sign(back) > 0:
        shapes.append(dimension(ends[0][0], ends[1][0], 32 * pixel, texts[0], roles[0]))
    else:
        shapes.append(label((middle, -32 * pixel), texts[0], "note"))
    shapes.append(dimension(ends[1][-1], ends[0][-1], 34 * pixel, texts[1], roles[1]))
    whole_text = _tip_to_tip(show, back, cuts)
    below = 0
    if whole_text:
        shapes.append(dimension((end, thick), (start, thick), 62 * pixel, whole_text, "answer"))
        below = 28 * pixel
    if thick > 22 * pixel and long > 100 * pixel:
        shapes.append(label((_between(*ends, Fraction(3, 10)), thick / 2), "top edge up", "note"))
    told = [
        f"{side} end: {cut.told(side)}" for side, cut in zip(("left", "right"), cuts, strict=True)
    ]
    left_edge, right_edge = middle - wide / 2, middle + wide / 2
    shapes += [
        label((left_edge, thick + 62 * pixel + below), told[0], "note", "start"),
        label((right_edge, thick + 86 * pixel + below), told[1], "note", "end"),
    ]
    words = (
        f"{name}, seen from above as it stands at the saw, top edge up, its back against the "
        f"fence, its face towards you. {', '.join(filter(None, [*texts, whole_text]))}. "
        f"{'; '.join(told)}."
    )
    low = thick + 100 * pixel + below
    if note:
        shapes.append(label((middle, low + 8 * pixel), note))
        words, low = f"{words} {note}.", low + 24 * pixel
    box = (left_edge, -52 * pixel, right_edge, low)
    return drawing(words, box, shapes)


def _tip_to_tip(show, back, cuts):
    """The text of the length from tip to tip; None where back or face is as long as that."""
    stand_out = sum(sign(cut.adds) > 0 for cut in cuts)
    if stand_out == 2 or not stand_out or all(sign(cut.adds) >= 0 for cut in cuts):
        return None
    return f"tip to tip {show.brief(back + sum(cut.adds for cut in cuts if sign(cut.adds) > 0))}"


def _end(corner, foot, cut, thick):
    """The outline of an end from back to face."""
    if cut.chamfer is None:
        return [(corner, 0), (foot, thick)]
    return [(corner, 0), (corner, thick - nearby(cut.chamfer)), (foot, thick)]


def _between(left, right, share):
    """A place between the two ends where the piece has its whole thickness."""
    start, stop = max(x for x, _ in left), min(x for x, _ in right)
    return start + (stop - start) * share


def _stock(left, right, broken, thick):
    """The wood: one outline, or two with a break between them, right of the middle."""
    if not broken:
        return [polygon([*left, *reversed(right)])]
    tooth, gap = thick / 12, thick / 8
    at = _between(left, right, Fraction(7, 10))
    edge = [(at + tooth * way, thick * step / 3) for step, way in enumerate((0, 1, -1, 0))]
    far = [(x + gap, y) for x, y in edge]
    breaks = [line(*ends, "break") for side in (edge, far) for ends in pairwise(side)]
    return [polygon([*reversed(left), *edge]), polygon([*far, *reversed(right)]), *breaks]


def _blade(corner, foot, beyond):
    """The saw's path, a little beyond the piece at its face."""
    (x0, y0), (x1, y1) = corner, foot
    along, across = x1 - x0, y1 - y0
    share = beyond / max(abs(along), across)
    return line((x0, y0), (x1 + along * share, y1 + across * share), "cut")
