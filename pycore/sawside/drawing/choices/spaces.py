"""How a case is built in, seen from the front."""

from sawside.drawing.choices.small import small
from sawside.drawing.shapes import rectangle

_WALLS = {"left": rectangle(0.1, 0.03, 0.2, 0.72), "right": rectangle(0.8, 0.03, 0.9, 0.72)}


def _built(words, left, right, *walls):
    """A case from `left` to `right` on a floor, with these walls."""
    hatched = [_WALLS[wall] | {"role": "hatch"} for wall in walls]
    floor = rectangle(0.1, 0.66, 0.9, 0.72, "hatch")
    return small(words, *hatched, floor, rectangle(left, 0.12, right, 0.66))


BUILT_IN = {
    "walls": _built("A case between two walls.", 0.24, 0.76, "left", "right"),
    "left": _built("A case with a wall on its left.", 0.24, 0.66, "left"),
    "right": _built("A case with a wall on its right.", 0.34, 0.76, "right"),
    "free": _built("A case with no wall beside it.", 0.28, 0.72),
}
"""Between two walls, beside one, or beside none."""
