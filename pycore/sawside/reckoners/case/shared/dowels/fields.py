"""What is asked about a doweled joint."""

from sawside.reckoners.fields import choice, count, length
from sawside.reckoners.shared.board_fields import thickness

FIELDS = (
    length(
        "rail",
        "Rail width",
        help="The length of the joint, across the rail’s face.",
        least="1/4 in",
        most="48 in",
    ),
    thickness("thickness", "Stock thickness", least="1/4 in", most="6 in"),
    length(
        "stile",
        "Stile width",
        help="What the holes go into.",
        default='1 1/2"',
        metric="40 mm",
        least="1/4 in",
        most="48 in",
    ),
    length(
        "diameter",
        "Dowel diameter",
        least="1/16 in",
        most="2 in",
        blank_means="The thickest common one that fits, up to half the thickness (shop practice).",
    ),
    length(
        "dowel_length",
        "Dowel length",
        least="1/4 in",
        most="12 in",
        blank_means="The longest common one that stays inside the stile.",
    ),
    count(
        "count",
        "Dowels",
        least="1",
        most="24",
        blank_means="Two, more in a wide rail, one in a very narrow one.",
    ),
    length(
        "inset",
        "Outer dowels’ inset",
        help="Edge of the rail to the center of the nearest dowel.",
        most="24 in",
        blank_means="A quarter of the rail, within limits (shop practice).",
    ),
    length("from_face", "Center from the face", most="6 in", blank_means="Half the thickness."),
    length(
        "play",
        "Glue room",
        help="At the bottom of each hole.",
        default='1/16"',
        metric="1.5 mm",
        most="1 in",
    ),
    length(
        "guide",
        "Guide height",
        help="What the bit runs through above the wood. 0 without a doweling guide.",
        default='0"',
        most="12 in",
    ),
    length(
        "test_hole",
        "Test hole depth",
        help="Drilled in scrap with the stop set: its full width, without the point.",
        least="1/64 in",
        most="12 in",
        blank_means="None drilled yet.",
    ),
    choice(
        "both", "Rails meet on both sides of the stile", {"no": "No", "yes": "At the same height"}
    ),
)
