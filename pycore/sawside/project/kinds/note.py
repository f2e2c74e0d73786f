"""A note: words, which nothing is worked out of."""

from sawside.errors import Refusal, left_blank
from sawside.needs import require
from sawside.project.kinds.checks import clean_name, text_checked
from sawside.project.kinds.kind import Kind

MOST_NOTE = 4000


def refuse_no_note(text):
    """Refuse a note that is blank or too long."""
    if not text.strip():
        raise left_blank("The note", "Write something.", "text")
    if len(text) > MOST_NOTE:
        message = f"The note is longer than {MOST_NOTE} characters."
        raise Refusal("range", message, "Split it in two.", field="text")


def _corrected(entry, text=None, **_others):
    require(text, "text")
    refuse_no_note(text)
    return entry | {"text": text}, f"Changed {entry['name']}."


NOTE = Kind(
    needs={"text": lambda value, place: text_checked(value, place, MOST_NOTE)},
    may={},
    name=clean_name,
    title=lambda _entry, _calls: "Note",
    texts=lambda _entry: (),
    with_texts=lambda entry, _change, _fields: entry,
    with_own=lambda entry, _renamed: entry,
    corrected=_corrected,
    work=None,
)
