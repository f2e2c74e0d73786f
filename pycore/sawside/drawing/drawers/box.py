"""A drawer box in its opening from the front, cut through: sides, and the bottom in its grooves."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, rectangle
from sawside.lengths.real import nearby

_WIDE, _HIGH = 190, 90


@lazy
def box_drawing(show, box):
    """The drawing of a `Box` (`reckoners.drawers.shared.box`), in scale."""
    given = box.given
    wide, high = float(nearby(given.width)), float(nearby(given.height))
    pixel = max(wide / _WIDE, high / _HIGH)
    left, side = float(nearby(box.width)), float(nearby(given.side))
    left, right = (wide - left) / 2, (wide + left) / 2
    low = high - float(nearby(box.below))
    top = low - float(nearby(box.height.mark))
    floor = low - float(nearby(given.up))
    half = float(nearby(box.bottom_width.mark)) / 2
    frame = 14 * pixel
    shapes = [
        rectangle(-frame, -frame, wide + frame, high + frame, "ghost"),
        rectangle(0, 0, wide, high, "space"),
        rectangle(left, top, left + side, low),
        rectangle(right - side, top, right, low),
        rectangle(
            wide / 2 - half, floor - float(nearby(given.bottom)), wide / 2 + half, floor, "hatch"
        ),
    ]
    shapes += _dimensions(show, box, (wide, high), (left, right), (top, low), pixel)
    note = f"box depth {show.brief(box.depth, 'go in')}"
    foot = high + frame + 58 * pixel
    shapes.append(label((wide / 2, foot), note, "note"))
    bounds = (-84 * pixel, -frame - 44 * pixel, wide + 84 * pixel, foot + 10 * pixel)
    return drawing(_words(show, box), bounds, shapes)


def _dimensions(show, box, opening, across, up, pixel):
    """The opening at the top and right, the box at the bottom and left."""
    (wide, high), (left, right), (top, low) = opening, across, up
    frame = 14 * pixel
    texts = [show.brief(each) for each in (box.given.width, box.given.height)]
    yield dimension((0, -frame), (wide, -frame), 22 * pixel, texts[0], "given", "width")
    yield dimension(
        (wide + frame, 0), (wide + frame, high), 22 * pixel, texts[1], "given", "height"
    )
    foot = high + frame
    text = show.brief(box.width, "go in")
    yield dimension((right, foot), (left, foot), 26 * pixel, f"box {text}", "answer")
    text = show.brief(box.height)
    yield dimension((-frame, low), (-frame, top), 26 * pixel, text, "answer")


def _words(show, box):
    wide, high = show.brief(box.width, "go in"), show.brief(box.height)
    return (
        f"An opening from the front, {show.brief(box.given.width)} wide and "
        f"{show.brief(box.given.height)} high. In it a drawer box, {wide} wide and {high} high, "
        "cut through: two sides, and the bottom in their grooves."
    )
