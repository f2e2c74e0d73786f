"""What is filled in of a space, and of the case that is to go into it."""

from sawside.drawing.choices.spaces import BUILT_IN
from sawside.reckoners.case.shared.separate_kick import SEPARATE_KICK
from sawside.reckoners.fields import choice, length, lengths, rows

_BOWED = {
    "straight": "Straight, as far as the widths show",
    "left": "Bowed, left wall straight",
    "right": "Bowed, right wall straight",
    "line": "Bowed, both off a plumb line",
}
_UP = length("height", "Height", help="Above the floor.", most="40 ft")
_LEAN = {"plumb": "Plumb", "in": "Leans into the space at the top", "away": "Leans away at the top"}


def _wall(side):
    """How one wall is out of plumb, where there is one."""
    return (
        choice(
            f"{side}_lean",
            f"{side.capitalize()} wall",
            _LEAN,
            shown_when=("built", ("walls", side)),
            in_short=f"{side} wall {{}}",
        ),
        length(
            f"{side}_out",
            f"{side.capitalize()} wall out of plumb",
            help="From floor to ceiling, off a level or a plumb line.",
            default='0"',
            most="24 in",
            shown_when=(("built", ("walls", side)), (f"{side}_lean", ("in", "away"))),
        ),
    )


def _back():
    """How the back wall is out of plumb, and where the depth was measured."""
    leaning = {"shown_when": ("back_lean", ("in", "away"))}
    yield choice("back_lean", "Back wall", _LEAN, in_short="back wall {}")
    yield length(
        "back_out",
        "Back wall out of plumb",
        help="From floor to ceiling, off a level or a plumb line.",
        default='0"',
        most="24 in",
        **leaning,
    )
    yield choice(
        "depth_at",
        "Depths measured at",
        {"floor": "The floor, above any baseboard", "ceiling": "The ceiling"},
        **leaning,
    )


FIELDS = (
    choice(
        "built",
        "Built in",
        {
            "walls": "Between two walls",
            "left": "In a corner, wall on the left",
            "right": "In a corner, wall on the right",
            "free": "Free at both ends",
        },
        pictures=BUILT_IN,
        in_short="{}",
    ),
    lengths(
        "widths",
        "Widths",
        row_label="Width",
        most_rows=12,
        least="1 in",
        help="Low, middle and high, front and back, above any baseboard. In a corner, measure from "
        "the wall to where the case may end.",
        in_short="{} wide",
    ),
    length(
        "left_height",
        "Height at the left",
        help="Floor to ceiling.",
        least="1 in",
        in_short="{} high at the left",
    ),
    length(
        "right_height",
        "Height at the right",
        least="1 in",
        blank_means="Same as the left.",
        in_short="{} at the right",
    ),
    length(
        "left_depth",
        "Depth at the left",
        help="Back wall to where the front may be.",
        least="1/2 in",
        blank_means="The depth isn’t figured.",
        in_short="{} deep at the left",
    ),
    length(
        "right_depth",
        "Depth at the right",
        least="1/2 in",
        blank_means="Same as the left.",
        in_short="{} at the right",
    ),
    length(
        "scribe",
        "Scribe allowance per side",
        help="The strip at its narrowest. It takes about this much to hold it and plane it to the "
        "wall (shop practice).",
        default='1/4"',
        metric="6 mm",
        most="12 in",
        shown_when=("built", ("walls", "left", "right")),
        in_short="{} scribe",
    ),
    *_wall("left"),
    *_wall("right"),
    choice("bowed", "Straight or bowed", _BOWED, shown_when=("built", ("walls",)), in_short="{}"),
    rows(
        "by_height",
        "Widths by height",
        (_UP, length("width", "Width", least="1 in")),
        row_label="Reading",
        most_rows=12,
        shown_when=(("built", ("walls",)), ("bowed", ("left", "right"))),
    ),
    rows(
        "off_line",
        "Off a plumb line",
        (_UP, length("left", "To the left wall"), length("right", "To the right wall")),
        row_label="Reading",
        most_rows=12,
        help="Hang one line between the walls, or use an upright laser.",
        shown_when=(("built", ("walls",)), ("bowed", ("line",))),
    ),
    *_back(),
    lengths(
        "between",
        "Heights between the ends",
        row_label="Height",
        most_rows=7,
        least="1 in",
        help="Floor to ceiling at even steps, left to right. One is the middle’s.",
        blank_means="The ceiling is straight.",
        in_short="{} between",
    ),
    choice(
        "floor",
        "Floor",
        {"level": "Level", "left": "High at the left", "right": "High at the right"},
        in_short="floor {}",
    ),
    length(
        "floor_out",
        "Floor out of level",
        help="From end to end of the space.",
        default='0"',
        most="24 in",
        shown_when=("floor", ("left", "right")),
    ),
    length(
        "line",
        "Level line above the high point",
        help="At the top of the toe kick, or as high as it’s handy.",
        default='4"',
        metric="100 mm",
        least="1/4 in",
        shown_when=("floor", ("left", "right")),
    ),
    length(
        "above",
        "Gap above the case",
        help="For trim, or to tip the case up.",
        blank_means="No gap: the case goes right up to the ceiling.",
        in_short="{} above it",
    ),
    length(
        "baseboard",
        "Baseboard thickness",
        most="4 in",
        blank_means="No baseboard.",
        in_short="{} baseboard",
    ),
    choice(
        "at_baseboard",
        "At the baseboard",
        {
            "notch": "Notch the case around it",
            "front": "Keep the case clear of it",
            "cut": "Cut the baseboard away",
        },
        in_short="{}",
    ),
    SEPARATE_KICK,
)

BASIC = ("built", "widths", "left_height", "right_height", "left_depth", "scribe")
EXAMPLE = {
    "built": "walls",
    "widths": ["37 9/16", "37 1/2", "37 5/8"],
    "left_height": "96 1/4",
    "right_height": "96 1/8",
    "left_depth": "15 1/2",
    "right_depth": "15 3/8",
    "scribe": "1/4",
    "left_lean": "in",
    "left_out": "1/4",
    "right_lean": "away",
    "right_out": "1/8",
    "floor": "left",
    "floor_out": "3/8",
    "line": "4",
    "above": "2",
    "baseboard": "1/2",
    "at_baseboard": "notch",
    "kick": "4",
}
