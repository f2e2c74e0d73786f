"""The acts that bring in or change what was typed: kept, corrected, described.

Each gives the new document, the act that undoes it, what was done, and the entry's id. Whether
the new text can be read and worked out is seen by the caller. `details` are what is told of a
reading beside its text (`given.DETAILS`); "" takes one away.
"""

from sawside.errors import Refusal
from sawside.project.kinds.checks import callable_name
from sawside.project.kinds.entries import kind_of, read_entry
from sawside.project.kinds.note import refuse_no_note
from sawside.project.schema.document import unit_of
from sawside.project.schema.finding import found, free_name, refuse_too_many, with_entry


def keep_reading(document, text, name="", unit=None, **details):
    if not text.strip():
        raise Refusal("missing", "This is blank.", "Type it as in 31 5/8.", field="text", at=0)
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
    refuse_no_note(text)
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
    return new, {"act": "delete", "id": identity}, f"Saved {entry['name']}.", identity


def correct(document, id, **given):
    """Another text for a reading or note, other values for a line."""
    at, entry = found(document, id)
    new, said = kind_of(entry).corrected(entry, **given)
    return _instead(document, at, entry, new, said)


def describe(document, id, read_at=None, **details):
    """What is told of a reading beside its text; its moment is `read_at`."""
    at, entry = found(document, id)
    if entry["kind"] != "reading":
        raise Refusal("message", "Only a reading is described.", "There’s nothing to do.")
    if read_at is not None:
        details["when"] = read_at
    return _instead(document, at, entry, entry | details, f"Updated {entry['name']}.")


def _instead(document, at, old, new, said):
    undo = {"act": "put", "entries": [old]}
    return with_entry(document, at, read_entry(new)), undo, said, old["id"]
