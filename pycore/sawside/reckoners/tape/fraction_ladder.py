"""Any length with its neighbors on every division, and how far off each of them is."""

from sawside.drawing.tape.ladder import ladder
from sawside.lengths.display import decimal_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.units import INCHES_PER
from sawside.lengths.words import parts_in_words
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, length

DIVISIONS = (2, 4, 8, 16, 32, 64)
_MM = INCHES_PER["mm"]


def compute(given, show):
    """The mark of the settings, then the mark below and above on each division and in mm."""
    value = given.length
    neighbors = [rung for each in DIVISIONS for rung in _neighbors(each, value)]
    return Reckoning(
        answers={
            "mark": to_mark(value, show.settings.grid, show.settings.rounding),
            "neighbors": neighbors,
            "inches": f"{decimal_text(value)}″",
            "millimeters": f"{decimal_text(value / _MM)} mm",
            "metric": "; ".join(_metric(GRIDS[name], value) for name in ("1 mm", "0.5 mm")),
        },
        working=tuple(
            f"{show.pure(value)} × {each} = {_parts(value * each)} {parts_in_words(each)}"
            for each in DIVISIONS
        ),
        drawing=ladder(value, DIVISIONS),
    )


def _parts(number):
    """A number of parts: whole where it is, else in decimals, because it lies between two marks."""
    return str(number) if number.denominator == 1 else decimal_text(number, 3)


def _neighbors(parts, value):
    """The marks below and above, as lengths of their own: their labels say how far off they are."""
    name = f"1/{parts}"
    grid = GRIDS[name]
    low, high = (to_mark(value, grid, way).mark for way in ("down", "up"))
    if low == high:
        return [(f"{name}, exact", to_mark(value, grid))]
    return [
        (f"{name}, low by {decimal_text(value - low, 4)}″", to_mark(low, grid)),
        (f"{name}, high by {decimal_text(high - value, 4)}″", to_mark(high, grid)),
    ]


def _metric(grid, value):
    low, high = (to_mark(value, grid, way).mark for way in ("down", "up"))
    if low == high:
        return f"{decimal_text(value / _MM)} mm exactly"
    below, above = decimal_text((value - low) / _MM, 3), decimal_text((high - value) / _MM, 3)
    return (
        f"{decimal_text(low / _MM)} mm (low by {below}) and "
        f"{decimal_text(high / _MM)} mm (high by {above})"
    )


RECKONER = Reckoner(
    key="fraction_ladder",
    title="Fraction ladder",
    asks="What are the nearest fractions, and how far off is each?",
    words=(
        "decimal to fraction, metric, millimeters to inches, inches to millimeters, fraction to "
        "decimal, convert, conversion, nearest, nearest fraction, nearest 16th, 32nds, 64ths, "
        "sixty-fourths, caliper, round"
    ),
    order=107,
    job="tables",
    picture={
        "wood": "M6 3h14v34H6z",
        "ink": "M6 9h9M6 14.5h5M6 20h7M6 25.5h5M6 31h9",
        "chalk": "M36 22.5H23m3-3l-3 3 3 3",
    },
    fields=(
        length("length", "Length", help="A decimal, a fraction, or millimeters such as 18 mm."),
    ),
    answers=(
        Answer("mark", "On your marks", must="agree"),
        Answer("inches", "Decimal", "text"),
        Answer("millimeters", "Metric", "text"),
        Answer("neighbors", "Nearest fractions", "lengths", must="agree"),
        Answer("metric", "Nearest millimeters", "text"),
    ),
    source="1 in = 25.4 mm exactly (NIST SP 811, appendix B); the rest is arithmetic.",
    compute=compute,
    example={"length": "0.71"},
)
