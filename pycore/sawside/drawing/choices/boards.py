"""Boards seen at their end: how they were sawn, and how two strips are put together."""

from sawside.drawing.choices.small import small
from sawside.drawing.shapes import arc, line, rectangle

_BOARD = rectangle(0.05, 0.2, 0.95, 0.55)

SAWN = {
    "flat": small(
        "The end of a board whose growth rings run along its face.",
        _BOARD,
        *(arc((0.5, 1.3), radius, -113, 46, "") for radius in (0.82, 0.93, 1.04)),
    ),
    "quarter": small(
        "The end of a board whose growth rings stand up.",
        _BOARD,
        *(line((x, 0.2), (x, 0.55), "center") for x in (0.2, 0.35, 0.5, 0.65, 0.8)),
    ),
    "between": small(
        "The end of a board whose growth rings slant.",
        _BOARD,
        *(line((x, 0.55), (x + 0.3, 0.2), "center") for x in (0.1, 0.25, 0.4, 0.55)),
    ),
}
"""How a board was sawn, by its growth rings."""

_CASE = rectangle(0, 0, 0.12, 0.75, "hatch")
STRIPS_LAID = {
    "flat": small(
        "Two strips that lie flat against the case, the narrow one on the wide one.",
        _CASE,
        rectangle(0.12, 0.4, 0.82, 0.6),
        rectangle(0.12, 0.2, 0.55, 0.4),
    ),
    "above": small(
        "Two strips on edge against the case, one above the other.",
        _CASE,
        rectangle(0.12, 0.3, 0.3, 0.75),
        rectangle(0.12, 0.02, 0.3, 0.3),
    ),
    "before": small(
        "Two strips on edge against the case, the narrow one in front.",
        _CASE,
        rectangle(0.12, 0.1, 0.3, 0.75),
        rectangle(0.3, 0.35, 0.48, 0.75),
    ),
}
"""How two strips of one board are put together, seen at their end."""
