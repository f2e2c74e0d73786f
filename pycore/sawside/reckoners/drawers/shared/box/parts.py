"""The parts of a drawer box, each with its size, grain and joints."""

from sawside.drawing.drawers.part import part_drawing
from sawside.geometry.end import End
from sawside.reckoners.case.shared.carcass.as_measured import as_measured, measured_text
from sawside.reckoners.declaration import Part
from sawside.reckoners.drawers.shared.box.dowels import dowels_of
from sawside.reckoners.drawers.shared.box.fields import BUTT

_SQUARE = End("square", "0°")
_PROUD = "Cut it longer by what Box joint adds for proud pins."
_LAID_OUT = {"box": "Box joint", "dovetail": "Dovetail layout", "half_blind": "Dovetail layout"}


def parts_of(box, show):
    """Every part to cut: sides, front, back, bottom, and an applied drawer front."""
    given, high = box.given, box.height
    sides = (box.side_length, high, given.side)
    yield _part(show, "side", "Side", sides, _about_side(box, show), count=2)
    if box.applied:
        front = (box.front_length, high, box.end)
        yield _part(show, "front", "Box front", front, _about_front(box, show))
    back = (box.back_length, box.back_height, box.end)
    yield _part(show, "back", "Back", back, _about_back(box, show))
    bottom = (box.bottom_width, box.bottom_depth, given.bottom)
    yield _part(show, "bottom", "Bottom", bottom, _about_bottom(box))
    face = (box.face_width, box.face_height, given.face)
    yield _part(show, "face", "Drawer front", face, _about_face(box, show))


def _part(show, key, name, size, about, count=1):
    length, width, thickness = size
    return Part(
        key=key,
        name=name,
        length=length,
        width=width,
        thickness=as_measured(thickness, show),
        count=count,
        left=_SQUARE,
        right=_SQUARE,
        drawing=part_drawing(show, name, length, width),
        about=tuple(about),
    )


def _groove(box, show):
    given = box.given
    wide, deep, up = (measured_text(each, show) for each in (given.bottom, given.groove, given.up))
    return f"Groove {wide} wide, {deep} deep in the inside face, {up} up from the bottom edge."


def _about_side(box, show):
    given = box.given
    yield "Grain runs along the length. Make a left and a right one."
    yield _groove(box, show)
    deep, back = measured_text(box.joint_depth, show), measured_text(box.end, show)
    if box.applied and box.back_joint == given.front_joint == "rabbet":
        yield f"Rabbets {back} wide, {deep} deep in the inside face, across both ends."
        return
    yield from _front_corner_of_side(box, show)
    if box.back_joint == "rabbet":
        yield f"Rabbet {back} wide, {deep} deep in the inside face, across the back end."
    elif box.back_joint == "dado":
        past = measured_text(given.back_in, show)
        yield (
            f"Dado {back} wide, {deep} deep in the inside face, its back edge {past} from the back "
            "end."
        )
    elif box.back_joint == "dowel":
        yield _doweled(box, show, _back_dowels(box, show), "back")
    elif box.back_joint in _LAID_OUT:
        low = f", from the top edge, on {show.brief(box.back_height)} only"
        yield (
            f"Joint at the back end {back} long: lay it out in {_LAID_OUT[box.back_joint]}"
            f"{low if given.back == 'low' else ''}."
        )
    if "box" in (given.front_joint, box.back_joint):
        yield _PROUD


def _back_dowels(box, show):
    return dowels_of(box.given.side, box.end, box.back_height.mark, show)


def _front_dowels(box, show):
    """Those of the box's own front, or of the drawer front that is part of the box."""
    given = box.given
    face, end = (given.side, box.end) if box.applied else (given.face, given.side)
    return dowels_of(face, end, box.height.mark, show)


def _doweled(box, show, dowels, end):
    deep, center = (measured_text(each, show) for each in (dowels.face_hole, box.end / 2))
    return (
        f"{dowels.told(show)} at the {end} corner: holes {deep} deep in the inside face, centers "
        f"{center} from the {end} end, clear of the groove."
    )


