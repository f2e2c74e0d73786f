"""Crown around a case or along walls as it was filled in: each piece with both of its edges."""

from dataclasses import dataclass, replace
from fractions import Fraction

from sawside.errors import Refusal
from sawside.geometry.coping_order import in_order
from sawside.geometry.molding_run import Joint, Leg, Piece, layered, self_return
from sawside.lengths.real import nearby, sign
from sawside.reckoners.fields import choice, kerf
from sawside.reckoners.miters.shared.compound.crown_cuts import CrownPiece, ends_at, grows
from sawside.reckoners.miters.shared.compound.crown_spring import Spring, spring_of
from sawside.reckoners.miters.shared.compound.saw import EDGES
from sawside.reckoners.miters.shared.moldings.run_fields import AROUND, SIDES, WALLS
from sawside.reckoners.miters.shared.moldings.run_legs import (
    Run,
    capped,
    corners_of,
    joint_at,
    names_of,
)

RUN = ("of", ("run",))
_OPEN = (RUN, ("around", ("open",)))
_STOPS = {"wall": "Square, into a wall", "return": "Mitered return"}

RUN_FIELDS = (
    replace(AROUND, shown_when=RUN),
    replace(WALLS, fields=WALLS.fields[:3], shown_when=RUN),
    choice("left_stop", "Run’s left end", _STOPS, shown_when=_OPEN),
    choice("right_stop", "Run’s right end", _STOPS, shown_when=_OPEN),
    kerf(help="To figure the stock. Measure a cut in scrap.", shown_when=RUN),
)
"""What is asked of a run, after its spring: all its inside corners are mitered."""


@dataclass(frozen=True, slots=True)
class CrownRun:
    """The `Run` of its bottom edges, and (piece as it is in plan, piece as it is cut) in the order
    of cutting."""

    spring: Spring
    run: Run
    pieces: list[tuple[Piece, CrownPiece]]


def crown_run_of(given, show):
    """The `CrownRun` that was filled in; refused where it can't be, or nothing is left of one."""
    spring = spring_of(given, show)
    if spring.width is None:
        raise Refusal(
            "missing",
            "Face width is blank, and the lengths depend on it.",
            "Fill it in.",
            field="width",
        )
    corners = corners_of(given)
    legs, cut = [], {}
    for wall, joints in enumerate(_joints(given, corners)):
        cut[wall + 1] = piece = _piece(given, show, spring, wall, joints)
        name = names_of(corners, len(given.walls), closed=given.around == "closed")[wall]
        bottom = nearby(piece.edges["bottom"])
        legs.append(Leg(f"wall_{wall + 1}", name, wall + 1, bottom, *joints))
    run = Run(given.around == "closed", corners, [], capped(legs))
    laid = in_order(layered(run.legs, [nearby(spring.projection)]), [])
    pieces = [
        (plan, _cap(given, spring, plan.leg) if plan.leg.is_cap else cut[plan.leg.wall])
        for plan in laid
    ]
    return CrownRun(spring, run, pieces)


def _joints(given, corners):
    """The (left, right) joints of each wall."""
    count, closed = len(given.walls), given.around == "closed"
    for wall in range(count):
        joints = []
        for side, corner, other in zip(SIDES, (wall - 1, wall), (wall - 1, wall + 1), strict=True):
            if closed or 0 <= other < count:
                joints.append(joint_at(corner % count, corners[corner % count]))
            elif getattr(given, f"{side}_stop") == "return":
                joints.append(self_return(f"{side} mitered return"))
            else:
                joints.append(Joint(f"{side} end"))
        yield joints


def _piece(given, show, spring, wall, joints):
    """The piece of a wall. Measured along the bottom it ends, at a return, where its top edge does,
    which is the projection further out."""
    ends, measured = ends_at(given, spring, joints), given.walls[wall].length
    returned = [joint.kind == "returned" for joint in joints]
    others = [end for end, is_return in zip(ends, returned, strict=True) if end and not is_return]
    out = [end.adds for end in others if end.kind == "outside"]
    if given.measured_on == "bottom":
        edges = {
            "bottom": measured - spring.projection * sum(returned),
            "top": measured + grows(others),
        }
        tips = measured + sum(out, Fraction(0))
    else:
        edges = {"bottom": measured - grows([end for end in ends if end]), "top": measured}
        tips = measured - sum((end.adds for end in others if end.kind == "inside"), Fraction(0))
    for edge, length in edges.items():
        if sign(length) <= 0:
            raise Refusal(
                "impossible",
                f"Nothing is left of the {EDGES[edge]}: the ends take "
                f"{show.text(measured - length)} of {show.text(measured)}.",
                "Use narrower crown, or check the wall.",
                field="walls",
                row=wall,
                part="length",
            )
    return CrownPiece(spring, ends, edges, tips)


def _cap(given, spring, leg):
    """The small piece that closes an end: its bottom edge is a point."""
    reach = spring.projection
    edges = {"bottom": Fraction(0), "top": reach}
    return CrownPiece(spring, ends_at(given, spring, leg.joints), edges, reach)
