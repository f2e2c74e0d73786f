"""What is asked about a door, its hinges and the shelves behind it."""

from sawside.reckoners.fasteners.shared.hinges.places import MOST
from sawside.reckoners.fields import choice, count, length, lengths, number
from sawside.reckoners.shared.board_fields import thickness, weighed

_UNITS = {"lb": "Pounds", "kg": "Kilograms"}


def _weight(key, label, **more):
    """A weight asked for in the unit that is chosen."""
    for unit in _UNITS:
        shown = {"shown_when": ("units", (unit,)), "least": "0.1", "most": "5000"}
        yield number(f"{key}_{unit}", label, unit, **shown | more)


FIELDS = (
    length("height", "Door height", least="2 in", most="12 ft", in_short="{} tall"),
    length("width", "Door width", least="1 in", most="8 ft", in_short="{} wide"),
    length(
        "hinge",
        "Hinge length",
        help="Along the door: the leaf, or the plate of a cup hinge.",
        default='2 1/2"',
        metric="60 mm",
        least="1/4 in",
        most="8 ft",
    ),
    lengths(
        "shelves",
        "Shelf heights",
        help="Their bottom faces, above the door’s bottom edge.",
        row_label="Shelf",
        most_rows=20,
        blank_means="No shelf comes near a hinge.",
    ),
    thickness("shelf", "Shelf thickness", help=""),
    count(
        "count",
        "Hinges",
        least="2",
        most=str(MOST),
        blank_means="By the door’s height, and by weight where a hinge’s rating is filled in.",
    ),
    length(
        "inset",
        "End hinges’ inset",
        help="Door’s end to the hinge’s center.",
        least="1/8 in",
        most="4 ft",
        blank_means="A hinge length from the end to the hinge, from 2″ to 4″ (shop practice).",
    ),
    length(
        "clear",
        "Clear of shelves",
        help="Left between a hinge and a shelf.",
        default='1/4"',
        metric="6 mm",
        most="6 in",
    ),
    thickness("thickness", "Door thickness", help="For the weight."),
    weighed("material", "Door’s wood", default="plywood"),
    *_weight(
        "weight",
        "Door weight",
        help="Cabinet doors figures it.",
        blank_means="Figured from its size and wood.",
    ),
    *_weight(
        "rating",
        "Rating of each hinge",
        help="The door weight that the maker gives one hinge.",
        blank_means="The number isn’t checked by weight.",
    ),
    choice("units", "Weights in", _UNITS, metric="kg"),
)
