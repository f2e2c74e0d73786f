"""How high a strip along the edge of a shelf must be for the sag to stay within a limit."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.shelves.shared.shelf_answers import ANSWERS, SOURCE, told
from sawside.reckoners.shelves.shared.shelf_case import shelf_case
from sawside.reckoners.shelves.shared.shelf_fields import shelf_fields

_MOST = Fraction(12)
_REMEDIES = {
    "front": "It holds up the front only. Put edging on front and back, or a cleat along the back.",
    "back": "It holds up the back only. Put edging on front and back.",
    "both": "Use thicker edging, a thicker board, a shorter span or a lighter load.",
}


def compute(given, show):
    """The least height of the strip in inches, on the first mark; 0 where none is needed."""
    case = shelf_case(given, strip_height=Fraction(0))
    if given.cleat == "back" and given.strip == "back":
        raise Refusal(
            "conflict",
            "Edging along the back does nothing where a cleat holds the back.",
            "Put the edging along the front.",
            field="strip",
        )
    exact = case.shelf.solved("strip_height", case.excess, Fraction(0), _MOST)
    if exact is None and case.excess(case.shelf) > 0:
        raise Refusal(
            "impossible",
            f"Even with edging {show.text(_MOST)} high, the shelf sags past the limit.",
            _REMEDIES["both" if given.strip == "both" or given.cleat == "back" else given.strip],
            field="strip" if given.strip != "both" and given.cleat != "back" else "strip_thickness",
        )
    exact = Fraction(0) if exact is None else exact
    height = show.rounded(exact, "reach")
    shelf = case.shelf.changed(strip_height=height.mark)
    line = (
        f"Within the limit from edging {show.number(exact)} high → {show.text(height)}"
        if height.mark
        else "The board alone stays within the limit: no edging needed"
    )
    return told(case, shelf, show, answers={"strip_height": height}, working=(line,))


RECKONER = Reckoner(
    key="shelf_edge_strip",
    title="Shelf edging",
    asks="How deep does the edging need to be to stop the sag?",
    words=(
        "stiffen, stiffen a shelf, edging, solid edging, stiffener, lip, strip, plywood, shelf, "
        "sag, support"
    ),
    order=324,
    job="shelf strength",
    picture={
        "wood": "M3 9h34v5H3zM3 14h34v8H3zM4 22h4v14H4zM32 22h4v14h-4z",
        "chalk": "M3 14h34v8H3z",
    },
    fields=shelf_fields(without="strip_height"),
    answers=(Answer("strip_height", "Edging height", must="reach"), *ANSWERS),
    source=SOURCE,
    compute=compute,
    example={
        "span": "36 3/4",
        "depth": "13 1/4",
        "thickness": "23/32",
        "material": "plywood",
        "load": "records_12",
        "strip": "both",
        "strip_material": "maple_red",
        "strip_thickness": "3/4",
    },
)
