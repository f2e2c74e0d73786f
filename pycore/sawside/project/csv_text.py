"""Tables as text between commas, by RFC 4180, and back.

A cell that another program could take for a formula is written with an apostrophe before it, which
is taken away again on reading (common practice with spreadsheets, no source).
"""

import csv
import io

from sawside.errors import Refusal, quoted

MOST_TEXT = 2_000_000
MOST_ROWS = 2000
MOST_CELL = 4000
_FORMULA = tuple("=+-@\t\r'")


def written(header, rows):
    """The text of a table: a row of names, then the rows, lines ending as the standard has it."""
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(header)
    writer.writerows([_shielded(cell) for cell in row] for row in rows)
    return text.getvalue()


def read_table(text, header, needed):
    """[(row number as a person counts, {name: cell})] of a text; blank rows are left out.

    The names of `needed` must be in its first row, others of `header` may be: a column that is not
    there is in no row. What is not in `header` is not read. Refusals "message" name the row.
    """
    if not isinstance(text, str) or len(text) > MOST_TEXT:
        raise _refusal("This is no table, or a very long one.", "Choose another file.")
    rows = _rows(text.removeprefix("\ufeff"))
    number, names = next(rows, (1, []))
    columns = _columns(names, header, needed)
    table = []
    for number, row in rows:
        if not any(cell.strip() for cell in row):
            continue
        if len(row) > len(names):
            raise _refusal(f"Row {number} has more cells than the first row.", "Mend that row.")
        if len(table) >= MOST_ROWS:
            raise _refusal(f"There are more than {MOST_ROWS} rows.", "Split the file.")
        cells = dict.fromkeys(columns, "")
        cells |= {name: _unshielded(row[at]) for name, at in columns.items() if at < len(row)}
        table.append((number, cells))
    return table


def _rows(text):
    """(line where it ends, cells) of every row; a refusal for what is no table."""
    reader = csv.reader(io.StringIO(text, newline=""), strict=True)
    try:
        for row in reader:
            if any(len(cell) > MOST_CELL for cell in row):
                raise _refusal(f"Row {reader.line_num} has a very long cell.", "Shorten it.")
            yield reader.line_num, row
    except csv.Error:
        raise _refusal(f"Row {reader.line_num} is no row of a table.", "Mend it.") from None


def _columns(names, header, needed):
    """{name: column} of the names that are known."""
    found = {}
    known = {name.casefold(): name for name in header}
    for at, cell in enumerate(names):
        name = known.get(cell.strip().casefold())
        if name in found:
            raise _refusal(f"The column {quoted(name)} is there twice.", "Take one away.")
        if name is not None:
            found[name] = at
    for name in needed:
        if name not in found:
            raise _refusal(
                f"Row 1 has no column {quoted(name)}.", f"Name the columns: {', '.join(header)}."
            )
    return found


def _shielded(cell):
    return f"'{cell}" if cell.startswith(_FORMULA) else cell


def _unshielded(cell):
    return cell[1:] if cell[:1] == "'" and cell[1:].startswith(_FORMULA) else cell


def _refusal(message, remedy):
    return Refusal("message", message, remedy, field="text")
