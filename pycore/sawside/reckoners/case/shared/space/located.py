"""Walls that bow, each placed at the heights where it was measured.

One wall is straight and leans as was said: where it is at each height is known, and the other one
is a reading of the width from it. Or both were measured from a plumb line between them. What a wall
does between the readings nobody knows.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.reckoners.case.shared.space.walls import SIDES, Strip, lean_of


@dataclass(frozen=True, slots=True)
class Place:
    """Both walls at one `height`: how far the `near` one stands into the space past the plumb line
    that all is measured from, and how far off it is to the `far` one. Exact inches."""

    height: Fraction
    near: Fraction
    far: Fraction


@dataclass(frozen=True, slots=True)
class Located:
    """Two walls by their `places`, the lowest first; the `straight` side, the near one, or None
    where both were measured from a line. `ends` are where a straight wall is at the floor and at
    the ceiling. The rest as of `Walls`, whose place it takes."""

    places: tuple[Place, ...]
    straight: str | None
    ends: tuple[Fraction, ...]
    smallest: Fraction
    leans: dict[str, Fraction]
    base: Fraction
    uneven: Fraction = Fraction(0)

    @property
    def narrowest(self):
        """The least width that a tape read."""
        return self.smallest

    @property
    def near_side(self):
        """The side of the near wall."""
        return self.straight or "left"

    @property
    def furthest(self):
        """Of the near wall into the space at any height, with a baseboard at its foot."""
        foot = self.ends[0] if self.ends else self.places[0].near
        return max(*self.ends, *(each.near for each in self.places), foot + self.base)

    @property
    def nearest(self):
        """Of the far wall at any height, with a baseboard at its foot."""
        return min(*(each.far for each in self.places), self.places[0].far - self.base)

    @property
    def located(self):
        """Between upright lines that touch neither wall at any height; may be less than 0."""
        return self.nearest - self.furthest

    @property
    def clear(self):
        """The same, or the least of the other widths where that is less."""
        return min(self.located, self.smallest)

    def gaps(self, width):
        """[(place, the gap at the near wall, at the far wall)] of a case so wide amid its room."""
        start = self.furthest + (self.located - width) / 2
        return [(at, start - at.near, at.far - start - width) for at in self.places]

    def strips(self, width):
        """The `Strip` at each wall, left first: at the lowest and the highest reading, and before
        it is planed to the wall."""
        near, far = ([each[side] for each in self.gaps(width)] for side in (1, 2))
        start = near[0] + self.places[0].near
        widest = {True: max([*near, *(start - end for end in self.ends)]), False: max(far)}
        strips = []
        for side in SIDES:
            is_near = side == self.near_side
            gaps = near if is_near else far
            strips.append(Strip(side, gaps[0], gaps[-1], widest[is_near]))
        return strips


def located_of(given, show, heights):
    """The `Located` walls of a form that says that they bow; `heights` of the space."""
    base = given.baseboard or Fraction(0)
    rows = given.off_line if given.bowed == "line" else given.by_height
    rows = sorted(rows, key=lambda row: row.height)
    _check(given, show, rows, heights)
    if given.bowed == "line":
        places = tuple(Place(row.height, -row.left, row.right) for row in rows)
        straight, ends = None, ()
    else:
        straight, lean = given.bowed, lean_of(given, given.bowed)
        high = heights.measured[straight]
        places = tuple(_place(row, lean * row.height / high) for row in rows)
        ends = (Fraction(0), lean)
    widths = [*given.widths, *(place.far - place.near for place in places)]
    return Located(
        places,
        straight,
        ends,
        min(widths),
        {side: lean_of(given, side) for side in SIDES},
        base if given.at_baseboard == "front" else Fraction(0),
    )


def _place(row, near):
    return Place(row.height, near, near + row.width)


def _check(given, show, rows, heights):
    highest = min(heights.measured.values())
    if rows[-1].height > highest:
        raise Refusal(
            "impossible",
            f"A reading {show.text(rows[-1].height)} up is above the ceiling, at "
            f"{show.text(highest)}.",
            "Check its height above the floor.",
            field="off_line" if given.bowed == "line" else "by_height",
        )
