"""What is kept of a step that was ticked: when, in what air, a note, a picture; and how it is read.

Temperature and humidity are kept as typed, with their unit: "68 °F", "20 °C", "45%".
"""

import re
from fractions import Fraction

from sawside.errors import Refusal, quoted
from sawside.lengths.reading.scanner import plain_spaces
from sawside.lengths.units import METRIC
from sawside.moments import is_moment, read_moment, said
from sawside.project.kinds.checks import damaged, photo_checked, words_checked
from sawside.project.kinds.entry_parts import checked
from sawside.reckoners.declaration import Done
from sawside.wood.moisture import fahrenheit

MOST_NOTE = 400
_NUMBER = r"\s*(-?\d{1,3}(?:\.\d{1,2})?)\s*"
_TEMPERATURE = re.compile(rf"{_NUMBER}°?\s*([FfCc]?)\s*", re.ASCII)
_HUMIDITY = re.compile(rf"{_NUMBER}%?\s*", re.ASCII)
COLDEST, WARMEST = -20, 130
"""°F: what a thermometer in a shop may read."""


def _moment_checked(value, place):
    if not isinstance(value, str) or not is_moment(value):
        raise damaged(place, "is not a moment, as in 2026-11-30T18:00")
    return value


def _note_checked(value, place):
    return words_checked(value, place, MOST_NOTE)


_MAY = {
    "temperature": words_checked,
    "humidity": words_checked,
    "note": _note_checked,
    "photo": photo_checked,
}


def step_done_checked(data, place):
    """What is kept of one step, checked."""
    return checked(data, place, {"when": _moment_checked}, _MAY)


def read_done(entry):
    """{key of a step: its `Done`} of a line; air that can't be read is not known."""
    return {key: _done(each) for key, each in entry.get("done", {}).items()}


def _done(kept):
    temperature, humidity = kept.get("temperature", ""), kept.get("humidity", "")
    return Done(
        read_moment(kept["when"]),
        _temperature(temperature) if _TEMPERATURE.fullmatch(temperature) else None,
        _humidity(humidity) if _HUMIDITY.fullmatch(humidity) else None,
    )


def _temperature(text):
    number, scale = _TEMPERATURE.fullmatch(text).groups()
    value = Fraction(number)
    return fahrenheit(value) if scale in ("C", "c") else value


def _humidity(text):
    return Fraction(_HUMIDITY.fullmatch(text)[1])


def temperature_typed(text, unit):
    """A temperature with its scale, "68 °F"; a bare number is in °C where lengths are metric.

    Refusals: "unreadable", and "range" below -20 or above 130 °F. "" for a blank one.
    """
    if not text.strip():
        return ""
    read = _TEMPERATURE.fullmatch(plain_spaces(text))
    if not read:
        message = f"{quoted(text)} isn’t a temperature."
        raise Refusal("unreadable", message, "Type it as in 68 F or 20 C.", field="temperature")
    scale = read[2].upper() or ("C" if unit in METRIC else "F")
    told = f"{read[1]} °{scale}"
    if not COLDEST <= _temperature(told) <= WARMEST:
        message = f"The temperature must be from {COLDEST} to {WARMEST} °F (-28 to 54 °C)."
        raise Refusal("range", message, "Check the number and F or C.", field="temperature")
    return told


def humidity_typed(text):
    """A relative humidity with its sign, "45%"; refusals as above, "range" outside 0 to 100."""
    if not text.strip():
        return ""
    read = _HUMIDITY.fullmatch(plain_spaces(text))
    if not read:
        message = f"{quoted(text)} isn’t a humidity."
        raise Refusal("unreadable", message, "Type it as in 45%.", field="humidity")
    if not 0 <= Fraction(read[1]) <= 100:
        message = "The humidity must be from 0 to 100%."
        raise Refusal("range", message, "Check the number.", field="humidity")
    return f"{read[1]}%"


def done_told(kept):
    """What is kept of a step as the contract of DONETOLD."""
    told = ", ".join(kept[key] for key in ("temperature", "humidity", "note") if key in kept)
    return kept | {"said": f"Done {said(read_moment(kept['when']))}{told and f': {told}'}"}
