"""What the questions about a sagging shelf ask: `shelf_case` makes a shelf of it."""

from dataclasses import replace

from sawside.reckoners.declaration import Choice, choice, length, material, number
from sawside.reckoners.shared.board_fields import thickness
from sawside.wood.strength.loads import LOADS
from sawside.wood.strength.sag_limits import CREEP, LIMITS

_OWN = "From the maker's data sheet, or a test of your own: 1 GPa is 0.145 million psi."
_HOLDS = {
    "resting": "Resting, free to bend at both ends",
    "fixed": "Held fast at both ends",
    "overhanging": "Standing over its supports",
}


def _own(key, label, unit, by, **more):
    return number(key, label, unit, shown_when=(by, ("own",)), **more)


def _own_stiffness(key, label, by):
    return _own(key, label, "million psi", by, help=_OWN, least="0.01", most="40")


def _material_fields():
    return (
        material("material", "Material", own=True, help="Its source is shown with the answer."),
        _own_stiffness("own_stiffness", "Its stiffness (modulus of elasticity)", "material"),
        _own(
            "own_strength",
            "Its breaking strength in bending",
            "psi",
            "material",
            least="100",
            most="100000",
            blank_means="No strength is compared.",
        ),
    )


def _support_fields(overhang):
    holds = {key: text for key, text in _HOLDS.items() if overhang or key != "overhanging"}
    held = choice(
        "supports",
        "Ends",
        holds,
        help="Pins, cleats, rabbets and dadoes count as resting: a dado gives way a little.",
    )
    over = length(
        "overhang",
        "Beyond each support",
        least="1/16 in",
        most="10 ft",
        shown_when=("supports", ("overhanging",)),
    )
    cleat = choice(
        "cleat", "Cleat along the back", {"none": "None", "back": "A cleat, fastened to the wall"}
    )
    return (held, over, cleat) if overhang else (held, cleat)


OWN_LOADS = {
    "own_lb_ft": ("My own, pounds for each foot", "lb/ft"),
    "own_kg_m": ("My own, kilograms for each meter", "kg/m"),
    "own_lb": ("My own, weighed: pounds in all", "lb"),
    "own_kg": ("My own, weighed: kilograms in all", "kg"),
}
SPREAD = choice(
    "spread",
    "The load stands",
    {"even": "Evenly all along", "middle": "All in the middle", "quarters": "Half at each quarter"},
)


def _load_fields():
    choices = {key: entry.name for key, entry in LOADS.items()}
    choices |= {key: text for key, (text, _) in OWN_LOADS.items()}
    own = tuple(
        number(key, "Load", unit, least="0.01", most="10000", shown_when=("load", (key,)))
        for key, (_, unit) in OWN_LOADS.items()
    )
    return choice("load", "What stands on it", choices), *own, SPREAD


_EDGES = {"front": "Along the front", "back": "Along the back", "both": "Front and back"}
_STRIP_PLACES = {"edge": "On the edge, level with the top", "under": "Under the board"}


def _strip_fields(solved):
    """The fields of a strip; `solved` says that its height is worked out, so there is one."""
    edges = _EDGES if solved else {"none": "None"} | _EDGES
    shown = {} if solved else {"shown_when": ("strip", tuple(_EDGES))}
    fields = (
        choice(
            "strip", "Edge strip", edges, help="Glued on all along: it holds up its own edge most."
        ),
        choice("strip_place", "The strip is", _STRIP_PLACES, **shown),
        _strip_material(shown),
        _own_stiffness("strip_own_stiffness", "Stiffness of the strip", "strip_material"),
        thickness("strip_thickness", "Strip, front to back", help="", **shown),
    )
    return fields if solved else (*fields, _strip_height(shown))


def _strip_material(shown):
    """The material of a strip, by default that of the board."""
    made = material("strip_material", "Strip's material", own=True, default="same", **shown)
    return replace(made, choices=(Choice("same", "The same as the board"), *made.choices))


def _strip_height(shown):
    return length(
        "strip_height",
        "Strip's height",
        default='1 1/2"',
        metric="40 mm",
        least="1/64 in",
        most="12 in",
        **shown,
    )


def _judging_fields():
    creep = {"usual": "The usual one for the material"}
    creep |= {key: CREEP[key].name for key in ("seasoned", "unseasoned", "most")}
    limits = {key: entry.name for key, entry in LIMITS.items()} | {"own": "My own limit"}
    return (
        choice("limit", "It may sag", limits),
        length(
            "own_limit",
            "The most sag",
            least="1/64 in",
            most="12 in",
            shown_when=("limit", ("own",)),
        ),
        choice("judged", "Held against the limit", {"years": "After years", "once": "At once"}),
        choice(
            "creep",
            "Sag after years",
            creep | {"own": "My own factor"},
            help="Wood and panels go on sagging under a load that stays.",
        ),
        _own("own_creep", "Times the sag at once", "times", "creep", least="1", most="10"),
    )


THICKNESS = thickness(least="1/16 in")
DEPTH = length(
    "depth",
    "Depth",
    help="Front to back, the board without a strip on its edge.",
    least="1/2 in",
    most="8 ft",
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
