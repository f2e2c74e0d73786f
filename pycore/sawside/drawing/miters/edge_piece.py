"""A piece that stands on edge at the saw, seen from above: its back against the fence.

The person stands at the lower side of the picture, where the face of the piece is; left and right
are as seen from there.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import break_across, dimension, drawing, label, line, polygon, rectangle
from sawside.geometry.end import End
from sawside.lengths.real import Exact, nearby, sign
from sawside.lengths.show import angle_text

_SCREEN = 316
"""Pixels of a drawing on a narrow phone."""
_HIGHEST = 88
_FENCE = 10
_SIDES = ("left", "right")


@dataclass(frozen=True, slots=True)
class EdgeCut:
    """A cut through the thickness: degrees from square, below 0 where the face is the shorter
    side, and what it adds to the face. `setting` is what a square end has (`geometry/end.py`).
    `chamfer` is how deep a chamfer at that end reaches from the face, None for a cut all through.
    """

    degrees: Exact
    adds: Exact
    chamfer: Exact | None = None
    setting: str = "0°"

    def said(self, side):
        """The setting in words, seen by the person at the saw."""
        if sign(self.degrees) == 0:
            square = End("square", self.setting)
            return "square" if self.setting == "0°" else f"{square.cut}, {square.angle}"
        return f"{angle_text(abs(self.degrees))}, saw swung {self.swung(side)}"

    def swung(self, side):
        """Which way the front of the saw is swung for it, at the "left" or "right" end."""
        return side if sign(self.degrees) > 0 else {"left": "right", "right": "left"}[side]


@lazy
def edge_piece(show, name, thickness, back, cuts, *, note=None):
    """The drawing of a piece `thickness` inches thick, `back` inches long where it touches the
    fence, with two `EdgeCut`s. A long piece is drawn shortened by a conventional break. `note` is
    a line of its own. Where tips stand out at the back and at the face, so that the piece is longer
    than both, its length from tip to tip is a dimension too."""
    seen = _seen(thickness, back, cuts)
    thick, pixel = seen.thick, seen.pixel
    lengths = _lengths(show, back, cuts)
    ends = [f"{side} end: {cut.said(side)}" for side, cut in zip(_SIDES, cuts, strict=True)]
    foot = thick + (28 if len(lengths) > 2 else 0) * pixel
    left_edge, right_edge = seen.middle - seen.wide / 2, seen.middle + seen.wide / 2
    shapes = [
        *_wood(seen),
        *_dimensions(seen, back, lengths),
        *_top_edge(seen),
        label((left_edge, foot + 62 * pixel), ends[0], "note", "start"),
        label((right_edge, foot + 86 * pixel), ends[1], "note", "end"),
    ]
    words = (
        f"{name}, seen from above at the saw, top edge up, its back against the fence, its face "
        f"toward you. {', '.join(text for text, _ in lengths)}. "
        f"{'; '.join(ends)}."
    )
    low = foot + 100 * pixel
    if note:
        shapes.append(label((seen.middle, low + 8 * pixel), note))
        words, low = f"{words} {note}.", low + 24 * pixel
    return drawing(words, (left_edge, -64 * pixel, right_edge, low), shapes)


@dataclass(frozen=True, slots=True)
class _Seen:
    """What is seen, in inches of the drawing: the outline of each end from back to face, the piece
    from its `start` to its `stop`, and how wide the picture is."""

    thick: Fraction
    long: Fraction
    broken: bool
    ends: list
    start: Fraction
    stop: Fraction
    wide: Fraction

    @property
    def pixel(self):
        return self.wide / _SCREEN

    @property
    def middle(self):
        return (self.start + self.stop) / 2

    def between(self, share):
        """A place between the two ends where the piece has its whole thickness."""
        left, right = self.ends
        start, stop = max(x for x, _ in left), min(x for x, _ in right)
        return start + (stop - start) * share


def _seen(thickness, back, cuts):
    thick, whole = nearby(thickness), nearby(back)
    left, right = (min(max(nearby(cut.adds), -3 * thick), 3 * thick) for cut in cuts)
    long = min(whole, 5 * thick + max(0, -left) + max(0, -right))
    ends = [
        _end(corner, foot, cut, thick)
        for corner, foot, cut in zip((0, long), (-left, long + right), cuts, strict=True)
    ]
    start, stop = min(0, -left), max(long, long + right)
    wide = max((stop - start) * 9 / 8, thick * _SCREEN / _HIGHEST)
    return _Seen(thick, long, long < whole, ends, start, stop, wide)


def _end(corner, foot, cut, thick):
    """The outline of an end from back to face."""
    if cut.chamfer is None:
        return [(corner, 0), (foot, thick)]
    return [(corner, 0), (corner, thick - nearby(cut.chamfer)), (foot, thick)]


def _lengths(show, back, cuts):
    """(text, role) of back and face, and of tip to tip where neither is as long as that."""
    adds = [cut.adds for cut in cuts]
    face = back + adds[0] + adds[1]
    longer = sign(face - back)
    of_back = ("", "long point ", "short point ")[-longer]
    of_face = ("", "long point ", "short point ")[longer]
    roles = ("answer", "given") if longer < 0 else ("given", "answer")
    lengths = [
        (f"back: {of_back}{show.brief(back)}", roles[0]),
        (f"face: {of_face}{show.brief(face)}", roles[1]),
    ]
    if {sign(each) for each in adds} == {1, -1}:
        tips = back + sum(each for each in adds if sign(each) > 0)
        lengths.append((f"tip to tip {show.brief(tips)}", "answer"))
    return lengths


def _wood(seen):
    """The fence, the piece against it, and where the saw goes."""
    return [
        rectangle(seen.start, -_FENCE * seen.pixel, seen.stop, 0, "hatch"),
        label((seen.start + 2 * seen.pixel, -22 * seen.pixel), "fence", "note", "start"),
        *_stock(seen),
        *(_blade(*end[-2:], 14 * seen.pixel) for end in seen.ends),
    ]


def _stock(seen):
    """The wood: one outline, or two with a break between them, right of the middle."""
    left, right = seen.ends
    if not seen.broken:
        return [polygon([*left, *reversed(right)])]
    edge, far, breaks = break_across(seen.between(Fraction(7, 10)), 0, seen.thick)
    return [polygon([*reversed(left), *edge]), polygon([*far, *reversed(right)]), *breaks]


def _blade(corner, foot, beyond):
    """The saw's path, a little beyond the piece at its face."""
    (x0, y0), (x1, y1) = corner, foot
    along, across = x1 - x0, y1 - y0
    share = beyond / max(abs(along), across)
    return line((x0, y0), (x1 + along * share, y1 + across * share), "cut")


def _dimensions(seen, back, lengths):
    """Back, face, and tip to tip where it is told; a piece without a back tells that in a note."""
    pixel, (left, right) = seen.pixel, seen.ends
    (of_back, back_role), (of_face, face_role), *tips = lengths
    if sign(back) > 0:
        yield dimension(left[0], right[0], 44 * pixel, of_back, back_role)
    else:
        yield label((seen.middle, -44 * pixel), of_back, "note")
    yield dimension(right[-1], left[-1], 34 * pixel, of_face, face_role)
    for text, role in tips:
        ends = (seen.stop, seen.thick), (seen.start, seen.thick)
        yield dimension(*ends, 62 * pixel, text, role)


def _top_edge(seen):
    """Says which edge is seen, where there is room for it."""
    if seen.thick > 22 * seen.pixel and seen.long > 100 * seen.pixel:
        place = (seen.between(Fraction(3, 10)), seen.thick / 2)
        yield label(place, "top edge up", "note")
