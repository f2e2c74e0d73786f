"""What is asked about dovetails at a corner."""

from sawside.reckoners.fields import choice, count, length, number
from sawside.reckoners.shared.board_fields import thickness

FIELDS = (
    length("height", "Board width", help="The height of the box.", least="1/2 in", most="4 ft"),
    count(
        "tails",
        "Tails",
        least="1",
        most="60",
        blank_means="About one for every 1 1/2″, or 38 mm (shop practice).",
    ),
    thickness(
        "pin_board", "Pin board thickness", help="The front or back.", least="1/16 in", most="3 in"
    ),
    thickness(
        "tail_board",
        "Tail board thickness",
        help="The sides.",
        default='1/2"',
        metric="12 mm",
        least="1/16 in",
        most="3 in",
    ),
    choice("kind", "Joint", {"through": "Through", "blind": "Half-blind"}),
    length(
        "lap",
        "Lap left in front",
        default='1/4"',
        metric="6 mm",
        least="1/64 in",
        most="2 in",
        shown_when=("kind", ("blind",)),
    ),
    number(
        "slope",
        "Slope",
        "to 1",
        help="6 for softwood, 8 for hardwood.",
        default="8",
        least="3",
        most="20",
    ),
    length(
        "pin",
        "Pin width",
        help="At its narrow end.",
        default='1/4"',
        metric="6 mm",
        least="1/64 in",
        most="6 in",
    ),
    length(
        "half",
        "Half pin at each edge",
        help="At its narrow end.",
        least="1/64 in",
        most="6 in",
        blank_means="Same as a whole one.",
    ),
    length(
        "tool",
        "Chisel or bit width",
        help="It has to go in between two tails.",
        default='1/4"',
        metric="6 mm",
        least="1/64 in",
        most="3 in",
    ),
)
