"""What is measured: a line with arrows shows where."""

from sawside.drawing.choices.small import small
from sawside.drawing.shapes import dimension, line, polygon, rectangle

_MITERED = polygon(((0.05, 0.22), (0.95, 0.22), (0.67, 0.5), (0.33, 0.5)))

MITERED_SIDES = {
    "inside": small(
        "A piece mitered at both ends, measured along its short side.",
        _MITERED,
        dimension((0.33, 0.5), (0.67, 0.5), -0.16, ""),
    ),
    "outside": small(
        "A piece mitered at both ends, measured along its long side.",
        _MITERED,
        dimension((0.05, 0.22), (0.95, 0.22), 0.13, ""),
    ),
    "rabbet": small(
        "A piece mitered at both ends, measured along a line inside it.",
        _MITERED,
        line((0.23, 0.4), (0.77, 0.4), "hidden"),
        dimension((0.23, 0.4), (0.77, 0.4), -0.26, ""),
    ),
}
"""The side of a mitered piece that was measured."""

_CASE = (
    rectangle(0.08, 0.05, 0.2, 0.7),
    rectangle(0.8, 0.05, 0.92, 0.7),
    rectangle(0.2, 0.58, 0.8, 0.68, "hatch"),
)
CASE_WIDTHS = {
    "inside": small(
        "A case from the front, measured between its sides.",
        *_CASE,
        dimension((0.2, 0.3), (0.8, 0.3), 0, ""),
    ),
    "outside": small(
        "A case from the front, measured across both sides.",
        *_CASE,
        dimension((0.08, 0.3), (0.92, 0.3), 0, ""),
    ),
}
"""The width of a case, inside or outside."""

_CHAMFERED = polygon(((0.05, 0.2), (0.5, 0.2), (0.8, 0.5), (0.8, 0.75), (0.05, 0.75)))
_CORNER = (line((0.5, 0.2), (0.8, 0.2), "hidden"), line((0.8, 0.2), (0.8, 0.5), "hidden"))
CHAMFERS = {
    "face": small(
        "A chamfer at the corner of a board, measured back along the face.",
        _CHAMFERED,
        *_CORNER,
        dimension((0.5, 0.2), (0.8, 0.2), 0.11, ""),
    ),
    "edge": small(
        "A chamfer at the corner of a board, measured down the edge.",
        _CHAMFERED,
        *_CORNER,
        dimension((0.8, 0.2), (0.8, 0.5), 0.11, ""),
    ),
    "width": small(
        "A chamfer at the corner of a board, measured across the cut.",
        _CHAMFERED,
        dimension((0.5, 0.2), (0.8, 0.5), 0.11, ""),
    ),
}
"""What of a chamfer is known."""
