"""The lines along a piece with mitered ends, found from the one that was measured.

A line that lies t of the way from the inside to the outside is longer than the inside by t of what
both ends add.
"""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from sawside.errors import Refusal
from sawside.geometry.mitered_end import MiteredEnd
from sawside.lengths.real import Exact, sign
from sawside.reckoners.miters.shared.end_fields import cut_end


@dataclass(frozen=True, slots=True)
class MiteredPiece:
    """Both ends and the lines along the piece, in inches; where the rabbet was measured the long
    and the short side are `Rounded`, and `inside` is the exact short side.

    `back` is how far the back of the rabbet lies from the inside (0) to the outside (1), and
    `rabbet_side` its length, both None without a rabbet.
    """

    ends: list[MiteredEnd]
    inside: Exact
    long_side: Any
    short_side: Any
    back: Fraction | None
    rabbet_side: Exact | None


def piece_of(given, show):
    """The `MiteredPiece` that was filled in.

    Raises `Refusal` where the ends meet, or a rabbet can't be as it was given.
    """
    ends = [cut_end(given, show, side) for side in ("left", "right")]
    total = ends[0].adds + ends[1].adds
    back = _part_way(given, show, ends)
    part_way = {"inside": Fraction(0), "outside": Fraction(1), "rabbet": back}[given.known_face]
    inside = given.known - total * part_way
    if sign(inside) <= 0:
        raise Refusal(
            "impossible",
            f"The two ends meet: they take {show.text(total)}, and the edge you measured is only "
            f"{show.text(given.known)}.",
            "Use a longer piece, or a smaller width or angle.",
            field="known",
        )
    long_side, short_side = inside + total, inside
    if given.known_face == "rabbet":  # what is in the rabbet has to go in
        long_side, short_side = (show.rounded(side, "reach") for side in (long_side, short_side))
    rabbet_side = None if back is None else inside + total * back
    return MiteredPiece(ends, inside, long_side, short_side, back, rabbet_side)


def _part_way(given, show, ends):
    """How far the back of the rabbet lies from the inside (0) to the outside (1); None for none."""
    if given.rabbet is None:
        if given.known_face != "rabbet":
            return None
        raise Refusal(
            "missing",
            "You measured at the back of a rabbet, and Rabbet is blank.",
            "Fill it in, or measure the inside or outside edge.",
            field="rabbet",
        )
    ways = {end.way for end in ends if end.degrees != 0}
    if len(ways) > 1:
        raise Refusal(
            "conflict",
            "With a miter at one end and a bevel at the other, the back of a rabbet isn’t one "
            "line.",
            "Leave Rabbet blank, and measure the inside or outside edge.",
            field="rabbet",
        )
    across = given.thickness if ways == {"edge"} else given.width
    if given.rabbet >= across:
        raise Refusal(
            "impossible",
            f"A {show.text(given.rabbet)} rabbet leaves nothing of {show.text(across)} stock.",
            f"Make the rabbet less than {show.text(across)}.",
            field="rabbet",
        )
    return given.rabbet / across
