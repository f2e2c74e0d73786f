"""A butt hinge in its gains, from its end, and the bore of a cup hinge, from inside; in scale."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import circle, dimension, drawing, label, rectangle
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import nearby

_WIDE = 230
"""So wide it is drawn, in pixels of a phone."""


@lazy
def butt_hinge(show, given, gains):
    """The closed hinge between the frame, left, and the door, right, from its end."""
    gap, depth, leaf = (float(nearby(each)) for each in (gains.gap, gains.depth, given.leaf))
    in_frame = depth if given.gains == "both" else 0.0
    block = max(depth * 3, gap * 3, leaf * 3)
    pixel = (2 * block + gap) / _WIDE
    high, right = 70 * pixel, block + gap
    low = 18 * pixel
    shapes = [
        rectangle(0, 0, block, high + low),
        rectangle(right, 0, right + block, high + low),
        rectangle(block - in_frame, 0, block, high, "hole"),
        rectangle(right, 0, right + depth, high, "hole"),
        rectangle(block - in_frame, 0, block - in_frame + leaf, high, "hatch"),
        rectangle(right + depth - leaf, 0, right + depth, high, "hatch"),
        label((block / 2 - in_frame / 2, -14 * pixel), "frame", "name"),
        label((right + block / 2 + depth / 2, -14 * pixel), "door", "name"),
    ]
    text = show.brief(on_fine_marks(gains.gap, show))
    role, field = ("answer", None) if given.gains == "none" else ("given", "gap")
    foot = high + low
    shapes.append(dimension((right, foot), (block, foot), 22 * pixel, f"gap {text}", role, field))
    told = show.brief(on_fine_marks(gains.depth, show))
    if depth:
        deep = f"gain {told}"
        shapes.append(dimension((right + depth, foot), (right, foot), 48 * pixel, deep, "answer"))
    words = f"A closed butt hinge between frame and door, {text} apart" + (
        f", in a gain {told} deep." if depth else ", without gains."
    )
    box = (-20 * pixel, -26 * pixel, 2 * block + gap + 20 * pixel, foot + 66 * pixel)
    return drawing(words, box, shapes)


@lazy
def cup_hinge(show, given, bore):
    """The cup's hole in the door's inside, its edge at the left."""
    cup, tab, center = (float(nearby(each)) for each in (given.cup, bore.tab, bore.center))
    wide, high = center + cup, cup * 3 / 2
    pixel = wide / _WIDE
    middle = high / 2
    tab_text = show.brief(on_fine_marks(bore.tab, show))
    center_text = show.brief(on_fine_marks(bore.center, show))
    cup_text = show.brief(on_fine_marks(given.cup, show))
    shapes = [
        rectangle(0, 0, wide, high),
        circle((center, middle), cup / 2, "hole"),
        dimension((tab, high), (0, high), 22 * pixel, f"tab {tab_text}", "answer"),
        dimension((center, high), (0, high), 48 * pixel, f"center {center_text}", "answer"),
        dimension((tab, 0), (tab + cup, 0), 22 * pixel, cup_text, field="cup"),
        label((wide / 2, high + 84 * pixel), "inside of the door, from its edge", "note"),
    ]
    words = f"A cup hole {tab_text} from the door’s edge, its center {center_text} from there."
    box = (-30 * pixel, -50 * pixel, wide + 20 * pixel, high + 94 * pixel)
    return drawing(words, box, shapes)
