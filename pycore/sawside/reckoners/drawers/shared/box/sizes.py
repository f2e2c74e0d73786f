"""The sizes of a drawer box, from its opening to every part. Inches.

What must go in is cut down to a mark, and what is fitted to it is worked out from that mark: so the
told parts go together. The front of a box that is the drawer front itself is its `face`.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.lengths.fine import on_fine_marks
from sawside.lengths.marks import Rounded
from sawside.lengths.units import INCHES_PER, METRIC
from sawside.reckoners.drawers.shared.box.fields import BETWEEN, BUTT
from sawside.reckoners.wood.shared.moisture_fields import Board, board_of

_ZERO, _ONE = Fraction(0), Fraction(1)
_SLIDES_SOLD = {
    "slides": {False: range(28, 9, -2), True: range(700, 249, -50)},
    "under": {False: range(21, 8, -3), True: range(600, 249, -50)},
}
"""By where they go and whether it is metric, longest first: at the sides every 2 in, under the box
every 3 in; or 50 mm. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Box:
    """A box with its opening's numbers in `given`; each cut length with its mark."""

    given: object
    board: Board | None
    end: Fraction
    joint_depth: Fraction
    back_joint: str
    room: Fraction
    above: Fraction
    below: Fraction
    slide: Fraction | None
    behind_front: Rounded
    height: Rounded
    inside_width: Fraction
    front_length: Rounded
    back_length: Rounded
    side_length: Rounded
    back_height: Rounded
    inside_depth: Fraction
    bottom_width: Rounded
    bottom_depth: Rounded
    face_width: Rounded
    face_height: Rounded

    @property
    def applied(self):
        """Whether the box has a front of its own behind the drawer front."""
        return self.given.made == "applied"

    @property
    def front_end(self):
        """How thick the front of the box is."""
        return self.end if self.applied else self.given.face

    @property
    def width(self):
        """Over the sides."""
        return self.inside_width + 2 * self.given.side

    @property
    def depth(self):
        """Over all, with the drawer front only where it is part of the box."""
        behind_front = self.side_length.mark - into_front(self.given)
        return behind_front + (0 if self.applied else self.given.face)

    @property
    def gap_above(self):
        """From the box as it is now to the top of the opening."""
        return self.given.height - self.below - self.height.mark

    @property
    def face_below(self):
        """How far the drawer front reaches below the box."""
        if self.given.front == "overlay":
            return self.below + lap_high(self.given)
        return self.below - self.given.gap if self.given.runs != "wood" else _ZERO

    @property
    def past_sides(self):
        """How far the drawer front reaches past each side."""
        return (self.face_width.mark - self.width) / 2

    @property
    def moves(self):
        """Whether the bottom is solid wood."""
        return moves(self.given)

    @property
    def grows(self):
        """Whether sides, front and back are solid wood."""
        return grows(self.given)


def moves(given):
    """Whether the bottom is solid wood."""
    return given.solid in ("bottom", "both")


def grows(given):
    """Whether sides, front and back are solid wood."""
    return given.solid in ("box", "both")


def added(joint, given, joint_depth):
    """How much longer a front or back is than the box is wide inside."""
    if joint not in BETWEEN:
        return 2 * given.side
    return _ZERO if joint in BUTT else 2 * joint_depth


def into_front(given):
    """How much longer a side is than the box behind the drawer front: it goes into that one, or
    ends short of the outer face of the box's own front (below 0)."""
    if given.made == "part":
        return _ZERO if given.front_joint in BUTT else given.face - given.blind
    return -given.blind if given.front_joint == "half_blind" else _ZERO


def growth_of(board):
    """How many times as wide solid wood gets at its wettest."""
    return _ONE if board is None else board.grown


def box_depth_room(given):
    """What of the depth a box may take behind the drawer front."""
    return given.depth - given.behind - (given.face if given.front == "inset" else 0)


def longest_slide(given, available, show):
    """The longest common slide that goes in; None where none does."""
    metric = show.settings.unit in METRIC
    unit = INCHES_PER["mm"] if metric else _ONE
    sold = _SLIDES_SOLD[given.runs][metric]
    return next((each * unit for each in sold if each * unit <= available), None)


def heights(given, board, show):
    """(height of the box, height of the drawer front), by the season where they are solid."""
    grown = growth_of(board if grows(given) else None)
    above, below = rooms(given)
    high = show.rounded((given.height - above - below) / grown, "go in")
    if given.box_height is not None:
        high = show.rounded(given.box_height, "go in")
    if given.front == "overlay":
        return high, show.rounded(given.height + 2 * lap_high(given))
    free = above if given.runs == "wood" else 2 * given.gap
    return high, show.rounded((given.height - free) / grown, "go in")


def lap_high(given):
    """How far an overlay front laps the opening at top and bottom."""
    return given.lap if given.lap_high is None else given.lap_high


def rooms(given):
    """(room above the box, room below it); on runners it stands on what carries it."""
    if given.runs == "wood":
        return given.kicker, _ZERO
    return given.above, given.below_under if given.runs == "under" else given.below


def side_room_of(given):
    """The clearance at each side of the box; below 0 where its sides are too thick for slides under
    it, whose maker gives the width inside."""
    if given.runs == "under":
        return given.inside_less / 2 - given.side
    return given.side_room if given.runs == "slides" else given.runner_room


def front_gap(given):
    """The gap at each side of an inset front: on runners it's as wide as its box."""
    return given.runner_room if given.runs == "wood" else given.gap


def board_in(given):
    """The solid wood of a form, or None."""
    return None if given.solid == "none" else board_of(given)


def inside_width_of(given, joint_depth, room, show):
    """(length of what spans the box, clear width): its front, or the back where that is alone."""
    joint = given.front_joint if given.made == "applied" else back_joint_of(given)
    add = added(joint, given, joint_depth)
    spanning = show.rounded(given.width - 2 * room - 2 * given.side + add, "go in")
    return spanning, spanning.mark - add


def back_joint_of(given):
    """The joint of the back: that of the front, through where that is half-blind."""
    if given.back_joint != "same":
        return given.back_joint
    return "dovetail" if given.front_joint == "half_blind" else given.front_joint


def inside_depth_of(given, end, behind_front):
    """From the inside face of the front to that of the back."""
    back_in = given.back_in if back_joint_of(given) == "dado" else _ZERO
    return behind_front - (end if given.made == "applied" else 0) - end - back_in


def bottom_of(given, board, end, inside_width, inside_depth, show):
    """(width, depth) of the bottom: sheet, or solid with its grain from side to side."""
    wide = inside_width + 2 * given.groove - given.bottom_room
    width = show.rounded(wide, "go in")
    if width.mark <= inside_width + given.groove:  # a coarse mark would let it drop out
        width = on_fine_marks(wide, show, "go in")
    grown = growth_of(board if moves(given) else None)
    back = end if given.back == "low" else given.groove - given.bottom_room
    return width, show.rounded((inside_depth + given.groove + back) / grown, "go in")


def face_width_of(given, show):
    """The width of the drawer front."""
    if given.front == "inset":
        return show.rounded(given.width - 2 * front_gap(given), "go in")
    return show.rounded(given.width + 2 * given.lap)
