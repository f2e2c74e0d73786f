"""Where the parts of a case stand in it: boxes in exact inches.

x goes from the case's left outside to the right, y from the floor up, z from the case's front back.
"""

from collections.abc import Callable
from dataclasses import dataclass, field
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Box:
    """A box from `left` to `right`, from `low` to `high`, from `front` to `back`. `notch` is a box
    cut out of one of its corners."""

    left: Fraction
    right: Fraction
    low: Fraction
    high: Fraction
    front: Fraction
    back: Fraction
    notch: "Box | None" = None

    @property
    def across(self):
        """From where to where it goes along x."""
        return self.left, self.right

    @property
    def upward(self):
        """The same along y."""
        return self.low, self.high

    @property
    def inward(self):
        """The same along z."""
        return self.front, self.back


@dataclass(frozen=True, slots=True)
class Placed:
    """Parts in their places, by the key of the part one box for each of its count.

    `outside` is the whole of a case, or of a frame before it. Of a case `inside` is what is clear,
    with no regard to dividers and shelves, `bays` are (left, right) of each bay, `openings` (low,
    high) of each opening between shelves whose heights are known; `shelves` stand in each bay.
    `levelled` says that all have one, `agrees` that what was laid out for the case is of these
    shelves. `loose` are the parts that can be taken out, `behind` those that close the case at its
    back, `strips` its edging, `covers` those that hide what is inside until they are opened.

    `spaces` are what its answers tell the width or height of: by the key of an answer and the
    number in its list (None for one that is no list) every box that is so wide or so high. Where
    one of a width and one of a height meet there is an opening.
    """

    parts: dict[str, tuple[Box, ...]]
    outside: Box | None = None
    inside: Box | None = None
    bays: tuple[tuple[Fraction, Fraction], ...] = ()
    openings: tuple[tuple[Fraction, Fraction], ...] = ()
    shelves: int = 0
    levelled: bool = True
    agrees: bool = True
    loose: frozenset[str] = frozenset()
    behind: frozenset[str] = frozenset()
    strips: frozenset[str] = frozenset()
    covers: frozenset[str] = frozenset()
    spaces: dict[tuple[str, int | None], tuple[Box, ...]] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Fills:
    """What fills an opening: the keys of the fields that take its width and its height, how
    (wide, high) the opening has to be in exact inches, and what stands in the `Box` of it."""

    fields: tuple[str, str]
    size: tuple[Fraction, Fraction]
    place: Callable[[Box], Placed]


def common(one, other):
    """What two boxes share, as far back as the first one goes; None where that is nothing."""
    left, low = max(one.left, other.left), max(one.low, other.low)
    right, high = min(one.right, other.right), min(one.high, other.high)
    if left >= right or low >= high:
        return None
    return Box(left, right, low, high, one.front, one.back)
