"""Whether a case can be stood up under a ceiling, and what to do where it can't.

Lying on its back and raised about its bottom back edge, the corner across from that edge passes
straight above it: there the case is as high as the diagonal of its side.
"""

from dataclasses import dataclass
from fractions import Fraction
from math import isqrt

from sawside.lengths.real import Exact, sqrt
from sawside.wood.caution import Caution

TIPPING = Caution(
    "Tip it up with a helper.",
    "Tip a tall case up with two people or more. Keep feet and fingers out from under the bottom "
    "edge, take doors, drawers and shelves out first, and pad the floor.",
)
ANCHOR = Caution(
    "Fasten it to studs: a tall case can tip over.",
    "Fasten a tall case to the wall before you load it: it can tip over. Screw into studs, follow "
    "the anchor’s instructions and local code, and don’t climb it or let anyone else.",
)


@dataclass(frozen=True, slots=True)
class Box:
    """What is raised in one piece: `height` and `depth`, under a ceiling; exact inches."""

    height: Fraction
    depth: Fraction
    ceiling: Fraction

    @property
    def diagonal(self) -> Exact:
        """How high it gets on the way up; irrational as a rule."""
        return sqrt(self.height**2 + self.depth**2)

    @property
    def stands_up(self) -> bool:
        """Whether it passes under the ceiling; exact, and touching it is passing."""
        return self.height**2 + self.depth**2 <= self.ceiling**2

    @property
    def tallest(self) -> Exact | None:
        """The most height of this depth that passes; None where it doesn't go under it lying."""
        room = self.ceiling**2 - self.depth**2
        return sqrt(room) if room > 0 else None

    @property
    def boxes(self) -> int | None:
        """In how many boxes of one height, each raised by itself and stacked, it stands; None where
        it can't. The least n with (height / n)² + depth² up to ceiling²."""
        room = self.ceiling**2 - self.depth**2
        if room <= 0 or self.height > self.ceiling:
            return None
        least = self.height**2 / room
        return 1 + isqrt(-(-least.numerator // least.denominator) - 1)


def raised_line(show, box, name="Diagonal to tip it up"):
    """The line of working of a diagonal, told as it has to pass."""
    told = show.equals(show.rounded(box.diagonal, "reach"))
    return f"{name}: √({squared(show, box.height)} + {squared(show, box.depth)}){told}"


def tallest_line(show, box):
    """The line of working of the most height that passes."""
    told = show.equals(show.rounded(box.tallest, "stay under"))
    ceiling, depth = squared(show, box.ceiling), squared(show, box.depth)
    return f"Tallest that tips up: √({ceiling} − {depth}){told}"


def squared(show, length):
    """A length times itself, as arithmetic shows it."""
    number = show.number(length)
    return f"{number} × {number}"
