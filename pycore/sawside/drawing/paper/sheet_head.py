"""What stands on every sheet that is printed at true size: its name, and bars to check it by."""

from sawside.drawing.paper.sheets import MARGIN
from sawside.drawing.shapes import label, line

HEAD = 34.0
"""Kept for the heading below the upper margin, millimeters."""
SIDE = 16.0
"""Kept for the upright bars inside the right margin."""
BARS = ((100.0, "100 mm"), (101.6, "4 in"))
_TICK = 1.5


def sheet_head(paper, title, notes):
    """Title, notes and the bars of one sheet as shapes, millimeters from its upper left corner."""
    yield label((MARGIN, MARGIN + 2), title, "name", "start")
    for row, note in enumerate(notes):
        yield label((MARGIN, MARGIN + 7 + 4 * row), note, "note", "start")
    for row, (length, text) in enumerate(BARS):
        yield from _lying(length, text, MARGIN + HEAD - 11 + 5 * row)
        yield from _upright(length, text, paper, paper.width - MARGIN - 8 + 6 * row, row)


def _lying(length, text, y):
    start, end = (MARGIN, y), (MARGIN + length, y)
    yield named(line(start, end, "bar"), f"{text} across")
    for x, _ in (start, end):
        yield line((x, y - _TICK), (x, y + _TICK), "bar-end")
    yield label((end[0] + 3, y), f"{text}: measure me", "note", "start")


def _upright(length, text, paper, x, row):
    foot = paper.height - MARGIN
    yield named(line((x, foot), (x, foot - length), "bar"), f"{text} up")
    for y in (foot, foot - length):
        yield line((x - _TICK, y), (x + _TICK, y), "bar-end")
    yield label((x + _TICK, foot - length - 3 - 4 * (1 - row)), text, "note", "end")


def named(shape, name):
    """A shape with the name of what it stands for."""
    return shape | {"name": name}
