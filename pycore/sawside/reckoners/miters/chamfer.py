"""A chamfer from any one of its measures: width = set-back / cos(angle), depth = set-back x tan."""

from sawside.drawing.choices.measures import CHAMFERS
from sawside.drawing.lazy import lazy
from sawside.drawing.shapes import arc, dimension, drawing, label, line, polygon
from sawside.errors import Refusal
from sawside.geometry.angles import cosine, sine, tangent
from sawside.lengths.real import nearby
from sawside.lengths.show import angle_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fields import angle, choice, length
from sawside.reckoners.miters.shared.field_bounds import blank
from sawside.wood.caution import Caution

_KNOWN = {"face": "Setback on the face", "edge": "Depth down the edge", "width": "Chamfer width"}
_CAUTIONS = (
    "Unplug the machine before you change its tilt or bit. The maker’s instructions come first.",
    Caution(
        "Don’t trap the offcut under a tilted blade.",
        "With the blade tilted, keep the piece on the side the blade leans away from so the offcut "
        "can’t get trapped. Chamfer a narrow strip while it’s still part of a wide board (shop "
        "practice).",
    ),
)
_WIDE = 316


def compute(given, show):
    """Set-back on the face, depth down the edge, and width of the chamfer, in inches."""
    turn, known = given.angle, given.measure
    if given.known == "width":
        face, edge, width = known * cosine(turn), known * sine(turn), known
    elif given.known == "face":
        face, edge, width = known, known * tangent(turn), known / cosine(turn)
    else:
        face, edge, width = known / tangent(turn), known, known / sine(turn)
    if given.thickness is not None and edge > given.thickness:
        raise Refusal(
            "impossible",
            f"The chamfer would reach {show.text(edge)} down an edge only "
            f"{show.text(given.thickness)} thick.",
            "Use a smaller chamfer or a smaller angle.",
            field="measure",
        )
    return Reckoning(
        answers={"width": width, "face": face, "edge": edge, "flat": 90 - turn, "on_edge": turn},
        working=_working(show, given, face, edge, width),
        drawing=_drawing(show, given, face, edge, width),
        cautions=_CAUTIONS,
    )


@lazy
def _working(show, given, face, edge, width):
    turn, known = show.pure(given.angle), show.number(given.measure)
    cos, sin, tan = (
        (f"{name} {turn}°", show.pure(of(given.angle)))
        for name, of in (("cos", cosine), ("sin", sine), ("tan", tangent))
    )
    lines = {
        "width": (("Setback", "×", cos, face), ("Depth", "×", sin, edge)),
        "face": (("Depth", "×", tan, edge), ("Width", "÷", cos, width)),
        "edge": (("Setback", "÷", tan, face), ("Width", "÷", sin, width)),
    }[given.known]
    return (
        *(
            f"{what}: {known} {sign} {of} = {known} {sign} {number}{show.equals(result)}"
            for what, sign, (of, number), result in lines
        ),
        f"Bevel with the face flat on the table: 90 − {turn} = {show.pure(90 - given.angle)}°",
    )


def _drawing(show, given, face, edge, width):
    """The corner of the board at its end, face up, in pixels of a narrow screen."""
    across, deep = float(nearby(face)), float(nearby(edge))
    scale = 96 / max(across, deep)
    across, deep = across * scale, deep * scale
    right, top, low, left = 210, 60, 60 + max(deep + 34, 64), 20
    corner = (right - across, top)
    foot = (right, top + deep)
    shapes = [
        polygon([(left, top), corner, foot, (right, low), (left, low)]),
        line(corner, (right, top), "hidden"),
        line((right, top), foot, "hidden"),
        line((left, low), (left, top), "break"),
        dimension(corner, (right, top), 26, show.brief(face), _role(given, "face")),
        dimension((right, top), foot, 40, show.brief(edge), _role(given, "edge")),
        label((left + 8, (top + low) / 2), f"chamfer {show.brief(width)}", "name", "start"),
        arc(corner, min(across, deep) * 0.6, 0, float(given.angle), ""),
        label((left + 8, (top + low) / 2 + 22), angle_text(given.angle), "note", "start"),
        label((left, top - 14), "face", "note", "start"),
    ]
    words = (
        f"The corner of a board seen at its end, face up. The chamfer starts {show.brief(face)} "
        f"from the edge, ends {show.brief(edge)} below the face, and is {show.brief(width)} wide, "
        f"{angle_text(given.angle)} from the face."
    )
    return drawing(words, (0, 0, _WIDE, low + 16), shapes)


def _role(given, which):
    return "given" if given.known == which else "answer"


RECKONER = Reckoner(
    key="chamfer",
    title="Chamfer",
    asks="How wide is a chamfer, and how far does it reach along the face and down the edge?",
    words=(
        "chamfer, bevel, ease the edge, break the edge, knock off the corner, arris, edge, "
        "depth, width, corner, slope"
    ),
    order=270,
    job="boxes and edges",
    picture={"wood": "M5 35V5h17l13 13v17z", "ink": "M26 5h9v9", "chalk": "M22 5l13 13"},
    fields=(
        choice("known", "Known", _KNOWN, pictures=CHAMFERS),
        length(
            "measure", "Measured", help="The one you picked above.", least="1/64 in", most="24 in"
        ),
        angle(
            "angle",
            "Angle from the face",
            help="At 45, it takes the same off the face and the edge.",
            default="45",
            least="5",
            most="85",
        ),
        length(
            "thickness",
            "Board thickness",
            least="1/64 in",
            most="24 in",
            help="To check the chamfer fits.",
            **blank("The depth isn’t checked."),
        ),
    ),
    answers=(
        Answer("width", "Chamfer width", must="agree"),
        Answer("face", "Setback on the face", must="agree"),
        Answer("edge", "Depth down the edge", must="agree"),
        Answer("flat", "Bevel, face flat on the table", "angle", sets="tilted"),
        Answer("on_edge", "Bevel, board on edge", "angle", sets="tilted"),
    ),
    source="Width = setback ÷ cos(angle), depth = setback × tan(angle): plane trigonometry.",
    compute=compute,
    verdict="Chamfer width ({face} on the face, {edge} on the edge)",
    example={"known": "face", "measure": "3/8", "angle": "45", "thickness": "3/4"},
)
