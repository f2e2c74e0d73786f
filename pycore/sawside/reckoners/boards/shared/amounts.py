"""Dollars, board feet and square feet as they are told."""

from sawside.lengths.plain_numbers import number_text
from sawside.lengths.units import BOARD_FOOT, INCHES_PER, SQUARE_FOOT
from sawside.wood.numbers import metric

_SQUARE_METER = INCHES_PER["m"] ** 2
_CUBIC_METER = INCHES_PER["m"] ** 3


def money(dollars):
    """Dollars from 0 up to the nearest cent: "$1,204.50"."""
    cents = round(dollars * 100)
    return f"${cents // 100:,}.{cents % 100:02d}"


def board_feet_text(board_feet, show):
    """Board feet: "4.33 board feet"; in cubic meters too where lengths are metric."""
    told = f"{number_text(board_feet, 2)} board {'foot' if board_feet == 1 else 'feet'}"
    if not metric(show):
        return told
    return f"{number_text(board_feet * BOARD_FOOT / _CUBIC_METER, 4)} m³ ({told})"


def area_sum(width, length, show, many=1):
    """The sum of an area, "48 × 96 ÷ 144 = 32 sq ft", of so many."""
    number, unit = (1_000_000, "m²") if metric(show) else (144, "sq ft")
    much = _SQUARE_METER if metric(show) else SQUARE_FOOT
    told = number_text(width * length * many / much, 2)
    times = f"{many} × " if many > 1 else ""
    return f"{times}{show.number(width)} × {show.number(length)} ÷ {number:,} = {told} {unit}"


def area_text(square_inches, show):
    """An area: "32 sq ft", "2.97 m²" where lengths are metric."""
    if metric(show):
        return f"{number_text(square_inches / _SQUARE_METER, 2)} m²"
    return f"{number_text(square_inches / SQUARE_FOOT, 2)} sq ft"
