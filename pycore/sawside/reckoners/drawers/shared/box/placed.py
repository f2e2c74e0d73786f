"""Where a drawer stands, shut, in the opening of a case or its face frame: boxes in exact inches,
as `geometry/placed.py` says. A part in a joint or groove reaches into its neighbor's box."""

from functools import partial

from sawside.geometry.placed import Box, Fills, Placed
from sawside.reckoners.drawers.shared.box.sizes import into_front


def drawer_in_place(box):
    """The `Fills` of a drawer."""
    given = box.given
    return Fills(("width", "height"), (given.width, given.height), partial(_placed, box))


def _placed(box, opening):
    """The `Placed` drawer, centered from side to side: its front flush with that of the opening or,
    as an overlay, before it."""
    given = box.given
    middle = (opening.left + opening.right) / 2
    low = opening.low + box.below
    behind = opening.front + (given.face if given.front == "inset" else 0)

    def wide(width):
        return middle - width / 2, middle + width / 2

    parts = dict(_boxes(box, wide, low, behind))
    return Placed(parts, covers=frozenset(parts))


def _boxes(box, wide, low, behind):
    """(key, its boxes); `behind` is the back of the drawer front, `wide` makes (left, right)."""
    given, top = box.given, low + box.height.mark
    inner = behind + (box.end if box.applied else 0)
    rear = inner + box.inside_depth
    start = behind - into_front(given)
    left, right = wide(box.width)
    clear = wide(box.inside_width)
    upright = (low, top, start, start + box.side_length.mark)
    yield "side", (Box(left, clear[0], *upright), Box(clear[1], right, *upright))
    if box.applied:
        yield "front", (Box(*wide(box.front_length.mark), low, top, behind, inner),)
    high = box.back_height.mark
    yield "back", (Box(*wide(box.back_length.mark), top - high, top, rear, rear + box.end),)
    first = inner - given.groove
    level = (low + given.up, low + given.up + given.bottom)
    across = wide(box.bottom_width.mark)
    yield "bottom", (Box(*across, *level, first, first + box.bottom_depth.mark),)
    foot = low - box.face_below
    face = (foot, foot + box.face_height.mark, behind - given.face, behind)
    yield "face", (Box(*wide(box.face_width.mark), *face),)
