"""Panels and species: stiffness, strength, weight, and how far they move with moisture.

Each figure carries the source, table and page of its row and how the row is known. Stiffness and
strength are those of small clear pieces at 12 % moisture, as a range for panels. Movement is the
part of the width by which wood grows for each 1 % of moisture, between 6 and 14 %: as printed, or
worked out from the whole shrinkage S in percent where only that is on file, (S/30)/(100 - 20 S/30).
Beyond that range the shrinkage itself is used, where it is on file (`movement.py`).
Weight follows from the specific gravity G, which is that of dry wood in the volume that it has at
12 %: 62.43 x 1.12 G pounds for each cubic foot (Wood Handbook, chapter 4, read in a secondary
copy).
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.lengths.units import INCHES_PER
from sawside.wood.tables import cited, marked, rows

NEWTONS_PER_POUND = Fraction("4.4482216152605")
_METERS_PER_INCH = 1 / INCHES_PER["m"]
_PASCALS_PER_PSI = NEWTONS_PER_POUND / _METERS_PER_INCH**2
PSI_IN = {"psi": Fraction(1), "million psi": Fraction(10**6), "MPa": 10**6 / _PASCALS_PER_PSI}
"""Pounds for each square inch in one of a table's unit."""

WEIGHT_IN = {
    "lb for each cubic foot": Fraction(1),
    "specific gravity": Fraction("62.43") * Fraction("1.12"),
}
"""Pounds for each cubic foot at 12 % moisture in one of a table's unit."""

SHRINKAGE = {row["key"]: row for row in rows("shrinkage.csv")}
"""The rows of shrinkage from green to oven dry, in percent, by their key."""


_SOLD = {
    "red_oak_commercial": "what lumberyards sell as red oak",
    "oak_northern_red": "this species alone",
    "white_oak_commercial": "what lumberyards sell as white oak",
    "oak_white": "this species alone",
}
"""Red oaks are sold together, most of them northern red oak, southern ones in the South; white oaks
likewise (Wood Handbook, chapter 2, from memory). Table 13-5 gives each group as sold one row."""


@dataclass(frozen=True, slots=True)
class Figure:
    """A figure of a table: the same twice where one is printed; `cited` says where and how read."""

    least: Fraction
    most: Fraction
    cited: str
    status: str


@dataclass(frozen=True, slots=True)
class Shrinkage:
    """The whole shrinkage from green to oven dry in percent, across the rings and along them."""

    radial: Fraction
    tangential: Fraction
    cited: str


@dataclass(frozen=True, slots=True)
class Movement:
    """Growth of the width for each 1 % of moisture, across the rings and along them."""

    radial: Fraction
    tangential: Fraction
    cited: str
    status: str
    shrinkage: Shrinkage | None = None


@dataclass(frozen=True, slots=True)
class Material:
    """A panel or species; a figure that is not on file is None.

    Stiffness and strength are in psi, weight in pounds for each cubic foot.
    """

    key: str
    name: str
    kind: str
    stiffness: Figure | None = None
    strength: Figure | None = None
    movement: Movement | None = None
    weight: Figure | None = None

    @property
    def spoken(self):
        """Its name within a sentence: "red maple" for "Maple, red"; that of their own as typed."""
        return self.name if self.kind == "own" else in_a_sentence(self.name)

    def label(self, having):
        """Its name in a list of those that have a figure, marked where that is from memory.

        Where one wood is there as a species and as what is sold, it says which of them it is.
        """
        sold = _SOLD.get(self.key) if having == "movement" else None
        return marked(f"{self.name}: {sold}" if sold else self.name, getattr(self, having).status)


def in_a_sentence(name):
    """A name of a sorted list as one says it: "coast Douglas-fir", "Oregon white oak", "OSB"."""
    genus, _, which = name.partition(", ")
    if not genus.startswith(_PLACES) and genus[1:2].islower():
        genus = genus[0].lower() + genus[1:]
    if not which or ":" in genus or which.endswith("group"):
        return f"{genus}, {which}" if which else genus
    first, _, rest = genus.partition(" ")
    return f"{which} {rest if rest and which.endswith(first) else genus}"


_PLACES = ("Douglas", "Spanish")


def started(text):
    """The same where a sentence starts with it."""
    return text[:1].upper() + text[1:]


def _figures(table, units=PSI_IN):
    for row in rows(table):
        unit = units[row["unit"]]
        least, most = (Fraction(row[column]) * unit for column in ("least", "most"))
        yield row, Figure(least, most, cited(row), row["status"])


def _movements():
    """As printed, and after those the ones worked out from shrinkage."""
    whole = {
        row["key"]: Shrinkage(*(Fraction(row[way]) for way in ("radial", "tangential")), cited(row))
        for row in SHRINKAGE.values()
        if row["radial"] and row["tangential"]
    }
    for row in rows("dimensional_change.csv"):
        change = (Fraction(row[column]) for column in ("radial", "tangential"))
        yield row, Movement(*change, cited(row), row["status"], whole.get(row["key"]))
    for key, shrinkage in whole.items():
        change = (from_shrinkage(each) for each in (shrinkage.radial, shrinkage.tangential))
        told = f"worked out from the shrinkage in {shrinkage.cited}"
        yield SHRINKAGE[key], Movement(*change, told, SHRINKAGE[key]["status"], shrinkage)


def from_shrinkage(percent):
    """The change for each 1 % of moisture that a whole shrinkage in percent answers to."""
    each = Fraction(percent) / 30
    return each / (100 - 20 * each)


def _materials():
    strength = {row["key"]: figure for row, figure in _figures("strength.csv")}
    weight = {row["key"]: figure for row, figure in _figures("weight.csv", WEIGHT_IN)}
    movement = {}
    for row, change in _movements():
        movement.setdefault(row["key"], (row, change))
    for row, figure in _figures("stiffness.csv"):
        key = row["key"]
        _, moves = movement.pop(key, (None, None))
        yield Material(
            key, row["name"], row["kind"], figure, strength.get(key), moves, weight.get(key)
        )
    for key, (row, moves) in sorted(movement.items()):
        yield Material(key, row["name"], "species", movement=moves)


MATERIALS = {material.key: material for material in _materials()}
"""Every material by its key, panels first."""


def having(figure):
    """The materials that have a figure ("stiffness", "strength" or "movement"), by their names."""
    return sorted(
        (each for each in MATERIALS.values() if getattr(each, figure) is not None),
        key=lambda each: (each.kind != "panel", each.name.lower()),
    )
