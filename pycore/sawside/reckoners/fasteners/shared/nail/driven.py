"""A nail driven through one piece into another: which, its pilot hole and its reach. Inches."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import impossible
from sawside.lengths.fine import fine_grid, fine_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.units import INCHES_PER, METRIC
from sawside.reckoners.fasteners.shared.two_pieces import check_length, check_room
from sawside.wood.drill_bits import bit_under
from sawside.wood.fastening import FROM_EDGE, FROM_END, HELD
from sawside.wood.nails import NAILS, nail_for

PILOT = {"hard": Fraction(9, 10), "soft": Fraction(3, 4), "board": Fraction(3, 4)}
"""Of the nail's diameter at the most: National Design Specification 12.1.6, from memory; above a
specific gravity of 0.6, and below."""
HEADS = {"finish": Fraction(3, 2), "brad": Fraction(3, 2), "casing": Fraction(3, 2)}
"""Diameters across the head, for the drawing. Common practice, no source."""
_WIDE_HEAD = Fraction(5, 2)


@dataclass(frozen=True, slots=True)
class DrivenNail:
    """A nail in its two pieces, in exact inches; `head` is its width. `pilot` is the thickest bit
    that the rule allows, None for a brad or where the drill set has none."""

    name: str
    diameter: Fraction
    length: Fraction
    wanted: Fraction
    through: Fraction
    under: Fraction
    head: Fraction
    pilot: Fraction | None

    @property
    def reach(self):
        """How far it goes into the second piece."""
        return self.length - self.through

    @property
    def left(self):
        """Wood past its tip."""
        return self.under - self.reach

    @property
    def room(self):
        """(from an end with a pilot hole, without one, from an edge), at least."""
        ends = (FROM_END[drilled] * self.diameter for drilled in (True, False))
        return (*ends, FROM_EDGE * self.diameter)


def driven_nail_of(given, show):
    """The `DrivenNail` of a form; "impossible" where none gets through and stays in."""
    check_room(given, show)
    through = given.over - given.sink
    if through <= 0:
        raise impossible(
            f"A nail set {fine_text(given.sink, show)} deep goes through a piece "
            f"{fine_text(given.over, show)} thick.",
            f"Set it less than {fine_text(given.over, show)}.",
            "sink",
        )
    wanted = HELD * given.over
    longest = through + given.under - given.spare
    name, long, diameter = _nail(given, show, wanted, through, longest)
    check_length(show, "nail", long, through, given.under, "length")
    return DrivenNail(
        name=name,
        diameter=diameter,
        length=long,
        wanted=wanted,
        through=through,
        under=given.under,
        head=HEADS.get(given.kind, _WIDE_HEAD) * diameter,
        pilot=None if given.kind == "brad" else bit_under(PILOT[given.wood] * diameter, given.bits),
    )


def _nail(given, show, wanted, through, longest):
    """(name, length, diameter): as asked for, or the one that holds and doesn't come through."""
    if given.kind == "own":
        return "", given.length or _any_length(show, wanted, longest), given.diameter
    sold = NAILS[given.kind]
    if given.length is not None:
        found = min(sold, key=lambda each: abs(each.length - given.length))
        if abs(found.length - given.length) >= fine_grid(show.settings).step:
            raise _none_so_long(given, show, sold)
    else:
        found = nail_for(sold, wanted, longest)
        if found is None or found.length <= through:
            raise _none_holds(show, sold, through, longest)
    return found.name, found.length, found.diameter


def _none_holds(show, sold, through, longest):
    """The refusal where no length of a kind gets through the first piece and stays in the second,
    of which at most `longest` does."""
    if sold[-1].length <= through:
        return impossible(
            f"The longest nail of that kind, {fine_text(sold[-1].length, show)}, doesn’t get "
            "through the first piece.",
            "Choose another kind, or My own.",
            "over",
        )
    return impossible(
        f"No nail of that kind holds here: at most {fine_text(longest, show)} stays clear of the "
        "far face.",
        "Leave less wood past the tip, or choose another kind.",
        "under",
    )


def _any_length(show, wanted, longest):
    """Three times the first piece up to a quarter inch or 5 mm, or less where that is too long."""
    step = 5 * INCHES_PER["mm"] if show.settings.unit in METRIC else Fraction(1, 4)
    up = -(-wanted // step) * step
    if up <= longest:
        return up
    return longest // step * step or to_mark(longest, GRIDS["1/64"], "down").mark


def _none_so_long(given, show, sold):
    """The refusal of a length that this kind isn't sold in, with the nearest ones."""
    near = sorted(sold, key=lambda each: abs(each.length - given.length))[:2]
    lengths = " or ".join(fine_text(length, show) for length in sorted(e.length for e in near))
    return impossible(
        f"That kind isn’t sold {fine_text(given.length, show)} long.",
        f"Enter {lengths}, leave it blank, or choose My own.",
        "length",
    )
