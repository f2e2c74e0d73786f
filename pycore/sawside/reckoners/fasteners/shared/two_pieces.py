"""A fastener through one piece into another: the fields of both, and what cannot be. Inches."""

from sawside.errors import Refusal
from sawside.lengths.fine import fine_text
from sawside.reckoners.fields import length
from sawside.reckoners.shared.board_fields import thickness

OVER = thickness("over", "Piece it goes through", help="Its thickness.", in_short="through {}")
UNDER = thickness(
    "under",
    "Piece it bites into",
    help="How deep the wood is there: a board’s width where it goes into an edge.",
    most="24 in",
    in_short="into {}",
)
SPARE = length("spare", "Wood left past the tip", default='1/8"', metric="3 mm", most="6 in")


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
