"""What is asked about a case: its size and thickness, and the joinery that folds behind them."""

from sawside.reckoners.fields import choice, clearance, count, length, lengths, number
from sawside.reckoners.shared.board_fields import thickness, weighed

_SIZES = {"outside": "Outside", "inside": "Inside"}
_EACH = ("known", ("each",))
_KICK = ("kick", ("notched", "base"))
_HAS_BACK = ("back", ("rabbet", "on", "groove"))
_BANDED = ("banding", ("all", "case", "shelves"))

_SIZE = (
    length("width", "Width", least="1 in", help="Outside, unless you pick otherwise below."),
    length("height", "Height", least="1 in", help="Outside, with the toe kick."),
    length("depth", "Depth", least="1 in", help="Outside, with the back."),
    thickness(
        label="Case thickness",
        help="Sides, top, bottom and dividers. Measure it.",
        default='23/32"',
        most="3 in",
    ),
    count("fixed", "Fixed shelves per bay", default="0", most="40"),
    choice(
        "known",
        "Known size",
        {"outside": "Outside", "inside": "Inside", "each": "Some outside, some inside"},
    ),
    *(
        choice(f"{each}_is", f"{each.capitalize()} measured", _SIZES, shown_when=_EACH)
        for each in ("width", "height", "depth")
    ),
)
_JOINERY = (
    choice("top", "Top", {"between": "Between the sides", "over": "Over the sides"}),
    choice(
        "joint",
        "Joints",
        {"dado": "Dadoes, and rabbets at the ends", "butt": "Butted"},
        help="Of top, bottom, dividers and fixed shelves.",
    ),
    length(
        "joint_depth",
        "Joint depth",
        default='1/4"',
        metric="6 mm",
        least="1/64 in",
        most="2 in",
        shown_when=("joint", ("dado",)),
    ),
    choice(
        "back",
        "Back",
        {"rabbet": "In a rabbet", "on": "On the back", "groove": "In a groove", "none": "None"},
    ),
    thickness(
        "back_thickness",
        "Back thickness",
        default='1/4"',
        metric="6 mm",
        most="2 in",
        shown_when=_HAS_BACK,
    ),
    length(
        "rabbet_depth",
        "Rabbet depth",
        help="Into the side. It’s as wide as the back is thick.",
        default='3/8"',
        metric="9 mm",
        least="1/64 in",
        most="2 in",
        shown_when=("back", ("rabbet",)),
    ),
    length(
        "groove_depth",
        "Groove depth",
        default='1/4"',
        metric="6 mm",
        least="1/64 in",
        most="2 in",
        shown_when=("back", ("groove",)),
    ),
    length(
        "behind",
        "Setback of the back",
        help="Behind the groove, to the wall.",
        default='1/2"',
        metric="12 mm",
        least="1/16 in",
        most="12 in",
        shown_when=("back", ("groove",)),
    ),
    length(
        "back_room",
        "Room around the back",
        help="How much smaller it is, in height and in width.",
        default='1/16"',
        metric="1 mm",
        most="1 in",
        shown_when=("back", ("rabbet", "groove")),
    ),
)
_FOOT = (
    choice(
        "kick", "Toe kick", {"none": "None", "notched": "Notched sides", "base": "Separate base"}
    ),
    length(
        "kick_height",
        "Toe kick height",
        help="Floor to the underside of the bottom.",
        default='3 1/2"',
        metric="90 mm",
        least="1/4 in",
        most="24 in",
        shown_when=_KICK,
    ),
    length(
        "recess",
        "Toe kick recess",
        help="From the front of the case.",
        default='3"',
        metric="75 mm",
        least="1/16 in",
        most="24 in",
        shown_when=_KICK,
    ),
    length(
        "end_recess",
        "Base end recess",
        help="From each side of the case.",
        default='0"',
        most="24 in",
        shown_when=("kick", ("base",)),
    ),
)
_BAYS = (
    count("dividers", "Dividers", default="0", most="20"),
    lengths(
        "bay_widths",
        "Bay widths",
        help="Clear, from the left. Leave out the last bay: it takes the rest.",
        row_label="Bay",
        most_rows=20,
        least="1/4 in",
        blank_means="Equal bays.",
    ),
    lengths(
        "shelf_heights",
        "Fixed shelf heights",
        help="Case bottom to each shelf’s underside, lowest first, as Shelf spacing marks them.",
        row_label="Shelf",
        most_rows=40,
        blank_means="Equal openings.",
    ),
    length(
        "shelf_thickness",
        "Shelf thickness",
        least="1/64 in",
        most="3 in",
        blank_means="The same as the case.",
    ),
    length(
        "setback",
        "Shelf setback",
        help="From the front of the case, to clear a door.",
        default='0"',
        most="24 in",
    ),
    count("adjustable", "Adjustable shelves per bay", default="0", most="40"),
    clearance("gap", "Gap at each shelf end", "clearance_on_pins", most="2 in"),
)
_EDGES = (
    choice(
        "banding",
        "Front edges banded",
        {
            "all": "Case and shelves",
            "case": "Sides, top, bottom, dividers",
            "shelves": "Shelves",
            "none": "None",
        },
    ),
    length(
        "band",
        "Edging thickness",
        help="0 for tape. Solid strips come out as parts.",
        default='0"',
        most="6 in",
        shown_when=_BANDED,
    ),
    choice(
        "solid_edging",
        "Solid edging",
        {"within": "Within the depth: narrower panels", "proud": "Proud, in front of the depth"},
        shown_when=_BANDED,
    ),
    number("waste", "Edging waste", "%", default="10", most="100", shown_when=_BANDED),
    weighed("material", "Material", default="plywood"),
)
FIELDS = (*_SIZE, *_JOINERY, *_FOOT, *_BAYS, *_EDGES)
