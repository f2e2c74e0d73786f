"""What stands on a shelf, as simple outlines: on a bent one, and on the small pictures of a choice.

The figures are for the eye only, as parts of the height of the tallest thing drawn.
"""

from itertools import cycle

from sawside.drawing.shapes import rectangle

_BOOKS = ((0.2, (0.8,)), (0.16, (0.95,)), (0.24, (0.7,)), (0.18, (1,)), (0.14, (0.85,)))
_PLATES = ((0.9, (0.08,) * 7),)
_LAYERS = ((1, (0.2,) * 4),)
_BLOCKS = ((0.6, (0.6,)),)
ITEMS = {
    "books": _BOOKS,
    "books_heavy": ((0.3, (1,)), (0.24, (0.85,)), (0.34, (0.95,))),
    "records_12": ((0.11, (1,)),),
    "records_10": ((0.11, (0.82,)),),
    "singles": ((0.11, (0.58,)),),
    "shellac_12": ((0.15, (1,)),),
    "shellac_10": ((0.15, (0.82,)),),
    "reels_10": ((0.18, (0.9,)),),
    "reels_7": ((0.18, (0.6,)),),
    "compact_discs": ((0.12, (0.44,)),),
    "video_discs": ((0.14, (0.66,)),),
    "cassettes": ((0.24, (0.66,)),),
    "dishes": _PLATES,
    "cans": ((0.55, (0.08, 0.7, 0.08)),),
    "clothes": _LAYERS,
}
"""By the key of a load: items side by side, each its width and the heights of what is stacked."""

_APART = {"dishes": 0.25, "cans": 0.1, "clothes": 0.2}
_PLACES = {"even": ((0, 1),), "middle": ((0.4, 0.6),), "quarters": ((0.17, 0.33), (0.67, 0.83))}
"""Where it stands along the board, as parts of it."""


def standing(load, top, start, end, high, spread="even"):
    """The outlines of what stands from `start` to `end`; `top(x)` is where the board is there."""
    long = end - start
    for first, last in _PLACES[spread]:
        yield from _row(load, top, start + long * first, start + long * last, high)


def _row(load, top, start, end, high):
    items, apart = ITEMS.get(load, _BLOCKS), _APART.get(load, 0) * high
    widest = max(width for width, _ in items) * high
    spare = (end - start - widest) % (widest + apart) if len(items) == 1 else 0
    left = start = start + spare / 2
    for width, heights in cycle(items):
        right = left + width * high
        if left > start and left + widest > end + high / 100:
            return
        y = top((left + right) / 2)
        for height in heights:
            yield rectangle(left, y - height * high, right, y, "hatch")
            y -= height * high
        left = right + apart
