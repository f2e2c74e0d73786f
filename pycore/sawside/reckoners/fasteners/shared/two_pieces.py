"""A fastener through one piece into another: what is asked and said of both, and what cannot be.
Inches."""

from sawside.errors import Refusal
from sawside.lengths.fine import fine_text, on_fine_marks
from sawside.reckoners.fields import choice, length
from sawside.reckoners.shared.board_fields import thickness
from sawside.wood.caution import Caution
from sawside.wood.drill_bits import SETS
from sawside.wood.fastening import DENSE

OVER = thickness("over", "Piece it goes through", help="Its thickness.", in_short="through {}")
UNDER = thickness(
    "under",
    "Piece it bites into",
    help="How deep the wood is there: a board’s width where it goes into an edge.",
    most="24 in",
    in_short="into {}",
)
BITES_INTO = choice("wood", "Wood it bites into", DENSE)
BITS = choice("bits", "Drill set", {key: name for key, (name, _) in SETS.items()}, metric="half_mm")
SPARE = length("spare", "Wood left past the tip", default='1/8"', metric="3 mm", most="6 in")
INTO_A_WALL = Caution(
    "Into a wall, find wires and pipes first.",
    "Into a wall, find wires and pipes first, and pick another place where there could be one. If "
    "you aren’t sure, ask a licensed pro.",
)


def reach_and_left(show, driven):
    """How far something that is driven bites, and the wood past its tip: the answers of both."""
    return {
        "reach": on_fine_marks(driven.reach, show, "be there"),
        "left": on_fine_marks(driven.left, show, "be there"),
    }


def in_words(show, driven, name):
    """What a drawing of both pieces shows."""
    reach, left = (show.brief(each) for each in reach_and_left(show, driven).values())
    return (
        f"Two pieces cut through at a {name}. It reaches {reach} into the lower one and leaves "
        f"{left} of it below the tip."
    )


def little_left(given, show, driven):
    """The caution about less wood past the tip than is asked for; none where there is enough."""
    if driven.left < given.spare:
        told = show.text(reach_and_left(show, driven)["left"])
        yield f"Only {told} of wood is left past the tip."


def check_room(given, show):
    """ "impossible" where what has to be left past the tip is all that there is."""
    if given.spare >= given.under:
        raise Refusal(
            "impossible",
            f"With {fine_text(given.spare, show)} left past the tip, nothing reaches into wood "
            f"{fine_text(given.under, show)} deep.",
            f"Leave less than {fine_text(given.under, show)}.",
            field="spare",
        )


def check_length(show, name, length, through, under, field):
    """ "impossible" where a fastener of this length stays in the first piece, or comes out."""
    if length <= through:
        raise Refusal(
            "impossible",
            f"A {fine_text(length, show)} {name} doesn’t get through the first piece.",
            f"Use one longer than {fine_text(through, show)}.",
            field=field,
        )
    if length >= through + under:
        raise Refusal(
            "impossible",
            f"A {fine_text(length, show)} {name} comes through the far face: from its head to "
            f"there is {fine_text(through + under, show)}.",
            f"Use one shorter than {fine_text(through + under, show)}.",
            field=field,
        )
