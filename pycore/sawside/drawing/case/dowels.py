"""A stile from its face with holes in its edge, and below it that edge and the rail's end.

All have the rail's width from left to right, in scale, with the reference edge at the left.
"""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import circle, dimension, drawing, label, line, rectangle
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import nearby

_SCREEN = 328
_MARGINS = 150
_MOST_TOLD = 4
"""So many centers have their own dimension; of more, the first and the last."""


@lazy
def dowels_drawing(show, given, joint, words):
    """The drawing of a `Joint`; `given` says which numbers were filled in, `words` what is seen."""
    rail, stile, thick = (
        float(nearby(each)) for each in (joint.rail, joint.stile, joint.thickness)
    )
    pixel = max(rail, (stile + 2 * thick) / 2) / (_SCREEN - _MARGINS)
    edge = stile + 46 * pixel
    end = edge + thick + 34 * pixel
    over = 22 * pixel
    shapes = [
        rectangle(-over, 0, rail + over, stile),
        *_holes_from_the_face(joint, stile, given.both == "yes"),
        label((rail / 2, -12 * pixel), "stile", "name"),
        rectangle(-over, edge, rail + over, edge + thick),
        label((rail / 2, edge - 14 * pixel), "stile’s edge", "name"),
        rectangle(0, end, rail, end + thick),
        label((rail / 2, end - 14 * pixel), "rail’s end", "name"),
    ]
    for top in (edge, end):
        shapes += _holes_from_the_end(joint, top)
    shapes += _depths(show, joint, rail + over, stile, pixel)
    shapes += _ends(show, given, joint, end, pixel)
    foot = end + thick + (40 + 24 * len(_told(joint))) * pixel
    shapes.append(label((0, foot), "from the reference edge, left", "note", "start"))
    box = (-58 * pixel, -26 * pixel, rail + 92 * pixel, foot + 14 * pixel)
    return drawing(words, box, shapes)


def _holes_from_the_face(joint, stile, both):
    """The holes in the stile as hidden lines, up from its lower edge, and from the other edge."""
    deep, half = float(nearby(joint.depth)), float(nearby(joint.diameter)) / 2
    starts = [(stile, stile - deep), *([(0.0, deep)] if both else [])]
    for center in joint.centers:
        x = float(nearby(center))
        for mouth, bottom in starts:
            for side in (x - half, x + half):
                yield line((side, mouth), (side, bottom), "hidden")
            yield line((x - half, bottom), (x + half, bottom), "hidden")
            yield line((x, mouth), (x, bottom), "center")


def _holes_from_the_end(joint, top):
    face, radius = nearby(joint.from_face), nearby(joint.diameter) / 2
    for center in joint.centers:
        yield circle((nearby(center), top + float(nearby(face))), radius, "hole")


def _depths(show, joint, right, stile, pixel):
    """How deep the holes are, and what is left of the stile."""
    bottom = stile - float(nearby(joint.depth))
    depth = show.brief(on_fine_marks(joint.depth, show, "reach"))
    left = show.brief(on_fine_marks(joint.beyond, show, "be there"))
    yield dimension((right, bottom), (right, stile), 30 * pixel, depth, "answer")
    yield dimension((right, 0), (right, bottom), 30 * pixel, left, "answer")


def _ends(show, given, joint, top, pixel):
    """The centers from the reference edge and from the face, on the rail's end."""
    foot = top + float(nearby(joint.thickness))
    for row, number in enumerate(_told(joint)):
        x = float(nearby(joint.centers[number]))
        is_inset = number == 0 and given.inset is not None
        yield dimension(
            (x, foot),
            (0, foot),
            (24 + 24 * row) * pixel,
            show.brief(joint.centers[number]),
            "given" if is_inset else "answer",
            "inset" if is_inset else None,
        )
    face, right = top + float(nearby(joint.from_face)), nearby(joint.rail)
    told = given.from_face is not None
    text = show.brief(on_fine_marks(joint.from_face, show))
    role, field = ("given", "from_face") if told else ("answer", None)
    yield dimension((right, top), (right, face), 30 * pixel, text, role, field)


def _told(joint):
    """The numbers of the dowels whose centers have a dimension."""
    count = len(joint.centers)
    return list(range(count)) if count <= _MOST_TOLD else [0, 1, count - 1]
