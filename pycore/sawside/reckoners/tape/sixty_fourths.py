"""Every fraction of an inch with its decimals and millimeters: a table to look through."""

from fractions import Fraction

from sawside.lengths.display import decimal_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, choice, count
from sawside.reckoners.tape.shared.tape_marks import divisions

_MM = INCHES_PER["mm"]


def compute(given, _show):
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
    )


def _told(mark):
    """Exact: six decimals are enough for a sixty-fourth in both units."""
    return f"{decimal_text(mark)}″, {decimal_text(mark / _MM)} mm"


RECKONER = Reckoner(
    key="sixty_fourths",
    title="Decimal equivalents",
    asks="What’s each fraction in decimals and millimeters?",
    words=(
        "decimal chart, metric, millimeters, decimal equivalents, table, chart, fractions, "
        "sixty-fourths, 64ths, convert, conversion, drill sizes"
    ),
    order=108,
    job="tables",
    picture={
        "wood": "M4 5h13v30H4z",
        "ink": "M4 15h13M4 25h13M23 10h13M23 30h13",
        "chalk": "M23 20h9M7.5 20h6",
    },
    fields=(
        choice("division", "In", divisions(64, 32, 16, 8)),
        count(
            "inches",
            "After the inch",
            help="0 for the first inch on the tape.",
            default="0",
            most="1200",
        ),
    ),
    answers=(Answer("table", "Decimals and millimeters", "lengths", must="agree"),),
    source="1 in = 25.4 mm exactly (NIST SP 811, appendix B).",
    compute=compute,
    example={"division": "64", "inches": "0"},
)
