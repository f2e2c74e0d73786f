"""What was filled in, said as across the shop: "2 1/4″ stock, 45° miter both ends"."""

import re
from typing import NamedTuple

from sawside.wood.materials import in_a_sentence

BETWEEN_ROWS = "; "
_MOST_ROWS = 6
_SAID = {
    "Width": "{} wide",
    "Height": "{} high",
    "Depth": "{} deep",
    "Thickness": "{} thick",
    "Length": "{} long",
    "Stock width": "{} stock",
    "Stock thickness": "{} thick",
    "Board thickness": "{} board",
    "Measured length": "{} measured",
    "How many": "{} of them",
}
"""Labels that are said otherwise than with the number before them."""

_LABEL_FIRST = re.compile(r"(?:\b(?:above|as|at|below|by|from|in|of|on|to|with|within)|±)$")
_ASKING = re.compile(r"(?:how many|how|what)\b ?")
_OTHER = ("other", "own", "typed")
"""Values of a choice that say nothing beside the field that they show."""

_NAMEABLE = ("length", "angle", "count", "number", "lengths")
_NAME = re.compile(r"\[([^\[\]]*)\]")
_SIDES = re.compile(r"\b(at the )?(left|right)( end)?\b")
_ONE = ((re.compile(r"ves\b"), "f"), (re.compile(r"ies\b"), "y"), (re.compile(r"s\b"), ""))


class Said(NamedTuple):
    """A field that says something: how it was read, and whether somebody typed it."""

    field: object
    echo: str
    typed: bool


def sentence(said):
    """Some `Said` as one sentence: what nobody typed is left out, unless nobody typed anything.

    A field with `in_short` is always said. What is the same at the left and the right is said
    once.
    """
    told = [each for each in said if each.typed or each.field.in_short] or said
    shown_by = {each.field.shown_when[0] for each in told if each.field.shown_when}
    told = [each for each in told if not _tells_nothing(each, shown_by)]
    whole = ", ".join(_both_at_once([_phrase(each.field, each.echo) for each in told]))
    whole = called(whole)
    return whole[:1].upper() + whole[1:]


def called(text):
    """A sum with the names in it as one calls them, without their brackets: an answer of a line
    as "the inside height of Carcass"."""
    return _NAME.sub(lambda found: _of_line(found[1]), text)


def _of_line(name):
    line, _, answer = name.partition(": ")
    return f"the {_small(answer)} of {line}" if answer else name


def _tells_nothing(each, shown_by):
    """Whether a choice is told by the field that it shows: "Other angle" by the angle."""
    field = each.field
    others = {choice.value for choice in field.choices}.intersection(_OTHER)
    labels = {choice.label for choice in field.choices if choice.value in others}
    return field.key in shown_by and each.echo in labels


def _phrase(field, echo):
    if field.kind in _NAMEABLE and field.in_short != "{}" and _NAME.search(echo):
        return f"{_small(field.label)} {'are' if field.kind == 'lengths' else 'is'} {echo}"
    if field.in_short:
        return field.in_short.format(_small(echo))
    is_own = field.choices_from and echo not in (choice.label for choice in field.choices)
    if field.kind == "material":
        return echo if is_own else in_a_sentence(echo)
    label = _small(field.label.partition(",")[0] if field.fields else field.label.replace(",", ""))
    if is_own:
        return f"{label} {echo}"
    if field.kind in _WORDS:
        return _WORDS[field.kind](label, echo)
    if field.label in _SAID:
        return _SAID[field.label].format(echo)
    if _LABEL_FIRST.search(label):
        return f"{label} {echo}"
    label = _ASKING.sub("", label, count=1)
    return f"{echo} {_of_one(label) if field.kind == 'count' and echo == '1' else label}"


def _chosen(label, echo):
    """A choice: its label first, but where a number begins it, or it says its label itself."""
    echo = _small(echo)
    if _ASKING.match(label) or label.split()[-1] in echo.split():
        return echo
    is_size = echo[:1].isdigit() and not _LABEL_FIRST.search(label)
    return f"{echo} {label}" if is_size else f"{label} {echo}"


def _rows(label, rows):
    """Each row, or how many there are where nobody would read that: "14 parts"."""
    if len(rows) > _MOST_ROWS:
        return f"{len(rows)} {label}"
    return f"{label} ({BETWEEN_ROWS.join(rows)})"


_WORDS = {
    "text": lambda _label, echo: echo,
    "choice": _chosen,
    "moment": lambda label, echo: f"{label} {echo}",
    "lengths": lambda label, echo: f"{label} {echo}",
    "rows": lambda label, echo: _rows(label, echo.split(BETWEEN_ROWS)),
}
"""By kind of field: (label, echo) to what is said of what is no single number."""


def _small(text):
    """A text as it goes on within a sentence; MDF and NIST stay as they are."""
    return text[:1].lower() + text[1:] if text[1:2].islower() or text[1:2] == " " else text


def _of_one(label):
    """A label for only one of what it counts."""
    for ending, one in _ONE:
        if ending.search(label):
            return ending.sub(one, label, count=1)
    return label


def _both_at_once(phrases):
    """The phrases; where one of the left says what one of the right says, both are said as one."""
    by_what = {}
    for phrase in phrases:
        by_what.setdefault(_SIDES.sub("‖", phrase, count=1), []).append(phrase)
    for what, alike in by_what.items():
        sides = [_SIDES.search(each) for each in alike]
        if len(alike) == 2 and all(sides) and sides[0][2] != sides[1][2]:
            yield _both(what, sides[0])
        else:
            yield from alike


def _both(what, side):
    """As "1/4″ dado depth both sides", "90° corner at both ends"."""
    at, both = side[1], "both ends" if side[3] else "both sides"
    if at or side[3]:
        return what.replace("‖", f"at {both}" if at else both)
    return f"{re.sub(' ?‖ ?', ' ', what).strip()} {both}"
