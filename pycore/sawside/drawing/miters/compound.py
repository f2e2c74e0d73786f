"""Leaning pieces: the section that shows the lean, and the face with both its mitered ends.

Drawn in pixels of a narrow screen. A lean or an end is drawn less steep where its texts need room.
"""

from math import cos, radians, sin

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import arc, dimension, drawing, label, line, polygon, rectangle

_WIDE = 316
_LONG, _HIGH = 200, 72
_MOST_SHIFT, _LEAST_SHIFT = 50, 14
_FACE_HIGH = _HIGH + 148


@lazy
def face_view(words, face):
    """The drawing of a face alone; `face` are the arguments of `face_shapes`."""
    return drawing(words, (0, 0, _WIDE, _FACE_HIGH), face_shapes(*face))


def face_shapes(name, edges, ends, width, top=0.0):
    """A face as seen in its place, from `top` down.

    `edges` are the (text, role) of the top and the bottom edge, `ends` the (shift, text) of both
    ends: how far the top edge goes beyond the bottom one, as a part of the width of the face.
    """
    left, right = (_shift(ratio) for ratio, _ in ends)
    start, high = (_WIDE - _LONG) / 2, top + 74
    low, end = high + _HIGH, start + _LONG
    corners = [(start - left, high), (end + right, high), (end, low), (start, low)]
    (upper, upper_role), (lower, lower_role) = edges
    return [
        polygon(corners),
        line(corners[3], corners[0], "cut"),
        line(corners[2], corners[1], "cut"),
        dimension(corners[0], corners[1], 20, upper, upper_role),
        dimension(corners[2], corners[3], 20, lower, lower_role),
        label((_WIDE / 2, high + 14), name, "name"),
        label((start + max(-left, 0) / 2 + 8, high + _HIGH / 2), "left", "note", "start"),
        label((end - max(-right, 0) / 2 - 8, high + _HIGH / 2), "right", "note", "end"),
        *([label((_WIDE / 2, low - 14), width, "note")] if width else ()),
        label((0, top + 16), f"left: {ends[0][1]}", "note", "start"),
        label((_WIDE, low + 52), f"right: {ends[1][1]}", "note", "end"),
    ]


def _shift(ratio):
    """How far an end leans in the drawing: `ratio` of the height, kept within what is legible."""
    if ratio == 0:
        return 0.0
    size = min(max(abs(ratio) * _HIGH, _LEAST_SHIFT), _MOST_SHIFT)
    return size if ratio > 0 else -size


@lazy
def crown_drawing(words, degrees, texts, face):
    """The molding's section between wall and ceiling, above its face.

    `degrees` is the spring as a float; `texts` are the spring's, the (drop, role) and the
    (projection, role); `face` are the arguments of `face_shapes`.
    """
    turn = radians(min(max(degrees, 20), 70))
    out, down = 150 * sin(turn), 150 * cos(turn)
    wall, ceiling = 112.0, 46.0
    foot, tip = (wall, ceiling + down), (wall + out, ceiling)
    seat_down, seat_out = down * 0.3, out * 0.3
    spring, drop, projection = texts
    low = ceiling + down + 24
    shapes = [
        rectangle(wall - 10, ceiling - 10, wall, low, "hatch"),
        rectangle(wall, ceiling - 10, _WIDE, ceiling, "hatch"),
        polygon([foot, (wall, ceiling + down - seat_down), (tip[0] - seat_out, ceiling), tip]),
        label((wall + out / 2 + 22, ceiling + down / 2 + 22), f"spring {spring}", "name", "start"),
        arc(foot, 34, -90, min(max(degrees, 20), 70), ""),
        label((wall - 18, low - 6), "wall", "note", "end"),
        label((_WIDE, ceiling + 14), "ceiling", "note", "end"),
    ]
    if drop:
        behind = wall - 10
        shapes.append(dimension((behind, ceiling + down), (behind, ceiling), 44, *drop))
        shapes.append(dimension((wall, ceiling), tip, 26, *projection))
    top = low + 8
    shapes += face_shapes(*face, top=top)
    return drawing(words, (0, 0, _WIDE, top + _FACE_HIGH), shapes)


@lazy
def box_drawing(words, degrees, texts, face):
    """A side's section, leaning out to its wide rim, above its face.

    `degrees` is the lean as a float, `texts` are the slope's, the height's and the slant's, and
    whether the top is the wide one; `face` are the arguments of `face_shapes`.
    """
    slope, height, slant, wide_top = texts
    turn = radians(min(degrees, 40))
    out, up, thick = 110 * sin(turn), 110 * cos(turn), 14.0
    left, top = 96.0, 24.0
    side = thick / cos(turn)
    high, low = (out, 0.0) if wide_top else (0.0, out)
    corners = [
        (left + high, top),
        (left + high + side, top),
        (left + low + side, top + up),
        (left + low, top + up),
    ]
    foot = corners[2] if wide_top else corners[1]
    plumb = (foot[0], top if wide_top else top + up)
    shapes = [
        polygon(corners),
        line(foot, plumb, "hidden"),
        line((left - 40, top + up), (left + out + 90, top + up), "center"),
        dimension((left - 20, top + up), (left - 20, top), 30, height, "given"),
        label((left + out + side + 14, top + up / 2 - 11), slope, "name", "start"),
        label((left + out + side + 14, top + up / 2 + 13), slant, "note", "start"),
    ]
    below = top + up + 14
    shapes += face_shapes(*face, top=below)
    return drawing(words, (0, 0, _WIDE, below + _FACE_HIGH), shapes)
