"""A million lengths there and back, and how fast they are read beside pint's own parser."""

import json
import random
import statistics
import subprocess
import time
from fractions import Fraction
from pathlib import Path

from sawside.lengths.display import mark_text, plain_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.reading.reader import read
from sawside.lengths.unit_definitions import registry
from sawside.lengths.units import INCHES_PER

SEED = 20261125
TRIPS = 1_000_000
LONGEST = 1200
"""Inches: a hundred feet, as long as a field of a question takes."""

READINGS = 2000
READINGS_IN_PYODIDE = 300
ROUNDS = 9


def measure():
    """Yield lengths.round_trips, lengths.round_trips_wrong and read.ratio_to_pint in both."""
    wrong = round_trips_wrong(TRIPS)
    yield "lengths.round_trips", TRIPS
    yield "lengths.round_trips_wrong", wrong
    ratios = ratios_to_pint(READINGS)
    in_pyodide = ratios_to_pint_in_pyodide()
    for form, ratio in ratios.items():
        print(f"lengths: {ratio:5.1f}, {in_pyodide[form]:5.1f} times pint: {form}", flush=True)
    yield "read.ratio_to_pint_cpython", statistics.median(ratios.values())
    yield "read.ratio_to_pint_cpython_least", min(ratios.values())
    yield "read.ratio_to_pint_pyodide", statistics.median(in_pyodide.values())
    yield "read.ratio_to_pint_pyodide_least", min(in_pyodide.values())


def ratios_to_pint_in_pyodide():
    """The same ratios inside Pyodide, with the wheels of the site."""
    script = Path(__file__).with_name("inside_pyodide.mjs")
    root = script.parents[3]
    runtime, wheels = root / "web/node_modules/pyodide", root / ".site/python/wheels"
    call = f"ratios_to_pint({READINGS_IN_PYODIDE})"
    command = ["node", script, runtime, wheels, __file__, call]
    return json.loads(subprocess.run(command, check=True, stdout=subprocess.PIPE).stdout)


def round_trips_wrong(trips):
    """How many of so many random lengths are not the same after text, length, text, length.

    The first text is written here, by hands of its own; the second by the display, on marks that
    have the length, in each of its forms in turn.
    """
    chance = random.Random(SEED)
    shown = [(grid, display) for grid in GRIDS.values() for display in _displays(grid)]
    wrong = 0
    for trip in range(trips):
        grid, display = shown[trip % len(shown)]
        length = chance.randrange(int(LONGEST / grid.step)) * grid.step
        if chance.random() < 0.05:
            length = -length
        first = read(_typed(length, grid, chance)).value
        rounded = to_mark(first, grid)
        write = plain_text if chance.random() < 0.5 else mark_text
        second = read(write(rounded, display)).value
        wrong += not first == length == second or rounded.direction != "exact"
    return wrong


def _displays(grid):
    return ["mm"] if grid.unit == "mm" else ["in", "ft-in", "mm"]


def _typed(length, grid, chance):
    """A length as one or another hand writes it, always with its unit."""
    sign, size = "-" if length < 0 else "", abs(length)
    if grid.unit == "mm" or chance.random() < 0.1:
        return sign + chance.choice([_metric, _metric_fraction])(size, chance)
    if grid.division is None:
        return f"{sign}{_decimal(size)} in"
    return sign + chance.choice([_mixed, _improper, _feet, _decimal_inches])(size, chance)


def _decimal(number):
    """All decimals of a number that has at most nine of them."""
    scaled = number * 10**9
    assert scaled.denominator == 1
    whole, decimals = divmod(int(scaled), 10**9)
    return f"{whole}.{decimals:09d}".rstrip("0")


def _decimal_inches(size, chance):
    return f"{_decimal(size)}{chance.choice([' in', '″', chr(34)])}"


def _mixed(size, chance):
    whole, rest = divmod(size, 1)
    unit = chance.choice(['"', "″", " in", " inches", "”", "''"])
    if not rest:
        return f"{whole}{unit}"
    fraction = f"{rest.numerator}{chance.choice('/⁄')}{rest.denominator}"
    if rest == Fraction(7, 8) and chance.random() < 0.5:
        fraction = "⅞"
    return f"{whole}{chance.choice([' ', '-'])}{fraction}{unit}" if whole else f"{fraction}{unit}"


def _improper(size, _chance):
    return f"{size.numerator}/{size.denominator} in"


def _feet(size, chance):
    feet, inches = divmod(size, 12)
    mark = chance.choice(["'", "′", " ft ", "’"])
    return f"{feet}{mark}{chance.choice(['', ' '])}{_mixed(inches, chance)}"


def _metric(size, chance):
    number = size / INCHES_PER["mm"]
    if chance.random() < 0.3:
        return f"{_decimal(number / 10)} cm"
    return f"{_decimal(number)} mm"


def _metric_fraction(size, _chance):
    number = size / INCHES_PER["mm"]
    return f"{number.numerator}/{number.denominator} mm"


FORMS = {
    "35": lambda r: f"{r.randrange(1, 200)}",
    "99.286": lambda r: f"{r.randrange(1, 200)}.{r.randrange(100, 1000)}",
    "27/64": lambda r: f"{r.randrange(1, 64)}/64",
    "23 + 45/64": lambda r: f"{r.randrange(1, 99)} + {r.randrange(1, 64)}/64",
    "(20 - 5.25) / 3": lambda r: f"({r.randrange(9, 99)} - {r.randrange(1, 9)}.25) / 3",
    "65.248 in": lambda r: f"{r.randrange(1, 200)}.{r.randrange(100, 1000)} in",
    "27/64 in": lambda r: f"{r.randrange(1, 64)}/64 in",
    "1566 mm": lambda r: f"{r.randrange(1, 2000)} mm",
    "82 in + 6.5 in": lambda r: f"{r.randrange(1, 99)} in + {r.randrange(1, 9)}.5 in",
    "7 ft + 11 in": lambda r: f"{r.randrange(1, 9)} ft + {r.randrange(1, 12)} in",
    "5 * 27/64 in + 31 in": lambda r: f"{r.randrange(1, 9)} * {r.randrange(1, 64)}/64 in + 31 in",
}
"""Forms that both read, to the same value: half of them as a thumb types, without units."""


def ratios_to_pint(readings):
    """For each form, readings per second over pint's: the median of rounds taken in turn.

    pint has our own small registry and exact fractions, which is its quickest way to the same
    value.
    """
    chance = random.Random(SEED)
    ratios = {}
    for form, written in FORMS.items():
        texts = [written(chance) for _ in range(readings)]
        for text in texts:
            assert _by_pint(text) == read(text).value, text
        rounds = []
        for _round in range(ROUNDS):
            pint = _seconds(registry.parse_expression, texts)
            rounds.append(pint / _seconds(read, texts))
        ratios[form] = statistics.median(rounds)
    return ratios


def _by_pint(text):
    """The inches that pint reads; a bare number counts as inches."""
    quantity = registry.parse_expression(text)
    if isinstance(quantity, registry.Quantity) and not quantity.dimensionless:
        quantity = quantity.to("in")
    return Fraction(getattr(quantity, "magnitude", quantity))


def _seconds(reads, texts):
    begun = time.perf_counter()
    for text in texts:
        reads(text)
    return time.perf_counter() - begun
