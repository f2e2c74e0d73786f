"""What entries are made of, each piece of it checked: values, pieces as they were cut, trials."""

from sawside.project.kinds.checks import (
    choice_checked,
    damaged,
    inches_checked,
    keys_checked,
    list_checked,
    moment_checked,
    photo_checked,
    text_checked,
    unit_checked,
    words_checked,
)
from sawside.settings.settings import CHOICES

MOST_VALUES = 100
MOST_ROWS = 200
MOST_EARLIER = 50
MOST_PIECES = 2000
"""Of one part: a question makes at most a thousand."""

MOST_TRIALS = 50
MOST_ENDS = 220
"""Characters: schema 4 had 200, and the code of an end may be one longer than its words were."""

SIDES = ("light", "heavy")
CUTS = ("stop", "mark")


def _fineness(value, place):
    return choice_checked(value, place, [mark for mark in CHOICES["mark"] if mark])


def _side(value, place):
    return choice_checked(value, place, SIDES)


def earlier_checked(value, place):
    """The earlier texts of a reading, the latest last."""
    return [
        checked(each, f"{place}[{at}]", {"text": text_checked, "unit": unit_checked}, _WHEN)
        for at, each in enumerate(list_checked(value, place, MOST_EARLIER))
    ]


_WHEN = {"when": moment_checked}
READING_DETAILS = {
    "where": words_checked,
    "tape": words_checked,
    "side": _side,
    "when": moment_checked,
    "fineness": _fineness,
    "off": words_checked,
    "photo": photo_checked,
}
"""What is told of a reading beside its text; each may be left out. `off` is a length in the unit
of the reading: what the person says that it may be off by."""

ABOUT = dict.fromkeys(
    ("material", "grain", "place", "rough_length", "rough_width", "rough_thickness"), words_checked
)
"""What is told of a part beside its sizes. The rough ones are lengths: what is added before
the piece is cut to its finished size."""

PIECE = {
    "length": inches_checked,
    "width": inches_checked,
    "thickness": inches_checked,
    "short_side": inches_checked,
    "ends": lambda value, place: words_checked(value, place, MOST_ENDS),
    "when": moment_checked,
}
"""A piece as it was cut; empty where that is not known. `short_side` is there where it has one,
and was kept."""

_TRIAL = {
    "aimed": inches_checked,
    "measured": text_checked,
    "unit": unit_checked,
    "cut": lambda value, place: choice_checked(value, place, CUTS),
}


def read_values_kept(data, place="values"):
    """A checked copy of a line's values: texts, lists of texts, lists of rows of texts."""
    return _values(data, place, _value)


def checked(data, place, needed, optional, allowed=()):
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


def by_part(read):
    """The check of an object from parts to something."""

    def check(data, place):
        if not isinstance(data, dict) or len(data) > MOST_VALUES:
            raise damaged(place, "is not an object of parts")
        made = ((words_checked(part, place), read(each, place)) for part, each in data.items())
        return {part: each for part, each in made if each}

    return check


def pieces_checked(value, place):
    """The pieces of a part that were cut, or spoiled."""
    return [
        checked(each, f"{place}[{at}]", {}, PIECE)
        for at, each in enumerate(list_checked(value, place, MOST_PIECES))
    ]


def trials_checked(value, place):
    """The set-ups that were tried for a part, the latest last."""
    return [
        checked(each, f"{place}[{at}]", _TRIAL, _WHEN)
        for at, each in enumerate(list_checked(value, place, MOST_TRIALS))
    ]


def about_checked(value, place):
    """What is told of a part, without space around it."""
    told = {key: said.strip() for key, said in checked(value, place, {}, ABOUT).items()}
    return {key: said for key, said in told.items() if said}
