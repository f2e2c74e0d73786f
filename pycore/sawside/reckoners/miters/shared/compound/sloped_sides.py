"""A sloping box as it was filled in: its cuts, its sides at both rims, and what can't be one."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.geometry.compound import (
    Lean,
    butt_tilt,
    end_adds,
    lean_of_degrees,
    lean_of_legs,
    miter_and_tilt,
)
from sawside.lengths.real import Exact, sign
from sawside.reckoners.miters.shared.compound.saw import OTHER, CompoundCut, lay


@dataclass(frozen=True, slots=True)
class Side:
    """One kind of side: its outside face at top and bottom, and how many there are, in inches."""

    key: str
    name: str
    count: int
    top: Exact
    bottom: Exact

    @property
    def longest(self):
        """The wide edge, in inches."""
        return max(self.top, self.bottom)


@dataclass(frozen=True, slots=True)
class SlopedBox:
    """Lengths in inches, angles in degrees.

    `out` is how far a side leans out over the height, `slant` the width of its outside face, `turn`
    half of what a corner is short of straight. An end makes the wide edge longer by `adds`;
    `butted` is what a butt joint takes off an end of the sides between, 0 for miters. `cuts` are
    the left and the right end of every side.
    """

    lean: Lean
    out: Exact
    slant: Exact
    turn: Fraction
    adds: Exact
    butted: Exact
    cuts: tuple[CompoundCut, CompoundCut]
    sides: list[Side]
    blank_width: Exact
    blank_lengths: list[Exact]


def box_of(given, show):
    """The `SlopedBox` that was filled in.

    Raises `Refusal` for what is reckoned for four sides only, and where the sides meet before the
    narrow rim.
    """
    _check_four(given)
    corner = 180 - Fraction(360, given.sides)
    lean, out = _lean_of(given)
    miter, tilt = miter_and_tilt(lean, corner)
    adds = end_adds(out, corner)
    butted = more = Fraction(0)
    if given.joint == "butt":
        tilt = butt_tilt(lean, corner)
        butted = given.thickness / lean.cosine
        # The wide edge of a butted side's inside rises past the outside's where edges are square.
        more = 2 * given.thickness * lean.sine * out / given.height
    slant = given.height / lean.cosine
    sides = _sides_of(given, show, adds, butted)
    return SlopedBox(
        lean=lean,
        out=out,
        slant=slant,
        turn=90 - corner / 2,
        adds=adds,
        butted=butted,
        cuts=tuple(CompoundCut(miter, tilt, _lay(given, end)) for end in ("left", "right")),
        sides=sides,
        blank_width=slant + given.thickness * out / given.height,
        blank_lengths=[side.longest + more for side in sides],
    )


def _lay(given, end):
    return lay(end, given.wide == "top", given.joint == "miter", given.tilts, given.wide)


def _check_four(given):
    if given.sides == 4:
        return
    what = {
        "joint": "Butt joints" if given.joint == "butt" else None,
        "other": "Two lengths of side" if given.other is not None else None,
    }
    for field, name in what.items():
        if name:
            raise Refusal(
                "impossible",
                f"{name} only work with four sides, and you gave {given.sides}.",
                "Choose miters." if field == "joint" else "Leave the other length blank.",
                field=field,
            )


def _lean_of(given):
    """(lean, how far a side reaches out over the height, in inches)."""
    if given.found == "reach":
        return lean_of_legs(given.reach, given.height), given.reach
    lean = lean_of_degrees(given.slope)
    return lean, given.height * lean.sine / lean.cosine


def _sides_of(given, show, adds, butted):
    """The kinds of sides; a butt joint takes `butted` off each end of two of them."""
    grows = 2 * adds * (1 if given.size_at != given.wide else -1)
    sizes = [("size", given.size)]
    if given.other is not None or given.joint == "butt":
        sizes.append(("other", given.size if given.other is None else given.other))
    sides = []
    for number, (field, size) in enumerate(sizes):
        less = 2 * butted if number else Fraction(0)
        at_rim = {given.size_at: size - less, OTHER[given.size_at]: size + grows - less}
        narrow = OTHER[given.wide]
        if sign(at_rim[narrow]) <= 0:
            raise Refusal(
                "impossible",
                f"The sides meet before the {narrow}: the slope takes "
                f"{show.text(2 * adds + less)} of {show.text(at_rim[given.wide] + less)}.",
                "Use a longer side, less height or less slope.",
                field=field if getattr(given, field) is not None else "size",
            )
        many = given.sides if len(sizes) == 1 else 2
        name = _names(given, len(sizes))[number]
        sides.append(Side(f"side_{number + 1}", name, many, at_rim["top"], at_rim["bottom"]))
    return sides


def _names(given, kinds):
    if given.joint == "butt":
        return "Through side", "Side between"
    return ("Side",) if kinds == 1 else ("Front and back", "End")
