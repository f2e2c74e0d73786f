"""What is asked of wood on hand: what it is, its size as measured, what is bad of it."""

from sawside.reckoners.boards.shared.buy_fields import material_as_typed
from sawside.reckoners.fields import Field, choice, count, length, rows

BOARD, SHEET, STICK = "board", "sheet", "stick"
_FLAT = {"shown_when": ("form", (BOARD, SHEET))}
_STICK = {"shown_when": ("form", (STICK,)), "blank_means": "As your parts are."}

WOOD = rows(
    "wood",
    "Wood",
    (
        choice("form", "What", {BOARD: "Board", SHEET: "Sheet", STICK: "Stick"}),
        material_as_typed(),
        length("thickness", "Thickness", least="1/64 in", most="12 in", **_FLAT),
        length("width", "Width", least="1/4 in", most="10 ft", **_FLAT),
        length("stick_width", "Face width", least="1/16 in", most="24 in", **_STICK),
        length("stick_thickness", "Thickness", least="1/64 in", most="12 in", **_STICK),
        length("length", "Length", help="Along the grain.", least="1 in", most="40 ft"),
        count("count", "How many", default="1", least="1", most="1000"),
        Field(
            "text",
            "bad",
            "Bad stretches",
            help="Knots, splits, snipe: from one end, as 31 to 36, 70 to end.",
            may_be_blank=True,
            blank_means="Clear all along.",
        ),
        Field("text", "note", "Note", may_be_blank=True, blank_means="No note."),
    ),
    help="Measure it as it is. Offcuts go here too.",
    row_label="Wood",
    most_rows=60,
)
