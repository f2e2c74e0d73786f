"""Whether a loaded shelf sags too much, and what span, board, load or edging keeps its limit."""

from sawside.reckoners.declaration import Reckoner
from sawside.reckoners.shelves.shared.strength.answers import ANSWERS, SOURCE, told
from sawside.reckoners.shelves.shared.strength.case import shelf_case
from sawside.reckoners.shelves.shared.strength.edging_height import edging_height
from sawside.reckoners.shelves.shared.strength.fields import SHELF_FIELDS
from sawside.reckoners.shelves.shared.strength.heaviest_load import heaviest_load
from sawside.reckoners.shelves.shared.strength.longest_span import longest_span
from sawside.reckoners.shelves.shared.strength.thinnest_board import thinnest_board


def _sag(given, show):
    """The sag in inches below the supports, exact."""
    case = shelf_case(given)
    return told(case, case.shelf, show)


_BY_WHAT_IS_FOUND = {
    "sag": _sag,
    "span": longest_span,
    "thickness": thinnest_board,
    "load": heaviest_load,
    "strip": edging_height,
}


def compute(given, show):
    """What was asked for, and what to make of the shelf that this makes."""
    return _BY_WHAT_IS_FOUND[given.solve](given, show)


RECKONER = Reckoner(
    key="shelf_strength",
    title="Shelf strength",
    asks="Will the shelf sag, and what keeps it from sagging?",
    words=(
        "sag, sagging, will it sag, deflection, bend, droop, strong enough, how strong, strength, "
        "stiffness, load, weight, how much weight, weight limit, weight capacity, maximum load, "
        "max load, load limit, heaviest load, carry, hold, maximum span, max span, span, "
        "longest span, how wide, how far apart, support, bay, how thick, thickness, thinnest "
        "board, stiffen, stiffen a shelf, edging, solid edging, stiffener, lip, strip, books, "
        "records, record albums, creep, bookcase, shelf, plywood, MDF, particleboard, pine, oak"
    ),
    order=320,
    job="shelves",
    fields=SHELF_FIELDS,
    basic=("load", "solve", "span", "depth", "thickness", "material"),
    answers=ANSWERS,
    source=SOURCE,
    compute=compute,
    example={
        "load": "records_12",
        "solve": "sag",
        "span": "31 5/8",
        "depth": "13 1/4",
        "thickness": "23/32",
        "material": "plywood",
        "strip": "front",
        "strip_material": "maple_red",
        "strip_thickness": "3/4",
        "strip_height": "1 3/4",
    },
)
