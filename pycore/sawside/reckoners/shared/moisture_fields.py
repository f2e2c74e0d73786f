"""What the questions about wood movement share: fields, and the board that they describe."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.geometry.angles import cosine
from sawside.lengths.real import Exact
from sawside.reckoners.declaration import angle, choice, material, number
from sawside.wood.moisture import DAMPEST, DRIEST, REGIONS, Year, equilibrium, fahrenheit, year_of
from sawside.wood.numbers import number_text, percent_text, size_text

SOURCE = (
    "USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), equation 13-2: change = "
    "width × coefficient × change of moisture, from 6 to 14 %. Moisture from the air: equation 4-5 "
    "(2021). Between flat and quarter sawn: plane geometry. The wood's row names its own source."
)
CAUTIONS = (
    "Boards differ: one may move half as much again as its species. Leave a little more than this "
    "where there is room, and follow the maker's instructions for glue, finish and fasteners.",
)
_SAWN = {
    "flat": "Flat sawn: the rings lie along the face",
    "quarter": "Quarter sawn: the rings stand upright",
    "between": "In between, by the angle of the rings",
}
_NOW = {
    "meter": "By a moisture meter",
    "air_f": "From the air it lies in, °F",
    "air_c": "From the air it lies in, °C",
}
_AIR = ("air_f", "air_c")


def air_fields(by):
    """Temperature and humidity, where the choice `by` is "air_f" or "air_c"."""
    return (
        number(
            "temperature_f",
            "Temperature",
            "°F",
            least="30",
            most="200",
            shown_when=(by, ("air_f",)),
        ),
        number(
            "temperature_c", "Temperature", "°C", least="-1", most="93", shown_when=(by, ("air_c",))
        ),
        number("humidity", "Relative humidity", "%", least="5", most="95", shown_when=(by, _AIR)),
    )


WOOD = (
    material("species", "Wood", figure="movement", own=True, help="Its source is shown below."),
    number(
        "own_tangential", "Coefficient, flat sawn", "for each 1 %", least="0.0001", most="0.02",
        shown_when=("species", ("own",)), help="The part of the width for each 1 % of moisture.",
    ),
    number(
        "own_radial", "Coefficient, quarter sawn", "for each 1 %", least="0.0001", most="0.02",
        shown_when=("species", ("own",)),
    ),
    choice("sawn", "Sawn", _SAWN),
    angle(
        "rings", "Angle of the rings", help="At the end, from the face: 0 is flat, 90 quarter.",
        shown_when=("sawn", ("between",)),
    ),
)  # fmt: skip
MOISTURE = (
    choice("now_by", "Its moisture now", _NOW),
    number("now", "Moisture now", "%", most="30", shown_when=("now_by", ("meter",))),
    *air_fields("now_by"),
    choice(
        "year", "Through the year",
        {key: entry.name for key, entry in REGIONS.items()} | {"own": "My own range"},
        help="Between which moistures the wood will go where it is to stand.",
    ),
    number("low", "At its driest", "%", most="30", shown_when=("year", ("own",))),
    number("high", "At its dampest", "%", most="30", shown_when=("year", ("own",))),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Board:
    """Wood now and through the year: moistures in percent, its coefficient as it is sawn."""

    name: str
    coefficient: Exact
    now: Fraction
    year: Year
    cited: str

    def change(self, width, moisture):
        """Growth of a width in inches from now to a moisture; negative where it shrinks."""
        return self.coefficient * (width * (moisture - self.now))

    def growth(self, width):
        """Growth from now to the dampest, never less than none."""
        return self.change(width, max(self.year.high, self.now))

    def shrinkage(self, width):
        """Shrinkage from now to the driest, never less than none."""
        return -self.change(width, min(self.year.low, self.now))


def board_of(given):
    """The board of a form. "range" where a moisture is outside that of the coefficients."""
    if given.species is None:
        name, cited = "Own wood", "your own figures"
        tangential, radial = given.own_tangential, given.own_radial
    else:
        moves = given.species.movement
        name, cited = given.species.name, moves.cited
        tangential, radial = moves.tangential, moves.radial
    now, field = moisture_now(given)
    _in_range(now, field, "The moisture now")
    year = _year(given)
    return Board(name, _coefficient(given, tangential, radial), now, year, cited)


def moisture_now(given):
    """The moisture in percent, and the field that it hangs on."""
    if given.now_by == "meter":
        return given.now, "now"
    degrees = given.temperature_f if given.now_by == "air_f" else fahrenheit(given.temperature_c)
    return equilibrium(degrees, given.humidity), "humidity"


def _year(given):
    if given.year != "own":
        return year_of(given.year)
    for key, name in (("low", "The driest"), ("high", "The dampest")):
        _in_range(getattr(given, key), key, name)
    if given.high < given.low:
        raise Refusal(
            "impossible",
            f"The dampest, {percent_text(given.high)}, is below the driest, "
            f"{percent_text(given.low)}.",
            "Change the two about.",
            field="high",
        )
    return Year(given.low, given.high, "your own range")


def _in_range(moisture, field, name):
    if not DRIEST <= moisture <= DAMPEST:
        way = "dry" if moisture > DAMPEST else "come up"
        raise Refusal(
            "range",
            f"{name} is {percent_text(moisture)}, and the coefficients hold from 6 to 14 %.",
            f"Let the wood {way} to between 6 and 14 % first, or give a moisture in that range.",
            field=field,
        )


def _coefficient(given, tangential, radial):
    """Of the width: tangential x cos**2 + radial x sin**2 of the rings' angle from the face."""
    if given.sawn != "between":
        return tangential if given.sawn == "flat" else radial
    flat = (1 + cosine(2 * given.rings)) / 2
    return radial + (tangential - radial) * flat


def cautions(board):
    """The cautions; where the year goes beyond the coefficients they say so first."""
    if board.year.clipped is None:
        return CAUTIONS
    low, high = (number_text(each) for each in board.year.clipped)
    return (
        f"The region is printed as {low} to {high} %. The coefficients hold from 6 to 14 %, so it "
        f"is reckoned from {number_text(board.year.low)} to {number_text(board.year.high)} %: "
        "beyond that it moves more than this says.",
        *CAUTIONS,
    )


def board_text(board):
    """The wood, its coefficient and the moistures, each with where it comes from."""
    return (
        f"{board.name}: {number_text(board.coefficient, 5)} of the width for each 1 % of moisture "
        f"({board.cited}). Now {percent_text(board.now)}; through the year "
        f"{percent_text(board.year.low)} to {percent_text(board.year.high)} ({board.year.cited})."
    )


def change_line(show, board, width, moisture, name):
    """A line of working: width x coefficient x change of moisture."""
    change = board.change(width, moisture)
    sign = "−" if moisture < board.now else ""
    return (
        f"{name}: {show.number(width)} × {number_text(board.coefficient, 5)} × "
        f"({percent_text(moisture)} − {percent_text(board.now)}) = "
        f"{sign}{size_text(abs(change), show)}"
    )
