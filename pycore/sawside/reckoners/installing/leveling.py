"""What goes under a base on a floor that isn't level, or how it's cut, from a level line."""

from sawside.drawing.installing.base_on_floor import base_on_floor
from sawside.reckoners.declaration import Reckoner, Reckoning
from sawside.reckoners.fields import choice, length, lengths
from sawside.reckoners.installing.shared.leveling.floor import floor_of
from sawside.reckoners.installing.shared.leveling.told import (
    ANSWERS,
    answers_of,
    cautions_of,
    main_of,
    verdict_of,
    working_of,
)


def compute(given, show):
    """Shims (inches) from the high point, or the heights of a base that is cut to the floor."""
    floor = floor_of(given, show)
    return Reckoning(
        answers=answers_of(given, show, floor),
        working=tuple(working_of(given, show, floor)),
        drawing=base_on_floor(show, given, floor),
        cautions=tuple(cautions_of(given, show, floor)),
        main=main_of(given, floor),
        verdict=verdict_of(given, floor),
    )


_HELP = "From one level line, left to right at even steps. A longer reading is a lower floor."


def _line(key, label, **more):
    return lengths(key, label, row_label="Spot", most_rows=12, most="12 ft", **more)


RECKONER = Reckoner(
    key="leveling",
    title="Leveling the base",
    asks="What goes under a base on this floor, and where is its level line?",
    words=(
        "level the base, leveling, level a cabinet, shims, shim, shimming, out of level, uneven "
        "floor, high point, high spot, level line on the wall, toe kick base, ladder base, row of "
        "cabinets, run of cabinets, scribe the base, install"
    ),
    order=1420,
    job="putting it up",
    picture={
        "wood": "M4 17h32v11H4z",
        "ink": "M2 36l36-5M4 8h32",
        "chalk": "M8 8v26m-3-3l3 3 3-3M34 28v3M28 28v4M22 28v4",
    },
    basic=("front", "base"),
    fields=(
        _line("front", "Down to the floor, front", help=_HELP, in_short="{} at the front"),
        _line(
            "back",
            "Down to the floor, back",
            blank_means="The back isn’t figured.",
            in_short="{} at the back",
        ),
        length(
            "base",
            "Base height",
            help="At the high point.",
            default='4"',
            metric="100 mm",
            least="1/2 in",
            most="6 ft",
        ),
        choice("way", "Base", {"shim": "Shimmed", "cut": "Cut to the floor"}, in_short="{}"),
        lengths(
            "cases",
            "Cases in a row",
            row_label="Case",
            most_rows=8,
            least="1 in",
            help="Their widths, left to right.",
            blank_means="Shims where you measured.",
            in_short="cases {}",
        ),
        choice(
            "taken",
            "With cases, measured",
            {"joints": "At each end and joint", "steps": "At even steps"},
        ),
    ),
    answers=ANSWERS,
    source=(
        "Arithmetic: a level base touches the floor at its high point, where a level line is "
        "nearest to it; every other place needs the difference. Straight from one reading to the "
        "next. Shims in pairs, and blocks above 3/4″ (19 mm): common practice, no source."
    ),
    compute=compute,
    example={
        "front": ["36 1/8", "36 1/2"],
        "back": ["36", "36 5/16"],
        "base": "4",
        "cases": ["37 1/8"],
    },
)
