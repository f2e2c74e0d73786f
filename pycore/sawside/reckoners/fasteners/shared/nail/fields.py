"""What is asked about a nail and the two pieces it holds together."""

from sawside.reckoners.fasteners.shared.two_pieces import BITES_INTO, BITS, OVER, SPARE, UNDER
from sawside.reckoners.fields import choice, length
from sawside.wood.nails import KINDS

FIELDS = (
    choice("kind", "Nail", KINDS, metric="own"),
    length(
        "diameter",
        "Nail diameter",
        default="0.1 in",
        metric="2.5 mm",
        least="1/64 in",
        most="1/2 in",
        shown_when=("kind", ("own",)),
    ),
    OVER,
    UNDER,
    BITES_INTO,
    length(
        "length",
        "Nail length",
        least="1/4 in",
        most="12 in",
        blank_means="Three times the first piece, or what doesn’t come through.",
        in_short="{} long",
    ),
    length("sink", "Set below the face", default='0"', most="1 in"),
    SPARE,
    BITS,
)
