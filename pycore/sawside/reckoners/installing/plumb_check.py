"""How far a case that is up is out of plumb, which way, and what to shim."""

from sawside.drawing.installing.leaning_case import leaning_case
from sawside.reckoners.declaration import Reckoner, Reckoning
from sawside.reckoners.fields import choice, length
from sawside.reckoners.installing.shared.plumb.leaning import front_to_back_of, sideways_of
from sawside.reckoners.installing.shared.plumb.told import (
    ANSWERS,
    answers_of,
    cautions_of,
    main_of,
    verdict_of,
    working_of,
)


def compute(given, show):
    """The lean, the shim that takes the floor's part of it, and what is racking; inches."""
    sideways, racking = sideways_of(given, show)
    deep = front_to_back_of(given, show)
    return Reckoning(
        answers=answers_of(given, show, sideways, racking, deep),
        working=tuple(working_of(given, show, sideways, racking, deep)),
        drawing=leaning_case(show, given, sideways),
        cautions=tuple(cautions_of(given, sideways, racking, deep)),
        main=main_of(given, sideways, racking, deep),
        verdict=verdict_of(given, sideways, racking, deep),
    )


_DIAGONALS, _LEVEL, _FRONT = (
    {"shown_when": (key, (value,))}
    for key, value in (("also", "diagonals"), ("also", "level"), ("front", "yes"))
)

RECKONER = Reckoner(
    key="plumb_check",
    title="Plumb and level check",
    asks="Is the case plumb, and what do I shim if it isn’t?",
    words=(
        "plumb, plumb line, plumb bob, plumb check, level check, out of plumb case, upright, "
        "leaning, leans, lean, leaning cabinet, spirit level, check a cabinet, install"
    ),
    order=1430,
    job="putting it up",
    picture={
        "wood": "M13 4l20 2-3 28-20-2z",
        "ink": "M2 37h36",
        "chalk": "M6 3v27M4 30h4l-2 5zM13 4H6",
    },
    basic=("top", "bottom", "apart", "width"),
    fields=(
        length(
            "top",
            "Line to the side, top",
            help="From a plumb line hung left of the case. With a level: its gap at the top.",
            most="24 in",
            in_short="{} at the top",
        ),
        length("bottom", "Line to the side, bottom", most="24 in", in_short="{} at the bottom"),
        length(
            "apart",
            "Between the two",
            help="Up the side, from one reading to the other.",
            least="4 in",
            most="20 ft",
        ),
        length("width", "Case width", help="Outside.", least="4 in", most="20 ft"),
        length(
            "tolerance",
            "Allowed",
            help="Out of plumb, between the two readings.",
            default="1/16 in",
            metric="1.5 mm",
            most="2 in",
        ),
        choice(
            "also",
            "Racking",
            {"none": "Not checked", "diagonals": "By diagonals", "level": "By a level on top"},
        ),
        length(
            "rising",
            "Lower left to upper right",
            help="The diagonal, facing the case.",
            least="4 in",
            **_DIAGONALS,
        ),
        length("falling", "Upper left to lower right", least="4 in", **_DIAGONALS),
        length("height", "Case height", least="4 in", most="20 ft", **_DIAGONALS),
        choice("level_low", "Low end", {"left": "Left", "right": "Right"}, **_LEVEL),
        length(
            "level_gap",
            "Gap at the low end",
            help="Level held level on top, from its end down to the case.",
            most="24 in",
            **_LEVEL,
        ),
        length(
            "level_long",
            "Level length",
            default="24 in",
            metric="600 mm",
            least="2 in",
            most="10 ft",
            **_LEVEL,
        ),
        choice("front", "Front to back", {"no": "Not checked", "yes": "Checked"}),
        length(
            "front_top",
            "Line to the front, top",
            help="From a plumb line hung before the case, between the same heights.",
            most="24 in",
            **_FRONT,
        ),
        length("front_bottom", "Line to the front, bottom", most="24 in", **_FRONT),
        length(
            "depth",
            "Case depth",
            least="2 in",
            most="8 ft",
            blank_means="The shim front to back isn’t figured.",
            **_FRONT,
        ),
    ),
    answers=ANSWERS,
    source=(
        "Similar triangles: a case that turns by an angle leans by height × its sine, and its foot "
        "drops by width × the same sine. Racking by its diagonals as in Square, or the part of the "
        "lean that a level on top doesn’t show. 1/16″ (1.5 mm) between the readings is common "
        "practice, no source."
    ),
    compute=compute,
    example={
        "top": "2 1/4",
        "bottom": "2 9/16",
        "apart": "72",
        "width": "37 1/8",
        "rising": "84 1/2",
        "falling": "84 5/8",
        "height": "76",
        "level_gap": "1/8",
        "front_top": "1 1/2",
        "front_bottom": "1 7/16",
        "depth": "15 1/4",
    },
)
