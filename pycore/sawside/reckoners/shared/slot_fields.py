"""What the questions about slots share: a fastener that moves with the wood, and its answers."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.lengths.fine import on_fine_marks
from sawside.lengths.marks import to_mark
from sawside.lengths.real import Exact
from sawside.reckoners.declaration import Answer
from sawside.wood.numbers import number_text, percent_text, size_text


@dataclass(frozen=True, slots=True)
class Slot:
    """The slot of one fastener: what it moves away from the fixed line and towards it, inches."""

    away: Exact
    towards: Exact
    shank: Fraction

    @property
    def length(self):
        """From end to end."""
        return self.shank + self.away + self.towards


def slot_of(board, distance, shank):
    """The slot of a fastener so far from the line that is fixed."""
    return Slot(board.growth(distance), board.shrinkage(distance), shank)


def slot_answers(slots, show):
    """The answers about slots: each whole, and its two ways from the fastener's place now."""

    def numbered(values, told):
        return [(f"Fastener {number}", told(each)) for number, each in enumerate(values, 1)]

    return {
        "slots": numbered(
            (each.length for each in slots), lambda each: to_mark(each, show.settings.grid, "up")
        ),
        "away": numbered((each.away for each in slots), lambda each: on_fine_marks(each, show)),
        "towards": numbered(
            (each.towards for each in slots), lambda each: on_fine_marks(each, show)
        ),
    }


SLOTS = (
    Answer("slots", "Slot lengths", "lengths"),
    Answer("away", "It moves out from where it is now", "lengths"),
    Answer("towards", "It moves in from where it is now", "lengths"),
)
"""In and out are towards the line that is fixed, and away from it."""


def slot_lines(slots, distances, board, show):
    """The lines of working of slots."""
    wettest, driest = max(board.year.high, board.now), min(board.year.low, board.now)
    for at, (slot, distance) in enumerate(zip(slots, distances, strict=True), 1):
        yield (
            f"Fastener {at}, {show.number(distance)} from the fixed line: "
            f"{show.number(slot.shank)} + {show.number(distance)} × "
            f"{number_text(board.coefficient, 5)} × ({percent_text(wettest)} − "
            f"{percent_text(driest)}) = {size_text(slot.length, show)}"
        )
