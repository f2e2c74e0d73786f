"""The floor and the ceiling of a space, seen from a level line at the floor's high point.

A level case stands on the high point, shimmed at the other end. A height is taken from the floor at
its own side: where the floor is low, the ceiling is that much nearer the level line than it reads.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.reckoners.case.shared.space.walls import SIDES


@dataclass(frozen=True, slots=True)
class Heights:
    """By the side: `measured` from floor to ceiling, `drops` of the floor below its high point;
    `between` are heights measured at even steps from the left side to the right one."""

    measured: dict[str, Fraction]
    drops: dict[str, Fraction]
    between: tuple[Fraction, ...] = ()

    def ceiling(self, side):
        """Of the ceiling above the high point of the floor."""
        return self.measured[side] - self.drops[side]

    def floor_between(self, at):
        """How far the floor is below its high point at one of the places between, from 0."""
        part = Fraction(at + 1, len(self.between) + 1)
        return self.drops["left"] * (1 - part) + self.drops["right"] * part

    @property
    def ceilings(self):
        """Of the ceiling above the high point, wherever it was measured, from left to right."""
        between = [each - self.floor_between(at) for at, each in enumerate(self.between)]
        return [self.ceiling("left"), *between, self.ceiling("right")]

    @property
    def clear(self):
        """From the high point to where the ceiling is lowest; may be less than 0."""
        return min(self.ceilings)

    @property
    def lowest(self):
        """The least that a tape reads from floor to ceiling, where the case is tipped up."""
        return min(*self.measured.values(), *self.between)

    @property
    def low_side(self):
        """The side where the floor is low, or None where it is level."""
        return next((side for side in SIDES if self.drops[side]), None)

    @property
    def drop(self):
        """Of the floor from one end to the other."""
        return max(self.drops.values())


def heights_of(given):
    """The `Heights` of a form."""
    left = given.left_height
    right = left if given.right_height is None else given.right_height
    out = given.floor_out if given.floor != "level" else Fraction(0)
    return Heights(
        measured={"left": left, "right": right},
        drops={side: out if given.floor not in ("level", side) else Fraction(0) for side in SIDES},
        between=tuple(given.between or ()),
    )


def check_line(given, show, heights, height):
    """Refuse a level line above a case `height` high (`Rounded`), where it's needed."""
    if heights.low_side and given.line > height.mark:
        raise Refusal(
            "impossible",
            f"A level line {show.text(given.line)} up is above the case, which is "
            f"{show.text(height)} high.",
            "Enter a lower level line.",
            field="line",
        )
