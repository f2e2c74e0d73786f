"""Lengths on finer marks than a piece is cut to: small differences, and what a person gave."""

from sawside.lengths.display import decimal_text, mark_text
from sawside.lengths.marks import FINEST, GRIDS, to_mark
from sawside.lengths.real import sign
from sawside.lengths.units import INCHES_PER


def on_fine_marks(length, show):
    """A length (exact inches) on the nearest of the finest marks of the person's own system.

    Those are sixty-fourths, thousandths of an inch where marks are decimals, or tenths of a
    millimeter. What is less than half of one, and is not nothing, is told in small decimals:
    "0 and a little more" says nothing of a difference.
    """
    rounded = to_mark(length, _fine_grid(show.settings))
    if rounded.mark == 0 and sign(length) != 0:
        return to_mark(length, FINEST[rounded.grid.unit])
    return rounded


def fine_text(length, show):
    """A length from 0 up on fine marks: "1/32″", "≈ 0.8 mm"; "0.004″" where that would be 0."""
    rounded = to_mark(length, _fine_grid(show.settings))
    if rounded.mark == 0 and sign(length) != 0:
        metric = rounded.grid.unit == "mm"
        number = decimal_text(length * (1 / INCHES_PER["mm"]) if metric else length, 4)
        return f"{number}{' mm' if metric else '″'}"
    text = mark_text(rounded, show.settings.display)
    return text if rounded.direction == "exact" else f"≈ {text}"


def _fine_grid(settings):
    if settings.display == "mm":
        return GRIDS["0.1 mm"]
    return GRIDS["1/64" if settings.grid.division else ".001 in"]
