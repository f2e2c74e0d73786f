"""The readings of a project as a table, and a table of readings taken into a project."""

from sawside.errors import Refusal
from sawside.lengths.reading.scanner import plain_spaces
from sawside.lengths.reading.unit_kept import pinned
from sawside.lengths.show import Show
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.files.tables.csv_numbers import refuse_grouped
from sawside.project.files.tables.csv_text import read_table, written
from sawside.project.files.tables.measures import cells, columns
from sawside.project.schema.finding import of_kind
from sawside.settings.settings import CHOICES

_TOLD = {
    "Where": "where",
    "Tape": "tape",
    "Side": "side",
    "When": "when",
    "Read to": "fineness",
    "Off by": "off",
}
_KNOWN_BY = {"act", "name"}
_NUMBERS = ("Text", "Off by")
_WORKED_OUT = columns("Length")[1:4]
HEADER = ("Name", "Text", "Unit", *_WORKED_OUT, *_TOLD)


def out(document):
    """The table: each reading as it was typed, and what it comes to."""
    evaluation = Evaluation(document)
    return written(
        HEADER,
        (_row(entry, evaluation.worked[entry["id"]]) for entry in of_kind(document, "reading")),
    )


def _row(entry, worked):
    length = worked.ok and worked.power == 1
    return (
        entry["name"],
        entry["text"],
        entry["unit"],
        *(cells(worked.named("").value, Show(worked.settings))[1:4] if length else ("", "", "")),
        *(entry.get(key, "") for key in _TOLD.values()),
    )


def taken(document, text):
    """([(row, act)] that take a table in, how many rows are here already).

    A reading of the same name is corrected, others are kept.

    A column that is not there leaves its field alone; a blank cell clears it, but for the unit.
    """
    known = {entry["name"].casefold(): entry for entry in of_kind(document, "reading")}
    acts, same = [], 0
    for row in read_table(text, HEADER, ("Name", "Text"), _NUMBERS):
        act = _typed(row.cells)
        there = known.get(act["name"].casefold(), {})
        changed = [key for key in act.keys() - _KNOWN_BY if act[key] != there.get(key, "")]
        for key in {"text", "off"}.intersection(changed):
            refuse_grouped(row, act[key])
        if not there:
            acts.append((row.number, act))
        elif changed:
            act = _off_kept(there, act) | act | {"act": "correct", "id": there["id"]}
            acts.append((row.number, act))
        else:
            same += 1
    return acts, same


def _typed(cells):
    """The act that keeps what the cells of a row say."""
    act = {"act": "keep_reading", "name": _line(cells["Name"]), "text": cells["Text"]}
    if unit := _line(cells.get("Unit", "")):
        act["unit"] = unit
    return act | {key: _line(cells[column]) for column, key in _TOLD.items() if column in cells}


def _line(cell):
    return plain_spaces(cell).strip()


def _off_kept(reading, act):
    """What a reading may be off by, so that it is the same when the act brings another unit."""
    unit = act.get("unit", reading["unit"])
    if "off" not in reading or unit not in CHOICES["unit"]:  # the act itself refuses such a unit
        return {}
    try:
        return {"off": pinned(reading["off"], reading["unit"], unit)}
    except Refusal:
        return {"off": reading["off"]}
