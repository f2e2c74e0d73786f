"""A strip on the edge of a panel as it was filled in: how its ends meet others, and its lengths.

A mitered end adds thickness x tan(90 - corner / 2) to the face (in an inside corner it takes that
off), and nothing at the panel. An end that runs over its neighbor adds the neighbor's thickness to
both. A chamfer is made last: the strip is cut so long that its panel side still reaches past it.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.drawing.choices.ends import STRIP_ENDS
from sawside.drawing.miters.edge_piece import EdgeCut
from sawside.errors import Refusal
from sawside.geometry.angles import tangent
from sawside.geometry.miter import allowance, half_corner
from sawside.lengths.real import Exact
from sawside.lengths.show import angle_text
from sawside.reckoners.fields import choice, length
from sawside.reckoners.miters.shared.corner_field import FLATTEST, corner_field, corner_of
from sawside.reckoners.miters.shared.field_bounds import STRIP

_ENDS = {
    "miter": "Mitered to the next strip",
    "inside": "Mitered into an inside corner",
    "over": "Laps the next strip",
    "chamfer": "Laps the next strip, corner chamfered",
    "flush": "Flush with the panel, or butts the next strip",
}
_NOTCH = f"Read it inside the panel’s notch, or choose {_ENDS['miter']}."
_NONE = Fraction(0)


@dataclass(frozen=True, slots=True)
class StripEnd:
    """What an end adds to the strip at the panel, how the face differs from that, and the line of
    working for it."""

    at_panel: Fraction
    cut: EdgeCut
    worked: str


@dataclass(frozen=True, slots=True)
class Strip:
    """Inches at the panel, at the face, and as it is cut, before a chamfer."""

    ends: list[StripEnd]
    back: Exact
    face: Exact
    to_cut: Exact

    @property
    def cuts(self):
        """How both ends are cut."""
        return [end.cut for end in self.ends]

    @property
    def short_side(self):
        """The shorter of face and panel side."""
        return self.face if self.face < self.back else self.back


def end_fields(side):
    """The fields of the "left" or the "right" end."""
    name, end = side.capitalize(), f"{side}_end"
    return (
        choice(end, f"{name} end", _ENDS, pictures=STRIP_ENDS[side]),
        corner_field(
            f"{side}_corner",
            f"{name} corner",
            "the panel’s two edges",
            least=30,
            shown_when=(end, ("miter", "inside")),
        ),
        length(
            f"{side}_chamfer",
            f"{name} chamfer",
            **STRIP,
            help="Setback along the face.",
            shown_when=(end, ("chamfer",)),
        ),
    )


ASKED = tuple(
    f"{side}_{each}" for side in ("left", "right") for each in ("end", "corner", "chamfer")
)
"""The keys of the fields of both ends."""


def strip_of(given, show):
    """The `Strip` that was filled in.

    Raises `Refusal` for a chamfer that goes through the strip, and where no face is left.
    """
    ends = [_end_of(given, show, side) for side in ("left", "right")]
    back = given.panel + ends[0].at_panel + ends[1].at_panel
    adds = [end.cut.adds for end in ends]
    face = back + adds[0] + adds[1]
    if face <= 0:
        raise Refusal(
            "impossible",
            f"Nothing is left of the face of a strip {show.text(back)} long.",
            "Use a thinner strip or smaller chamfers, or check Panel edge.",
            field="panel",
        )
    return Strip(ends, back, face, back + sum((each for each in adds if each > 0), _NONE))


def _end_of(given, show, side):
    """One end as it was filled in."""
    kind, name = getattr(given, f"{side}_end"), f"{side.capitalize()} end"
    inside = kind == "inside"
    corner = corner_of(given, f"{side}_corner", most=FLATTEST, outside=not inside, instead=_NOTCH)
    if corner is not None:
        return _mitered(given, show, name, corner, inside)
    if kind == "flush":
        return StripEnd(_NONE, EdgeCut(_NONE, _NONE), f"{name}: flush with the panel, adds 0")
    neighbor = given.thickness if given.neighbor is None else given.neighbor
    over = f"{name}: laps the next strip, adds its {show.number(neighbor)}"
    if kind == "over":
        return StripEnd(neighbor, EdgeCut(_NONE, _NONE), over)
    return _chamfered(given, show, side, neighbor, over)


def _mitered(given, show, name, corner, inside):
    degrees = half_corner(corner)
    adds = allowance(given.thickness, degrees)
    worked = (
        f"{name}: miter 90 − {show.pure(corner)} ÷ 2 = {angle_text(degrees)}; "
        f"{show.number(given.thickness)} × tan {show.pure(degrees)}°{show.equals(adds)}"
    )
    way = -1 if inside else 1
    return StripEnd(_NONE, EdgeCut(way * degrees, way * adds), worked)


def _chamfered(given, show, side, neighbor, over):
    chamfer, turn = getattr(given, f"{side}_chamfer"), given.chamfer_angle
    deep = chamfer * tangent(turn)
    if deep >= given.thickness:
        raise Refusal(
            "impossible",
            f"A chamfer set back {show.text(chamfer)} at {angle_text(turn)} would reach "
            f"{show.text(deep)} deep, through a strip {show.text(given.thickness)} thick.",
            "Use a smaller setback or angle.",
            field=f"{side}_chamfer",
        )
    worked = (
        f"{over}; the chamfer takes {show.number(chamfer)} from the face and "
        f"{show.number(chamfer)} × tan {show.pure(turn)}°{show.equals(deep)} from the end"
    )
    setting = f"chamfer {show.text(chamfer)}"
    return StripEnd(neighbor, EdgeCut(_NONE, -chamfer, deep, setting), worked)
