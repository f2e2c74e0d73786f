"""What is said of a set-up that no saw reaches: one place for every question.

A question declares which answers are set at the saw (`Answer.sets`), and its parts how each end is
set (`End.turned`, `End.tilted`); nothing else need be done for the words to be told.

Work that is turned a quarter, square to the fence or up on edge, is cut at the same angle by the
rest to 90: common practice. A compound cut in work that leans as it will in its place needs no
tilt, and its turn is arccos (cos turned x cos tilted): the angle between the cut and a square one.
"""

from fractions import Fraction
from typing import NamedTuple

from sawside.geometry.angles import arcsine, cosine
from sawside.lengths.real import Exact, nearby, sign
from sawside.lengths.show import angle_text
from sawside.wood.saw import TILTS_TO, TURNS_TO

_NEVER = "Never hold it there by hand. The saw maker’s instructions come first."


class SetUp(NamedTuple):
    """Degrees from square and from upright; 0 where the saw isn't turned or tilted."""

    turned: Exact = Fraction(0)
    tilted: Exact = Fraction(0)


def past_the_saw(reckoner, given, found):
    """The cautions for the set-ups of a `Reckoning` that no saw reaches, each once."""
    cautions = {}
    for set_up, side, jig in _set_ups(reckoner, given, found):
        if text := _caution(set_up):
            jigs = cautions.setdefault(text, {})
            if jig and not _leans(set_up):
                jigs[side] = (jig, set_up)
    return tuple(" ".join((text, *_sides(jigs), _NEVER)) for text, jigs in cautions.items())


def step_past(end):
    """What the list of pieces adds to an end that no saw reaches, or None."""
    set_up, jig = SetUp(end.turned, end.tilted), end.jig
    if not _is_past(set_up):
        return None
    if _leans(set_up) or (jig and not jig.tilts):
        return f"leaning in a jig: {_degrees(_in_reach(_turned_leaning(set_up)))}"
    if set_up.tilted > TILTS_TO:
        return f"on edge in a jig: {_degrees(90 - set_up.tilted)}"
    rest = _degrees(90 - set_up.turned)
    return f"in a jig: miter {jig.turn} {rest}, bevel {jig.tilt}" if jig else f"in a jig: {rest}"


def _set_ups(reckoner, given, found):
    """(set-up, "left" or "right", `Jig`) of all that is told, the last two None where not known."""
    with_tilt = {each.with_turn for each in reckoner.answers if each.key in found.answers}
    for answer in reckoner.answers:
        degrees = found.answers.get(answer.key)
        way = answer.sets(given) if callable(answer.sets) else answer.sets
        if degrees is None or way is None or answer.key in with_tilt:
            continue
        if way == "turned":
            yield SetUp(turned=degrees), None, None
        else:
            yield SetUp(found.answers.get(answer.with_turn, Fraction(0)), degrees), None, None
    for ends in (found.ends, *((part.left, part.right) for part in found.parts)):
        for side, end in zip(("left", "right"), ends, strict=False):
            yield SetUp(end.turned, end.tilted), side, end.jig


def _is_past(set_up):
    return set_up.turned > TURNS_TO or set_up.tilted > TILTS_TO


def _leans(set_up):
    return sign(set_up.turned) > 0 and set_up.tilted > TILTS_TO


def _turned_leaning(set_up):
    turned, tilted = (nearby(each) for each in set_up)  # told to a hundredth of a degree
    return 90 - arcsine(cosine(turned) * cosine(tilted))


def _in_reach(turned):
    """Degrees that a saw is turned to for such a miter, if need be with the work square to it."""
    return 90 - turned if turned > TURNS_TO else turned


def _degrees(angle):
    return angle_text(angle)


def _caution(set_up):
    if not _is_past(set_up):
        return None
    turned, tilted = (_degrees(each) for each in set_up)
    if _leans(set_up):
        leaning = _turned_leaning(set_up)
        text = (
            f"Few saws bevel to {tilted} (most stop at about {TILTS_TO}°). Hold the work in a jig "
            "at its own slope, the way it’ll sit, with the blade upright"
        )
        if leaning <= TURNS_TO:
            return f"{text} and the saw at a {_degrees(leaning)} miter."
        return (
            f"{text}. That’s a miter of {_degrees(leaning)}: clamp the jig square to the fence "
            f"and set the saw to what’s left of 90, a miter of {_degrees(90 - leaning)}."
        )
    if set_up.tilted > TILTS_TO:
        return (
            f"Few saws bevel to {tilted} (most stop at about {TILTS_TO}°). Stand the work on edge "
            "against a tall jig, or lay it flat if it was on edge, and set the bevel to what’s "
            f"left of 90, {_degrees(90 - set_up.tilted)}."
        )
    same = f", with the blade still tilted to {tilted}" if sign(set_up.tilted) else ""
    return (
        f"Few saws miter to {turned} (most stop at about {TURNS_TO}°). Clamp the work to a jig "
        "that holds it square to the fence, and set the saw to what’s left of 90, a miter of "
        f"{_degrees(90 - set_up.turned)}{same}."
    )


def _sides(jigs):
    """Which way saw and blade go at each end that the question knows it of."""
    ways = [
        f"for the {side} end, swing the saw {jig.turn} and tilt the top of the blade {jig.tilt}"
        for side, (jig, _) in jigs.items()
        if jig.tilts
    ]
    if ways:
        yield f"Keep the work face up, its length toward the front of the saw: {'; '.join(ways)}."
    for side, (jig, set_up) in jigs.items():
        if not jig.tilts:
            leaning = _degrees(_in_reach(_turned_leaning(set_up)))
            yield (
                f"For the {side} end the blade would lean {jig.tilt}, which this saw doesn’t do: "
                "hold the work in that jig at its own slope, the way it’ll sit, with the blade "
                f"upright, and set the saw to a {leaning} miter."
            )
