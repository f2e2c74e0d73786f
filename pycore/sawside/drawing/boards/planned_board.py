"""A board with the pieces that come out of it, each with its mark, and named where there is room,
what is bad of it, what is left, and the next cut."""

from dataclasses import dataclass, replace
from fractions import Fraction

from sawside.drawing.boards.bad_wood import crossed_out
from sawside.drawing.boards.blocks import blocks_of
from sawside.drawing.boards.size_lines import lines_of, wrapped
from sawside.drawing.boards.ticks import TICK, ticks
from sawside.drawing.shapes import dimension, drawing, label, line, rectangle
from sawside.lengths.real import nearby

_SCREEN = 316
"""Pixels of the drawing on a narrow phone; the board has what the text at its end leaves."""

_LETTER, _LINE, _ROW, _STICK, _EDGE, _OUT = 9, 15, 17, 30, 14, 18

_HIGHEST, _STRIP = 110, 19
"""Pixels: so high a narrow board is drawn at most, for the marks of its strips, and a strip."""

_OVER = 6
"""Pixels that the line of a cut goes on beyond the wood."""


@dataclass(frozen=True, slots=True)
class Drawn:
    """A rectangle of a board: its corner and sides in exact inches (`width` None: all of it), its
    role, its mark and texts, and the key of the part that it is of."""

    x: Fraction
    y: Fraction
    length: Fraction
    width: Fraction | None
    role: str
    mark: str = ""
    texts: tuple[str, ...] = ()
    part: str | None = None


@dataclass(frozen=True, slots=True)
class NextCut:
    """The cut that comes next and what it is called, in exact inches from the board's corner: a
    "rip" `at` this far across, from `start` to `end` along; of a "crosscut" the other way (`end`
    None: all of it)."""

    name: str
    way: str
    at: Fraction
    start: Fraction
    end: Fraction | None


def planned_board(words, board, rectangles, bad=(), cut=None):
    """The drawing of a `board`, (length, width, their texts, what it says of its grain), with its
    `Drawn` rectangles, the stretches (from, to) that are `bad`, and its `NextCut`, if any.

    `width` is None for a stick. The mark of a rectangle is always told, small ones alike together;
    of its texts those that it has room for.
    """
    length, width, sizes, grain = board
    long = nearby(length)
    left = max(len(sizes[1]) * _LETTER, _EDGE) + _OUT / 2
    pixel = long / (_SCREEN - left - _EDGE)
    high = _high(width, rectangles, pixel)
    scale = high if width is None else high / nearby(width)
    shapes = [rectangle(0, 0, long, high, "waste")]
    for start, end in bad:
        shapes += crossed_out(max(nearby(start), 0), 0, min(nearby(end), long), high)
    for each in blocks_of(*_small(rectangles, width, scale, pixel)):
        shapes += _block(each, scale, high, pixel)
    shapes.append(dimension((0, 0), (long, 0), _OUT * pixel, sizes[0]))
    if width is not None:
        shapes.append(dimension((0, high), (0, 0), left / 2 * pixel, sizes[1]))
    shapes += _cut(cut, high, scale, pixel) if cut else []
    is_wider = width is not None and scale > 1
    note = "drawn wider" if is_wider else grain
    bottom = high + (_EDGE + (_LINE if note else 0)) * pixel
    if note:
        shapes.append(label((0, high + _LINE * pixel), note, "note", "start"))
    words += " Drawn wider than it is." if is_wider else ""
    box = (-left * pixel, -(_EDGE + _OUT) * pixel, long + _EDGE * pixel, bottom)
    return drawing(words, box, shapes)


def _high(width, rectangles, pixel):
    """How high a board is drawn: in scale, or higher for what is written on its strips."""
    if width is None:
        return _STICK * pixel
    narrowest = min((each.width for each in rectangles if each.mark and each.width), default=width)
    wanted = min(nearby(width / narrowest) * _STRIP, _HIGHEST)
    return max(nearby(width), max(wanted, _STICK) * pixel)


def _small(rectangles, width, scale, pixel):
    """The rectangles with their widths, that of a stick 1, and what those have in common that are
    to be joined."""
    whole = {"y": Fraction(0), "width": Fraction(1) if width is None else width}
    full = [replace(each, **({} if each.width else whole)) for each in rectangles]

    def alike(each):
        high, wide = nearby(each.width) * scale / pixel, nearby(each.length) / pixel
        has_room = high >= _LINE and wide >= (len(each.mark) + 1) * _LETTER
        if not each.mark or has_room:
            return None
        return each.mark, each.role, each.length, each.width

    return full, alike


def _cut(cut, high, scale, pixel):
    """The line of a cut across what it cuts, and what it is."""
    over, at = _OVER * pixel, nearby(cut.at)
    if cut.way == "rip":
        at *= scale
        ends = (nearby(cut.start) - over, at), (nearby(cut.end) + over, at)
        told = label((nearby(cut.end) + over, at), cut.name, "note")
    else:
        start, end = nearby(cut.start) * scale, high if cut.end is None else nearby(cut.end) * scale
        ends = (at, start - over), (at, end + over)
        told = label((at, high + _LINE * pixel), cut.name, "note")
    return [line(*ends, "cut"), told]


def _block(block, scale, high, pixel):
    """A piece with its texts, or a block of them with how many there are."""
    each = block.first
    left, right = nearby(block.columns[0]), nearby(block.right)
    top, bottom = nearby(block.rows[0]) * scale, min(nearby(block.bottom) * scale, high)
    shapes = [rectangle(left, top, right, bottom, each.role, each.part)]
    shapes += ticks(block, scale, pixel)
    inner = 2 * TICK
    wide = (right - left) / pixel - (inner if len(block.rows) > 1 else 0)
    tall = (bottom - top) / pixel - (inner if len(block.columns) > 1 else 0)
    texts = _texts(each, block.count, wide, tall)
    first = (top + bottom - (len(texts) - 1) * _ROW * pixel) / 2
    for number, text in enumerate(texts):
        shapes.append(label(((left + right) / 2, first + number * _ROW * pixel), text, "note"))
    return shapes


def _texts(each, count, wide, tall):
    """The mark, with the name where that has room beside it, and what else has room."""
    name, *more = each.texts or ("",)
    mark = f"{count} × {each.mark}" if count > 1 else each.mark
    named = wrapped(f"{mark} {name}".split(), lambda line: _fits(line, wide))
    has_room = len(named) == 1 or len(named) * _ROW + 2 < tall
    texts = named if named and has_room else [mark] if mark else []
    for size in more:
        lines = lines_of(size, lambda line: _fits(line, wide))
        texts += lines if (len(texts) + len(lines)) * _ROW + 2 < tall else []
    return texts if texts and (each.mark or tall > _LINE) else []


def _fits(text, wide):
    return len(text) * _LETTER < wide
