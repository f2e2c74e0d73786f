"""Names that stand for values in a sum: `[side]`, `[3]`, or `side` without brackets.

In brackets any name is read. Without them a name is read where a number is due; it begins with
a letter, and of two that fit the longer one is meant. What a name stands for is the caller's.
"""

import re
from fractions import Fraction
from typing import NamedTuple

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.refusals import unfinished, unreadable
from sawside.lengths.units import ANGLES, LENGTHS

BRACKETED = re.compile(r"\[([^\[\]]*)\]")
BARE = re.compile(r"[^\W\d_][\w ]*", re.UNICODE)
_SIGNS = {"x", "of"}


SQUARE = 2
"""The power of inches of an area."""


class Named(NamedTuple):
    """What a name stands for: an exact value of `power` 0 (count), 1 (inches), 2 or 3.

    An `angle` has power 1 and is in degrees, a `weight` power 0 and is in pounds: only a number in
    a unit of weight reads one. `echo` is what is understood, where that is not the name as it is
    written.
    """

    value: Fraction
    power: int
    angle: bool = False
    echo: str = ""
    weight: bool = False

    @property
    def is_area(self):
        """Whether it is in square inches."""
        return self.power == SQUARE


def check_name(name):
    """Refuse a name that could not be told from a number, a unit or a sign ("conflict")."""
    if not BARE.fullmatch(name):
        raise Refusal(
            "conflict",
            f"{quoted(name)} can’t be used in a sum.",
            "Start with a letter, and use only letters, digits and spaces.",
            field="name",
        )
    first = name.split()[0].casefold()
    if first in _SIGNS or first in LENGTHS or first in ANGLES:
        raise Refusal(
            "conflict",
            f"{quoted(first)} means something else in a sum.",
            "Choose another name.",
            field="name",
        )


def named_at(text, at, names):
    """(name as written, what it stands for, the place after it) where a number is due; or None.

    Raises Refusal "unreadable" for a bracket that is not closed, a name that nobody gave, and one
    whose own value could not be worked out (`names` has None for it, or the reason as a Refusal).
    """
    while at < len(text) and text[at] == " ":
        at += 1
    if text[at : at + 1] == "[":
        match = BRACKETED.match(text, at)
        if match is None:
            begun = text[at + 1 :].strip().casefold()
            said = unfinished if any(n.casefold().startswith(begun) for n in names) else unreadable
            raise said("A bracket isn’t closed.", "Add ] after the name.", at)
        name, end = match[1].strip(), match.end()
        if not name:
            raise unreadable("The brackets are empty.", "Put a name in them.", at)
        key = next((each for each in names if each.casefold() == name.casefold()), None)
        if key is None:
            raise unreadable(
                f"Nothing is named {quoted(name)}.", "Use a name or line that’s there.", at
            )
    else:
        key = _longest(text, at, names)
        if key is None:
            return None
        end = at + len(key)
    named = names[key]
    if named is None:
        raise unreadable(f"{quoted(key)} has no value yet.", "Fix that one first.", at)
    if isinstance(named, Refusal):
        said = named.kind, named.message, named.remedy
        raise Refusal(*said, at=at, unfinished=named.unfinished)
    return text[at:end], named, end


def _longest(text, at, names):
    best = None
    for name in names:
        end = at + len(name)
        fits = text[at:end].casefold() == name.casefold() and not text[end : end + 1].isalnum()
        if fits and not name[0].isdigit() and (best is None or len(name) > len(best)):
            best = name
    return best
