"""Shapes with dimensions in real units: what a reckoner draws, and the page only scales.

Places are inches of the drawn thing, x to the right and y down. They may be exact numbers or
floats; they leave here as floats rounded to a ten-thousandth, the same on every machine. Text
that tells a length is made elsewhere, from its mark: nothing is measured off a drawing.
"""

from itertools import pairwise

from sawside.lengths.real import nearby


def _place(value):
    return round(float(nearby(value) if not isinstance(value, float) else value), 4)


def _point(point):
    return [_place(coordinate) for coordinate in point]


def polygon(points, role="stock", part=None):
    """A filled outline; `role` is stock, waste, space, ghost or hatch. `part` is the key of the
    part that it is of: touched, that part is told."""
    told = {"kind": "polygon", "points": [_point(point) for point in points], "role": role}
    return told | {"part": part} if part else told


def rectangle(left, top, right, bottom, role="stock", part=None):
    """A filled outline with level and upright edges."""
    return polygon([(left, top), (right, top), (right, bottom), (left, bottom)], role, part)


def line(start, end, role="edge"):
    """A line; `role` is edge, center, cut, break or hidden."""
    return {"kind": "line", "from": _point(start), "to": _point(end), "role": role}


def dimension(start, end, offset, text, role="given", field=None):
    """A dimension line `offset` to the left of start to end, as seen going that way with y down.

    The page moves it further out where its text has no room, and the text beside it. `field` is the
    key of the field that was asked for this length: touched, it is opened.
    """
    told = {
        "kind": "dimension",
        "from": _point(start),
        "to": _point(end),
        "offset": _place(offset),
        "text": text,
        "role": role,
    }
    return told | {"field": field} if field else told


def label(at, text, role="name", align="middle"):
    """A text in the drawing; `role` is name or note, `align` start, middle or end.

    Where it could not be read the page puts it nearby, or farther off with a leader to `at`.
    """
    return {"kind": "label", "at": _point(at), "text": text, "align": align, "role": role}


def break_across(x, top, high):
    """A conventional break of a piece `high` from `top` down, from `x` on: the edge of its left
    part and that of its right one, from the top down, and the lines of both."""
    tooth, gap = high / 12, high / 8
    left = [(x + tooth * way, top + high * step / 3) for step, way in enumerate((0, 1, -1, 0))]
    right = [(place + gap, y) for place, y in left]
    return left, right, [line(*ends, "break") for side in (left, right) for ends in pairwise(side)]


def arc(center, radius, start, sweep, text):
    """An angle: degrees from the x axis, positive towards y (down), with its text."""
    return {
        "kind": "arc",
        "center": _point(center),
        "radius": _place(radius),
        "start": _place(start),
        "sweep": _place(sweep),
        "text": text,
    }


def circle(center, radius, role):
    """A circle, such as a hole."""
    return {"kind": "circle", "center": _point(center), "radius": _place(radius), "role": role}


def drawing(words, box, shapes):
    """A whole drawing: `words` for a screen reader, and the box (left, top, right, bottom)."""
    return {"words": words, "box": _point(box), "shapes": list(shapes)}
