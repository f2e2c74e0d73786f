"""The walls at both ends of a space, and the width that is clear of both at every height.

Seen from the front, x to the right. The face of a wall is taken as straight from floor to ceiling,
`lean` further into the space at the top than at the floor (less than 0: away from it). Where both
lean the same way the space is a parallelogram, and no upright case is as wide as any of its
readings: what counts is from the furthest place of the left wall to the furthest of the right one.
"""

from dataclasses import dataclass
from fractions import Fraction

SIDES = ("left", "right")


@dataclass(frozen=True, slots=True)
class Strip:
    """What closes the gap beside a case: how wide at the floor, at the ceiling, and before it is
    planed to the wall."""

    side: str
    bottom: Fraction
    top: Fraction
    rip: Fraction


@dataclass(frozen=True, slots=True)
class Walls:
    """`smallest` and `largest` reading of the width; `leans` by the side, of the walls that there
    are; `base` how far a baseboard that the case stays clear of stands out of them. Exact inches.
    """

    smallest: Fraction
    largest: Fraction
    leans: dict[str, Fraction]
    base: Fraction

    @property
    def change(self):
        """How much narrower the space is at the ceiling than at the floor, by its walls."""
        return sum(self.leans.values(), Fraction(0))

    @property
    def narrowest(self):
        """The least width at any height. Where the readings vary less than the walls lean, none was
        taken at the narrowest place: it is then as far below the largest as the walls say."""
        return min(self.smallest, self.largest - abs(self.change))

    @property
    def at_floor(self):
        """The width at the floor, above a baseboard."""
        return self.narrowest + max(self.change, Fraction(0))

    def takes(self, side):
        """How far a side stands into the space at most, beyond its own foot."""
        if side not in self.leans:
            return Fraction(0)
        return max(self.leans[side], self.base, Fraction(0))

    @property
    def clear(self):
        """Between upright lines that touch neither side at any height; may be less than 0."""
        return self.at_floor - self.takes("left") - self.takes("right")

    def strips(self, width):
        """The `Strip` at each wall beside a case `width` wide, with as much to spare at each."""
        strips = []
        for side, lean in self.leans.items():
            bottom = self.takes(side) + (self.clear - width) / len(self.leans)
            top = bottom - lean
            strips.append(Strip(side, bottom, top, max(bottom, top) + self.uneven))
        return strips

    @property
    def uneven(self):
        """How much more the readings vary than the leans account for: walls that aren't straight,
        or not as plumb as was said."""
        return self.largest - self.narrowest - abs(self.change)


def walls_of(given):
    """The `Walls` of a form."""
    sides = [side for side in SIDES if given.built in ("walls", side)]
    base = given.baseboard or Fraction(0)
    return Walls(
        smallest=min(given.widths),
        largest=max(given.widths),
        leans={side: lean_of(given, side) for side in sides},
        base=base if given.at_baseboard == "front" else Fraction(0),
    )


def lean_of(given, side):
    """How far a wall, of a side or the back one, stands further in at the top than at the floor;
    less than 0 where it leans away."""
    way = getattr(given, f"{side}_lean")
    out = getattr(given, f"{side}_out") or Fraction(0)
    return {"in": out, "away": -out}.get(way, Fraction(0))
