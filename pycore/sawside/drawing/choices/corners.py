"""Corners of walls, seen from above."""

from sawside.drawing.choices.small import small
from sawside.drawing.shapes import polygon

CORNERS = {
    "inside": small(
        "Two walls from above that close in on you, with molding along them.",
        polygon(((0, 0), (1, 0), (1, 0.2), (0.25, 0.2), (0.25, 0.75), (0, 0.75)), "hatch"),
        polygon(((0.25, 0.2), (1, 0.2), (1, 0.34), (0.39, 0.34))),
        polygon(((0.25, 0.2), (0.39, 0.34), (0.39, 0.75), (0.25, 0.75))),
    ),
    "outside": small(
        "Two walls from above that stick out at you, with molding around them.",
        polygon(((0.4, 0.34), (1, 0.34), (1, 0.75), (0.4, 0.75)), "hatch"),
        polygon(((0.24, 0.18), (1, 0.18), (1, 0.34), (0.4, 0.34))),
        polygon(((0.24, 0.18), (0.4, 0.34), (0.4, 0.75), (0.24, 0.75))),
    ),
}
"""An inside and an outside corner, with molding."""
