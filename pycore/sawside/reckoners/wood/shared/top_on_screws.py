"""How long the slots are for the screws that hold a solid top to its base."""

from sawside.drawing.wood.slot import slot
from sawside.errors import Refusal
from sawside.reckoners.declaration import Reckoning
from sawside.reckoners.wood.shared.moisture_fields import board_of, board_text, cautions
from sawside.reckoners.wood.shared.slot_fields import (
    screw_lines,
    slot_answers,
    slot_length,
    slot_of_screw,
    slot_texts,
)

_SNUG = (
    "Plain holes along one line only. Slot the rest across the grain, with washers, snug "
    "enough to hold but loose enough to slide. Cut the slots in the cleat or apron, which stays "
    "put: the screws bite into the top and move with it (shop practice)."
)
_MOVES = "From where it is now, the screw moves in {} and out {}. The fixed line is at the left."


def top_on_screws(given, show):
    """For each screw the length of its slot and how far it moves each way, inches."""
    board = board_of(given)
    line = {"middle": given.width / 2, "front": 0, "back": given.width}[given.fixed]
    for row, place in enumerate(given.screws):
        if place > given.width:
            raise Refusal(
                "impossible",
                f"Screw {row + 1}, {show.text(place)} from the front edge, is off the top, which "
                f"is {show.text(given.width)} wide.",
                "Enter a distance that’s on the top.",
                field="screws",
                row=row,
            )
    distances = [abs(place - line) for place in given.screws]
    slots = [slot_of_screw(board, distance, given.shank) for distance in distances]
    longest = max(slots, key=lambda each: each.length - given.shank)
    told = slot_texts(longest, show)
    return Reckoning(
        answers=slot_answers(slots, show, "away", "towards") | {"wood": board_text(board)},
        working=(*board.rates, *screw_lines(slots, distances, board, show)),
        drawing=slot(longest, "The longest slot", told, _MOVES),
        cautions=(_SNUG, *cautions(board)),
        main="slots",
        verdict=f"Longest slot {show.bare(slot_length(longest, show))}",
    )
