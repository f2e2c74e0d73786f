"""What is said about a text that can't be read: a plain sentence, the place, and a remedy.

A text that only has to go on is told so, as `unfinished`: the sentence is then the quiet one for
somebody who is still typing. No remedy ever moves digits together, nor tells to take away what
parts them: `31 5` is on its way to `31 5/8`, and 315 would be cut ten times too long.
"""

import re
import unicodedata

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.scanner import LOWERED, NUMBER, RAISED, SIGN

MOST_CHARACTERS = 200
MOST_DIGITS = 12
_REPEATED = {"//": "/", "**": "×", "++": "+", "÷÷": "÷"}
_OVER = re.compile(r"(?<![0-9./])(?:([0-9]++) ++)?([0-9]++)(/?) *+$", re.ASCII)
"""A fraction at the end of a text whose bottom number is still to come: 31 5, 31 5/, 5/."""
_WHOLE_AND_TOP = re.compile(r"(?<![0-9./])([0-9]++) ++([0-9]++)(?![0-9./])", re.ASCII)
_RAISED_OVER = re.compile(rf"(?:([{RAISED}]++)(/?)|⅟) *+$")
_ZERO_SO_FAR = re.compile(r"(?<![0-9/.])(?:0++\.?+0*+|\.0++) *+$", re.ASCII)
_OF = ("o", "O")
_ONE_POINT = "Write the number again, with one point before its decimals."
_BEFORE_COMMA = re.compile(r"[0-9.,]*+$", re.ASCII)
_AROUND_COMMA = re.compile(r"[0-9.,]*+", re.ASCII)
_THOUSANDS = re.compile(r"[1-9][0-9]{0,2},[0-9]{3}", re.ASCII)


def unreadable(message, remedy, at):
    """A refusal of kind "unreadable" at a character of the text."""
    return Refusal("unreadable", message, remedy, at=at)


def unfinished(message, remedy, at):
    """The same of a text that may only have to go on."""
    return Refusal("unreadable", message, remedy, at=at, unfinished=True)


def zero_so_far(text):
    """Whether a text ends in a 0 that further digits may make into another number: 8 ÷ 0."""
    return _ZERO_SO_FAR.search(text) is not None


def _over_what(whole, top, line, at):
    """A fraction that has no bottom number yet; `line` is its line, if that was written."""
    number = f"{whole} and {top}" if whole else top
    then = "the bottom number" if line else "/ and the bottom number"
    return unfinished(f"{number} over what?", f"Now {then}.", at)


def _first(text, at):
    while at < len(text) and text[at] == " ":
        at += 1
    return at


def no_number(text, typed, at, example, names=None):
    """A number was due at `at`, and something else stands there."""
    at = _first(text, at)
    before = text[:at].rstrip()
    if at == len(text):
        return _ended(before, example)
    if raised := _RAISED_OVER.match(text, at):
        return _raised_over(raised, at)
    if text[at:].strip() == ".":
        return point_alone(at)
    begun = text[at:].strip().casefold()
    for name in names or ():
        if name.casefold().startswith(begun):
            return unfinished(
                f"{quoted(typed[at:].strip())} is the beginning of a name.",
                f"Now the rest of it, as in {name}.",
                at,
            )
    character = text[at]
    if SIGN.match(text, at) and character != "(":
        return _sign_for_number(text, typed, at, before)
    if character.isalpha() or character in "'\"°":
        if character.isalpha() and not character.isascii():
            return _strange(typed, at)
        return unreadable(
            f"{quoted(_word(typed, at))} stands where a number is due.",
            f"Write the number in front of it, as in {example}.",
            at,
        )
    return _strange(typed, at)


def point_alone(at):
    """A point at the end, before any digit: the beginning of .0625."""
    return unfinished("A point, and no digit yet.", "Now the decimals.", at)


def _ended(before, example):
    if not before:
        return Refusal("missing", "Nothing is written here.", f"Type it as in {example}.", at=0)
    if before[-1] == "/" and (over := _OVER.search(before)):
        return _over_what(*over.groups(), len(before) - 1)
    last = "of" if before[-1] in "fF" else before[-1]
    if last == "(":
        return unfinished("The parenthesis is open.", "Now what stands in it.", len(before) - 1)
    return unfinished(
        f"The sum ends after {quoted(last)}.", "Now the number that follows.", len(before) - 1
    )


def _sign_for_number(text, typed, at, before):
    sign = typed[at]
    if sign == ")":
        return unreadable(
            "Nothing stands between the parentheses.",
            "Write a number before the closing parenthesis.",
            at,
        )
    if not before or before[-1] == "(":
        return unreadable(
            f"Nothing stands before {quoted(sign)}.", "Write the number in front of it.", at
        )
    single = _REPEATED.get(text[at - 1 : at + 1])
    mended = typed[: at - 1] + single + typed[at + 1 :] if single else None
    return unreadable(
        f"I can't read {quoted(typed.strip())}: two signs stand side by side.",
        f"Write it as {mended.strip()}."
        if mended and mended.rstrip()[-1].isalnum()
        else "Take one of the two signs away.",
        at,
    )


