"""A case from the front that leans, beside a plumb line. Not to scale, and a note says so."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.fine import fine_text
from sawside.lengths.real import nearby

_SCREEN = 200
_LEAN = 16
"""Pixels that the drawn case leans, whatever it is in truth: it would not be seen."""
_LINE = 46
"""Pixels from the plumb line to the case."""


@lazy
def leaning_case(show, given, lean):
    """`given` has top, bottom, apart and width in inches; `lean` says which way and what shims."""
    wide, pixel = float(nearby(given.width)), float(nearby(given.width)) / _SCREEN
    high = min(float(nearby(given.apart)), wide * 3 / 5)
    way = (lean.much > 0) - (lean.much < 0)
    off = way * _LEAN * pixel
    drop = off * wide / high if lean.tilt else 0
    left_foot, right_foot = (max(-drop, 0), max(drop, 0))
    case = [(off, left_foot), (wide + off, right_foot), (wide, high + right_foot)]
    case.append((0, high + left_foot))
    hung = -_LINE * pixel
    floor = high + abs(drop)
    shapes = [
        polygon(case),
        line((hung, -24 * pixel), (hung, floor), "center"),
        label((hung, -36 * pixel), "plumb line", "note"),
    ]
    for key, x, y in (("top", off, left_foot), ("bottom", 0, high + left_foot)):
        text = fine_text(getattr(given, key), show)
        shapes.append(dimension((hung, y), (x, y), 0, text, "given", field=key))
    text = show.brief(given.width)
    shapes.append(dimension((wide, floor), (0, floor), 30 * pixel, text, "given", field="width"))
    if lean.low and lean.shim:
        x = 0 if lean.low == "left" else wide
        text = f"shim {fine_text(lean.shim, show)}"
        shapes.append(label((x, floor + 66 * pixel), text, "name"))
    shapes.append(label((wide / 2, high / 2), "not to scale", "note"))
    box = (hung - 60 * pixel, -50 * pixel, wide + 60 * pixel, floor + 84 * pixel)
    return drawing(_words(show, given, lean), box, shapes)


def _words(show, given, lean):
    leans = f"leans {lean.way}" if lean.way else "is plumb"
    return (
        f"A case from the front, {show.brief(given.width)} wide, that {leans}. From a plumb line "
        f"at its left it is {fine_text(given.top, show)} at the top and "
        f"{fine_text(given.bottom, show)} at the bottom."
    )
