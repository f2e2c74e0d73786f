"""Two pieces at a corner, seen from above or from the front, with the joint that halves it."""

from math import cos, radians, sin

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import arc, drawing, label, line, polygon
from sawside.lengths.real import nearby

_WIDE, _LONG = 1.0, 3.6


@lazy
def joint(words, degrees, corner_text, cut_text, *, outside=False):
    """The drawing of two pieces of one width at a corner of `degrees` (20 to 179).

    The pieces lie outside the angle; with `outside` the wall is inside the angle and is hatched.
    """
    turn = radians(float(nearby(degrees)))
    half = turn / 2
    tip = _WIDE / sin(half)
    shapes = []
    # The joint points up; the two pieces lean down from it, each half of the corner away.
    for way in (-1, 1):
        along = (way * sin(half), cos(half))
        out = (way * cos(half), -sin(half))
        heel, toe = (0.0, 0.0), (0.0, -tip)
        far = (along[0] * _LONG, along[1] * _LONG)
        edge = (far[0] + out[0] * _WIDE, far[1] + out[1] * _WIDE)
        shapes.append(polygon([heel, far, edge, toe]))
        if outside:
            shapes.append(line(heel, far, "center"))
    shapes.append(line((0, 0.35), (0, -tip - 0.45), "cut"))
    shapes.append(arc((0, 0), 1.5, 90 - float(nearby(degrees)) / 2, float(nearby(degrees)), ""))
    places = [point for shape in shapes for point in shape.get("points", [])]
    wide = max(max(abs(x) for x, _ in places) + 0.3, 2.6)
    bottom = max(max(y for _, y in places), 2.4) + 0.2
    shapes.append(label((0, 2.0), corner_text, "note"))
    shapes.append(label((0.25, -tip - 0.3), cut_text, "note", "start"))
    shapes.append(label((0, 2.0 + wide / 7), "wall" if outside else "room", "name"))
    return drawing(words, (-wide, -tip - 0.7, wide, bottom + wide / 7), shapes)
