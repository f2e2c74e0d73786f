"""What is asked about a drawer box."""

from sawside.reckoners.fields import choice, clearance, length
from sawside.reckoners.shared.board_fields import thickness
from sawside.reckoners.wood.shared.moisture_fields import MOISTURE, WOOD

_SLIDES, _UNDER, _RUNNERS = (("runs", (each,)) for each in ("slides", "under", "wood"))
_ON_SLIDES = ("runs", ("slides", "under"))
_OVERLAY, _INSET = (("front", (each,)) for each in ("overlay", "inset"))
_MOVES = "solid", ("bottom", "box", "both")
BUTT = ("butt", "dowel")
"""The joints that go into nothing, but for what holds them."""
BETWEEN = (*BUTT, "rabbet", "dado")
"""The joints that leave a front or back between the sides; the others take it to the outside."""
_JOINTS = {
    "rabbet": "Rabbet in the sides",
    "dado": "Dado in the sides",
    "butt": "Butt, with screws",
    "dowel": "Butt, with dowels",
    "box": "Box joint",
    "dovetail": "Through dovetails",
}
_OPENING = (
    length("width", "Opening width", help="The narrowest spot.", least="2 in", most="8 ft"),
    length("height", "Opening height", help="The lowest spot.", least="1 in", most="6 ft"),
    length(
        "depth", "Depth inside", help="Front of the opening to the back.", least="3 in", most="5 ft"
    ),
)
_RUNS = (
    choice(
        "runs",
        "Runs on",
        {
            "slides": "Slides at the sides",
            "under": "Slides under the box",
            "wood": "Wooden runners",
        },
    ),
    length(
        "inside_less",
        "Opening less inside width",
        help="Opening width minus the box’s inside width, as the slide’s maker says.",
        least="1/4 in",
        most="8 in",
        shown_when=_UNDER,
    ),
    length(
        "below_under",
        "Height under the box",
        help="Bottom of the opening to the sides, as the slide’s maker says.",
        most="6 in",
        shown_when=_UNDER,
    ),
    clearance(
        "side_room",
        "Clearance each side",
        "clearance_slide",
        help="As the slide’s maker says.",
        most="2 in",
        shown_when=_SLIDES,
    ),
    length(
        "slide",
        "Slide length",
        least="3 in",
        most="5 ft",
        blank_means="The longest common one that goes in.",
        shown_when=_ON_SLIDES,
    ),
    length(
        "depth_less",
        "Slide length less box depth",
        help="As the slide’s maker says. The drawer front isn’t counted.",
        default="0 in",
        most="12 in",
        shown_when=_UNDER,
    ),
    length(
        "runner_room",
        "Gap each side",
        help="Of the box, and of an inset front.",
        default='1/16"',
        metric="1.5 mm",
        most="1 in",
        shown_when=_RUNNERS,
    ),
    length(
        "below",
        "Room below",
        help="Bottom of the opening to the box.",
        default='1/4"',
        metric="6 mm",
        most="12 in",
        shown_when=_SLIDES,
    ),
    length(
        "above",
        "Room above",
        help="What the slides need to lift out.",
        default='1/2"',
        metric="12 mm",
        most="12 in",
        shown_when=_ON_SLIDES,
    ),
    length(
        "kicker",
        "Gap under the kicker",
        help="At its wettest, if the box is solid wood.",
        default='1/16"',
        metric="1.5 mm",
        most="1 in",
        shown_when=_RUNNERS,
    ),
    length("behind", "Gap behind", default='1/4"', metric="6 mm", most="24 in"),
    length(
        "box_height",
        "Box height",
        least="1/2 in",
        most="6 ft",
        blank_means="The highest that fits.",
    ),
)
_FRONT = (
    choice("front", "Drawer front", {"overlay": "Overlay", "inset": "Inset"}),
    choice(
        "made", "Front is", {"applied": "Screwed to the box", "part": "The front of the box itself"}
    ),
    thickness("face", "Drawer front thickness", least="1/4 in", most="4 in"),
    length(
        "lap",
        "Overlay each side",
        default='3/8"',
        metric="10 mm",
        most="12 in",
        shown_when=_OVERLAY,
    ),
    length(
        "lap_high",
        "Overlay, top and bottom",
        most="12 in",
        blank_means="Same as each side.",
        shown_when=_OVERLAY,
    ),
    clearance(
        "gap",
        "Gap around the front",
        "clearance_at_door",
        most="1 in",
        shown_when=(_INSET, _ON_SLIDES),
    ),
)
_BOX = (
    thickness(
        "side", "Side thickness", default='1/2"', metric="12 mm", least="1/8 in", most="2 in"
    ),
    thickness(
        "end",
        "Box front and back thickness",
        default=None,
        metric=None,
        least="1/8 in",
        most="2 in",
        blank_means="Same as the sides.",
    ),
    choice("front_joint", "Front corners", _JOINTS | {"half_blind": "Half-blind dovetails"}),
    choice("back_joint", "Back corners", {"same": "Same as the front"} | _JOINTS),
    length(
        "joint_depth",
        "Rabbet or dado depth",
        help="Into the side.",
        least="1/64 in",
        most="2 in",
        blank_means="Half the side thickness.",
    ),
    length(
        "back_in",
        "Side past the back",
        help="Only with the back in dadoes.",
        default='1/2"',
        metric="12 mm",
        most="12 in",
    ),
    length(
        "blind",
        "Wood left in front of the joint",
        help="Half-blind, or where a side goes into the drawer front.",
        default='1/4"',
        metric="6 mm",
        least="1/64 in",
        most="2 in",
    ),
)
_BOTTOM = (
    thickness(
        "bottom", "Bottom thickness", default='1/4"', metric="6 mm", least="1/16 in", most="2 in"
    ),
    length("groove", "Groove depth", default='1/4"', metric="6 mm", least="1/64 in", most="2 in"),
    length(
        "up",
        "Groove up from the bottom edge",
        default='3/8"',
        metric="10 mm",
        least="1/64 in",
        most="12 in",
    ),
    choice(
        "back",
        "Back",
        {"low": "Above the bottom, which slides in", "full": "Full height, with a groove"},
    ),
    length(
        "bottom_room",
        "Room in the grooves",
        help="In total, side to side. At its wettest, if it’s solid.",
        default='1/16"',
        metric="1.5 mm",
        most="1 in",
    ),
)
FIELDS = (
    *_OPENING,
    *_RUNS,
    *_FRONT,
    *_BOX,
    *_BOTTOM,
    choice(
        "solid",
        "Solid wood",
        {
            "none": "None figured",
            "bottom": "Bottom",
            "box": "Sides, front, and back",
            "both": "All of it",
        },
        help="What grows and shrinks with the seasons.",
    ),
    *(each.only(*_MOVES) for each in (*WOOD, *MOISTURE)),
)
