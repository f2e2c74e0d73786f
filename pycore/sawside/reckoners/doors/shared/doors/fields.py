"""What is asked about doors in an opening."""

from fractions import Fraction

from sawside.drawing.choices.door_fits import DOOR_FITS
from sawside.reckoners.fields import choice, clearance, count, length
from sawside.reckoners.shared.board_fields import thickness, weighed
from sawside.reckoners.wood.shared.moisture_fields import MOISTURE, WOOD

LAPPED = ("overlay", "full", "half", "lipped")
FRAMED = ("sheet", "wood", "glass")
SOLID = ("wood", "solid")
GROOVED = ("cope", "stub")
_INSET = {"shown_when": ("fit", ("inset",))}
_LAPPED = {"shown_when": ("fit", LAPPED), "most": "12 in"}
_FRAME = ("made", FRAMED)
_OF_A_FRAME = {"shown_when": _FRAME}
LEAST_WIDTH = Fraction(1, 4)
"""Of a stile, rail or middle member, in inches."""
_WIDTH = {"least": f"{LEAST_WIDTH} in", "most": "24 in"}
_MIDDLE = (_FRAME, ("joint", (*GROOVED, "mortise", "lap")))
_AS_STILE = _WIDTH | {"blank_means": "Same as Stile width."}

