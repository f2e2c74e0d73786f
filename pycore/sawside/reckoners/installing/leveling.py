"""What goes under a base on a floor that isn't level, or how it's cut, from a level line."""

from sawside.drawing.installing.base_on_floor import base_on_floor
from sawside.reckoners.declaration import Reckoner, Reckoning
from sawside.reckoners.fields import choice, length, lengths, rows
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


RECKONER = Reckoner(
    key="leveling",
    title="Leveling the base",
    asks="What goes under a base on this floor, and where is its level line?",
    words=(
        "level the base, leveling, level a cabinet, shims, shim, shimming, out of level, uneven "
        "floor, high point, high spot, laser level, laser line, water level, level line on the "
        "wall, toe kick base, ladder base, row of cabinets, run of cabinets, scribe the base, "
        "install"
    ),
    order=910,
    job="putting it up",
    picture={
        "wood": "M4 17h32v11H4z",
        "ink": "M2 36l36-5M4 8h32",
        "chalk": "M8 8v26m-3-3l3 3 3-3M34 28v3M28 28v4M22 28v4",
    },
    basic=("readings", "cases", "base", "way"),
    fields=(
        rows(
            "readings",
            "Readings",
            (
                length("along", "From the left", most="60 ft"),
                length("front", "Down, front", blank_means="Not measured there.", most="12 ft"),
                length("back", "Down, back", blank_means="Not measured there.", most="12 ft"),
            ),
            row_label="Spot",
            most_rows=16,
            help="From one level line down to the floor, at the base’s front and back. A longer "
            "reading is a lower floor.",
        ),
        lengths(
            "cases",
            "Cases",
            row_label="Case",
            most_rows=8,
            least="1 in",
            help="Their widths, left to right, from where you measured.",
            blank_means="Shims where you measured.",
            in_short="cases {}",
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
    ),
    answers=ANSWERS,
    source=(
        "Arithmetic: a level base touches the floor at its high point, where a level line is "
        "nearest to it; every other place needs the difference. Straight from one reading to the "
        "next. Shims in pairs, and blocks above 3/4″ (19 mm): common practice, no source."
    ),
    compute=compute,
    example={
        "readings": [
            {"along": "0", "front": "36 1/8", "back": "36"},
            {"along": "37 1/8", "front": "36 3/8", "back": "36 3/16"},
            {"along": "74 1/4", "front": "36 1/2", "back": "36 5/16"},
        ],
        "cases": ["37 1/8", "37 1/8"],
        "base": "4",
    },
)
