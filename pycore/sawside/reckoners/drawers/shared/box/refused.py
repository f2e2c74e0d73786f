"""What no drawer box may be: too big for its opening, or with joints that go through their part."""

from fractions import Fraction

from sawside.errors import impossible
from sawside.lengths.real import sign
from sawside.reckoners.case.shared.carcass.as_measured import measured_text
from sawside.reckoners.drawers.shared.box.fields import BUTT
from sawside.reckoners.drawers.shared.box.sizes import grows, rooms

_PLANED_OFF = Fraction(1, 32)
"""What is planed off the ends of a front to make it flush. Common practice, no source."""


def refuse_joints(given, end, joint_depth, show):
    """ "impossible" where a joint goes through its part, or would show at the drawer front."""
    side, deep = measured_text(given.side, show), measured_text(joint_depth, show)
    if joint_depth >= given.side:
        raise impossible(
            f"A joint {deep} deep goes through a side that’s {side} thick.",
            "Enter a smaller depth; half the thickness is usual (shop practice).",
            "joint_depth",
        )
    if given.made == "part" and given.front_joint in ("box", "dovetail"):
        raise impossible(
            "A box joint or through dovetail would show at the drawer front.",
            "Pick half-blind dovetails, or a front screwed to the box.",
            "front_joint",
        )
    front = given.face if given.made == "part" else end
    goes_in = given.front_joint == "half_blind" or (
        given.made == "part" and given.front_joint not in BUTT
    )
    if goes_in and given.blind >= front:
        raise impossible(
            f"{measured_text(given.blind, show)} left in front of the joint is all of a front "
            f"that’s {measured_text(front, show)} thick.",
            f"Enter less than {measured_text(front, show)}.",
            "blind",
        )
    _refuse_groove(given, [given.side, front, *([end] if given.back == "full" else [])], show)


def _refuse_groove(given, parts, show):
    """ "impossible" where the groove of the bottom goes through the thinnest of its `parts`."""
    thinnest = min(parts)
    if given.groove >= thinnest:
        raise impossible(
            f"A groove {measured_text(given.groove, show)} deep goes through a part that’s "
            f"{measured_text(thinnest, show)} thick.",
            f"Enter less than {measured_text(thinnest, show)}; half of it is usual (shop "
            "practice).",
            "groove",
        )


def refuse_no_room(given, room, high, show):
    """ "impossible" where clearances and sides, or the room above and below, take it all."""
    fields = {
        "slides": ("side_room", "above"),
        "under": ("inside_less", "below_under"),
        "wood": ("runner_room", "kicker"),
    }
    wide_field, high_field = fields[given.runs]
    if room < 0:
        raise impossible(
            f"Two sides take up {show.text(2 * given.side)}, but {show.text(given.inside_less)} is "
            "all there is between the opening and the inside of the box.",
            "Use thinner sides, or check what the slide’s maker says.",
            wide_field,
        )
    if 2 * room + 2 * given.side >= given.width:
        raise impossible(
            f"The sides and their clearance take up {show.text(2 * room + 2 * given.side)}, but "
            f"the opening is {show.text(given.width)} wide.",
            "Use thinner sides, less clearance or a wider opening.",
            wide_field,
        )
    if high >= given.height:
        raise impossible(
            f"The room above and below takes up {show.text(high)}, but the opening is "
            f"{show.text(given.height)} high.",
            "Leave less room above or below.",
            high_field,
        )


def no_depth(given, show):
    """The refusal where the drawer front and the gap behind leave no depth."""
    return impossible(
        f"The gap behind and the drawer front leave no box in {show.text(given.depth)} of depth.",
        "Leave a smaller gap behind.",
        "behind",
    )


def refuse_slide(given, slide, available, show):
    """ "impossible" where the slide is longer than its room, or no common one goes in."""
    room = show.text(show.rounded(available, "stay under"))
    if slide is None:
        raise impossible(
            f"No common slide goes into {room} of depth.", "Enter the slide length.", "slide"
        )
    if slide > available:
        front = "drawer front and the " if given.front == "inset" else ""
        raise impossible(
            f"A {show.text(slide)} slide is longer than its room, {room}, which the {front}gap "
            "behind leave of the depth."
            if front
            else f"A {show.text(slide)} slide is longer than its room, {room} with the gap behind.",
            f"Use a slide of {room} or less.",
            "slide",
        )
    if given.runs == "under" and given.depth_less >= slide:
        raise impossible(
            f"{show.text(given.depth_less)} less than the slide is all of the slide, "
            f"{show.text(slide)}.",
            "Check what the slide’s maker says.",
            "depth_less",
        )


