"""A story stick as sheets of paper: the strip of its marks, or a template for rows of holes."""

from itertools import groupby

from sawside.drawing.paper.true_size import Strip, true_size_sheets

_CHECK = "Print at 100% (actual size). Check the scale bars before you use a mark."
_EDGE_ROOM = 14.0
_RULER_ROOM = 14.0
_LABEL_ROOM = 40.0


def stick_on_paper(stick, paper, unit):
    """The sheets of a stick (`story_stick`), with a running ruler in `unit` ("in" or "mm").

    A stick with holes becomes one template for each setback of its rows.
    """
    if stick["hole_mm"] is None:
        return true_size_sheets(_strip(stick), paper, unit)
    rows = sorted(stick["setbacks"], key=lambda row: row["mm"])
    return [
        sheet
        for _, same in groupby(rows, key=lambda row: row["mm"])
        for sheet in true_size_sheets(_template(stick, list(same)), paper, unit)
    ]


def _shared(stick):
    return {
        "start": stick["start"],
        "end": f"Top end: {stick['text']}",
        "length": stick["length_mm"],
        "marks": tuple((mark["name"], mark["text"], mark["at_mm"]) for mark in stick["marks"]),
    }


def _strip(stick):
    return Strip(
        title=stick["name"],
        notes=(_CHECK,),
        left=0.0,
        right=150.0,
        mark_left=0.0,
        mark_right=30.0,
        label_at=38.0,
        ruler=125.0,
        crosses=(95.0, 140.0),
        edges=((0.0, "cut along this edge"),),
        **_shared(stick),
    )


def _template(stick, rows):
    """A row of holes with an edge line on either side, so that mirrored rows use the same sheet."""
    radius, setback = stick["hole_mm"] / 2, rows[0]["mm"]
    names = " and ".join(row["name"].lower() for row in rows)
    fold = f"Fold on one edge line and hook it over the edge: the row is {rows[0]['text']} from it."
    return Strip(
        title=f"{stick['name']}, {names}",
        notes=(f"{fold} {stick['note']}".strip(), _CHECK),
        left=-(setback + _EDGE_ROOM + _RULER_ROOM),
        right=max(setback + _EDGE_ROOM, radius + 4 + _LABEL_ROOM),
        mark_left=-(radius + 2),
        mark_right=radius + 2,
        label_at=radius + 5,
        ruler=-(setback + _EDGE_ROOM + _RULER_ROOM),
        crosses=(-(setback + radius) / 2, setback + _EDGE_ROOM / 2),
        edges=((-setback, "edge"), (setback, "edge")),
        radius=radius,
        **_shared(stick),
    )
