"""Labels in the grid of a sheet of stickers: where each lies, and its lines of text.

All places are millimeters from the sheet's upper left corner, y down.
"""

from dataclasses import dataclass
from textwrap import wrap

from sawside.drawing.shapes import label, line
from sawside.lengths.real import nearby
from sawside.lengths.units import INCHES_PER

LEAST_WIDTH = 25.0
LEAST_HEIGHT = 12.0
"""The smallest sticker that holds a name and a length, millimeters."""

_ROLES = {"name": (3.6, 0.62), "length": (5.2, 0.6), "note": (2.9, 0.56)}
"""By role of a line: the size of its text in millimeters, and how wide a letter is of that size."""
_PAD = 2.0


@dataclass(frozen=True, slots=True)
class Grid:
    """`columns` by `rows` stickers on a `paper`; margins and gaps in millimeters."""

    paper: object
    columns: int
    rows: int
    top: float
    bottom: float
    left: float
    right: float
    across_gap: float
    up_gap: float

    @property
    def width(self):
        """The width of one sticker; 0 or less where none fits."""
        room = self.paper.width - self.left - self.right - (self.columns - 1) * self.across_gap
        return room / self.columns

    @property
    def height(self):
        """The height of one sticker; 0 or less where none fits."""
        room = self.paper.height - self.top - self.bottom - (self.rows - 1) * self.up_gap
        return room / self.rows

    def corner(self, at):
        """The upper left corner of the sticker `at`, counted from 0 along the rows."""
        row, column = divmod(at, self.columns)
        return (
            self.left + column * (self.width + self.across_gap),
            self.top + row * (self.height + self.up_gap),
        )


def millimeters(length):
    """An exact length in inches as millimeters, for drawing."""
    return float(nearby(length) / INCHES_PER["mm"])


def sticker_sheets(grid, stickers, first, outlined):
    """The sheets of `stickers`, each a list of (role, text), the first sticker at place `first`.

    `first` counts from 1. Lines that a sticker has no room for are left out, from the last.
    """
    each_sheet = grid.columns * grid.rows
    many = max(-(-(first - 1 + len(stickers)) // each_sheet), 1)
    sheets = [[] for _ in range(many)]
    for at, lines in enumerate(stickers, first - 1):
        sheet, place = divmod(at, each_sheet)
        sheets[sheet] += _sticker(grid, grid.corner(place), lines, outlined)
    return [
        {
            "number": number,
            "of": many,
            "width": grid.paper.width,
            "height": grid.paper.height,
            "words": f"Sheet {number} of {many}: "
            + ", ".join(shape["text"] for shape in shapes if shape.get("role") == "sticker-name"),
            "shapes": shapes,
        }
        for number, shapes in enumerate(sheets, 1)
    ]


def _sticker(grid, corner, lines, outlined):
    left, top = corner
    if outlined:
        yield from _outline(left, top, left + grid.width, top + grid.height)
    y, foot = top + _PAD, top + grid.height - _PAD
    for role, whole in lines:
        size, _ = _ROLES[role]
        for text in _in_lines(role, whole, letters_across(grid, role)):
            if y + size > foot + 1e-9:
                return
            yield label((left + _PAD, y + size / 2), text, f"sticker-{role}", "start")
            y += 1.3 * size


def letters_across(grid, role):
    """How many letters of a role a sticker has room for in a line."""
    size, wide = _ROLES[role]
    return max(int((grid.width - 2 * _PAD) / (size * wide)), 1)


def _in_lines(role, text, letters):
    """A note goes on in the next line; a name is shortened."""
    return wrap(text, letters) if role == "note" else [_shortened(text, letters)]


def _outline(left, top, right, bottom):
    corners = [(left, top), (right, top), (right, bottom), (left, bottom)]
    for start, end in zip(corners, corners[1:] + corners[:1], strict=True):
        yield line(start, end, "outline")


def _shortened(text, letters):
    return text if len(text) <= letters else text[: letters - 1].rstrip() + "…"
