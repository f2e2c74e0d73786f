"""The readings of a project as a table, and a table of readings taken into a project."""

from sawside.lengths.show import Show
from sawside.project.csv_text import read_table, written
from sawside.project.evaluate import Evaluation
from sawside.project.measures import cells, columns

_TOLD = {
    "Where": "where",
    "Tape": "tape",
    "Side": "side",
    "When": "when",
    "Read to": "fineness",
    "Off by": "off",
}
HEADER = ("Name", "Text", "Unit", *columns("Length")[1:], *_TOLD)


def out(document):
    """The table: each reading as it was typed, and what it comes to."""
    evaluation = Evaluation(document)
    return written(HEADER, (
        _row(entry, evaluation.worked[entry["id"]])
        for entry in document["entries"]
        if entry["kind"] == "reading"
    ))  # fmt: skip


def _row(entry, worked):
    length = worked.ok and worked.power == 1
    return (
        entry["name"],
        entry["text"],
        entry["unit"],
        *(cells(worked.named("").value, Show(worked.settings))[1:] if length else ("", "", "")),
        *(entry.get(key, "") for key in _TOLD.values()),
    )


def taken(document, text):
    """[(row, act)] that take a table in: a reading of the same name is corrected, others kept."""
    known = {
        entry["name"].casefold(): entry
        for entry in document["entries"]
        if entry["kind"] == "reading"
    }
    acts = []
    for number, row in read_table(text, HEADER, ("Name", "Text")):
        told = {key: row[column].strip() for column, key in _TOLD.items()}
        act = {"act": "keep_reading", "name": row["Name"].strip(), "text": row["Text"]} | told
        if row["Unit"].strip():
            act["unit"] = row["Unit"].strip()
        there = known.get(act["name"].casefold())
        if there is None:
            acts.append((number, act))
        elif any(act[key] != there.get(key, "") for key in ("text", *told)):
            acts.append((number, act | {"act": "correct", "id": there["id"]}))
    return acts
