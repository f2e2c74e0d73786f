"""Any length with its neighbors on every division, and how far off each of them is."""

from sawside.drawing.tape.ladder import ladder
from sawside.lengths.display import decimal_text, dropped_text, mixed_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.units import INCHES_PER
from sawside.lengths.words import parts_in_words
from sawside.reckoners.declaration import Reckoning

DIVISIONS = (2, 4, 8, 16, 32, 64)
_MM = INCHES_PER["mm"]
_FINEST = GRIDS["1/64"]
_METRIC = ("1 mm", "0.5 mm")
"""What lies on both is told once."""


def nearest_fractions(given, show):
    """The mark of the settings, then the mark below and above on each division and in mm."""
    value = given.length
    metric = show.settings.display == "mm"
    neighbors = [rung for each in DIVISIONS for rung in _neighbors(each, value, metric=metric)]
    return Reckoning(
        answers={
            "mark": to_mark(value, show.settings.grid, show.settings.rounding),
            "inches": f"{decimal_text(value)}″",
            "millimeters": f"{decimal_text(value / _MM)} mm",
            "neighbors": neighbors,
            "metric": "; ".join(dict.fromkeys(_metric(GRIDS[name], value) for name in _METRIC)),
        },
        working=tuple(
            f"{show.pure(value)} × {each} = {_parts(value * each)} {parts_in_words(each)}"
            for each in DIVISIONS
        ),
        drawing=ladder(value, DIVISIONS),
        main="mark",
        verdict=_verdict(value, show),
    )


def _verdict(value, show):
    """The nearest 64th, whatever the marks of the settings: "Nearest 64th 45/64″, 0.007″ heavy"."""
    near = to_mark(value, _FINEST)
    off = dropped_text(near, show.settings.display)
    text = f"{mixed_text(near.mark)}″"
    return f"Nearest 64th {text}, {off}" if off else f"{text} exactly"


def _parts(number):
    """A number of parts: whole where it is, else in decimals, because it lies between two marks."""
    return str(number) if number.denominator == 1 else decimal_text(number, 3)


def _neighbors(parts, value, *, metric):
    """The marks below and above, as lengths of their own: their labels say how far off they are.

    Where lengths are told in millimeters the label has the fraction.
    """
    grid = GRIDS[f"1/{parts}"]
    low, high = (to_mark(value, grid, way).mark for way in ("down", "up"))
    if low == high:
        return [(f"{_name(parts, low, metric)}, exact", to_mark(value, grid))]
    found = []
    for mark, way in ((low, "low"), (high, "high")):
        off = _off(abs(value - mark), metric)
        found.append((f"{_name(parts, mark, metric)}, {way} by {off}", to_mark(mark, grid)))
    return found


def _name(parts, mark, metric):
    return f"{mixed_text(mark)}″" if metric else f"1/{parts}"


def _off(size, metric):
    return f"{decimal_text(size / _MM, 3)} mm" if metric else f"{decimal_text(size, 4)}″"


def _metric(grid, value):
    low, high = (to_mark(value, grid, way).mark for way in ("down", "up"))
    if low == high:
        return f"{decimal_text(value / _MM)} mm exactly"
    below, above = decimal_text((value - low) / _MM, 3), decimal_text((high - value) / _MM, 3)
    return (
        f"{decimal_text(low / _MM)} mm (low by {below}) and "
        f"{decimal_text(high / _MM)} mm (high by {above})"
    )
