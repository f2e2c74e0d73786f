"""What can be read: lengths, angles and counts, each with the units that belong to it."""

from dataclasses import dataclass
from fractions import Fraction

from sawside.lengths.units import ANGLES, INCHES_PER, LENGTHS


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit as the parser needs it: exact factor, how the echo writes it, and its family."""

    top: int
    bottom: int
    echo: str
    metric: bool

    @property
    def factor(self):
        """Inches (or degrees) in one of the unit."""
        return Fraction(self.top, self.bottom)


@dataclass(frozen=True, slots=True)
class Measure:
    """What is being read: its units by name, an example, and what is said of other units."""

    units: dict[str, Unit]
    example: str
    other_units: str


def _length_units():
    echoes = {"in": "″", "ft": "′"}
    made = {
        factor: Unit(
            factor.numerator, factor.denominator, echoes.get(name, f" {name}"), name[-1] == "m"
        )
        for name, factor in INCHES_PER.items()
    }
    named = {name: made[factor] for name, factor in LENGTHS.items()}
    return named | {"'": named["ft"], '"': named["in"], "''": named["in"]}


LENGTH = Measure(_length_units(), "31 5/8", "Use ' \" ft in yd mm cm or m.")
ANGLE = Measure(
    {
        name: Unit(factor.numerator, factor.denominator, "°", False)
        for name, factor in ANGLES.items()
    },
    "22 1/2",
    "Write degrees, as in 22 1/2.",
)
COUNT = Measure({}, "4", "Write the number alone, as in 4.")
FOOT, INCH = LENGTH.units["ft"], LENGTH.units["in"]
