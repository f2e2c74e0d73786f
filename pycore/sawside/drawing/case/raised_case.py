"""A case from its side, halfway up from lying on its back: its diagonal upright, to scale."""

from math import hypot

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, polygon, rectangle


@lazy
def raised_case(show, given, box, told_diagonal):
    """The drawing of a `box` (height, depth and ceiling, exact inches) and its diagonal as told."""
    high, deep, ceiling = (float(each) for each in (box.height, box.depth, box.ceiling))
    diagonal = hypot(high, deep)
    back = (-deep * high / diagonal, -high * high / diagonal)
    front = (high * deep / diagonal, -deep * deep / diagonal)
    foot, top = (0.0, 0.0), (0.0, -diagonal)
    size = max(diagonal, ceiling)
    thick, right = size / 30, front[0] + size * 3 / 4
    left = back[0] - size / 2
    shapes = [
        rectangle(left, 0, right, thick, "hatch"),
        rectangle(left, -ceiling - thick, right, -ceiling, "hatch"),
        polygon([foot, front, top, back]),
        dimension(top, foot, front[0] + size / 14, show.brief(told_diagonal), "answer"),
        dimension(foot, back, size / 14, show.brief(box.height), "given", _of(given)),
        dimension(front, foot, size / 14, show.brief(box.depth), "given", "depth"),
        label(
            (left, -ceiling - thick - size / 16),
            f"ceiling {show.brief(box.ceiling)}",
            "name",
            "start",
        ),
    ]
    kick = " without its toe kick" if given.kick else ""
    if given.kick:
        shapes.append(label((0, thick + size / 18), "without its toe kick", "note"))
    stands = "passes under" if box.stands_up else "doesn’t pass under"
    words = (
        f"A case{kick} from its side, raised off its back, with its diagonal of "
        f"{show.brief(told_diagonal)} upright: it {stands} a ceiling of {show.brief(box.ceiling)}."
    )
    margin = size / 20
    low = thick + size / (9 if given.kick else 20)
    top = -max(diagonal, ceiling + size / 8)
    return drawing(words, (left - margin, top, right + margin, low), shapes)


def _of(given):
    """The field of the height that is drawn, where it is the one that was given."""
    return None if given.kick else "height"
