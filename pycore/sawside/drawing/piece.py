"""A piece as it lies on the bench, long side up, with a cut at each end."""

from dataclasses import dataclass

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import arc, break_across, dimension, drawing, label, line, polygon
from sawside.lengths.marks import exact_of
from sawside.lengths.real import Exact, nearby
from sawside.lengths.show import angle_text

_SCREEN = 328
"""Pixels of a drawing on a narrow phone: what is seen beside the piece keeps its size there."""
_ROOM = 40
"""Pixels that a piece must be high for its angle to be written inside it."""


@dataclass(frozen=True, slots=True)
class Cut:
    """A cut: degrees from square, and how much shorter it makes the short side.

    It crosses the face ("flat"), or the thickness ("edge": the blade is tilted).
    """

    degrees: Exact
    allowance: Exact
    way: str = "flat"


@lazy
def mitered_piece(show, width, long_side, short_side, cuts, *, given, thickness=None, rabbet=None):
    """The drawing of a piece with two cuts; `given`: "long", "short" or None, what was measured.

    Measures are exact inches; both sides may be rounded already. A long piece is drawn shortened by
    a conventional break. With a cut across the `thickness` the piece is seen from its outer edge;
    with one of each kind both views are drawn. `rabbet` is (how far its back lies from the inside,
    how long it is there).
    """
    left, right = (nearby(cut.allowance) for cut in cuts)
    views = _views(cuts, width, thickness)
    whole, largest = nearby(exact_of(long_side)), max(nearby(across) for _, across, _ in views)
    drawn = min(whole, left + right + 4 * largest)
    pixel = drawn * 9 / 8 / _SCREEN
    outline = ((0, 0), (drawn, 0), (drawn - right, 1), (left, 1))
    shapes, top, bottom = [], 0, 0
    for way, exact, seen in views:
        across = nearby(exact)
        bottom = top + across
        shapes += _view(way, outline, cuts, top, across, drawn < whole, pixel)
        middle = ((left + 2 * drawn - right) / 4, top + across / 2)
        shapes.append(label(middle, f"{show.brief(exact)} {seen}", "note"))
        top = bottom + 40 * pixel
    long_text, short_text = show.brief(long_side), show.brief(short_side)
    roles = ["given" if given == side else "answer" for side in ("long", "short")]
    short_ends = (drawn - right, bottom), (left, bottom)
    shapes += [
        dimension((0, 0), (drawn, 0), 30 * pixel, f"long point {long_text}", roles[0]),
        dimension(*short_ends, 30 * pixel, f"short point {short_text}", roles[1]),
        label((0, -50 * pixel), "left end", "note", "start"),
        label((drawn, -50 * pixel), "right end", "note", "end"),
    ]
    low = bottom + 52 * pixel
    if rabbet:
        shapes += _rabbet(show, rabbet, outline, bottom, nearby(views[0][1]), pixel)
        low += 26 * pixel
    middle, room = (left + drawn - right) / 2, 80 * pixel  # room for the text of the short side
    start, end = min(-drawn / 16, middle - room), max(drawn * 17 / 16, middle + room)
    words = _words(show, views, long_text, short_text, cuts, rabbet)
    return drawing(words, (start, -64 * pixel, end, low), shapes)


def _views(cuts, width, thickness):
    """(way, across, words) of each view: across the face, from the outer edge, or both."""
    ways = {cut.way for cut in cuts if cut.degrees != 0} or {"flat"}
    views = [("flat", width, "wide"), ("edge", thickness, "thick")]
    return [view for view in views if view[0] in ways]


def _words(show, views, long_text, short_text, cuts, rabbet):
    ends = " and ".join(f"{show.brief(across)} {seen}" for _, across, seen in views)
    how = [
        f"the {side} end is cut {'square' if cut.degrees == 0 else _cut_words(cut)}"
        for side, cut in zip(("left", "right"), cuts, strict=True)
    ]
    back = f" At the back of the rabbet it’s {show.brief(rabbet[1])}." if rabbet else ""
    return (
        f"A piece {ends}, long points up. Long point to long point it’s {long_text}, short point "
        f"to short point {short_text}.{back} From square, {how[0]}, {how[1]}."
    )


def _cut_words(cut):
    across = "across the face" if cut.way == "flat" else "through the thickness"
    return f"at {angle_text(cut.degrees)} {across}"


def _view(way, outline, cuts, top, across, broken, pixel):
    """The wood and the saw's paths; an end that is cut the other way hides its short corner."""
    corners, hidden = [], []
    for corner, foot, cut in ((0, 3, cuts[0]), (1, 2, cuts[1])):
        (x0, _), (x1, _) = outline[corner], outline[foot]
        other = cut.way != way and cut.degrees != 0
        corners.append(((x0, top), (x0 if other else x1, top + across)))
        if other:
            hidden.append(line((x1, top), (x1, top + across), "hidden"))
    (left, left_foot), (right, right_foot) = corners
    shapes = [*_stock((left, right, right_foot, left_foot), broken), *hidden]
    for cut, ends, way_out in ((cuts[0], corners[0], -1), (cuts[1], corners[1], 1)):
        if cut.way == way or cut.degrees == 0:
            shapes += _blade(cut, *ends, way_out, pixel)
    return shapes


def _stock(outline, broken):
    """The wood: one outline, or two with a break between them, right of the middle."""
    if not broken:
        return [polygon(outline)]
    top_left, top_right, bottom_right, bottom_left = outline
    top, across = top_left[1], bottom_left[1] - top_left[1]
    at = bottom_left[0] + (bottom_right[0] - bottom_left[0]) * 4 / 5
    edge, far, breaks = break_across(at, top, across)
    left, right = [top_left, *edge, bottom_left], [*far, bottom_right, top_right]
    return [polygon(left), polygon(right), *breaks]


def _blade(cut, corner, foot, way_out, pixel):
    """The saw's path, a little beyond the piece at both sides, and its angle from square."""
    (x0, y0), (x1, y1) = corner, foot
    beyond = 18 * pixel
    slope = (x1 - x0) / (y1 - y0)
    path = line((x0 - slope * beyond, y0 - beyond), (x1 + slope * beyond, y1 + beyond), "cut")
    if cut.degrees == 0:
        return [path]
    if y1 - y0 < _ROOM * pixel:
        place = (x1 - way_out * 22 * pixel, y1 + 14 * pixel)
        return [path, label(place, angle_text(cut.degrees), "note")]
    sweep = way_out * nearby(cut.degrees)
    square = line(corner, (x0, y1), "hidden")
    return [path, square, arc(corner, (y1 - y0) * 3 / 4, 90, sweep, angle_text(cut.degrees))]


def _rabbet(show, rabbet, outline, bottom, across, pixel):
    """The back of the rabbet as a hidden line, and its length below the short side's."""
    from_inside, long = nearby(rabbet[0]), rabbet[1]
    up = from_inside / across
    (x0, x1), (x3, x2) = ((outline[0][0], outline[1][0]), (outline[3][0], outline[2][0]))
    ends = [
        (x3 + (x0 - x3) * up, bottom - from_inside),
        (x2 + (x1 - x2) * up, bottom - from_inside),
    ]
    offset = 56 * pixel + from_inside
    return [
        line(*ends, "hidden"),
        dimension(ends[1], ends[0], offset, f"rabbet {show.brief(long)}", "given"),
    ]
