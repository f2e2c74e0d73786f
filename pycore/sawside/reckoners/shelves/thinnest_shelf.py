"""How thick a shelf must be for its sag to stay within a limit."""

from fractions import Fraction

from sawside.errors import Refusal
from sawside.reckoners.declaration import Answer, Reckoner
from sawside.reckoners.shelves.shared.shelf_answers import ANSWERS, SOURCE, told
from sawside.reckoners.shelves.shared.shelf_case import shelf_case
from sawside.reckoners.shelves.shared.shelf_fields import shelf_fields

_LEAST, _MOST = Fraction(1, 16), Fraction(6)


def compute(given, show):
    """The least thickness in inches, on the first mark that keeps within the limit."""
    case = shelf_case(given, thickness=_LEAST)
    exact = case.shelf.solved("thickness", case.excess, _LEAST, _MOST)
    if exact is None and case.excess(case.shelf) > 0:
        raise Refusal(
            "impossible",
            f"Even {show.text(_MOST)} thick, the shelf sags past the limit.",
            "Use a shorter span, a lighter load or another support.",
            field="span",
        )
    exact = _LEAST if exact is None else exact
    thickness = show.rounded(exact, "reach")
    shelf = case.shelf.changed(thickness=thickness.mark)
    line = f"Within the limit from {show.number(exact)} thick → {show.text(thickness)}"
    return told(case, shelf, show, answers={"thickness": thickness}, working=(line,))


RECKONER = Reckoner(
    key="thinnest_shelf",
    title="Thinnest shelf",
    asks="How thick does the shelf need to be?",
    words="how thick, thickness, thick, thinnest, thin, shelf, sag, load, board",
    order=322,
    job="shelf strength",
    picture={
        "wood": "M3 15h34v7H3zM4 22h4v14H4zM32 22h4v14h-4z",
        "chalk": "M20 3v12m-3-3l3 3 3-3M20 34V22m-3 3l3-3 3 3",
    },
    fields=shelf_fields(without="thickness"),
    answers=(Answer("thickness", "Thinnest board", must="reach"), *ANSWERS),
    source=SOURCE,
    compute=compute,
    example={"span": "31 5/8", "depth": "13 1/4", "material": "plywood", "load": "records_12"},
)
