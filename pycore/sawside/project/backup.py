"""A backup: one JSON text with a project and its pictures, and what is let in from one.

    {"sawside": "backup", "schema": 3, "when": "2026-11-25T17:20", "document": {…},
     "photos": {"p1": "data:image/jpeg;base64,…"}}

Such a text may come from anywhere. It is read whole or not at all, and a refusal names the place.
"""

import json
import re

from sawside.errors import Refusal, quoted
from sawside.project.checks import (
    damaged,
    keys_checked,
    moment_checked,
    moment_given,
    photo_checked,
)
from sawside.project.document import SCHEMA, read_document
from sawside.project.file_name import file_name

MOST_TEXT = 20_000_000
MOST_PHOTOS = 300
_MOST_DIGITS = 15
_PICTURE = re.compile(r"data:image/(?:jpeg|png|webp);base64,[A-Za-z0-9+/]+={0,2}")


def backup(document, when, photos):
    """The contract of `backup`: the text of the file, and its name."""
    whole = {
        "sawside": "backup",
        "schema": SCHEMA,
        "when": moment_given(when),
        "document": document,
        "photos": _photos(photos or {}),
    }
    return {
        "name": file_name(document["name"], when[:10], "sawside.json"),
        "type": "application/json",
        "text": json.dumps(whole, ensure_ascii=False, indent=1),
    }


def restore(text):
    """The contract of `restore`: a checked document with its pictures out of a backup's text.

    Refusals: "message" naming the place of what is damaged, "newer".
    """
    whole = _parsed(text)
    if not isinstance(whole, dict) or whole.get("sawside") != "backup":
        raise Refusal("message", "This is no backup of a project.", "Choose another file.",
                      field="text")  # fmt: skip
    keys_checked(whole, "the backup", ("sawside", "schema", "when", "document"), ("photos",))
    document = read_document(whole["document"])
    when = moment_checked(whole["when"], "when")
    cut = sum(len(pieces) for entry in document["entries"] for pieces in _cut(entry))
    return {
        "document": document,
        "photos": _photos(whole.get("photos", {})),
        "when": when,
        "said": f"{document['name']}: {_many(len(document['entries']), 'entry', 'entries')}, "
        f"{_many(cut, 'piece', 'pieces')} cut, saved {when[:10]}.",
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


def _parsed(text):
    """The data of a JSON text, without keys that stand twice, and without numbers out of bounds."""
    if not isinstance(text, str) or len(text) > MOST_TEXT:
        raise Refusal("message", "This is no backup, or a very large one.",
                      "Choose another file.", field="text")  # fmt: skip
    try:
        return json.loads(
            text.removeprefix("\ufeff"),
            object_pairs_hook=_object,
            parse_int=_whole,
            parse_constant=_constant,
        )
    except json.JSONDecodeError as fault:
        message = f"This is no backup: line {fault.lineno}, character {fault.colno} can't be read."
        raise Refusal("message", message, "Choose another file.", field="text") from None
    except RecursionError:
        raise Refusal("message", "This is no backup: it is nested too deep.",
                      "Choose another file.", field="text") from None  # fmt: skip


def _object(pairs):
    made = dict(pairs)
    if len(made) != len(pairs):
        seen = set()
        twice = next(key for key, _ in pairs if key in seen or seen.add(key))
        raise damaged("the backup", f"has {quoted(twice)} twice in one place")
    return made


def _whole(digits):
    if len(digits) > _MOST_DIGITS:
        raise damaged("the backup", "holds a number that is too long")
    return int(digits)


def _constant(name):
    raise damaged("the backup", f"holds {name}, which is no number")
