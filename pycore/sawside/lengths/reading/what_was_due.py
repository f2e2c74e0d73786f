"""What is said where a number or a sign was due, and something else stands there."""

import re
import unicodedata

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.refusals import (
    point_alone,
    unfinished,
    unknown_unit,
    unreadable,
    word_at,
)
from sawside.lengths.reading.scanner import LOWERED, NUMBER, RAISED, SIGN
from sawside.lengths.reading.two_numbers import OVER, over_what, side_by_side

_REPEATED = {"//": "/", "**": "×", "++": "+", "÷÷": "÷"}
_RAISED_OVER = re.compile(rf"(?:([{RAISED}]++)(/?)|⅟) *+$")
_ONE_POINT = "Type the number again with one decimal point."
_BEFORE_COMMA = re.compile(r"[0-9.,]*+$", re.ASCII)
_AROUND_COMMA = re.compile(r"[0-9.,]*+", re.ASCII)
_THOUSANDS = re.compile(r"[1-9][0-9]{0,2},[0-9]{3}", re.ASCII)


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
                f"{quoted(typed[at:].strip())} starts a name.", f"Keep going, as in {name}.", at
            )
    character = text[at]
    if SIGN.match(text, at) and character != "(":
        return _sign_for_number(text, typed, at, before)
    if character.isalpha() or character in "'\"°":
        if character.isalpha() and not character.isascii():
            return _strange(typed, at)
        return unreadable(
            f"{quoted(word_at(typed, at))} is where a number should be.",
            f"Put the number before it, as in {example}.",
            at,
        )
    return _strange(typed, at)


def _ended(before, example):
    if not before:
        return Refusal("missing", "This is blank.", f"Type it as in {example}.", at=0)
    if before[-1] == "/" and (over := OVER.search(before)):
        return over_what(*over.groups(), len(before) - 1)
    last = "of" if before[-1] in "fF" else before[-1]
    if last == "(":
        return unfinished("The parenthesis is open.", "Type what goes inside.", len(before) - 1)
    return unfinished(
        f"The sum ends after {quoted(last)}.", "Type the next number.", len(before) - 1
    )


def _sign_for_number(text, typed, at, before):
    sign = typed[at]
    if sign == ")":
        return unreadable("The parentheses are empty.", "Put a number inside.", at)
    if not before or before[-1] == "(":
        return unreadable(f"There’s nothing before {quoted(sign)}.", "Put a number before it.", at)
    single = _REPEATED.get(text[at - 1 : at + 1])
    mended = typed[: at - 1] + single + typed[at + 1 :] if single else None
    return unreadable(
        f"I can’t read {quoted(typed.strip())}: there are two signs in a row.",
        f"Write it as {mended.strip()}."
        if mended and mended.rstrip()[-1].isalnum()
        else "Remove one of the two signs.",
        at,
    )


def no_sign(text, typed, at, kind):
    """A sign or the end was due at `at`, and something else stands there."""
    at = _first(text, at)
    character = text[at]
    if character == "(":
        return unreadable("There’s no sign before the parenthesis.", "Put × or + before it.", at)
    if character == ")":
        return unreadable(
            "There’s a ) with no ( before it.", "Add a (, or put a space in its place.", at
        )
    if character == ",":
        return _comma(typed, at)
    if character == "." and text[at - 1 : at].isdigit():
        return unreadable("That number has two decimal points.", _ONE_POINT, at)
    if raised := _RAISED_OVER.match(text, at):
        return _raised_over(raised, at)
    if character in "^" + RAISED:
        return unreadable("Exponents don’t work here.", "Multiply instead, as in 3 × 3.", at)
    if NUMBER.match(text, at):
        return side_by_side(text, at)
    if character in "'\"" or (character.isascii() and character.isalpha()):
        return unknown_unit(typed, at, kind)
    return _strange(typed, at)


def _raised_over(raised, at):
    """A fraction in raised digits that has no bottom number yet: 5³, ⁵/, ⅟."""
    return over_what(None, raised[1] or "1", raised[2] != "", at)


def _comma(typed, at):
    start = _BEFORE_COMMA.search(typed, 0, at).start()
    number = _AROUND_COMMA.match(typed, start)[0]
    whole, decimals = typed[start:at], number[at - start + 1 :]
    if {",", "."} & {*whole, *decimals}:
        message = f"{quoted(number)} has more than one comma or point."
        return unreadable(message, _ONE_POINT, at)
    if not (whole and decimals):
        return unreadable("Commas don’t work here.", "Use a point for decimals.", at)
    if _THOUSANDS.fullmatch(number):
        return unreadable(
            f"{quoted(number)} could mean two things.",
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
            "Raised and lowered digits only work in fractions.",
            "Type the fraction with a slash, as in 3/4.",
            at,
        )
    if unicodedata.category(character)[0] == "N":
        return unreadable(
            f"{quoted(character)} isn’t a digit Sawside knows.", "Use the digits 0 to 9.", at
        )
    return unreadable(
        f"I can’t read {quoted(character)}.", "Put a space, a sign or a number in its place.", at
    )
