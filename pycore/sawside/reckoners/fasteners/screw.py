"""A wood screw through one piece into another: how long, which bits, and what it leaves."""

from sawside.drawing.fasteners.two_pieces import driven_screw
from sawside.lengths.fine import on_fine_marks
from sawside.reckoners.declaration import Answer, Reckoner, Reckoning
from sawside.reckoners.fasteners.shared.screw.cautions import cautions
from sawside.reckoners.fasteners.shared.screw.driven import driven_of
from sawside.reckoners.fasteners.shared.screw.fields import FIELDS
from sawside.reckoners.fasteners.shared.screw.pull import is_figured, pull_told
from sawside.reckoners.fasteners.shared.screw.working import working
from sawside.reckoners.fasteners.shared.two_pieces import in_words, reach_and_left
from sawside.wood.drill_bits import as_bit


def compute(given, show):
    """The length (inches), the bits, the countersink, the reach and what is left past the tip."""
    screw = driven_of(given, show)
    clear = as_bit(screw.clearance, given.bits)
    pilot = as_bit(screw.pilot, given.bits) if given.pilot is None else screw.pilot
    answers = {
        "length": on_fine_marks(screw.length, show),
        "clearance": clear,
        "pilot": pilot,
        **reach_and_left(show, screw),
        "room": [
            (name, show.rounded(each, "reach"))
            for name, each in zip(_ROOM, screw.room, strict=True)
        ],
    }
    if screw.head is not None:
        answers["head"] = on_fine_marks(screw.head, show)
        answers["cone"] = on_fine_marks(screw.cone, show)
    if is_figured(given):
        answers["pull"] = pull_told(given, show, screw)
    named = f"{screw.name} screw" if screw.name else "Screw"
    return Reckoning(
        answers=answers,
        working=tuple(working(given, show, screw)),
        drawing=driven_screw(show, given, screw, in_words(show, screw, "screw")),
        cautions=tuple(cautions(given, show, screw)),
        verdict=f"{named} (pilot {show.bare(pilot)})",
    )


_ROOM = ("From an end", "From an edge", "From screw to screw")


RECKONER = Reckoner(
    key="screw",
    title="Wood screws",
    asks="Which screw is long enough, and what do you drill for it?",
    words=(
        "screw, screws, wood screw, wood screws, pilot hole, pilot holes, pilot drill, clearance "
        "hole, countersink, screw length, screw size"
    ),
    order=800,
    job="screws and hinges",
    picture={
        "wood": "M4 9h32v12H4zM4 22h32v14H4z",
        "ink": "M14 9h12l-4 4v15l-2 4-2-4V13z",
        "chalk": "M31 32v4m-3-4h6",
    },
    basic=("size", "shank", "over", "under", "wood"),
    fields=FIELDS,
    answers=(
        Answer("length", "Screw length", must="agree"),
        Answer("clearance", "Clearance bit, first piece", must="agree"),
        Answer("pilot", "Pilot bit, second piece", must="agree"),
        Answer("reach", "Bites into the second piece", must="be there"),
        Answer("left", "Wood left past the tip", must="be there"),
        Answer("head", "Countersink diameter", must="agree"),
        Answer("cone", "Countersink depth", must="agree"),
        Answer("room", "Room to leave, at least", "lengths", must="reach"),
        Answer("pull", "Count on a straight pull of", "text"),
    ),
    source=(
        "Shank .060 + .013 N in: ASME B18.6.1 (read in a secondary copy). Root two thirds of the "
        "shank, pilot 90% of it in hardwood and 70% in softwood, pull 15,700 G² D L: Wood "
        "Handbook, FPL-GTR-190, chapter 8. Bite of six diameters: NDS 12.1.5.6 (read in a "
        "secondary copy); what to count on, 2,850 G² D L, and room of 10 and 2 1/2 diameters, "
        "with holes drilled: NDS and its commentary, from memory. Thread of two thirds: Noyes, "
        "Handwork in Wood (1910). From memory: metric sizes, stock lengths, heads of twice the "
        "shank at 82° (metric 90°). Common practice, no source: two thirds of the length in the "
        "second piece, half and a quarter of an edge, 90% in MDF, bits (clearance up, pilot to "
        "the nearest no thicker than the root)."
    ),
    compute=compute,
    example={"size": "8", "over": "3/4", "under": "1 1/2", "wood": "hard"},
)
