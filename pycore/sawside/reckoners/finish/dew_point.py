"""Whether wood is warm enough to be finished in this air, and dry enough for its room."""

from fractions import Fraction
from math import ceil

from sawside.lengths.display import MINUS
from sawside.lengths.plain_numbers import number_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import choice, number
from sawside.reckoners.finish.shared.drying import COLDEST, DAMPEST
from sawside.reckoners.finish.shared.temperatures import (
    celsius_of,
    difference_text,
    in_scale,
    signed,
    temperature_fields,
    temperature_text,
)
from sawside.wood.caution import Caution
from sawside.wood.humid_air import A, B, dew_point, logarithm
from sawside.wood.moisture import equilibrium, fahrenheit
from sawside.wood.numbers import percent_text

_ABOVE = {"air_f": Fraction(5), "air_c": Fraction(3)}
"""Degrees that a surface has to be above the dew point (ISO 8502-4 and its trade, for steel)."""
_APART = Fraction(2)
"""Points of moisture that wood may be off from where its room brings it."""
_MOST_HUMID = 95
_AIR = Caution(
    "Air out the fumes, and keep flames and sparks away.",
    "Warm, still air dries a finish badly and fills with fumes: let air through, keep flames, "
    "heaters that glow and sparks away, and follow the label for temperature and humidity.",
)


def compute(given, show):
    """The dew point, and how far the surface is above it; both exact, in degrees Celsius."""
    air = celsius_of(given, "temperature")
    dew = dew_point(air, given.humidity)
    surface = celsius_of(given, "surface")
    above = (air if surface is None else surface) - dew
    answers = {
        "dew": temperature_text(dew, given.scale),
        "above": _above_text(above, given.scale),
        "coolest": _coolest_text(dew, given.scale),
    }
    if given.wood is not None:
        answers["room"] = _room_text(given)
    verdict, *fixes = _verdict(given, air, dew, above)
    return Reckoning(
        answers=answers,
        working=tuple(_working(given, air, dew, above)),
        cautions=(*_outside(air, given.humidity), _AIR),
        verdict=verdict,
        fixes=tuple(fixes),
    )


def _outside(air, humidity):
    """What is said of air that no finish dries in, whatever the wood's temperature."""
    if fahrenheit(air) < COLDEST:
        yield f"Below {COLDEST} °F (10 °C) a finish may not dry or hold. Warm the shop first."
    if humidity > DAMPEST:
        yield f"Above {DAMPEST}% humidity a finish may turn cloudy or stay soft. Dry the air first."


def _coolest_text(dew, scale):
    """The least that the surface may have: up to a tenth of the scale, so that it is enough."""
    degrees = dew if scale == "air_c" else fahrenheit(dew)
    tenths = ceil((degrees + _ABOVE[scale]) * 10)
    return f"{signed(Fraction(tenths, 10), 1)} °{scale[-1].upper()}"


def _warm(above, scale):
    return in_scale(above, scale) >= _ABOVE[scale]


def _verdict(given, air, dew, above):
    """What stops a finish first, and what mends that: wet wood, then air that it doesn't dry in,
    then wood that isn't dry enough for its room. Wood as warm as the air is no warmer."""
    told = temperature_text(dew, given.scale)
    can_warm = _warm(air - dew, given.scale)
    fix = (
        ("Warm the wood", f"surface_{given.scale[-1]}") if can_warm else ("Dry the air", "humidity")
    )
    if above <= 0:
        return f"Don’t finish: wood gets wet at {told}", fix
    if not _warm(above, given.scale):
        return f"{'Too cold' if can_warm else 'Too damp'}: dew point {told}", fix
    return _undried(given, air, dew + above) or (f"Warm enough: dew point {told}",)


def _undried(given, air, surface):
    """The same of a surface that stays dry, where no finish dries or the wood isn't; else None."""
    if fahrenheit(min(air, surface)) < COLDEST:
        least = "10 °C" if given.scale == "air_c" else f"{COLDEST} °F"
        fix = ("shop", "temperature") if air <= surface else ("wood", "surface")
        said = f"Too cold to dry: {least} is the least"
        return said, (f"Warm the {fix[0]}", f"{fix[1]}_{given.scale[-1]}")
    if given.humidity > DAMPEST:
        return f"Too damp to dry: {DAMPEST}% is the most", ("Dry the air", "humidity")
    if given.wood is not None and (way := _unsettled(given)):
        return f"Let the wood settle first: too {way}", ("Measure it again", "wood")
    return None


def _above_text(above, scale):
    apart = difference_text(abs(above), scale)
    if above <= 0:
        return f"{apart} below it: water settles on the wood"
    enough = f"{number_text(_ABOVE[scale])} °{scale[-1].upper()}"
    return f"{apart} above it; {enough} is the least"


def _room(given):
    """(degrees Fahrenheit, humidity) where the piece will stand; the air here where it is blank."""
    celsius = celsius_of(given, "room")
    if celsius is None:
        celsius = celsius_of(given, "temperature")
    humid = given.humidity if given.room_humidity is None else given.room_humidity
    return fahrenheit(celsius), humid


