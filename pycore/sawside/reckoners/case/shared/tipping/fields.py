"""What is asked about a case that might tip."""

from sawside.reckoners.fields import choice, count, length, number
from sawside.wood.strength.loads import LOADS, load_of

_UNITS = {"lb": "Pounds", "kg": "Kilograms"}


def pounds(given, key):
    """A weight in pounds, exact, in whichever unit it was given; None where it was left blank."""
    amount = getattr(given, f"{key}_{given.units}")
    return None if amount is None else load_of(amount, given.units).amount


_ALONG = ("lb/ft", "kg/m")
_BY_LENGTH = {key: each.name for key, each in LOADS.items() if each.row["unit"] in _ALONG}
"""What stands along a shelf, by its foot or meter, as Shelf strength knows it."""
STATES = {"worst": "Empty or loaded, the worse", "full": "Full", "above": "Full above, empty below"}


def load_inside(given):
    """The load in exact pounds, typed or by the length of the shelves; None where there is none."""
    if given.inside == "own":
        return pounds(given, "load")
    entry = LOADS[given.inside]
    return load_of(entry.number, entry.row["unit"]).amount * given.loaded


def _weight(key, label, defaults=(None, None), also=None, **more):
    """A weight asked for in the unit that is chosen."""
    for unit, default in zip(_UNITS, defaults, strict=True):
        by_unit = ("units", (unit,))
        shown = {"shown_when": (by_unit, also) if also else by_unit, "default": default}
        yield number(f"{key}_{unit}", label, unit, most="5000", **shown | more)


TIPPING_FIELDS = (
    length("height", "Case height", least="1 in", most="20 ft", in_short="{} tall"),
    length(
        "depth",
        "Case depth",
        help="Front to back, at the sides, with no recess taken off.",
        least="1 in",
        most="10 ft",
        in_short="{} deep",
    ),
    *_weight("weight", "Empty weight", help="Without doors. Carcass figures it.", least="0.1"),
    *_weight(
        "climber",
        "Climber’s weight",
        ("60", "27.2"),
        help="60 lb is about a five-year-old, the heaviest.",
    ),
    length(
        "out",
        "Climber’s reach",
        help="How far in front of the case the climber’s weight hangs.",
        default="6 in",
        metric="150 mm",
        most="10 ft",
    ),
    length(
        "kick",
        "Toe kick recess",
        help="The case tips over the front of what it rests on.",
        default="0 in",
        most="5 ft",
        in_short="{} recess",
    ),
    choice("state", "Figure it", STATES, in_short="{}"),
    choice("inside", "What’s inside", {"own": "My own total"} | _BY_LENGTH, in_short="{}"),
    *_weight(
        "load", "Load inside", also=("inside", ("own",)), blank_means="Empty, the worst case."
    ),
    length(
        "loaded",
        "Loaded shelf length",
        help="All the loaded shelves together.",
        least="1 in",
        most="500 ft",
        shown_when=("inside", tuple(_BY_LENGTH)),
        in_short="{} of loaded shelf",
    ),
    *_weight("door", "Open door’s weight", blank_means="No door."),
    length(
        "door_width",
        "Open door’s width",
        help="Opened square to the front.",
        default="18 in",
        metric="450 mm",
        least="1 in",
        most="10 ft",
    ),
    *_weight("pull", "Forward pull", blank_means="No pull.", help="On a knob or the top edge."),
    length("pull_height", "Height of the pull", blank_means="At the top.", most="20 ft"),
    length(
        "anchor_height",
        "Anchor height",
        help="Above the floor.",
        blank_means="At the top.",
        least="1 in",
        most="20 ft",
    ),
    count("anchors", "Anchors", default="2", least="1", most="20", in_short="{} anchors"),
    number(
        "times",
        "Margin",
        "times",
        help="A jerk or a jump pulls harder than a weight at rest. Twice is shop practice.",
        default="2",
        least="1",
        most="10",
    ),
    choice("units", "Weights in", _UNITS, metric="kg"),
)
