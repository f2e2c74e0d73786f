"""What is told of a base on a floor: shims or cuts, level line, verdict, working, cautions."""

from fractions import Fraction

from sawside.lengths.fine import on_fine_marks
from sawside.reckoners.declaration import Answer
from sawside.reckoners.installing.shared.cautions import TIP_OVER
from sawside.wood.caution import Caution

THICK = Fraction(3, 4)
"""Inches of shim, above which blocks are better. Common practice, no source."""

ANSWERS = (
    Answer("most", "Thickest shim", must="reach"),
    Answer("high", "High point", "text"),
    Answer("rip", "Rip the base to", must="reach"),
    Answer("shims", "Shims", "lengths", must="reach"),
    Answer("heights", "Base height", "lengths", must="agree"),
    Answer("below", "Base top below your line", must="agree"),
    Answer("above", "Base top above your line", must="agree"),
)

_BETWEEN = Caution(
    "Look for humps between your readings.",
    "Look for humps between your readings with a long straightedge: one lifts the base.",
)
_SHIMS = Caution(
    "Shim in pairs, under every upright.",
    "Shim in pairs, under every upright, and fasten shims before trimming.",
)


def answers_of(given, show, floor):
    """The answers that this case has, by their keys."""
    answers = {"high": _name(floor.high) if floor.out else "Everywhere you measured"}
    named = [(_name(spot), spot) for spot in floor.spots]
    if given.way == "shim":
        shims = [(name, _shim(show, floor.under(s))) for name, s in named if floor.under(s)]
        if shims:
            answers |= {"most": _shim(show, floor.thickest), "shims": shims}
    else:
        answers["rip"] = show.rounded(given.base + floor.out, "reach")
        answers["heights"] = [(name, given.base + floor.under(spot)) for name, spot in named]
    top = floor.high.down - given.base
    if top:
        answers["below" if top > 0 else "above"] = abs(top)
    return answers


def main_of(given, floor):
    """The key of the answer that leads."""
    if given.way == "cut":
        return "rip"
    return "most" if floor.thickest else "high"


def _shim(show, length):
    return on_fine_marks(length, show, "reach")


def _name(spot):
    return f"{spot.name}, {spot.edge}"


def _where(spot):
    """A place in a sentence: "left end, front"."""
    return f"{spot.name[0].lower()}{spot.name[1:]}, {spot.edge}"


def verdict_of(given, floor):
    """Where the high point is, and what leads from there."""
    if not floor.out:
        return "Level" if given.way == "shim" else "Level: rip the base to"
    if not floor.thickest:
        return "No shims, high point"
    act = "thickest shim" if given.way == "shim" else "rip the base to"
    return f"Highest at {_where(floor.high)}; {act}"


def working_of(given, show, floor):
    """Line by line: each place against the high point, and the base's top from the line."""
    number = show.number
    downs = ", ".join(number(spot.down) for spot in floor.read)
    yield f"Smallest of {downs}: {number(floor.high.down)}, the high point"
    for spot in floor.spots:
        down, under = number(spot.down), floor.under(spot)
        if spot.between:
            before, after, part, step = (number(each) for each in spot.between)
            yield (
                f"{_name(spot)}, between readings: {before} + ({after} − {before}) × {part} ÷ "
                f"{step} = {down}"
            )
        if given.way == "cut":
            yield (
                f"{_name(spot)}: {number(given.base)} + {down} − {number(floor.high.down)} = "
                f"{number(given.base + under)}"
            )
            continue
        yield f"{_name(spot)}: {down} − {number(floor.high.down)} = {number(under)}"
    if given.way == "cut":
        told = show.equals(show.rounded(given.base + floor.out, "reach"))
        yield f"Rip the base to: {number(given.base)} + {number(floor.out)}{told}"
    top = floor.high.down - given.base
    if top > 0:
        yield f"Base top: {number(floor.high.down)} − {number(given.base)} = {number(top)} down"
    elif top < 0:
        yield f"Base top: {number(given.base)} − {number(floor.high.down)} = {number(-top)} up"


def cautions_of(given, show, floor):
    """Those of this floor first, then the usual ones."""
    if given.way == "shim" and floor.thickest > THICK:
        yield (
            f"{show.brief(_shim(show, floor.thickest))} is a lot of shim. Use solid blocks screwed "
            "to the base, leveling legs, or cut the base to the floor (shop practice)."
        )
    if all(spot.edge == "front" for spot in floor.read):
        yield "The back isn’t figured. Measure the floor along the back too: a wall’s edge is low."
    yield _BETWEEN
    if given.way == "shim" and floor.thickest:
        yield _SHIMS
    yield TIP_OVER
