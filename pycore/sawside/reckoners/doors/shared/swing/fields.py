"""What is asked about the swing of a door."""

from sawside.reckoners.fields import angle, choice, clearance, length
from sawside.reckoners.shared.board_fields import thickness

_INSET = {"shown_when": ("fit", ("inset",))}
_BUTT = {"shown_when": ("hinge", ("butt",))}
_CUP = {"shown_when": ("hinge", ("cup",))}

FIELDS = (
    length("width", "Door width", least="1 in", most="10 ft"),
    length(
        "wall",
        "Hinge edge to the wall",
        help="Or to a neighbor’s open door, or its handle.",
        blank_means="No wall beside it.",
    ),
    length(
        "handle",
        "Handle sticks out",
        help="From the face of the door.",
        default='1 1/4"',
        metric="32 mm",
        most="12 in",
    ),
    choice("fit", "Fit", {"inset": "Inset", "overlay": "Overlay or lipped"}),
    thickness("thickness", "Door thickness", least="1/8 in", most="4 in"),
    choice("hinge", "Hinge", {"butt": "Butt, at the corner", "cup": "Cup"}),
    length(
        "out", "Pin in front of the face", help="Its center.", default='0"', most="2 in", **_BUTT
    ),
    length(
        "behind",
        "Pivot behind the face",
        blank_means="Half the door’s thickness: the hinge maker’s sheet comes first.",
        most="4 in",
        **_CUP,
    ),
    length(
        "along",
        "Pivot from the hinge edge",
        blank_means="Half the door’s thickness: the hinge maker’s sheet comes first.",
        most="4 in",
        **_CUP,
    ),
    choice(
        "neighbor",
        "Closed door past the hinge",
        {"no": "None", "yes": "Flush with this one"},
        help="Where the handle may meet its front when this door swings all the way.",
        **_BUTT,
    ),
    angle(
        "stops",
        "Hinge stops at",
        help="Where the hinge opens no farther.",
        blank_means="180° with a butt hinge, 110° with a cup hinge.",
        least="10",
        most="180",
    ),
    length(
        "handle_from",
        "Handle from the free edge",
        help="To the near side of the handle.",
        default='1 1/2"',
        metric="38 mm",
    ),
    length(
        "handle_wide",
        "Handle width",
        help="Along the width of the door.",
        default='3/4"',
        metric="20 mm",
        most="10 ft",
    ),
    clearance("gap", "Gap at the free edge", "clearance_at_door", most="2 in", **_INSET),
    length(
        "drawer",
        "Drawer from the hinge edge",
        help="To the side of a drawer or pullout behind the door.",
        blank_means="No drawer behind the door.",
    ),
)
