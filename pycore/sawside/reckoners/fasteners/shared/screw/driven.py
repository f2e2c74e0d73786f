"""A screw driven through one piece into another: its holes, its length and its reach. Inches."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from sawside.geometry.angles import tangent
from sawside.lengths.units import METRIC
from sawside.reckoners.fasteners.shared.screw.refused import (
    refuse_narrow_head,
    refuse_no_bit,
    refuse_no_length,
    refuse_pilot_past_root,
    refuse_root_past_shank,
    refuse_sunk_through,
    refuse_too_thick_for_edge,
)
from sawside.reckoners.fasteners.shared.two_pieces import check_length, check_room
from sawside.wood.drill_bits import bit_near, bit_over
from sawside.wood.fastening import FROM_EDGE, FROM_END, HELD
from sawside.wood.screws import SIZES, own_size

ROOT = Fraction(2, 3)
"""Of the shank: Wood Handbook, FPL-GTR-190, chapter 8. The National Design Specification's own
table has about .80, for which its lead holes would be wider."""
PILOT = {"hard": Fraction(9, 10), "soft": Fraction(7, 10), "board": Fraction(9, 10)}
"""Of the root: Wood Handbook, chapter 8; that of board is common practice, no source."""
THREAD = Fraction(2, 3)
"""Of the length of a screw (Noyes, Handwork in Wood, 1910, chapter V)."""
_HALF_CONE = {False: 41, True: 45}
"""Degrees of a flat head from its axis by whether it is metric; from memory."""


@dataclass(frozen=True, slots=True)
class Driven:
    """A screw in its two pieces, in exact inches; `head` is its diameter and `cone` its depth, both
    None without a countersink; `half_cone` is in degrees; `edge` is the thickness of one that it
    goes into, or None. `wanted` is the length that puts two thirds past the first piece."""

    name: str
    shank: Fraction
    root: Fraction
    length: Fraction
    wanted: Fraction
    through: Fraction
    under: Fraction
    head: Fraction | None
    cone: Any
    half_cone: int
    clearance: Fraction
    pilot: Fraction
    edge: Fraction | None

    @property
    def reach(self):
        """How far it goes into the second piece."""
        return self.length - self.through

    @property
    def left(self):
        """Wood past its tip."""
        return self.under - self.reach

    @property
    def thread(self):
        """How much of what reaches into the second piece is thread."""
        return min(self.reach, THREAD * self.length)

    @property
    def room(self):
        """(from an end, from an edge, from one to the next): at least, with both holes drilled; no
        more than an edge has where the screw is centered on it."""
        end, side = FROM_END[True] * self.shank, FROM_EDGE * self.shank
        return end, side if self.edge is None else min(side, self.edge / 2), end


def driven_of(given, show):
    """The `Driven` of a form; "impossible" where it comes through or cannot be drilled for."""
    size = own_size(given.shank, show.settings.unit in METRIC) if given.shank else SIZES[given.size]
    check_room(given, show)
    refuse_too_thick_for_edge(given, show, size.shank)
    head, cone = _head(given, show, size)
    refuse_sunk_through(given, show, cone)
    root = given.root or ROOT * size.shank
    refuse_root_past_shank(show, root, size.shank)
    through = given.over - given.sink
    wanted = HELD * through
    longest = through + given.under - given.spare
    long = given.length or size.sold(wanted, longest)
    if long is None or (given.length is None and long <= through):
        raise refuse_no_length(show, size, through, longest)
    check_length(show, "screw", long, through, given.under, "length")
    return Driven(
        name=size.name,
        shank=size.shank,
        root=root,
        length=long,
        wanted=wanted,
        through=through,
        under=given.under,
        head=head,
        cone=cone,
        half_cone=_HALF_CONE[size.metric],
        clearance=bit_over(size.shank, given.bits),
        pilot=_pilot(given, show, root),
        edge=given.edge,
    )


def _head(given, show, size):
    """(diameter of a flat head, depth of its cone), or two None."""
    if given.head != "flat":
        return None, None
    head = given.head_wide or 2 * size.shank
    refuse_narrow_head(show, head, size.shank)
    return head, (head - size.shank) / 2 / tangent(_HALF_CONE[size.metric])


def _pilot(given, show, root):
    """The pilot bit that is there, or the nearest of the set; none is thicker than the root."""
    if given.pilot is not None:
        refuse_pilot_past_root(given, show, root)
        return given.pilot
    found = bit_near(PILOT[given.wood] * root, root, given.bits)
    if found is None:
        raise refuse_no_bit(show, root)
    return found
