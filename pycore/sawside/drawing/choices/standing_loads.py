"""What may stand on a shelf, seen from the front."""

from sawside.drawing.choices.small import small
from sawside.drawing.shapes import rectangle
from sawside.drawing.shelves.standing import ITEMS, standing

_TOP, _TALLEST = 0.62, 0.48


def _standing(load):
    words = f"A shelf with {load.replace('_', ' ')} on it."
    items = standing(load, lambda _: _TOP, 0.06, 0.94, _TALLEST)
    return small(words, *items, rectangle(0, _TOP, 1, _TOP + 0.09))


STANDING = {load: _standing(load) for load in ITEMS}
"""By the key of a load that is a thing."""
