"""A drawer box put together from its sizes, each checked as soon as it is known."""

from sawside.reckoners.drawers.shared.box import refused, sizes
from sawside.reckoners.drawers.shared.box.sizes import Box


def box_of(given, show):
    """The `Box` of a form; "impossible" for what can't be cut or won't go in."""
    end = given.side if given.end is None else given.end
    joint_depth = given.side / 2 if given.joint_depth is None else given.joint_depth
    refused.refuse_joints(given, end, joint_depth, show)
    board, room = sizes.board_in(given), sizes.side_room_of(given)
    above, below = sizes.rooms(given)
    refused.refuse_no_room(given, room, above + below, show)
    available = sizes.box_depth_room(given)
    slide = _slide(given, available, show)
    behind_front = _behind_front(given, available, slide, show)
    height, face_height = sizes.heights(given, board, show)
    spanning, inside_width = sizes.inside_width_of(given, joint_depth, room, show)
    into = sizes.into_front(given)
    side_length = show.rounded(behind_front.mark + into, "go in")
    inside_depth = sizes.inside_depth_of(given, end, side_length.mark - into)
    refused.refuse_too_small(given, height, inside_width, inside_depth, board, show)
    face_width = sizes.face_width_of(given, show)
    back_joint = sizes.back_joint_of(given)
    back_length, back_height = _back(given, back_joint, inside_width, height.mark, joint_depth)
    bottom = sizes.bottom_of(given, board, end, inside_width, inside_depth, show)
    box = Box(
        given=given,
        board=board,
        end=end,
        joint_depth=joint_depth,
        back_joint=back_joint,
        room=room,
        above=above,
        below=below,
        slide=slide,
        behind_front=behind_front,
        height=height,
        inside_width=inside_width,
        front_length=spanning if given.made == "applied" else face_width,
        back_length=show.rounded(back_length, "go in"),
        side_length=side_length,
        back_height=show.rounded(back_height, "go in"),
        inside_depth=inside_depth,
        bottom_width=bottom[0],
        bottom_depth=bottom[1],
        face_width=face_width,
        face_height=face_height,
    )
    refused.refuse_face(box, show)
    refused.refuse_bottom(box, show)
    return box


def _back(given, joint, inside_width, height, joint_depth):
    """(length, height) of the back."""
    low = given.up + given.bottom if given.back == "low" else 0
    return inside_width + sizes.added(joint, given, joint_depth), height - low


def _slide(given, available, show):
    """How long the slides are; None on runners."""
    if available <= 0:
        raise refused.no_depth(given, show)
    if given.runs == "wood":
        return None
    slide = sizes.longest_slide(given, available, show) if given.slide is None else given.slide
    refused.refuse_slide(given, slide, available, show)
    return slide


def _behind_front(given, available, slide, show):
    """How deep the box is behind its drawer front: as its slides, or all that goes in."""
    if given.runs == "wood":
        return show.rounded(available, "go in")
    return show.rounded(slide - (given.depth_less if given.runs == "under" else 0), "go in")
