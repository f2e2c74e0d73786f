"""Changing a project: each act gives the new document and the act that undoes it.

An id is never used twice, so a project's `next` only grows; apart from that an act followed by
its undo gives the document as it was.
"""

from sawside.errors import Refusal, quoted
from sawside.lengths.reader import read
from sawside.lengths.settings import read_settings
from sawside.project.document import (
    MOST_ENTRIES,
    SCHEMA,
    clean_name,
    read_entry,
    read_values_kept,
    settings_of,
)
from sawside.reckoning.reckon import find, reckon


def change(document, act):
    """Apply an act to a checked document (None only for "begin").

    Returns {"document", "undo", "said", "id"}; the given document stays as it is. Refusals:
    "message" for an act that is none, "unknown" for an id or part that is not there, "conflict"
    for a name that is taken, and those of reading and reckoning what is kept.
    """
    if not isinstance(act, dict) or not isinstance(act.get("act"), str):
        raise Refusal("message", "There is no act.", "Send it as “act”.", field="act")
    name = act["act"]
    if name == "begin":
        return _begin(document, act)
    if document is None:
        raise Refusal("message", "There is no project yet.", "Begin one first.", field="document")
    if name not in _ACTS:
        raise Refusal(
            "message",
            f"There is no act {quoted(name)}.",
            f"Send one of begin, {', '.join(_ACTS)}.",
            field="act",
        )
    new, undo, said, identity = _ACTS[name](document, act)
    return {"document": new, "undo": undo, "said": said, "id": identity}


def _begin(document, act):
    if document is not None:
        raise Refusal("message", "A project is open already.", "Begin without one.", field="act")
    name = clean_name(act.get("name"))
    new = {"schema": SCHEMA, "name": name, "settings": {}, "next": 1, "entries": []}
    return {"document": new, "undo": None, "said": f"Began {name}.", "id": None}


def _rename_project(document, act):
    name = clean_name(act.get("name"))
    undo = {"act": "rename_project", "name": document["name"]}
    return document | {"name": name}, undo, f"The project is now called {name}.", None


def _set(document, act):
    settings = act.get("settings")
    read_settings({} if settings is None else settings)
    undo = {"act": "set", "settings": document["settings"]}
    return document | {"settings": dict(settings or {})}, undo, "Changed the settings.", None


def _keep_reading(document, act):
    text = _readable(act.get("text"), _unit(document))
    name = _free_name(document, act.get("name") or text.strip())
    return _kept(document, {"kind": "reading", "name": name, "unit": _unit(document), "text": text})


def _keep_line(document, act):
    reckoner = find(act.get("reckoner"))
    unit = _unit(document)
    values = _answerable(document, unit, reckoner, act.get("values"))
    name = _free_name(document, act.get("name") or reckoner.title)
    line = {"kind": "line", "name": name, "unit": unit, "reckoner": reckoner.key}
    return _kept(document, line | {"values": values, "cut": {}})


def _kept(document, entry):
    if len(document["entries"]) >= MOST_ENTRIES:
        raise Refusal(
            "range", f"A project holds at most {MOST_ENTRIES} entries.", "Begin another project."
        )
    identity = str(document["next"])
    new = document | {
        "next": document["next"] + 1,
        "entries": [*document["entries"], {"id": identity} | entry],
    }
    return new, {"act": "delete", "id": identity}, f"Kept {entry['name']}.", identity


def _rename(document, act):
    at, entry = _entry(document, act)
    name = clean_name(act.get("name"))
    _refuse_taken(document, name, but=at)
    undo = {"act": "rename", "id": entry["id"], "name": entry["name"]}
    new = _with(document, at, entry | {"name": name})
    return new, undo, f"{entry['name']} is now called {name}.", entry["id"]


def _correct(document, act):
    at, entry = _entry(document, act)
    if entry["kind"] == "reading":
        key, value = "text", _readable(act.get("text"), entry["unit"])
    else:
        key = "values"
        reckoner = find(entry["reckoner"])
        value = _answerable(document, entry["unit"], reckoner, act.get("values"))
    undo = {"act": "correct", "id": entry["id"], key: entry[key]}
    new = _with(document, at, entry | {key: value})
    return new, undo, f"Corrected {entry['name']}.", entry["id"]


