"""The acts on a project as a whole. Each gives the new document, its undo and what was done."""

from sawside.errors import Refusal, on_one_line
from sawside.lengths.reading.reader import read_length
from sawside.project.schema.checks import clean_name, unit_checked
from sawside.project.schema.document import SCHEMA, unit_of
from sawside.project.schema.label_grid import read_grid
from sawside.project.schema.settings_kept import meaning_kept, names_plain
from sawside.settings.settings import read_settings


def begun(act):
    """A new document."""
    name = clean_name(act.get("name"))
    return {"schema": SCHEMA, "name": name, "settings": {}, "next": 1, "entries": []}


def rename_project(document, act):
    name = clean_name(act.get("name"))
    undo = {"act": "rename_project", "name": document["name"]}
    return document | {"name": name}, undo, f"The project is now called {name}.", None


def set_settings(document, act):
    settings = act.get("settings") or {}
    if isinstance(settings, dict):
        settings = meaning_kept(document["settings"], settings, in_use=bool(document["entries"]))
    read_settings(settings)
    undo = {"act": "set", "settings": document["settings"]}
    return document | {"settings": names_plain(settings)}, undo, "Changed the settings.", None


def set_tolerance(document, act):
    """How far a piece may be off and still be good; "" is the usual, half a mark."""
    text = act.get("text")
    if not isinstance(text, str):
        raise Refusal("message", "There is no text to keep.", "Send it as “text”.", field="text")
    old = document.get("tolerance", {"text": "", "unit": unit_of(document)})
    undo = {"act": "tolerance"} | old
    if not text.strip():
        new = {key: value for key, value in document.items() if key != "tolerance"}
        return new, undo, "The tolerance is the usual one.", None
    unit = unit_checked(act.get("unit", unit_of(document)), "unit")
    try:
        value = read_length(text, unit).value
    except Refusal as refusal:
        raise refusal.of("text") from None
    if not 0 <= value <= 1:
        raise Refusal(
            "range",
            "A tolerance is from 0 to 1 in.",
            "Check the number and its unit.",
            field="text",
        )
    new = document | {"tolerance": {"text": text, "unit": unit}}
    return new, undo, f"The tolerance is now {on_one_line(text).strip()}.", None


def set_labels(document, act):
    """The grid of the stickers, all of it, as it was typed; without any text it is forgotten."""
    old = document.get("labels", {"unit": unit_of(document), "values": {}})
    new = read_grid({"unit": act.get("unit", old["unit"]), "values": act.get("values")})
    rest = {key: value for key, value in document.items() if key != "labels"}
    undo = {"act": "labels"} | old
    return rest | ({"labels": new} if new["values"] else {}), undo, "Changed the labels.", None
