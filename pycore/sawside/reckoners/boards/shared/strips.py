"""The strips of a glued-up panel: how many, how wide, out of which boards. Exact inches."""

from dataclasses import dataclass
from fractions import Fraction
from math import ceil
from typing import Any

from sawside.boards.widths import fewest
from sawside.errors import impossible
from sawside.reckoners.boards.shared.sold import exact

MOST_STRIPS = 60


@dataclass(frozen=True, slots=True)
class Strips:
    """The strips of one panel. `needed` is the width to be glued up, `places` which of the boards
    are used (from 0), None where all are alike: then `rip` is the width of one as it is told, with
    its mark, and `strip` what jointing leaves of that mark."""

    number: int
    needed: Fraction
    usable: tuple[Fraction, ...]
    places: tuple[int, ...] | None
    rip: Any = None
    strip: Fraction | None = None

    @property
    def glued(self):
        """How wide the panel is once it is glued."""
        if self.places is None:
            return self.number * self.strip
        return sum(self.usable[place] for place in self.places)

    @property
    def outer(self):
        """The width of the narrower outer strip."""
        if self.places is None:
            return self.strip
        return min(self.usable[self.places[0]], self.usable[self.places[-1]])


def strips_of(given, show):
    """The `Strips` of a panel; "impossible" where its boards don't make it."""
    boards = [exact(each, show) for each in given.boards]
    joint = exact(given.joint, show)
    usable = tuple(board - 2 * joint for board in boards)
    for number, left in enumerate(usable, 1):
        if left <= 0:
            raise impossible(
                f"Jointing takes all of board {number}, which is {show.brief(boards[number - 1])}.",
                "Joint less off each edge, or use a wider board.",
                "joint",
            )
    needed = exact(given.width, show) + exact(given.extra_width, show)
    return (_alike if len(boards) == 1 else _own)(given, show, boards, usable, needed)


def _alike(_given, show, boards, usable, needed):
    """As many as it takes of one width, all ripped alike."""
    number = ceil(needed / usable[0])
    if number > MOST_STRIPS:
        raise impossible(
            f"That’s {number} strips. The most is {MOST_STRIPS}.", "Use wider boards.", "boards"
        )
    joint = (boards[0] - usable[0]) / 2
    rip = show.rounded(needed / number + 2 * joint, "reach")
    if rip.mark >= boards[0]:  # the whole board, and not a mark more
        return Strips(number, needed, usable, None, boards[0], usable[0])
    return Strips(number, needed, usable, None, rip, rip.mark - 2 * joint)


def _own(given, show, boards, usable, needed):
    """Some of several boards, each as wide as it is."""
    if given.panels > 1:
        raise impossible(
            "Boards of their own widths make one panel at a time.",
            "Enter 1 panel, or one width that all boards have.",
            "panels",
        )
    places = fewest(usable, needed)
    if places is None:
        together = show.brief(sum(usable), "be there")
        raise impossible(
            f"Jointed, the boards are {together} wide together, and you need "
            f"{show.brief(needed, 'reach')}.",
            "Add a board, or enter one width that all have.",
            "boards",
        )
    return Strips(len(places), needed, usable, places)
