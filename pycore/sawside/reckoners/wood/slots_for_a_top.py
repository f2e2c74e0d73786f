"""How long the slots are that let a solid top move: over its base, or behind a breadboard end."""

from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.fields import choice, length, lengths
from sawside.reckoners.wood.shared.breadboard_ends import behind_a_breadboard
from sawside.reckoners.wood.shared.moisture_fields import MOISTURE, SOURCE, WOOD
from sawside.reckoners.wood.shared.top_on_screws import top_on_screws

_FIXED = {"middle": "Along the center", "front": "At the front edge", "back": "At the back edge"}
_SCREWS, _PINS = ({"shown_when": ("held", (held,))} for held in ("screws", "pins"))


def compute(given, show):
    """By what holds the top: screws that move with it, or pins that stay in a breadboard end."""
    held = top_on_screws if given.held == "screws" else behind_a_breadboard
    return held(given, show)


RECKONER = Reckoner(
    key="slots_for_a_top",
    title="Slots for a top",
    asks="How long are the slots that let a solid top move?",
    words=(
        "slot, tabletop, attach a top, top, elongated hole, screw slot, figure 8 fastener, "
        "fasten, z clip, button, breadboard, breadboard end, tongue, pin, movement, expansion"
    ),
    order=402,
    job="wood",
    picture={
        "wood": "M3 9h34v22H3z",
        "ink": "M12 15h16a5 5 0 0 1 0 10H12a5 5 0 0 1 0-10z",
        "chalk": "M17 20a3 3 0 1 0 6 0a3 3 0 1 0-6 0z",
    },
    fields=(
        choice("held", "Top held by", {"screws": "Screws", "pins": "Breadboard pins"}),
        length(
            "width", "Top width", help="Across the grain, today.", least="1 in", in_short="{} wide"
        ),
        lengths(
            "screws",
            "Screws from the front edge",
            help="Measured across the grain.",
            row_label="Screw",
            most_rows=8,
            in_short="screws at {}",
            **_SCREWS,
        ),
        choice("fixed", "Fixed line", _FIXED, in_short="fixed {}", **_SCREWS),
        length(
            "shank",
            "Screw shank",
            default='3/16"',
            metric="5 mm",
            least="1/32 in",
            most="1 in",
            **_SCREWS,
        ),
        lengths(
            "pins",
            "Pins from the center",
            help="One side only; the other is the same.",
            row_label="Pin",
            most_rows=8,
            in_short="pins at {}",
            **_PINS,
        ),
        length(
            "pin",
            "Pin diameter",
            default='1/4"',
            metric="6 mm",
            least="1/16 in",
            most="1 in",
            **_PINS,
        ),
        *WOOD,
        *MOISTURE,
    ),
    answers=(
        Answer("slots", "Slot lengths", "lengths", must="reach"),
        Answer("proud", "Top past the end at its wettest, each side", must="agree"),
        Answer("short", "Top short of the end at its driest, each side", must="agree"),
        Answer("away", "Moves out from today", "lengths", must="reach"),
        Answer("towards", "Moves in from today", "lengths", must="reach"),
        Answer("pin_away", "Slot runs toward the edge by", "lengths", must="reach"),
        Answer("pin_towards", "Slot runs toward the center by", "lengths", must="reach"),
        Answer("wood", "The wood and its moisture", "text"),
    ),
    source=SOURCE,
    compute=compute,
    example={
        "held": "screws",
        "width": "14 1/2",
        "screws": ['1 1/2"', '7 1/4"', '13"'],
        "fixed": "front",
        "pins": ['3"', '6"'],
        "pin": "1/4",
        "species": "cherry_black",
        "now": "7",
        "year": "most",
    },
    basic=("held", "width", "screws", "pins", "species", "now"),
)
