"""How far a loaded shelf sags, at once and after years, and whether that is too much."""

from sawside.reckoners.declaration import Reckoner
from sawside.reckoners.shelves.shared.shelf_answers import ANSWERS, SOURCE, told
from sawside.reckoners.shelves.shared.shelf_case import shelf_case
from sawside.reckoners.shelves.shared.shelf_fields import shelf_fields


def compute(given, show):
    """The sag in inches below the supports, exact, and what to make of it."""
    case = shelf_case(given)
    return told(case, case.shelf, show)


RECKONER = Reckoner(
    key="shelf_sag",
    title="Shelf sag",
    asks="How much will the shelf sag, and is it too much?",
    words=(
        "sag, sagging, deflection, bend, droop, strong enough, how strong, shelf strength, "
        "stiffness, load, weight, books, records, record albums, creep, bookcase, shelf, "
        "plywood, MDF, particleboard, pine, oak"
    ),
    order=320,
    job="shelf strength",
    fields=shelf_fields(),
    answers=ANSWERS,
    source=SOURCE,
    compute=compute,
    example={
        "span": "31 5/8",
        "depth": "13 1/4",
        "thickness": "23/32",
        "material": "plywood",
        "load": "records_12",
        "strip": "front",
        "strip_material": "maple_red",
        "strip_thickness": "3/4",
        "strip_height": "1 3/4",
    },
)
