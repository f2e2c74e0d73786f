"""The text of a backup: how large it may be, and its data read within bounded memory."""

import json

from sawside.errors import Refusal, quoted
from sawside.project.kinds.checks import damaged

MOST_BYTES = 60_000_000
"""Of the text: room for 300 photographs as the page makes them, of 200 kB each. What is
larger is neither made nor read; the page's `read-file.js` and the door go by the same number."""

MOST_MARKS = 1_000_000
"""Commas and opening brackets in the text: there are no more values in it than that, and memory is
bounded before it is read."""

_MOST_DIGITS = 15


def size(text):
    """Bytes of a text in a file."""
    return len(text) if text.isascii() else len(text.encode(errors="replace"))


def marks(text):
    """How many commas and opening brackets a text has."""
    return sum(map(text.count, ",[{"))


def parsed(text):
    """The data of a JSON text, without keys that stand twice, and without numbers out of bounds."""
    if size(text) > MOST_BYTES:
        raise no_backup("This isn’t a backup, or it’s a very large one.")
    if marks(text) > MOST_MARKS:
        raise no_backup(f"This isn’t a backup: it has more than {MOST_MARKS} values.")
    try:
        return json.loads(
            text.removeprefix("\ufeff"),
            object_pairs_hook=_object,
            parse_int=_whole,
            parse_constant=_constant,
        )
    except json.JSONDecodeError as fault:
        place = f"line {fault.lineno}, character {fault.colno}"
        raise no_backup(f"This isn’t a backup: {place} can’t be read.") from None
    except RecursionError:
        raise no_backup("This isn’t a backup: it’s nested too deep.") from None


def no_backup(message):
    """The refusal of a file that is none of ours."""
    return Refusal("message", message, "Choose another file.", field="text")


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
