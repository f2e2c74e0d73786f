"""The doors of an opening, with their stiles, rails and panels; or the opening of a door."""

from sawside.drawing.doors.doors_in_opening import doors_drawing
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.words import counted
from sawside.reckoners.declaration import Answer, Fit, Reckoner, Reckoning
from sawside.reckoners.doors.shared.doors.cautions import cautions
from sawside.reckoners.doors.shared.doors.cut_list import (
    lengths_cut,
    parts_of,
    shoulders,
    slab_size,
)
from sawside.reckoners.doors.shared.doors.fields import FIELDS
from sawside.reckoners.doors.shared.doors.frame import frame_of
from sawside.reckoners.doors.shared.doors.panel import panel_of
from sawside.reckoners.doors.shared.doors.placed import doors_in_place
from sawside.reckoners.doors.shared.doors.seasons import lap_fixes
from sawside.reckoners.doors.shared.doors.sizes import doors_of, gaps_of
from sawside.reckoners.doors.shared.doors.weight import weighed
from sawside.reckoners.doors.shared.doors.working import working
from sawside.reckoners.shared.door_weight import pounds_of_door


def compute(given, show):
    """The doors' size or their opening's, the gaps that come out, and every part."""
    doors = doors_of(given, show)
    frame = frame_of(given, show, doors)
    panel = None if frame is None else panel_of(given, show, frame, doors.board)
    parts = parts_of(given, show, doors, frame, panel)
    pieces = list(weighed(given, show, doors, frame, panel))
    pounds = pounds_of_door(pieces)
    back = given.known == "door"
    return Reckoning(
        answers={
            **_size(given, doors),
            **_gaps(given, show, doors),
            **_frame(given, show, doors, frame, panel),
            **_slab(given, show, doors, frame),
            **_rough(given, doors),
            **({} if pounds is None else {"weight": pounds}),
        },
        working=tuple(working(given, show, doors, frame, panel, pieces)),
        drawing=doors_drawing(show, given, doors, frame),
        cautions=tuple(cautions(given, show, doors, frame, panel, parts)),
        parts=parts,
        main="opening_width" if back else "",
        fills=doors_in_place(given, show, doors, frame),
        verdict=_verdict(given, show, doors),
        fixes=lap_fixes(given, doors),
    )


def _verdict(given, show, doors):
    count = f", {counted(doors.count, 'door')}" if doors.count > 1 else ""
    if given.known == "door":
        return f"Opening width ({show.bare(doors.up.needs)} high{count})"
    return f"Door width ({show.bare(doors.up.size)} high{count})"


def _size(given, doors):
    if given.known == "door":
        return {"opening_width": doors.across.needs, "opening_height": doors.up.needs}
    return {"width": doors.across.size, "height": doors.up.size}


def _gaps(given, show, doors):
    """The gaps and laps as they come out, on fine marks."""
    told = gaps_of(show, doors)
    gaps = [(name, on_fine_marks(each, show)) for name, each in told if each >= 0]
    laps = [(name, on_fine_marks(-each, show)) for name, each in told if each < 0]
    answers = {key: each for key, each in (("gaps", gaps), ("laps", laps)) if each}
    if given.fit == "lipped":
        ends = [each for span in (doors.across, doors.up) for each in (span.start, span.end)]
        least = given.lip_rabbet + min(ends)
        answers["lip_gap"] = on_fine_marks(least, show)
    return answers


def _frame(given, show, doors, frame, panel):
    if frame is None:
        return {}
    between = shoulders(frame, doors.count)
    answers = {
        "rails": lengths_cut(given, frame, doors.count, upright=False),
        "stiles": lengths_cut(given, frame, doors.count, upright=True),
        **({"shoulders": between} if between else {}),
        "panel": list(zip(("Width", "Height"), panel.sizes, strict=True)),
    }
    if panel.held is not None:
        answers["panel_gap"] = on_fine_marks(panel.gap, show)
        answers["held"] = on_fine_marks(panel.held, show, "be there")
    return answers


