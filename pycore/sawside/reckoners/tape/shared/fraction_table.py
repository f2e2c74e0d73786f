"""Every fraction of an inch with its decimals and millimeters: a table to look through."""

from fractions import Fraction

from sawside.lengths.display import decimal_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.declaration import Reckoning

_MM = INCHES_PER["mm"]


def fraction_table(given, _show):
    """The marks of one inch, from the first past its number to the next number."""
    parts = int(given.division)
    grid = GRIDS[f"1/{parts}"]
    table = [
        (_told(given.inches + Fraction(number, parts)), given.inches + Fraction(number, parts))
        for number in range(1, parts + 1)
    ]
    return Reckoning(
        answers={"table": [(told, to_mark(mark, grid)) for told, mark in table]},
        working=(
            f"1/{parts} in = 1 in ÷ {parts} = {decimal_text(Fraction(1, parts))} in = "
            f"{decimal_text(1 / _MM)} mm ÷ {parts}",
        ),
        main="table",
    )


def _told(mark):
    """Exact: six decimals are enough for a sixty-fourth in both units."""
    return f"{decimal_text(mark)}″, {decimal_text(mark / _MM)} mm"
