"""What is asked about a loaded shelf: `shelf_case` makes a shelf of it."""

from dataclasses import replace
from fractions import Fraction

from sawside.drawing.choices.loads import LOADS_ON
from sawside.drawing.choices.shelf_ends import EDGED, EDGING_PLACES
from sawside.drawing.choices.standing_loads import STANDING
from sawside.reckoners.fields import Choice, choice, length, material, number
from sawside.reckoners.shared.board_fields import thickness
from sawside.wood.strength.loads import LOADS
from sawside.wood.strength.sag_limits import CREEP, LIMITS

_OWN = "From the maker’s data sheet or your own test. 1 GPa is 0.145 million psi."
_HOLDS = {
    "resting": "Resting on supports",
    "fixed": "Fixed at both ends",
    "overhanging": "Overhangs its supports",
}
SOLVED = {
    "sag": "Will it sag?",
    "span": "Longest span",
    "thickness": "Thinnest board",
    "load": "Heaviest load",
    "strip": "Edging height",
}


def _unless(solved):
    """Where something is asked: always but where it is what is worked out."""
    return "solve", tuple(key for key in SOLVED if key != solved)


def _own(key, label, unit, by, **more):
    return number(key, label, unit, shown_when=(by, ("own",)), **more)


def _own_stiffness(key, label, by):
    return _own(key, label, "million psi", by, help=_OWN, least="0.01", most="40")


def _material_fields():
    return (
        material("material", "Material", own=True),
        _own_stiffness("own_stiffness", "Stiffness (modulus of elasticity)", "material"),
        _own(
            "own_strength",
            "Bending strength",
            "psi",
            "material",
            least="100",
            most="100000",
            blank_means="Strength isn’t compared.",
        ),
    )


SUPPORTS = (
    choice(
        "supports", "Ends", _HOLDS, help="Pins, cleats, rabbets and dadoes all count as resting."
    ),
    length(
        "overhang",
        "Overhang at each end",
        least="1/16 in",
        most="10 ft",
        shown_when=("supports", ("overhanging",)),
    ),
    choice("cleat", "Back cleat", {"none": "None", "back": "Fastened to the wall"}),
)


OWN_LOADS = {
    "own_lb_ft": ("My own: pounds per foot", "lb/ft"),
    "own_kg_m": ("My own: kilograms per meter", "kg/m"),
    "own_lb": ("My own: total pounds", "lb"),
    "own_kg": ("My own: total kilograms", "kg"),
}
_SPREAD = choice(
    "spread",
    "Load",
    {
        "even": "Spread evenly",
        "middle": "All at the center",
        "quarters": "Half at each quarter point",
    },
    pictures=LOADS_ON,
)


def _load_fields():
    choices = {key: entry.name for key, entry in LOADS.items()}
    choices |= {key: text for key, (text, _) in OWN_LOADS.items()}
    yield choice("load", "What’s on it", choices, pictures=STANDING, shown_when=_unless("load"))
    for key, (_, unit) in OWN_LOADS.items():
        shown = (("load", (key,)), _unless("load"))
        yield number(key, "Weight", unit, least="0.01", most="10000", shown_when=shown)


_EDGES = {"front": "Along the front", "back": "Along the back", "both": "Front and back"}
_STRIP_PLACES = {"edge": "On the edge, flush with the top", "under": "Under the board"}
_STRIP = ("strip", tuple(_EDGES))


def _strip_fields():
    yield choice(
        "strip",
        "Edging",
        {"none": "None"} | _EDGES,
        pictures=EDGED,
        help="Glued along its full length. It holds up its own edge most.",
    )
    yield choice(
        "strip_place", "Edging position", _STRIP_PLACES, pictures=EDGING_PLACES, shown_when=_STRIP
    )
    yield _strip_material()
    yield _own_stiffness("strip_own_stiffness", "Edging stiffness", "strip_material")
    yield thickness("strip_thickness", "Edging thickness", help="Front to back.", shown_when=_STRIP)
    yield length(
        "strip_height",
        "Edging height",
        default='1 1/2"',
        metric="40 mm",
        least="1/64 in",
        most="12 in",
        shown_when=(_STRIP, _unless("strip")),
    )


def _strip_material():
    """The material of a strip, by default that of the board."""
    made = material(
        "strip_material", "Edging material", own=True, default="same", shown_when=_STRIP
    )
    return replace(made, choices=(Choice("same", "Same as the board"), *made.choices))


def _judging_fields():
    creep = {"usual": "Usual for the material"}
    creep |= {key: CREEP[key].name for key in ("seasoned", "unseasoned", "most")}
    limits = {key: entry.name for key, entry in LIMITS.items()} | {"own": "My own limit"}
    return (
        choice("limit", "Sag limit", limits),
        length(
            "own_limit",
            "Most sag allowed",
            least="1/64 in",
            most="12 in",
            shown_when=("limit", ("own",)),
        ),
        choice("judged", "Compare to the limit", {"years": "Long-term sag", "once": "Sag now"}),
        choice(
            "creep",
            "Long-term sag",
            creep | {"own": "My own factor"},
            help="Wood keeps sagging under a steady load.",
        ),
        _own("own_creep", "Times the sag now", "times", "creep", least="1", most="10"),
    )


SPAN = length(
    "span",
    "Span",
    help="Between the supports.",
    least="1 in",
    most="20 ft",
    shown_when=_unless("span"),
)
DEPTH = length(
    "depth", "Depth", help="Front to back, not counting the edging.", least="1/2 in", most="8 ft"
)
MOST_THICKNESS = Fraction(6)
"""In inches, as a board that is typed has it."""
THICKNESS = thickness(least="1/16 in", shown_when=_unless("thickness"))
SHELF_FIELDS = (
    *_load_fields(),
    choice("solve", "Find", SOLVED),
    SPAN,
    DEPTH,
    THICKNESS,
    *_material_fields(),
    _SPREAD,
    *SUPPORTS,
    *_strip_fields(),
    *_judging_fields(),
)
"""What stands on a shelf, what is wanted of it, and all that is known of it but that."""
