"""What the questions about wood movement share: fields, and the board that they describe."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.drawing.choices.boards import SAWN
from sawside.errors import Refusal
from sawside.geometry.angles import cosine
from sawside.lengths.real import Exact
from sawside.lengths.show import degrees_text
from sawside.reckoners.fields import angle, choice, material, number
from sawside.wood.materials import Movement, started
from sawside.wood.moisture import REGIONS, Year, equilibrium, fahrenheit, year_of
from sawside.wood.movement import SATURATED, rate, within
from sawside.wood.numbers import number_text, percent_text, size_text
from sawside.wood.tables import noted

SOURCE = (
    "USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), equation 13-2: change = "
    "width × coefficient × change of moisture, from 6 to 14%. Where a moisture is outside that, "
    "equation 13-3: change = width × change of moisture ÷ (30 × 100 ÷ shrinkage − 30 + moisture "
    "now), up to 30%, with the percent shrinkage from green to oven dry. Moisture from the air: "
    "equation 4-5 (2021). Between flat and quarter sawn: plane geometry. The working names the "
    "source for this wood."
)
CAUTIONS = (
    "Some boards move half again their species average. Leave a little extra "
    "where you can, and follow the instructions for your glue, finish and fasteners.",
)
_SOAKED = (
    "Above about 30% (fiber saturation) wood doesn’t change size, so a higher moisture counts as "
    "30%. Green wood can check and warp as it dries, which isn’t figured in."
)
_SAWN = {
    "flat": "Flat sawn (rings run along the face)",
    "quarter": "Quarter sawn (rings stand up)",
    "between": "In between (enter ring angle)",
}
_NOW = {
    "meter": "From a moisture meter",
    "air_f": "From the shop air, °F",
    "air_c": "From the shop air, °C",
}
_AIR = ("air_f", "air_c")
_MOST = "250"
"""Green sapwood holds more than twice its own dry weight of water (Wood Handbook, Table 4-1)."""


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
    material("species", "Wood", figure="movement", own=True),
    number(
        "own_tangential",
        "Coefficient, flat sawn",
        "per 1%",
        least="0.0001",
        most="0.02",
        shown_when=("species", ("own",)),
        help="Change in width per 1% change in moisture.",
    ),
    number(
        "own_radial",
        "Coefficient, quarter sawn",
        "per 1%",
        least="0.0001",
        most="0.02",
        shown_when=("species", ("own",)),
    ),
    choice("sawn", "Cut", _SAWN, pictures=SAWN),
    angle(
        "rings",
        "Ring angle",
        help="At the end grain, from the face: 0 is flat sawn, 90 is quarter sawn.",
        shown_when=("sawn", ("between",)),
    ),
)
MOISTURE = (
    choice("now_by", "Moisture content now", _NOW),
    number("now", "Meter reading", "%", most=_MOST, shown_when=("now_by", ("meter",))),
    *air_fields("now_by"),
    choice(
        "year",
        "Through the year",
        {key: entry.name for key, entry in REGIONS.items()} | {"own": "My own range"},
        help="The moisture range it will see where it ends up.",
    ),
    number("low", "At its driest", "%", most=_MOST, shown_when=("year", ("own",))),
    number("high", "At its wettest", "%", most=_MOST, shown_when=("year", ("own",))),
)
ASKED = ("species", "now", "temperature_f", "temperature_c", "humidity", "year")
"""The keys of those that the plain case needs."""


@dataclass(frozen=True, slots=True)
class Board:
    """Wood now and through the year: moistures in percent, the part of its width for each 1 %.

    Moistures are those that count: at most `SATURATED`. `soaked` says that some were more;
    `rates` are the lines of working of the coefficient, its source and that of the year first.
    """

    name: str
    coefficient: Exact
    now: Fraction
    year: Year
    cited: str
    rates: tuple[str, ...] = ()
    soaked: bool = False

    def change(self, width, moisture):
        """Growth of a width in inches from now to a moisture; negative where it shrinks."""
        return self.coefficient * (width * (moisture - self.now))

    @property
    def grown(self):
        """How many times as wide as now it is at its wettest."""
        return 1 + self.growth(Fraction(1))

    def growth(self, width):
        """Growth from now to the wettest, never less than none."""
        return self.change(width, max(self.year.high, self.now))

    def shrinkage(self, width):
        """Shrinkage from now to the driest, never less than none."""
        return -self.change(width, min(self.year.low, self.now))


def board_of(given):
    """The board of a form; refuses a year that is upside down ("impossible")."""
    if given.species is None:
        name = "Your own wood"
        moves = Movement(given.own_radial, given.own_tangential, "your own figures", "")
    else:
        name, moves = started(given.species.spoken), given.species.movement
    year = _year(given)
    typed = moisture_now(given), year.low, year.high
    now, low, high = (min(each, SATURATED) for each in typed)
    inside = within(*typed)
    rates = [rate(moves, way, now, inside) for way in _WAYS[given.sawn]]
    coefficient, between = _coefficient(given, rates)
    cited = "; ".join(dict.fromkeys(each.cited for each in rates))
    return Board(
        name,
        coefficient,
        now,
        Year(low, high, year.cited),
        cited,
        (
            f"Source, wood: {cited}",
            f"Source, moisture range: {year.cited}",
            *(each.working for each in rates if each.working),
            *between,
        ),
        max(typed) > SATURATED,
    )


_WAYS = {"flat": ("tangential",), "quarter": ("radial",), "between": ("tangential", "radial")}


def moisture_now(given):
    """The moisture in percent."""
    if given.now_by == "meter":
        return given.now
    degrees = given.temperature_f if given.now_by == "air_f" else fahrenheit(given.temperature_c)
    return equilibrium(degrees, given.humidity)


def _year(given):
    if given.year != "own":
        return year_of(given.year)
    if given.high < given.low:
        raise Refusal(
            "impossible",
            f"The wettest, {percent_text(given.high)}, is below the driest, "
            f"{percent_text(given.low)}.",
            "Swap them.",
            field="high",
        )
    return Year(given.low, given.high, "your own range")


def _coefficient(given, rates):
    """(of the width, lines of working): tangential x cos**2 + radial x sin**2 of the rings."""
    if given.sawn != "between":
        return rates[0].each, ()
    tangential, radial = (each.each for each in rates)
    flat = (1 + cosine(2 * given.rings)) / 2
    coefficient = radial + (tangential - radial) * flat
    across, along = (number_text(each, 5) for each in (radial, tangential))
    line = (
        f"Between flat and quarter sawn: {across} + ({along} − {across}) × "
        f"(1 + cos {degrees_text(2 * given.rings)}°) ÷ 2 = {number_text(coefficient, 5)}"
    )
    return coefficient, (line,)


def cautions(board):
    """The cautions; where wood is soaked they say so first."""
    return (_SOAKED, *CAUTIONS) if board.soaked else CAUTIONS


def board_text(board):
    """The wood, its coefficient and the moistures; the working says where each comes from."""
    return (
        f"{board.name}: {number_text(board.coefficient, 5)} of the width per 1% moisture change"
        f"{noted(board.cited)}. Now {percent_text(board.now)}; {percent_text(board.year.low)} to "
        f"{percent_text(board.year.high)} through the year{noted(board.year.cited)}."
    )


def change_line(show, board, width, moisture, name):
    """A line of working: width x coefficient x change of moisture."""
    change = board.change(width, moisture)
    sign = "−" if moisture < board.now else ""
    return (
        f"{name}: {show.number(width)} × {number_text(board.coefficient, 5)} × "
        f"({percent_text(moisture, 3)} − {percent_text(board.now, 3)}) = "
        f"{sign}{size_text(abs(change), show)}"
    )
