"""One kind of wood as it is sold: what it really measures, what it is counted as, what one costs.

Lengths in exact inches, money in exact dollars.
"""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from sawside.errors import Refusal
from sawside.lengths.real import Real
from sawside.lengths.units import INCHES_PER
from sawside.reckoners.boards.shared.buy_fields import (
    NOMINAL,
    PER_FIELD,
    QUARTERS,
    SHEET,
    SOFTWOOD,
    STICK,
)
from sawside.wood.board_measure import board_feet, counted_thickness, square_feet, surface_measure
from sawside.wood.named import material_named
from sawside.wood.sold_sizes import HARDWOOD, SOFTWOOD_THICK, SOFTWOOD_WIDE, inches


@dataclass(frozen=True, slots=True)
class Sold:
    """A row of wood to buy. `thickness` and `width` are as sold, None of a stick that told none;
    `planed` is how thick it is made, None where it is left as sold; `counted` is the thickness and
    width that its board feet go by, `per` what its price is for, "" where it has none."""

    number: int
    row: Any
    form: str
    called: str
    length: Fraction
    width: Fraction | None
    thickness: Fraction | None
    planed: Fraction | None
    counted: tuple[Fraction, Fraction] | None
    trim: Fraction
    per: str
    wood: Any

    @property
    def used_thickness(self):
        """How thick it is once it is planed."""
        return self.planed or self.thickness

    @property
    def board_feet(self):
        """What it is counted as: by surface measure where it is priced so, else by volume; None
        for what is no board."""
        if self.counted is None:
            return None
        thickness, width = self.counted
        if self.per == "surface":
            return surface_measure(width, self.length) * counted_thickness(thickness)
        return board_feet(thickness, width, self.length)

    @property
    def quantity(self):
        """How much of what its price is for there is in one."""
        return _QUANTITY[self.per](self)

    @property
    def cost(self):
        """What one costs; None where no price is given."""
        return self.row.price * self.quantity if self.per else None


_QUANTITY = {
    "piece": lambda one: Fraction(1),
    "foot": lambda one: one.length / INCHES_PER["ft"],
    "meter": lambda one: one.length / INCHES_PER["m"],
    "board_foot": lambda one: one.board_feet,
    "surface": lambda one: one.board_feet,
    "square_foot": lambda one: square_feet(one.width, one.length),
    "square_meter": lambda one: one.width * one.length / INCHES_PER["m"] ** 2,
    "cubic_meter": lambda one: one.thickness * one.width * one.length / INCHES_PER["m"] ** 3,
}


def all_sold(given, show):
    """The `Sold` of each row; "missing" or "impossible" for what can't be priced or cut."""
    return [_sold(number, row, show) for number, row in enumerate(given.wood, 1)]


def exact(length, show):
    """A length as a fraction; one that is none is what the tape says of it, None stays None."""
    return show.mark(length) if isinstance(length, Real) else length


def _sold(number, row, show):
    called, thickness, width, counted = _SIZES.get(row.sold, _as_measured)(number, row, show)
    panel = row.sold == SHEET
    made = Sold(
        number,
        row,
        row.sold if row.sold in (SHEET, STICK) else "board",
        called,
        exact(row.length, show),
        width,
        thickness,
        exact(row.planed, show),
        counted,
        exact(row.trim, show) or Fraction(0),
        _priced_by(number, row),
        material_named(row.material or "", show.settings.materials, panel=panel),
    )
    _refuse(made, show)
    return made


def _softwood(_number, row, _show):
    thick, wide = row.nominal.split(" x ")
    thickness, width = (
        table[key].figures["dry"]
        for table, key in ((SOFTWOOD_THICK, f"thickness_{thick}"), (SOFTWOOD_WIDE, f"width_{wide}"))
    )
    nominal = inches(SOFTWOOD_THICK[f"thickness_{thick}"].name), Fraction(wide)
    return NOMINAL[row.nominal], thickness, width, (counted_thickness(nominal[0]), nominal[1])


def _hardwood(number, row, show):
    size, rough = HARDWOOD[row.quarters], _rough(row.quarters)
    thickness = rough if row.surfaced == "rough" else size.figures[row.surfaced]
    if thickness is None:
        raise _at(
            number,
            "surfaced",
            "unknown",
            f"there’s no thickness on file for {size.name} surfaced on one side.",
            "Pick the other surfacing, or enter it as a board of its actual size.",
        )
    width = exact(row.average, show)
    return size.name.partition(" ")[0], thickness, width, (rough, width)


def _rough(key):
    """5/4 of "thickness_5_4"."""
    return Fraction(*map(int, key.split("_")[1:]))


def _as_measured(_number, row, show):
    if row.sold == STICK:
        sizes = exact(row.stick_thickness, show), exact(row.stick_width, show)
        return "", *sizes, None
    thickness, width = exact(row.thickness, show), exact(row.width, show)
    return "", thickness, width, None if row.sold == SHEET else (thickness, width)


_SIZES = {SOFTWOOD: _softwood, QUARTERS: _hardwood}


def _priced_by(number, row):
    part = PER_FIELD.get(row.sold, "per")
    per = getattr(row, part)
    if row.price is None:
        return ""
    if not per:
        raise _at(
            number,
            part,
            "missing",
            "the price has no unit.",
            "Pick what the price buys: one piece, a foot, a board foot.",
        )
    if per == "surface" and row.sold != QUARTERS:
        raise _at(
            number,
            part,
            "impossible",
            "surface measure counts rough hardwood only.",
            "Choose hardwood by quarters, or a board foot by volume.",
        )
    return per


def _refuse(sold, show):
    if sold.planed and sold.planed > sold.thickness:
        raise _at(
            sold.number,
            "planed",
            "impossible",
            f"it’s {show.brief(sold.thickness)} thick as it’s sold, and can’t be planed to more.",
            "Enter less, or buy the next thickness.",
        )
    if sold.trim and 2 * sold.trim >= min(sold.width, sold.length):
        raise _at(sold.number, "trim", "impossible", "the trim takes all of it.", "Trim less.")
    if sold.per == "surface" and not sold.board_feet:
        raise _at(
            sold.number,
            "per",
            "impossible",
            "by surface measure a board this small counts as nothing.",
            "Price it by volume, or by the piece.",
        )


def _at(number, part, kind, message, remedy):
    """A refusal beside a field of a row; `number` from 1."""
    return Refusal(
        kind, f"Wood {number}: {message}", remedy, field="wood", row=number - 1, part=part
    )
