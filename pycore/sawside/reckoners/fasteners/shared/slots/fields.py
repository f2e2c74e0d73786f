"""What is asked about a joint with biscuits or loose tenons."""

from sawside.reckoners.fields import count, length
from sawside.reckoners.shared.board_fields import thickness

FIELDS = (
    length("long", "Joint length", least="1/2 in", in_short="{} joint"),
    thickness(label="Stock thickness"),
    length(
        "along",
        "Slot length",
        help="Along the joint: as long as the cutter makes it.",
        default='2 3/8"',
        metric="60 mm",
        least="1/8 in",
        most="12 in",
    ),
    length(
        "across",
        "Biscuit or tenon, across",
        help="Across the joint, into both parts.",
        default='15/16"',
        metric="23 mm",
        least="1/8 in",
        most="12 in",
    ),
    length("thick", "Slot thickness", default='5/32"', metric="4 mm", least="1/32 in", most="2 in"),
    length(
        "inset",
        "End slots’ inset",
        help="Joint’s end to the slot’s center.",
        default='2 1/2"',
        metric="60 mm",
        least="1/16 in",
        most="4 ft",
    ),
    length(
        "spacing",
        "Maximum spacing",
        help="On center.",
        default='8"',
        metric="200 mm",
        least="2 in",
        most="10 ft",
    ),
    count("count", "Slots", least="1", most="100", blank_means="By the maximum spacing."),
    length("from_face", "Center from the face", most="6 in", blank_means="Half the thickness."),
    length(
        "play",
        "Glue room",
        help="At the bottom of each slot.",
        default='1/32"',
        metric="1 mm",
        most="1 in",
    ),
    length(
        "behind",
        "Wood under the shallower slot",
        help="A panel’s thickness where one slot is in its face.",
        least="1/16 in",
        blank_means="Both slots are in edges, with wood enough.",
    ),
)
