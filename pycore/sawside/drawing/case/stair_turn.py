"""The turn of a stair from above, with a case at its tightest place in it, to scale."""

from math import cos, radians, sin

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, polygon, rectangle


@lazy
def stair_turn(show, way, degrees, passes):
    """The drawing of a `Way` round its stair, turned so many `degrees`.

    The outer walls are at the left and the top, the flight below the turn comes up from the foot
    of the drawing, the one above goes off to the right.
    """
    below, above = float(way.stair.below), float(way.stair.above)
    long, across = (float(each) for each in (way.plan, way.sizes[way.across]))
    long, across = max(long, across), min(long, across)
    turn = radians(float(degrees))
    lower, upper = (0, long * cos(turn)), (long * sin(turn), 0)
    out = (across * cos(turn), across * sin(turn))
    box = [lower, upper, *((x + out[0], y + out[1]) for x, y in (upper, lower))]
    reach = max(*(max(point) for point in box), 2 * below, 2 * above) * 9 / 8
    thick, foot = reach / 24, reach / 16
    shapes = [
        rectangle(-thick, -thick, 0, reach, "hatch"),
        rectangle(0, -thick, reach, 0, "hatch"),
        rectangle(below, above, reach, reach, "hatch"),
        polygon(box),
        dimension(
            (0, reach), (below, reach), -foot, show.brief(way.stair.below), "given", "stair_below"
        ),
        dimension(
            (reach, 0), (reach, above), foot, show.brief(way.stair.above), "given", _above(way)
        ),
        label((reach / 2, reach + reach / 6), _said(way, passes), "note"),
    ]
    words = (
        f"The turn of the stair from above, {show.brief(way.stair.below)} wide below it and "
        f"{show.brief(way.stair.above)} above it, with {_said(way, passes)}, "
        "at its tightest place."
    )
    margin = reach / 5
    return drawing(words, (-thick, -thick, reach + margin, reach + margin), shapes)


def _above(way):
    """The field of the width above the turn, where it isn't that of below."""
    return "stair_above" if way.stair.above != way.stair.below else "stair_below"


def _said(way, passes):
    case = "the case" if passes else "the tallest case that goes round"
    return f"{case}, {way.said}"
