"""Two pieces at a mitered corner whose joint stands open, much more than it does."""

from math import cos, radians, sin

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import drawing, label, line, polygon

_LONG, _FACE = 3.4, 2.0


@lazy
def open_joint(words, setting, heel, toe, texts):
    """The joint pointing up: `heel` and `toe` are its drawn gaps (0 to 1), `texts` theirs.

    `setting` is degrees from square, as a float.
    """
    lean = radians(setting)
    shapes = []
    for way in (-1, 1):
        along = (way * cos(lean), sin(lean))
        low, high = (way * heel / 2, 0.0), (way * toe / 2, -_FACE)
        far = (low[0] + along[0] * _LONG, low[1] + along[1] * _LONG)
        edge = (high[0] + along[0] * _LONG, high[1] + along[1] * _LONG)
        shapes.append(polygon([low, far, edge, high]))
        shapes.append(line(low, high, "cut"))
    places = [point for shape in shapes for point in shape.get("points", [])]
    wide = max(abs(x) for x, _ in places) + 0.2
    bottom = max(y for _, y in places)
    shapes += [
        label((0, -_FACE - 0.4), f"toe {texts[1]}", "note"),
        label((0, max(0.8, bottom * 0.45)), f"heel {texts[0]}", "note"),
    ]
    return drawing(words, (-wide, -_FACE - 0.9, wide, max(bottom, 1.2) + 0.2), shapes)
