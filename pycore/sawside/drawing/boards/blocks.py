"""Pieces alike beside each other, too small to be told one by one, as blocks of them."""

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

_KERF = Fraction(1, 4)
"""Inches: no cut between two pieces of a block is wider."""


@dataclass(frozen=True, slots=True)
class Block:
    """Rows of pieces like `first`: exact inches from the left end and the near edge, where each
    piece of a row and each row starts, and where the last of them ends."""

    first: Any
    columns: tuple[Fraction, ...]
    rows: tuple[Fraction, ...]
    right: Fraction
    bottom: Fraction

    @property
    def count(self):
        """How many pieces it is."""
        return len(self.columns) * len(self.rows)


def blocks_of(pieces, alike):
    """The `Block`s of pieces, which have `x`, `y`, `length` and `width` in exact inches.

    Those of which `alike` says the same, a tuple that has their sizes in it, are joined where only
    a kerf is between them: to rows, and rows to blocks. One of which it says None stays alone.
    """
    alone = [
        Block(each, (each.x,), (each.y,), each.x + each.length, each.y + each.width)
        for each in pieces
    ]
    small = [block for block in alone if alike(block.first) is not None]
    small.sort(key=lambda block: (alike(block.first), block.rows, block.columns))
    rows = _joined(small, alike, _next_in_row)
    rows.sort(key=lambda block: (alike(block.first), block.columns, block.rows))
    return [b for b in alone if alike(b.first) is None] + _joined(rows, alike, _next_row)


def _joined(blocks, alike, join):
    made = []
    for block in blocks:
        is_same = made and alike(made[-1].first) == alike(block.first)
        whole = join(made[-1], block) if is_same else None
        if whole:
            made[-1] = whole
        else:
            made.append(block)
    return made


def _next_in_row(one, other):
    if one.rows != other.rows or not 0 <= other.columns[0] - one.right <= _KERF:
        return None
    return replace(one, columns=one.columns + other.columns, right=other.right)


def _next_row(one, other):
    if one.columns != other.columns or not 0 <= other.rows[0] - one.bottom <= _KERF:
        return None
    return replace(one, rows=one.rows + other.rows, bottom=other.bottom)
