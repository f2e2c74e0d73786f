"""Reading what was typed in one field that holds one value, by the field's kind and its range."""

import re
from functools import cache

from sawside.errors import Refusal, quoted
from sawside.lengths.areas import SQUARE_INCHES_IN
from sawside.lengths.reading.names import Named
from sawside.lengths.reading.reader import read_angle, read_count, read_length, read_number
from sawside.lengths.reading.scanner import plain_spaces
from sawside.moments import read_moment, said
from sawside.wood.materials import MATERIALS
from sawside.wood.own import PREFIX, own_material
from sawside.wood.weights import POUNDS_IN

_DOLLAR = re.compile(r"\$(?![^\[\]]*\])")
_THOUSANDS_OF_DOLLARS = re.compile(r"\d{1,3}(,\d{3})+\.\d+")

MOST_WORDS = 80
"""Characters in a text that is no sum."""


def _text(field, value):
    if not isinstance(value, str):
        raise Refusal("message", f"{field.label} is not a text.", "Send it as it was typed.")
    return value


def _in_range(field, value, read):
    if field.least is not None and _is_less(value, _bound(read, field.least)):
        raise _out_of_range(field, "at least", field.least)
    if field.most is not None and _is_less(_bound(read, field.most), value):
        raise _out_of_range(field, "at most", field.most)


def _is_less(one, other):
    """Whether a fraction is less than another: quicker than comparing them, and asked in every
    line of a project."""
    return one.numerator * other.denominator < other.numerator * one.denominator


def _out_of_range(field, words, bound):
    message = f"{field.label} must be {words} {_with_unit(field, bound) if field.unit else bound}."
    return Refusal("range", message, "Check the number.", at=0)


@cache
def _bound(read, text):
    return read(text).value


def _length(field, value, settings, names):
    reading = read_length(_text(field, value), settings.unit, names)
    _in_range(field, reading.value, read_length)
    return reading.value, reading.echo


def _angle(field, value, _settings, names):
    reading = read_angle(_text(field, value), names)
    _in_range(field, reading.value, read_angle)
    return reading.value, reading.echo


def _count(field, value, _settings, names):
    reading = read_count(_text(field, value), names)
    _in_range(field, reading.value, read_count)
    return int(reading.value), reading.echo


def _number(field, value, _settings, names):
    text = _text(field, value)
    if field.unit == "$":
        text = _dollars(text)
    reading = read_number(text, _in_its_unit(field, names))
    _in_range(field, reading.value, read_number)
    has_unit = field.unit in _ONE_IS and reading.echo.endswith("]")
    return reading.value, reading.echo if has_unit else _with_unit(field, reading.echo)


def _dollars(text):
    """A price without its signs, but for those of names in brackets, and without its commas where
    it can mean but one thing, as in 1,204.50."""
    text = _DOLLAR.sub(" ", text)
    return text.replace(",", "") if _THOUSANDS_OF_DOLLARS.fullmatch(text.strip()) else text


_ONE_IS = POUNDS_IN | SQUARE_INCHES_IN
"""Of what is linked by name and is no length, how much one of a unit is."""


def _in_its_unit(field, names):
    """The names of a number: those of weights, or of areas, in its own unit where it is one."""
    one = _ONE_IS.get(field.unit)
    if one is None or names is None:
        return names
    is_weight = field.unit in POUNDS_IN

    def fits(named):
        return isinstance(named, Named) and (named.weight if is_weight else named.is_area)

    return {
        name: named._replace(value=named.value / one, weight=False, power=0)
        if fits(named)
        else named
        for name, named in names.items()
    }


def _with_unit(field, number):
    """A number with its unit as one writes it: 6%, $9.40, 12 psi."""
    if field.unit == "$":
        return f"${number}"
    return f"{number}%" if field.unit == "%" else f"{number} {field.unit}"


def _choice(field, value, _settings, _names):
    for choice in field.choices:
        if choice.value == value:
            return value, choice.label
    offered = ", ".join(choice.label for choice in field.choices[:8])
    raise Refusal(
        "unknown", f"{field.label} can’t be {quoted(str(value))}.", f"Choose one of {offered}."
    )


def _words(field, value, _settings, _names):
    words = plain_spaces(_text(field, value)).strip()
    if len(words) > MOST_WORDS or not words.isprintable():
        message = f"{field.label} can have at most {MOST_WORDS} characters, all of them visible."
        raise Refusal("range", message, "Shorten it.")
    return words, words


def _moment(field, value, _settings, _names):
    moment = read_moment(_text(field, value), label=field.label)
    return moment, said(moment)


def _material(field, value, settings, names):
    if isinstance(value, str) and value.startswith(PREFIX):
        return own_material(value, settings.materials, field.figure)
    key, label = _choice(field, value, settings, names)
    return MATERIALS.get(key), label


def _tape(field, value, settings, _names):
    for tape in settings.tapes:
        if tape.name == value:
            return tape, tape.name
    raise Refusal(
        "unknown",
        (f"There’s no tape named {quoted(str(value))}."),
        "Choose one, or add it in Settings.",
    )


ONE = {
    "length": _length,
    "angle": _angle,
    "count": _count,
    "number": _number,
    "choice": _choice,
    "material": _material,
    "tape": _tape,
    "text": _words,
    "moment": _moment,
}
"""By kind: (field, value, settings, names) to (what a reckoner is given, how it was read)."""
