"""A stretch of tape around a mark: its ticks, and how to find the mark by counting.

Places on the drawn tape are floats, for drawing only; the words are made from the exact mark.
"""

from fractions import Fraction

from sawside.lengths.display import mixed_text
from sawside.lengths.real import nearby
from sawside.lengths.units import INCHES_PER
from sawside.lengths.words import fraction_in_words, parts_in_words

_MM = INCHES_PER["mm"]
INCH_SIZES = {1: 1.0, 2: 0.8, 4: 0.62, 8: 0.46, 16: 0.32, 32: 0.22, 64: 0.15}


def stretch(rounded, grid=None):
    """The contract's TAPE about 2 inches or 50 mm wide around a mark; None below zero.

    `grid` is how the tape is divided where that is not as the length was rounded: a 32nd is found
    halfway between two sixteenths.
    """
    if rounded.mark < 0:
        return None
    grid = grid or rounded.grid
    return _metric(rounded, grid) if grid.unit == "mm" else _inches(rounded, grid)


def _place(value, unit=1):
    return round(float(nearby(value) / unit), 6)


def _inches(rounded, grid):
    division = max(grid.division or 16, 16)
    first = max(round(rounded.mark) - 1, 0)
    ticks = []
    for count in range(2 * division + 1):
        at = first + Fraction(count, division)
        label = str(at) if at.denominator == 1 else None
        ticks.append({"at": float(at), "size": INCH_SIZES[at.denominator], "label": label})
    return {
        "unit": "in",
        "from": float(first),
        "to": float(first + 2),
        "ticks": ticks,
        "at": _place(rounded.mark),
        "true_at": _place(rounded.exact),
        "words": _inch_words(rounded.mark, grid.division),
    }


def _inch_words(mark, division):
    if division is None or (mark * division).denominator != 1:
        parts = division or 16
        return _between(mark * parts, lambda number: mixed_text(Fraction(number, parts)))
    larger = Fraction(1, max(division // 4, 1))  # counted from marks four times as far apart
    reference, count = _counted(mark, larger, Fraction(1, division))
    whole, part = divmod(reference, 1)
    if not part:
        where = str(whole)
    else:
        where = f"the {_the(part)}"
        if whole:
            where += f" after {whole}" if count else f" past {whole}"
    if count == 0:
        return f"on {where}"
    return f"{_parts(count, division)} {where}"


def from_the_inch(rounded):
    """How to find a mark by counting from the nearest numbered inch alone."""
    division = rounded.grid.division
    inch, count = _counted(rounded.mark, 1, Fraction(1, division))
    return f"{_parts(count, division)} {inch}" if count else f"on {inch}"


def _the(part):
    return fraction_in_words(part.numerator, part.denominator).replace(" ", "-")


def _counted(mark, larger, step):
    """The nearest larger mark, the lower one of two as near, and the small marks from it."""
    reference = (mark / larger).__floor__() * larger
    if mark - reference > larger / 2:
        reference += larger
    return reference, int((mark - reference) / step)


def _parts(count, division):
    """A number of small marks and the way that they are counted: "2 sixteenths past"."""
    return _past(count, parts_in_words(division, abs(count)))


def _past(count, parts):
    return f"{abs(count)} {parts} {'past' if count > 0 else 'short of'}"


def _metric(rounded, grid):
    middle = rounded.mark / _MM
    half = grid.name == "0.5 mm"
    first = max(round(middle / 10) * 10 - 25, 0)
    ticks = []
    for count in range((100 if half else 50) + 1):
        at = first + Fraction(count, 2 if half else 1)
        size = 1.0 if at % 10 == 0 else 0.7 if at % 5 == 0 else 0.45 if at % 1 == 0 else 0.25
        ticks.append({"at": float(at), "size": size, "label": str(at) if at % 10 == 0 else None})
    return {
        "unit": "mm",
        "from": float(first),
        "to": float(first + 50),
        "ticks": ticks,
        "at": _place(rounded.mark, _MM),
        "true_at": _place(rounded.exact, _MM),
        "words": _metric_words(middle),
    }


def _metric_words(millimeters):
    if millimeters % 1:
        return _between(millimeters, str)
    reference, count = _counted(millimeters, Fraction(10), 1)
    if count == 0:
        return f"on {reference}"
    return f"{_past(count, 'millimeter' if abs(count) == 1 else 'millimeters')} {reference}"


def _between(number, written):
    low = number.__floor__()
    if number == low:
        return f"on {written(low)}"
    way = _WAYS.get(number - low, "between {} and {}")
    return way.format(written(low), written(low + 1))


_WAYS = {
    Fraction(1, 4): "a quarter of the way from {} to {}",
    Fraction(1, 2): "halfway between {} and {}",
    Fraction(3, 4): "three quarters of the way from {} to {}",
}
