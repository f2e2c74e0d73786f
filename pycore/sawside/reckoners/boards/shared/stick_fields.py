"""What is asked of pieces that are only cut to length, and of the sticks they come out of."""

from dataclasses import replace

from sawside.reckoners.fields import Field, choice, count, kerf, length, number, rows
from sawside.reckoners.miters.shared.corner_field import corner_field

MOST_PIECES = 200
"""So many are planned while somebody waits."""

_PRICE_BLANK = "No prices: fewest sticks."
_STOCK = {"least": "1 in"}
_ANY_MITERED = ("ends", ("mitered", "some"))
_NAME = Field("text", "name", "Name", may_be_blank=True, blank_means="No name.")
_HOW_MANY = count("count", "How many", default="1", least="1", most="10000")

MITERS = {
    "both": "Both ends, like a frame",
    "one": "One end",
    "parallel": "Both ends, cuts parallel",
}
"""Which ends of a piece are mitered, and which way."""


def _price():
    return number("price", "Price each", "$", most="10000", blank_means=_PRICE_BLANK)


PIECES = rows(
    "pieces",
    "Pieces",
    (length("length", "Length", least="1/4 in"), _HOW_MANY, _NAME),
    help=f"Up to {MOST_PIECES} pieces of one kind of stock.",
    row_label="Piece",
    most_rows=40,
    shown_when=("ends", ("square", "some")),
)

MITERED = (
    choice(
        "ends", "Ends", {"square": "All square", "mitered": "All mitered", "some": "Some mitered"}
    ),
    rows(
        "mitered",
        "Mitered pieces",
        (
            length("length", "Length", help="Along the longer edge.", least="1/4 in"),
            _HOW_MANY,
            choice("miters", "Miters", MITERS),
            _NAME,
        ),
        row_label="Mitered piece",
        most_rows=40,
        shown_when=_ANY_MITERED,
    ),
    length(
        "width",
        "Stick width",
        help="Across the face that the miter crosses.",
        default='2 1/2"',
        metric="65 mm",
        least="1/8 in",
        most="24 in",
        shown_when=_ANY_MITERED,
    ),
    corner_field("corner", "Corner", "two pieces", least=30, shown_when=_ANY_MITERED),
    choice(
        "profile",
        "Stick",
        {"flat": "Flat strip, can be turned over", "molding": "Molding, face and edge fixed"},
        shown_when=_ANY_MITERED,
    ),
)

STOCK = (
    length("sold", "Stock length", default="8 ft", metric="2440 mm", **_STOCK),
    number("price", "Price each", "$", most="10000", blank_means=_PRICE_BLANK),
    rows(
        "other",
        "Other stock lengths",
        (length("length", "Length", **_STOCK), _price()),
        row_label="Stock",
        most_rows=5,
        blank_means="Just the one.",
    ),
    rows(
        "on_hand",
        "On hand",
        (
            length("length", "Length", **_STOCK),
            replace(_HOW_MANY, most="1000"),
            Field(
                "text",
                "bad",
                "Bad stretches",
                help="Knots, splits, snipe: from one end, as 12 to 15, 90 to end.",
                may_be_blank=True,
                blank_means="Clear all along.",
            ),
        ),
        help="Used before you buy.",
        row_label="Stick",
        most_rows=20,
        blank_means="Nothing on hand.",
    ),
)

CUTS = (
    kerf(),
    length(
        "trim",
        "End trim",
        help="Off each end of each stick, that kerf included.",
        default="0 in",
        metric="0 mm",
        most="12 in",
    ),
    length("least", "Shortest to save", default="12 in", metric="300 mm", least="1/4 in"),
)

FIELDS = (PIECES, *STOCK, *CUTS, *MITERED)
