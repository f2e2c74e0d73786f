"""The largest three-four-five triangle that fits along two walls or edges.

Sides of 3, 4 and 5 times the same measure meet at a right angle; the larger they are, the less an
error of the tape turns the corner.
"""

from sawside.drawing.shapes import dimension, drawing, line, polygon
from sawside.errors import Refusal
from sawside.lengths.reading.reader import read_length
from sawside.lengths.real import nearby
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, choice, length

_STEPS = {
    "1 in": "Whole inches",
    "1/4 in": "Quarter inches",
    "3 in": "Every 3 inches",
    "1 ft": "Whole feet",
    "10 mm": "Centimeters",
    "100 mm": "Tens of centimeters",
}
_SCREEN = 210
_MOST_OTHERS = 4


def compute(given, show):
    """Both legs and the diagonal of the largest multiple that fits, and smaller ones."""
    step = read_length(given.step).value
    times, legs = max(
        (min(given.along // (along * step), given.across // (across * step)), (along, across))
        for along, across in ((4, 3), (3, 4))
    )
    if not times:
        raise Refusal(
            "impossible",
            f"Not even 3, 4 and 5 times {show.text(step)} fit along {show.text(given.along)} and "
            f"{show.text(given.across)}.",
            "Choose a finer step.",
            field="step",
        )
    unit = times * step
    along, across, diagonal = (side * unit for side in (*legs, 5))
    others = [
        (f"{show.text(legs[0] * each)} and {show.text(legs[1] * each)}", 5 * each)
        for each in _measures(times, step)
    ]
    a, b = show.number(given.along), show.number(given.across)
    return Reckoning(
        answers={"diagonal": diagonal, "along": along, "across": across, "others": others},
        working=(
            f"The smaller of {a} ÷ {legs[0]} = {show.number(given.along / legs[0])} and {b} ÷ "
            f"{legs[1]} = {show.number(given.across / legs[1])}; down to a multiple of "
            f"{show.number(step)}: {show.number(unit)}",
            f"Along the first wall: {legs[0]} × {show.number(unit)}{show.equals(along)}",
            f"Along the second wall: {legs[1]} × {show.number(unit)}{show.equals(across)}",
            f"Between the marks: 5 × {show.number(unit)}{show.equals(diagonal)}",
            "3 × 3 + 4 × 4 = 5 × 5: square when the marks are that far apart, open if farther, "
            "closed if nearer",
        ),
        drawing=_drawing(show, along, across, diagonal),
    )


def _measures(times, step):
    """The largest measure and some smaller ones: halved each time, in whole steps."""
    found = []
    while times and len(found) < _MOST_OTHERS:
        found.append(times * step)
        times //= 2
    return found


def _drawing(show, along, across, diagonal):
    wide, deep = nearby(along), nearby(across)
    pixel = max(wide, deep) / _SCREEN
    beyond = 24 * pixel
    corner, first, second = (0, deep), (wide, deep), (0, 0)
    square = 14 * pixel
    shapes = [
        polygon([corner, first, second], "space"),
        line((0, deep), (wide + beyond, deep), "edge"),
        line((0, deep), (0, -beyond), "edge"),
        line(first, second, "center"),
        line((square, deep), (square, deep - square), "hidden"),
        line((square, deep - square), (0, deep - square), "hidden"),
        dimension(first, corner, 30 * pixel, show.brief(along), "answer"),
        dimension(corner, second, 34 * pixel, show.brief(across), "answer"),
        dimension(second, first, 0, show.brief(diagonal), "answer"),
    ]
    words = (
        f"Two walls meet at the lower left. A mark {show.brief(along)} along the first, one "
        f"{show.brief(across)} along the second; {show.brief(diagonal)} between the marks makes "
        "the corner square."
    )
    box = (-78 * pixel, -beyond - 6 * pixel, wide + beyond + 40 * pixel, deep + 50 * pixel)
    return drawing(words, box, shapes)


RECKONER = Reckoner(
    key="three_four_five",
    title="Three-four-five",
    asks="What’s the biggest 3-4-5 I can use to check this corner?",
    words=(
        "3-4-5, square up, check for square, right triangle, pythagorean theorem, right angle, "
        "square, room, wall, corner, alcove, lay out, layout, 90"
    ),
    order=170,
    job="square",
    picture={
        "wood": "M6 34V10l32 24z",
        "ink": "M6 18h3M6 26h3M14 34v-3M22 34v-3M30 34v-3",
        "chalk": "M6 10l32 24",
    },
    fields=(
        length("along", "Clear along the first wall", help="From the corner.", least="3/4 in"),
        length("across", "Clear along the second wall", help="From the corner.", least="3/4 in"),
        choice(
            "step",
            "Step",
            _STEPS,
            help="Whole numbers are easier to mark. Finer steps give a bigger triangle.",
        ),
    ),
    answers=(
        Answer("diagonal", "Between the two marks", must="agree"),
        Answer("along", "Mark along the first wall", must="agree"),
        Answer("across", "Mark along the second wall", must="agree"),
        Answer("others", "Between the marks, this size and smaller", "lengths", must="agree"),
    ),
    source=(
        "3² + 4² = 5², with the converse of the theorem of Pythagoras (Euclid, Elements, book I, "
        "proposition 48)."
    ),
    compute=compute,
    example={"along": "37 9/16", "across": "16 1/4", "step": "1 in"},
)
