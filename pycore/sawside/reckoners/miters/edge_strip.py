"""How long is a strip along the edge of a panel, whose ends meet other strips."""

from sawside.drawing.miters.edge_piece import edge_piece
from sawside.reckoners.declaration import Alike, Answer, Part, Reckoner, Reckoning
from sawside.reckoners.fields import angle, length
from sawside.reckoners.miters.shared.corner_field import past_lines
from sawside.reckoners.miters.shared.edge_ends import edge_ends
from sawside.reckoners.miters.shared.field_bounds import STRIP, blank
from sawside.reckoners.miters.shared.strip_ends import ASKED, end_fields, strip_of
from sawside.wood.saw import THIN_STRIPS, cautions_at_the_saw


def compute(given, show):
    """The strip's length at the panel and at its face, in inches, and each end's set-back."""
    strip = strip_of(given, show)
    left, right = strip.cuts
    picture = edge_piece(show, "Edging", given.thickness, strip.back, strip.cuts)
    return Reckoning(
        answers={
            "long_side": strip.to_cut,
            "panel_side": strip.back,
            "face_side": strip.face,
            "left_set_back": abs(left.adds),
            "right_set_back": abs(right.adds),
        },
        working=_working(given, show, strip),
        drawing=picture,
        cautions=(*cautions_at_the_saw(strip.short_side), THIN_STRIPS),
        parts=(_part(given, strip, picture),),
    )


def _part(given, strip, picture):
    left, right = edge_ends(strip.cuts)
    return Part(
        key="strip",
        name="Edging",
        length=strip.to_cut,
        width=given.width,
        thickness=given.thickness,
        left=left,
        right=right,
        long_side=strip.to_cut,
        short_side=strip.short_side,
        drawing=picture,
        is_edging=True,
    )


def _working(given, show, strip):
    back, adds = show.number(strip.back), [cut.adds for cut in strip.cuts]
    added = "".join(f" + {show.number(end.at_panel)}" for end in strip.ends if end.at_panel)
    at_face = "".join(show.term(each) for each in adds)
    tips = "".join(show.term(each) for each in adds if each > 0)
    return (
        *past_lines(given, "left_corner", "right_corner"),
        *(end.worked for end in strip.ends),
        f"At the panel: {show.number(given.panel)}{added}{show.equals(strip.back)}",
        f"At the face: {back}{at_face}{show.equals(strip.face)}",
        f"To cut, before a chamfer: {back}{tips}{show.equals(strip.to_cut)}",
    )


RECKONER = Reckoner(
    key="edge_strip",
    title="Solid edging around a panel",
    asks="How long is the edging on a panel when its ends meet other strips?",
    words=(
        "edging, solid edging, plywood edge, strip, front edge, panel, plywood, shelf, miter, "
        "chamfer, setback, notch, inside corner"
    ),
    order=280,
    job="boxes and edges",
    picture={
        "wood": "M3 8h25v24H3zM28 8h8v24h-8z",
        "ink": "M3 14h25M3 20h25M3 26h25",
        "chalk": "M28 8h8v24h-8z",
    },
    basic=("panel", "thickness", *ASKED),
    alike=(Alike(),),
    fields=(
        length("panel", "Panel edge", help="The edge you glue the strip to.", least="1/4 in"),
        length(
            "thickness",
            "Strip thickness",
            help="How far it sticks out from the panel.",
            default="1/4 in",
            metric="6 mm",
            **STRIP,
        ),
        *end_fields("left"),
        *end_fields("right"),
        length(
            "neighbor",
            "Next strip thickness",
            **STRIP,
            **blank("Same as this one."),
            help="For an end that laps the next strip.",
        ),
        angle(
            "chamfer_angle",
            "Chamfer angle",
            default="45",
            least="5",
            most="85",
            help="From the face, for a chamfered corner.",
        ),
        length(
            "width",
            "Strip width",
            least="1/64 in",
            most="12 in",
            **blank("Left out of the cut list."),
            help="Panel thickness, or a little more to plane flush.",
        ),
    ),
    answers=(
        Answer("long_side", "Cut length", must="agree"),
        Answer("panel_side", "Length at the panel", must="agree"),
        Answer("face_side", "Length at the face", must="agree"),
        Answer("left_set_back", "Left setback, panel to face", must="agree"),
        Answer("right_set_back", "Right setback, panel to face", must="agree"),
    ),
    source=(
        "A mitered end adds thickness × tan(90 − corner ÷ 2) to the face, or takes it off in an "
        "inside corner: plane trigonometry. Which end laps which: shop practice."
    ),
    compute=compute,
    verdict="Cut length ({panel_side} at the panel)",
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
