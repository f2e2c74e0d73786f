"""What is asked of a panel that is glued up of strips."""

from sawside.reckoners.fields import choice, count, length, lengths
from sawside.reckoners.shared.board_fields import thickness

MOST_BOARDS = 12

FIELDS = (
    length("length", "Panel length", help="Along the grain, finished.", least="1 in", most="20 ft"),
    length("width", "Panel width", help="Finished.", least="1/2 in", most="10 ft"),
    thickness(label="Panel thickness", help="Finished.", least="1/8 in"),
    lengths(
        "boards",
        "Board widths",
        help="As measured. Just one if they’re all alike.",
        row_label="Board",
        most_rows=MOST_BOARDS,
        least="1/2 in",
        most="48 in",
    ),
    length(
        "joint",
        "Jointing, each edge",
        help="0 if you measured them jointed.",
        default='1/16"',
        metric="1.5 mm",
        most="1 in",
    ),
    length(
        "extra_width",
        "Extra width",
        help="To rip off once it’s glued.",
        default='1/4"',
        metric="6 mm",
        most="6 in",
    ),
    length("extra_length", "Extra length", default='1"', metric="25 mm", most="12 in"),
    length(
        "extra_thickness",
        "Extra thickness",
        help="To flatten it once it’s glued.",
        default='1/16"',
        metric="1.5 mm",
        most="1 in",
    ),
    choice("grain", "Lay-up", {"match": "Best faces up", "alternate": "Rings up and down in turn"}),
    length(
        "spacing",
        "Clamp spacing",
        least="1 in",
        most="36 in",
        blank_means="Twice the outer strip, 6″ to 12″.",
    ),
    count("panels", "How many panels", default="1", least="1", most="100"),
)
