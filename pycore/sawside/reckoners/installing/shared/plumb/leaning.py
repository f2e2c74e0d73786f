"""How a case leans, by readings off a plumb line, and how much of that is racking. Exact inches.

Between two readings a side is as long as they are `apart` along it. A case that was turned by an
angle leans by apart × its sine there, and one end of its foot is lower by width × the same sine:
so the shim under that end is lean × width / apart.
"""

from dataclasses import dataclass
from fractions import Fraction
from types import SimpleNamespace

from sawside.errors import Refusal, impossible
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
    _check_lean(given, show, "top", given.top - given.bottom)
    much, found, racking = given.top - given.bottom, None, Fraction(0)
    if given.also == "diagonals":
        found = _by_diagonals(given, show)
        racking = offset_of(given) * given.apart / given.height
    elif given.also == "level":
        racking = much - _tilt(given, show)
    return Lean(much, given.apart, given.width, ("left", "right"), racking), found


def offset_of(given):
    """How far the top stands to the right of square by the diagonals (as `racked` has it)."""
    return (given.rising**2 - given.falling**2) / (4 * given.width)


def _by_diagonals(given, show):
    frame = SimpleNamespace(
        rising=given.rising, falling=given.falling, bottom=given.width, side=given.height
    )
    return racked(frame, show)


def _tilt(given, show):
    """How much the floor alone makes it lean between the readings, by a level across the case."""
    if given.level_gap >= given.level_long:
        raise impossible(
            f"A level {show.text(given.level_long)} long doesn’t stand off by "
            f"{show.text(given.level_gap)}.",
            "Measure from the level’s low end down to the case.",
            "level_gap",
        )
    tilt = given.level_gap * given.apart / given.level_long
    return tilt if given.level_low == "right" else -tilt


def front_to_back_of(given, show):
    """The `Lean` to the front or back; None where that wasn't read."""
    if given.front == "no":
        return None
    much = given.front_top - given.front_bottom
    _check_lean(given, show, "front_top", much)
    return Lean(much, given.apart, given.depth, ("front", "back"))


def _check_lean(given, show, key, much):
    if abs(much) >= given.apart:
        raise Refusal(
            "impossible",
            f"A side doesn’t lean {show.text(abs(much))} over {show.text(given.apart)}.",
            "Measure both from the same line, and how far apart they are.",
            field=key,
        )
