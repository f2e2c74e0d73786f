"""A frame that leans, by its two diagonals."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon
from sawside.lengths.fine import fine_text
from sawside.lengths.real import nearby

_SCREEN = 190
_LEAN = 26
"""Pixels that the drawn frame leans, whatever it is in truth: it would not be seen."""


@lazy
def racked_frame(show, given, offset, push, *, pushed=True):
    """The frame leaning the way it does, but much more; dashed where it would be square.

    `given` has its diagonals `rising` and `falling`, its `bottom` and `side` or None, exact
    inches; `offset` is how far the top leans to the right, or None; `push` says what to do,
    and one that is not to be `pushed` shows no push.
    """
    wide, high, pixel = _size(given)
    way = (given.rising > given.falling) - (given.rising < given.falling)
    off = way * _LEAN * pixel
    frame = [(off, 0), (wide + off, 0), (wide, high), (0, high)]
    rising, falling = (fine_text(given.rising, show), fine_text(given.falling, show))
    shapes = [polygon(frame)]
    if way:
        shapes.append(polygon([(0, 0), (wide, 0), (wide, high), (0, high)], "ghost"))
    for ends, text in (((frame[3], frame[1]), rising), ((frame[0], frame[2]), falling)):
        (x0, y0), (x1, y1) = ends
        at = ((x0 + 2 * x1) / 3, (y0 + 2 * y1) / 3)
        shapes += [line(*ends, "center"), label(at, text, "note")]
    if way and pushed:
        corner = (wide + off, 0) if way > 0 else (off, 0)
        much = "push" if offset is None else f"push {fine_text(abs(offset), show)}"
        ends = sorted([corner, (corner[0] - off, 0)])
        shapes.append(dimension(*ends, 24 * pixel, much, "answer"))
    shapes += _sides(show, given, wide, high, pixel)
    words = (
        f"A frame from the front, its diagonals {rising} from lower left to upper right and "
        f"{falling} from upper left to lower right. {push}."
        + (" The lean is exaggerated." if way else "")
    )
    side = max(76 * pixel, (high - wide) / 2 + 40 * pixel)
    return drawing(words, (-side, -42 * pixel, wide + side, high + 50 * pixel), shapes)


def _size(given):
    """Width, height and a pixel in drawn inches; a side that is not known is made up."""
    whole = nearby(given.rising + given.falling) / 2
    wide = nearby(given.bottom) if given.bottom else whole * 7 / 10
    high = nearby(given.side) if given.side else whole * 7 / 10
    pixel = max(wide, high) / _SCREEN
    return max(wide, 60 * pixel), max(high, 60 * pixel), pixel


def _sides(show, given, wide, high, pixel):
    if given.bottom is not None:
        text = fine_text(given.bottom, show)
        yield dimension((wide, high), (0, high), 30 * pixel, text, "given", field="bottom")
    if given.side is not None:
        text = fine_text(given.side, show)
        yield dimension((0, high), (0, 0), 52 * pixel, text, "given", field="side")