SIZE = (
    length("width", "Width", help="Of the opening, left to right.", least="1 in"),
    length("height", "Height", help="Of the opening, bottom to top.", least="1 in"),
    count("doors", "Doors", help="Side by side.", default="1", least="1", most="12"),
    choice(
        "fit",
        "Fit",
        {
            "inset": "Inset",
            "overlay": "Overlay, my own lap",
            "full": "Full overlay",
            "half": "Half overlay",
            "lipped": "Lipped (rabbeted edge)",
        },
        pictures=DOOR_FITS,
    ),
    choice(
        "known",
        "Size of",
        {"opening": "The opening", "door": "A door I have"},
        help="From the size of one door, you get the opening.",
    ),
)
ROOM = (
    clearance(
        "gap", "Gap, each side", "clearance_at_door", help="At its tightest.", most="2 in", **_INSET
    ),
    length("top_gap", "Gap, top", blank_means="Same as Gap, each side.", most="2 in", **_INSET),
    length(
        "bottom_gap", "Gap, bottom", blank_means="Same as Gap, each side.", most="2 in", **_INSET
    ),
    clearance(
        "between",
        "Gap between doors",
        "clearance_between_doors",
        help="Counts with two doors or more, and in half overlay.",
        most="2 in",
    ),
    thickness(
        "edge",
        "Case edge thickness",
        help="Of the side or divider the door covers.",
        least="1/8 in",
        most="4 in",
        shown_when=("fit", ("full", "half")),
    ),
    length(
        "reveal",
        "Reveal",
        help="How much of that edge shows.",
        default='1/16"',
        metric="1.5 mm",
        most="4 in",
        shown_when=("fit", ("full", "half")),
    ),
    length(
        "lap",
        "Lap, each side",
        help="How far the door goes past the opening.",
        default='1/2"',
        metric="12 mm",
        most="12 in",
        shown_when=("fit", ("overlay",)),
    ),
    length(
        "lip",
        "Lip past the opening",
        help="On each side.",
        default='1/4"',
        metric="6 mm",
        most="4 in",
        shown_when=("fit", ("lipped",)),
    ),
    length(
        "lip_rabbet",
        "Lip rabbet width",
        help="Cut in the back of the door’s edge.",
        default='3/8"',
        metric="10 mm",
        least="1/64 in",
        most="4 in",
        shown_when=("fit", ("lipped",)),
    ),
    *(
        length(
            f"{side}_lap",
            f"Lap, {side}",
            blank_means="As the fit makes it on that side.",
            **_LAPPED,
        )
        for side in ("left", "right", "top", "bottom")
    ),
)
BUILD = (
    choice(
        "made",
        "Made as",
        {
            "sheet": "Frame with a plywood or MDF panel",
            "wood": "Frame with a solid wood panel",
            "glass": "Frame with glass or mirror",
            "slab": "Slab of plywood or MDF",
            "solid": "Slab of solid wood",
        },
    ),
    thickness("thickness", "Door thickness", least="1/8 in", most="4 in"),
    length("stile", "Stile width", default='2 1/4"', metric="60 mm", **_WIDTH, **_OF_A_FRAME),
    length("top_rail", "Top rail width", **_AS_STILE, **_OF_A_FRAME),
    length("bottom_rail", "Bottom rail width", **_AS_STILE, **_OF_A_FRAME),
    choice(
        "joint",
        "Joint",
        {
            "cope": "Cope and stick",
            "stub": "Stub tenon in the groove",
            "mortise": "Mortise and tenon",
            "miter": "Miter",
            "lap": "Half lap",
        },
        **_OF_A_FRAME,
    ),
    length(
        "groove",
        "Groove or rabbet depth",
        help="The stick depth, with cope and stick.",
        default='3/8"',
        metric="10 mm",
        least="1/16 in",
        most="4 in",
        **_OF_A_FRAME,
    ),
    length(
        "tongue",
        "Tongue length",
        help="At each end of a rail.",
        blank_means="As long as the groove is deep.",
        least="1/32 in",
        most="4 in",
        shown_when=(_FRAME, ("joint", GROOVED)),
    ),
    length(
        "tenon",
        "Tenon length",
        help="At each end of a rail.",
        default='1 1/4"',
        metric="30 mm",
        least="1/16 in",
        most="12 in",
        shown_when=(_FRAME, ("joint", ("mortise",))),
    ),
    choice(
        "middle",
        "Middle member",
        {"none": "None", "rail": "Middle rail, centered", "stile": "Middle stile, centered"},
        shown_when=_MIDDLE,
    ),
    length(
        "middle_width",
        "Middle member width",
        **_AS_STILE,
        shown_when=(*_MIDDLE, ("middle", ("rail", "stile"))),
    ),
    length(
        "banding",
        "Edge banding thickness",
        help="On all four edges, part of the door’s size.",
        default='0"',
        most="2 in",
        shown_when=("made", ("slab",)),
    ),
    length(
        "trim",
        "Extra to trim",
        help="At each edge, to plane the door to fit. 1/16 in is common.",
        default='0"',
        most="1 in",
        **_INSET,
    ),
)
PANEL = (
    length(
        "panel",
        "Panel or glass thickness",
        default='1/4"',
        metric="6 mm",
        least="1/64 in",
        most="4 in",
        **_OF_A_FRAME,
    ),
    choice(
        "hold",
        "Panel held",
        {"groove": "In a groove", "rabbet": "In a rabbet, with stops"},
        shown_when=("made", ("sheet", "wood")),
    ),
    clearance(
        "clearance",
        "Panel clearance, each edge",
        "clearance_in_groove",
        help="For glue or for movement, at its tightest.",
        most="1 in",
        shown_when=("made", ("sheet", "wood")),
    ),
    clearance(
        "glass_clearance",
        "Glass clearance, each edge",
        "clearance_in_frame",
        help="For shims, so the frame never pinches it.",
        most="1 in",
        shown_when=("made", ("glass",)),
    ),
    length(
        "deep",
        "Rabbet, from the back",
        help="Holds the glass and the stops.",
        default='1/2"',
        metric="12 mm",
        least="1/16 in",
        most="4 in",
        shown_when=("made", ("glass",)),
    ),
    choice(
        "grain",
        "Grain",
        {"up": "Up and down", "across": "Left to right"},
        shown_when=("made", SOLID),
    ),
)
WEIGHED = (
    weighed(
        "frame_wood",
        "Frame’s wood",
        default="oak_northern_red",
        shown_when=("made", ("sheet", "glass")),
    ),
    weighed("sheet", "Panel or slab of", default="plywood", shown_when=("made", ("sheet", "slab"))),
)
OF_SOLID_WOOD = tuple(each.only("made", SOLID) for each in (*WOOD, *MOISTURE))

FIELDS = (*SIZE, *ROOM, *BUILD, *PANEL, *WEIGHED, *OF_SOLID_WOOD)
