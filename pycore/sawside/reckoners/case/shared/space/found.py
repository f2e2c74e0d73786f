"""The largest case for a space: its sizes as they are told, and what follows from them."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from sawside.errors import Refusal
from sawside.reckoners.case.shared.separate_kick import raised_of
from sawside.reckoners.case.shared.space.back import Back, back_of
from sawside.reckoners.case.shared.space.floor_and_ceiling import Heights, check_line, heights_of
from sawside.reckoners.case.shared.space.located import Located, located_of
from sawside.reckoners.case.shared.space.walls import Strip, Walls, walls_of
from sawside.reckoners.case.shared.standing_up import Box, deepest


@dataclass(frozen=True, slots=True)
class Found:
    """`width`, `height` and `depth` (or None) are `Rounded`, so that they go in; `strips` and the
    `box` that is raised (None without a depth), `raised` high, are those of a case of these very
    marks."""

    walls: Walls | Located
    heights: Heights
    back: Back | None
    width: Any
    height: Any
    depth: Any
    strips: list[Strip]
    raised: Fraction
    box: Box | None

    @property
    def deepest(self):
        """Where no depth was given, the most with which it's tipped up, or None."""
        return None if self.box else deepest(self.raised, self.heights.lowest)

    @property
    def stands_up(self):
        """Whether it's tipped up in one piece, whatever its depth where none was given."""
        return self.box.stands_up if self.box else self.deepest is not None


def found_of(given, show):
    """The `Found` of a form; "impossible" where no case is left."""
    heights, back = heights_of(given), back_of(given)
    bowed = given.bowed in ("left", "right", "line")
    walls = located_of(given, show, heights) if bowed else walls_of(given)
    width = show.rounded(_width(given, walls), "go in")
    height = show.rounded(_height(given, show, heights), "go in")
    depth = _depth(back, show)
    raised, kick = raised_of(given, show, height.mark)
    check_line(given, show, heights, height)
    return Found(
        walls=walls,
        heights=heights,
        back=back,
        width=width,
        height=height,
        depth=depth,
        strips=walls.strips(width.mark),
        raised=raised,
        box=Box(raised, depth.mark, heights.lowest, kick) if depth else None,
    )


def scribes(given, walls):
    """What the strips take of the width together, where they are narrowest."""
    return len(walls.leans) * given.scribe if walls.leans else Fraction(0)


def bows(given, walls):
    """What is left free instead, where two walls may bow more than that: each at its own height,
    so that no width shows it. 0 where the strips cover it, or where one wall alone may bow, which
    shows in a width."""
    covered = len(walls.leans) < 2 or walls.uneven <= scribes(given, walls)
    return Fraction(0) if covered else walls.uneven


_WIDTHS = {"left": "by_height", "right": "by_height", "line": "off_line"}
"""Where the widths of walls that bow are filled in."""


def _width(given, walls):
    width = walls.clear - (bows(given, walls) or scribes(given, walls))
    if width <= 0:
        leaning = walls.clear <= bows(given, walls)
        raise Refusal(
            "impossible",
            "There’s no width left for a case.",
            "Check the widths and how far the walls are out of plumb."
            if leaning
            else "Enter a smaller scribe allowance.",
            field=_WIDTHS.get(given.bowed, "widths") if leaning else "scribe",
        )
    return width


def _height(given, show, heights):
    height = heights.clear - (given.above or 0)
    if height <= 0:
        raise Refusal(
            "impossible",
            f"There’s no height left for a case under {show.text(heights.lowest)}.",
            "Enter a smaller gap above the case, or check the floor and the heights.",
            field="above" if given.above and heights.clear > 0 else "left_height",
        )
    return height


def _depth(back, show):
    if back is None:
        return None
    if back.at_floor <= 0:
        raise Refusal(
            "impossible",
            f"The back wall leans away by {show.text(-back.lean)}, which leaves no depth at the "
            "floor.",
            "Check the back wall, and where you measured the depth.",
            field="back_out",
        )
    if back.clear <= 0:
        leaning = back.lean > back.base
        what = "A lean" if leaning else "A baseboard"
        raise Refusal(
            "impossible",
            f"{what} of {show.text(back.takes)} leaves no depth for a case.",
            f"Check the depth and {'the back wall' if leaning else 'the baseboard’s thickness'}.",
            field="back_out" if leaning else "baseboard",
        )
    return show.rounded(back.clear, "go in")


def no_gap_onto_base(given):
    """Whether it goes right up to the ceiling, so that it can't be lifted onto its base."""
    return bool(given.kick) and not given.above