def _delete(document, act):
    at, entry = _entry(document, act)
    entries = document["entries"]
    undo = {"act": "restore", "entry": entry, "at": at}
    new = document | {"entries": entries[:at] + entries[at + 1 :]}
    return new, undo, f"Deleted {entry['name']}.", None


def _restore(document, act):
    entry = read_entry(act.get("entry"))
    entries = document["entries"]
    at = act.get("at")
    if isinstance(at, bool) or not isinstance(at, int) or not 0 <= at <= len(entries):
        raise Refusal("message", "The place to restore is none.", "Send an index.", field="at")
    if any(each["id"] == entry["id"] for each in entries) or int(entry["id"]) >= document["next"]:
        raise Refusal(
            "conflict", f"{entry['name']} is in the project already.", "Nothing is to be done."
        )
    if len(entries) >= MOST_ENTRIES:
        raise Refusal(
            "range", f"A project holds at most {MOST_ENTRIES} entries.", "Delete some first."
        )
    _refuse_taken(document, entry["name"])
    new = document | {"entries": [*entries[:at], entry, *entries[at:]]}
    undo = {"act": "delete", "id": entry["id"]}
    return new, undo, f"Brought {entry['name']} back.", entry["id"]


def _cut(document, act):
    at, entry = _entry(document, act)
    part, by = act.get("part"), act.get("by")
    if by not in (1, -1) or isinstance(by, (bool, float)):
        raise Refusal("message", "One piece is cut at a time.", "Send 1 or -1.", field="by")
    many = _part_count(document, entry, part)
    cut = dict(entry["cut"])
    cut[part] = cut.get(part, 0) + by
    if not 0 <= cut[part] <= many:
        state = "All of these are cut" if by == 1 else "None of these is cut"
        raise Refusal("conflict", f"{state} already.", "Nothing is to be done.", field="by")
    if cut[part] == 0:
        del cut[part]
    undo = {"act": "cut", "id": entry["id"], "part": part, "by": -by}
    said = f"{'Cut one' if by == 1 else 'Took back one'} {entry['name']}."
    return _with(document, at, entry | {"cut": cut}), undo, said, entry["id"]


def _part_count(document, entry, part):
    parts = []
    if entry["kind"] == "line":
        settings = settings_of(document, entry["unit"])
        parts = reckon(find(entry["reckoner"]), entry["values"], settings)["parts"]
    for each in parts:
        if each["key"] == part:
            return each["count"]
    raise Refusal(
        "unknown", f"{entry['name']} has no piece {quoted(str(part))}.", "Open it anew.",
        field="part",
    )  # fmt: skip


def _unit(document):
    return read_settings(document["settings"]).unit


def _readable(text, unit):
    if not isinstance(text, str):
        raise Refusal("message", "There is no text to keep.", "Send it as “text”.", field="text")
    try:
        read(text, unit)
    except Refusal as refusal:
        raise refusal.of("text") from None
    return text


def _answerable(document, unit, reckoner, values):
    reckon(reckoner, values, settings_of(document, unit))
    return read_values_kept(values)


def _entry(document, act):
    for at, entry in enumerate(document["entries"]):
        if entry["id"] == act.get("id"):
            return at, entry
    raise Refusal("unknown", "That entry is not in the project.", "Open the project anew.",
                  field="id")  # fmt: skip


def _with(document, at, entry):
    entries = document["entries"]
    return document | {"entries": [*entries[:at], entry, *entries[at + 1 :]]}


def _taken(document, but=None):
    return {entry["name"].casefold() for at, entry in enumerate(document["entries"]) if at != but}


def _refuse_taken(document, name, but=None):
    if name.casefold() in _taken(document, but):
        raise Refusal(
            "conflict",
            f"There is a {name} in this project already.",
            "Choose another name.",
            field="name",
        )


def _free_name(document, name):
    """A clean name, with a number added when it is taken."""
    name = clean_name(name)
    taken = _taken(document)
    number, free = 1, name
    while free.casefold() in taken:
        number += 1
        free = clean_name(f"{name[:70]} {number}")
    return free


_ACTS = {
    "rename_project": _rename_project,
    "set": _set,
    "keep_reading": _keep_reading,
    "keep_line": _keep_line,
    "rename": _rename,
    "correct": _correct,
    "delete": _delete,
    "restore": _restore,
    "cut": _cut,
}
