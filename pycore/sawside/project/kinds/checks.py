"""Small checks of kept data, which comes from outside: each refusal names the place."""

import re
from datetime import datetime

from sawside.errors import Refusal, left_blank, quoted
from sawside.lengths.reading.refusals import MOST_CHARACTERS, unreadable
from sawside.lengths.reading.scanner import plain_spaces
from sawside.needs import text
from sawside.settings.settings import CHOICES

MOST_NAME = 80
_REMEDY = "Open a copy that was saved earlier."
_HALF_CHARACTER = re.compile("[\ud800-\udfff]")
_MOMENT = re.compile(
    r"\d{4}-\d\d-\d\d(?:T\d\d:\d\d(?::\d\d(?:\.\d{1,9})?)?(?:Z|[+-]\d\d:\d\d)?)?", re.ASCII
)
_INCHES = re.compile(r"-?\d{1,20}(?:/[1-9]\d{0,19})? in", re.ASCII)
_PHOTO = re.compile(r"[A-Za-z0-9-]{1,64}")


class Damaged(Refusal):
    """The refusal of what can't have been kept by this program."""

    def __init__(self, place, what):
        super().__init__(
            "message",
            f"The saved data is damaged: {place} {what}.",
            _REMEDY,
            field=place if place.startswith("the ") else f"document.{place}",
        )
        self._place, self._what = place, what

    def as_typed(self, row=None):
        """The same told of what is only now to be kept."""
        field = self._place.rpartition(".")[2].partition("[")[0]
        message = f"This {self._what}."
        return Refusal(self.kind, message, "Type it another way.", field=field, row=row)


def damaged(place, what):
    """The refusal of what can't have been kept by this program."""
    return Damaged(place, what)


def keys_checked(data, place, needed, allowed=()):
    """Refuse what is no object, lacks a key or has one too many."""
    if not isinstance(data, dict):
        raise damaged(place, "is not an object")
    for key in needed:
        if key not in data:
            raise damaged(place, f"lacks {quoted(key)}")
    for key in data:
        if key not in needed and key not in allowed:
            raise damaged(place, f"holds {quoted(str(key))}, which does not belong there")


def text_checked(value, place, most=MOST_CHARACTERS):
    """A text that can be written out again; a number is taken as its text."""
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        value = str(value)
    if not isinstance(value, str) or len(value) > most:
        raise damaged(place, f"is not a text of at most {most} characters")
    if not value.isascii() and _HALF_CHARACTER.search(value):
        raise damaged(place, "holds half a character")
    return value


def short_sum(value, place):
    """A text that is only now to be kept, and not too long to be read as a sum."""
    if len(text(value, place)) > MOST_CHARACTERS:
        message = f"This is longer than {MOST_CHARACTERS} characters."
        raise unreadable(message, "Split it into shorter sums.", 0).of(place)
    return value


def words_checked(value, place, most=MOST_NAME):
    """A text of one line that can be shown, with plain spaces; it may be blank."""
    value = plain_spaces(text_checked(value, place, most))
    if not value.isprintable():
        raise damaged(place, "holds characters that can’t be shown")
    return value


def name_checked(value, place):
    """A name as `clean_name` leaves it."""
    try:
        name = clean_name(value)
    except Refusal as refusal:
        raise damaged(place, f"can’t be used: {refusal.message}") from None
    if name != plain_spaces(value):
        raise damaged(place, "has space around it")
    return name


def clean_name(name, field="name"):
    """A name as it is kept: 1 to 80 characters that can be shown, without space around it.

    Spaces in it are plain ones.
    """
    name = plain_spaces(text(name, field)).strip()
    if not name:
        raise left_blank("The name", "Type a name.", field)
    if len(name) > MOST_NAME:
        message = f"The name is longer than {MOST_NAME} characters."
        raise Refusal("range", message, "Shorten it.", field=field)
    if not name.isprintable():
        message = "The name has characters that can’t be shown."
        raise Refusal("unreadable", message, "Type it again.", field=field)
    return name


def callable_name(name, field="name"):
    """A clean name that a text can use in brackets."""
    name = clean_name(name, field)
    if set(name) & set("[]"):
        message = "A name used in sums can’t have brackets."
        raise Refusal("unreadable", message, "Remove them.", field=field)
    return name


def whole_number(value, place, least, most):
    """A whole number, inclusive of both ends."""
    if isinstance(value, bool) or not isinstance(value, int) or not least <= value <= most:
        raise damaged(place, f"is not a whole number from {least} to {most}")
    return value


def list_checked(value, place, most):
    """A list that is not too long."""
    if not isinstance(value, list) or len(value) > most:
        raise damaged(place, f"is not a list of at most {most}")
    return value


def id_checked(value, place):
    """The number of an entry, as text."""
    good = isinstance(value, str) and value.isascii() and value.isdigit() and len(value) <= 9
    if not good or value[0] == "0":
        raise damaged(place, "is not an id")
    return value


def unit_checked(unit, place):
    """The unit that a bare number was kept in."""
    if not isinstance(unit, str) or unit not in CHOICES["unit"]:
        raise damaged(place, "is no unit that this program knows")
    return unit


def choice_checked(value, place, choices):
    """One of a few words."""
    if not isinstance(value, str) or value not in choices:
        raise damaged(place, f"is not one of {', '.join(choices)}")
    return value


def is_moment(value):
    """Whether a value is a day, or a day and time, of the calendar."""
    if not isinstance(value, str) or not _MOMENT.fullmatch(value):
        return False
    try:
        datetime.fromisoformat(value)
    except ValueError:
        return False
    return True


def moment_given(value, field="when"):
    """A moment that is only now to be kept, "" for none or None.

    What is kept already may be none of the calendar.
    """
    if value is None or value == "":
        return ""
    if not is_moment(value):
        message = "That’s not a date and time."
        raise Refusal("message", message, "Type it as in 2026-11-25T17:20.", field=field)
    return value


def _matching(pattern, what):
    def check(value, place):
        value = plain_spaces(value) if isinstance(value, str) else ""
        if not pattern.fullmatch(value):
            raise damaged(place, f"is not {what}")
        return value

    return check


moment_checked = _matching(_MOMENT, "a date and time, as in 2026-11-25T17:20")
inches_checked = _matching(_INCHES, "an exact number of inches, as in 289/8 in")
photo_checked = _matching(_PHOTO, "the name of a picture")
