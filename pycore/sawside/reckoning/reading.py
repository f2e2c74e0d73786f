"""Answering the message "read": a length or a sum, told with its mark and its place on the tape."""

from sawside.errors import Refusal
from sawside.lengths.areas import area_text, unit_of_areas
from sawside.lengths.as_typed import as_typed, given_text
from sawside.lengths.display import (
    decimal_text,
    finer_text,
    length_value,
    mixed_text,
    rational_text,
)
from sawside.lengths.reading.names import SQUARE, Named
from sawside.lengths.reading.reader import read
from sawside.lengths.show import Show
from sawside.lengths.tape import stretch
from sawside.lengths.units import BOARD_FOOT, SQUARE_FOOT
from sawside.reckoning.answers import count_told, length_told
from sawside.wood.weights import weight_text

_POWERS = {
    SQUARE: ("area", "in²", "square inches", SQUARE_FOOT, "ft²"),
    3: ("volume", "in³", "cubic inches", BOARD_FOOT, "board feet"),
}
"""Kind, unit, its words, how much of it is in one of the other unit, and that one."""


def reading_told(text, settings, *, unit=None, names=None):
    """The contract of `read` (without "ok"): value, echo, and for a length its tape and `finer`.

    `kept` is how it is told once it is kept as a reading, and `stands_for` what a name that stands
    alone in it is worth: neither is rounded where the number was typed, or is told exactly.

    `unit` is what a bare number means, where it is not as the settings have it; `names` are those
    that may stand in the text. Errors as the reader's, told of the field "text".
    """
    show = Show(settings)
    try:
        reading = read(text, unit or settings.unit, names)
    except Refusal as refusal:
        raise refusal.of("text") from None
    value = value_told(reading, show)
    tape, finer = place_told(reading.value, settings) if reading.power == 1 else (None, "")
    stands_for = given_text(reading.value, show.settings) if reading.power == 1 else value["text"]
    kept = typed_told(reading, show)
    told = {"kept": kept.get("brief", kept["text"]), "stands_for": stands_for}
    return {"value": value, "echo": reading.echo, "tape": tape, "finer": finer} | told


def names_told(names, settings):
    """What each name in a text is worth as if it stood alone; angles and Refusals aren't told."""
    told = []
    for written, named in names.items():
        if isinstance(named, Named) and (named.weight or named.is_area):
            told.append({"name": written, "stands_for": _without_length(named, Show(settings))})
            continue
        try:
            alone = reading_told(f"[{written}]", settings, names={written: named})
        except Refusal:
            continue
        told.append({"name": written, "stands_for": alone["stands_for"]})
    return told


def _without_length(named, show):
    if named.weight:
        return weight_text(named.value, show)
    return area_text(named.value, unit_of_areas(show))


def place_told(value, settings):
    """The piece of a tape where a length is found, and the sixty-fourth that is nearer than its
    mark, "" where none is; `value` in exact inches."""
    rounded = Show(settings).rounded(value)
    return stretch(rounded, settings.grid), finer_text(rounded, settings.display)


def typed_told(reading, show):
    """What a reading that is kept comes to as a VALUE: one number is told as it was typed."""
    typed = as_typed(reading, show.settings)
    if typed is None:
        return value_told(reading, show)
    rounded, display = typed
    return length_value("value", "Length", rounded, display)


def value_told(reading, show):
    """What a reading comes to as a VALUE: a length, a count, an area or a volume."""
    return _VALUES.get(reading.power, _product_told)(reading, show)


def _length_told(reading, show):
    return length_told("value", "Length", reading.value, show)


def _ratio_told(reading, show):
    """A length by a length: how many times, and what is left over."""
    times = reading.value
    told = count_told("value", "Count", times.__floor__(), show) | {"exact": rational_text(times)}
    if reading.remainder is None:
        told["text"], told["words"] = mixed_text(times), decimal_text(times)
    elif reading.remainder:
        left = told["remainder"] = length_told("remainder", "Left over", reading.remainder, show)
        told["text"] += f", {left['text']} left"
        told["words"] += f", {left['words']} left"
    return told


def _product_told(reading, _show):
    kind, unit, words, much, other = _POWERS[reading.power]
    in_other = decimal_text(reading.value / much, 3)
    return {
        "key": "value",
        "label": kind.capitalize(),
        "kind": kind,
        "exact": rational_text(reading.value),
        "text": f"{mixed_text(reading.value)} {unit}",
        "words": f"{decimal_text(reading.value)} {words}",
        "other": f"{'≈ ' if in_other.endswith('…') else ''}{in_other.rstrip('…')} {other}",
        "decimals": decimal_text(reading.value),
    }


_VALUES = {0: _ratio_told, 1: _length_told}
