"""What is asked about the places of shelves: first how their openings are made."""

from sawside.drawing.choices.case_openings import CASE_OPENINGS
from sawside.reckoners.fields import choice, clearance, count, length, number, rows
from sawside.reckoners.shelves.shared.case_fields import (
    MARKING,
    MOST_SHELVES,
    THICKNESS,
    height_field,
)

_OTHERS = "Figured from the others."
_EQUAL, _GRADUATED, _FIT, _FIXED = (
    ("layout", (each,)) for each in ("equal", "graduated", "fit", "fixed")
)


def _opening(key, label, shown_when, **more):
    return length(key, label, least="1/4 in", shown_when=shown_when, **more)


_THINGS = rows(
    "things",
    "Items, bottom to top",
    (
        length("height", "Item height", help="The tallest one.", least="1/4 in"),
        clearance("clearance", "Clearance above", "clearance_above", most="48 in"),
        count("openings", "How many rows", default="1", least="1", most=str(MOST_SHELVES)),
    ),
    row_label="Item",
    most_rows=20,
    help="One line per kind of item. Each opening holds one row.",
    shown_when=_FIT,
)
_SHELF_COUNT = count(
    "shelf_count",
    "Shelves",
    help="Don’t count the top and bottom.",
    most=str(MOST_SHELVES),
    blank_means="As many as fit with at least the opening you enter.",
    shown_when=("layout", ("equal", "graduated")),
)
_GRADUATION = (
    choice(
        "by",
        "Progression",
        {"step": "Constant step", "ratio": "Constant percent"},
        shown_when=_GRADUATED,
    ),
    _opening("lowest", "Bottom opening", _GRADUATED, help="The biggest one.", blank_means=_OTHERS),
    _opening(
        "highest",
        "Top opening",
        _GRADUATED,
        help="The smallest one. With no shelf count, the minimum.",
        blank_means=_OTHERS,
    ),
    length(
        "step",
        "Step",
        help="How much each opening loses to the one below.",
        least="1/64 in",
        blank_means=_OTHERS,
        shown_when=(_GRADUATED, ("by", ("step",))),
    ),
    number(
        "percent",
        "Percent of the one below",
        "%",
        help="Each opening as a percent of the one below: 80 means four-fifths.",
        least="30",
        most="99.9",
        blank_means=_OTHERS,
        shown_when=(_GRADUATED, ("by", ("ratio",))),
    ),
)


def _side(key, label):
    return count(
        key,
        label,
        most=str(MOST_SHELVES),
        blank_means="As many as fit with at least the minimum opening.",
        shown_when=_FIXED,
    )


_AROUND_A_FIXED_ONE = (
    length(
        "fixed_at",
        "Height of the fixed shelf",
        help="To the line you mark, from where you mark.",
        shown_when=_FIXED,
    ),
    _side("below", "Shelves below"),
    _side("above", "Shelves above"),
    _opening(
        "least", "Minimum opening", _FIXED, blank_means="Not needed if you enter both counts."
    ),
    length(
        "fixed_thickness",
        "Thickness of the fixed shelf",
        help="Measure it. Include the rail if there’s one under it.",
        least="1/64 in",
        most="12 in",
        blank_means="Same as the others.",
        shown_when=_FIXED,
    ),
)
_EXTRA = (
    choice(
        "rest",
        "Extra height",
        {
            "shared": "Shared by all openings",
            "bottom": "To the bottom opening",
            "top": "To the top opening",
            "numbered": "To one opening",
        },
        shown_when=_FIT,
    ),
    count(
        "opening_number",
        "Which opening",
        help="Count from the bottom.",
        default="1",
        least="1",
        most=str(MOST_SHELVES + 1),
        shown_when=(_FIT, ("rest", ("numbered",))),
    ),
)
LAYOUT_FIELDS = (
    choice(
        "layout",
        "Openings",
        {
            "equal": "Equal",
            "graduated": "Graduated",
            "fit": "To fit what goes in",
            "fixed": "Around a fixed shelf",
        },
        pictures=CASE_OPENINGS,
    ),
    # Before the things: each of those has a height too, and the page goes to the first so called.
    height_field(blank_means="Figured from the openings."),
    _THINGS,
    _SHELF_COUNT,
    THICKNESS,
    _opening(
        "opening",
        "Opening",
        _EQUAL,
        help="Clear height between shelves. With no shelf count, the minimum.",
        blank_means="Figured from the height and shelf count.",
    ),
    *_GRADUATION,
    *_AROUND_A_FIXED_ONE,
    *_EXTRA,
    *MARKING,
)
