"""What the questions about a sagging shelf ask: `shelf_case` makes a shelf of it."""

from dataclasses import replace

from sawside.drawing.choices.loads import LOADS_ON
from sawside.reckoners.declaration import Choice, choice, length, material, number
from sawside.reckoners.shared.board_fields import thickness
from sawside.wood.strength.loads import LOADS
from sawside.wood.strength.sag_limits import CREEP, LIMITS

_OWN = "From the maker’s data sheet or your own test. 1 GPa is 0.145 million psi."
_HOLDS = {
    "resting": "Resting on supports",
    "fixed": "Fixed at both ends",
    "overhanging": "Overhangs its supports",
}


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


def _support_fields(overhang):
    holds = {key: text for key, text in _HOLDS.items() if overhang or key != "overhanging"}
    held = choice(
        "supports", "Ends", holds, help="Pins, cleats, rabbets and dadoes all count as resting."
    )
    over = length(
        "overhang",
        "Overhang at each end",
        least="1/16 in",
        most="10 ft",
        shown_when=("supports", ("overhanging",)),
    )
    cleat = choice("cleat", "Back cleat", {"none": "None", "back": "Fastened to the wall"})
    return (held, over, cleat) if overhang else (held, cleat)


OWN_LOADS = {
    "own_lb_ft": ("My own: pounds per foot", "lb/ft"),
    "own_kg_m": ("My own: kilograms per meter", "kg/m"),
    "own_lb": ("My own: total pounds", "lb"),
    "own_kg": ("My own: total kilograms", "kg"),
}
SPREAD = choice(
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
    own = tuple(
        number(key, "Weight", unit, least="0.01", most="10000", shown_when=("load", (key,)))
        for key, (_, unit) in OWN_LOADS.items()
    )
    return choice("load", "What’s on it", choices), *own, SPREAD


_EDGES = {"front": "Along the front", "back": "Along the back", "both": "Front and back"}
_STRIP_PLACES = {"edge": "On the edge, flush with the top", "under": "Under the board"}


def _strip_fields(solved):
    """The fields of a strip; `solved` says that its height is worked out, so there is one."""
    edges = _EDGES if solved else {"none": "None"} | _EDGES
    shown = {} if solved else {"shown_when": ("strip", tuple(_EDGES))}
    fields = (
        choice(
            "strip",
            "Edging",
            edges,
            help="Glued along its full length. It holds up its own edge most.",
        ),
        choice("strip_place", "Edging position", _STRIP_PLACES, **shown),
        _strip_material(shown),
        _own_stiffness("strip_own_stiffness", "Edging stiffness", "strip_material"),
        thickness("strip_thickness", "Edging thickness", help="Front to back.", **shown),
    )
    return fields if solved else (*fields, _strip_height(shown))


def _strip_material(shown):
    """The material of a strip, by default that of the board."""
    made = material("strip_material", "Edging material", own=True, default="same", **shown)
    return replace(made, choices=(Choice("same", "Same as the board"), *made.choices))


def _strip_height(shown):
    return length(
        "strip_height",
        "Edging height",
        default='1 1/2"',
        metric="40 mm",
        least="1/64 in",
        most="12 in",
        **shown,
    )


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


THICKNESS = thickness(least="1/16 in")
DEPTH = length(
    "depth", "Depth", help="Front to back, not counting the edging.", least="1/2 in", most="8 ft"
)
SPAN = length("span", "Span", help="Between the supports.", least="1 in", most="20 ft")


def shelf_fields(*, without="", overhang=True):
    """The fields of a shelf, without those that a question works out."""
    measured = [field for field in (SPAN, DEPTH, THICKNESS) if field.key != without]
    return (
        *measured,
        *_material_fields(),
        *((SPREAD,) if without == "load" else _load_fields()),
        *_support_fields(overhang),
        *_strip_fields(solved=without == "strip_height"),
        *_judging_fields(),
    )
