"""Reading lengths, angles and counts, and sums of them.

Every form that is read:

    31   31.5   .0625   22.            whole and decimal numbers
    5/8   33/16   5 7/12               fractions of any denominator, proper or not
    7 13/16   7-13/16                  mixed, by spaces or by a hyphen without spaces
    ½   5½   5 ½   5-½                 the Unicode vulgar fractions, alone or after a whole number
    3⁄4   5³⁄₄   ⁵/₈   ⅟₈              the fraction slash, raised and lowered digits
    31"  31″  31”  31''  31 in  31 inch  31 inches  31 in.
    6'   6′   6’   6 ft   6 foot   6 feet   6 ft.
    2 yd  18 mm  4.5 cm  2 m  …        every length of units.txt, in capitals or not
    10'6   6' 7 9/32"   6'-7-9/32"   6 ft 7 in   2 yd 1 ft   1 m 20 cm
                                       larger units before smaller; after feet a bare number is
                                       inches, and a hyphen without spaces joins the two
    + - −   * × x · of   / ÷   ( )     usual precedence; a sign before a number or parenthesis

A hyphen between numbers subtracts, except in the two places above: `3 - 5/16` and `3-5` subtract,
`3-5/16` is three and five sixteenths. A fraction written without spaces is one number: `8 ÷ 1/2`
is sixteen.

A bare number is a pure number until it is added to a length, divided by one, or handed over as
one; then it is in the unit of the settings. A length times a length is an area, a length by a
length is a count with a remainder.

Not read, each with its sentence, place and remedy: nothing at all, `3//4`, `1/2/4`, a division
by 0, two numbers side by side (`3 5/16 7`), inches before feet, `1,024` and `31.5/8` (they can
mean two things), powers and exponents, digits of other scripts, units that units.txt lacks, lengths
added to areas or counts, more than 200 characters, more than 12 digits in a number, results
beyond a mile, and numbers of more than 300 digits, which only names make. What only has to go on
is told as unfinished: `31 5`, `31 5/`, `3 +`, `(3`, `31 i`, `1 m 20`. Nothing is evaluated as
code, and time is linear in the text.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.errors import Refusal
from sawside.lengths.reading import parser
from sawside.lengths.reading.kinds import ANGLE, COUNT, LENGTH
from sawside.lengths.reading.parser import parse
from sawside.lengths.reading.refusals import unreadable
from sawside.lengths.reading.term import NAMES
from sawside.lengths.units import MILE

_MOST = tuple(int(MILE) ** max(power, 1) for power in range(4))
_BEYOND = (
    f"That’s more than {int(MILE):,}.",
    "That’s longer than a mile.",
    "That’s more than a square mile.",
    "That’s more than a cubic mile.",
)


@dataclass(slots=True)
class Reading:
    """What a text was read as.

    `value` is exact: inches, square inches or cubic inches by `power` 1, 2, 3, degrees for an
    angle, a pure number for power 0. `remainder` is in inches, after a length divided by a length.
    `echo` is the text as it was understood.
    """

    value: Fraction
    power: int
    echo: str
    remainder: Fraction | None = None


def read(text, unit="in", names=None):
    """Read a length, or a sum that may be a count or an area; a bare number is in `unit`.

    `names` maps names that may stand in the sum to `names.Named` values.
    Errors: "missing" for blank text, "unreadable", "range" beyond a mile (of any power).
    """
    term = parse(text, LENGTH, LENGTH.units[unit], names)
    if abs(term.top) > _MOST[term.power] * abs(term.bottom):
        raise Refusal("range", _BEYOND[term.power], "Check the number and its unit.", at=0)
    return Reading(term.value, term.power, term.echo, term.remainder)


def last_step(text, unit="in", names=None):
    """The last step of a sum, as text: "+ 2 1/4" of "31 5/8 + 2 1/4"; None of a single number.

    Errors as `read`.
    """
    return parser.last_step(text, LENGTH, LENGTH.units[unit], names)


def read_length(text, unit="in", names=None):
    """Read a length, or a sum that comes to one. Errors as `read`, and "unreadable" for areas."""
    reading = read(text, unit, names)
    if reading.power != 1:
        raise unreadable(
            f"That works out to {NAMES[reading.power]}, but this needs a length.",
            "Write a length, as in 31 5/8.",
            0,
        )
    return reading


def read_angle(text, names=None):
    """Read an angle in degrees: 45, 22 1/2, 22.5°, 180/8. Errors as `read`."""
    term = parse(text, ANGLE, ANGLE.units["deg"], names)
    if term.power != 1:
        raise unreadable("That doesn’t work out to an angle.", "Write degrees, as in 22 1/2.", 0)
    return Reading(term.value, 1, term.echo)


def read_count(text, names=None):
    """Read a whole number. Errors as `read`, and "unreadable" for a part of a whole."""
    number = read_number(text, names)
    if number.value.denominator != 1:
        raise unreadable("That isn’t a whole number.", "Write a whole number, as in 4.", 0)
    return number


def read_number(text, names=None):
    """Read a pure number: 25, 6.5, 36 1/4, -10. Errors as `read`, and "unreadable" for lengths."""
    term = parse(text, COUNT, None, names)
    if term.power != 0:
        raise unreadable(
            f"That works out to {NAMES[term.power]}, but this needs a plain number.",
            "Write the number alone, as in 4.",
            0,
        )
    return Reading(term.value, 0, term.pure_echo)
