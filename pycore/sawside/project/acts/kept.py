"""The acts that bring in or change what was typed: kept, corrected, described.

Each gives the new document, the act that undoes it, what was done, and the entry's id. Whether
the new text can be read and worked out is seen by the caller.
"""

from sawside.errors import Refusal, on_one_line
from sawside.lengths.reading.refusals import MOST_CHARACTERS, unreadable
from sawside.project.schema.checks import callable_name, moment_given, unit_checked
from sawside.project.schema.document import unit_of
from sawside.project.schema.entries import read_entry
from sawside.project.schema.entry_parts import MOST_EARLIER, MOST_NOTE, READING, read_values_kept
from sawside.project.schema.finding import found, free_name, refuse_too_many, with_entry
from sawside.reckoning.reckon import find


def keep_reading(document, act):
    text = _sum(act)
    if not text.strip():
        raise Refusal(
            "missing", "Nothing is written here.", "Type it as in 31 5/8.", field="text", at=0
        )
    plain = text.replace("[", "").replace("]", "").strip()[:70].strip()
    name = free_name(document, callable_name(act.get("name") or plain))
    entry = {"kind": "reading", "name": name, "unit": _unit(document, act), "text": text}
    return _kept(document, entry | _details(act))


def keep_line(document, act):
    reckoner = find(act.get("reckoner"))
    name = free_name(document, callable_name(act.get("name") or reckoner.title))
    line = {"kind": "line", "name": name, "unit": _unit(document, act), "reckoner": reckoner.key}
    return _kept(document, line | {"values": _values(act), "about": act.get("about", {})})


def keep_note(document, act):
    text = _note(act)
    name = free_name(document, act.get("name") or "Note")
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


def correct(document, act):
    """Another text for a reading or note, other values for a line."""
    at, entry = found(document, act.get("id"))
    if entry["kind"] == "note":
        new = entry | {"text": _note(act)}
        said = f"Changed {entry['name']}."
    elif entry["kind"] == "line":
        new = entry | {"values": _values(act)}
        said = f"Corrected {entry['name']}."
    else:
        text = _sum(act)
        new = entry | {"text": text}
        if "unit" in act:
            new["unit"] = _unit(document, act)
        if new["unit"] != entry["unit"]:
            new.pop("off", None)
        if text != entry["text"]:
            new.pop("when", None)
            before = {key: entry[key] for key in ("text", "unit", "when") if key in entry}
            new["earlier"] = [*entry.get("earlier", ()), before][-MOST_EARLIER:]
        new |= _details(act)
        said = f"Corrected {entry['name']}: {_short(entry['text'])} → {_short(text)}."
    return _instead(document, at, entry, new, said)


def describe(document, act):
    """What is told of a reading beside its text."""
    at, entry = found(document, act.get("id"))
    if entry["kind"] != "reading":
        raise Refusal("message", "Only a reading is described.", "Nothing is to be done.")
    new = entry | _details(act, {"when": "read_at"})
    return _instead(document, at, entry, new, f"Described {entry['name']}.")


def _instead(document, at, old, new, said):
    undo = {"act": "put", "entries": [old]}
    return with_entry(document, at, read_entry(new)), undo, said, old["id"]


def _details(act, also=None):
    """What an act tells of a reading; "" takes it away. `also` has its own keys for some."""
    told = {}
    for key, check in READING.items():
        given = also.get(key, key) if also else key
        value = act.get(given)
        if value is None:
            continue
        if key == "when":
            moment_given(value, given)
        try:
            told[key] = value and check(value, key).strip()
        except Refusal:
            message = f"This can't be kept as “{key}” of a reading."
            raise Refusal(
                "unreadable", message, "Shorten it, or choose another.", field=key
            ) from None
    return told


def _unit(document, act):
    """What a bare number meant when it was typed; by the settings where the act does not say."""
    unit = act.get("unit")
    return unit_of(document) if unit is None else unit_checked(unit, "unit")


def _text(act):
    text = act.get("text")
    if not isinstance(text, str):
        raise Refusal("message", "There is no text to keep.", "Send it as “text”.", field="text")
    return text


def _sum(act):
    text = _text(act)
    _refuse_long(text, "text")
    return text


def _refuse_long(text, field):
    if isinstance(text, str) and len(text) > MOST_CHARACTERS:
        message = f"This is longer than {MOST_CHARACTERS} characters."
        raise unreadable(message, "Split it into shorter sums.", 0).of(field)


def _note(act):
    text = _text(act)
    if not text.strip():
        raise Refusal("missing", "The note is blank.", "Write something.", field="text")
    if len(text) > MOST_NOTE:
        message = f"The note is longer than {MOST_NOTE} characters."
        raise Refusal("range", message, "Split it in two.", field="text")
    return text


def _values(act):
    values = act.get("values")
    if not isinstance(values, dict):
        raise Refusal(
            "message", "The values are not readable.", "Send them by field.", field="values"
        )
    for field, value in values.items():
        _refuse_long(value, str(field))
    return read_values_kept(values)


def _short(text):
    text = on_one_line(text).strip()
    return text if len(text) < 60 else f"{text[:59]}…"
