"""How much longer a finish dries where it is colder or damper than what its times are for.

Cold: each 18 °F (10 °C) below 70 °F takes as long again. That a reaction goes half as fast 10 °C
colder is van 't Hoff's rule (from memory); that drying goes by it is common practice, no source.
Damp: water leaves as the air has room for it, which at a humidity h is 100 − h (Dalton's law of
evaporation, from memory); of what dries by oxygen, half as long again above 70% is common
practice, no source. Warmer or drier air shortens nothing: the can's time is the least.
"""

from dataclasses import dataclass
from datetime import timedelta
from fractions import Fraction
from math import ceil

from sawside.lengths.plain_numbers import number_text

USUAL_F, USUAL_HUMIDITY = 70, 50
COLDEST, DAMPEST = 50, 85
"""°F and percent: past them most cans say not to finish (common practice, no source)."""
_AS_GOOD_AS_USUAL = Fraction(698, 10)
"""21 °C, which a thermometer in °C calls the same air."""
_DEGREES = 18
_DAMP = 70
_WETTEST = 95
_STEP = timedelta(minutes=5)


@dataclass(frozen=True, slots=True)
class Air:
    """Exact °F and percent."""

    fahrenheit: Fraction = Fraction(USUAL_F)
    humidity: Fraction = Fraction(USUAL_HUMIDITY)


def cold_factor(air):
    """How many times as long by temperature, 1 or more."""
    if air.fahrenheit >= _AS_GOOD_AS_USUAL:
        return Fraction(1)
    return 1 + (USUAL_F - air.fahrenheit) / _DEGREES


def damp_factor(air, dries):
    """How many times as long by humidity, 1 or more; `dries` as `Finish` has it."""
    if dries == "water":
        room = 100 - min(air.humidity, Fraction(_WETTEST))
        return max(Fraction(100 - USUAL_HUMIDITY) / room, Fraction(1))
    return Fraction(3, 2) if dries == "oxygen" and air.humidity > _DAMP else Fraction(1)


def drying(hours, air, dries):
    """How long drying takes that takes so many hours (exact) in usual air, up to five minutes."""
    longer = hours * cold_factor(air) * damp_factor(air, dries)
    return ceil(longer * 12) * _STEP


def factors_worked(air, dries):
    """The lines of working of how many times as long it takes; none in usual air."""
    cold, damp = cold_factor(air), damp_factor(air, dries)
    if cold > 1:
        degrees = f"({USUAL_F} − {number_text(air.fahrenheit, 1)})"
        yield f"Colder than {USUAL_F} °F: 1 + {degrees} ÷ {_DEGREES} ≈ {number_text(cold, 3)}"
    if dries == "water" and damp > 1:
        room = f"(100 − {USUAL_HUMIDITY}) ÷ (100 − {number_text(air.humidity, 1)})"
        yield f"Damper than {USUAL_HUMIDITY}%: {room} ≈ {number_text(damp, 3)}"
    elif damp > 1:
        yield f"Damper than {_DAMP}%, shop practice: 1 + 1 ÷ 2 = {number_text(damp, 1)}"


def longer_worked(label, time, air, dries):
    """The line of working of a time that is so many times as long."""
    factors = [each for each in (cold_factor(air), damp_factor(air, dries)) if each > 1]
    longer = time
    for each in factors:
        longer *= each
    times = " × ".join([number_text(time, 2), *(number_text(each, 3) for each in factors)])
    return f"{label}: {times} ≈ {number_text(longer, 1)}"
