"""Sheets one below the other, in one scale, each with its panels and what is left."""

from dataclasses import dataclass
from itertools import pairwise

from sawside.drawing.boards.blocks import blocks_of
from sawside.drawing.boards.size_lines import lines_of
from sawside.drawing.boards.ticks import TICK, ticks
from sawside.drawing.shapes import dimension, drawing, label, rectangle
from sawside.lengths.real import nearby

MOST_DRAWN = 6
"""Sheets that are drawn; the list has all of them."""

_SCREEN, _TALL = 316, 152
"""Pixels of the drawing on a narrow phone: across, and down where there is but one sheet."""

_SMALL, _ABOVE, _EDGE, _NEAR = 24, 14, 12, 13
"""Pixels of a part that is dimensioned, and of what is around a sheet."""


@dataclass(frozen=True, slots=True)
class _Letters:
    """Pixels of a letter of a given size, of an answer and of a note; of a line of text by itself
    and of one of several; how far off the length of a sheet is, below its first cuts."""

    given: float
    answer: float
    note: float
    line: int
    row: int
    far: int


_USUAL = _Letters(9, 10.5, 8.8, 20, 17, 38)
_SMALLER = _Letters(7.8, 8.5, 7.8, 16, 15, 30)
"""One sheet is drawn as high as it may be over the fields, with the smaller letters that the page
then takes; more of them are drawn as wide as the screen."""


def cut_sheets(words, sheets):
    """The drawing of `sheets`, each (title, sheet, texts of its length and width, their fields,
    first cuts, parts); exact inches. The first cuts are (which side they divide, [(start, end,
    text)]); a part is (what has x, y, length and width, role, (name, size)). Small parts alike
    beside each other are told together; a text that has no room is left out.
    """
    letters = _SMALLER if len(sheets) == 1 else _USUAL
    before, after = _sides(sheets, letters)
    longest = max(nearby(sheet.length) for _, sheet, *_ in sheets)
    pixel = longest / (_SCREEN - before - after)
    if len(sheets) == 1:
        [(_, only, _, _, first, _)] = sheets
        pixel = max(pixel, nearby(only.width) / (_TALL - 2 * _ABOVE - _below(first[0], letters)))
    shapes, top = [], 0.0
    for title, sheet, sides, fields, first, parts in sheets:
        length, bottom = nearby(sheet.length), top + nearby(sheet.width)
        shapes.append(label((0, top - _ABOVE * pixel), title, "name", "start"))
        shapes.append(rectangle(0, top, length, bottom, "waste"))
        shapes += _parts(parts, top, pixel, letters)
        shapes += _first_cuts(*first, top, bottom, pixel, letters)
        corners = (0, bottom), (length, bottom), (length, top)
        away = (letters.far if first[0] == 0 else _NEAR), after / 2
        for out, ends, text, field in zip(away, pairwise(corners), sides, fields, strict=True):
            shapes.append(dimension(*ends, -out * pixel, text, field=field))
        top = bottom + (_below(first[0], letters) + 2 * _ABOVE) * pixel
    spare = max(_SCREEN - before - after - longest / pixel, 0) / 2
    left, right = -(before + spare) * pixel, longest + (after + spare) * pixel
    bottom = top - 2 * _ABOVE * pixel
    return drawing(words, (left, -2 * _ABOVE * pixel, right, bottom), shapes)


def _below(along, letters):
    """Pixels below a sheet whose first cuts divide this side."""
    return (letters.far if along == 0 else _NEAR) + 12


def _sides(sheets, letters):
    """Pixels that the texts take before the sheets, where their first cuts are rips, and after."""
    rips = [text for *_, (along, runs), _ in sheets if along == 1 for _, _, text in runs]
    before = max((_NEAR + 8 + len(text) * letters.answer for text in rips), default=_EDGE)
    return before, max(10 + len(sides[1]) * letters.given for _, _, sides, *_ in sheets)


def _first_cuts(along, runs, top, bottom, pixel, letters):
    """What the first cuts take, where there is room to say it."""
    for start, end, text in runs:
        start, end = nearby(start), nearby(end)
        if along == 0 and (end - start) / pixel > (len(text) + 1) * letters.note:
            yield dimension((start, bottom), (end, bottom), -_NEAR * pixel, text, "answer")
        elif along == 1 and (end - start) / pixel > _SMALL:
            ends = (0, top + end), (0, top + start)
            yield dimension(*ends, _NEAR * pixel, text, "answer")


def _parts(parts, top, pixel, letters):
    """The parts of a sheet, with their texts."""
    told = {id(part): (role, texts) for part, role, texts in parts}

    def alike(part):
        role, texts = told[id(part)]
        wide, high = nearby(part.length) / pixel, nearby(part.width) / pixel
        if role != "stock" or _texts(*texts, 1, (wide, high), letters):
            return None
        return texts, part.length, part.width

    for block in blocks_of([part for part, *_ in parts], alike):
        role, texts = told[id(block.first)]
        left, right = nearby(block.columns[0]), nearby(block.right)
        near, far = top + nearby(block.rows[0]), top + nearby(block.bottom)
        yield rectangle(left, near, right, far, role)
        yield from ticks(block, 1.0, pixel, top)
        inner = 2 * TICK
        wide = (right - left) / pixel - (inner if len(block.rows) > 1 else 0)
        high = (far - near) / pixel - (inner if len(block.columns) > 1 else 0)
        lines = _texts(*texts, block.count, (wide, high), letters)
        first = (near + far - (len(lines) - 1) * letters.row * pixel) / 2
        for number, text in enumerate(lines):
            yield label(((left + right) / 2, first + number * letters.row * pixel), text, "note")


def _texts(name, size, count, room, letters):
    """What has room of how many there are, their name and their size."""
    wide, high = room

    def has_room(text):
        return len(text) * letters.note + 4 < wide

    named = [f"{count} × {name}" if count > 1 else name] if name else []
    alone = f"{count} of {size}" if count > 1 else size
    whole = [*named, *lines_of(size, has_room)] if named else []
    for lines in (whole, named, lines_of(alone, has_room)):
        needed = len(lines) * letters.row + 3 if len(lines) > 1 else letters.line
        if lines and lines[0] and needed < high and all(map(has_room, lines)):
            return lines
    return []