def _front_corner_of_side(box, show):
    given, joint = box.given, box.given.front_joint
    deep, front = measured_text(box.joint_depth, show), measured_text(box.front_end, show)
    socket = measured_text(box.front_end - given.blind, show)
    if joint == "half_blind":
        yield f"Tails {socket} long at the front end: lay them out in Dovetail layout."
    elif not box.applied and joint == "dowel":
        dowels = _front_dowels(box, show)
        hole = measured_text(dowels.end_hole, show)
        yield f"{dowels.told(show)} at the front corner: holes {hole} deep in the front end."
    elif not box.applied:
        if joint != "butt":
            yield f"The front end goes {socket} into the drawer front."
    elif joint == "dowel":
        yield _doweled(box, show, _front_dowels(box, show), "front")
    elif joint == "rabbet":
        yield f"Rabbet {front} wide, {deep} deep in the inside face, across the front end."
    elif joint == "dado":
        half = measured_text(box.end / 2, show)
        yield (
            f"Dado {half} wide, {deep} deep in the inside face, its front edge {half} from the "
            "front end."
        )
    elif joint != "butt":
        yield f"Joint at the front end {front} long: lay it out in {_LAID_OUT[joint]}."


def _about_front(box, show):
    yield "Grain runs along the length. Groove as in the sides."
    joint = box.given.front_joint
    if joint == "dado":
        half, deep = measured_text(box.end / 2, show), measured_text(box.joint_depth, show)
        yield f"Tongue {half} thick, {deep} long at both ends, along the inside face."
    elif joint in _LAID_OUT:
        deep = box.end - box.given.blind if joint == "half_blind" else box.given.side
        how = "deep" if joint == "half_blind" else "long"
        yield f"Joint {measured_text(deep, show)} {how} at both ends: see the sides."
    elif joint == "dowel":
        yield _in_both_ends(show, _front_dowels(box, show))
    if joint == "box":
        yield _PROUD


def _in_both_ends(show, dowels):
    deep = measured_text(dowels.end_hole, show)
    return f"Dowel holes {deep} deep in both ends: see the sides."


def _about_back(box, show):
    if box.given.back == "low":
        yield "Grain runs along the length. It sits on the bottom, its top flush with the sides."
    else:
        yield "Grain runs along the length. Groove as in the sides."
    if box.back_joint == "dowel":
        yield _in_both_ends(show, _back_dowels(box, show))
    if box.back_joint == "box":
        yield _PROUD


def _about_bottom(box):
    given = box.given
    if box.moves:
        yield "Grain runs from side to side, along the length, so it moves front to back."
        hold = "Glue it at the front only"
        yield (
            f"{hold}, with a slotted screw hole up into the back."
            if given.back == "low"
            else f"{hold}, so it can move into the back groove."
        )
    elif given.back == "low":
        yield "Slide it in from the back, flush with the back’s outside, and fasten it there."
    else:
        yield "Put it in before you close the last corner."


def _about_face(box, show):
    given = box.given
    if box.applied:
        yield "Grain runs along the length. Screw it on from inside once the drawer runs."
        return
    yield "Grain runs along the length."
    past = box.past_sides
    where = f"{measured_text(past, show)} from both ends" if past else "at both ends"
    deep, wide = (measured_text(each, show) for each in (given.face - given.blind, given.side))
    up = measured_text(given.up + box.face_below, show)
    size = ", ".join(
        f"{measured_text(each, show)} {way}"
        for each, way in (
            (given.bottom, "wide"),
            (given.groove, "deep"),
            (box.inside_width + 2 * given.groove, "long"),
        )
    )
    yield f"Stopped groove {size}, centered in the inside face, {up} up from the bottom edge."
    if given.front_joint in BUTT:
        yield f"The sides butt against its inside face, {where}."
    else:
        kind = "Dadoes" if past else "Rabbets"
        if given.front_joint == "half_blind":
            kind = "Dovetail sockets"
        yield (f"{kind} {deep} deep and {wide} wide for the sides, outer edges {where}.")
        if given.front_joint != "half_blind":
            yield from _stopped(box, show)
    if given.front_joint == "dowel":
        hole = measured_text(_front_dowels(box, show).face_hole, show)
        yield f"Dowel holes {hole} deep in the inside face, as in the sides’ front ends."


def _stopped(box, show):
    """Where the dadoes for the sides stop, so that none shows at an edge of a higher front."""
    low, high = box.face_below, box.face_below + box.height.mark
    ends = [measured_text(each, show) for each in (low, high)]
    if low > 0 and high < box.face_height.mark:
        yield f"Stop them {ends[0]} and {ends[1]} up from the bottom edge."
    elif high < box.face_height.mark:
        yield f"Stop them {ends[1]} up from the bottom edge."
    elif low > 0:
        yield f"Stop them {ends[0]} up from the bottom edge."
