"""A shelf on its cleats, seen from inside the case toward one side, its front at the left."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, polygon, rectangle
from sawside.lengths.marks import exact_of
from sawside.lengths.real import nearby

_SCREEN = 316
_MARGIN = 16


@lazy
def cleats_under_shelf(show, given, long, screws):
    """The drawing: `long` is the side cleat's length, `screws` the places along it from its front
    end; `given` holds depth, setback, height, thickness and back, all in inches."""
    depth, setback, high = (nearby(each) for each in (given.depth, given.setback, given.height))
    cleat = nearby(exact_of(long))
    pixel = depth / (_SCREEN - 2 * _MARGIN)
    thick = max(nearby(given.thickness), 12 * pixel)
    high = min(max(high, 26 * pixel), 70 * pixel)
    foot = thick + high
    shapes = [
        rectangle(0, 0, depth, thick),
        rectangle(setback, thick, setback + cleat, foot),
        *(_screw(setback + nearby(place), (thick + foot) / 2, 4 * pixel) for place in screws),
        label((depth * 3 / 5, thick / 2), "shelf", "note"),
        dimension((0, 0), (depth, 0), 26 * pixel, f"deep {show.brief(given.depth)}", field="depth"),
        dimension(
            (setback + cleat, foot),
            (setback, foot),
            30 * pixel,
            f"side cleat {show.brief(long)}",
            "answer",
        ),
        label((0, foot + 58 * pixel), "front", "note", "start"),
        label((depth, foot + 58 * pixel), "back", "note", "end"),
    ]
    if given.back == "yes":
        shapes.append(rectangle(depth - nearby(given.thickness), thick, depth, foot, "waste"))
        named = (depth, foot + 80 * pixel), "dashed: back cleat"
        shapes.append(label(*named, "note", "end"))
    count = f"{len(screws)} {'screw' if len(screws) == 1 else 'screws'}"
    behind = " A back cleat runs behind it." if given.back == "yes" else ""
    words = (
        f"A shelf {show.brief(given.depth)} deep on a side cleat {show.brief(long)} long, set back "
        f"{show.brief(given.setback)} from the front, with {count} along it.{behind}"
    )
    edge, low = _MARGIN * pixel, foot + (90 if given.back == "yes" else 68) * pixel
    return drawing(words, (-edge, -40 * pixel, depth + edge, low), shapes)


def _screw(x, y, dot):
    return polygon([(x - dot, y), (x, y - dot), (x + dot, y), (x, y + dot)], "hatch")
