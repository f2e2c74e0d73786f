"""A stile from its face with holes in its edge, and beside it that edge and the rail's end.

All have the rail's width from the top down, in scale, with the reference edge at the top.
"""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import circle, dimension, drawing, label, line, rectangle
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import nearby

_WIDE, _HIGH = 120, 84
"""So large the wood is drawn at the most, in pixels of a phone."""
_GAP = 52


@lazy
def dowels_drawing(show, given, joint, words):
    """The drawing of a `Joint`; `given` says which numbers were filled in, `words` what is seen."""
    rail, stile, thick = (
        float(nearby(each)) for each in (joint.rail, joint.stile, joint.thickness)
    )
    pixel = max((stile + 2 * thick) / _WIDE, rail / _HIGH)
    over, edge = 10 * pixel, stile + _GAP * pixel
    end = edge + thick + _GAP * pixel
    shapes = [
        rectangle(0, -over, stile, rail + over),
        *_holes_from_the_face(joint, stile, given.both == "yes"),
        rectangle(edge, -over, edge + thick, rail + over),
        rectangle(end, 0, end + thick, rail),
    ]
    for middle, name in (
        (stile / 2, "stile"),
        (edge + thick / 2, "its edge"),
        (end + thick / 2, "rail’s end"),
    ):
        shapes.append(label((middle, -over - 12 * pixel), name, "name"))
    for left in (edge, end):
        shapes += _holes_from_the_end(joint, left)
    shapes += _depths(show, joint, stile, rail + over, pixel)
    shapes += _from_the_face(show, given, joint, end, rail, pixel)
    shapes += _figures(show, given, joint, end + thick, pixel)
    low = rail + over + 60 * pixel
    shapes.append(label((edge, low), "from the top edge down", "note"))
    box = (-30 * pixel, -over - 22 * pixel, end + thick + 110 * pixel, low + 10 * pixel)
    return drawing(words, box, shapes)


def _holes_from_the_face(joint, stile, both):
    """The holes in the stile as hidden lines, from its right edge, and from the other edge."""
    deep, half = float(nearby(joint.depth)), float(nearby(joint.diameter)) / 2
    starts = [(stile, stile - deep), *([(0.0, deep)] if both else [])]
    for center in joint.centers:
        y = float(nearby(center))
        for mouth, bottom in starts:
            for side in (y - half, y + half):
                yield line((mouth, side), (bottom, side), "hidden")
            yield line((bottom, y - half), (bottom, y + half), "hidden")
            yield line((mouth, y), (bottom, y), "center")


def _holes_from_the_end(joint, left):
    face, radius = float(nearby(joint.from_face)), nearby(joint.diameter) / 2
    for center in joint.centers:
        yield circle((left + face, nearby(center)), radius, "hole")


def _depths(show, joint, stile, foot, pixel):
    """How deep the holes are, and what is left of the stile."""
    bottom = stile - float(nearby(joint.depth))
    depth = show.brief(on_fine_marks(joint.depth, show, "reach"))
    left = show.brief(on_fine_marks(joint.beyond, show, "be there"))
    yield dimension((stile, foot), (bottom, foot), 20 * pixel, f"{depth} deep", "answer")
    yield dimension((bottom, foot), (0, foot), 40 * pixel, f"{left} of wood", "answer")


def _from_the_face(show, given, joint, left, foot, pixel):
    """How far the centers are from the face, on the rail's end."""
    role, field = ("answer", None) if given.from_face is None else ("given", "from_face")
    text = show.brief(on_fine_marks(joint.from_face, show))
    right = left + float(nearby(joint.from_face))
    yield dimension((right, foot), (left, foot), 28 * pixel, text, role, field)


def _figures(show, given, joint, right, pixel):
    """How far down each center is from the top edge, beside the rail's end."""
    for row, number in enumerate(_told(len(joint.centers))):
        center = joint.centers[number]
        is_inset = number == 0 and given.inset is not None
        yield dimension(
            (right, 0),
            (right, nearby(center)),
            (24 + 30 * row) * pixel,
            show.brief(center),
            "given" if is_inset else "answer",
            "inset" if is_inset else None,
        )


def _told(count):
    """The numbers of the dowels whose centers have a dimension: the first two and the last."""
    return sorted({0, min(1, count - 1), count - 1})
