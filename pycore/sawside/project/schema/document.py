"""The document of a project: its shape, and the check that lets a foreign one in.

    {"schema": 8, "name", "settings": {…}, "next": 3, "tolerance"?: {"text", "unit"},
     "labels"?: {"unit", "values": {field of the grid of stickers: text}},
     "plan"?: {"kerf", "boards": [{"key", "form", "length", "cuts": […], "pieces": […], …}], …},
     "entries": [
        {"id": "1", "kind": "reading", "name", "unit", "text", …},
        {"id": "2", "kind": "line", "name", "unit", "reckoner", "values": {…},
         "cut"?: {part: [{"length": "289/8 in", …}, …]}, …},
        {"id": "3", "kind": "note", "name", "text"}],
     "log"?: [{"when", "said"}]}

`unit` is what a bare number meant when it was kept, so that another unit in the settings never
changes what a kept number says. Everything in a document was typed or done by the person; nothing
derived is kept, except the size that a piece had when it was cut. A document comes from outside (a
file, a store, another version), so it is copied and checked piece by piece, and a refusal names
the place in it.
"""

from dataclasses import replace
from functools import lru_cache

from sawside.errors import Refusal, Refusals, on_one_line
from sawside.project.kinds.checks import (
    damaged,
    is_moment,
    keys_checked,
    list_checked,
    name_checked,
    text_checked,
    unit_checked,
    whole_number,
)
from sawside.project.schema.cache import recalled
from sawside.project.schema.label_grid import read_grid
from sawside.project.schema.migrate import OLDEST, migrated
from sawside.project.schema.plan_kept import plan_checked
from sawside.settings.settings import read_settings

SCHEMA = 8
MOST_ENTRIES = 6000
MOST_LOG = 200
MOST_SAID = 400


def read_document(data):
    """A checked copy of a document, in this schema. Refusals: "message" with the place, "newer"."""
    data = _of_this_schema(data)
    keys_checked(
        data,
        "the document",
        ("schema", "name", "settings", "next", "entries"),
        ("tolerance", "labels", "plan", "log"),
    )
    if not isinstance(data["settings"], dict):
        raise damaged("settings", "is not an object")
    try:
        read_settings(data["settings"])
    except (Refusal, Refusals) as refusal:
        raise damaged("settings", f"can’t be used: {refusal}") from None
    entries = [
        recalled(entry, f"entries[{at}]")
        for at, entry in enumerate(list_checked(data["entries"], "entries", MOST_ENTRIES))
    ]
    _unique([entry["id"] for entry in entries], "id")
    _unique([entry["name"].casefold() for entry in entries], "name")
    upcoming = whole_number(data["next"], "next", 1, 10**9)
    if any(int(entry["id"]) >= upcoming for entry in entries):
        raise damaged("next", "is not above every id")
    document = {
        "schema": SCHEMA,
        "name": name_checked(data["name"], "name"),
        "settings": dict(data["settings"]),
        "next": upcoming,
        "entries": entries,
    }
    if "tolerance" in data:
        document["tolerance"] = read_tolerance(data["tolerance"])
    if "labels" in data:
        document["labels"] = read_grid(data["labels"])
    if "plan" in data:
        document["plan"] = plan_checked(data["plan"])
    if log := _log(data.get("log")):
        document["log"] = log
    return document


def read_tolerance(data):
    """A checked copy of the tolerance: its text, and what a bare number in it means."""
    keys_checked(data, "tolerance", ("text", "unit"))
    unit = unit_checked(data["unit"], "tolerance.unit")
    return {"text": text_checked(data["text"], "tolerance.text"), "unit": unit}


@lru_cache(maxsize=32)
def settings_in(settings, unit):
    """Settings with the unit that an entry was kept in; the same object for the same ones."""
    return replace(settings, unit=unit)


def settings_of(document, unit):
    """The settings of a checked document, with the unit that an entry was kept in."""
    return settings_in(read_settings(document["settings"]), unit)


def unit_of(document):
    """What a bare number means in this project now."""
    return read_settings(document["settings"]).unit


def _of_this_schema(data):
    keys_checked(data, "the document", ("schema",), data if isinstance(data, dict) else ())
    schema = schema_checked(data["schema"])
    return data if schema == SCHEMA else migrated(data, SCHEMA)


def schema_checked(schema):
    """The schema of a document or backup, which is no newer than this program."""
    whole = isinstance(schema, int) and not isinstance(schema, bool)
    if whole and schema > SCHEMA:
        raise Refusal(
            "newer",
            "This project was saved by a newer version of Sawside.",
            "Update Sawside, then open it again.",
            field="document.schema",
        )
    if not whole or schema < OLDEST:
        raise damaged("schema", "is not a version that this program knows")
    return schema


def log_line(when, said):
    """A line of the log: when something was done ("" where that is not known), and what."""
    return {"when": when or "", "said": on_one_line(said)[:MOST_SAID]}


def _log(data):
    """What can be told of a log: it only says what was done, so no line of it bars a project."""
    lines = data if isinstance(data, list) else []
    return [
        log_line(line.get("when") if is_moment(line.get("when")) else "", line["said"])
        for line in lines
        if isinstance(line, dict) and isinstance(line.get("said"), str)
    ][-MOST_LOG:]


def _unique(values, what):
    if len(set(values)) != len(values):
        raise damaged("entries", f"holds the same {what} twice")
