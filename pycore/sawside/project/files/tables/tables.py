"""Tables out of a project and into one, whole or not at all."""

from sawside.errors import Refusal, Refusals, each_of
from sawside.project.acts.change import change
from sawside.project.files.file_name import file_name
from sawside.project.files.tables import csv_buy, csv_cuts, csv_parts, csv_readings, csv_stock
from sawside.project.kinds.checks import Damaged

_TABLES = {
    "parts": csv_parts,
    "readings": csv_readings,
    "cuts": csv_cuts,
    "stock": csv_stock,
    "buy": csv_buy,
}


def csv_out(document, what):
    """The contract of `csv`: a table with its file's name."""
    return {
        "what": what,
        "name": file_name(document["name"], what, "csv"),
        "type": "text/csv;charset=utf-8",
        "text": _table(what).out(document),
    }


def csv_in(document, what, text, when=""):
    """The contract of `take_csv`: a change that takes a table in.

    Refusals name the row ("Row 3: …"); nothing is taken then.
    """
    numbered, known = _table(what).taken(document, text)
    if not numbered:
        raise Refusal(
            "missing", "Nothing in this table is new.", "Choose another file.", field="text"
        )
    rows = "1 row" if len(numbered) == 1 else f"{len(numbered)} rows"
    act = {
        "act": "several",
        "acts": [act for _, act in numbered],
        "when": when,
        "said": f"Imported {rows} of {what}.{_known(known)}",
    }
    try:
        return change(document, act=act)
    except (Refusal, Refusals) as fault:
        raise _in_row(each_of(fault)[0], numbered) from None


def _known(many):
    if many == 0:
        return ""
    return f" {'1 is' if many == 1 else f'{many} are'} here already."


def _table(what):
    if what not in _TABLES:
        raise Refusal(
            "unknown", "There’s no such table.", f"Use {', '.join(_TABLES)}.", field="what"
        )
    return _TABLES[what]


def _in_row(refusal, numbered):
    """The refusal of one act of several, told of its row in the table."""
    if isinstance(refusal, Damaged):
        refusal = refusal.as_typed(row=refusal.row)
    place = "" if refusal.row is None else f"Row {numbered[refusal.row][0]}: "
    return Refusal(refusal.kind, f"{place}{refusal.message}", refusal.remedy, field="text")