def no_sign(text, typed, at, kind):
    """A sign or the end was due at `at`, and something else stands there."""
    at = _first(text, at)
    character = text[at]
    if character == "(":
        return unreadable(
            "A sign is missing before the parenthesis.", "Put × or + in front of it.", at
        )
    if character == ")":
        return unreadable(
            "This parenthesis was never opened.", "Open one, or put a space in its place.", at
        )
    if character == ",":
        return _comma(typed, at)
    if character == "." and text[at - 1 : at].isdigit():
        return unreadable("There are two points in one number.", _ONE_POINT, at)
    if raised := _RAISED_OVER.match(text, at):
        return _raised_over(raised, at)
    if character in "^" + RAISED:
        return unreadable("Powers are not read here.", "Write it as a product, as in 3 × 3.", at)
    if NUMBER.match(text, at):
        return side_by_side(text, at)
    if character in "'\"" or (character.isascii() and character.isalpha()):
        return unknown_unit(typed, at, kind)
    return _strange(typed, at)


def _raised_over(raised, at):
    """A fraction in raised digits that has no bottom number yet: 5³, ⁵/, ⅟."""
    return _over_what(None, raised[1] or "1", raised[2] != "", at)


def side_by_side(text, at):
    """Two numbers with no sign between them; the second one, at `at`, may begin a fraction."""
    over = _OVER.search(text)
    if over and over[1] and over.start(2) == at:
        return _over_what(*over.groups(), at)
    for pair in _WHOLE_AND_TOP.finditer(text):
        if pair.start(2) == at:
            return unreadable(
                f"{pair[1]} and {pair[2]} over what?",
                "Write / and the bottom number, or put a sign between the two.",
                at,
            )
    return unreadable(
        "Two numbers stand side by side with no sign between them.",
        "Put +, − or × between them.",
        at,
    )


def two_meanings(whole, decimals, bottom, at):
    """A decimal with a line right after it: 31.5/8 may be 31 5/8 or a division."""
    divided = f"{whole}.{decimals} ÷ {bottom}"
    mixed = f"{whole} {decimals}/{bottom}".strip()
    return unreadable(
        f"{quoted(f'{whole}.{decimals}/{bottom}')} can mean two things.",
        f"Write {mixed} or {divided}." if decimals else f"Write {whole} ÷ {bottom}.",
        at,
    )


def unit_begun(word, units, at):
    """The first letters of one of `units`, at the end of the text."""
    unit = min(units, key=len)
    return unfinished(f"{quoted(word)} is no unit yet.", f"Now the rest of it, as in {unit}.", at)


def unknown_unit(typed, at, kind):
    """A word or mark after a number that is no unit of a kind, or one too many."""
    word = _word(typed, at)
    before = typed[:at].rstrip(" .")[-1:]
    if typed[at + len(word) :].strip() == "":
        if word in _OF:
            return unfinished(f"{quoted(word)} is no word yet.", "Now the rest, as in of.", at)
        units = [name for name in kind.units if name.startswith(word.lower())]
        if units and (before.isdigit() or unicodedata.category(before) == "No"):
            return unit_begun(word, units, at)
    if word in ("e", "E") and typed[at + 1 : at + 2] in ("", "+", "-", *"0123456789"):
        return unreadable("Powers of ten are not read here.", "Write the number in full.", at)
    if before and not (before.isdigit() or unicodedata.category(before) == "No"):
        return unreadable(f"{quoted(word)} is one unit too many here.", "Keep one unit.", at)
    return unreadable(f"I don't know the unit {quoted(word)} here.", kind.other_units, at)


def _comma(typed, at):
    start = _BEFORE_COMMA.search(typed, 0, at).start()
    number = _AROUND_COMMA.match(typed, start)[0]
    whole, decimals = typed[start:at], number[at - start + 1 :]
    if {",", "."} & {*whole, *decimals}:
        message = f"{quoted(number)} has more than one comma or point."
        return unreadable(message, _ONE_POINT, at)
    if not (whole and decimals):
        return unreadable("A comma has no meaning here.", "Write decimals with a point.", at)
    if _THOUSANDS.fullmatch(number):
        return unreadable(
            f"{quoted(number)} can mean two things.",
            f"Write {whole}.{decimals}, or the whole number in plain digits.",
            at,
        )
    return unreadable(
        f"{quoted(number)} has a comma before its decimals.", f"Write {whole}.{decimals}.", at
    )


def _strange(typed, at):
    character = typed[at]
    if character == ",":
        return _comma(typed, at)
    if character in RAISED + LOWERED:
        return unreadable(
            "A small raised or lowered digit belongs to a fraction.",
            "Write the fraction with a line, as in 3/4.",
            at,
        )
    if unicodedata.category(character)[0] == "N":
        return unreadable(
            f"{quoted(character)} is not a digit that I read.", "Use the digits 0 to 9.", at
        )
    return unreadable(
        f"I can't read {quoted(character)}.", "Put a space, a sign or a number in its place.", at
    )


def _word(text, at):
    end = at
    while end < len(text) and text[end].isalpha():
        end += 1
    return text[at : max(end, at + 1)]
