"""The acts that bring in or change what was typed: kept, corrected, described.

Each gives the new document, the act that undoes it, what was done, and the entry's id. Whether
the new text can be read and worked out is seen by the caller. `details` are what is told of a
reading beside its text (`given.DETAILS`); "" takes one away.
"""

from sawside.errors import Refusal, on_one_line
from sawside.needs import require
from sawside.project.schema.checks import callable_name
from sawside.project.schema.document import unit_of
from sawside.project.schema.entries import read_entry
from sawside.project.schema.entry_parts import MOST_EARLIER, MOST_NOTE
from sawside.project.schema.finding import found, free_name, refuse_too_many, with_entry
from sawside.project.schema.given import short_sum


def keep_reading(document, text, name="", unit=None, **details):
    if not text.strip():
        raise Refusal(
            "missing", "Nothing is written here.", "Type it as in 31 5/8.", field="text", at=0
        )
    plain = text.replace("[", "").replace("]", "").strip()[:70].strip()
    name = free_name(document, callable_name(name or plain))
    entry = {"kind": "reading", "name": name, "unit": unit or unit_of(document), "text": text}
    return _kept(document, entry | details)


def keep_line(document, reckoner, values, name="", unit=None, about=None):
    name = free_name(document, callable_name(name or reckoner.title))
    line = {"kind": "line", "name": name, "unit": unit or unit_of(document)}
    line |= {"reckoner": reckoner.key, "values": values, "about": about or {}}
    return _kept(document, line)


def keep_note(document, text, name=""):
    _refuse_no_note(text)
    name = free_name(document, name or "Note")
    return _kept(document, {"kind": "note", "name": name, "text": text})


def _kept(document, entry):
    refuse_too_many(document)
    identity = str(document["next"])
    entry = {"id": identity} | entry
    new = document | {
        "next": document["next"] + 1,
        "entries": [*document["entries"], read_entry(entry)],
    }
    return new, {"act": "delete", "id": identity}, f"Kept {entry['name']}.", identity


def correct(document, id, text=None, values=None, unit=None, **details):
    """Another text for a reading or note, other values for a line."""
    at, entry = found(document, id)
    said = f"Corrected {entry['name']}."
    if entry["kind"] == "line":
        require(values, "values")
        return _instead(document, at, entry, entry | {"values": values}, said)
    require(text, "text")
    if entry["kind"] == "note":
        _refuse_no_note(text)
        said = f"Changed {entry['name']}."
        return _instead(document, at, entry, entry | {"text": text}, said)
    short_sum(text, "text")
    said = f"Corrected {entry['name']}: {_short(entry['text'])} → {_short(text)}."
    return _instead(document, at, entry, _with_text(entry, text, unit) | details, said)


def _with_text(entry, text, unit):
    """A reading with another text, and the one before among its earlier ones."""
    new = entry | {"text": text, "unit": unit or entry["unit"]}
    if new["unit"] != entry["unit"]:
        new.pop("off", None)
    if text != entry["text"]:
        new.pop("when", None)
        before = {key: entry[key] for key in ("text", "unit", "when") if key in entry}
        new["earlier"] = [*entry.get("earlier", ()), before][-MOST_EARLIER:]
    return new


def describe(document, id, read_at=None, **details):
    """What is told of a reading beside its text; its moment is `read_at`."""
    at, entry = found(document, id)
    if entry["kind"] != "reading":
        raise Refusal("message", "Only a reading is described.", "Nothing is to be done.")
    if read_at is not None:
        details["when"] = read_at
    return _instead(document, at, entry, entry | details, f"Described {entry['name']}.")


def _instead(document, at, old, new, said):
    undo = {"act": "put", "entries": [old]}
    return with_entry(document, at, read_entry(new)), undo, said, old["id"]


def _refuse_no_note(text):
    if not text.strip():
        raise Refusal("missing", "The note is blank.", "Write something.", field="text")
    if len(text) > MOST_NOTE:
        message = f"The note is longer than {MOST_NOTE} characters."
        raise Refusal("range", message, "Split it in two.", field="text")


def _short(text):
    text = on_one_line(text).strip()
    return text if len(text) < 60 else f"{text[:59]}…"
