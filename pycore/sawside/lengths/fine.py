"""Lengths on finer marks than a piece is cut to: small differences, and what a person gave."""

import re

from sawside.lengths.display import mark_text
from sawside.lengths.marks import GRIDS, told_mark

_ENDING_ZEROS = re.compile(r"(?<=\.)(\d*[1-9])0+(?=″| mm)")


def on_fine_marks(length, show, must=None):
    """A length (exact inches) on the nearest of the finest marks of the person's own system.

    Those are sixty-fourths, thousandths of an inch where marks are decimals, or tenths of a
    millimeter; what the person gave is on itself. What is less than half of one, and is not
    nothing, is told in small decimals: "0 and a little more" says nothing of a difference. `must`
    as in `Show.rounded`.
    """
    given = show.as_given(length, must)
    return given or told_mark(length, fine_grid(show.settings), must=must)


def fine_text(length, show):
    """A length from 0 up on fine marks: "1/32″", "≈ 0.8 mm"; "0.004″" where that would be 0."""
    rounded = on_fine_marks(length, show)
    text = mark_text(rounded, show.settings.display)
    if rounded.grid.name not in GRIDS:  # a small decimal, which no tape has
        text = _ENDING_ZEROS.sub(r"\1", text)
    return text if rounded.direction == "exact" else f"≈ {text}"


def limit_text(length, show, must):
    """A limit from 0 up that a remedy names, on fine marks and on the side of it that is taken:
    `must` is "stay under" for the most, "reach" for the least."""
    return fine_text(on_fine_marks(length, show, must).mark, show)


def fine_grid(settings):
    """The finest marks of the person's own system."""
    if settings.display == "mm":
        return GRIDS["0.1 mm"]
    return GRIDS["1/64" if settings.grid.division else ".001 in"]
