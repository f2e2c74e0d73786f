"""Temperatures as they are asked for and told, in the scale that was chosen."""

from fractions import Fraction
from math import floor

from sawside.lengths.display import MINUS
from sawside.lengths.plain_numbers import number_text
from sawside.reckoners.fields import number
from sawside.wood.moisture import fahrenheit


def temperature_fields(key, label, least, most, **more):
    """A temperature in each scale by the choice "scale"; the bounds are (°F, °C)."""
    return tuple(
        number(
            f"{key}_{letter}",
            label,
            f"°{letter.upper()}",
            least=least[place],
            most=most[place],
            shown_when=("scale", (f"air_{letter}",)),
            **more,
        )
        for place, letter in enumerate("fc")
    )


def celsius_of(given, key):
    """What was typed in such a field as degrees Celsius, exact; None where it is blank."""
    if given.scale == "air_c":
        return getattr(given, f"{key}_c")
    typed = getattr(given, f"{key}_f")
    return None if typed is None else (typed - 32) * Fraction(5, 9)


def temperature_text(celsius, scale):
    """A temperature to a tenth in the scale: "50.2 °F"."""
    degrees = celsius if scale == "air_c" else fahrenheit(celsius)
    return f"{signed(degrees, 1)} °{scale[-1].upper()}"


def difference_text(celsius, scale):
    """How far temperatures are apart, from 0 up and down to a tenth: "7.3 °F"."""
    tenths = floor(in_scale(celsius, scale) * 10)
    return f"{number_text(Fraction(tenths, 10), 1)} °{scale[-1].upper()}"


def in_scale(celsius, scale):
    """A difference of temperatures in degrees of the scale, exact."""
    return celsius if scale == "air_c" else celsius * Fraction(9, 5)


def signed(value, places=0):
    """A number to so many places, with its sign where it is less than nothing."""
    told = number_text(abs(value), places)
    return f"{MINUS}{told}" if value < 0 and told.strip("0.") else told
