"""The largest case that goes into a space, with its scribe strips, its shims and its level line."""

from sawside.drawing.case.case_in_space import case_in_space
from sawside.reckoners.case.shared.space.answers import ANSWERS, answers_of, fixes_of, verdict_of
from sawside.reckoners.case.shared.space.cautions import cautions_of
from sawside.reckoners.case.shared.space.fields import BASIC, EXAMPLE, FIELDS
from sawside.reckoners.case.shared.space.found import found_of, scribes
from sawside.reckoners.case.shared.space.walls import walls_of
from sawside.reckoners.case.shared.space.working import working_of
from sawside.reckoners.declaration import Fit, Reckoner, Reckoning


def compute(given, show):
    """Width, height and depth of an upright, level case that no wall, floor or ceiling touches."""
    found = found_of(given, show)
    return Reckoning(
        answers=answers_of(given, show, found),
        working=tuple(working_of(given, show, found)),
        drawing=case_in_space(show, found),
        cautions=tuple(cautions_of(given, show, found)),
        verdict=verdict_of(given, show, found),
        fixes=fixes_of(given, found),
    )


def _scribe(given):
    """(field, the strips at both sides together); None where there is no wall."""
    walls = walls_of(given)
    return ("scribe", scribes(given, walls)) if walls.leans else None


RECKONER = Reckoner(
    key="space",
    title="The space",
    asks="What is the largest case that goes into this space?",
    words=(
        "alcove, niche, space, built-in, largest case, biggest cabinet, fit between walls, wall to "
        "wall, scribe, scribe strip, filler, filler strip, out of plumb, plumb, leaning wall, "
        "crooked wall, bowed wall, back wall, sagging ceiling, out of level, uneven floor, sloping "
        "floor, shim, shims, level line, ceiling, site measure, how big a case, cover "
        "the gap at the wall"
    ),
    order=600,
    job="cases",
    picture={
        "wood": "M12 12h16v22H12z",
        "ink": "M5 3l3 33M33 3l2 33M3 36h34M4 4h32",
        "chalk": "M12 23h16m-3-3l3 3-3 3M15 20l-3 3 3 3",
    },
    basic=BASIC,
    fields=FIELDS,
    answers=ANSWERS,
    source=(
        "Arithmetic: the space that is clear of both walls at every height, and of the ceiling "
        "above the floor’s high point. A scribe of 1/4″ (6 mm) is common practice, no source. "
        "Diagonal: Pythagorean theorem."
    ),
    compute=compute,
    example=EXAMPLE,
    fits=(Fit("width", _scribe, "less"),),
)
