"""The entries of a project: a checked copy of each kind, with its keys in one order.

What is blank is left out, and every value in an entry is a text, so two entries are the same
exactly when they are equal.
"""

from sawside.lengths.settings import CHOICES
from sawside.project.checks import (
    choice_checked,
    damaged,
    id_checked,
    inches_checked,
    keys_checked,
    list_checked,
    moment_checked,
    name_checked,
    photo_checked,
    text_checked,
    unit_checked,
    words_checked,
)

MOST_VALUES = 100
MOST_ROWS = 200
MOST_EARLIER = 50
MOST_PIECES = 2000
"""Of one part: a question makes at most a thousand."""

MOST_TRIALS = 50
MOST_ENDS = 200
MOST_NOTE = 4000
SIDES = ("light", "heavy")
CUTS = ("stop", "mark")


def _fineness(value, place):
    return choice_checked(value, place, [mark for mark in CHOICES["mark"] if mark])


def _side(value, place):
    return choice_checked(value, place, SIDES)


def _earlier(value, place):
    return [
        _checked(each, f"{place}[{at}]", {"text": text_checked, "unit": unit_checked}, _WHEN)
        for at, each in enumerate(list_checked(value, place, MOST_EARLIER))
    ]


_WHEN = {"when": moment_checked}
READING = {
    "where": words_checked,
    "tape": words_checked,
    "side": _side,
    "when": moment_checked,
    "fineness": _fineness,
    "photo": photo_checked,
}
"""What is told of a reading beside its text; each may be left out."""

ABOUT = dict.fromkeys(
    ("material", "grain", "place", "rough_length", "rough_width", "rough_thickness"), words_checked
)
"""What is told of a part beside its sizes. The rough ones are lengths: what is added before
the piece is cut to its finished size."""

PIECE = {
    "length": inches_checked,
    "width": inches_checked,
    "thickness": inches_checked,
    "ends": lambda value, place: words_checked(value, place, MOST_ENDS),
    "when": moment_checked,
}
"""A piece as it was cut; empty where that is not known."""

_TRIAL = {
    "aimed": inches_checked,
    "measured": text_checked,
    "unit": unit_checked,
    "cut": lambda value, place: choice_checked(value, place, CUTS),
}


def read_entry(data, place="entry"):
    """A checked copy of one entry; `place` is where it stands, for the refusal."""
    if not isinstance(data, dict):
        raise damaged(place, "is not an object")
    kind = data.get("kind")
    if not isinstance(kind, str) or kind not in _KINDS:
        raise damaged(f"{place}.kind", f"is not one of {', '.join(_KINDS)}")
    needed, optional = _KINDS[kind]
    checks = _HEAD | needed
    entry = {"id": "", "kind": kind} | _checked(data, place, checks, optional, ("kind",))
    return {key: value for key, value in entry.items() if value or key in checks or key == "kind"}


def read_values_kept(data, place="values"):
    """A checked copy of a line's values: texts, lists of texts, lists of rows of texts."""
    return _values(data, place, _value)


def _checked(data, place, needed, optional, allowed=()):
    """A copy of an object, each of its values checked by the function that its key has.

    What is optional and blank is left out.
    """
    keys_checked(data, place, needed, (*optional, *allowed))
    return {
        key: check(data[key], f"{place}.{key}")
        for key, check in (needed | optional).items()
        if key in data and (key in needed or data[key] != "")
    }


def _values(data, place, read):
    if not isinstance(data, dict) or len(data) > MOST_VALUES:
        raise damaged(place, "is not an object of fields")
    return {text_checked(key, place): read(value, f"{place}.{key}") for key, value in data.items()}


def _value(value, place):
    if not isinstance(value, list):
        return text_checked(value, place)
    if len(value) > MOST_ROWS:
        raise damaged(place, f"has more than {MOST_ROWS} rows")
    return [
        _values(row, place, text_checked) if isinstance(row, dict) else text_checked(row, place)
        for row in value
    ]


def _by_part(read):
    """The check of an object from parts to something."""

    def check(data, place):
        if not isinstance(data, dict) or len(data) > MOST_VALUES:
            raise damaged(place, "is not an object of parts")
        made = ((words_checked(part, place), read(each, place)) for part, each in data.items())
        return {part: each for part, each in made if each}

    return check


def _pieces(value, place):
    return [
        _checked(each, f"{place}[{at}]", {}, PIECE)
        for at, each in enumerate(list_checked(value, place, MOST_PIECES))
    ]


def _trials(value, place):
    return [
        _checked(each, f"{place}[{at}]", _TRIAL, _WHEN)
        for at, each in enumerate(list_checked(value, place, MOST_TRIALS))
    ]


def _about(value, place):
    return {key: said for key, said in _checked(value, place, {}, ABOUT).items() if said}


_HEAD = {"id": id_checked, "name": name_checked}
_KINDS = {
    "reading": (
        {"unit": unit_checked, "text": text_checked},
        READING | {"earlier": _earlier},
    ),
    "line": (
        {"unit": unit_checked, "reckoner": text_checked, "values": read_values_kept},
        {
            "cut": _by_part(_pieces),
            "spoiled": _by_part(_pieces),
            "trials": _by_part(_trials),
            "about": _by_part(_about),
        },
    ),
    "note": ({"text": lambda value, place: text_checked(value, place, MOST_NOTE)}, {}),
}
"""Kind to the checks of the keys that it needs, and of those that it may have."""
