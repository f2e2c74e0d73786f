"""How a solid top moves behind a breadboard end, and how long the slots for its pins are."""

from sawside.drawing.wood.slot import slot
from sawside.errors import Refusal
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.real import sign
from sawside.reckoners.declaration import Reckoning
from sawside.reckoners.wood.shared.moisture_fields import board_of, board_text, cautions
from sawside.reckoners.wood.shared.slot_fields import (
    pin_lines,
    slot_answers,
    slot_of_pin,
    slot_texts,
)

_FIXED = (
    "Glue and pin the center of the end only. The other pins sit in plain holes in the end and go "
    "through slots in the tongue: drill the tongue’s hole where the pin is now, then lengthen it "
    "each way by the amounts shown (shop practice). The end barely moves along its own grain, so "
    "that isn’t figured in."
)
_SLOTTED = (
    "From the hole where the pin is now, the slot runs toward the center by {} and toward the "
    "edge by {}. The center of the top is at the left."
)


def behind_a_breadboard(given, show):
    """The steps at each side in inches, for an end that is cut to the width of the top now."""
    board, half = board_of(given), given.width / 2
    for row, place in enumerate(given.pins):
        if place >= half:
            raise Refusal(
                "impossible",
                f"Pin {row + 1}, {show.text(place)} from the center, is past the edge, which is "
                f"{show.text(half)} from it.",
                "Enter a distance between the center and the edge.",
                field="pins",
                row=row,
            )
    slots = [slot_of_pin(board, place, given.pin) for place in given.pins]
    outer = max(slots, key=lambda each: each.length)
    told = slot_texts(outer, show)
    proud, short = (
        on_fine_marks(each, show) for each in (board.growth(half), board.shrinkage(half))
    )
    return Reckoning(
        answers={
            "proud": proud,
            "short": short,
            **slot_answers(slots, show, "pin_away", "pin_towards"),
            "wood": board_text(board),
        },
        working=(
            f"Each side moves as half the width does: {show.number(given.width)} ÷ 2 = "
            f"{show.number(half)}",
            *board.rates,
            *pin_lines(slots, given.pins, board, show),
        ),
        drawing=slot(outer, "The outermost pin", told, _SLOTTED),
        cautions=(
            *_in_the_middle(given.pins),
            *_running_out(given.pins, slots, half),
            _FIXED,
            *cautions(board),
        ),
        main="proud",
        verdict=f"Wet {show.brief(proud)} past its ends, dry {show.brief(short)} short",
    )


def _in_the_middle(pins):
    for number, place in enumerate(pins, 1):
        if not place:
            yield (
                f"Pin {number} is at the center, where you glue the end. Drill a plain hole for "
                "it, not a slot."
            )


def _running_out(pins, slots, half):
    for number, (place, slot_) in enumerate(zip(pins, slots, strict=True), 1):
        if sign(half - place - slot_.shank / 2 - slot_.away) <= 0:
            yield (
                f"Pin {number}: its slot runs out the edge of the tongue. Set the pin farther in, "
                "so there’s wood left past the slot."
            )
