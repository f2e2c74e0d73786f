"""What is asked about a face frame."""

from sawside.drawing.choices.face_frames import MIDDLE_STILES, STILE_EDGES
from sawside.reckoners.case.shared.frame.joints import JOINTS
from sawside.reckoners.fields import choice, count, length, lengths, rows
from sawside.reckoners.shared.board_fields import thickness

_CASE = ("size_of", ("case",))
_OF_A_CASE = {"shown_when": _CASE}
_WIDTH = {"least": "1/4 in", "most": "24 in"}
_AS_STILE = _WIDTH | {"blank_means": "Same as Stile width."}
_BY_EDGE = "Same as Stile width, or as Stile edge makes it."
_EACH_OPENING = {"least": "1/2 in", "most_rows": 11}

SIZE = (
    choice("size_of", "Size of", {"case": "The case it covers", "frame": "The frame itself"}),
    length("width", "Width", help="Outside, left to right.", least="1 in"),
    length("height", "Height", help="Outside, from the floor on a case.", least="1 in"),
    length(
        "kick",
        "Toe kick",
        help="Floor to the bottom edge of the frame.",
        default='0"',
        most="24 in",
        **_OF_A_CASE,
    ),
)
OPENINGS = (
    choice(
        "bays",
        "Openings across",
        {"equal": "Equal", "given": "My own widths", "centered": "Centered on equal bays"},
        help="Centered, each middle stile covers a divider as thick as the sides.",
    ),
    count(
        "middle_stiles",
        "Middle stiles",
        default="0",
        most="11",
        shown_when=("bays", ("equal", "centered")),
    ),
    lengths(
        "widths",
        "Opening widths",
        help="Left to right. Leave out the last one: it gets what’s left.",
        row_label="Opening",
        shown_when=("bays", ("given",)),
        **_EACH_OPENING,
    ),
    choice(
        "rows",
        "Openings down",
        {"equal": "Equal", "given": "My own heights", "columns": "Column by column"},
    ),
    count(
        "middle_rails",
        "Middle rails",
        help="In each column.",
        default="0",
        most="11",
        shown_when=("rows", ("equal",)),
    ),
    lengths(
        "heights",
        "Opening heights",
        help="Top to bottom, in every column alike. Leave out the last one.",
        row_label="Opening",
        shown_when=("rows", ("given",)),
        **_EACH_OPENING,
    ),
    rows(
        "column_rails",
        "Middle rails by column",
        (
            count("column", "Column", help="From the left.", default="1", least="1", most="12"),
            length(
                "opening",
                "Opening above it",
                least="1/2 in",
                blank_means="An equal share of what’s left in its column.",
            ),
        ),
        help="Top to bottom in each column. A column without a rail is one opening.",
        row_label="Middle rail",
        most_rows=40,
        blank_means="No middle rails.",
        shown_when=("rows", ("columns",)),
    ),
)
WIDTHS = (
    length("stile", "Stile width", default='1 1/2"', metric="40 mm", **_WIDTH),
    length("left_stile", "Left stile width", blank_means=_BY_EDGE, **_WIDTH),
    length("right_stile", "Right stile width", blank_means=_BY_EDGE, **_WIDTH),
    length("middle_stile", "Middle stile width", **_AS_STILE),
    length("top_rail", "Top rail width", **_AS_STILE),
    length(
        "bottom_rail",
        "Bottom rail width",
        blank_means="Same as Stile width, or as Bottom rail edge makes it.",
        **_WIDTH,
    ),
    length("middle_rail", "Middle rail width", **_AS_STILE),
    thickness("thickness", "Frame thickness", least="1/8 in", most="4 in"),
    choice(
        "middle_stiles_run",
        "Middle stiles run",
        {"between": "Between the top and bottom rails", "through": "Through, past both rails"},
        pictures=MIDDLE_STILES,
    ),
)
ON_THE_CASE = (
    thickness(
        "side", "Side thickness", default='23/32"', least="1/8 in", most="4 in", **_OF_A_CASE
    ),
    choice(
        "edge",
        "Stile edge",
        {
            "width": "By the stile width",
            "flush": "Flush with the side’s inside",
            "past": "Past the side’s inside",
        },
        pictures=STILE_EDGES,
        **_OF_A_CASE,
    ),
    length(
        "reveal",
        "Past the side’s inside",
        help="How far the stile covers the opening.",
        default='1/4"',
        metric="6 mm",
        most="12 in",
        shown_when=(_CASE, ("edge", ("past",))),
    ),
    length(
        "left_past",
        "Past the left side",
        help="Outside the case, to scribe or to cover an end panel.",
        default='0"',
        most="12 in",
        **_OF_A_CASE,
    ),
    length(
        "right_past",
        "Past the right side",
        most="12 in",
        blank_means="Same as past the left side.",
        **_OF_A_CASE,
    ),
    length("top_past", "Past the top", default='0"', most="12 in", **_OF_A_CASE),
    choice(
        "stiles_run",
        "Stiles run",
        {"kick": "To the toe kick", "floor": "To the floor"},
        help="The bottom rail stays above the toe kick either way.",
        **_OF_A_CASE,
    ),
    choice(
        "bottom_edge",
        "Bottom rail edge",
        {
            "width": "By the rail width",
            "flush": "Flush with the case bottom",
            "above": "Above the case bottom",
        },
        help="The rail’s top edge.",
        **_OF_A_CASE,
    ),
    length(
        "lip",
        "Above the case bottom",
        default='1/4"',
        metric="6 mm",
        most="12 in",
        shown_when=(_CASE, ("bottom_edge", ("above",))),
    ),
    length(
        "bottom_height",
        "Case bottom height",
        help="Floor to its top face.",
        blank_means="Toe kick plus the side thickness.",
        **_OF_A_CASE,
    ),
)
JOINT = (
    choice("joint", "Joint", JOINTS),
    length(
        "tenon",
        "Tenon length",
        help="At each end.",
        default='3/8"',
        metric="10 mm",
        least="1/16 in",
        most="12 in",
        shown_when=("joint", ("tenon",)),
    ),
)
FIELDS = (*SIZE, *OPENINGS, *WIDTHS, *ON_THE_CASE, *JOINT)
