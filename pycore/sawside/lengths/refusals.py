"""What is said about a text that can't be read: a plain sentence, the place, and a remedy."""

import unicodedata

from sawside.errors import Refusal, quoted
from sawside.lengths.scanner import LOWERED, NUMBER, RAISED, SIGN

MOST_CHARACTERS = 200
MOST_DIGITS = 12
_REPEATED = {"//": "/", "**": "×", "++": "+", "÷÷": "÷"}


def unreadable(message, remedy, at):
    """A refusal of kind "unreadable" at a character of the text."""
    return Refusal("unreadable", message, remedy, at=at)


def _first(text, at):
    while at < len(text) and text[at] == " ":
        at += 1
    return at


def no_number(text, typed, at, example):
    """A number was due at `at`, and something else stands there."""
    at = _first(text, at)
    before = text[:at].rstrip()
    if at == len(text):
        return _ended(before, example)
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


def _ended(before, example):
    if not before:
        return Refusal("missing", "Nothing is written here.", f"Type it as in {example}.", at=0)
    if before[-1] == "/":
        return unreadable(
            "The fraction has nothing under its line.",
            f"Write the number below as well, as in {before}2.",
            len(before) - 1,
        )
    return unreadable(
        f"The sum ends after {quoted(before[-1])}.",
        "Write the number that follows, or take the sign away.",
        len(before) - 1,
    )


def _sign_for_number(text, typed, at, before):
    sign = typed[at]
    if sign == ")":
        return unreadable("Nothing stands between the parentheses.",
                          "Write a number before the closing parenthesis.", at)  # fmt: skip
    if not before or before[-1] == "(":
        return unreadable(
            f"Nothing stands before {quoted(sign)}.", "Write the number in front of it.", at
        )
    single = _REPEATED.get(text[at - 1 : at + 1])
    mended = typed[: at - 1] + single + typed[at + 1 :] if single else None
    return unreadable(
        f"I can't read {quoted(typed.strip())}: two signs stand side by side.",
        f"Write it as {mended.strip()}." if mended else "Take one of the two signs away.",
        at,
    )


def no_sign(text, typed, at, other_units):
    """A sign or the end was due at `at`, and something else stands there."""
    at = _first(text, at)
    character = text[at]
    if character == "(":
        return unreadable("A sign is missing before the parenthesis.",
                          "Put × or + in front of it.", at)  # fmt: skip
    if character == ")":
        return unreadable("This parenthesis was never opened.", "Take it away, or open one.", at)
    if character == ",":
        return _comma(typed, at)
    if character == "." and text[at - 1 : at].isdigit():
        return unreadable("There are two points in one number.", "Keep one of them.", at)
    if character in "^" + RAISED:
        return unreadable("Powers are not read here.", "Write it as a product, as in 3 × 3.", at)
    if NUMBER.match(text, at):
        return side_by_side(at)
    if character in "'\"" or (character.isascii() and character.isalpha()):
        return unknown_unit(typed, at, other_units)
    return _strange(typed, at)


def side_by_side(at):
    """Two numbers with no sign between them."""
    return unreadable(
        "Two numbers stand side by side with no sign between them.",
        "Put +, − or × between them, or take the space out of the number.",
        at,
    )


def unknown_unit(typed, at, other_units):
    """A word or mark after a number that is no unit, or one too many."""
    word = _word(typed, at)
    before = typed[:at].rstrip(" .")[-1:]
    if word in ("e", "E") and typed[at + 1 : at + 2] in ("", "+", "-", *"0123456789"):
        return unreadable("Powers of ten are not read here.", "Write the number in full.", at)
    if before and not (before.isdigit() or unicodedata.category(before) == "No"):
        return unreadable(f"{quoted(word)} is one unit too many here.", "Keep one unit.", at)
    return unreadable(f"I don't know the unit {quoted(word)} here.", other_units, at)


def _comma(typed, at):
    start = at
    while start and typed[start - 1].isdigit():
        start -= 1
    end = at + 1
    while end < len(typed) and typed[end].isdigit():
        end += 1
    whole, decimals = typed[start:at], typed[at + 1 : end]
    if not (whole and decimals):
        return unreadable("A comma has no meaning here.", "Write decimals with a point.", at)
    return unreadable(
        f"{quoted(typed[start:end])} can mean two things.",
        f"Write {whole}{decimals} or {whole}.{decimals}.",
        at,
    )


def _strange(typed, at):
    character = typed[at]
    if character == ",":
        return _comma(typed, at)
    if character in RAISED + LOWERED:
        return unreadable("A small raised or lowered digit belongs to a fraction.",
                          "Write the fraction as 3/4.", at)  # fmt: skip
    if unicodedata.category(character)[0] == "N":
        return unreadable(
            f"{quoted(character)} is not a digit that I read.", "Use the digits 0 to 9.", at
        )
    return unreadable(f"I can't read {quoted(character)}.", "Take it away or write a number.", at)


def _word(text, at):
    end = at
    while end < len(text) and text[end].isalpha():
        end += 1
    return text[at : max(end, at + 1)]
