"""How much a case takes: sheet by thickness, edging, area to finish, weight.

Everything is of the whole panels, before their joints are cut; strips of solid edging count in the
weight alone, as if they were of the panels' material.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.lengths.areas import area_text, unit_of_areas
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.case.shared.carcass.as_measured import measured_text
from sawside.wood.numbers import metric, number_text, small_text
from sawside.wood.weights import KILOGRAMS_PER_POUND

_FOOT = INCHES_PER["ft"]
_METER = INCHES_PER["m"]


@dataclass(frozen=True, slots=True)
class Amounts:
    """Square inches of one face by thickness; inches of edging with its waste; cubic inches, and
    pounds per cubic foot."""

    areas: dict[Fraction, Fraction]
    seen: Fraction
    edging: Fraction
    cubic: Fraction
    density: Fraction | None

    @property
    def area(self):
        """One face of every panel."""
        return sum(self.areas.values())

    @property
    def pounds(self):
        """The weight of the case, where that of its material is on file."""
        return self.cubic / _FOOT**3 * self.density


def amounts_of(panels, strips, given):
    """The `Amounts` of the panels and of the strips on them; `given` has the material and the waste
    of the edging."""
    areas = {}
    for panel in panels:
        areas[panel.thickness] = areas.get(panel.thickness, 0) + panel.area
    seen = sum((panel.count * panel.bands for panel in panels), Fraction(0))
    return Amounts(
        areas,
        seen,
        seen * (1 + given.waste / 100) if seen else seen,
        sum(each.thickness * each.area for each in (*panels, *strips)),
        given.material.weight and given.material.weight.most,
    )


def sheets_text(amounts, show):
    """ "23/32″ thick: 25.6 ft²; 1/4″ thick: 7.2 ft²"."""
    return "; ".join(
        f"{measured_text(thickness, show)} thick: {area_text(area, unit_of_areas(show))}"
        for thickness, area in amounts.areas.items()
    )


def amounts_answers(amounts, show):
    """The answers about them; edging or weight that isn't there is left out."""
    edging = {"edging": show.rounded(amounts.edging, "reach")} if amounts.edging else {}
    weight = {"weight": amounts.pounds} if amounts.density else {}
    return {
        "sheets": sheets_text(amounts, show),
        **edging,
        "finish": area_text(2 * amounts.area, unit_of_areas(show)),
        **weight,
    }


def amounts_working(panels, amounts, given, show):
    """The areas of the panels, the edging and the weight, with this case's numbers."""
    for panel in panels:
        many = f"{panel.count} × " if panel.count > 1 else ""
        size = f"{many}{show.number(panel.length)} × {show.number(panel.width)}"
        yield f"{panel.name}, one face: {size} = {_square(panel.area, show)}"
    if amounts.edging:
        part = show.pure(1 + given.waste / 100, decimals=True)
        yield (
            f"Edging with waste: {show.number(amounts.seen)} × {part}"
            f"{show.equals(show.rounded(amounts.edging, 'reach'))}"
        )
    area = amounts.area
    yield f"Finish, both faces of every part: 2 × {_square(area, show)} = {_square(2 * area, show)}"
    if amounts.density:
        yield _weight_working(amounts, show)


def _square(square_inches, show):
    millimeters = metric(show)
    per = 1 / INCHES_PER["mm"] if millimeters else 1
    return show.pure(square_inches * per**2, decimals=millimeters)


def _weight_working(amounts, show):
    if metric(show):
        volume, unit = amounts.cubic / _METER**3, "Cubic meters × kg per cubic meter"
        density = amounts.density * KILOGRAMS_PER_POUND * (_METER / _FOOT) ** 3
        weight = f"{small_text(volume * density)} kg"
    else:
        volume, unit = amounts.cubic / _FOOT**3, "Cubic feet × lb per cubic foot"
        density, weight = amounts.density, f"{number_text(amounts.pounds, 1)} lb"
    return f"{unit}: {small_text(volume)} × {small_text(density)} ≈ {weight}"
