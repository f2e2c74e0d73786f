"""A length in the cells of a table: as it is written in the shop, exactly, and in decimals."""

from sawside.errors import Refusal, quoted
from sawside.lengths.display import decimal_text, is_written, plain_text
from sawside.lengths.marks import NAMED, to_mark
from sawside.lengths.reading.reader import read_length
from sawside.lengths.reading.refusals import MOST_CHARACTERS
from sawside.lengths.units import INCHES_PER
from sawside.project.files.tables.csv_numbers import refuse_grouped

_WAYS = {"light": "up to ", "heavy": "down to "}
"""How the mark of a length was found that is a little under it, or over it."""


def columns(name):
    """The names of the columns of one measure."""
    return (name, f"{name} exact", f"{name} in", f"{name} mm", f"{name} rounded")


def cells(value, show):
    """The cells of a length in exact inches (blank for None): its mark, itself, in, mm, rounding.

    The second reads back to the very length; it is blank where no fraction tells it. The last tells
    how the mark was found ("up to 1/16"), so that on reading a change of either cell is seen.
    """
    if value is None:
        return ("", "", "", "", "")
    rounded = show.rounded(value)
    exact = rounded.exact
    return (
        plain_text(rounded, show.settings.display),
        _exactly(exact),
        decimal_text(exact).rstrip("…"),
        decimal_text(exact * (1 / INCHES_PER["mm"]), 4).rstrip("…"),
        f"{_WAYS[rounded.direction]}{rounded.grid.name}" if rounded.direction in _WAYS else "",
    )


def _exactly(length):
    """A length as a fraction that can be read again; "" where none tells it so shortly."""
    text = f"{length} in" if is_written(length) else ""
    return text if len(text) <= MOST_CHARACTERS else ""


def numbers(name):
    """The columns of one measure that are read as numbers."""
    return columns(name)[:2]


def typed(row, name, show):
    """What is to be read of a row for a measure: the exact cell, or the one from the shop.

    Refuses ("conflict") two that do not tell one length, and what may be another number where the
    table was written (`csv_numbers`).
    """
    cells = row.cells
    shop, exact = (cells.get(column, "").strip() for column in numbers(name))
    rounding = cells.get(f"{name} rounded", "").strip()
    if shop and exact and not _alike(shop, exact, rounding, show):
        raise Refusal(
            "conflict",
            f"Row {row.number}: {name} {quoted(shop)} and {name} exact {quoted(exact)} don’t "
            "match.",
            "Make them match, or clear one of the two cells.",
            field="text",
        )
    refuse_grouped(row, exact or shop)
    return exact or shop


def _alike(shop, exact, rounding, show):
    """Whether one cell is the other, or its mark by what is told of the rounding."""
    try:
        mark, length = (read_length(each, show.settings.unit).value for each in (shop, exact))
    except Refusal:
        return False
    if not rounding:
        return mark in (length, show.mark(length))
    way = next((way for way in _WAYS.values() if rounding.startswith(way)), "")
    grid = NAMED.get(rounding.removeprefix(way))
    return bool(way and grid) and to_mark(length, grid, way.split()[0]).mark == mark
