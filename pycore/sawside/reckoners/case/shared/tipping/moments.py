"""What turns a case about the front of its foot: moments in pounds times inches, exact."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

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

    @property
    def held(self):
        """What keeps the case down when nothing is in it, or less where its load works forward."""
        loaded = self.case.moment + (self.load.moment if self.load else 0)
        return min(self.case.moment, loaded)

    @property
    def tips(self):
        """What tips it."""
        return sum(each.moment for each in self.forces)

    @property
    def each(self):
        """Pounds on each anchor with the margin; 0 where it needs none.

        The anchors pull level and share alike: their pull times their height makes up for what
        the weight doesn't hold.
        """
        lacking = self.times * self.tips - self.held
        return max(lacking, Fraction(0)) / (self.anchor_height * self.anchors)

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
