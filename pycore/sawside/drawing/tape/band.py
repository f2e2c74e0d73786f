"""A mark on the tape with the band in which the true place may lie."""

from sawside.drawing.shapes import dimension, drawing, label, line, rectangle
from sawside.drawing.tape.ruler import WIDTH, Ruler
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.real import nearby

_TIMES = 3
"""The stretch of tape that is drawn, in allowances: the band is two of them."""


def band(length, size, show):
    """The drawing of the tape around `length`, the band `size` to both sides of it."""
    metric = show.settings.display == "mm"
    middle, half = nearby(length), nearby(size) * _TIMES / 2
    ruler = Ruler(middle - half, middle + half, 0, WIDTH, metric=metric)
    left, x, right = (ruler.at(middle + way * nearby(size)) for way in (-1, 0, 1))
    shapes = [
        rectangle(left, 0, right, 40, "hatch"),
        *ruler.shapes(0, numbers=False),
        line((x, -8), (x, 48), "cut"),
        label((x, 62), fine_text(length, show), "name"),
        *(
            label((place, 62), show.brief(on_fine_marks(length + way * size, show, must)), "note")
            for place, way, must in ((left, -1, "be there"), (right, 1, "reach"))
            if length + way * size > 0
        ),
        dimension((left, 0), (x, 0), 22, fine_text(size, show), "answer"),
        dimension((x, 0), (right, 0), 22, fine_text(size, show), "answer"),
    ]
    words = (
        f"The tape around {fine_text(length, show)}, with a band {fine_text(size, show)} to each "
        "side where the true length could be."
    )
    return drawing(words, (0, -42, WIDTH, 78), shapes)
