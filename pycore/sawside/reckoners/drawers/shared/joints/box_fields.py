"""What is asked about a box joint."""

from sawside.reckoners.fields import choice, length
from sawside.reckoners.shared.board_fields import thickness

FIELDS = (
    length("height", "Board width", help="The height of the box.", least="1/2 in", most="4 ft"),
    thickness(
        "thickness", "Side thickness", default='1/2"', metric="12 mm", least="1/16 in", most="3 in"
    ),
    thickness(
        "other",
        "Front and back thickness",
        default=None,
        metric=None,
        least="1/16 in",
        most="3 in",
        blank_means="Same as the sides.",
    ),
    length(
        "pin",
        "Pin width",
        help="Of the cutter: measure a cut in scrap.",
        default='1/4"',
        metric="6 mm",
        least="1/32 in",
        most="4 in",
    ),
    choice(
        "gives",
        "What changes",
        {"height": "The board: rip it to whole pins", "pin": "The pins: fill the board"},
    ),
    choice(
        "count",
        "Pins in the height",
        {
            "any": "Odd or even",
            "odd": "Odd: both edges alike",
            "even": "Even: a pin at one edge, a slot at the other",
        },
    ),
    choice("starts", "Pin at the reference edge", {"sides": "Sides", "ends": "Front and back"}),
    length(
        "proud",
        "Pins left proud",
        help="To sand flush.",
        default='1/32"',
        metric="0.5 mm",
        most="1/4 in",
    ),
    length(
        "off",
        "Setting error per pin",
        help="How well you can set the jig.",
        default='1/64"',
        metric="0.4 mm",
        least="1/1000 in",
        most="1/8 in",
    ),
)
