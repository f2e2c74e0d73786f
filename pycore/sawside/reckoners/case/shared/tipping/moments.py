"""What turns a case about the front of its foot: moments in pounds times inches, exact."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from sawside.geometry.angles import arctangent

LEAST_RATING = Fraction(50)
"""Pounds that any furniture anchor is tested with (ASTM F3096, from memory)."""


@dataclass(frozen=True, slots=True)
class Turning:
    """A weight or a pull, and how far from the front of the foot it works.

    `pounds` and `inches` are exact; `inches` is below 0 where it turns the other way.
    """

    name: str
    pounds: Fraction
    inches: Fraction

    @property
    def moment(self):
        """Pounds times inches about the front of the foot."""
        return self.pounds * self.inches


@dataclass(frozen=True, slots=True)
class Tipping:
    """A case at rest with all that is asked of it at once (statics: moments about the edge that it
    would tip over)."""

    case: Turning
    load: Turning | None
    forces: tuple[Turning, ...]
    anchor_height: Any
    anchors: int
    times: Fraction
    state: str = "worst"
    height: Any = 0

    @property
    def loaded(self):
        """Whether it is judged as it is loaded, and not as it is worse."""
        return self.state != "worst"

    @property
    def _full(self):
        return self.case.moment + (self.load.moment if self.load else 0)

    @property
    def held(self):
        """What keeps the case down as it's judged."""
        return self._full if self.loaded else self.held_at_worst

    @property
    def held_at_worst(self):
        """What keeps it down when nothing is in it, or less where its load works forward."""
        return min(self.case.moment, self._full)

    @property
    def center(self):
        """How high the middle of all the weight is, exact: of a case by itself at half its height,
        so is a load in all of it; one in its upper half only is at three quarters."""
        part = Fraction(3 if self.state == "above" else 2, 4)
        load = self.load.pounds if self.load else Fraction(0)
        return self.height * (self.case.pounds / 2 + load * part) / (self.case.pounds + load)

    @property
    def balance(self):
        """Degrees, exact, that it leans when it falls by itself; None where it stands no longer."""
        arm = self.case.inches
        return arctangent(arm / self.center) if arm > 0 else None

    @property
    def tips(self):
        """What tips it."""
        return sum(each.moment for each in self.forces)

    @property
    def each(self):
        """Pounds on each anchor with the margin; 0 where it needs none. The case is as it is worse.

        The anchors pull level and share alike: their pull times their height makes up for what
        the weight doesn't hold.
        """
        return self.each_of(self.anchors)

    @property
    def all_of_it(self):
        """What the anchors together take: with the margin, and the case as it is worse."""
        return max(self.times * self.tips - self.held_at_worst, Fraction(0))

    def each_of(self, anchors):
        """Pounds on each of so many anchors."""
        return self.all_of_it / (self.anchor_height * anchors)

    @property
    def rating(self):
        """Pounds that each anchor has to be rated: its pull, and never less than any is tested."""
        return max(self.each, LEAST_RATING)

    @property
    def margin(self):
        """How many times what tips it its weight holds; None where nothing tips it."""
        return max(self.held, Fraction(0)) / self.tips if self.tips else None

    def least_climber(self):
        """Pounds of the lightest climber that tips it; None where none does."""
        climber, *others = self.forces
        if climber.inches <= 0:
            return None
        return max(self.held - sum(each.moment for each in others), Fraction(0)) / climber.inches
