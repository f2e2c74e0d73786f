"""How a door fits its opening, seen from above: the case's side below, the door's edge over it."""

from sawside.drawing.choices.small import small
from sawside.drawing.shapes import polygon, rectangle

_SIDE = rectangle(0.1, 0.2, 0.3, 0.73)


def _door(words, left, top=0.02, side=_SIDE):
    """A door in front of the side from `left` on."""
    return small(words, side, rectangle(left, top, 0.95, top + 0.16, "hatch"))


DOOR_FITS = {
    "inset": _door("A door inside its opening, flush with the case.", 0.34, 0.2),
    "overlay": _door("A door that laps the case part of the way.", 0.22),
    "full": _door("A door that covers the edge of the case.", 0.12),
    "half": _door("A door that covers half of the edge it shares.", 0.22),
    "lipped": small(
        "A door with a rabbet in its edge, so a lip laps the case.",
        _SIDE,
        polygon(
            ((0.24, 0.1), (0.95, 0.1), (0.95, 0.32), (0.34, 0.32), (0.34, 0.18), (0.24, 0.18)),
            "hatch",
        ),
    ),
}
"""Inset, overlay of any lap, full, half, and lipped."""
