"""Drawer fronts in a column from the front, with the height of each."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, rectangle
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import nearby

_HIGH = 220


@lazy
def column_drawing(show, given, column):
    """The drawing of a `Column` (`reckoners.drawers.shared.column`), in scale in its height."""
    high, edge = float(nearby(given.height)), float(nearby(column.edge))
    pixel = high / _HIGH
    wide, frame = 120 * pixel, 16 * pixel
    side = edge if given.front == "inset" else min(edge, 0)
    shapes = [
        rectangle(-frame, -frame, wide + frame, high + frame, "ghost"),
        rectangle(0, 0, wide, high, "space"),
    ]
    if given.divided == "rails":
        for top, front in list(zip(column.tops, column.fronts, strict=True))[:-1]:
            low = float(nearby(top + front)) + 2 * edge
            shapes.append(rectangle(0, low, wide, low + float(nearby(given.rail))))
    text = show.brief(given.height)
    shapes.append(dimension((0, high), (0, 0), frame + 26 * pixel, text, "given", "height"))
    for number, (top, front) in enumerate(zip(column.tops, column.fronts, strict=True)):
        head = float(nearby(top)) + edge
        foot = head + float(nearby(front))
        shapes.append(rectangle(side, head, wide - side, foot))
        listed = given.layout == "given" and number < given.drawers - 1
        shapes.append(
            dimension(
                (wide + frame, head),
                (wide + frame, foot),
                26 * pixel,
                show.brief(on_fine_marks(front, show, "go in")),
                "given" if listed else "answer",
                "heights" if listed else None,
            )
        )
    box = (-frame - 80 * pixel, -frame - 12 * pixel, wide + frame + 84 * pixel, high + 28 * pixel)
    return drawing(_words(show, given, column), box, shapes)


def _words(show, given, column):
    fronts = ", ".join(show.brief(on_fine_marks(each, show, "go in")) for each in column.fronts)
    return (
        f"An opening {show.brief(given.height)} high from the front, with {given.drawers} drawer "
        f"fronts. From the top down they are {fronts} high."
    )
