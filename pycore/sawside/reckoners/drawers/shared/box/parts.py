"""The parts of a drawer box, each with its size, grain and joints."""

from sawside.drawing.drawers.part import part_drawing
from sawside.geometry.end import End
from sawside.reckoners.case.shared.carcass.as_measured import as_measured, measured_text
from sawside.reckoners.declaration import Part

_SQUARE = End("square", "0°")
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
    yield _part(show, "bottom", "Bottom", bottom, _about_bottom(box, show))
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
    elif box.back_joint != "butt":
        yield f"Joint at the back end {back} long: lay it out in {_LAID_OUT[box.back_joint]}."


def _front_corner_of_side(box, show):
    given, joint = box.given, box.given.front_joint
    deep, front = measured_text(box.joint_depth, show), measured_text(box.front_end, show)
    socket = measured_text(box.front_end - given.blind, show)
    if joint == "half_blind":
        yield f"Tails {socket} long at the front end: lay them out in Dovetail layout."
    elif not box.applied:
        if joint != "butt":
            yield f"The front end goes {socket} into the drawer front."
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


def _about_back(box, show):
    if box.given.back == "low":
        yield "Grain runs along the length. It sits on the bottom, its top flush with the sides."
    else:
        yield "Grain runs along the length. Groove as in the sides."


def _about_bottom(box, show):
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
    past = (box.face_width.mark - box.width) / 2
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
    if given.front_joint == "butt":
        yield f"The sides butt against its inside face, {where}."
    else:
        kind = "Dadoes" if past else "Rabbets"
        if given.front_joint == "half_blind":
            kind = "Dovetail sockets"
        yield (f"{kind} {deep} deep and {wide} wide for the sides, outer edges {where}.")
