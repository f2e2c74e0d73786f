"""A nail through one piece into another: which one, its pilot hole, and how near an end."""

from sawside.drawing.fasteners.two_pieces import driven_nail
from sawside.lengths.fine import on_fine_marks
from sawside.lengths.marks import FINEST, GRIDS, told_mark
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fasteners.shared.nail.driven import driven_nail_of
from sawside.reckoners.fasteners.shared.nail.fields import FIELDS
from sawside.reckoners.fasteners.shared.nail.told import nail_cautions, nail_working
from sawside.reckoners.fasteners.shared.two_pieces import in_words, reach_and_left
from sawside.wood.drill_bits import as_bit
from sawside.wood.nails import KINDS
from sawside.wood.numbers import metric


def compute(given, show):
    """The length (inches), the diameter, the pilot bit, the reach and what is left past the tip."""
    nail = driven_nail_of(given, show)
    answers = {
        "length": on_fine_marks(nail.length, show),
        "diameter": _thickness(nail.diameter, show),
        **reach_and_left(show, nail),
        "room": [
            (name, show.rounded(each, "reach")) for name, each in zip(_ROOM, nail.room, strict=True)
        ],
    }
    if nail.pilot is not None:
        answers["pilot"] = as_bit(nail.pilot, given.bits)
    return Reckoning(
        answers=answers,
        working=tuple(nail_working(given, show, nail)),
        drawing=driven_nail(show, given, nail, in_words(show, nail, "nail")),
        cautions=tuple(nail_cautions(given, show, nail)),
        verdict=_verdict(given, nail),
    )


_ROOM = ("From an end, drilled", "From an end, not drilled", "From an edge")


def _thickness(diameter, show):
    """A diameter in decimals, as wire is told: no bit or mark is that fine."""
    return told_mark(diameter, GRIDS["0.1 mm"] if metric(show) else FINEST["in"])


def _verdict(given, nail):
    if given.kind == "own":
        return "Nail"
    name = KINDS[given.kind]
    return f"{nail.name} {name[0].lower()}{name[1:]}" if nail.name else name


RECKONER = Reckoner(
    key="nail",
    title="Nails",
    asks="Which nail holds without coming through, and how near an end can it go?",
    words=(
        "nail, nails, nail size, nail length, penny, trim nail, trim nails, brad, brads, brad "
        "nail, casing nail, common nail, box nail, nail gun, 8d, 6d, 10d"
    ),
    order=810,
    job="screws and hinges",
    picture={
        "wood": "M4 12h32v10H4zM4 23h32v13H4z",
        "ink": "M15 5h10M20 5v26",
        "chalk": "M31 31v5",
    },
    basic=("kind", "diameter", "over", "under", "wood"),
    fields=FIELDS,
    answers=(
        Answer("length", "Nail length", must="agree"),
        Answer("diameter", "Diameter", must="agree"),
        Answer("pilot", "Pilot bit, at most", must="stay under"),
        Answer("reach", "Bites into the second piece", must="be there"),
        Answer("left", "Wood left past the tip", must="be there"),
        Answer("room", "Room to leave, at least", "lengths", must="reach"),
    ),
    source=(
        "Three times the piece it holds: US Navy Rate Training Manual 14119. Lengths by penny: "
        "public-domain tables (The Boy Craftsman, 1905); diameters, as ASTM F1667 has them, and "
        "brads from memory. Pilot up to 90% of the diameter in dense wood and 75% in other wood, "
        "room of 10 diameters from an end with a pilot, 15 without, 2 1/2 from an edge: National "
        "Design Specification and its commentary, from memory."
    ),
    compute=compute,
    example={"kind": "finish", "over": "3/4", "under": "2", "wood": "hard", "sink": "1/16"},
)
