"""What is asked of rectangles that are cut out of sheets, or out of wide boards."""

from sawside.reckoners.fields import Field, choice, count, kerf, length, number, rows
from sawside.settings.handled import HANDLED

MOST_PIECES = 200
"""So many are planned while somebody waits."""

_STOCK = {"least": "2 in", "most": "20 ft"}
_SIDE = {"least": "1/2 in", "most": "20 ft"}

FIELDS = (
    rows(
        "pieces",
        "Pieces",
        (
            length("length", "Length", **_SIDE),
            length("width", "Width", **_SIDE),
            count("count", "How many", default="1", least="1", most="10000"),
            choice(
                "grain",
                "Grain",
                {
                    "fixed": "Along the length",
                    "free": "Either way",
                    "side": "Matched, side by side",
                    "end": "Matched, end to end",
                },
            ),
            Field("text", "name", "Name", may_be_blank=True, blank_means="No name."),
        ),
        help=f"Up to {MOST_PIECES} pieces of one kind of sheet.",
        row_label="Piece",
        most_rows=40,
    ),
    length("sheet_length", "Sheet length", default="8 ft", metric="2440 mm", **_STOCK),
    length("sheet_width", "Sheet width", default="4 ft", metric="1220 mm", **_STOCK),
    number("price", "Price each", "$", most="10000", blank_means="No price."),
    rows(
        "on_hand",
        "On hand",
        (
            length("length", "Length", **_STOCK),
            length("width", "Width", **_STOCK),
            count("count", "How many", default="1", least="1"),
        ),
        help="Used before you buy. Length runs with the grain.",
        row_label="Sheet",
        most_rows=20,
        blank_means="Nothing on hand.",
    ),
    kerf(),
    length(
        "trim",
        "Edge trim",
        help="Off each edge of each sheet, that kerf included.",
        default="0 in",
        metric="0 mm",
        most="6 in",
    ),
    choice(
        "first",
        "First cuts",
        {"either": "Whichever fits best", "rip": "Rips", "crosscut": "Crosscuts"},
    ),
    choice(
        "stages",
        "Rounds of cuts",
        {"any": "As many as it takes", "2": "Two at most", "3": "Three at most"},
        help="Rips are one round, the crosscuts after them the next.",
    ),
    *(
        length(
            each.key,
            each.label,
            help=each.help,
            least=each.least,
            most=each.most,
            setting=each.key,
            blank_means="As in the settings: any, where none is set.",
        )
        for each in HANDLED
    ),
    length("least", "Shortest to save", default="12 in", metric="300 mm", least="1/4 in"),
)
