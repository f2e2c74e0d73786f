"""Cells that another program could take for a formula, shielded by an apostrophe, and back.

A program of another country may part cells at semicolons or tabs, and take a line's end in a cell
for the end of its row: what stands behind one of these is shielded as a cell of its own. An
apostrophe before a cell says that it is text (common practice with spreadsheets, no source).
"""

import re
import unicodedata

_SIGNS = r"=+\-−@＝＋－＠"
_LINES = "\t\n\r\v\f\x1c\x1d\x1e\x85\u2028\u2029"
_PARTS = f";{_LINES}"
_UNSEEN = "".join(
    each
    for each in map(chr, (*range(0x3001), 0xFEFF))
    if each not in _PARTS and unicodedata.category(each) in ("Cc", "Cf", "Zs")
)
"""What another program may leave out before it looks for a sign."""

_FORMULA = f'[{_UNSEEN}"]*[{_SIGNS}]'
_BEGINS = re.compile(f"['{_LINES}]|{_FORMULA}")
_SHIELDED = re.compile(f"'(?:{_BEGINS.pattern})")
_BEHIND = re.compile(f"(?<=[{_PARTS}])(?='*{_FORMULA})")
_SHIELDED_BEHIND = re.compile(f"(?<=[{_PARTS}])'(?='*{_FORMULA})")


def shielded(cell):
    """The cell with an apostrophe before all that could be a formula, or could be taken for one."""
    cell = _BEHIND.sub("'", cell)
    return f"'{cell}" if _BEGINS.match(cell) else cell


def unshielded(cell):
    """The cell that `shielded` was given."""
    cell = cell[1:] if _SHIELDED.match(cell) else cell
    return _SHIELDED_BEHIND.sub("", cell)
