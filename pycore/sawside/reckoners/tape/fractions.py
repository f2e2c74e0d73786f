"""Fractions of an inch: those nearest to a length, and all of an inch as a table."""

from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.fields import choice, count, length
from sawside.reckoners.tape.shared.fraction_table import fraction_table
from sawside.reckoners.tape.shared.nearest_fractions import nearest_fractions
from sawside.reckoners.tape.shared.tape_marks import divisions

_NEAREST, _TABLE = ({"shown_when": ("solve", (solve,))} for solve in ("nearest", "table"))
_SOLVERS = {"nearest": nearest_fractions, "table": fraction_table}


def compute(given, show):
    """By what is asked: the fractions nearest to a length, or the table."""
    return _SOLVERS[given.solve](given, show)


RECKONER = Reckoner(
    key="fractions",
    title="Fractions",
    asks="What fraction is this decimal or metric size?",
    words=(
        "decimal to fraction, metric, millimeters to inches, inches to millimeters, fraction to "
        "decimal, convert, conversion, nearest, nearest fraction, nearest 16th, 32nds, 64ths, "
        "sixty-fourths, caliper, round, decimal chart, decimal equivalents, table, chart, ladder, "
        "drill sizes"
    ),
    order=107,
    job="tables",
    picture={
        "wood": "M6 3h14v34H6z",
        "ink": "M6 9h9M6 14.5h5M6 20h7M6 25.5h5M6 31h9",
        "chalk": "M36 22.5H23m3-3l-3 3 3 3",
    },
    fields=(
        choice("solve", "Find", {"nearest": "Nearest", "table": "Whole table"}),
        length(
            "length",
            "Length",
            help="A decimal, a fraction, or millimeters such as 18 mm.",
            **_NEAREST,
        ),
        choice("division", "Parts", divisions(64, 32, 16, 8), **_TABLE),
        count(
            "inches",
            "After the inch",
            help="0 for the first inch on the tape.",
            default="0",
            most="1200",
            **_TABLE,
        ),
    ),
    answers=(
        Answer("mark", "On your marks", must="agree"),
        Answer("inches", "Decimal", "text"),
        Answer("millimeters", "Metric", "text"),
        Answer("neighbors", "Nearest fractions", "lengths", must="agree"),
        Answer("metric", "Nearest millimeters", "text"),
        Answer("table", "Decimals and millimeters", "lengths", must="agree"),
    ),
    source="1 in = 25.4 mm exactly (NIST SP 811, appendix B); the rest is arithmetic.",
    compute=compute,
    example={"solve": "nearest", "length": "0.71", "division": "64", "inches": "0"},
    basic=("solve", "length", "division", "inches"),
)
