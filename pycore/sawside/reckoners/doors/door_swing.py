"""Whether a hinged door clears: a wall, its own frame, and a drawer behind it."""

from sawside.drawing.doors.door_swing import swing_drawing
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import sign
from sawside.lengths.show import angle_text
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.doors.shared.swing.cautions import cautions
from sawside.reckoners.doors.shared.swing.fields import FIELDS
from sawside.reckoners.doors.shared.swing.geometry import drawer_needs, free_edge_of, swing_of
from sawside.reckoners.doors.shared.swing.working import working


def compute(given, show):
    """To what angle it opens, what touches first, and what its free edge and a drawer need."""
    swing = swing_of(given, show)
    edge = free_edge_of(given, show, swing)
    needs = drawer_needs(given, show, swing)
    passes = None if needs is None else sign(swing.opens - needs.angle) >= 0
    ever = needs is not None and sign(needs.angle - 180) <= 0
    return Reckoning(
        answers={
            "opens": swing.opens,
            "touches": _touches(swing),
            **_free_edge(show, edge),
            **({"needs": needs.angle} if ever else {}),
            **({} if needs is None else {"drawer": _drawer(passes)}),
        },
        working=tuple(working(given, show, swing, edge, needs)),
        drawing=swing_drawing(show, given, swing, _words(show, given, swing)),
        cautions=tuple(cautions(given, swing, edge, passes)),
        verdict=_verdict(swing, edge, passes),
        fixes=_fixes(swing, edge, passes),
    )


def _touches(swing):
    if swing.touch is None:
        return "Nothing: the hinge stops it"
    name = swing.touch.name
    meets = "the wall" if swing.meets == "wall" else "the neighbor"
    return f"{name[0].upper()}{name[1:]}, on {meets}"


def _free_edge(show, edge):
    """The answers about the free edge of an inset door."""
    if edge is None:
        return {}
    answers = {"square_gap": on_fine_marks(edge.gap, show, "reach")}
    if edge.bevel:
        answers |= {"bevel": on_fine_marks(edge.bevel, show, "reach"), "edge_bevel": edge.angle}
    return answers


def _drawer(passes):
    return "Passes the open door" if passes else "Hits the open door"


def _verdict(swing, edge, passes):
    if passes is False:
        return "Drawer hits the door, which opens to"
    if edge is not None and edge.bevel:
        return "Bevel the free edge. Opens to"
    return "Opens to" if swing.touch is None else f"Opens until the {swing.touch.name} touches"


def _fixes(swing, edge, passes):
    fixes = []
    if passes is False:
        fixes.append(("Move the drawer over", "drawer"))
        if swing.touch is not None:
            fixes.append(("More room to the wall", "wall"))
    if edge is not None and edge.bevel:
        fixes.append(("A wider gap", "gap"))
    return tuple(fixes)


def _words(show, given, swing):
    door = f"A door {show.brief(given.width)} wide from above, open {angle_text(swing.opens)}."
    return door if swing.touch is None else f"{door} Its {swing.touch.name} touches."


RECKONER = Reckoner(
    key="door_swing",
    title="Does the door clear?",
    asks="How far does this door open before it hits, and does it clear its frame and a drawer?",
    words=(
        "door swing, door clearance, swing, door opens, opening angle, door hits wall, handle hits "
        "wall, side wall, door binds, free edge, leading edge, back bevel, drawer behind a door, "
        "pullout behind a door, rollout"
    ),
    order=710,
    job="doors and drawers",
    picture={
        "wood": "M4 6h4v28H4zM11 8h23v4H11z",
        "ink": "M11 12l8 22M34 12v3",
        "chalk": "M34 14a22 22 0 0 1-13 18",
    },
    basic=("width", "wall", "handle", "fit"),
    fields=FIELDS,
    answers=(
        Answer("opens", "Opens to", "angle"),
        Answer("touches", "Touches first", "text"),
        Answer("square_gap", "Gap a square free edge needs", must="reach"),
        Answer("bevel", "Bevel off its back", must="reach"),
        Answer("edge_bevel", "Bevel angle", "angle", sets="tilted"),
        Answer("needs", "Drawer passes from", "angle"),
        Answer("drawer", "Drawer behind the door", "text"),
    ),
    source=(
        "Plane trigonometry: each corner of door and handle goes around the hinge pin in a circle. "
        "The back of a square free edge reaches √(width² + thickness²) from a pin at the face. "
        "Common practice, no source: a butt hinge opens to 180° and a cup hinge to 110°, and a cup "
        "hinge turns about as if on one pivot in the middle of the door’s thickness."
    ),
    compute=compute,
    example={"width": "15 19/32", "wall": "1 1/2", "handle": "1 1/4", "drawer": "1 1/4"},
)
