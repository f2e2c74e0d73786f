"""Where the shelves of a case go: with equal or graduated openings, around what goes in, or around
a fixed one. Each mark is worked out from its own exact place, so no rounding is carried along."""

from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.shared.stepping_off import STEPPING
from sawside.reckoners.shelves.shared.case_fields import MARKED
from sawside.reckoners.shelves.shared.layout.around_fixed import openings_around_a_fixed_one
from sawside.reckoners.shelves.shared.layout.equal import equal_openings
from sawside.reckoners.shelves.shared.layout.fields import LAYOUT_FIELDS
from sawside.reckoners.shelves.shared.layout.graduated import graduated_openings
from sawside.reckoners.shelves.shared.layout.to_fit import openings_to_fit

_BY_LAYOUT = {
    "equal": equal_openings,
    "graduated": graduated_openings,
    "fit": openings_to_fit,
    "fixed": openings_around_a_fixed_one,
}


def compute(given, show):
    """The mark of each shelf and the openings, by how those are made."""
    return _BY_LAYOUT[given.layout](given, show)


RECKONER = Reckoner(
    key="shelf_layout",
    title="Shelf spacing",
    asks="Where do the shelves go?",
    words=(
        "shelf spacing, shelves, bookcase, equal spacing, space shelves evenly, equal openings, "
        "toe kick, story stick, opening, cabinet, divide, layout, graduated, graduated drawers, "
        "progression, progressive, ratio, largest at the bottom, getting smaller, drawers, fit, "
        "records, record albums, books, binders, jars, height of things, clearance, fixed shelf, "
        "rail, given height, center shelf, line up"
    ),
    order=300,
    job="shelves",
    picture={
        "wood": "M6 4h3v32H6zM31 4h3v32h-3zM9 4h22v3H9zM9 13.5h22v3H9zM9 23.5h22v3H9zM9 33h22v3H9z",
        "chalk": "M20 7v6.5M20 16.5v7M20 26.5V33",
    },
    fields=LAYOUT_FIELDS,
    basic=(
        "layout",
        "things",
        "height",
        "shelf_count",
        "thickness",
        "opening",
        "lowest",
        "highest",
        "fixed_at",
        "below",
        "above",
    ),
    answers=(
        Answer("opening", "Opening", must="agree"),
        Answer("marks", "Shelf marks", "lengths", must="agree"),
        Answer("opening_below", "Opening below", must="agree"),
        Answer("opening_above", "Opening above", must="agree"),
        Answer("left_over", "Left over", must="be there"),
        Answer("needed", "Inside height the items need", must="reach"),
        Answer("lowest", "Bottom opening", must="agree"),
        Answer("highest", "Top opening", must="agree"),
        Answer("step", "Step between openings", must="agree"),
        Answer("ratio", "Each opening", "text"),
        Answer("shelf_count", "Shelves", "count"),
        Answer("below", "Shelves below", "count"),
        Answer("above", "Shelves above", "count"),
        Answer("height", "Inside height", must="case"),
        *MARKED,
        STEPPING,
    ),
    source=(
        "Arithmetic: height = shelves × thickness + the openings, which are alike, in an "
        "arithmetic or geometric series, or an item and its clearance each. Marking every shelf "
        "from the same end, the biggest opening at the bottom and measuring the tallest item are "
        "shop practice."
    ),
    compute=compute,
    example={
        "layout": "equal",
        "height": "44 1/2",
        "shelf_count": "2",
        "thickness": "23/32",
        "opening": "",
        "case_parts": "whole",
        "bottom": "23/32",
        "top": "23/32",
        "kick": "3",
    },
    solve_one_of=("height", "shelf_count", "opening"),
)
