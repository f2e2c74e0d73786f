"""What to look out for in a space and in raising a case there."""

from fractions import Fraction

from sawside.lengths.words import counted
from sawside.reckoners.case.shared.space.baseboard import notch_cautions
from sawside.reckoners.case.shared.space.found import bows
from sawside.reckoners.case.shared.space.located import Located
from sawside.reckoners.case.shared.space.walls import SIDES
from sawside.reckoners.case.shared.standing_up import ANCHOR, TIPPING, TOO_DEEP, onto_base
from sawside.wood.caution import Caution

_FLOOR = (
    "Find the floor’s high point with a long level, at the back as well as the front. A hump "
    "between the ends lifts the case too."
)
_LEVEL = Caution("Find the floor’s high point first.", _FLOOR)
_CROOKED = Caution(
    "Check for plumb, square and level first.",
    "Check both walls for plumb with a long level. Where they lean the same way, no width shows "
    "it, and the case has to be narrower than all of them. Check the corners of the floor for "
    "square: a space that’s skewed front to back takes a case only as wide as its clear square. "
    + _FLOOR,
)


def cautions_of(given, show, found):
    """Those of this case first, then the usual ones."""
    return (
        *_standing(given, show, found),
        *_walls(given, show, found),
        *notch_cautions(given, show, found),
        _CROOKED if found.walls.leans else _LEVEL,
        TIPPING,
        ANCHOR,
    )


def _standing(given, show, found):
    box = found.box
    if found.stands_up:
        if given.kick:
            yield from onto_base(given.above or Fraction(0))
        return
    if box is None:
        yield (
            "It won’t tip up in one piece, whatever its depth. On the way up it gets higher than "
            "it ends up, and this case reaches the ceiling. Leave a gap above it, set it on a "
            "separate base, or assemble it standing."
        )
        return
    high = show.brief(box.diagonal, "reach")
    if box.tallest is None:
        yield TOO_DEEP
        return
    lower = show.bare(box.tallest, "stay under")
    many = f", or stack {counted(box.boxes, 'box', 'boxes')}" if box.boxes else ""
    base = (
        f"{lower} without its toe kick, make the toe kick higher"
        if given.kick
        else f"{lower}, set it on a separate base"
    )
    yield (
        f"It won’t tip up in one piece. Raised off its back it needs {high} under a ceiling of "
        f"{show.text(box.ceiling)}. Build the case itself no higher than {base}{many}, or assemble "
        "it standing."
    )


_BETWEEN = Caution(
    "Nothing is known between your readings.",
    "Nothing is known between your readings. Lay a long straightedge on the walls and measure "
    "where they’re furthest out, right at the floor and right at the ceiling too, front and back.",
)
_SAGS = Caution(
    "Find the lowest place of the ceiling.",
    "Find the lowest place of the ceiling. Stretch a string from end to end, front and back, and "
    "measure where it sags most.",
)


def _walls(given, show, found):
    walls = found.walls
    if isinstance(walls, Located):
        yield _BETWEEN
        for side in SIDES:
            if walls.leans[side] and side != walls.straight:
                yield (
                    f"How far the {side} wall is out of plumb isn’t used: your readings by height "
                    "tell where it is."
                )
    if found.heights.between:
        yield _SAGS
    if walls.narrowest < walls.smallest:
        yield (
            "Your widths vary less than the walls lean. The narrowest place is figured as "
            f"{show.brief(walls.narrowest, 'go in')}. Measure the width right at the floor and "
            "right at the ceiling."
        )
    if bows(given, walls):
        yield (
            f"The widths vary by {show.brief(walls.uneven, 'reach')} more than the walls lean. "
            "That’s more than the scribe covers, so the case is that much narrower than the "
            "space, in case each wall bows at its own height. Hold a long level to both walls "
            "and enter how they lean."
        )
    if walls.leans and given.scribe < Fraction(1, 8):
        yield (
            f"A scribe of {show.text(given.scribe)} leaves little to plane to the wall. Most "
            f"shops leave about {_usual(show)} (shop practice)."
        )


def _usual(show):
    """A scribe as a shop leaves it, in the person's own units."""
    return "6 mm" if show.settings.display == "mm" else "1/4″"
