"""How hard a straight pull takes a wood screw out of side grain."""

from fractions import Fraction

from sawside.wood.materials import WEIGHT_IN
from sawside.wood.numbers import metric, number_text
from sawside.wood.weights import KILOGRAMS_PER_POUND

PULLS_OUT = 15_700
"""Pounds: p = 15,700 G² D L, D and L in inches (Wood Handbook, chapter 8, wood screws)."""
COUNTED_ON = 2_850
"""Likewise what the National Design Specification lets one count on (12.2.2); from memory."""


def gravity(material):
    """The specific gravity of a material with a weight; the lighter end of its range."""
    return material.weight.least / WEIGHT_IN["specific gravity"]


def is_figured(given):
    """Whether the formula holds: solid wood, and not the end grain of it."""
    return given.pull == "yes" and given.into != "end" and given.species.kind != "panel"


def pull_of(given, screw, constant):
    """Pounds by one of the two constants above."""
    return constant * gravity(given.species) ** 2 * screw.shank * screw.thread


def pull_told(given, show, screw):
    """The answer: what to count on, and where it pulls out; both down to whole pounds."""
    sure, out = (_down(pull_of(given, screw, each), show) for each in (COUNTED_ON, PULLS_OUT))
    return f"{sure}; pulls out near {out}"


def _down(pounds, show):
    kilograms = f"{int(pounds * KILOGRAMS_PER_POUND):,} kg"
    return kilograms if metric(show) else f"{int(pounds):,} lb ({kilograms})"


def pull_working(given, show, screw):
    """Both formulas with this case's numbers, in pounds and inches."""
    dense = show.pure(Fraction(gravity(given.species)), decimals=True)
    thick, thread = (show.pure(each, decimals=True) for each in (screw.shank, screw.thread))
    for name, constant in (("Pulls out", PULLS_OUT), ("Count on", COUNTED_ON)):
        pounds = number_text(pull_of(given, screw, constant), 1)
        yield f"{name}: {constant:,} × {dense}² × {thick} × {thread} = {pounds} lb"
