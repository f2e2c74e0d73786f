"""How a shelf is held, seen from the front; where its edging is, seen from the end."""

from sawside.drawing.choices.small import small
from sawside.drawing.shapes import rectangle


def _held(words, left, right, board):
    return small(
        words,
        rectangle(*left, "hatch"),
        rectangle(*right, "hatch"),
        rectangle(board[0], 0.3, board[1], 0.42),
    )


SHELF_ENDS = {
    "resting": _held(
        "A shelf that rests on a support at each end.",
        (0.08, 0.42, 0.2, 0.7),
        (0.8, 0.42, 0.92, 0.7),
        (0.08, 0.92),
    ),
    "fixed": _held(
        "A shelf held fast between two sides.",
        (0.04, 0.05, 0.16, 0.7),
        (0.84, 0.05, 0.96, 0.7),
        (0.16, 0.84),
    ),
    "overhanging": _held(
        "A shelf that runs past its supports.",
        (0.24, 0.42, 0.36, 0.7),
        (0.64, 0.42, 0.76, 0.7),
        (0.02, 0.98),
    ),
}
"""Resting on supports, fixed at both ends, and past its supports."""

_BOARD = rectangle(0.2, 0.28, 0.8, 0.42)
_FRONT = rectangle(0.08, 0.28, 0.2, 0.62, "hatch")
_BACK = rectangle(0.8, 0.28, 0.92, 0.62, "hatch")
EDGED = {
    "none": small("A board from its end, its front at the left.", _BOARD),
    "front": small("A board from its end with edging along the front.", _BOARD, _FRONT),
    "back": small("A board from its end with edging along the back.", _BOARD, _BACK),
    "both": small("A board from its end with edging front and back.", _BOARD, _FRONT, _BACK),
}
"""Without edging, along the front, along the back, and both."""

EDGING_PLACES = {
    "edge": small("Edging on the front edge, flush with the top.", _BOARD, _FRONT),
    "under": small(
        "Edging under the front of the board.", _BOARD, rectangle(0.2, 0.42, 0.32, 0.7, "hatch")
    ),
}
"""Edging on the edge, or under the board."""
