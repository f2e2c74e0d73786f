"""What one door weighs: its frame or slab and its panels, each by its material. Exact pounds."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.lengths.units import INCHES_PER
from sawside.wood.numbers import metric, number_text
from sawside.wood.weights import KILOGRAMS_PER_POUND

GLASS = Fraction("2.5") * Fraction("62.43")
"""Pounds per cubic foot: 2.5 times water, as soda-lime glass (EN 572-1, from memory)."""
_FOOT, _METER, _MILLIMETER = (INCHES_PER[each] for each in ("ft", "m", "mm"))


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
        return self.cubic / _FOOT**3 * self.density


def weighed(given, show, doors, frame, panel):
    """Each `Weighed` of a door: its slab, or its frame and panels, before grooves and rabbets."""
    number = show.number
    wide, high, thick = doors.across.cut, doors.up.cut, given.thickness
    face, deep = f"{number(wide)} × {number(high)}", number(thick)
    if frame is None:
        wood = given.sheet if given.made == "slab" else given.species
        yield Weighed("Slab", f"{face} × {deep}", wide * high * thick, _density(wood))
        return
    many = f"{frame.panels} × " if frame.panels > 1 else ""
    across, up = frame.inside
    net = wide * high - frame.panels * across * up
    less = f"{face} − {many}{number(across)} × {number(up)}"
    wood = given.species if given.made == "wood" else given.frame_wood
    yield Weighed("Frame", f"({less}) × {deep}", net * thick, _density(wood))
    sizes = [*(each.mark for each in panel.sizes), given.panel]
    cubic = frame.panels * sizes[0] * sizes[1] * sizes[2]
    name = "Glass" if given.made == "glass" else "Panel"
    yield Weighed(name, many + " × ".join(map(number, sizes)), cubic, _filling(given))


def _filling(given):
    """The density of what fills a frame."""
    if given.made == "glass":
        return GLASS
    return _density(given.species if given.made == "wood" else given.sheet)


def _density(wood):
    """The heavier end of a material's range; None of one's own without a weight."""
    return None if wood is None or wood.weight is None else wood.weight.most


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
    unit, whole, each_pound, per = "lb", _FOOT**3, Fraction(1), Fraction(1)
    if metric(show):
        unit, whole, each_pound = "kg", (_METER / _MILLIMETER) ** 3, KILOGRAMS_PER_POUND
        per = each_pound * (_METER / _FOOT) ** 3
    for each in pieces:
        dense, told = number_text(each.density * per, 2), number_text(each.pounds * each_pound, 2)
        yield f"{each.name}: {each.sum} ÷ {int(whole):,} × {dense} = {told} {unit}"
    if len(pieces) > 1:
        parts = " + ".join(number_text(each.pounds * each_pound, 2) for each in pieces)
        yield f"Door weight: {parts} ≈ {number_text(pounds * each_pound, 1)} {unit}"
