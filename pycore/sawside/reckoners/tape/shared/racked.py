"""How far a frame is out of square by its two diagonals, and which corner to push.

With sides w and h, and the angle a at the lower left corner, the law of cosines gives for the
diagonal p from that corner p² = w² + h² + 2wh cos a, and for the other q² = w² + h² - 2wh cos a.
So the top stands h cos a = (p² - q²) / 4w to the right of square, which needs no root. Both are
the root of (p² + q²) / 2 once it is square, which needs no side.
"""

from sawside.drawing.lazy import lazy
from sawside.drawing.tape.racked_frame import racked_frame
from sawside.errors import Refusal
from sawside.geometry.angles import arcsine
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.real import sqrt
from sawside.reckoners.declaration import Reckoning

_CAUTIONS = (
    "A clamped frame is loaded. Move it a little at a time and keep your fingers out of the "
    "joints.",
)
_SIDES_TOO = (
    "Diagonals that match mean square only if opposite sides match too. Measure top and bottom, "
    "and both sides."
)
MEASURE_AGAIN = "Measure again: the sides don’t fit the diagonals"
"""Leads the answer, and stands where it would say what to push."""
_UNEQUAL = (
    "These four measurements don’t fit a frame with equal opposite sides. Measure again, both "
    "sides and top and bottom too, before you push anything."
)


def racked(given, show):
    """What both diagonals come to; with the bottom the offset of the top, with both the angle."""
    _check_closes(given, show)
    offset = None
    if given.bottom is not None:
        offset = (given.rising**2 - given.falling**2) / (4 * given.bottom)
    goal = sqrt((given.rising**2 + given.falling**2) / 2)
    unlike = _is_unlike(given, goal, show)
    push = MEASURE_AGAIN if unlike else _push(given, offset, goal, show)
    return Reckoning(
        answers={
            **_offset(offset, show),
            "push": push,
            "apart": on_fine_marks(abs(given.rising - given.falling), show),
            **_angle(given, offset),
            "goal": goal,
            **_square(given),
        },
        working=_working(show, given, offset, goal),
        drawing=racked_frame(show, given, offset, push, pushed=not unlike),
        cautions=(
            *((_UNEQUAL,) if unlike else ()),
            *(_CAUTIONS if given.rising != given.falling else (_SIDES_TOO,)),
        ),
        main="apart" if offset is None else "offset",
        verdict=MEASURE_AGAIN if unlike else _verdict(given, offset, show),
    )


def _offset(offset, show):
    return {} if offset is None else {"offset": on_fine_marks(abs(offset), show)}


def _angle(given, offset):
    if offset is None or given.side is None:
        return {}
    return {"angle": arcsine(abs(offset) / given.side)}


def _square(given):
    if given.bottom is None or given.side is None:
        return {}
    return {"square": sqrt(given.bottom**2 + given.side**2)}


def _is_unlike(given, goal, show):
    square = _square(given)
    return bool(square) and abs(goal - square["square"]) > show.settings.grid.step


def _check_closes(given, show):
    """Diagonals that two sides allow; by one side alone the half diagonals meet with it."""
    if given.bottom is not None and given.side is not None:
        for key in ("rising", "falling"):
            _check_diagonal(given, key, show)
        return
    low, high = abs(given.rising - given.falling) / 2, (given.rising + given.falling) / 2
    for key, name in (("bottom", "width"), ("side", "height")):
        size = getattr(given, key)
        if size is not None and not low < size < high:
            way, end = ("shorter", high) if size >= high else ("longer", low)
            raise Refusal(
                "impossible",
                f"A {name} of {show.text(size)} doesn’t fit diagonals of "
                f"{show.text(given.rising)} and {show.text(given.falling)}: it must be {way} than "
                f"{show.text(end)}.",
                "Measure it again, and both diagonals from corner to corner.",
                field=key,
            )


def _check_diagonal(given, key, show):
    diagonal = getattr(given, key)
    least, most = abs(given.bottom - given.side), given.bottom + given.side
    if least < diagonal < most:
        return
    way, side = ("shorter", most) if diagonal >= most else ("longer", least)
    raise Refusal(
        "impossible",
        f"A diagonal of {show.text(diagonal)} doesn’t fit a width of {show.text(given.bottom)} "
        f"and a height of {show.text(given.side)}: it must be {way} than {show.text(side)}.",
        "Measure it again, from corner to corner.",
        field=key,
    )


def _corners(given):
    """The corner to push in, upper left or right, and the way."""
    return ("right", "left") if given.rising > given.falling else ("left", "right")


def _push(given, offset, goal, show):
    if given.rising == given.falling:
        return "Square: both diagonals match"
    corner, way = _corners(given)
    if offset is None:
        return (
            f"Push the upper {corner} corner to the {way}, holding the bottom, until both "
            f"diagonals measure {show.brief(goal)}"
        )
    return (
        f"Push the upper {corner} corner {fine_text(abs(offset), show)} to the {way}, holding "
        "the bottom, until both diagonals match"
    )


def _verdict(given, offset, show):
    if given.rising == given.falling:
        return "Square"
    corner, way = _corners(given)
    much = "" if offset is None else f" {fine_text(abs(offset), show)}"
    return f"Push the upper {corner} corner{much} {way}"


@lazy
def _working(show, given, offset, goal):
    p, q = (show.number(each) for each in (given.rising, given.falling))
    longer, shorter = (p, q) if given.rising >= given.falling else (q, p)
    lines = []
    if offset is not None:
        lines.append(
            f"Racked to the right: ({p} × {p} − {q} × {q}) ÷ (4 × {show.number(given.bottom)}) = "
            f"{show.number(offset)}"
        )
    if _angle(given, offset):
        lines.append(
            f"Sine of the angle: {show.number(abs(offset))} ÷ {show.number(given.side)} = "
            f"{show.pure(abs(offset) / given.side)}"
        )
    return (
        *lines,
        f"Diagonals apart: {longer} − {shorter} = {show.number(abs(given.rising - given.falling))}",
        f"Both diagonals when square: √(({p} × {p} + {q} × {q}) ÷ 2){show.equals(goal)}",
    )