def refuse_too_small(given, height, inside_width, inside_depth, board, show):
    """ "impossible" where the box is too high for its opening, or nothing is left inside."""
    room = given.height - sum(rooms(given))
    grown = height.mark
    if grows(given):
        grown = height.mark + board.growth(height.mark)
    if sign(grown - room) > 0:
        wet = " at its wettest" if sign(grown - height.mark) > 0 else ""
        raise impossible(
            f"A box {show.text(height)} high doesn’t fit{wet}: the opening has "
            f"{show.text(show.rounded(room, 'stay under'))} for it.",
            "Enter a lower box, or leave it blank for the highest that fits.",
            "box_height",
        )
    _refuse_nothing_inside(given, height, inside_width, inside_depth, show)


def _refuse_nothing_inside(given, height, inside_width, inside_depth, show):
    if inside_width <= 0:
        raise impossible(
            "The sides and their clearance leave nothing inside the box.",
            "Use thinner sides or less clearance.",
            "side",
        )
    if inside_depth <= 0:
        raise impossible(
            "The box’s front and back leave nothing inside.",
            "Use thinner parts, a longer slide or a deeper case.",
            "depth" if given.runs == "wood" else "slide",
        )
    if given.up + given.bottom >= height.mark:
        raise impossible(
            f"The bottom and what’s below its groove take up {show.text(given.up + given.bottom)} "
            f"of a box {show.text(height)} high.",
            "Put the groove lower, or use a thinner bottom or a higher box.",
            "up",
        )


def refuse_face(box, show):
    """ "impossible" where the drawer front is lower or narrower than the box behind it."""
    field = "gap" if box.given.front == "inset" else "lap"
    if not box.applied and box.given.front_joint == "half_blind" and box.past_sides > _PLANED_OFF:
        past = show.text(box.past_sides)
        raise impossible(
            f"Tails can’t slide in: the front goes {past} past each side, so its sockets are "
            "closed at both ends.",
            "Pick a front screwed to the box, a rabbet, or an inset front on wooden runners.",
            "front_joint",
        )
    if box.face_height.mark < box.height.mark:
        raise impossible(
            f"The front, {show.text(box.face_height)} high, is lower than the box, "
            f"{show.text(box.height)}.",
            "Leave a smaller gap around the front, or more room above or below the box.",
            field,
        )
    if box.face_width.mark < box.width:
        raise impossible(
            f"The front, {show.text(box.face_width)} wide, is narrower than the box, "
            f"{show.brief(box.width)}.",
            "Leave a smaller gap around the front, or more clearance at the sides.",
            field,
        )
    _refuse_past_the_face(box, field)


def _refuse_past_the_face(box, field):
    """ "impossible" where an edge of the box would be seen above or below the drawer front."""
    low = -box.face_below
    if low > 0 or box.face_height.mark + low < box.height.mark:
        edge = "bottom" if low > 0 else "top"
        raise impossible(
            f"The {edge} edge of the box would show past the front.",
            f"Leave more room {'below' if low > 0 else 'above'} the box, or a smaller gap around "
            "the front.",
            field,
        )


def refuse_bottom(box, show):
    """ "impossible" where the bottom falls out of its grooves when it is pushed all to one side, or
    to the front; at its driest where it is solid."""
    given = box.given
    if box.bottom_width.mark <= box.inside_width + given.groove:
        raise impossible(
            f"With {measured_text(given.bottom_room, show)} of room, the bottom could drop out of "
            f"grooves {measured_text(given.groove, show)} deep.",
            "Leave less room in the grooves, or cut them deeper.",
            "bottom_room",
        )
    if sign(driest_depth(box) - box.inside_depth - given.groove) <= 0:
        raise impossible(
            "At its driest, the bottom comes out at the back: it’s held at the front.",
            "Cut the grooves deeper, use a thicker back, or use a sheet bottom.",
            "groove",
        )


def driest_depth(box):
    """How deep the bottom is, front to back, at its driest."""
    deep = box.bottom_depth.mark
    return deep - box.board.shrinkage(deep) if box.moves else deep