def _slab(given, show, doors, frame):
    if frame is not None:
        return {}
    answers = {}
    if given.banding or given.trim:
        answers["slab"] = list(zip(("Width", "Height"), slab_size(given, doors), strict=True))
    if doors.grows:
        cut = getattr(doors, doors.grows).cut
        answers["growth"] = on_fine_marks(doors.board.growth(cut), show)
        answers["shrinkage"] = on_fine_marks(doors.board.shrinkage(cut), show)
    return answers


def _rough(given, doors):
    if not given.trim or given.made in ("slab", "solid"):
        return {}
    sizes = (span.cut + 2 * given.trim for span in (doors.across, doors.up))
    return {"rough": list(zip(("Width", "Height"), sizes, strict=True))}


def _room(given):
    """(field, the gaps across, as each door has a share of them) of inset doors."""
    if given.fit != "inset" or given.known != "opening":
        return None
    return "gap", (2 * given.gap + (given.doors - 1) * given.between) / given.doors


RECKONER = Reckoner(
    key="doors",
    title="Cabinet doors",
    asks="How big are the doors for this opening, and what stiles, rails and panels do I cut?",
    words=(
        "cabinet door, cabinet doors, door, doors, door size, pair of doors, double doors, inset "
        "door, inset, overlay door, full overlay, half overlay, partial overlay, frame and panel "
        "door, shaker door, cope and stick, rail and stile door, glass door, mirror door, slab "
        "door, solid door, door gap, door opening, door panel, stub tenon, mortise and tenon, half "
        "lap, door weight, weight of a door"
    ),
    order=700,
    job="doors and drawers",
    picture={
        "wood": "M4 4h15v32H4zM21 4h15v32H21z",
        "ink": "M8 9h7v22H8zM25 9h7v22h-7z",
        "chalk": "M20 2v36",
    },
    basic=("width", "height", "doors", "fit"),
    makes_parts=True,
    fields=FIELDS,
    answers=(
        Answer("width", "Door width", must="go in"),
        Answer("height", "Door height", must="go in"),
        Answer("opening_width", "Opening width", must="reach"),
        Answer("opening_height", "Opening height", must="reach"),
        Answer("gaps", "Gaps as they come out", "lengths", must="agree"),
        Answer("laps", "Laps as they come out", "lengths", must="agree"),
        Answer("lip_gap", "Gap behind the lip, at its tightest", must="agree"),
        Answer("rails", "Rails", "lengths", must="go in"),
        Answer("stiles", "Stiles", "lengths", must="go in"),
        Answer("shoulders", "Shoulder to shoulder", "lengths", must="go in"),
        Answer("panel", "Panel", "lengths", must="go in"),
        Answer("panel_gap", "Panel gap at each edge now", must="agree"),
        Answer("held", "Panel held at each edge, at driest", must="be there"),
        Answer("slab", "Slab, as cut", "lengths", must="go in"),
        Answer("growth", "Each door swells by", must="agree"),
        Answer("shrinkage", "Each door shrinks by", must="agree"),
        Answer("rough", "Glued up, before trimming", "lengths", must="agree"),
        Answer("weight", "Door weight", "weight"),
    ),
    source=(
        "Arithmetic: opening = doors + gaps, less laps; rail = door − stiles + what its joint "
        "adds; panel = inside + 2 × (groove − clearance), less what solid wood will swell "
        "(USDA Forest Products Laboratory, Wood Handbook, equation 13-2 or 13-3). Weight, before "
        "grooves: its specific gravity at 12% moisture; glass 2.5 (from memory). Common practice, "
        "no source: gaps of 3/32″ around an inset door and 1/8″ between two, a lip of 1/4″ with a "
        "3/8″ rabbet, grooves 3/8″ deep, and 1/16″ extra at each edge to plane a door to fit."
    ),
    compute=compute,
    example={"width": "31 1/2", "height": "27 3/4", "doors": "2", "fit": "inset"},
    fits=(Fit("width", _room, "less"),),
)
