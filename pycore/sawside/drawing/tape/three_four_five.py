"""The triangle of sides 3, 4 and 5 in a corner of two walls."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, line, polygon
from sawside.lengths.real import nearby

_SCREEN = 210


@lazy
def three_four_five(show, along, across, diagonal):
    """The drawing of the triangle with these sides, exact inches, in the corner that they meet."""
    wide, deep = nearby(along), nearby(across)
    pixel = max(wide, deep) / _SCREEN
    beyond = 24 * pixel
    corner, first, second = (0, deep), (wide, deep), (0, 0)
    square = 14 * pixel
    shapes = [
        polygon([corner, first, second], "space"),
        line((0, deep), (wide + beyond, deep), "edge"),
        line((0, deep), (0, -beyond), "edge"),
        line(first, second, "center"),
        line((square, deep), (square, deep - square), "hidden"),
        line((square, deep - square), (0, deep - square), "hidden"),
        dimension(first, corner, 30 * pixel, show.brief(along), "answer"),
        dimension(corner, second, 34 * pixel, show.brief(across), "answer"),
        dimension(second, first, 0, show.brief(diagonal), "answer"),
    ]
    words = (
        f"Two walls meet at the lower left. A mark {show.brief(along)} along the first, one "
        f"{show.brief(across)} along the second; {show.brief(diagonal)} between the marks makes "
        "the corner square."
    )
    box = (-78 * pixel, -beyond - 6 * pixel, wide + beyond + 40 * pixel, deep + 50 * pixel)
    return drawing(words, box, shapes)
