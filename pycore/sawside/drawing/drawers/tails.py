"""The end of a tail board from its face, reference edge at the top, with its tails."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import nearby

_HIGH = 200


@lazy
def tails_drawing(show, joint, tails):
    """The drawing of `Dovetails` (`reckoners.drawers.shared.joints`), in scale."""
    high, deep = float(nearby(joint.height)), float(nearby(joint.deep))
    pixel = max(high / _HIGH, deep / 90)
    body = 90 * pixel
    end = body + deep
    points = [(0, 0), (body, 0)]
    for (start, stop), (inner, outer) in zip(joint.at_end, joint.at_shoulder, strict=True):
        points += [(body, inner), (end, start), (end, stop), (body, outer)]
    shapes = [polygon([*points, (body, high), (0, high)])]
    shapes.append(line((body, 0), (body, high), "hidden"))
    shapes.append(label((body / 2, -14 * pixel), "tail board", "name"))
    text = show.brief(joint.height)
    shapes.append(dimension((0, high), (0, 0), 26 * pixel, text, "given", "height"))
    first, last = joint.at_end[0]
    text = show.brief(on_fine_marks(first, show))
    shapes.append(dimension((end, 0), (end, first), 24 * pixel, text, "answer"))
    text = show.brief(on_fine_marks(joint.tail, show))
    shapes.append(dimension((end, first), (end, last), 24 * pixel, f"tail {text}", "answer"))
    text = show.brief(on_fine_marks(joint.deep, show))
    shapes.append(dimension((end, high), (body, high), 26 * pixel, f"long {text}", "answer"))
    box = (-76 * pixel, -32 * pixel, end + 110 * pixel, high + 48 * pixel)
    words = (
        f"The end of a tail board, its reference edge at the top, with {tails}. They are "
        "widest at the end."
    )
    return drawing(words, box, shapes)
