"""How wide an opening is, by what was measured of it, and what goes in."""

from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.fields import choice, length, lengths, own_tape
from sawside.reckoners.tape.shared.inside_length import inside_length
from sawside.reckoners.tape.shared.smallest_reading import smallest_reading

_WAYS = {
    "spots": "Tape, in several spots",
    "case": "Tape case in the corner",
    "block": "Block in the corner",
    "bent": "Tape bent into the corner",
    "sticks": "Two sticks side by side",
}


def compute(given, show):
    """What goes in by the smallest of several readings, or the inside length by another way."""
    return smallest_reading(given, show) if given.way == "spots" else inside_length(given, show)


def _by(*ways):
    return {"shown_when": ("way", ways)}


def _stick(key, label, **more):
    return length(key, label, least="1/64 in", **_by("sticks"), **more)


RECKONER = Reckoner(
    key="opening",
    title="Opening",
    asks="How wide is this opening, and what fits it?",
    words=(
        "opening, alcove, inside measure, inside measurement, width, height, between walls, wall "
        "to wall, narrowest, smallest, several measurements, niche, crooked, crooked wall, out of "
        "true, corner, tape case, bend, bent tape, pinch rods, pinch sticks, two sticks, slip "
        "sticks, shortest, lowest, minimum, average"
    ),
    order=104,
    job="tape",
    picture={
        "wood": "M3 4h5v32H3zM32 4h5v32h-5zM20 31V21l3-3h9v13zM8 27h12v4H8z",
        "chalk": "M8 10h24m-3-3l3 3-3 3M11 7l-3 3 3 3",
    },
    fields=(
        choice("way", "Measured with", _WAYS),
        lengths(
            "readings",
            "Readings",
            row_label="Reading",
            most_rows=20,
            least="1/64 in",
            help="One width or height in several spots, such as floor, middle and top.",
            in_short="{}",
            **_by("spots"),
        ),
        length(
            "reading",
            "Tape reading",
            help="Where the blade comes out of the case, at the block, or in the corner.",
            least="1/64 in",
            in_short="reads {}",
            **_by("case", "block", "bent"),
        ),
        own_tape(
            "tape",
            "Tape",
            help="Corrects for its error and uses its case length.",
            **_by("spots", "case", "block", "bent"),
        ),
        length(
            "case",
            "Case length",
            help=(
                "Back of the case to where the blade comes out. Often printed on the case; "
                "measure to be sure."
            ),
            least="1/2 in",
            most="12 in",
            blank_means="The tape’s case length from Settings.",
            in_short="{} case",
            **_by("case"),
        ),
        length(
            "block",
            "Block length",
            help="A square-ended block you’ve measured, pushed into the corner.",
            least="1/64 in",
            in_short="{} block",
            **_by("block"),
        ),
        length(
            "doubt",
            "Good to within ±",
            help="You can’t read a bend closely. A sixteenth is shop practice.",
            default="1/16 in",
            metric="1 mm",
            most="1 in",
            **_by("bent"),
        ),
        _stick("first", "First stick", help="One end against one wall."),
        _stick("second", "Second stick", help="One end against the other wall."),
        _stick("overlap", "Overlap", help="How far the two run side by side."),
        length(
            "room",
            "Total clearance",
            help="Both sides together, so it slides in.",
            blank_means="No clearance.",
            in_short="{} clearance",
        ),
    ),
    answers=(
        Answer("fits", "What goes in", must="go in"),
        Answer("inside", "Inside", must="agree"),
        Answer("least", "At least", must="be there"),
        Answer("most", "At most", must="reach"),
        Answer("smallest", "Smallest", must="agree"),
        Answer("largest", "Largest", must="agree"),
        Answer("apart", "Difference", must="agree"),
        Answer("mean", "Average", must="agree"),
    ),
    source=(
        "Arithmetic: reading + case, reading + block, stick + stick − overlap. Going by the "
        "smallest reading is shop practice. A sliding hook should read true pushed or pulled, as "
        "its maker says. Check yours on a block."
    ),
    compute=compute,
    example={
        "way": "spots",
        "readings": ["37 9/16", "37 1/2", "37 5/8"],
        "reading": "34 3/8",
        "case": "3 1/8",
        "block": "4",
        "doubt": "1/16",
        "first": "24",
        "second": "20 1/4",
        "overlap": "6 11/16",
        "room": "1/4",
    },
    basic=("way", "readings", "reading", "case", "block", "first", "second", "overlap", "room"),
)
