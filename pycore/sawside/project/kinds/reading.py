"""A reading: what the tape said, or a sum with names."""

from sawside.errors import Refusal, on_one_line
from sawside.needs import require
from sawside.project.kinds.checks import callable_name, short_sum, text_checked, unit_checked
from sawside.project.kinds.entry_parts import MOST_EARLIER, READING_DETAILS, earlier_checked
from sawside.project.kinds.kind import Kind
from sawside.project.kinds.reading_worked import ReadingWorked


def _with_own(entry, renamed):
    name = renamed["tapes"].get(entry.get("tape"))
    return entry if name is None else entry | {"tape": name}


def _corrected(entry, text=None, unit=None, values=None, **details):
    require(text, "text")
    short_sum(text, "text")
    said = f"Corrected {entry['name']}: {_short(entry['text'])} → {_short(text)}."
    if not entry["text"].strip():
        said = f"Filled in {entry['name']}: {_short(text)}."
    return _with_text(entry, text, unit or entry["unit"]) | details, said


def _with_text(entry, text, unit):
    """A reading with another text, and the one before among its earlier ones."""
    new = entry | {"text": text, "unit": unit}
    if unit != entry["unit"]:
        new.pop("off", None)
    if text != entry["text"]:
        new.pop("when", None)
    if text != entry["text"] and entry["text"].strip():
        before = {key: entry[key] for key in ("text", "unit", "when") if key in entry}
        new["earlier"] = [*entry.get("earlier", ()), before][-MOST_EARLIER:]
    return new


def _short(text):
    text = on_one_line(text).strip()
    return text if len(text) < 60 else f"{text[:59]}…"


def _work(entry, settings, names, _linked, _like):
    try:
        return ReadingWorked(entry, settings, names)
    except Refusal as refusal:
        raise refusal.of("text") from None


READING = Kind(
    needs={"unit": unit_checked, "text": text_checked},
    may=READING_DETAILS | {"earlier": earlier_checked},
    name=callable_name,
    title=lambda _entry, calls: "Sum" if calls else "Reading",
    texts=lambda entry: [(None, entry["text"])],
    with_texts=lambda entry, change, _fields: entry | {"text": change(entry["text"])},
    with_own=_with_own,
    corrected=_corrected,
    work=_work,
)
