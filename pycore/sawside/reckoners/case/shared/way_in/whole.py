"""Whether a case goes in whole, all the way, and in how many boxes it would."""

from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from sawside.lengths.words import counted
from sawside.reckoners.case.shared.doorway import carried
from sawside.reckoners.case.shared.standing_up import Box
from sawside.reckoners.case.shared.way_in.stair import Stair

_MOST_BOXES = 12
"""More than anybody carries through a door and round a stair."""


@dataclass(frozen=True)
class Journey:
    """The `box` that is raised, its `sizes` by name (the width is None where nobody asked for it),
    the (width, height) of a `door` and a `stair`, None where there is none to check."""

    box: Box
    sizes: dict
    door: tuple[Fraction, Fraction] | None
    stair: Stair | None

    @cached_property
    def sideways(self):
        """The same box raised off its side, where that passes and off its back doesn't, or None."""
        if self.box.stands_up or self.sizes["width"] is None:
            return None
        box = self.box
        other = Box(box.height, self.sizes["width"], box.ceiling, box.kick)
        return other if other.stands_up else None

    @property
    def stands_up(self):
        """Whether it tips up, off its back or off its side."""
        return self.box.stands_up or self.sideways is not None

    @property
    def stuck(self):
        """Whether it just goes under the ceiling on its base, but not onto it."""
        return bool(self.box.kick) and self.box.above == 0

    @cached_property
    def through(self):
        """How it is best `carried` through the doorway; None without one."""
        return None if self.door is None else carried(self.sizes, *self.door)

    @cached_property
    def round(self):
        """The `Way` round the stair; None where there is none, or no stair."""
        return None if self.stair is None else self.stair.way(self.sizes)

    @cached_property
    def tallest_round(self):
        """The most height of this width and depth that goes round the stair; 0 where none does."""
        return self.stair.tallest(self.sizes)

    @cached_property
    def nearest(self):
        """That `Way`, or that of the tallest case that would go; None where none would, or without
        a stair."""
        if self.stair is None or self.round or not self.tallest_round:
            return self.round
        return self.stair.way(self.sizes | {"height": self.tallest_round})

    @property
    def whole(self):
        """Whether it goes in as it is."""
        return self.box.above >= 0 and not self.stuck and self._passes

    @property
    def _passes(self):
        through = self.through is None or self.through.passes
        return self.stands_up and through and (self.stair is None or self.round is not None)

    @cached_property
    def boxes(self):
        """In how many boxes of one height, stacked where it stands, it goes in; None where it goes
        in whole, or where no number of boxes helps, with a way in to check none up to a dozen."""
        if self._passes or self.box.above < 0:
            return None
        if self.sizes["width"] is None:
            return self.box.boxes
        return next((many for many in range(2, _MOST_BOXES + 1) if self._in(many)._passes), None)

    def _in(self, many):
        """The same way for one of so many boxes."""
        high = self.box.height / many
        box = Box(high, self.box.depth, self.box.ceiling, self.box.kick)
        return Journey(box, self.sizes | {"height": high}, self.door, self.stair)

    @property
    def said(self):
        """Yes or no, in a sentence without its end."""
        if self.whole:
            return "Yes, it goes in whole"
        if self.boxes is None or self.stuck:
            return "No, it doesn’t go in"
        return f"Not whole: in {counted(self.boxes, 'box', 'boxes')}"
