"""Where doors stand in the opening of a case or its face frame: boxes in exact inches, as
`geometry/placed.py` says.

Rails and stiles are there from shoulder to shoulder, and of a panel what shows between them: its
edges are in their grooves.
"""

from functools import partial

from sawside.geometry.placed import Box, Fills, Placed
from sawside.reckoners.doors.shared.doors.sizes import betweens_of


def doors_in_place(given, show, doors, frame):
    """The `Fills` of doors; None where the opening is made around doors that are there already."""
    if given.known == "door":
        return None
    size = doors.across.opening, doors.up.opening
    return Fills(("width", "height"), size, partial(_placed, given, show, doors, frame))


def _placed(given, show, doors, frame, opening):
    """The `Placed` doors: inset ones flush with the front of their opening, others before it. How
    far a lipped one goes in is not asked for: it is drawn before it, too."""
    front = opening.front - (0 if given.fit == "inset" else given.thickness)
    low = opening.low + doors.up.start
    parts = {}
    for left in _lefts(show, doors.across):
        door = _Door(opening.left + left, low, front)
        for key, box in _door(given, doors, frame, door):
            parts.setdefault(key, []).append(box)
    return Placed({key: tuple(boxes) for key, boxes in parts.items()}, covers=frozenset(parts))


def _lefts(show, span):
    """The left edges of the doors, with the gaps between them as they are told."""
    left = span.start
    for between in (*betweens_of(show, span), 0):
        yield left
        left += span.cut + between


class _Door:
    """The lower left corner of a door, and its front."""

    def __init__(self, left, low, front):
        self._left, self._low, self._front = left, low, front

    def box(self, at, size, deep):
        """What begins at (x, y) in the door, is (wide, high), and goes from a depth to another."""
        left, low = self._left + at[0], self._low + at[1]
        ends = (left, left + size[0], low, low + size[1])
        return Box(*ends, self._front + deep[0], self._front + deep[1])


def _door(given, doors, frame, door):
    whole = 0, given.thickness
    if frame is None:
        yield "slab", door.box((0, 0), (doors.across.cut, doors.up.cut), whole)
        return
    for member in frame.members:
        along, across = member.shoulder, member.width
        size = (across, along) if member.upright else (along, across)
        for place in member.places:
            yield member.key, door.box(place, size, whole)
    for place in _insides(given, frame):
        deep = _panel_deep(given)
        yield "glass" if given.made == "glass" else "panel", door.box(place, frame.inside, deep)


def _insides(given, frame):
    """The lower left corner of each opening in a door's frame."""
    first = frame.stile, frame.bottom
    yield first
    if frame.middle:
        axis = 1 if given.middle == "rail" else 0
        more = [0, 0]
        more[axis] = frame.inside[axis] + frame.middle
        yield first[0] + more[0], first[1] + more[1]


def _panel_deep(given):
    """From where to where a panel is in the thickness: glass against the front of its rabbet, all
    else in the middle, as the groove."""
    front = (given.thickness - given.panel) / 2
    if given.made == "glass":
        front = given.thickness - given.deep
    return front, front + given.panel
