"""The largest three-four-five triangle that fits along two walls or edges.

Sides of 3, 4 and 5 times the same measure meet at a right angle; the larger they are, the less an
error of the tape turns the corner.
"""

from sawside.drawing.tape.three_four_five import three_four_five
from sawside.errors import Refusal
from sawside.lengths.reading.reader import read_length
from sawside.reckoners.declaration import Reckoning

STEPS = {
    "1 in": "Whole inches",
    "1/4 in": "Quarter inches",
    "3 in": "Every 3 inches",
    "1 ft": "Whole feet",
    "10 mm": "Centimeters",
    "100 mm": "Tens of centimeters",
}
_MOST_OTHERS = 4


def largest_triangle(given, show):
    """Both legs and the diagonal of the largest multiple that fits, and smaller ones."""
    step = read_length(given.step).value
    times, legs = _times_and_legs(given, step)
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
    return Reckoning(
        answers={"between": diagonal, "along": along, "across": across, "others": others},
        working=_working(given, show, legs, step, unit),
        drawing=three_four_five(show, along, across, diagonal),
        main="between",
        verdict=(
            f"Mark {show.brief(along)} and {show.brief(across)}: square at {show.brief(diagonal)}"
        ),
    )


def _times_and_legs(given, step):
    """How often the step goes in, and which leg is along the first wall."""
    return max(
        (min(given.along // (along * step), given.across // (across * step)), (along, across))
        for along, across in ((4, 3), (3, 4))
    )


def _measures(times, step):
    """The largest measure and some smaller ones: halved each time, in whole steps."""
    found = []
    while times and len(found) < _MOST_OTHERS:
        found.append(times * step)
        times //= 2
    return found


def _working(given, show, legs, step, unit):
    a, b, each = show.number(given.along), show.number(given.across), show.number(unit)
    return (
        f"The smaller of {a} ÷ {legs[0]} = {show.number(given.along / legs[0])} and {b} ÷ "
        f"{legs[1]} = {show.number(given.across / legs[1])}; down to a multiple of "
        f"{show.number(step)}: {each}",
        f"Along the first wall: {legs[0]} × {each}{show.equals(legs[0] * unit)}",
        f"Along the second wall: {legs[1]} × {each}{show.equals(legs[1] * unit)}",
        f"Between the marks: 5 × {each}{show.equals(5 * unit)}",
        "3 × 3 + 4 × 4 = 5 × 5: square when the marks are that far apart, open if farther, "
        "closed if nearer",
    )
