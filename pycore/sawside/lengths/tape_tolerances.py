"""How far a tape may be off by the published rules, for a length from its zero.

Metal tapes, NIST Handbook 44, section 5.52, table of maintenance and acceptance tolerances, in
excess and in deficiency (read in a copy of the 2007 edition): by the nominal interval from zero in
feet. The table tells whole feet; a length between two of them is taken as the longer here.

EU classes I, II, III, Directive 2014/32/EU, Annex X (MI-008): a + b L millimeters, with L in
meters rounded up to the next whole meter (read). What the Directive adds for a measure that
begins at an end face or hook is left out: it was not at hand to be read.
"""

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from sawside.lengths.units import INCHES_PER

_FOOT, _METER, _MM = INCHES_PER["ft"], INCHES_PER["m"], INCHES_PER["mm"]

STEPS = (
    (6, Fraction(1, 32)),
    (30, Fraction(1, 16)),
    (55, Fraction(1, 8)),
    (80, Fraction(3, 16)),
    (100, Fraction(1, 4)),
)
"""NIST Handbook 44: up to so many feet, so many inches."""

CLASSES = {
    "I": (Fraction("0.1"), Fraction("0.1")),
    "II": (Fraction("0.3"), Fraction("0.2")),
    "III": (Fraction("0.6"), Fraction("0.4")),
}
"""EU classes: a and b, so that the error is at most a + b L millimeters, L in meters."""

RULES = {"h44": "NIST Handbook 44"} | {name: f"EU class {name}" for name in CLASSES}


@dataclass(frozen=True, slots=True)
class Tolerance:
    """What a rule allows either way, in exact inches; `counted` is the length it goes by."""

    inches: Fraction
    counted: int


def tolerance(rule, length):
    """The `Tolerance` of a rule of `RULES` for a length from above 0 to 100 ft, in inches."""
    if rule == "h44":
        feet = ceil(length / _FOOT)
        return Tolerance(next(inches for most, inches in STEPS if feet <= most), feet)
    meters = ceil(length / _METER)
    fixed, each = CLASSES[rule]
    return Tolerance((fixed + each * meters) * _MM, meters)
