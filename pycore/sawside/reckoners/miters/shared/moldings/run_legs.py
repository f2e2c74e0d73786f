"""A run as it was filled in: its corners, what goes up first, and the legs that follow from it."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.geometry.coping_order import groups_of
from sawside.geometry.molding_run import Joint, Leg, inside_corner, outside_corner, self_return
from sawside.lengths.show import angle_text
from sawside.reckoners.miters.shared.corner_field import FLATTEST, corner_of
from sawside.reckoners.miters.shared.moldings.run_fields import SIDES

_MOST_OFF = 10
"""Degrees by which measured corners around a loop may fail to add up before it is refused."""
_FLATTEST_COPE = 150
"""In degrees: past it a cope runs out to more than 1 3/4 times the projection, a knife edge."""
_INSIDE = "Read it inside the room, or choose Outside."
_OF_THREE = {
    "outside": ("Left return", "Front", "Right return"),
    "inside": ("Left wall", "Back wall", "Right wall"),
}


@dataclass(frozen=True, slots=True)
class Corner:
    """The corner behind a wall: "inside" or "outside", its degrees as they are told, the joint."""

    turn: str
    degrees: Fraction
    is_coped: bool

    @property
    def turned(self):
        """How far the run turns there, in degrees: above 0 where it is an inside corner."""
        way = 1 if self.turn == "inside" else -1
        return way * (180 - self.degrees)


@dataclass(frozen=True, slots=True)
class Run:
    """The corners from left to right, the groups of walls in the order in which they go up, and
    the legs at the back of the first layer."""

    closed: bool
    corners: list[Corner]
    groups: list[list[int]]
    legs: list[Leg]


def run_of(given, show):
    """The `Run` that was filled in; refused where it can't be."""
    corners = corners_of(given)
    groups = groups_of([corner.is_coped for corner in corners], len(given.walls), _first(given))
    legs = _legs(given, show, corners, groups)
    return Run(given.around == "closed", corners, groups, legs)


def corners_of(given):
    """The corners from left to right; refused where they can't close a loop that is one."""
    walls, closed = given.walls, given.around == "closed"
    if closed and len(walls) < 3:
        raise Refusal(
            "impossible",
            f"All around takes at least 3 walls, and {len(walls)} "
            f"{'is' if len(walls) == 1 else 'are'} filled in.",
            "Add walls, or choose End to end.",
            field="walls",
        )
    turning = walls if closed else walls[:-1]
    corners = [_corner(wall, row) for row, wall in enumerate(turning)]
    if closed:
        _check_turns(corners)
    return corners


def names_of(corners, walls, *, closed):
    """What each wall's piece is called: the sides of a case and of an alcove have their words."""
    turns = {corner.turn for corner in corners}
    if walls == 3 and not closed and len(turns) == 1:
        return _OF_THREE[turns.pop()]
    return tuple(f"Wall {number}" for number in range(1, walls + 1))


def _corner(wall, row):
    outside = wall.turn == "outside"
    place = {"field": "walls", "row": row, "part": "corner"}
    degrees = corner_of(wall, "corner", most=FLATTEST, outside=outside, instead=_INSIDE, **place)
    joint = getattr(wall, "joint", None)  # crown is asked for without
    corner = Corner(wall.turn, degrees, not outside and joint == "cope")
    if corner.is_coped and degrees > _FLATTEST_COPE:
        raise Refusal(
            "impossible",
            f"A corner of {angle_text(degrees)} is too flat to cope: it would end in a knife edge.",
            "Choose Miter at that corner.",
            **place | {"part": "joint"},
        )
    return corner


def _check_turns(corners):
    total = abs(sum(corner.turned for corner in corners))
    if abs(total - 360) > _MOST_OFF:
        raise Refusal(
            "impossible",
            "Going all around, these corners turn "
            f"{angle_text(total)}, and they have to turn 360°.",
            "Check each corner, inside or outside, and its angle. Or choose End to end.",
            field="walls",
        )


def _first(given):
    """The wall (from 0) that was asked to go up first, or None."""
    count = len(given.walls)
    if given.first is not None and given.first > count:
        raise Refusal(
            "impossible",
            f"There’s no wall {given.first}: {count} {'is' if count == 1 else 'are'} filled in.",
            f"Use a number from 1 to {count}.",
            field="first",
        )
    return None if given.first is None else given.first - 1


def _legs(given, show, corners, groups):
    walls = given.walls
    count, closed = len(walls), given.around == "closed"
    rank = {wall: place for group in groups for place, wall in enumerate(group)}
    names = names_of(corners, count, closed=closed)
    ends = {} if closed else {side: _end(given, show, side) for side in SIDES}
    legs = []
    for wall in range(count):
        joints, changes = [], []
        for side, corner, other in (("left", wall - 1, wall - 1), ("right", wall, wall + 1)):
            if closed or 0 <= other < count:
                later = rank[wall] > rank[other % count]
                joints.append(joint_at(corner % count, corners[corner % count], later))
            else:
                joint, change = ends[side]
                joints.append(joint)
                changes.append(change)
        line = _line(show, walls[wall].length, changes, wall)
        legs.append(Leg(f"wall_{wall + 1}", names[wall], wall + 1, line, *joints))
    return capped(legs)


def joint_at(number, corner, later=False):
    """The joint at a corner (from 0); `later` says that its piece goes up later than the other."""
    name = f"corner {number + 1}"
    if corner.turn == "outside":
        return outside_corner(name, corner.degrees)
    kind = ("coped" if later else "butted") if corner.is_coped else "mitered"
    return inside_corner(name, corner.degrees, kind)


def _end(given, show, side):
    """(the joint of an end of the run, (what it adds to the wall, what takes that))."""
    kind, scribe, board, scarf = (
        getattr(given, f"{side}_{each}") for each in ("end", "scribe", "board", "scarf")
    )
    total = sum(layer.projection for layer in given.layers)
    name = f"{side} end"
    if kind == "return":
        return self_return(f"{side} mitered return"), (
            -total,
            "the mitered return, with all layers,",
        )
    if kind == "scarf":
        return Joint(name, "scarfed", scarf), (Fraction(0), "")
    scribe = scribe or Fraction(0)
    joint = Joint(name, scribe=show.text(scribe) if scribe else None)
    return joint, (scribe - (board or 0), "the board on the wall")


def _line(show, length, changes, wall):
    """How long a wall's piece is at the wall, of what its ends add and take."""
    line = length + sum(change for change, _ in changes)
    if line <= 0:
        change, what = min(changes)
        raise Refusal(
            "impossible",
            f"A length of {show.text(length)} leaves nothing after {what} at {show.text(-change)}.",
            f"Use a length over {show.text(length - line)}, or another end there.",
            field="walls",
            row=wall,
            part="length",
        )
    return line


def capped(legs):
    """The legs with the small pieces that close a mitered return."""
    free, none = Joint("end at the wall"), Fraction(0)
    first, last = legs[0], legs[-1]
    for side, leg, far in (("left", first, first.left), ("right", last, last.right)):
        if far.kind != "returned":
            continue
        joints = (free, far) if side == "left" else (far, free)
        name = f"{side.capitalize()} mitered return"
        cap = Leg(f"{side}_self_return", name, leg.wall, none, *joints, is_cap=True)
        legs = [cap, *legs] if side == "left" else [*legs, cap]
    return legs
