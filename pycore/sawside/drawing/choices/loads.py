"""Where the load is on a shelf, seen from the front."""

from sawside.drawing.choices.small import small
from sawside.drawing.shapes import line, polygon, rectangle

_SHELF = (
    rectangle(0, 0.45, 1, 0.57),
    polygon(((0.02, 0.73), (0.08, 0.57), (0.14, 0.73)), "hatch"),
    polygon(((0.86, 0.73), (0.92, 0.57), (0.98, 0.73)), "hatch"),
)


def _pressed(words, *places):
    """A shelf with an arrow down at each place."""
    down = [line((x, 0.1), (x, 0.36)) for x in places]
    heads = [polygon(((x - 0.05, 0.32), (x + 0.05, 0.32), (x, 0.44)), "hatch") for x in places]
    return small(words, *_SHELF, *down, *heads)


LOADS_ON = {
    "even": _pressed("A shelf loaded all along.", 0.1, 0.3, 0.5, 0.7, 0.9),
    "middle": _pressed("A shelf with one load at its center.", 0.5),
    "quarters": _pressed("A shelf with two loads, a quarter in from each end.", 0.25, 0.75),
}
"""The load of a shelf: all along, at the center, or half at each quarter point."""
