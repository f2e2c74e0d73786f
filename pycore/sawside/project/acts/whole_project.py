"""The acts on a project as a whole. Each gives the new document, its undo and what was done."""

from sawside.errors import Refusal, on_one_line, out_of_range
from sawside.lengths.reading.reader import read_length
from sawside.project.schema.document import SCHEMA, unit_of
from sawside.project.schema.label_grid import read_grid
from sawside.project.schema.settings_kept import meaning_kept, names_plain
from sawside.settings.settings import read_settings


def begun(name):
    """A new document."""
    return {"schema": SCHEMA, "name": name, "settings": {}, "next": 1, "entries": []}


def rename_project(document, name):
    undo = {"act": "rename_project", "name": document["name"]}
    return document | {"name": name}, undo, f"Renamed the project {name}.", None


def set_settings(document, settings=None):
    in_use = bool(document["entries"])
    settings = meaning_kept(document["settings"], settings or {}, in_use=in_use)
    read_settings(settings)
    undo = {"act": "set", "settings": document["settings"]}
    return document | {"settings": names_plain(settings)}, undo, "Changed the settings.", None


def set_tolerance(document, text, unit=None):
    """How far a piece may be off and still be good; "" is the usual, half a mark."""
    old = document.get("tolerance", {"text": "", "unit": unit_of(document)})
    undo = {"act": "tolerance"} | old
    if not text.strip():
        new = {key: value for key, value in document.items() if key != "tolerance"}
        return new, undo, "Reset the tolerance.", None
    unit = unit or unit_of(document)
    try:
        value = read_length(text, unit).value
    except Refusal as refusal:
        raise refusal.of("text") from None
    if not 0 <= value <= 1:
        raise out_of_range("text", "A tolerance must be from 0 to 1 in.")
    new = document | {"tolerance": {"text": text, "unit": unit}}
    return new, undo, f"Set the tolerance to {on_one_line(text).strip()}.", None


def set_labels(document, values, unit=None):
    """The grid of the stickers, all of it, as it was typed; without any text it is forgotten."""
    old = document.get("labels", {"unit": unit_of(document), "values": {}})
    new = read_grid({"unit": unit or old["unit"], "values": values})
    rest = {key: value for key, value in document.items() if key != "labels"}
    undo = {"act": "labels"} | old
    return rest | ({"labels": new} if new["values"] else {}), undo, "Changed the labels.", None
