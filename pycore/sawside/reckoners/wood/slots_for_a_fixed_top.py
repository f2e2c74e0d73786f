"""How long the slots are for the screws that hold a solid top to its base."""

from sawside.drawing.wood.slot import slot
from sawside.errors import Refusal
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning, choice, length, lengths
from sawside.reckoners.wood.shared.moisture_fields import (
    MOISTURE,
    SOURCE,
    WOOD,
    board_of,
    board_text,
    cautions,
)
from sawside.reckoners.wood.shared.slot_fields import (
    screw_lines,
    slot_answers,
    slot_of_screw,
    slot_texts,
    slots_told,
)

_FIXED = {"middle": "Along the center", "front": "At the front edge", "back": "At the back edge"}
_SNUG = (
    "Use plain holes along one line only. Slot the rest across the grain, with washers, snug "
    "enough to hold but loose enough to slide. Cut the slots in the cleat or apron, which stays "
    "put: the screws bite into the top and move with it (shop practice)."
)
_MOVES = "From where it is now, the screw moves in {} and out {}. The fixed line is at the left."


def compute(given, show):
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
        answers=slot_answers(slots, show) | {"wood": board_text(board)},
        working=(*board.rates, *screw_lines(slots, distances, board, show)),
        drawing=slot(longest, "The longest slot", told, _MOVES),
        cautions=(_SNUG, *cautions(board)),
        verdict=f"Longest slot {told[0]}" if len(slots) > 1 else "The slot",
    )


RECKONER = Reckoner(
    key="slots_for_a_fixed_top",
    title="Slotted screws for a solid top",
    asks="How long are the slots for the screws that hold a solid top?",
    words=(
        "slot, tabletop, attach a top, top, elongated hole, screw slot, figure 8 fastener, "
        "fasten, z clip, button, movement, expansion"
    ),
    order=402,
    fields=(
        length("width", "Top width", help="Across the grain.", least="1 in"),
        choice("fixed", "Fixed line", _FIXED),
        lengths(
            "screws",
            "Screws from the front edge",
            help="Measured across the grain.",
            row_label="Screw",
            most_rows=8,
        ),
        length(
            "shank", "Screw shank", default='3/16"', metric="5 mm", least="1/32 in", most="1 in"
        ),
        *WOOD,
        *MOISTURE,
    ),
    answers=(
        *slots_told("Moves out from today", "Moves in from today"),
        Answer("wood", "The wood and its moisture", "text"),
    ),
    source=SOURCE,
    compute=compute,
    example={
        "width": "14 1/2",
        "fixed": "front",
        "screws": ['1 1/2"', '7 1/4"', '13"'],
        "species": "cherry_black",
        "now": "7",
        "year": "most",
    },
)
