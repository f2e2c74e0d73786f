"""The document of a project: its shape, and the check that lets a foreign one in.

    {"schema": 1, "name", "settings": {…}, "next": 3, "entries": [
        {"id": "1", "kind": "reading", "name", "unit", "text"},
        {"id": "2", "kind": "line", "name", "unit", "reckoner", "values": {…},
         "cut": {part: how many}}]}

`unit` is what a bare number meant when it was kept, so that another unit in the settings never
changes what a kept number says. Everything in a document was typed by the person; nothing
derived is kept. A document comes from outside (a file, a store, another version), so it is copied
and checked piece by piece, and a refusal names the place in it.
"""

from dataclasses import replace

from sawside.errors import Refusal, Refusals, quoted
from sawside.lengths.refusals import MOST_CHARACTERS
from sawside.lengths.settings import CHOICES, read_settings

SCHEMA = 1
MOST_ENTRIES = 2000
MOST_NAME = 80
MOST_VALUES = 100
MOST_ROWS = 200
MOST_CUT = 100_000
_REMEDY = "Open a copy that was saved earlier."


def read_document(data):
    """A checked copy of a document. Refusals: "message" naming the place, "newer"."""
    keys_checked(data, "the document", ("schema", "name", "settings", "next", "entries"))
    schema = data["schema"]
    if isinstance(schema, int) and not isinstance(schema, bool) and schema > SCHEMA:
        raise Refusal(
            "newer",
            "This project was saved by a newer version of the program.",
            "Update the program, then open it again.",
            field="document.schema",
        )
    if schema != SCHEMA or isinstance(schema, (bool, float)):
        raise damaged("schema", "is not a version that this program knows")
    if not isinstance(data["settings"], dict):
        raise damaged("settings", "is not an object")
    try:
        read_settings(data["settings"])
    except (Refusal, Refusals) as refusal:
        raise damaged("settings", f"can't be used: {refusal}") from None
    if not isinstance(data["entries"], list) or len(data["entries"]) > MOST_ENTRIES:
        raise damaged("entries", f"is not a list of at most {MOST_ENTRIES}")
    entries = [read_entry(entry, f"entries[{at}]") for at, entry in enumerate(data["entries"])]
    for what in ("id", "name"):
        _unique([entry[what].casefold() for entry in entries], what)
    upcoming = whole_number(data["next"], "next", 1, 10**9)
    if any(int(entry["id"]) >= upcoming for entry in entries):
        raise damaged("next", "is not above every id")
    return {
        "schema": SCHEMA,
        "name": _name(data["name"], "name"),
        "settings": dict(data["settings"]),
        "next": upcoming,
        "entries": entries,
    }


def read_entry(data, place="entry"):
    """A checked copy of one entry; `place` is where it stands, for the refusal."""
    if not isinstance(data, dict):
        raise damaged(place, "is not an object")
    if data.get("kind") == "reading":
        keys_checked(data, place, ("id", "kind", "name", "unit", "text"))
        rest = {"text": _text(data["text"], f"{place}.text")}
    elif data.get("kind") == "line":
        keys_checked(data, place, ("id", "kind", "name", "unit", "reckoner", "values"), ("cut",))
        cut = data.get("cut", {})
        if not isinstance(cut, dict) or len(cut) > MOST_VALUES:
            raise damaged(f"{place}.cut", "is not an object")
        rest = {
            "reckoner": _text(data["reckoner"], f"{place}.reckoner"),
            "values": read_values_kept(data["values"], f"{place}.values"),
            "cut": {
                _text(part, f"{place}.cut"): whole_number(many, f"{place}.cut", 1, MOST_CUT)
                for part, many in cut.items()
            },
        }
    else:
        raise damaged(f"{place}.kind", "is neither a reading nor a line")
    identity = data["id"]
    if not isinstance(identity, str) or not _is_id(identity):
        raise damaged(f"{place}.id", "is not an id")
    head = {
        "id": identity,
        "kind": data["kind"],
        "name": _name(data["name"], f"{place}.name"),
        "unit": unit_checked(data["unit"], f"{place}.unit"),
    }
    return head | rest


def unit_checked(unit, place):
    """The unit that a bare number was kept in."""
    if not isinstance(unit, str) or unit not in CHOICES["unit"]:
        raise damaged(place, "is no unit that this program knows")
    return unit


def read_values_kept(data, place="values"):
    """A checked copy of a line's values: texts, lists of texts, lists of rows of texts."""
    return _values(data, place, _value)


def settings_of(document, unit):
    """The settings of a checked document, with the unit that an entry was kept in."""
    return replace(read_settings(document["settings"]), unit=unit)


def clean_name(name, field="name"):
    """A name as it is kept: 1 to 80 characters that can be shown, without space around it."""
    if not isinstance(name, str):
        raise Refusal("message", "The name is not a text.", "Send it as it was typed.", field=field)
    name = name.strip()
    if not name:
        raise Refusal("missing", "The name is blank.", "Type a name.", field=field)
    if len(name) > MOST_NAME:
        message = f"The name is longer than {MOST_NAME} characters."
        raise Refusal("range", message, "Shorten it.", field=field)
    if not name.isprintable():
        message = "The name holds characters that can't be shown."
        raise Refusal("unreadable", message, "Type it anew.", field=field)
    return name


def _is_id(text):
    return text.isascii() and text.isdigit() and len(text) <= 9 and text[0] != "0"


def _values(data, place, read):
    if not isinstance(data, dict) or len(data) > MOST_VALUES:
        raise damaged(place, "is not an object of fields")
    return {_text(key, place): read(value, f"{place}.{key}") for key, value in data.items()}


def _value(value, place):
    if not isinstance(value, list):
        return _text(value, place)
    if len(value) > MOST_ROWS:
        raise damaged(place, f"has more than {MOST_ROWS} rows")
    return [
        _values(row, place, _text) if isinstance(row, dict) else _text(row, place) for row in value
    ]


def _text(value, place):
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        value = str(value)
    if not isinstance(value, str) or len(value) > MOST_CHARACTERS:
        raise damaged(place, f"is not a text of at most {MOST_CHARACTERS} characters")
    return value


def _name(value, place):
    try:
        name = clean_name(value)
    except Refusal as refusal:
        raise damaged(place, f"can't be used: {refusal.message}") from None
    if name != value:
        raise damaged(place, "has space around it")
    return name


def whole_number(value, place, least, most):
    if isinstance(value, bool) or not isinstance(value, int) or not least <= value <= most:
        raise damaged(place, f"is not a whole number from {least} to {most}")
    return value


def keys_checked(data, place, needed, allowed=()):
    if not isinstance(data, dict):
        raise damaged(place, "is not an object")
    for key in needed:
        if key not in data:
            raise damaged(place, f"lacks {quoted(key)}")
    for key in data:
        if key not in needed and key not in allowed:
            raise damaged(place, f"holds {quoted(str(key))}, which does not belong there")


def _unique(values, what):
    if len(set(values)) != len(values):
        raise damaged("entries", f"holds the same {what} twice")


def damaged(place, what):
    return Refusal(
        "message",
        f"What was kept is damaged: {place} {what}.",
        _REMEDY,
        field=place if place.startswith("the ") else f"document.{place}",
    )
