"""How far a piece is off what was aimed at, in the trade's words, and what to do about it.

A cut against a stop repeats its error: a heavy piece wants the stop nearer to the blade, a light
one farther from it, by the same difference.
"""

from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.display import decimal_text
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.real import nearby
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import choice, length
from sawside.reckoners.tape.shared.tape_marks import in_marks
from sawside.wood.caution import Caution

_SCREEN = 300
"""Pixels of the longer piece on a narrow phone."""

_STOP_CAUTIONS = (
    "Let the blade stop before you move a stop. Unplug the saw if its maker says to.",
    Caution(
        "Table saw: end the stop block short of the blade.",
        "On a table saw, a piece trapped between the fence and the blade can kick back. Use a stop "
        "block that ends short of the blade, the way the saw maker shows.",
    ),
)
_TRIM_CAUTION = (
    "For a thin trim cut, hold the piece with the miter gauge, a sled or a clamp. Keep your "
    "fingers away from the blade, and follow the saw maker’s instructions."
)


def compute(given, show):
    """Size of the difference on fine marks, its direction, and the remedy."""
    over = given.measured - given.aimed
    size = abs(over)
    against_stop = given.cut == "stop"
    cautions = _STOP_CAUTIONS if against_stop else (_TRIM_CAUTION,) if over > 0 else ()
    return Reckoning(
        answers={
            "difference": on_fine_marks(size, show),
            "direction": _direction(over),
            "remedy": _remedy(over, against_stop, show),
            "marks": in_marks(size, show),
            "thousandths": f"{decimal_text(size * 1000, 3)} thousandths of an inch",
            "millimeters": f"{decimal_text(size / INCHES_PER['mm'], 4)} mm",
        },
        working=(
            f"Measured minus target: {show.number(given.measured)} − {show.number(given.aimed)} "
            f"= {show.number(over)}",
        ),
        drawing=_drawing(given, over, show),
        cautions=cautions if over else (),
        verdict=_verdict(over, against_stop, show),
    )


def _verdict(over, against_stop, show):
    if not over:
        return "On the mark"
    much = f"{fine_text(abs(over), show)} {'long' if over > 0 else 'short'}"
    if against_stop:
        return f"{much}: move the stop {'toward' if over > 0 else 'away from'} the blade"
    return f"{much}: {'trim it off' if over > 0 else 'cut another'}"


def _direction(over):
    if not over:
        return "On the mark"
    return "Heavy, over the target" if over > 0 else "Light, under the target"


def _remedy(over, against_stop, show):
    if not over:
        return "Leave the stop alone" if against_stop else "Nothing to do"
    much = fine_text(abs(over), show)
    if against_stop:
        way = "toward the blade" if over > 0 else "away from the blade"
        return f"Move the stop {much} {way}, lock it, and measure a test piece"
    if over > 0:
        return f"Trim {much} off"
    return f"It’s {much} short. Cut another"


def _drawing(given, over, show):
    """Both pieces from the left, their right ends drawn large: a break stands for what they share.

    With a stop: where it is, and dashed where it belongs.
    """
    size, longer = nearby(abs(over)), nearby(max(given.aimed, given.measured))
    shown = min(longer, 4 * size) if size else longer
    enlarged = max(1, 4 / shown)  # a place in a drawing is only told to a ten-thousandth
    pixel = shown * enlarged / _SCREEN
    start = longer - shown
    high = 40 * pixel
    aimed, measured = ((nearby(each) - start) * enlarged for each in (given.aimed, given.measured))
    rows = ((aimed, 0, "target", given.aimed), (measured, 62 * pixel, "measured", given.measured))
    shapes = []
    for end, top, _, _ in rows:
        shapes.append(polygon([(0, top), (end, top), (end, top + high), (0, top + high)]))
        if start:
            shapes.append(line((10 * pixel, top - 6 * pixel), (4 * pixel, top + high / 2), "break"))
            shapes.append(line((4 * pixel, top + high / 2), (10 * pixel, top + high), "break"))
    bottom = 62 * pixel + high
    if size:
        low, far = min(aimed, measured), max(aimed, measured)
        shapes.append(line((aimed, -8 * pixel), (aimed, bottom + 8 * pixel), "hidden"))
        much = fine_text(abs(over), show)
        shapes.append(dimension((far, bottom), (low, bottom), 26 * pixel, much, "answer"))
    if given.cut == "stop":
        shapes += _stop(aimed, measured, 62 * pixel, high, pixel)
    if size and start:
        shapes.append(label((0, bottom + 26 * pixel), "ends drawn large", "note", "start"))
    shapes += [
        label((20 * pixel, top + high / 2), f"{name} {fine_text(value, show)}", "name", "start")
        for _, top, name, value in rows
    ]
    much = fine_text(abs(over), show)
    words = (
        f"Two pieces from the same left end: target {fine_text(given.aimed, show)}, measured "
        f"{fine_text(given.measured, show)}. "
        + (f"The measured one is {much} {'longer' if over > 0 else 'shorter'}." if over else "")
    ).strip()
    right = max(aimed, measured) + 46 * pixel
    return drawing(words, (-12 * pixel, -24 * pixel, right, bottom + 52 * pixel), shapes)


def _stop(aimed, measured, top, high, pixel):
    """The stop against the measured piece, and dashed where it would give the piece aimed at."""
    return [
        label((measured + 12 * pixel, top - 11 * pixel), "stop", "note"),
        *(
            polygon(
                [(x, top), (x + 24 * pixel, top), (x + 24 * pixel, top + high), (x, top + high)],
                role,
            )
            for x, role in ((measured, "hatch"), (aimed, "ghost"))
        ),
    ]


RECKONER = Reckoner(
    key="over_or_under",
    title="Over or under",
    asks="How far off is the cut, and which way do I move the stop?",
    words=(
        "too long, too short, cut too long, cut too short, heavy, light, strong, proud, shy, "
        "off, error, difference, stop block, stopblock, adjust, thousandths, miss"
    ),
    order=110,
    job="tape",
    picture={
        "wood": "M3 14h27v12H3z",
        "ink": "M25 5v30",
        "chalk": "M25 14h5v12h-5zM39 20h-6m3-3l-3 3 3 3",
    },
    fields=(
        length("aimed", "Target", help="The length you wanted.", least="1/64 in"),
        length("measured", "Measured", help="What it actually measures.", least="1/64 in"),
        choice(
            "cut",
            "Cut",
            {"mark": "To a mark", "stop": "Against a stop"},
            help="A stop repeats its error, so move the stop.",
        ),
    ),
    answers=(
        Answer("difference", "Off by", must="agree"),
        Answer("direction", "Direction", "text"),
        Answer("remedy", "What to do", "text"),
        Answer("marks", "In tape marks", "text"),
        Answer("thousandths", "In thousandths", "text"),
        Answer("millimeters", "In millimeters", "text"),
    ),
    source=(
        "Arithmetic: measured minus target. Heavy means a little over and light a little under. "
        "Moving the stop by the difference is shop practice."
    ),
    compute=compute,
    example={"aimed": "34 7/8", "measured": "34 29/32", "cut": "stop"},
)
