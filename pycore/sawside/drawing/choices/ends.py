"""The ends of a piece: seen on its face, long side up; a bevel is seen on the edge."""

from sawside.drawing.choices.small import small, turned_over
from sawside.drawing.shapes import line, polygon, rectangle

_TOP, _LOW = 0.15, 0.55


def _cut(reach, words, *more):
    """A left end whose long side is `reach` longer than its short one."""
    return small(words, polygon(((0.1, _TOP), (1, _TOP), (1, _LOW), (0.1 + reach, _LOW))), *more)


_LEFT = {
    "square": _cut(0, "An end cut square across."),
    "45": _cut(0.4, "An end cut across the face at 45 degrees."),
    "other": _cut(
        0.22, "An end cut across the face at an angle.", line((0.32, 0.02), (0.32, 0.68), "center")
    ),
    "edge": small(
        "A board seen on its edge, its end cut through the thickness.",
        polygon(((0.1, 0.28), (1, 0.28), (1, 0.48), (0.3, 0.48))),
    ),
    "corner": small(
        "Two pieces that meet at a corner, both cut at half of it.",
        polygon(((0.08, 0.12), (1, 0.12), (1, 0.34), (0.26, 0.34))),
        polygon(((0.08, 0.12), (0.26, 0.34), (0.42, 0.75), (0.2, 0.75)), "ghost"),
    ),
    "unequal": small(
        "A narrow piece that meets a wide one.",
        polygon(((0.08, 0.12), (1, 0.12), (1, 0.3), (0.5, 0.3))),
        polygon(((0.08, 0.12), (0.5, 0.3), (0.5, 0.75), (0.08, 0.75)), "ghost"),
    ),
}
ENDS = {"left": _LEFT, "right": {key: turned_over(each) for key, each in _LEFT.items()}}
"""By the side, then by the way that an end is cut."""

_PANEL = rectangle(0.35, 0.36, 1, 0.75, "hatch")
_STRIP_ENDS = {
    "miter": small(
        "Edging from above, mitered to the next strip at the panel’s corner.",
        _PANEL,
        polygon(((0.13, 0.14), (1, 0.14), (1, 0.36), (0.35, 0.36))),
        polygon(((0.13, 0.14), (0.35, 0.36), (0.35, 0.75), (0.13, 0.75)), "ghost"),
    ),
    "inside": small(
        "Edging from above, mitered into the notch of a panel.",
        polygon(((0, 0.4), (1, 0.4), (1, 0.75), (0, 0.75)), "hatch"),
        rectangle(0, 0, 0.2, 0.4, "hatch"),
        polygon(((0.42, 0.18), (1, 0.18), (1, 0.4), (0.2, 0.4))),
        polygon(((0.2, 0), (0.42, 0), (0.42, 0.18), (0.2, 0.4)), "ghost"),
    ),
    "over": small(
        "Edging from above that covers the end of the next strip.",
        _PANEL,
        rectangle(0.13, 0.14, 1, 0.36),
        rectangle(0.13, 0.36, 0.35, 0.75, "ghost"),
    ),
    "chamfer": small(
        "Edging from above that covers the end of the next strip, its corner chamfered.",
        _PANEL,
        polygon(((0.25, 0.14), (1, 0.14), (1, 0.36), (0.13, 0.36), (0.13, 0.26))),
        rectangle(0.13, 0.36, 0.35, 0.75, "ghost"),
    ),
    "flush": small(
        "Edging from above that ends where the panel does.",
        _PANEL,
        rectangle(0.35, 0.14, 1, 0.36),
        rectangle(0.13, 0.14, 0.35, 0.75, "ghost"),
    ),
}
STRIP_ENDS = {
    "left": _STRIP_ENDS,
    "right": {key: turned_over(each) for key, each in _STRIP_ENDS.items()},
}
"""Those of the edging of a panel."""
