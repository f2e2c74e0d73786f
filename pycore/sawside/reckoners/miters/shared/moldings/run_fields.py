"""What is asked of a molding that runs along walls: each wall with its corner, and both ends."""

from sawside.reckoners.fields import angle, choice, length, rows
from sawside.reckoners.miters.shared.corner_field import corner_field
from sawside.reckoners.miters.shared.field_bounds import STRIP, blank

SIDES = ("left", "right")
_OPEN = ("around", ("open",))
_ENDS = {
    "wall": "Into a wall",
    "board": "To casing or a board",
    "return": "Mitered return",
    "scarf": "Scarf",
    "open": "Square, open",
}

AROUND = choice("around", "Runs", {"open": "End to end", "closed": "All around"})

WALLS = rows(
    "walls",
    "Walls, left to right",
    (
        length(
            "length",
            "Length",
            help="As you face it: corner to corner, or to where the molding ends.",
            least="1/64 in",
        ),
        choice(
            "turn",
            "Corner at right",
            {"outside": "Outside", "inside": "Inside"},
            help="Not used where the run ends.",
        ),
        corner_field("corner", "Corner angle", "this wall and the next", least=30),
        choice(
            "joint", "Joint", {"cope": "Cope", "miter": "Miter"}, shown_when=("turn", ("inside",))
        ),
    ),
    row_label="Wall",
    most_rows=12,
)


def layer_rows():
    """The layers of a molding, each with its projection and its height."""
    return rows(
        "layers",
        "Layers",
        (
            length(
                "projection",
                "Projection",
                help="How far it sticks out at its thickest. Layer 1 is the one on the wall.",
                least="1/64 in",
                most="12 in",
            ),
            length(
                "height",
                "Height",
                help="Only for the cut list.",
                least="1/64 in",
                most="24 in",
                **blank("Left out of the cut list."),
            ),
        ),
        row_label="Layer",
        most_rows=6,
    )


def end_fields(side):
    """The fields of the "left" or the "right" end of a run."""
    end = f"{side}_end"
    return (
        choice(end, f"{side.capitalize()} end", _ENDS, shown_when=_OPEN),
        length(
            f"{side}_board",
            f"Casing at the {side}",
            help="Its thickness, if you measured to the wall behind it.",
            **STRIP,
            **blank("You measured up to it."),
            shown_when=(_OPEN, (end, ("board",))),
        ),
        length(
            f"{side}_scribe",
            f"To scribe at the {side}",
            help="Extra at the square end to scribe to the wall. 0 for a plain cut.",
            default="0 in",
            most="6 in",
            shown_when=(_OPEN, (end, ("wall", "board"))),
        ),
        angle(
            f"{side}_scarf",
            f"Scarf angle at the {side}",
            help="From square. Measure the wall to the center of the scarf.",
            default="45",
            least="5",
            most="75",
            shown_when=(_OPEN, (end, ("scarf",))),
        ),
    )
