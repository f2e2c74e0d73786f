"""The ends of two boards side by side that meet in a box joint, reference edge at the top."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, polygon
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import nearby

_HIGH = 200


@lazy
def box_joint_drawing(show, given, joint, pin):
    """The drawing of a `BoxJoint` (`reckoners.drawers.shared.joints`), in scale; `pin` is the width
    of one with its mark."""
    high = float(nearby(joint.height))
    deep = max(float(nearby(each)) for each in (joint.side_slots, joint.end_slots))
    pixel = max(high / _HIGH, 3 * deep / 110)
    body = 54 * pixel
    shapes = []
    for of_sides, left, name in ((True, 0, "side"), (False, body + deep + 60 * pixel, "front")):
        long = float(nearby(joint.side_slots if of_sides else joint.end_slots))
        shapes.append(polygon(_comb(left, body, long, high, joint.slots(of_sides))))
        shapes.append(label((left + body / 2, -14 * pixel), name, "name"))
    right = left + body + deep
    role, field = ("answer", None) if given.gives == "height" else ("given", "height")
    text = show.brief(joint.height, "go in") if role == "answer" else show.brief(given.height)
    shapes.append(dimension((right, 0), (right, high), 56 * pixel, text, role, field))
    role, field = ("given", "pin") if given.gives == "height" else ("answer", None)
    low = (right, float(nearby(joint.pin)))
    shapes.append(dimension((right, 0), low, 24 * pixel, show.brief(pin), role, field))
    text = show.brief(on_fine_marks(joint.side_slots, show, "reach"))
    ends = (body + float(nearby(joint.side_slots)), high), (body, high)
    shapes.append(dimension(*ends, 24 * pixel, f"deep {text}", "answer"))
    box = (-10 * pixel, -30 * pixel, right + 116 * pixel, high + 46 * pixel)
    return drawing(_words(joint, text), box, shapes)


def _comb(left, body, long, high, slots):
    """The outline of a board's end from its left top corner on, with its slots cut."""
    root, tip = left + body, left + body + long
    yield from ((left, 0), (root if slots[0][0] == 0 else tip, 0))
    for start, end in slots:
        y0, y1 = float(start), float(end)
        yield from ((tip, y0), (root, y0), (root, y1), (tip, y1))
    yield from ((root if slots[-1][1] >= high else tip, high), (left, high))


def _words(joint, deep):
    return (
        f"The ends of a side and a front with {joint.number} pins and slots, their "
        f"reference edges at the top. The slots of the side are {deep} deep, and where one board "
        "has a pin the other has a slot."
    )
