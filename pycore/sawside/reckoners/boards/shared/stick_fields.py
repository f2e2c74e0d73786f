"""What is asked of pieces that are only cut to length, and of the sticks they come out of."""

from sawside.reckoners.fields import Field, count, kerf, length, number, rows

MOST_PIECES = 200
"""So many are planned while somebody waits."""

_PRICE_BLANK = "No prices: fewest sticks."
_STOCK = {"least": "1 in"}


def _price():
    return number("price", "Price each", "$", most="10000", blank_means=_PRICE_BLANK)


FIELDS = (
    rows(
        "pieces",
        "Pieces",
        (
            length("length", "Length", least="1/4 in"),
            count("count", "How many", default="1", least="1", most="10000"),
            Field("text", "name", "Name", may_be_blank=True, blank_means="No name."),
        ),
        help=f"Up to {MOST_PIECES} pieces of one kind of stock.",
        row_label="Piece",
        most_rows=40,
    ),
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
        (length("length", "Length", **_STOCK), count("count", "How many", default="1", least="1")),
        help="Used before you buy.",
        row_label="Stick",
        most_rows=20,
        blank_means="Nothing on hand.",
    ),
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
