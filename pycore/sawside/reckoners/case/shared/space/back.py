"""The back wall of a space: what its lean and a baseboard leave of the depth."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.reckoners.case.shared.space.walls import lean_of


@dataclass(frozen=True, slots=True)
class Back:
    """`depths` that were read, at the `read_at` "floor" or "ceiling"; `lean` of the wall into the
    space at the top (less than 0: away from it); `base` is what a baseboard takes at the floor.
    Exact inches."""

    depths: tuple[Fraction, ...]
    read_at: str
    lean: Fraction
    base: Fraction

    @property
    def at_floor(self):
        """The least depth at the floor, above a baseboard."""
        return min(self.depths) + (self.lean if self.read_at == "ceiling" else 0)

    @property
    def takes(self):
        """How far wall or baseboard stands into the space at most, beyond the wall's foot."""
        return max(self.lean, self.base, Fraction(0))

    @property
    def clear(self):
        """The depth at every height; may be less than 0."""
        return self.at_floor - self.takes


def back_of(given):
    """The `Back` of a form; None where no depth was read."""
    depths = tuple(each for each in (given.left_depth, given.right_depth) if each is not None)
    if not depths:
        return None
    clear_of_it = given.baseboard and given.at_baseboard == "front"
    base = given.baseboard if clear_of_it else Fraction(0)
    return Back(depths, given.depth_at or "floor", lean_of(given, "back"), base)
