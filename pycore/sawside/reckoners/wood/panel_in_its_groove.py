"""How wide to cut a solid panel so that it has room in its groove or rabbet all year."""

from fractions import Fraction

from sawside.drawing.wood.moving_panel import panel_in_groove
from sawside.errors import Refusal
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.lengths.real import sign
from sawside.reckoners.declaration import Answer, Fit, Reckoner, Reckoning
from sawside.reckoners.fields import clearance, length
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

_ENOUGH = Fraction(1, 8)
_LOOSE = (
    "At its driest, less than 1/8″ of each edge stays in the groove (shop practice). Cut the "
    "groove deeper."
)
_CENTERED = (
    "Pin or spot-glue the panel at the center only. Do it top and bottom, so both edges share the "
    "movement. The frame’s own small movement isn’t figured in."
)


def compute(given, show):
    """The width to cut in inches: rounded down, since what is rounded away is room."""
    board = board_of(given)
    room = _room_at_dampest(given)
    width = show.rounded(room / board.grown, "go in")
    cut = width.mark
    held = _held(given, board, cut)
    gap = (given.opening + 2 * given.groove - cut) / 2
    kept = on_fine_marks(held, show, "be there")
    texts = [fine_text(gap, show), fine_text(given.groove, show), show.brief(kept)]
    loose = (_LOOSE,) if held < _ENOUGH else ()
    return Reckoning(
        answers={
            "width": width,
            "gap": on_fine_marks(gap, show),
            "held": kept,
            "growth": on_fine_marks(board.growth(cut), show),
            "shrinkage": on_fine_marks(board.shrinkage(cut), show),
            "wood": board_text(board),
        },
        working=(
            *board.rates,
            f"Room at its wettest: {show.number(given.opening)} + 2 × "
            f"({show.number(given.groove)} − {show.number(given.clearance)}) = "
            f"{show.number(room)}",
            f"To cut: {show.number(room)} ÷ {show.pure(board.grown)}{show.equals(width)}",
            change_line(show, board, cut, board.year.high, "To its wettest"),
            change_line(show, board, cut, board.year.low, "To its driest"),
        ),
        drawing=panel_in_groove(gap, given.groove, held, texts),
        cautions=(_CENTERED, *loose, *cautions(board)),
    )


def _room_at_dampest(given):
    """How wide the panel may get; "impossible" where the clearance leaves it nothing to be in."""
    room = given.opening + 2 * (given.groove - given.clearance)
    if room <= given.opening:
        raise Refusal(
            "impossible",
            "The clearance takes up the whole groove.",
            "Use a deeper groove or less clearance.",
            field="clearance",
        )
    return room


def _held(given, board, cut):
    """What of each edge is in the groove at its driest; "impossible" where that is nothing."""
    held = (cut - board.shrinkage(cut) - given.opening) / 2
    if sign(held) <= 0:
        raise Refusal(
            "impossible",
            "At its driest, the panel comes out of the groove.",
            "Cut the groove deeper, or split the panel with a center stile.",
            field="groove",
        )
    return held


def _room(given):
    """(field, room at both edges at the dampest, as much as it is of the panel cut today)."""
    return "clearance", 2 * given.clearance / board_of(given).grown


RECKONER = Reckoner(
    key="panel_in_its_groove",
    title="Floating panel",
    asks="How wide do I cut a solid panel so it can move?",
    words=(
        "frame and panel, raised panel, floating panel, solid panel, door panel, panel, groove, "
        "stile, rail and stile, shaker door, cabinet door, rabbet, float, gap, swell, shrink"
    ),
    order=401,
    job="wood",
    picture={
        "wood": "M3 6h15v9H9v10h9v9H3zM14 15h23v10H14z",
        "chalk": "M9 15h5v10H9zM36 30H24m3-3l-3 3 3 3",
    },
    basic=("opening", "groove", *ASKED),
    fields=(
        length(
            "opening",
            "Between the stiles",
            help="Across the panel’s grain, edge to edge of the frame.",
            least="1/2 in",
        ),
        length("groove", "Groove or rabbet depth", least="1/16 in", most="4 in"),
        clearance(
            "clearance",
            "Gap left at its wettest",
            "clearance_in_groove",
            help="At each edge, so it never pushes.",
            most="1 in",
        ),
        *WOOD,
        *MOISTURE,
    ),
    answers=(
        Answer("width", "Cut the panel", must="go in"),
        Answer("gap", "Gap at each edge now", must="agree"),
        Answer("held", "In the groove at each edge, at driest", must="be there"),
        Answer("growth", "Grows by", must="agree"),
        Answer("shrinkage", "Shrinks by", must="agree"),
        Answer("wood", "The wood and its moisture", "text"),
    ),
    source=SOURCE,
    compute=compute,
    verdict="Cut the panel ({gap} gap at each edge now)",
    example={
        "opening": "12 1/2",
        "groove": "7/16",
        "species": "maple_red",
        "now": "8",
        "year": "most",
    },
    fits=(Fit("width", _room, "less"),),
)