def _room_text(given):
    degrees, humid = _room(given)
    if humid > _MOST_HUMID:
        return f"No wood is dry in air over {_MOST_HUMID}%."
    settles = equilibrium(degrees, humid)
    told = f"{percent_text(given.wood)} now, {percent_text(settles)} there"
    if way := _unsettled(given):
        points = number_text(abs(given.wood - settles), 1)
        return f"{told}: {points} points too {way}, let it settle first"
    return f"{told}: ready"


def _unsettled(given):
    """How the wood is for its room, "wet" or "dry"; "" where it's ready or nothing is dry there."""
    degrees, humid = _room(given)
    if humid > _MOST_HUMID:
        return ""
    off = given.wood - equilibrium(degrees, humid)
    return "" if abs(off) <= _APART else "wet" if off > 0 else "dry"


def _working(given, air, dew, above):
    t, told = signed(air, 2), signed(dew, 2)
    if given.scale == "air_f":
        yield f"Air in °C: ({number_text(given.temperature_f, 2)} − 32) ÷ 1.8 = {t}"
    log = logarithm(given.humidity / 100)
    g = log + A * air / (B + air)
    yield (f"The natural logarithm of {number_text(given.humidity / 100, 4)} is {signed(log, 5)}")
    yield f"g: 17.625 × {_factor(t)} ÷ (243.04{_term(t)}){_term(signed(log, 5))} = {signed(g, 5)}"
    yield (
        f"Dew point in °C: 243.04 × {_factor(signed(g, 5))} ÷ (17.625{_term(signed(-g, 5))}) = "
        f"{told}"
    )
    if given.scale == "air_f":
        yield f"In °F: {told} × 1.8 + 32 = {signed(fahrenheit(dew), 1)}"
    scale = given.scale[-1].upper()
    surface = dew + above
    both = (surface, dew) if scale == "C" else (fahrenheit(surface), fahrenheit(dew))
    one, other = (signed(each, 2) for each in both)
    apart = signed(in_scale(above, given.scale), 2)
    yield f"Surface above the dew point, °{scale}: {one} − {_factor(other)} = {apart}"
    if given.wood is not None and _room(given)[1] <= _MOST_HUMID:
        degrees, humid = _room(given)
        settles = equilibrium(degrees, humid)
        yield (
            f"Wood in its room settles at {percent_text(settles, 2)}; off by "
            f"{number_text(max(given.wood, settles), 2)} − "
            f"{number_text(min(given.wood, settles), 2)} = "
            f"{number_text(abs(given.wood - settles), 2)}"
        )


def _factor(told):
    return f"({told})" if told.startswith(MINUS) else told


def _term(told):
    return f" {told[0]} {told[1:]}" if told.startswith(MINUS) else f" + {told}"


_HUMID = {"least": "1", "most": "100"}
RECKONER = Reckoner(
    key="dew_point",
    title="Dew point",
    asks="Is the wood warm and dry enough to finish in this air?",
    words=(
        "dew point, dewpoint, condensation, blushing, blush, too humid to finish, too cold to "
        "finish, wood too wet to finish, cold garage, cold wood, humidity for finishing, "
        "temperature for finishing"
    ),
    order=90,
    job="finish",
    picture={
        "wood": "M4 26h32v8H4z",
        "ink": "M4 30h32",
        "chalk": "M14 6q5 6 5 9a5 5 0 0 1-10 0q0-3 5-9zM28 10q4 5 4 7a4 4 0 0 1-8 0q0-2 4-7z",
    },
    basic=("scale", "temperature_f", "temperature_c", "humidity", "surface_f", "surface_c"),
    fields=(
        choice("scale", "Temperature scale", {"air_f": "°F", "air_c": "°C"}, metric="air_c"),
        *temperature_fields("temperature", "Air temperature", ("30", "-1"), ("120", "49")),
        number("humidity", "Relative humidity", "%", **_HUMID),
        *temperature_fields(
            "surface",
            "Wood’s surface",
            ("0", "-18"),
            ("150", "65"),
            help="Where it’s coldest, by a surface thermometer.",
            blank_means="As warm as the air.",
        ),
        number(
            "wood",
            "Wood’s moisture",
            "%",
            help="By a meter, against the room it goes to.",
            most="250",
            blank_means="Not compared.",
        ),
        *temperature_fields(
            "room", "Its room", ("30", "-1"), ("120", "49"), blank_means="The same air."
        ),
        number(
            "room_humidity",
            "Humidity in its room",
            "%",
            least="5",
            most="95",
            blank_means="The same air.",
        ),
    ),
    answers=(
        Answer("dew", "Dew point", "text"),
        Answer("above", "The wood is", "text"),
        Answer("coolest", "Coldest the wood may be", "text"),
        Answer("room", "Wood’s moisture", "text"),
    ),
    source=(
        "Magnus formula with the constants of O. A. Alduchov and R. E. Eskridge, Journal of "
        "Applied Meteorology 35 (1996). 5 °F or 3 °C above it: the rule for painting steel that "
        "goes with ISO 8502-4, from memory; for wood it’s common practice, no source. Wood in its "
        "room: Wood Handbook, FPL-GTR-282 (2021), equation 4-5; within 2 points: common practice, "
        "no source."
    ),
    compute=compute,
    example={
        "temperature_f": "68",
        "temperature_c": "20",
        "humidity": "55",
        "surface_f": "61",
        "surface_c": "16",
    },
)
