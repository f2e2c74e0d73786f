"""How far a frame is out of square by its two diagonals, and which corner to push.

With sides w and h, and the angle a at the lower left corner, the law of cosines gives for the
diagonal p from that corner p² = w² + h² + 2wh cos a, and for the other q² = w² + h² - 2wh cos a.
So the top stands h cos a = (p² - q²) / 4w to the right of square, which needs no root.
"""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.errors import Refusal
from sawside.geometry.angles import arcsine
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.real import nearby, sqrt
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, length

_SCREEN = 190
_LEAN = 26
"""Pixels that the drawn frame leans, whatever it is in truth: it would not be seen."""

_CAUTIONS = (
    "A clamped frame is loaded. Move it a little at a time and keep your fingers out of the "
    "joints.",
)
_UNEQUAL = (
    "These four measurements don’t fit a frame with equal opposite sides. Measure again, both "
    "sides and top and bottom too, before you push anything."
)


def compute(given, show):
    """Offset of the top, angle, the corner to push, and what both diagonals should come to."""
    for key in ("rising", "falling"):
        _check_closes(given, key, show)
    offset = (given.rising**2 - given.falling**2) / (4 * given.width)
    square = sqrt(given.width**2 + given.height**2)
    goal = sqrt((given.rising**2 + given.falling**2) / 2)
    unlike = abs(goal - square)
    return Reckoning(
        answers={
            "offset": on_fine_marks(abs(offset), show),
            "push": _push(offset, show),
            "angle": arcsine(abs(offset) / given.height),
            "goal": goal,
            "square": square,
        },
        working=_working(show, given, offset, goal),
        drawing=_drawing(show, given, offset),
        cautions=_CAUTIONS + ((_UNEQUAL,) if unlike > show.settings.grid.step else ()),
    )


def _check_closes(given, key, show):
    diagonal = getattr(given, key)
    least, most = abs(given.width - given.height), given.width + given.height
    if least < diagonal < most:
        return
    way, side = ("shorter", most) if diagonal >= most else ("longer", least)
    raise Refusal(
        "impossible",
        f"A diagonal of {show.text(diagonal)} doesn’t fit a width of {show.text(given.width)} "
        f"and a height of {show.text(given.height)}: it must be {way} than {show.text(side)}.",
        "Measure it again, from corner to corner.",
        field=key,
    )


def _push(offset, show):
    if not offset:
        return "Square: both diagonals match"
    corner, way = ("right", "left") if offset > 0 else ("left", "right")
    return (
        f"Push the upper {corner} corner {fine_text(abs(offset), show)} to the {way}, holding "
        "the bottom, until both diagonals match"
    )


@lazy
def _working(show, given, offset, goal):
    p, q, w = (show.number(each) for each in (given.rising, given.falling, given.width))
    return (
        f"Racked to the right: ({p} × {p} − {q} × {q}) ÷ (4 × {w}) = {show.number(offset)}",
        f"Sine of the angle: {show.number(abs(offset))} ÷ {show.number(given.height)} = "
        f"{show.pure(abs(offset) / given.height)}",
        f"Both diagonals when square: √(({p} × {p} + {q} × {q}) ÷ 2){show.equals(goal)}",
    )


def _drawing(show, given, offset):
    """The frame leaning the way it does, but much more; dashed where it would be square."""
    wide, high = nearby(given.width), nearby(given.height)
    pixel = max(wide, high) / _SCREEN
    wide, high = max(wide, 60 * pixel), max(high, 60 * pixel)
    way = (offset > 0) - (offset < 0)
    off = way * _LEAN * pixel
    frame = [(off, 0), (wide + off, 0), (wide, high), (0, high)]
    rising, falling = (fine_text(given.rising, show), fine_text(given.falling, show))
    shapes = [polygon(frame)]
    if way:
        shapes.append(polygon([(0, 0), (wide, 0), (wide, high), (0, high)], "ghost"))
    for ends, text in (((frame[3], frame[1]), rising), ((frame[0], frame[2]), falling)):
        (x0, y0), (x1, y1) = ends
        at = ((x0 + 2 * x1) / 3, (y0 + 2 * y1) / 3)
        shapes += [line(*ends, "center"), label(at, text, "note")]
    if way:
        corner = (wide + off, 0) if way > 0 else (off, 0)
        much = fine_text(abs(offset), show)
        ends = sorted([corner, (corner[0] - off, 0)])
        shapes.append(dimension(*ends, 24 * pixel, f"push {much}", "answer"))
    shapes += [
        dimension((wide, high), (0, high), 30 * pixel, fine_text(given.width, show), "given"),
        dimension((0, high), (0, 0), 52 * pixel, fine_text(given.height, show), "given"),
    ]
    words = (
        f"A frame from the front, its diagonals {rising} from lower left to upper right and "
        f"{falling} from upper left to lower right. {_push(offset, show)}."
        + (" The lean is exaggerated." if way else "")
    )
    side = max(76 * pixel, (high - wide) / 2 + 40 * pixel)
    return drawing(words, (-side, -42 * pixel, wide + side, high + 50 * pixel), shapes)


RECKONER = Reckoner(
    key="out_of_square",
    title="Out of square",
    asks="How far out of square is it, and which corner do I push?",
    words=(
        "out of square, racked, rack, diagonals, square up, check for square, parallelogram, "
        "rhombus, lean, case, frame, true, corner"
    ),
    order=160,
    job="square",
    picture={"wood": "M9 8h28l-6 24H3z", "ink": "M3 5v23", "chalk": "M37 8L3 32"},
    fields=(
        length("width", "Width", help="Along the bottom.", least="1/64 in"),
        length("height", "Height", help="Along a side.", least="1/64 in"),
        length(
            "rising",
            "Diagonal, lower left to upper right",
            help="Facing it, measured the same way as the width and height.",
            least="1/64 in",
            most="142 ft",
        ),
        length(
            "falling",
            "Diagonal, upper left to lower right",
            help="The other one.",
            least="1/64 in",
            most="142 ft",
        ),
    ),
    answers=(
        Answer("offset", "Racked by", must="agree"),
        Answer("push", "What to do", "text"),
        Answer("angle", "Out of square by", "angle"),
        Answer("goal", "Both diagonals when square", must="agree"),
        Answer("square", "Both diagonals, from width and height", must="agree"),
    ),
    source=(
        "Law of cosines for a frame with equal opposite sides (plane geometry). Pushing the "
        "ends of the longer diagonal together is shop practice."
    ),
    compute=compute,
    example={"width": "36 1/8", "height": "41 1/4", "rising": "54 15/16", "falling": "54 23/32"},
)
