"""Whether a case can be stood up under a ceiling, and what to do where it can't.

Lying on its back and raised about its bottom back edge, the corner across from that edge passes
straight above it: there the case is as high as the diagonal of its side.
"""

from dataclasses import dataclass
from fractions import Fraction
from math import isqrt

from sawside.lengths.real import Exact, sqrt
from sawside.reckoners.declaration import Answer
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
TALLEST = (
    Answer("tallest", "Tallest that tips up", must="stay under"),
    Answer("tallest_box", "Tallest without its toe kick", must="stay under"),
)
"""Of a case in one piece, and of one that goes onto a base set first."""
TOO_DEEP = "It won’t tip up in one piece. It’s as deep as the ceiling is high."
LITTLE = Fraction(1, 2)
"""Of headroom, in inches: what is less is hardly any (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Box:
    """What is raised in one piece: `height` and `depth`, under a ceiling; then it's lifted onto a
    base as high as its separate `kick`, 0 for none. Exact inches."""

    height: Fraction
    depth: Fraction
    ceiling: Fraction
    kick: Fraction = Fraction(0)

    @property
    def above(self) -> Fraction:
        """What is left above it once it stands on its base; may be less than 0."""
        return self.ceiling - self.height - self.kick

    @property
    def spare(self) -> Exact:
        """What is left above it where it's least, on the way up or on its base; may be less than
        0."""
        return min(self.ceiling - self.diagonal, self.above)

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
        if room <= 0 or self.above < 0:
            return None
        least = self.height**2 / room
        return 1 + isqrt(-(-least.numerator // least.denominator) - 1)

    @property
    def limited(self) -> bool:
        """Whether tipping it up limits its height, and not already the ceiling above its base."""
        return self.tallest is not None and self.tallest + self.kick < self.ceiling

    def tallest_answer(self):
        """The one of `TALLEST` that it has, by its key; none where tipping up sets no limit."""
        if not self.limited:
            return {}
        return {"tallest_box" if self.kick else "tallest": self.tallest}


def onto_base(above):
    """What to say where hardly any room is left above a case on its base, or none; exact inches."""
    if above >= LITTLE:
        return
    yield (
        f"There’s {'hardly any' if above > 0 else 'no'} room to lift it onto its base. It has to "
        "go higher than it ends up to get there. Leave more of a gap above it, or assemble it on "
        "its base."
    )


def raised_line(show, box, name="Diagonal to tip it up"):
    """The line of working of a diagonal, told as it has to pass."""
    told = show.equals(show.rounded(box.diagonal, "reach"))
    return f"{name}: √({squared(show, box.height)} + {squared(show, box.depth)}){told}"


def tallest_line(show, box):
    """The line of working of the most height that passes."""
    told = show.equals(show.rounded(box.tallest, "stay under"))
    ceiling, depth = squared(show, box.ceiling), squared(show, box.depth)
    name = "Tallest without its toe kick" if box.kick else "Tallest that tips up"
    return f"{name}: √({ceiling} − {depth}){told}"


def deepest(height, ceiling):
    """The most depth with which something so high is tipped up; None where it's as high as the
    ceiling."""
    return sqrt(ceiling**2 - height**2) if height < ceiling else None


def deepest_line(show, height, ceiling):
    """The line of working of the most depth that passes."""
    told = show.equals(show.rounded(deepest(height, ceiling), "stay under"))
    return f"Deepest that tips up: √({squared(show, ceiling)} − {squared(show, height)}){told}"


def squared(show, length):
    """A length times itself, as arithmetic shows it."""
    number = show.number(length)
    return f"{number} × {number}"
