"""What is asked about a screw, the two pieces, the wood and the drill bits."""

from sawside.reckoners.fasteners.shared.two_pieces import BITES_INTO, BITS, OVER, SPARE, UNDER
from sawside.reckoners.fields import choice, length, material
from sawside.reckoners.shared.board_fields import thickness
from sawside.wood.screws import SIZES

_OWN = ("size", ("own",))

FIELDS = (
    choice(
        "size",
        "Screw size",
        {key: size.name for key, size in SIZES.items()} | {"own": "My own"},
        default="8",
        metric="m4",
    ),
    length(
        "shank",
        "Shank diameter",
        default="0.164 in",
        metric="4 mm",
        least="1/32 in",
        most="3/4 in",
        shown_when=_OWN,
    ),
    OVER,
    UNDER,
    BITES_INTO,
    length(
        "length",
        "Screw length",
        least="1/4 in",
        most="12 in",
        blank_means="A stock length that holds and doesn’t come through.",
        in_short="{} long",
    ),
    choice(
        "into",
        "Goes into",
        {"face": "A face", "edge": "An edge", "end": "End grain"},
        in_short="into {}",
    ),
    thickness("edge", "Thickness of that edge", help="", shown_when=("into", ("edge", "end"))),
    choice("head", "Head", {"flat": "Flat, countersunk", "pan": "Pan, round or washer head"}),
    length(
        "head_wide",
        "Head diameter",
        least="1/16 in",
        most="2 in",
        blank_means="Twice the shank (unchecked).",
        shown_when=("head", ("flat",)),
    ),
    length(
        "sink",
        "Head below the face",
        help="For a plug or filler. 0 is flush.",
        default='0"',
        most="6 in",
    ),
    SPARE,
    length(
        "root",
        "Root diameter",
        help="Between the threads.",
        least="1/64 in",
        most="3/4 in",
        blank_means="Two thirds of the shank (Wood Handbook).",
    ),
    length(
        "pilot",
        "Pilot bit you have",
        least="1/64 in",
        most="3/4 in",
        blank_means="The nearest one of the drill set.",
    ),
    BITS,
    choice("pull", "Straight pull", {"no": "Not figured", "yes": "Figure it"}),
    material(
        "species",
        "Species it bites into",
        figure="weight",
        default="oak_northern_red",
        shown_when=("pull", ("yes",)),
    ),
)
