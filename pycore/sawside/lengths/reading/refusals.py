"""What is said about a text that can't be read: a plain sentence, the place, and a remedy.

A text that only has to go on is told so, as `unfinished`: the sentence is then the quiet one for
somebody who is still typing. No remedy ever moves digits together, nor tells to take away what
parts them: `31 5` is on its way to `31 5/8`, and 315 would be cut ten times too long.
"""

import re
import unicodedata

from sawside.errors import Refusal, quoted

MOST_CHARACTERS = 200
MOST_DIGITS = 12
_ZERO_SO_FAR = re.compile(r"(?<![0-9/.])(?:0++\.?+0*+|\.0++) *+$", re.ASCII)
_OF = ("o", "O")


def unreadable(message, remedy, at):
    """A refusal of kind "unreadable" at a character of the text."""
    return Refusal("unreadable", message, remedy, at=at)


def unfinished(message, remedy, at):
    """The same of a text that may only have to go on."""
    return Refusal("unreadable", message, remedy, at=at, unfinished=True)


def zero_so_far(text):
    """Whether a text ends in a 0 that further digits may make into another number: 8 ÷ 0."""
    return _ZERO_SO_FAR.search(text) is not None


def point_alone(at):
    """A point at the end, before any digit: the beginning of .0625."""
    return unfinished("There’s a decimal point but no digits yet.", "Type the digits after it.", at)


def two_meanings(whole, decimals, bottom, at):
    """A decimal with a line right after it: 31.5/8 may be 31 5/8 or a division."""
    divided = f"{whole}.{decimals} ÷ {bottom}"
    mixed = f"{whole} {decimals}/{bottom}".strip()
    return unreadable(
        f"{quoted(f'{whole}.{decimals}/{bottom}')} could mean two things.",
        f"Write {mixed} or {divided}." if decimals else f"Write {whole} ÷ {bottom}.",
        at,
    )


def unit_begun(word, units, at):
    """The first letters of one of `units`, at the end of the text."""
    unit = min(units, key=len)
    return unfinished(f"{quoted(word)} isn’t a unit yet.", f"Keep going, as in {unit}.", at)


def unknown_unit(typed, at, kind):
    """A word or mark after a number that is no unit of a kind, or one too many."""
    word = word_at(typed, at)
    before = typed[:at].rstrip(" .")[-1:]
    if typed[at + len(word) :].strip() == "":
        if word in _OF:
            return unfinished(f"{quoted(word)} isn’t a word yet.", "Keep going, as in of.", at)
        units = [name for name in kind.units if name.startswith(word.lower())]
        if units and (before.isdigit() or unicodedata.category(before) == "No"):
            return unit_begun(word, units, at)
    if word in ("e", "E") and typed[at + 1 : at + 2] in ("", "+", "-", *"0123456789"):
        return unreadable("Scientific notation doesn’t work here.", "Write the number out.", at)
    if before and not (before.isdigit() or unicodedata.category(before) == "No"):
        return unreadable(f"{quoted(word)} is an extra unit.", "Use just one unit.", at)
    return unreadable(f"I don’t know the unit {quoted(word)} here.", kind.other_units, at)


def word_at(text, at):
    """The letters from a place on, or the one character there."""
    end = at
    while end < len(text) and text[end].isalpha():
        end += 1
    return text[at : max(end, at + 1)]
