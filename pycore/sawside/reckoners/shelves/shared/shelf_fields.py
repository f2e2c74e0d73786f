"""What the questions about a sagging shelf ask, and the shelf that this describes."""

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

from sawside.reckoners.declaration import Choice, choice, length, material, number
from sawside.wood.materials import Figure, Material
from sawside.wood.strength.loads import CUBIC_INCHES_PER_CUBIC_FOOT, LOADS, load_of
from sawside.wood.strength.plate_ratios import ratios_of
from sawside.wood.strength.sag_limits import CREEP, LIMITS, limit, usual_creep
from sawside.wood.strength.shelf import Load, Shelf, Strip

_MILLION = 10**6
_OWN = "From the maker's data sheet, or a test of your own: 1 GPa is 0.145 million psi."
_STRIP = ("front", "back", "both")
_HOLDS = {
    "resting": "Resting, free to bend at both ends",
    "fixed": "Held fast at both ends",
    "overhanging": "Standing over its supports",
}


def _own(key, label, unit, by, **more):
    return number(key, label, unit, shown_when=(by, ("own",)), **more)


def _material_fields():
    return (
        material("material", "Material", own=True, help="Its source is shown with the answer."),
        _own(
            "own_stiffness",
            "Its stiffness (modulus of elasticity)",
            "million psi",
            "material",
            help=_OWN,
            least="0.01",
            most="40",
        ),
        _own(
            "own_strength",
            "Its breaking strength in bending",
            "psi",
            "material",
            least="100",
            most="100000",
            may_be_blank=True,
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


_OWN_LOADS = {
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
    choices |= {key: text for key, (text, _) in _OWN_LOADS.items()}
    own = tuple(
        number(key, "Load", unit, least="0.01", most="10000", shown_when=("load", (key,)))
        for key, (_, unit) in _OWN_LOADS.items()
    )
    return choice("load", "What stands on it", choices), *own, SPREAD


def _strip_fields(needed, height):
    edges = {"front": "Along the front", "back": "Along the back", "both": "Front and back"}
    edges = edges if needed else {"none": "None"} | edges
    shown = {} if needed else {"shown_when": ("strip", _STRIP)}
    board = Choice("same", "The same as the board")
    made = material("strip_material", "Strip's material", own=True, default="same", **shown)
    fields = (
        choice(
            "strip", "Edge strip", edges, help="Glued on all along: it holds up its own edge most."
        ),
        choice(
            "strip_place",
            "The strip is",
            {"edge": "On the edge, level with the top", "under": "Under the board"},
            **shown,
        ),
        replace(made, choices=(board, *made.choices)),
        _own(
            "strip_own_stiffness",
            "Stiffness of the strip",
            "million psi",
            "strip_material",
            help=_OWN,
            least="0.01",
            most="40",
        ),
        length(
            "strip_thickness",
            "Strip, front to back",
            default='3/4"',
            metric="18 mm",
            least="1/64 in",
            most="6 in",
            **shown,
        ),
        length(
            "strip_height",
            "Strip's height",
            default='1 1/2"',
            metric="40 mm",
            least="1/64 in",
            most="12 in",
            **shown,
        ),
    )
    return fields if height else fields[:-1]


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


THICKNESS = length(
    "thickness",
    "Thickness",
    help="As measured.",
    default='3/4"',
    metric="18 mm",
    least="1/16 in",
    most="6 in",
)
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
        *_strip_fields(without == "strip_height", without != "strip_height"),
        *_judging_fields(),
    )


@dataclass(frozen=True, slots=True)
class ShelfCase:
    """A shelf that was described, and what it is held against."""

    shelf: Shelf
    board: Material
    strip_material: Material | None
    load_cited: str
    creep: Fraction
    creep_cited: str
    given: Any

    @property
    def materials(self):
        """What the shelf is made of: ("Board", its material), and the strip where there is one."""
        made = (("Board", self.board), ("Strip", self.strip_material))
        return tuple((name, material) for name, material in made if material is not None)

    @property
    def factor(self):
        """What the sag at once is multiplied by before it is held against the limit."""
        return self.creep if self.given.judged == "years" else 1

    def limit(self, shelf):
        """The most sag that was asked for, in inches."""
        return limit(self.given.limit, shelf.span, self.given.own_limit)

    def excess(self, shelf):
        """How far a shelf sags beyond the limit, in inches; negative within it."""
        return self.factor * shelf.sag - self.limit(shelf)


def shelf_case(given, **blank):
    """The case of a form; `blank` stands in for what the form does not ask."""
    board = given.material or _own_material(given.own_stiffness, given.own_strength)
    strip, made_of = _strip_of(given, board, blank.pop("strip_height", None))
    load, told = _load_of(given) if "load" not in blank else (blank.pop("load"), "")
    across, slide, *_ = ratios_of(board)
    shelf = Shelf(
        **{
            "stiffness": board.stiffness.least,
            "thickness": getattr(given, "thickness", None),
            "depth": given.depth,
            "span": getattr(given, "span", None),
            "load": load,
            "supports": given.supports,
            "spread": given.spread,
            "overhang": getattr(given, "overhang", None) or Fraction(0),
            "strip": strip,
            "cleat": given.cleat == "back",
            "weight": _weight_of(board),
            "across": across,
            "slide": slide,
        }
        | blank
    )
    factor, cited = _creep_of(given, [each for each in (board, made_of) if each])
    return ShelfCase(shelf, board, made_of, told, factor, cited, given)


def _own_material(millions, strength):
    def figure(psi):
        return psi and Figure(psi, psi, "your own figure", "your own figure")

    return Material("own", "Own material", "own", figure(millions * _MILLION), figure(strength))


def _strip_of(given, board, height):
    if given.strip == "none":
        return None, None
    made_of = given.strip_material or board
    if given.strip_own_stiffness is not None:
        made_of = _own_material(given.strip_own_stiffness, None)
    height = given.strip_height if height is None else height
    under = given.strip_place == "under"
    strip = Strip(
        made_of.stiffness.least,
        given.strip_thickness,
        height,
        given.strip,
        under,
        _weight_of(made_of),
        ratios_of(made_of)[1],
    )
    return strip, made_of


def _weight_of(material):
    """Pounds for each cubic inch, the most of a range; None where no weight is known."""
    return material.weight and material.weight.most / CUBIC_INCHES_PER_CUBIC_FOOT


def _load_of(given) -> tuple[Load, str]:
    if given.load in _OWN_LOADS:
        return load_of(getattr(given, given.load), _OWN_LOADS[given.load][1]), "your own figure"
    entry = LOADS[given.load]
    return load_of(entry.number, entry.row["unit"]), entry.cited


def _creep_of(given, materials):
    if given.creep == "own":
        return given.own_creep, "your own factor"
    entry = usual_creep(materials) if given.creep == "usual" else CREEP[given.creep]
    return entry.number, entry.cited
