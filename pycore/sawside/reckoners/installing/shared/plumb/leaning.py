"""How a case leans, by readings off a plumb line, and how much of that is racking. Exact inches.

Between two readings a side is as long as they are `apart` along it. A case that was turned by an
angle leans by apart × its sine there, and one end of its foot is lower by width × the same sine:
so the shim under that end is lean × width / apart.
"""

from dataclasses import dataclass
from fractions import Fraction
from types import SimpleNamespace

from sawside.errors import Refusal, left_blank
from sawside.reckoners.tape.shared.racked import racked


@dataclass(frozen=True, slots=True)
class Lean:
    """How one way of a case leans: `much` of it, to the right or back where it's more than 0, over
    `apart`; `racking` is that part of it that no shim takes away. `span` is from one foot to the
    other, or None. `ends` are (where it leans below 0, and above)."""

    much: Fraction
    apart: Fraction
    span: Fraction | None
    ends: tuple[str, str]
    racking: Fraction = Fraction(0)

    @property
    def tilt(self):
        """What of the lean is the floor's."""
        return self.much - self.racking

    @property
    def way(self):
        """The end that it leans to; "" of none."""
        return "" if not self.much else self.ends[self.much > 0]

    @property
    def low(self):
        """The end to shim; "" of none."""
        return "" if not self.tilt else self.ends[self.tilt > 0]

    @property
    def shim(self):
        """What goes under that end, or None where the span isn't known."""
        return None if self.span is None else abs(self.tilt) * self.span / self.apart


def sideways_of(given, show):
    """(the `Lean` to the left or right, what `racked` says of its diagonals or None)."""
    found = _racked(given, show)
    racking = Fraction(0)
    if found:
        apart_squares = given.rising**2 - given.falling**2
        racking = apart_squares / (4 * given.width) * given.apart / given.height
    much = given.top - given.bottom
    return Lean(much, given.apart, given.width, ("left", "right"), racking), found


def _racked(given, show):
    if given.rising is None and given.falling is None:
        return None
    for key, label in (
        ("rising", "The diagonal from lower left"),
        ("falling", "The diagonal from upper left"),
        ("height", "Case height"),
    ):
        if getattr(given, key) is None:
            raise left_blank(label, "Measure both diagonals and the height, or neither.", key)
    frame = SimpleNamespace(
        rising=given.rising, falling=given.falling, bottom=given.width, side=given.height
    )
    try:
        return racked(frame, show)
    except Refusal as refusal:
        if refusal.field in ("bottom", "side"):
            refusal.field = {"bottom": "width", "side": "height"}[refusal.field]
        raise


_FRONT = (("front_top", "Line to the front, top"), ("front_bottom", "Line to the front, bottom"))


def front_to_back_of(given):
    """The `Lean` to the front or back; None where that wasn't read."""
    if given.front_top is None and given.front_bottom is None:
        return None
    for key, label in _FRONT:
        if getattr(given, key) is None:
            raise left_blank(label, "Measure it at the top and at the bottom, or neither.", key)
    much = given.front_top - given.front_bottom
    return Lean(much, given.apart, given.depth, ("front", "back"))
