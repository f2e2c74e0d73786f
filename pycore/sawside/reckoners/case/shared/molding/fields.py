"""What is asked about a molding on a case."""

from dataclasses import replace

from sawside.drawing.choices.spaces import BUILT_IN
from sawside.reckoners.fields import choice, kerf, length, number
from sawside.reckoners.miters.shared.compound.crown_spring import FIELDS as SPRING
from sawside.reckoners.miters.shared.compound.saw import TILTS
from sawside.reckoners.miters.shared.field_bounds import blank

_CROWN = ("molding", ("crown",))
_BASE = ("molding", ("base",))
_FLAT = ("molding", ("base", "strip"))
_ON_A_CASE = ("molding", ("base", "crown"))
_SIDES_SHOW = ("built", ("free", "left", "right"))
_ENDS = {
    "wall": "Square, to the wall",
    "cope": "Coped over molding on the wall",
    "return": "Mitered return",
}
_WHAT = (
    choice(
        "molding",
        "Molding",
        {"base": "Base or band", "crown": "Crown", "strip": "Shelf or top strip"},
        in_short="{}",
    ),
    choice(
        "built",
        "Built in",
        {
            "free": "Free at both ends",
            "left": "In a corner, wall on the left",
            "right": "In a corner, wall on the right",
            "walls": "Between walls or sides",
        },
        pictures=BUILT_IN,
        in_short="{}",
    ),
    length(
        "case_width",
        "Outside width",
        help="Of the case or top, left to right. Of a shelf between sides, its length.",
        least="1 in",
    ),
    length(
        "case_depth",
        "Outside depth",
        help="Front to back, without a face frame.",
        least="1 in",
        shown_when=_SIDES_SHOW,
    ),
    length(
        "thickness",
        "Molding thickness",
        help="How far it sticks out at its thickest.",
        default='3/4"',
        metric="18 mm",
        least="1/64 in",
        most="12 in",
        shown_when=_FLAT,
    ),
)


_ON_THE_CASE = {
    "drop": {"help": "Down the case, from the top edge to the bottom edge."},
    "projection": {"help": "Out from the case, to the top edge."},
    "width": {"may_be_blank": False, "blank_means": None},
}
"""How the spring is asked for here: there is no ceiling, and the face width has to be filled in."""


def _for_crown(field):
    """A field of the spring where the molding is crown."""
    told = _ON_THE_CASE.get(field.key, {})
    also = (field.shown_when,) if field.shown_when else ()
    return replace(field, shown_when=(_CROWN, *also), **told)


_FRAME = (
    length(
        "frame",
        "Face frame thickness",
        help="0 without one.",
        default="0 in",
        most="4 in",
        shown_when=(_ON_A_CASE, _SIDES_SHOW),
    ),
    length(
        "frame_left",
        "Frame past the left side",
        help="The molding wraps the frame, so it leaves this gap at the side.",
        default="0 in",
        most="12 in",
        shown_when=_ON_A_CASE,
    ),
    length(
        "frame_right",
        "Frame past the right side",
        most="12 in",
        shown_when=_ON_A_CASE,
        **blank("Same as past the left side."),
    ),
)
_HEIGHTS = (
    length(
        "molding_height",
        "Molding height",
        help="For the cut list, and the line to strike.",
        least="1/64 in",
        most="24 in",
        shown_when=_FLAT,
        **blank("Left out."),
    ),
    length(
        "bottom_at",
        "Bottom edge above floor",
        help="The toe kick’s height to sit on top of it.",
        default="0 in",
        shown_when=_BASE,
    ),
    length(
        "case_height",
        "Outside height",
        help="Floor to the top of the case, for the line to strike.",
        least="1 in",
        shown_when=_CROWN,
        **blank("No line is figured."),
    ),
    length(
        "rise",
        "Crown above the case",
        help="Case top up to the crown’s top edge. Put a nailer behind it.",
        default="0 in",
        most="3 ft",
        shown_when=_CROWN,
    ),
)


def _end(side):
    """The "left" or "right" end of the run, as one faces the case."""
    name, end = side.capitalize(), f"{side}_end"
    return (
        choice(end, f"{name} end", _ENDS),
        length(
            f"{side}_short",
            f"{name} setback",
            help="From the wall, or the end of the case, to the outside of the return.",
            default="0 in",
            shown_when=(end, ("return",)),
        ),
    )


FIELDS = (
    *_WHAT,
    *(_for_crown(field) for field in SPRING),
    *_FRAME,
    *_HEIGHTS,
    *_end("left"),
    *_end("right"),
    length(
        "scribe",
        "To scribe at a wall",
        help="Extra at each square end.",
        default="0 in",
        most="6 in",
    ),
    replace(TILTS, shown_when=_CROWN),
    kerf(help="To figure the stock. Measure a cut in scrap."),
    number("waste", "Waste", "%", default="10", most="100"),
)
BASIC = (
    "molding",
    "built",
    "case_width",
    "case_depth",
    "thickness",
    "found",
    "spring",
    "drop",
    "projection",
    "width",
)
