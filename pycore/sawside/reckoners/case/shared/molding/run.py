"""A molding around a case: the lines that its inside edge lies on, and how its pieces end.

The molding wraps what stands out furthest. Across the front that is the face frame from edge to
edge; along a side it runs from the frame's face to the wall. All corners of a case are square.
"""

from dataclasses import dataclass, replace
from fractions import Fraction

from sawside.drawing.case.molding_on_case import Around
from sawside.errors import Refusal
from sawside.geometry.molding_run import (
    RIGHT_ANGLE,
    Joint,
    Leg,
    inside_corner,
    outside_corner,
    self_return,
)
from sawside.lengths.real import Exact, sign
from sawside.reckoners.miters.shared.moldings.run_fields import SIDES
from sawside.reckoners.miters.shared.moldings.run_legs import capped

_NONE = Fraction(0)
_SHOWING = {"free": SIDES, "left": ("right",), "right": ("left",), "walls": ()}


@dataclass(frozen=True, slots=True)
class Step:
    """What goes on to a line, or off it (below 0), in inches; `field` is what to change."""

    inches: Exact
    field: str


@dataclass(frozen=True, slots=True)
class Line:
    """What the inside edge of one piece lies on: each step of it, from the case's own size on."""

    key: str
    name: str
    steps: tuple[Step, ...]
    joints: tuple[Joint, Joint]

    @property
    def inches(self):
        """How long it is."""
        return sum((step.inches for step in self.steps), _NONE)


@dataclass(frozen=True, slots=True)
class CaseRun:
    """The lines from left to right, the legs that they are with what closes a return, what the
    molding projects, the sides that show with what the frame stands past them, in inches, and how
    it is drawn."""

    lines: list[Line]
    legs: list[Leg]
    projection: Exact
    past: dict[str, Fraction]
    scribe: Fraction
    around: Around

    def must(self, leg):
        """Which way a piece has to be rounded: a cope is cut full, and what ends square at two
        walls has to go in."""
        kinds = [joint.kind for joint in leg.joints]
        if "coped" in kinds:
            return "reach"
        return "go in" if kinds == ["square"] * 2 and not self.scribe else None

    def told(self, show, leg, length):
        """A length of its piece as it is told."""
        must = self.must(leg)
        return show.rounded(length, must) if must else length


def case_run(given, show, projection):
    """The `CaseRun` of a molding that projects so far (inches); refused where it has no room."""
    showing = _SHOWING[given.built]
    frame, past = _frame_of(given, showing)
    lines = []
    for side in ("left", "front", "right"):
        if side == "front":
            lines.append(_front(given, show, projection, past, showing))
        elif side in showing:
            lines.append(_side(given, show, projection, side, frame))
    stands_off = {side: past[side] for side in showing if past[side]}
    for line in lines:
        behind_frame = frame if line.key.removesuffix("_side") in stands_off else _NONE
        _refuse_nothing(show, line, projection, behind_frame)
    around = Around(
        showing,
        tuple(side for side in SIDES if past[side]) if frame or any(past.values()) else None,
        {side: _as_drawn(given, side) for side in SIDES},
        given.molding != "strip" or bool(showing),
    )
    legs = _legs(lines, stands_off)
    return CaseRun(lines, legs, projection, stands_off, given.scribe, around)


def _legs(lines, stands_off):
    """The lines as legs, with what closes a return: from a side that the molding stands off, that
    reaches back to the case behind the packing."""
    legs = [
        Leg(line.key, line.name, number, line.inches, *line.joints)
        for number, line in enumerate(lines, 1)
    ]
    return [
        replace(leg, line=stands_off.get(leg.key.removesuffix("_self_return"), _NONE))
        if leg.is_cap
        else leg
        for leg in capped(legs)
    ]


def _as_drawn(given, side):
    kind, short = getattr(given, f"{side}_end"), getattr(given, f"{side}_short")
    return kind, bool(kind == "return" and short)


def _frame_of(given, showing):
    """(the thickness of the face frame, {side: how far it stands past the side})."""
    if given.molding == "strip":
        return _NONE, dict.fromkeys(SIDES, _NONE)
    left, frame = given.frame_left, _or(given.frame, _NONE)
    past = {"left": left, "right": _or(given.frame_right, left)}
    if showing and not frame and any(past.values()):
        raise Refusal(
            "missing",
            "The frame goes past the side, but its thickness is 0.",
            "Fill in the face frame’s thickness, or make it flush with the side.",
            field="frame",
        )
    return frame, past


def _or(value, other):
    return other if value is None else value


def _front(given, show, projection, past, showing):
    steps, joints = [Step(given.case_width, "case_width")], []
    steps += [Step(past[side], f"frame_{side}") for side in SIDES if past[side]]
    for side in SIDES:
        if side in showing:
            joints.append(outside_corner(f"{side} front corner", RIGHT_ANGLE))
            continue
        joints.append(_end_of(given, show, side))
        steps += _end_steps(given, side, projection)
    return Line("front", "Front", tuple(steps), tuple(joints))


def _side(given, show, projection, side, frame):
    steps = [Step(given.case_depth, "case_depth"), *([Step(frame, "frame")] if frame else [])]
    steps += _end_steps(given, side, projection)
    ends = _end_of(given, show, side), outside_corner(f"{side} front corner", RIGHT_ANGLE)
    joints = ends if side == "left" else ends[::-1]
    return Line(f"{side}_side", f"{side.capitalize()} side", tuple(steps), joints)


def _end_of(given, show, side):
    kind, name = getattr(given, f"{side}_end"), f"{side} end"
    if kind == "return":
        return self_return(f"{side} mitered return")
    if kind == "cope":
        return inside_corner(name, RIGHT_ANGLE, "coped")
    return Joint(name, scribe=show.text(given.scribe) if given.scribe else None)


def _end_steps(given, side, projection):
    """What the free end of the run adds to its line."""
    kind = getattr(given, f"{side}_end")
    if kind == "wall":
        return [Step(given.scribe, "scribe")] if given.scribe else []
    if kind == "cope":
        return []
    short = getattr(given, f"{side}_short")
    back = [Step(-short, f"{side}_short")] if short else []
    return [*back, Step(-projection, f"{side}_end")]


def _refuse_nothing(show, line, projection, behind_frame):
    """Refuse a line of which nothing is left on the case, or in sight between two copes; or one
    whose return would run into the edge of the face frame."""
    copes = sum(joint.kind == "coped" for joint in line.joints)
    returns = any(joint.kind == "returned" for joint in line.joints)
    left = line.inches - copes * projection - (behind_frame if returns else 0)
    if sign(left) > 0:
        return
    size = line.steps[0]
    given = sum((step.inches for step in line.steps if sign(step.inches) > 0), _NONE)
    raise Refusal(
        "impossible",
        f"{line.name}: the ends take {show.text(given - left)} of {show.text(given)}, so no "
        "molding is left.",
        "Use a smaller setback or molding, or check the size.",
        field=next((step.field for step in line.steps if step.field.endswith("short")), size.field),
    )
