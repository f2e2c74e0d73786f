"""A panel on the bench with the joints cut in it: its bottom or left end at the left, front edge
down; one that is turned over has its left end at the right.

`panel` is one of `reckoners/case/shared/carcass/panel.py`.
"""

from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import dimension, drawing, label, line, polygon, rectangle
from sawside.lengths.real import nearby

_SCREEN = 300


@lazy
def panel_drawing(show, panel):
    """The drawing, in scale."""
    long, wide = (float(nearby(each)) for each in (panel.length, panel.width))
    pixel = max(long, wide) * 6 / 5 / _SCREEN
    shapes = [_outline(panel, long, wide)]
    for cut in panel.cuts:
        if cut.along is not None and cut.kind != "notch":
            left, right = cut.along
            if panel.turned:
                left, right = panel.length - right, panel.length - left
            front, back = (wide - float(nearby(each)) for each in cut.across)
            shapes.append(rectangle(left, back, right, front, "hatch"))
    if panel.bands:
        shapes.append(line((0, wide + 3 * pixel), (long, wide + 3 * pixel), "cut"))
    length, width = (show.brief(each, panel.must) for each in (panel.length, panel.width))
    shapes.append(dimension((0, 0), (long, 0), 24 * pixel, length, "answer"))
    shapes.append(dimension((0, wide), (0, 0), 24 * pixel, width, "answer"))
    ends = ("bottom end", "top end") if panel.upright else ("left end", "right end")
    ends = reversed(ends) if panel.turned else ends
    for (x, align), end in zip(((0, "start"), (long, "end")), ends, strict=True):
        shapes.append(label((x, wide + 18 * pixel), end, "note", align))
    words = f"{panel.name}, {length} long and {width} wide, front edge down, its joints marked."
    box = (-48 * pixel, -44 * pixel, long + 10 * pixel, wide + 30 * pixel)
    return drawing(words, box, shapes)


def _outline(panel, long, wide):
    """The panel, with the notch of a toe kick out of its bottom front corner."""
    notches = [cut for cut in panel.cuts if cut.kind == "notch"]
    if not notches:
        return rectangle(0, 0, long, wide)
    high, deep = (float(nearby(upper)) for _, upper in (notches[0].along, notches[0].across))
    front = wide - deep
    return polygon([(0, 0), (long, 0), (long, wide), (high, wide), (high, front), (0, front)])
