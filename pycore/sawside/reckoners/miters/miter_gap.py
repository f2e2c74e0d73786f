"""Open miters: what made the gap that is seen, or how wide a gap an error makes."""

from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.fields import angle, choice, length
from sawside.reckoners.miters.shared.field_bounds import blank
from sawside.reckoners.miters.shared.gaps.cause_of_a_gap import cause_of_a_gap
from sawside.reckoners.miters.shared.gaps.gap_of_an_error import gap_of_a_length, gap_of_an_angle
from sawside.reckoners.miters.shared.gaps.ring_fields import CORNERS, width_field

_ASKED = {"cause": "What caused a gap", "angle": "Gap from an angle", "length": "Gap from a length"}
_SOLVERS = {"cause": cause_of_a_gap, "angle": gap_of_an_angle, "length": gap_of_a_length}
_CAUSE, _ANGLE, _LENGTH = (("asked", (each,)) for each in _ASKED)
_WAYS = {"small": "Too low (closer to square)", "large": "Too high"}


def compute(given, show):
    """The error behind a gap, in degrees and inches, or the gap of an error in inches."""
    return _SOLVERS[given.asked](given, show)


def _gap(key, label, help_):
    return length(key, label, help=help_, default="0 in", most="6 in", shown_when=_CAUSE)


RECKONER = Reckoner(
    key="miter_gap",
    title="Miter gap",
    asks="My miter has a gap: is it the angle or the length? How big a gap does an error make?",
    words=(
        "miter gap, open miter, open joint, miter won't close, gap, heel, toe, error, fault, "
        "angle off, too short, feeler, how close, tolerance, accuracy, closing, off"
    ),
    order=230,
    job="miters and frames",
    picture={
        "wood": "M3 5h31l-9 12H3zM37 9v28H25V17z",
        "chalk": "M7 26a4.5 4.5 0 1 1 6 4.5v2.5M13 36.5v.5",
    },
    basic=("asked", "width", "heel", "toe", "angle_off", "side", "length_off"),
    fields=(
        choice("asked", "Solve for", _ASKED),
        width_field(shown_when=("asked", ("cause", "angle"))),
        _gap("heel", "Gap at the heel", "Inside of the joint, square to the cut."),
        _gap("toe", "Gap at the toe", "Outside of the joint, square to the cut."),
        angle(
            "angle_off",
            "Angle off by",
            help="Degrees, at each cut.",
            default="0.5",
            least="0.01",
            most="5",
            shown_when=_ANGLE,
        ),
        length(
            "side",
            "Side, inside",
            help="Inside edge of a piece cut right.",
            least="1/8 in",
            shown_when=_ANGLE,
        ),
        length(
            "length_off",
            "Length off by",
            help="On one piece only.",
            default="1/32 in",
            metric="0.5 mm",
            least="0.001 in",
            most="6 in",
            shown_when=_LENGTH,
        ),
        CORNERS,
        choice("angle_way", "Saw set", _WAYS, shown_when=_ANGLE),
        length(
            "other_side",
            "Other side, inside",
            help="Inside edge of the next piece, for a rectangle.",
            least="1/8 in",
            **blank("All sides match."),
            shown_when=_ANGLE,
        ),
        choice(
            "length_way", "Piece", {"short": "Too short", "long": "Too long"}, shown_when=_LENGTH
        ),
    ),
    answers=(
        Answer("fault", "What’s wrong", "text"),
        Answer("told", "How it happened", "text"),
        Answer("setting_off", "Each cut is off by", "angle"),
        Answer("all_off", "Or, with the other joints tight, by", "angle"),
        Answer("length_off", "Piece is short by", must="agree"),
        Answer("gap", "Gap at each joint", must="agree"),
        Answer("feeler", "Feeler gauge that fits", "text"),
        Answer("opens", "Where it opens", "text"),
        Answer("closing", "Total error around the frame", "angle"),
        Answer("last_heel", "Last joint, others tight: heel", must="agree"),
        Answer("last_toe", "Last joint, others tight: toe", must="agree"),
    ),
    source=(
        "Plane trigonometry; the corner itself is taken as true. Heel for the inside end of a "
        "miter and toe for the outside one: shop practice."
    ),
    compute=compute,
    example={"asked": "cause", "width": "2 1/4", "heel": "0", "toe": "1/32", "corners": "4"},
)
