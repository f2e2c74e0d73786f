"""A length as marks to count on the tape: "2 thirty-seconds past the five-eighths"."""

from sawside.lengths.display import decimal_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.tape import from_the_inch, stretch
from sawside.lengths.units import INCHES_PER
from sawside.lengths.words import parts_in_words
from sawside.reckoners.declaration import Reckoning


def counted_to_a_mark(given, show):
    """The mark on the division, and the two ways to count to it."""
    grid = _grid(given.division, show.settings.grid)
    found = to_mark(given.length, grid, show.settings.rounding)
    way = stretch(found)["words"]
    answers = {"mark": found, "way": way}
    if grid.division:
        answers["from_inch"] = from_the_inch(found)
    return Reckoning(
        answers=answers,
        working=(_working(given.length, grid, found, show),),
        main="mark",
        verdict=f"{way[0].upper()}{way[1:]}",
    )


def _working(length, grid, found, show):
    """The length in marks, and the one that was rounded to."""
    number = length / (grid.step if grid.division else INCHES_PER["mm"])
    unit = parts_in_words(grid.division) if grid.division else "millimeters"
    typed = show.number(length)
    if grid.division and show.settings.display == "mm":
        typed += f" ÷ {decimal_text(1 / INCHES_PER['mm'])}"
    elif not grid.division and show.settings.display != "mm":
        typed += f" × {decimal_text(1 / INCHES_PER['mm'])}"
    if grid.division:
        typed += f" × {grid.division}"
    line = f"{typed} = {decimal_text(number, 3)} {unit}"
    return line if found.direction == "exact" else f"{line}, to the mark: {show.text(found)}"


def _grid(division, own):
    """The grid of marks that a tape has: that of the settings where it is one, or the nearest."""
    if division != "settings":
        return GRIDS["1 mm" if division == "mm" else f"1/{division}"]
    if own.unit == "mm":
        return own if own.places == 0 or own.name == "0.5 mm" else GRIDS["1 mm"]
    return own if own.division else GRIDS["1/16"]
