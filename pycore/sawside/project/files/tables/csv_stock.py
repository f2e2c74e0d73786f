"""The wood on hand of a project as a table, and such a table taken into a project."""

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.scanner import plain_spaces
from sawside.project.files.tables.csv_numbers import refuse_grouped
from sawside.project.files.tables.csv_text import read_table, written
from sawside.project.schema.finding import of_kind
from sawside.settings.settings import CHOICES

QUESTION = "wood_on_hand"
_KEYS = {
    "Material": "material",
    "Thickness": "thickness",
    "Width": "width",
    "Length": "length",
    "How many": "count",
    "Bad stretches": "bad",
    "Note": "note",
}
_OF_A_STICK = {"thickness": "stick_thickness", "width": "stick_width"}
_FORMS = ("board", "sheet", "stick")
_NUMBERS = ("Thickness", "Width", "Length")
HEADER = ("Name", "What", *_KEYS, "Unit")


def out(document):
    """A row for each row of each line, as it was typed."""
    return written(
        HEADER,
        (
            _row(entry, row)
            for entry in _lines(document)
            for row in entry["values"].get("wood", ())
            if any(row.values())
        ),
    )


def _lines(document):
    return [each for each in of_kind(document, "line") if each["reckoner"] == QUESTION]


def _row(entry, row):
    form = row.get("form") or _FORMS[0]
    cells = (row.get(_key(key, form), "") for key in _KEYS.values())
    return (entry["name"], form, *cells, entry["unit"])


def _key(key, form):
    """The key of a field in a row of this form."""
    return _OF_A_STICK.get(key, key) if form == "stick" else key


def taken(document, text):
    """([(row, act)], how many lines are here already) that take a table in.

    What it has of a line replaces what was kept of it, and a line that is not there is added. Of a
    column that is not there each row keeps what the row in its place had.
    """
    lines = {entry["name"].casefold(): entry for entry in _lines(document)}
    tables = {}
    for row in read_table(text, HEADER, ("Name", "Length"), _NUMBERS):
        cells = {column: plain_spaces(cell).strip() for column, cell in row.cells.items()}
        tables.setdefault(cells["Name"].casefold(), []).append((row, cells))
    acts, same = [], 0
    for name, rows in tables.items():
        act = _act(lines.get(name), rows)
        if act is None:
            same += 1
        else:
            acts.append((rows[0][0].number, act))
    return acts, same


def _act(entry, rows):
    """What takes the rows of one line in; None where nothing is new."""
    cells = rows[0][1]
    unit = entry["unit"] if entry else cells.get("Unit", "")
    for row, others in rows:
        _refuse_unit(row, others.get("Unit", ""), unit)
    before = entry["values"].get("wood", []) if entry else []
    wood = [
        _typed(row, others, before[place] if place < len(before) else {})
        for place, (row, others) in enumerate(rows)
    ]
    if entry is None:
        act = {"act": "keep_line", "reckoner": QUESTION, "name": cells["Name"]}
        return act | {"values": {"wood": wood}} | ({"unit": unit} if unit else {})
    if [_filled(each) for each in before if any(each.values())] == wood:
        return None
    return {"act": "correct", "id": entry["id"], "values": entry["values"] | {"wood": wood}}


def _filled(row):
    """A row as it comes out of a table again."""
    return {"form": _FORMS[0]} | {key: text for key, text in row.items() if text}


def _refuse_unit(row, unit, wanted):
    if unit not in ("", *CHOICES["unit"]):
        raise _refusal(row, f"{quoted(unit)} is no unit.", f"Use {', '.join(CHOICES['unit'])}.")
    if unit not in ("", wanted):
        raise _refusal(
            row,
            f"its unit is {unit}, and that of its line is {wanted or 'not given'}.",
            "Give all rows of a line one unit.",
        )


def _typed(row, cells, before):
    """The values of a row; `before` are those of the one in its place."""
    form = (cells.get("What") or before.get("form") or _FORMS[0]).casefold()
    if form not in _FORMS:
        raise _refusal(row, f"{quoted(form)} is no wood.", f"Use {', '.join(_FORMS)}.")
    values = {"form": form}
    for column, name in _KEYS.items():
        key = _key(name, form)
        values[key] = cells.get(column, before.get(key, ""))
        if column in _NUMBERS and values[key] != before.get(key, ""):
            refuse_grouped(row, values[key])
    return {key: text for key, text in values.items() if text}


def _refusal(row, message, remedy):
    return Refusal("unreadable", f"Row {row.number}: {message}", remedy, field="text")
