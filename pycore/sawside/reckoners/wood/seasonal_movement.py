"""How much a board grows and shrinks across its grain through the year."""

from sawside.drawing.wood.moving_panel import moving_panel
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.real import sign
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import length
from sawside.reckoners.wood.shared.moisture_fields import (
    ASKED,
    MOISTURE,
    SOURCE,
    WOOD,
    board_of,
    board_text,
    cautions,
    change_line,
)


def compute(given, show):
    """The change of width in inches from now to the driest and the dampest, exact."""
    board, width = board_of(given), given.width
    low, high = (board.change(width, each) for each in (board.year.low, board.year.high))
    return Reckoning(
        answers={
            "whole": on_fine_marks(high - low, show),
            "driest": _told(low, show),
            "dampest": _told(high, show),
            "narrowest": on_fine_marks(width + low, show),
            "widest": on_fine_marks(width + high, show),
            "wood": board_text(board),
        },
        working=(
            *board.rates,
            change_line(show, board, width, board.year.low, "To its driest"),
            change_line(show, board, width, board.year.high, "To its wettest"),
        ),
        drawing=moving_panel(show, width, (low, high), (_told(low, show), _told(high, show))),
        cautions=cautions(board),
    )


def _told(change, show):
    way = sign(change)
    if way == 0:
        return "same as now"
    return f"{fine_text(abs(change), show)} {'wider' if way > 0 else 'narrower'}"


RECKONER = Reckoner(
    key="seasonal_movement",
    title="Wood movement",
    asks="How much will a board grow and shrink across its width?",
    words=(
        "wood movement, movement, expansion, expand, swell, shrink, shrinkage, contraction, "
        "seasonal, humidity, moisture, moisture content, split, gap, tabletop, panel, oak, "
        "maple, cherry, walnut, pine"
    ),
    order=400,
    job="wood",
    basic=("width", *ASKED),
    fields=(
        length("width", "Width", help="Across the grain, today.", least="1/4 in"),
        *WOOD,
        *MOISTURE,
    ),
    answers=(
        Answer("whole", "Movement through the year", must="agree"),
        Answer("driest", "From now to driest", "text"),
        Answer("dampest", "From now to wettest", "text"),
        Answer("narrowest", "Width at its driest", must="agree"),
        Answer("widest", "Width at its wettest", must="agree"),
        Answer("wood", "The wood and its moisture", "text"),
    ),
    source=SOURCE,
    compute=compute,
    verdict="Moves {whole} through the year",
    example={"width": "13 1/4", "species": "maple_red", "now": "8", "year": "most"},
)
