"""Several drawers in one opening: the heights of their fronts, equal or graduated, and boxes."""

from sawside.drawing.drawers.column import column_drawing
from sawside.lengths.fine import on_fine_marks
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.drawers.shared.column.fields import FIELDS
from sawside.reckoners.drawers.shared.column.heights import boxes_of, column_of
from sawside.reckoners.drawers.shared.column.working import working
from sawside.reckoners.shared.numbered import numbered

_WEIGHT = (
    "Open one loaded drawer at a time until the case is fastened to a wall stud. Put the heaviest "
    "things in the bottom drawer."
)


def compute(given, show):
    """The fronts from the top down, where their edges go, openings between rails, and boxes."""
    column = column_of(given, show)
    boxes = boxes_of(given, column, show)
    fronts = [on_fine_marks(each, show, "go in") for each in column.fronts]
    openings = {}
    if given.divided == "rails":
        clear = [on_fine_marks(each, show) for each in column.openings]
        openings = {"openings": numbered("Opening", clear)}
    tops = [on_fine_marks(each, show) for each in column.tops[1:]]
    marks = [(f"Front {number}", each) for number, each in enumerate(tops, 2)]
    return Reckoning(
        answers={
            "fronts": numbered("Front", fronts),
            "marks": marks,
            **openings,
            "boxes": numbered("Box", boxes),
        },
        working=tuple(working(given, column, show)),
        drawing=column_drawing(show, given, column),
        cautions=(_WEIGHT,),
        verdict=_verdict(given, fronts, show),
    )


def _verdict(given, fronts, show):
    texts = list(dict.fromkeys(show.bare(each) for each in (fronts[0], fronts[-1])))
    return f"{given.drawers} fronts, {' down to '.join(texts)}"


RECKONER = Reckoner(
    key="drawer_column",
    title="Drawer heights",
    asks="How high is each drawer in a stack?",
    words=(
        "drawer heights, drawer front heights, stack of drawers, bank of drawers, column of "
        "drawers, chest of drawers, graduated drawers, equal drawers, drawer fronts, drawer "
        "spacing, drawer rails, several drawers"
    ),
    order=760,
    job="doors and drawers",
    picture={
        "wood": "M8 4h18v7H8zM8 13h18v9H8zM8 24h18v12H8z",
        "ink": "M15 7.5h4M15 17.5h4M15 30h4",
        "chalk": "M33 4v7M33 13v9M33 24v12",
    },
    basic=("height", "drawers", "layout", "step", "percent", "heights"),
    fields=FIELDS,
    answers=(
        Answer("fronts", "Front heights, from the top", "lengths", must="go in"),
        Answer("marks", "Top edges, from that of the top front", "lengths", must="agree"),
        Answer("openings", "Openings, from the top", "lengths", must="agree"),
        Answer("boxes", "Box heights, from the top", "lengths", must="go in"),
    ),
    source=(
        "Arithmetic: opening = fronts + gaps or rails − overlays; fronts alike, or in an "
        "arithmetic or geometric series. Edges on marks from one end, so nothing adds up. The "
        "room around a box: common practice, no source; slides and their makers differ."
    ),
    compute=compute,
    example={"height": "26 1/2", "drawers": "4", "layout": "step", "step": "1"},
)
