"""The one size of these drawings, and what turns one over."""

from sawside.drawing.shapes import drawing

WIDE, HIGH = 1.0, 0.75


def small(words, *shapes):
    """A small drawing; `words` say what is seen."""
    return drawing(words, (0, 0, WIDE, HIGH), shapes)


def turned_over(picture):
    """The same as in a mirror: a left end becomes a right one. Only of polygons and lines."""
    return picture | {"shapes": [_mirrored(shape) for shape in picture["shapes"]]}


def _mirrored(shape):
    if "points" in shape:
        return shape | {"points": [_across(point) for point in shape["points"]]}
    return shape | {"from": _across(shape["from"]), "to": _across(shape["to"])}


def _across(point):
    return [round(WIDE - point[0], 4), point[1]]
