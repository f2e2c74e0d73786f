"""A strip along the edge of a panel, whose ends meet other strips: mitered, over them, chamfered.

A mitered end adds thickness x tan(90 - corner / 2) to the face, and nothing at the panel. An end
that runs over its neighbor adds the neighbor's thickness to both. A chamfer is made last: the strip
is cut so long that its panel side still reaches past it.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.drawing.miters.edge_piece import EdgeCut, edge_piece
from sawside.errors import Refusal
from sawside.geometry.angles import tangent
from sawside.geometry.miter import allowance, half_corner
from sawside.lengths.real import Exact
from sawside.lengths.show import angle_text
from sawside.reckoners.declaration import (
    Answer,
    End,
    Part,
    Reckoner,
    Reckoning,
    angle,
    choice,
    length,
)
from sawside.reckoners.miters.shared.corner_field import corner_field, corner_of, past_lines
from sawside.wood.saw import cautions_at_the_saw

_ENDS = {
    "miter": "Mitered with the next strip",
    "over": "Runs over the end of the next strip",
    "chamfer": "Runs over the next strip, its corner chamfered",
    "flush": "Ends with the panel, or against the next strip",
}


@dataclass(frozen=True, slots=True)
class _End:
    """What an end adds to the strip at the panel, and how the face differs from that."""

    at_panel: Fraction
    cut: EdgeCut
    working: str


def compute(given, show):
    """The strip's length at the panel and at its face, in inches, and each end's set-back."""
    ends = left, right = [_end_of(given, show, side) for side in ("left", "right")]
    back = given.panel + left.at_panel + right.at_panel
    face = back + left.cut.adds + right.cut.adds
    if face <= 0:
        raise Refusal(
            "impossible",
            f"Nothing is left of the face of a strip {show.text(back)} long.",
            "Give smaller chamfers, or check the length of the panel.",
            field="panel",
        )
    cuts = [end.cut for end in ends]
    tips = [cut.adds for cut in cuts if cut.adds > 0]
    long_side, short_side = back + sum(tips, Fraction(0)), face if face < back else back
    picture = edge_piece(show, "Edge strip", given.thickness, back, cuts)
    added = "".join(f" + {show.number(end.at_panel)}" for end in ends if end.at_panel)
    return Reckoning(
        answers={
            "long_side": long_side,
            "panel_side": back,
            "face_side": face,
            "left_set_back": abs(left.cut.adds),
            "right_set_back": abs(right.cut.adds),
        },
        working=(
            *past_lines(given, "left_corner", "right_corner"),
            *(end.working for end in ends),
            f"At the panel: {show.number(given.panel)}{added}{show.equals(back)}",
            f"At the face: {show.number(back)}"
            + "".join(_signed(show, end.cut.adds) for end in ends)
            + show.equals(face),
            f"To cut, before a chamfer: {show.number(back)}"
            + "".join(_signed(show, each) for each in tips)
            + show.equals(long_side),
        ),
        drawing=picture,
        cautions=(
            *cautions_at_the_saw(short_side),
            "A thin strip breaks and is caught easily: cut it against a backing board, as the "
            "saw's maker says (common practice, no source).",
        ),
        parts=(
            Part(
                key="strip",
                name="Edge strip",
                length=long_side,
                width=given.width,
                thickness=given.thickness,
                left=_told(left, "left"),
                right=_told(right, "right"),
                long_side=long_side,
                short_side=short_side,
                drawing=picture,
            ),
        ),
    )


def _signed(show, adds: Exact):
    if adds == Fraction(0):
        return ""
    return f" {'+' if adds > 0 else '−'} {show.number(abs(adds))}"


def _told(end, side):
    if end.cut.note:
        return End("square", end.cut.note.removeprefix("square, "))
    return (
        End("edge miter", end.cut.told(side), end.cut.degrees)
        if end.cut.degrees
        else End("square", "0°")
    )


def _end_of(given, show, side):
    """One end as it was filled in."""
    kind, chamfer = (getattr(given, f"{side}_{each}") for each in ("end", "chamfer"))
    corner = corner_of(given, f"{side}_corner", most=179)
    neighbor = given.thickness if given.neighbor is None else given.neighbor
    name, none = side.capitalize(), Fraction(0)
    if kind == "miter":
        degrees = half_corner(corner)
        adds = allowance(given.thickness, degrees)
        line = (
            f"{name} end: saw at 90 − {show.pure(corner)} ÷ 2 = {angle_text(degrees, 2)}; "
            f"{show.number(given.thickness)} × tan {show.pure(degrees)}°{show.equals(adds)}"
        )
        return _End(none, EdgeCut(degrees, adds), line)
    if kind == "flush":
        return _End(none, EdgeCut(none, none), f"{name} end: ends with the panel, adds 0")
    if kind == "over":
        line = f"{name} end: over the next strip, adds its {show.number(neighbor)}"
        return _End(neighbor, EdgeCut(none, none), line)
    deep = chamfer * tangent(given.chamfer_angle)
    if deep >= given.thickness:
        raise Refusal(
            "impossible",
            f"A chamfer set back {show.text(chamfer)} at {angle_text(given.chamfer_angle)} would "
            f"reach {show.text(deep)} deep, through a strip {show.text(given.thickness)} thick.",
            "Give a smaller set-back or angle.",
            field=f"{side}_chamfer",
        )
    line = (
        f"{name} end: over the next strip, adds its {show.number(neighbor)}; the chamfer takes "
        f"{show.number(chamfer)} from the face and {show.number(chamfer)} × tan "
        f"{show.pure(given.chamfer_angle)}°{show.equals(deep)} from the end"
    )
    note = f"square, chamfered {show.text(chamfer)}"
    return _End(neighbor, EdgeCut(none, -chamfer, note, deep), line)


def _end_fields(side):
    name, end = side.capitalize(), f"{side}_end"
    return (
        choice(end, f"{name} end", _ENDS),
        corner_field(
            f"{side}_corner",
            f"{name} corner",
            "the panel's two edges",
            least=30,
            shown_when=(end, ("miter",)),
        ),
        length(
            f"{side}_chamfer",
            f"{name} chamfer",
            least="1/64 in",
            most="6 in",
            help="Its set-back along the face.",
            shown_when=(end, ("chamfer",)),
        ),
    )


RECKONER = Reckoner(
    key="edge_strip",
    title="Edge strip around a panel",
    asks="How long is a strip on the edge of a panel, when its ends meet other strips?",
    words=(
        "edge, edging, strip, lipping, band, panel, plywood, miter, chamfer, shelf, front edge, "
        "set-back"
    ),
    order=280,
    fields=(
        length(
            "panel",
            "Length of the panel's edge",
            help="The edge that the strip is glued to.",
            least="1/4 in",
        ),
        length(
            "thickness",
            "Strip thickness",
            help="How far it stands out from the panel.",
            default="1/4 in",
            metric="6 mm",
            least="1/64 in",
            most="6 in",
        ),
        *_end_fields("left"),
        *_end_fields("right"),
        length(
            "neighbor",
            "Thickness of the next strip",
            least="1/64 in",
            most="6 in",
            may_be_blank=True,
            blank_means="As thick as this one.",
            help="Where an end runs over the next strip.",
        ),
        angle(
            "chamfer_angle",
            "Chamfer angle",
            default="45",
            least="5",
            most="85",
            help="From the face; only for a chamfered corner.",
        ),
        length(
            "width",
            "Strip width",
            least="1/64 in",
            most="12 in",
            may_be_blank=True,
            blank_means="The piece is listed without it.",
            help="As high as the panel is thick, or a little more to plane flush.",
        ),
    ),
    answers=(
        Answer("long_side", "Cut length", must="agree"),
        Answer("panel_side", "Length at the panel", must="agree"),
        Answer("face_side", "Length at the face", must="agree"),
        Answer("left_set_back", "Left set-back, between panel side and face", must="agree"),
        Answer("right_set_back", "Right set-back, between panel side and face", must="agree"),
    ),
    source=(
        "A mitered end adds thickness × tan(90 − corner ÷ 2): plane trigonometry. Which end runs "
        "over which: common practice, no source."
    ),
    compute=compute,
    example={
        "panel": "34 5/16",
        "thickness": "3/8",
        "left_end": "miter",
        "right_end": "chamfer",
        "right_chamfer": "3/16",
        "width": "13/16",
    },
    makes_parts=True,
)
