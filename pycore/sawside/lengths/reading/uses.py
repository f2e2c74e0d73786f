"""Where a text uses names, found as the reader finds them but before any name has a value.

The reader looks for a name only where a number is due, so the text is walked number by number and
sign by sign. Time is linear in the text.
"""

import re
from dataclasses import dataclass

from sawside.lengths.reading.names import BRACKETED
from sawside.lengths.reading.scanner import NUMBER, SIGN, alike, plain_spaces

_WORD = re.compile(r"\w+")
_NEXT_WORD = re.compile(r" +\w+")
_LETTER = re.compile(r"[^\W\d_]")


@dataclass(frozen=True, slots=True)
class Use:
    """A name from `start` to `end` of the text, as `written` there without its brackets."""

    start: int
    end: int
    written: str


def uses(typed, longest):
    """Every `Use` in a text, in order.

    `longest(text, at)` tells where the longest known name that begins at `at` ends, or None. A name
    that nobody gave counts as a use as well, as far as its letters, digits and spaces go.
    """
    typed = plain_spaces(typed)
    text = typed if typed.isascii() else alike(typed)
    at, due, found = 0, True, []
    while at < len(text):
        number = NUMBER.match(text, at)
        if number is not None:
            at, due = number.end(), False
        elif text[at] == " ":
            at += 1
        elif due and (use := _use_at(typed, at, longest)) is not None:
            found.append(use)
            at, due = use.end, False
        elif (sign := SIGN.match(text, at)) is not None:
            at, due = sign.end(), sign[1] != ")"
        else:
            at += 1
    return found


def _use_at(typed, at, longest):
    bracketed = BRACKETED.match(typed, at)
    if bracketed is not None:
        written = bracketed[1].strip()
        return Use(at, bracketed.end(), written) if written else None
    end = longest(typed, at)
    if end is None and _LETTER.match(typed, at) and not SIGN.match(typed, at):
        end = _WORD.match(typed, at).end()
        while goes_on(typed, end):
            end = _NEXT_WORD.match(typed, end).end()
    return None if end is None else Use(at, end, typed[at:end])


def goes_on(typed, end):
    """Whether more words follow that are no sign: a name that ends here was not meant."""
    return _NEXT_WORD.match(typed, end) is not None and not SIGN.match(typed, end)


def renamed(typed, longest, new):
    """The text with `new(written)` in brackets for each use; None from `new` leaves it alone."""
    parts, at = [], 0
    for use in uses(typed, longest):
        name = new(use.written)
        if name is not None:
            parts += [typed[at : use.start], f"[{name}]"]
            at = use.end
    return "".join([*parts, typed[at:]])
