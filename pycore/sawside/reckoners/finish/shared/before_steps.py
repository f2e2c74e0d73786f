"""The steps before a finish, in an order in which none spoils another: all of it common practice,
no source, but for what the cautions name."""

from fractions import Fraction

from sawside.reckoners.declaration import Step
from sawside.reckoners.finish.shared.finish_cautions import DUST, SOLVENT
from sawside.reckoners.finish.shared.finishes import FINISHES
from sawside.wood.caution import Caution

NAIL_SET = Fraction(1, 16)
"""Inches below the surface (common practice, no source)."""

VENEER = Caution(
    "Sand veneer by hand: its face is thinner than a dime.",
    "Sand veneer by hand: its face is thinner than a dime. The face of plywood may be no thicker "
    "than a few sheets of paper. Start at 150 grit or finer, stay off the edges, and stop when the "
    "scratches are even: what’s sanded through can’t be put back.",
)
_BY_HAND = Caution("Sand veneer by hand, and wear a dust respirator.", f"{VENEER.full} {DUST.full}")


def steps_before(given, show):
    """The `Step`s of a form, in their order; a person may tick them in another."""
    finish = FINISHES[given.finish]
    nailed = given.nails == "nailed"
    veneered = given.wood == "veneer"
    steps = [
        Step(
            "nails",
            "Set the nails",
            f"{show.brief(NAIL_SET)} below the surface, with a nail set no wider than the head.",
        )
        if nailed
        else None,
        Step("fill", "Fill the nail holes", "With a filler that sands. Overfill, let it harden.")
        if nailed and finish.fill == "before"
        else None,
        Step("moisture", "Check the wood’s moisture", _SETTLED),
        _glue(finish),
        Step("sand", "Sand to the last grit", _SANDED[veneered], _BY_HAND if veneered else DUST),
        Step("corners", "Ease the corners", _EASED[veneered], None if veneered else DUST),
        Step("grain", "Raise the grain", _RAISED) if _swells(finish) else None,
        Step("light", "Look along it in raking light", _RAKED),
        Step("dust", "Take off the dust", _DUSTED[finish.dries == "water"], DUST),
        Step("scrap", "Try the finish on scrap", _TRIED),
        Step("fill", "Fill the nail holes after the first coat", _FILLED)
        if nailed and finish.fill == "after"
        else None,
    ]
    return tuple(step for step in steps if step)


def _swells(finish):
    """Whether a finish raises the grain where no primer, sanded after, does it first."""
    return finish.dries == "water" and not finish.primed


def _glue(finish):
    """Glue that is left seals the wood: it shows before a finish does when the wood is wetted."""
    if finish.flammable:
        about = (
            "Wipe it with mineral spirits: glue stays pale. Let it dry, scrape it off, sand there."
        )
        return Step("glue", "Find the glue spots", about, SOLVENT)
    about = "Wipe it with a damp cloth: glue stays pale. Let it dry, scrape it off, sand there."
    return Step("glue", "Find the glue spots", about)


_SETTLED = (
    "By a meter: within 2 points of what the room it goes to brings it to (see Dew point). Wetter "
    "or drier wood moves under the finish."
)
_SANDED = (
    "With the grain, each grit until the scratches of the one before are gone.",
    "With the grain, by hand, with 150 grit or finer.",
)
_EASED = (
    "Two strokes with a sanding block on every sharp edge: a finish pulls back from it.",
    "One light stroke on solid edges only. Leave the edges of veneer alone.",
)
_RAISED = (
    "Wipe it with a damp cloth, let it dry overnight, and knock off the fuzz with the last grit."
)
_RAKED = (
    "Turn off the ceiling light and hold a lamp low from the side. Mark scratches and dents with "
    "chalk, and sand there again."
)
_DUSTED = (
    "Vacuum with a brush, then wipe with a clean cloth.",
    "Vacuum with a brush, then wipe with a damp cloth. An oily tack cloth makes a water-borne "
    "finish crawl.",
)
_TRIED = "A piece of the same board, sanded alike, with every coat."
_FILLED = "With a putty matched to the wood under the finish. Let the coat dry first."
