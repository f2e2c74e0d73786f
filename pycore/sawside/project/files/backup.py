"""A backup: one JSON text with a project and its pictures, and what is let in from one.

    {"sawside": "backup", "schema": 6, "when": "2026-11-25T17:20", "document": {…},
     "photos": {"p1": "data:image/jpeg;base64,…"}}

`when` is "" by a clock that is not set. Such a text may come from anywhere. It is read whole or
not at all, and a refusal names the place.
"""

import json
import re

from sawside.errors import Refusal
from sawside.project.files.backup_text import MOST_BYTES, MOST_MARKS, marks, no_backup, parsed, size
from sawside.project.files.file_name import file_name
from sawside.project.kinds.checks import damaged, keys_checked, moment_checked, photo_checked
from sawside.project.schema.document import SCHEMA, read_document, schema_checked

MOST_PHOTOS = 300
_PICTURE = re.compile(r"data:image/(?:jpeg|png|webp);base64,[A-Za-z0-9+/]+={0,2}")


def backup(document, when="", photos=None):
    """The contract of `backup`: the text of the file, and its name; `when` may be not known."""
    whole = {
        "sawside": "backup",
        "schema": SCHEMA,
        "when": when,
        "document": document,
        "photos": _photos_given(photos or {}),
    }
    text = json.dumps(whole, ensure_ascii=False, indent=1)
    _refuse_unrestorable(text)
    return {
        "name": file_name(document["name"], when[:10] or "backup", "sawside.json"),
        "type": "application/json",
        "text": text,
    }


def _photos_given(photos):
    if isinstance(photos, dict) and len(photos) > MOST_PHOTOS:
        raise _too_much(f"A backup can have at most {MOST_PHOTOS} pictures.")
    return _photos(photos)


def _refuse_unrestorable(text):
    """Refuse to give away what `restore` would not take."""
    taken = size(text)
    if taken > MOST_BYTES:
        raise _too_much(
            f"This backup would take {-(-taken // 10**6)} MB, and a backup can have at most "
            f"{MOST_BYTES // 10**6} MB."
        )
    if marks(text) > MOST_MARKS:
        raise Refusal(
            "range",
            "There’s more in this project than a backup can hold.",
            "Delete what you don’t need, then back up again.",
            field="document",
        )


def _too_much(message):
    remedy = "Remove photos from some readings, then back up again."
    return Refusal("range", message, remedy, field="photos")


def restore(text):
    """The contract of `restore`: a checked document with its pictures out of a backup's text.

    Refusals: "message" naming the place of what is damaged, "newer".
    """
    whole = parsed(text)
    if not isinstance(whole, dict) or whole.get("sawside") != "backup":
        raise no_backup("This file isn’t a Sawside backup.")
    schema_checked(whole.get("schema"))
    keys_checked(whole, "the backup", ("sawside", "schema", "when", "document"), ("photos",))
    document = read_document(whole["document"])
    when = "" if whole["when"] == "" else moment_checked(whole["when"], "when")
    cut = sum(len(pieces) for entry in document["entries"] for pieces in _cut(entry))
    return {
        "document": document,
        "photos": _photos(whole.get("photos", {})),
        "when": when,
        "said": f"{document['name']}: {_many(len(document['entries']), 'entry', 'entries')}, "
        f"{_many(cut, 'piece', 'pieces')} cut{when and f', saved {when[:10]}'}.",
    }


def _cut(entry):
    return entry.get("cut", {}).values()


def _many(number, one, several):
    return f"{number} {one if number == 1 else several}"


def _photos(data):
    if not isinstance(data, dict) or len(data) > MOST_PHOTOS:
        raise damaged("photos", f"is not an object of at most {MOST_PHOTOS} pictures")
    for name, picture in data.items():
        photo_checked(name, "photos")
        if not isinstance(picture, str) or not _PICTURE.fullmatch(picture):
            raise damaged(f"photos.{name}", "is not a picture")
    return dict(data)
