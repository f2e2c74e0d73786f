"""What is asked about the studs behind a case, the case, and the screws into them."""

from sawside.reckoners.fields import choice, length, lengths
from sawside.reckoners.shared.board_fields import thickness
from sawside.wood.screws import SIZES

_STOUT = ("8", "9", "10", "12", "14", "m4", "m45", "m5", "m6")
"""Sizes that hold a case on a wall: common practice, no source."""

FIELDS = (
    lengths(
        "studs",
        "Studs",
        row_label="Stud",
        most_rows=16,
        help="From the left wall, or from the case’s left side. One is enough: the spacing gives "
        "the others.",
        in_short="studs at {}",
    ),
    length(
        "left",
        "Case’s left side",
        help="From the same place. 0 if you measured from the case.",
        default='0"',
        metric="0 mm",
        most="40 ft",
        in_short="case from {}",
    ),
    length("width", "Case width", help="Outside.", least="4 in", most="20 ft", in_short="{} wide"),
    length(
        "spacing",
        "Stud spacing",
        help="On center. Used when you enter one stud.",
        default="16 in",
        metric="400 mm",
        least="8 in",
        most="48 in",
    ),
    choice(
        "at",
        "Studs measured to",
        {"center": "Their centers", "left": "Their left edges", "right": "Their right edges"},
    ),
    length(
        "stud",
        "Stud width",
        help="The edge that faces you.",
        default="1 1/2 in",
        metric="38 mm",
        least="1 in",
        most="6 in",
    ),
    length(
        "off",
        "Studs good to within ±",
        help="How far your finder may miss. Try each stud with a small nail where the case will "
        "cover it.",
        default="1/4 in",
        metric="6 mm",
        most="3 in",
    ),
    length(
        "height",
        "Case height",
        least="4 in",
        most="12 ft",
        blank_means="It’s only for the drawing.",
        in_short="{} high",
    ),
    lengths(
        "strips",
        "Back strips",
        row_label="Strip",
        most_rows=6,
        help="Heights of their centers above the case’s bottom.",
        blank_means="One at the top.",
        in_short="strips at {}",
    ),
    lengths(
        "dividers",
        "Dividers",
        row_label="Divider",
        most_rows=8,
        help="Their centers, from the case’s left side.",
        blank_means="No dividers.",
        in_short="dividers at {}",
    ),
    thickness("side", "Sides and dividers", help="Their thickness.", most="3 in"),
    length(
        "clear",
        "Room for the driver",
        help="From a side or divider to a screw’s center.",
        default="1 in",
        metric="25 mm",
        most="6 in",
    ),
    thickness("over", "Strip and back", help="Wood the screw goes through.", least="1/8 in"),
    length(
        "wall",
        "Wall covering",
        help="Drywall, plaster or paneling, and any gap behind the case.",
        default='1/2"',
        metric="12 mm",
        most="4 in",
    ),
    choice(
        "size", "Screw size", {key: SIZES[key].name for key in _STOUT}, default="10", metric="m5"
    ),
    length(
        "length",
        "Screw length",
        least="1/2 in",
        most="12 in",
        blank_means="A stock length that holds.",
        in_short="{} long",
    ),
)

BASIC = ("studs", "left", "width")
EXAMPLE = {
    "studs": ["22 3/8"],
    "left": "12 1/4",
    "width": "37 1/8",
    "height": "76",
    "strips": ["4 3/4", "73 1/2"],
    "dividers": ["18 9/16"],
}
