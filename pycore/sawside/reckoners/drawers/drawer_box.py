"""A drawer box for an opening: every part with its size and joints, and the drawer front."""

from sawside.drawing.drawers.box import box_drawing
from sawside.lengths.fine import on_fine_marks
from sawside.reckoners.declaration import Answer, Fit, Reckoner, Reckoning
from sawside.reckoners.drawers.shared.box.built import box_of
from sawside.reckoners.drawers.shared.box.cautions import cautions
from sawside.reckoners.drawers.shared.box.fields import FIELDS
from sawside.reckoners.drawers.shared.box.parts import parts_of
from sawside.reckoners.drawers.shared.box.placed import drawer_in_place
from sawside.reckoners.drawers.shared.box.sizes import side_room_of
from sawside.reckoners.drawers.shared.box.working import working


def compute(given, show):
    """The box, its parts and its front, in inches; "impossible" where it doesn't go in."""
    box = box_of(given, show)
    return Reckoning(
        answers=_answers(box, show),
        working=tuple(working(box, show)),
        drawing=box_drawing(show, box),
        cautions=tuple(cautions(box, show)),
        parts=tuple(parts_of(box, show)),
        verdict=_verdict(box, show),
        fills=drawer_in_place(box),
    )


def _verdict(box, show):
    wide, deep = (show.bare(each, "go in") for each in (box.width, box.depth))
    return f"Box {wide} wide, {show.bare(box.height)} high, {deep} deep"


def _answers(box, show):
    given = box.given
    applied = {"front_length": box.front_length} if box.applied else {}
    back = {"back_height": box.back_height} if given.back == "low" else {}
    slide = {"slide": show.rounded(box.slide, "go in")} if box.slide is not None else {}
    above = {}
    if box.gap_above != box.above:
        above = {"above": on_fine_marks(box.gap_above, show)}
    return {
        "box_width": box.width,
        "box_height": box.height,
        "box_depth": box.depth,
        "side_length": box.side_length,
        **applied,
        "back_length": box.back_length,
        **back,
        "bottom_width": box.bottom_width,
        "bottom_depth": box.bottom_depth,
        "face_width": box.face_width,
        "face_height": box.face_height,
        **slide,
        **above,
    }


def _room(given):
    """(field, clearance on both sides together) of the box in its opening."""
    fields = {"slides": "side_room", "under": "inside_less", "wood": "runner_room"}
    return fields[given.runs], 2 * side_room_of(given)


RECKONER = Reckoner(
    key="drawer_box",
    title="Drawer box",
    asks="What parts do I cut for this drawer?",
    words=(
        "drawer, drawer box, drawer size, drawer slides, drawer front, drawer sides, drawer "
        "bottom, drawer runners, wooden runners, kicker, false front, inset drawer, overlay "
        "drawer, slide clearance, slide length, drawer parts, undermount slides"
    ),
    order=750,
    job="doors and drawers",
    picture={
        "wood": "M5 12h4v16H5zM31 12h4v16h-4zM8 23h24v3H8z",
        "ink": "M2 8h36v23H2z",
        "chalk": "M5 36h30m-3-3l3 3-3 3M8 33l-3 3 3 3",
    },
    basic=("width", "height", "depth", "runs", "inside_less", "below_under"),
    makes_parts=True,
    fields=FIELDS,
    answers=(
        Answer("box_width", "Box width", must="go in"),
        Answer("box_height", "Box height", must="go in"),
        Answer("box_depth", "Box depth", must="go in"),
        Answer("side_length", "Side length", must="go in"),
        Answer("front_length", "Box front length", must="go in"),
        Answer("back_length", "Back length", must="go in"),
        Answer("back_height", "Back height", must="go in"),
        Answer("bottom_width", "Bottom, side to side", must="go in"),
        Answer("bottom_depth", "Bottom, front to back", must="go in"),
        Answer("face_width", "Drawer front width", must="case"),
        Answer("face_height", "Drawer front height", must="case"),
        Answer("slide", "Slide length", must="go in"),
        Answer("above", "Gap above the box now", must="agree"),
    ),
    source=(
        "Arithmetic. Wood movement: USDA Wood Handbook, FPL-GTR-190 (2010), equations 13-2 and "
        "13-3. Common practice, no source: 1/2 in each side for slides, slides every 2 in from 10 "
        "to 28 in, under the box every 3 in from 9 to 21 in, joints and grooves of half the "
        "side’s thickness, a dowel for every 2 in."
    ),
    compute=compute,
    example={"width": "16 1/2", "height": "6", "depth": "15 1/4", "runs": "slides"},
    fits=(Fit("box_width", _room, "less"),),
)
