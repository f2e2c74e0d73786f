"""A shelf between the sides of its case, from the front: its ends large, its middle left out.

Drawn in pixels of a narrow screen.
"""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon

_WIDE, _SIDE, _HIGH = 316, 26, 84
_LEFT, _RIGHT = 30, 286
"""Where the inside faces of the sides are."""
_SHELF = (32, 54)
"""The top and the bottom of the shelf."""
_DEEP, _FREE = 13, 4
"""A dado's depth, and the clearance of a shelf."""


@lazy
def shelf_in_case(show, given, lengths):
    """`lengths` are (shelf, inside, width) in inches, rounded or not; `given` holds what was asked:
    joint, width_is and which of shelf and width is given."""
    shelf, inside, width = (show.brief(each) for each in lengths)
    is_dado, is_free = given.joint == "dado", given.joint in ("dado", "pins")
    deep = _DEEP if is_dado else 0
    end = deep - (_FREE if is_free else 0)
    asked, told = ("given", "answer") if given.shelf is not None else ("answer", "given")
    is_outside = given.width_is == "outside"
    top, bottom = _SHELF
    shapes = [
        *_side(_LEFT, -1, deep),
        *_side(_RIGHT, 1, deep),
        *_shelf(_LEFT - end, _RIGHT + end),
        dimension(
            (_LEFT, 0), (_RIGHT, 0), 20, f"inside {inside}", "answer" if is_outside else told
        ),
        dimension((_RIGHT + end, bottom), (_LEFT - end, bottom), 52, f"shelf {shelf}", asked),
        label((_WIDE / 2, _HIGH + 62), "ends drawn large", "note"),
    ]
    if is_outside:
        outer = (_LEFT - _SIDE, 0), (_RIGHT + _SIDE, 0)
        shapes.append(dimension(*outer, 44, f"case {width}", told))
    if is_dado:
        depth = show.brief(given.left_depth)
        shapes.append(label((_LEFT + 6, top - 12), f"dado {depth} deep", "note", "start"))
    words = (
        f"A shelf {shelf} long from the front, {_JOINTS[given.joint]} the sides of a case "
        f"{inside} wide inside. Its ends are drawn large."
    )
    return drawing(words, (0, -58 if is_outside else -34, _WIDE, _HIGH + 72), shapes)


_JOINTS = {"dado": "in dadoes in", "pins": "on pins between", "fixed": "tight between"}


def _side(face, way, deep):
    """A side from its inside `face` outward, with a dado `deep`, and the lines where it goes on."""
    out, floor = face + way * _SIDE, face + way * deep
    top, bottom = _SHELF
    inner = [(face, 0), (face, top), (floor, top), (floor, bottom), (face, bottom), (face, _HIGH)]
    yield polygon([(out, 0), *inner, (out, _HIGH)])
    for y in (0, _HIGH):
        yield line((out + way * 4, y), (face - way * 4, y), "break")


def _shelf(left, right):
    """The shelf from end to end, with a break in the middle."""
    top, bottom = _SHELF
    middle, tooth = (left + right) / 2, 5
    for start, stop, way in ((left, middle - 5, 1), (right, middle + 5, 1)):
        torn = [
            (stop + tooth, top + (bottom - top) / 3),
            (stop - tooth * way, top + (bottom - top) * 2 / 3),
        ]
        yield polygon([(start, top), (stop, top), *torn, (stop, bottom), (start, bottom)])
