"""What is asked of wood as it is sold: what it is, its size, and what its price is for."""

from sawside.reckoners.fields import Field, choice, length, number, rows
from sawside.wood.sold_sizes import HARDWOOD

SOFTWOOD, QUARTERS, BOARD, SHEET, STICK = "softwood", "hardwood", "board", "sheet", "stick"
MOST_KINDS = 20

_NOMINAL = {
    "1": ("2", "3", "4", "5", "6", "8", "10", "12"),
    "1_1_4": ("4", "6", "8", "12"),
    "2": ("2", "3", "4", "6", "8", "10", "12"),
    "4": ("4", "6"),
}
"""Nominal widths by thickness, as lumberyards stock them (common practice, no source)."""

_WRITTEN = {"1_1_4": "5/4"}


def _named(thick, wide):
    return f"{_WRITTEN.get(thick, thick)} × {wide}"


NOMINAL = {
    f"{thick} x {wide}": _named(thick, wide)
    for thick, widths in _NOMINAL.items()
    for wide in widths
}
"""What softwood is called, by the value of its choice: its keys in the tables apart by " x "."""

_PER = {
    "": "Pick one",
    "piece": "Piece",
    "foot": "Foot",
    "board_foot": "Board foot, volume",
    "surface": "Board foot, surface measure",
    "square_foot": "Square foot",
    "meter": "Meter",
    "cubic_meter": "Cubic meter",
}
_SHEET_PER = {
    "": "Pick one",
    "piece": "Sheet",
    "square_foot": "Square foot",
    "square_meter": "Square meter",
}
_STICK_PER = {"": "Pick one", "piece": "Piece", "foot": "Foot", "meter": "Meter"}


def _only(*sold):
    return {"shown_when": ("sold", sold)}


def _per(key, choices, *sold):
    return choice(key, "Price per", choices, default="", **_only(*sold))


def material_as_typed():
    """What it is made of, in the person's own words: those that a piece's material is told in."""
    return Field(
        "text",
        "material",
        "Material",
        help="As you call it in your cut list.",
        may_be_blank=True,
        blank_means="Any.",
    )


WOOD = rows(
    "wood",
    "Wood",
    (
        choice(
            "sold",
            "Sold as",
            {
                SOFTWOOD: "Softwood, nominal",
                QUARTERS: "Hardwood, by quarters",
                BOARD: "Board, actual size",
                SHEET: "Sheet",
                STICK: "Stick or molding",
            },
        ),
        choice(
            "nominal", "Nominal size", NOMINAL, default="1 x 6", in_short="{}", **_only(SOFTWOOD)
        ),
        choice(
            "quarters",
            "Rough thickness",
            {key: size.name for key, size in HARDWOOD.items()},
            default="thickness_4_4",
            **_only(QUARTERS),
        ),
        choice(
            "surfaced",
            "Surfaced",
            {"rough": "Rough", "one_side": "One side, S1S", "two_sides": "Two sides, S2S"},
            **_only(QUARTERS),
        ),
        length(
            "planed",
            "Planed to",
            help="The thickness you’ll bring it to.",
            least="1/16 in",
            most="6 in",
            blank_means="Left as it’s sold.",
            **_only(QUARTERS),
        ),
        length("thickness", "Thickness", least="1/64 in", most="6 in", **_only(BOARD, SHEET)),
        length("width", "Width", least="1/4 in", most="10 ft", **_only(BOARD, SHEET)),
        length(
            "average",
            "Average width",
            help="Widths are random: real boards run wider and narrower.",
            least="1/4 in",
            most="48 in",
            **_only(QUARTERS),
        ),
        length(
            "stick_width",
            "Face width",
            least="1/16 in",
            most="24 in",
            blank_means="As your parts are.",
            **_only(STICK),
        ),
        length(
            "stick_thickness",
            "Thickness",
            least="1/64 in",
            most="6 in",
            blank_means="As your parts are.",
            **_only(STICK),
        ),
        length("length", "Length", least="1 in", most="40 ft"),
        length(
            "trim", "Trim each edge", default="0 in", metric="0 mm", most="6 in", **_only(SHEET)
        ),
        material_as_typed(),
        number("price", "Price", "$", most="100000", blank_means="No price."),
        _per("per", _PER, SOFTWOOD, QUARTERS, BOARD),
        _per("sheet_per", _SHEET_PER, SHEET),
        _per("stick_per", _STICK_PER, STICK),
    ),
    row_label="Wood",
    most_rows=MOST_KINDS,
)
PER_FIELD = {SHEET: "sheet_per", STICK: "stick_per"}
"""The field that says what a price is for; "per" of all boards."""
