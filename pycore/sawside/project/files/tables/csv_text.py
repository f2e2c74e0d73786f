"""Tables as text between commas, by RFC 4180, and back.

Written between commas. Read as well are tables between semicolons or tabs, as a spreadsheet of
another country writes them, by a first line `sep=;` or by what parts the names of the columns.
"""

import csv
import io
import re
from typing import NamedTuple

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.scanner import plain_spaces
from sawside.project.files.tables.csv_numbers import is_decimal_comma, with_points
from sawside.project.files.tables.csv_shield import shielded, unshielded

MOST_TEXT = 2_000_000
MOST_ROWS = 2000
MOST_CELL = 4000
_SEPARATORS = (",", ";", "\t")
_SEP = re.compile(r'"?sep=([^\r\n])"?\r?\n?', re.IGNORECASE)


def written(header, rows):
    """The text of a table: a row of names, then the rows, lines ending as the standard has it."""
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(header)
    writer.writerows([shielded(cell) for cell in row] for row in rows)
    return text.getvalue()


class Row(NamedTuple):
    """A row of a table: its number as a person counts, and its cells by the names of the columns.

    `grouped` says that a point in the numbers of its table may part thousands.
    """

    number: int
    cells: dict
    grouped: bool


def read_table(text, header, needed, numbers=()):
    """The `Row`s of a text; blank rows are left out.

    The names of `needed` must be in its first row, others of `header` may be: a column that is not
    there is in no row. What is not in `header` is not read. In those of `numbers` decimals come
    with a point, whatever they were written with. Refusals "message" name the row.
    """
    if len(text) > MOST_TEXT:
        raise _refusal("This isn’t a table, or it’s a very long one.", "Choose another file.")
    text, above, separator = _parted(text.removeprefix("\ufeff"), needed)
    rows = _rows(text, above, separator)
    number, names = next(rows, (above + 1, []))
    columns = _columns(names, header, needed, number)
    grouped, table = separator != ",", []
    for number, row in rows:
        if not any(cell.strip() for cell in row):
            continue
        if len(row) > len(names):
            raise _refusal(f"Row {number} has more cells than the first row.", "Fix that row.")
        if len(table) >= MOST_ROWS:
            raise _refusal(f"There are more than {MOST_ROWS} rows.", "Split the file.")
        cells = dict.fromkeys(columns, "")
        cells |= {name: unshielded(row[at]) for name, at in columns.items() if at < len(row)}
        if separator != ",":
            cells |= {name: with_points(cells[name]) for name in numbers if name in cells}
        grouped = grouped or any(map(is_decimal_comma, row))
        table.append((number, cells))
    return [Row(number, cells, grouped) for number, cells in table]


def _parted(text, needed):
    """(the text from its names on, rows above them, what parts its cells)."""
    said = _SEP.match(text)
    if said is not None:
        if said[1] not in _SEPARATORS:
            raise _refusal(
                "Row 1 names a separator Sawside doesn’t read.",
                "Use a comma, a semicolon or a tab.",
            )
        return text[said.end() :], 1, said[1]
    first = re.split(r"[\r\n]", text, maxsplit=1)[0]
    for each in _SEPARATORS:
        names = {_folded(name) for name in first.split(each)}
        if names.issuperset(map(_folded, needed)):
            return text, 0, each
    return text, 0, ","


def _folded(name):
    return plain_spaces(name).strip('" ').casefold()


def _rows(text, above, separator):
    """(line where it ends, cells) of every row; a refusal for what is no table."""
    reader = csv.reader(io.StringIO(text, newline=""), strict=True, delimiter=separator)
    try:
        for row in reader:
            number = above + reader.line_num
            if any(len(cell) > MOST_CELL for cell in row):
                raise _refusal(f"Row {number} has a very long cell.", "Shorten it.")
            yield number, row
    except csv.Error:
        number = above + reader.line_num
        raise _refusal(f"Row {number} isn’t a table row.", "Fix it.") from None


def _columns(names, header, needed, row):
    """{name: column} of the names that are known."""
    found = {}
    known = {_folded(name): name for name in header}
    for at, cell in enumerate(names):
        name = known.get(_folded(cell))
        if name in found:
            raise _refusal(f"There are two columns named {quoted(name)}.", "Remove one.")
        if name is not None:
            found[name] = at
    for name in needed:
        if name not in found:
            raise _refusal(
                f"Row {row} has no column {quoted(name)}.",
                f"Name the columns: {', '.join(header)}.",
            )
    return found


def _refusal(message, remedy):
    return Refusal("message", message, remedy, field="text")
