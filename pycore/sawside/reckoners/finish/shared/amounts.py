"""How much of a finish goes on: by coat, and with what is lost. Gallons or liters, exact."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import impossible
from sawside.reckoners.finish.shared.cans import COVERS_METRIC, METRIC, US, Sold
from sawside.reckoners.finish.shared.faces import SIDES, area_of, exact, rim_of
from sawside.reckoners.finish.shared.finishes import FINISHES, PAINTS
from sawside.wood.tables import rows

_COVERAGE = {
    row["key"]: (Fraction(row["first"]), Fraction(row["later"]))
    for row in rows("finish_coverage.csv")
}
"""Square feet by the gallon of a first coat and of each later one: the cautious end of each row."""


@dataclass(frozen=True, slots=True)
class Amount:
    """What is bought under one name: `coats` are the volumes of each, what is lost among them."""

    name: str
    coats: tuple[Fraction, ...]

    @property
    def total(self):
        """The volume of all coats."""
        return sum(self.coats)


@dataclass(frozen=True, slots=True)
class Needed:
    """How it is `sold`; the `area` of all that is finished, in its unit; what it `covers`, by the
    first coat and by later ones; the `kinds` that are bought."""

    sold: Sold
    area: Fraction
    covers: tuple[Fraction, Fraction]
    kinds: tuple[Amount, ...]


def needed(given, show):
    """The `Needed` of a form."""
    sold = US if given.measured == "us" else METRIC
    thick = thickness_of(given, show)
    faces = given.faces or ()
    area = sum(area_of(row, show) + rim_of(row, show) * (thick or 0) for row in faces)
    area = area / sold.square_inches + sum(areas_of(given))
    covers = _covers(given)
    kept = 1 - given.loss / 100
    coats = given.coats or FINISHES[given.finish].coats
    each = [area / covers[min(at, 1)] / kept for at in range(coats)]
    return Needed(sold, area, covers, _kinds(given.finish, each))


def areas_of(given):
    """What is given by area, all faces of each, in the unit of areas."""
    rows = given.areas_us if given.measured == "us" else given.areas_metric
    return [row.area * SIDES[row.sides] for row in rows or ()]


def _covers(given):
    typed = given.coverage_us if given.measured == "us" else given.coverage_metric
    if typed is not None:
        return typed, typed
    first, later = _COVERAGE[given.finish]
    return (
        (first, later) if given.measured == "us" else (first * COVERS_METRIC, later * COVERS_METRIC)
    )


def _kinds(finish, each):
    """A finish is one kind; paint is a coat of primer, and paint."""
    if finish not in PAINTS:
        return (Amount("", tuple(each)),)
    kinds = Amount("Primer", tuple(each[:1])), Amount("paint", tuple(each[1:]))
    return kinds if len(each) > 1 else kinds[:1]


def thickness_of(given, show):
    """How thick the edges are in inches, or None where they aren't counted; "impossible" where a
    part would be thicker than it is wide."""
    if given.thickness is None:
        return None
    thick = exact(given.thickness, show)
    for number, row in enumerate(given.faces or (), 1):
        if thick > min(exact(row.length, show), exact(row.width, show)):
            raise impossible(
                f"Part {number} would be thicker than it is long or wide.",
                "Enter the thickness of the parts, or leave the edges out.",
                "thickness",
            )
    return thick
