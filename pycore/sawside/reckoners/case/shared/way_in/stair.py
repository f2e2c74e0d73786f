"""Round the turn of a stair: how a case is carried there, level or with one end tilted up."""

from dataclasses import dataclass
from fractions import Fraction
from itertools import permutations

from sawside.lengths.real import enclosed, sqrt
from sawside.reckoners.case.shared.doorway import LIES
from sawside.reckoners.case.shared.way_in.turn import FINE, goes_round, most

_END = {"height": "top", "width": "side", "depth": "back"}
_BITS = 64


@dataclass(frozen=True, slots=True)
class Stair:
    """A square turn, level: how wide it is `below` and `above` it, and its least `headroom`."""

    below: Fraction
    above: Fraction
    headroom: Fraction

    def takes(self, sizes):
        """Whether a case of these `sizes` goes round in any way."""
        return self.way(sizes) is not None

    def is_tight(self, sizes, spare):
        """Whether it takes them with less than so much to `spare` in its widths or its headroom."""
        less = Stair(self.below - spare, self.above - spare, self.headroom - spare)
        return self.takes(sizes) and not less.takes(sizes)

    def way(self, sizes):
        """The first `Way` that passes: level before tilted, upright before lying; or None. `sizes`
        are height, width and depth by name, exact inches."""
        return next((way for way in ways(self, sizes) if way.passes), None)

    def tallest(self, sizes):
        """The most height of a case so wide and deep that goes round; 0 where none does. As high as
        the headroom, or as wide as a flight, it's exact."""

        def fits(high):
            return self.takes(sizes | {"height": high})

        found = most(fits, 2 * (self.below + self.above + self.headroom))
        given = (self.below, self.above, self.headroom)
        near = [each for each in given if 0 < each - found <= Fraction(1, FINE) and fits(each)]
        return max(near, default=found)


@dataclass(frozen=True, slots=True)
class Way:
    """One way to carry a case round a `stair`: `upright`, `along` and `across` are names of its
    `sizes`; `tilted` where the end that is `along` is raised as far as the headroom allows."""

    stair: Stair
    sizes: dict
    upright: str
    along: str
    across: str
    tilted: bool

    @property
    def plan(self):
        """How long it is in plan: exact, or up to a fraction where that is irrational."""
        if not self.tilted:
            return self.sizes[self.along]
        _, high = enclosed(self.tilted_plan, _BITS)
        return Fraction(high, 1 << _BITS)

    @property
    def tilted_plan(self):
        """The same with its end up under the ceiling, exact: of a diagonal turned that far."""
        long, high = self.sizes[self.along], self.sizes[self.upright]
        room, square = self.stair.headroom, long**2 + high**2
        root = sqrt(square - room**2)
        return (root * (long**2 - high**2) + 2 * long * high * room) / square

    @property
    def passes(self):
        """Whether it goes under the ceiling and round."""
        stair = self.stair
        if self.sizes[self.upright] > stair.headroom:
            return False
        return goes_round(self.plan, self.sizes[self.across], stair.below, stair.above)

    @property
    def said(self):
        """How it is carried, in words: "on its back, tilted top up"."""
        tilted = f", tilted {_END[self.along]} up" if self.tilted else ""
        return f"{LIES[self.upright]}{tilted}"


def ways(stair, sizes):
    """Every `Way`, the plain ones first. Tilted is only what a ceiling keeps from standing up."""
    level = [
        ("height", "width", "depth"),
        ("width", "height", "depth"),
        ("depth", "height", "width"),
    ]
    for upright, along, across in level:
        yield Way(stair, sizes, upright, along, across, tilted=False)
    for upright, along, across in permutations(LIES):
        long, high, room = sizes[along], sizes[upright], stair.headroom
        if high < room and long > high and long**2 + high**2 > room**2:
            yield Way(stair, sizes, upright, along, across, tilted=True)
