"""Whether a box goes straight through a doorway, and which way it is carried.

Level and straight ahead, with nothing tilted in the opening: one size of it is upright, one across
the opening, and it moves along the third.
"""

from dataclasses import dataclass
from fractions import Fraction
from itertools import permutations

LIES = {"height": "upright", "width": "on its side", "depth": "on its back"}
"""How a case lies, by which of its sizes is upright."""
_LEADS = {"height": "top first", "width": "side first", "depth": "back first"}


@dataclass(frozen=True, slots=True)
class Carried:
    """One way to carry it: `upright` and `across` are names of sizes; what is left free `beside`
    and `over` it in exact inches, less than 0 where it doesn't pass."""

    upright: str
    across: str
    along: str
    beside: Fraction
    over: Fraction

    @property
    def passes(self):
        """Whether it goes through; exact, and touching is passing."""
        return self.beside >= 0 and self.over >= 0

    @property
    def held(self):
        """How it is held, in words: "upright"."""
        return LIES[self.upright]

    @property
    def said(self):
        """How it is carried, in words: "upright, side first"."""
        return f"{self.held}, {_LEADS[self.along]}"


def carried(sizes, door_width, door_height):
    """The way with the most room on its tighter side. `sizes` are height, width and depth by name,
    exact inches. Of ways with as much room the first one counts, upright before lying."""
    ways = [
        Carried(upright, across, along, door_width - sizes[across], door_height - sizes[upright])
        for upright, across, along in permutations(LIES)
    ]
    passing = [way for way in ways if way.passes]
    return max(passing or ways, key=lambda way: min(way.beside, way.over))
