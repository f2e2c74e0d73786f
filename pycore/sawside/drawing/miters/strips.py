"""A board seen at its end, ripped in two, and below it the two strips put together."""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, rectangle
from sawside.lengths.real import nearby

_SCREEN = 316


@lazy
def two_strips_drawing(show, thickness, widths, given, setting, together):
    """`widths` are (wider, narrower) as finished, `setting` the rip setting with what is planed
    off, `together` (height, projection); `given` holds kerf, clean_up and laid."""
    wide, narrow = (nearby(width) for width in widths)
    thick, kerf, clean = (nearby(each) for each in (thickness, given.kerf, given.clean_up))
    board = wide + narrow + kerf + 2 * clean
    high, out = (nearby(each) for each in together)
    span = max(board * 1.14, high * 1.6, out * 1.45, thick * 4)
    pixel = span / _SCREEN
    cut = wide + clean
    finished = [f"{show.brief(each)}{' planed' if given.clean_up else ''}" for each in widths]
    x0 = (span - board) / 2 + 4 * pixel
    shapes = [
        rectangle(x0 - 12 * pixel, -14 * pixel, x0, thick, "hatch"),
        rectangle(x0, 0, x0 + wide, thick),
        rectangle(x0 + cut + kerf + clean, 0, x0 + board, thick),
        rectangle(x0 + wide, 0, x0 + cut + kerf + clean, thick, "waste"),
        line((x0 + cut, -18 * pixel), (x0 + cut, thick + 18 * pixel), "cut"),
        dimension((x0, 0), (x0 + cut, 0), 48 * pixel, f"rip {show.brief(setting)}", "answer"),
        dimension((x0 + wide, thick), (x0, thick), 30 * pixel, finished[0], "answer"),
        dimension((x0 + board - narrow, 0), (x0 + board, 0), 16 * pixel, finished[1], "answer"),
    ]
    top = thick + 78 * pixel
    shapes += _together(show, given.laid, (wide, narrow, thick), together, top, span, pixel)
    laid = {
        "flat": "flat, stacked",
        "above": "on edge, one above the other",
        "before": "on edge, one in front of the other",
    }[given.laid]
    words = (
        f"A board seen at its end, ripped {show.brief(setting)} from the fence into strips of "
        f"{show.brief(widths[0])} and {show.brief(widths[1])}. Below, the strips assembled "
        f"{laid}: {show.brief(together[0])} high, {show.brief(together[1])} out from the case."
    )
    return drawing(words, (0, -72 * pixel, span, top + high + 66 * pixel), shapes)


def _together(show, laid, sizes, together, top, span, pixel):
    """The strips against the case at their left; the narrower one is above, or in front."""
    wide, narrow, thick = sizes
    high, out = (nearby(each) for each in together)
    bottom, x0 = top + high, max((span - out) / 2 - 36 * pixel, 12 * pixel)
    boxes = {
        "flat": ((0, thick, wide, 2 * thick), (0, 0, narrow, thick)),
        "above": ((0, narrow, thick, high), (0, 0, thick, narrow)),
        "before": ((0, 0, thick, high), (thick, high - narrow, out, high)),
    }[laid]
    shapes = [rectangle(x0 - 10 * pixel, top - 12 * pixel, x0, bottom + 12 * pixel, "hatch")]
    shapes += [rectangle(x0 + a, top + b, x0 + c, top + d) for a, b, c, d in boxes]
    return [
        *shapes,
        label((x0 - 10 * pixel, bottom + 28 * pixel), "case", "note", "start"),
        dimension(
            (x0 + out, bottom), (x0, bottom), 50 * pixel, f"{show.brief(together[1])} out", "answer"
        ),
        dimension(
            (x0 + out, top),
            (x0 + out, bottom),
            64 * pixel,
            f"{show.brief(together[0])} high",
            "answer",
        ),
    ]
