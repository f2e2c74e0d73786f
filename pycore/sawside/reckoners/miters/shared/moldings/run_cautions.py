"""The cautions of a run of molding."""

from fractions import Fraction

from sawside.geometry.angles import cosine, sine
from sawside.geometry.molding_run import RIGHT_ANGLE, off_a_parallel_wall
from sawside.lengths.fine import fine_text
from sawside.lengths.real import nearby, sqrt
from sawside.wood.saw import SAW_CAUTIONS, SHORTEST_TO_HOLD

SELF_RETURN = (
    "A mitered return is too small to hold. Cut its miter on the end of a long stick, then cut it "
    "off with a fine hand saw or the way the saw maker says for small pieces. Let the blade stop "
    "before you raise it."
)
_INSIDE_MITER = (
    "Inside miters on baseboard often open up as wood and walls move. Many are coped instead "
    "(shop practice)."
)
_COPING = (
    "Clamp the piece to cope it, and keep your hands behind the saw.",
    "You can’t cope a profile with an undercut. Miter that corner.",
)
_WIDE_COPE = (
    "Where walls meet well over 90°, as in a bay, most people miter: a cope there leaves a thin "
    "edge (shop practice)."
)
_WIDE = 110
_OPEN_LOOP = Fraction(1, 4)
"""Inches by which the walls of a loop may miss each other before it is said."""


def cautions_of(given, show, run, named):
    """The cautions for (name, piece) pairs in their order."""
    lines = [*SAW_CAUTIONS, *_short(named)]
    if any(piece.leg.is_cap for _, piece in named):
        lines.append(SELF_RETURN)
    inside = [corner for corner in run.corners if corner.turn == "inside"]
    if any(corner.is_coped for corner in inside):
        lines += _COPING
    if any(corner.is_coped and corner.degrees > _WIDE for corner in inside):
        lines.append(_WIDE_COPE)
    if any(not corner.is_coped and corner.degrees <= _WIDE for corner in inside):
        lines.append(_INSIDE_MITER)
    lines += open_loop(given, show, run) if run.closed else _off_the_wall(given, show, run)
    return tuple(lines)


def _short(named):
    short = [
        name for name, piece in named if not piece.leg.is_cap and piece.sides[1] < SHORTEST_TO_HOLD
    ]
    if short:
        yield (
            f"Too short to hold by hand, under {SHORTEST_TO_HOLD}″: {', '.join(short)}. Cut it "
            "from a longer stick, or clamp it the way the saw maker says. Keep your hands 6″ from "
            "the blade (shop practice)."
        )


def open_loop(given, show, run):
    """By how much the walls of a loop miss each other, where somebody would see it."""
    along = across = turned = Fraction(0)
    for wall, corner in zip(given.walls, run.corners, strict=True):
        along += wall.length * nearby(cosine(turned))
        across += wall.length * nearby(sine(turned))
        turned += corner.turned
    gap = sqrt(along * along + across * across)
    if gap > _OPEN_LOOP:
        yield (
            f"By these lengths and corners the last wall misses the first by {show.brief(gap)}. "
            "Measure again, or fit the last piece in place."
        )


def _off_the_wall(given, show, run):
    """Where a return at an outside corner comes square to a wall that isn't square to it."""
    total = sum(layer.projection for layer in given.layers)
    for side, at in (("left", 0), ("right", -1)):
        corner = run.corners[at] if run.corners else None
        ends_on_wall = getattr(given, f"{side}_end") in ("wall", "board")
        if corner is None or corner.turn == "inside" or not ends_on_wall:
            continue
        off = off_a_parallel_wall(total, corner.degrees)
        if corner.degrees == RIGHT_ANGLE or (getattr(given, f"{side}_scribe") or 0) >= off:
            continue
        where = "outside face" if corner.degrees > RIGHT_ANGLE else "case"
        name = (run.legs[0] if side == "left" else run.legs[-1]).name.lower()
        yield (
            f"If the wall runs parallel to the next side, the square end of the {name} is "
            f"{fine_text(off, show)} off it at the {where}. Leave at least that to scribe."
        )
