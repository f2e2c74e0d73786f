"""The shelf that a form of `SHELF_FIELDS` describes, and what its sag is held against."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from sawside.reckoners.shelves.shared.strength.fields import OWN_LOADS
from sawside.wood.materials import Figure, Material
from sawside.wood.strength.loads import LOADS, load_of
from sawside.wood.strength.plate_ratios import ratios_of
from sawside.wood.strength.sag_limits import CREEP, limit, usual_creep
from sawside.wood.strength.shelf import Load, Shelf, Strip
from sawside.wood.weights import CUBIC_INCHES_PER_CUBIC_FOOT

_MILLION = 10**6


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
        made = (("Board", self.board), ("Edging", self.strip_material))
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
    """The case of a form; `blank` stands in for what is worked out."""
    board = given.material or _own_material(given.own_stiffness, given.own_strength)
    strip, made_of = _strip_of(given, board, blank.pop("strip_height", None))
    load, told = _load_of(given) if "load" not in blank else (blank.pop("load"), "")
    across, slide, *_ = ratios_of(board)
    shelf = Shelf(
        **{
            "stiffness": board.stiffness.least,
            "thickness": given.thickness,
            "depth": given.depth,
            "span": given.span,
            "load": load,
            "supports": given.supports,
            "spread": given.spread,
            "overhang": given.overhang or Fraction(0),
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
    if given.load in OWN_LOADS:
        return load_of(getattr(given, given.load), OWN_LOADS[given.load][1]), "your own figure"
    entry = LOADS[given.load]
    return load_of(entry.number, entry.row["unit"]), entry.cited


def _creep_of(given, materials):
    if given.creep == "own":
        return given.own_creep, "your own factor"
    entry = usual_creep(materials) if given.creep == "usual" else CREEP[given.creep]
    return entry.number, entry.cited
