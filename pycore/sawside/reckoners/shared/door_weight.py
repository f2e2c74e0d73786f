"""What a door weighs: each thing it is made of by its sizes and its material. Exact pounds."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.lengths.units import INCHES_PER
from sawside.wood.numbers import metric, number_text
from sawside.wood.weights import CUBIC_INCHES_PER_CUBIC_FOOT, KILOGRAMS_PER_POUND

_METER_IN_MILLIMETERS = INCHES_PER["m"] / INCHES_PER["mm"]
_CUBIC_FEET_PER_CUBIC_METER = INCHES_PER["m"] ** 3 / CUBIC_INCHES_PER_CUBIC_FOOT


@dataclass(frozen=True, slots=True)
class Weighed:
    """Something of one door: `cubic` inches of it, told by a `sum` of its sizes, and pounds per
    cubic foot, None where that is not on file."""

    name: str
    sum: str
    cubic: Fraction
    density: Fraction | None

    @property
    def pounds(self):
        """Its weight."""
        return self.cubic / CUBIC_INCHES_PER_CUBIC_FOOT * self.density


def density_of(material):
    """The heavier end of a material's range, in pounds per cubic foot; None of one's own without a
    weight."""
    return None if material is None or material.weight is None else material.weight.most


def pounds_of_door(pieces):
    """The weight of a door of such pieces; None where that of one isn't on file."""
    if any(each.density is None for each in pieces):
        return None
    return sum((each.pounds for each in pieces), Fraction(0))


def weight_working(pieces, show):
    """A line for each of them, and their sum; nothing where there is no weight."""
    pounds = pounds_of_door(pieces)
    if pounds is None:
        return
    unit, whole = "lb", CUBIC_INCHES_PER_CUBIC_FOOT
    each_pound, per = Fraction(1), Fraction(1)
    if metric(show):
        unit, whole, each_pound = "kg", _METER_IN_MILLIMETERS**3, KILOGRAMS_PER_POUND
        per = each_pound * _CUBIC_FEET_PER_CUBIC_METER
    for each in pieces:
        dense, told = number_text(each.density * per, 2), number_text(each.pounds * each_pound, 2)
        yield f"{each.name}: {each.sum} ÷ {int(whole):,} × {dense} = {told} {unit}"
    if len(pieces) > 1:
        parts = " + ".join(number_text(each.pounds * each_pound, 2) for each in pieces)
        yield f"Door weight: {parts} ≈ {number_text(pounds * each_pound, 1)} {unit}"
