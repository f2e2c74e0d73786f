"""The screw into a stud: the wood screw rules, for a case on a wall. Inches."""

from fractions import Fraction
from types import SimpleNamespace

from sawside.errors import impossible
from sawside.lengths.fine import fine_text
from sawside.reckoners.fasteners.shared.screw.cautions import LEAST_REACH
from sawside.reckoners.fasteners.shared.screw.driven import driven_of
from sawside.wood.numbers import metric
from sawside.wood.screws import SIZES, STUD_HOLD

DEEP = Fraction(7, 2)
"""Of a stud from the wall covering on: a 2×4 (PS 20)."""
SAFE = Fraction(5, 4)
"""How near to a stud's edge a cable or pipe may be without a steel plate (National Electrical Code
300.4, from memory)."""


def bite_wanted(given):
    """How far a screw is to go into the stud: an inch, or six of its diameters."""
    return max(STUD_HOLD, LEAST_REACH * SIZES[given.size].shank)


def screw_into_stud(given, show):
    """The `Driven` screw through strip and wall covering; "impossible" where none gets in."""
    size, through = SIZES[given.size], given.over + given.wall
    long = given.length or size.sold(through + bite_wanted(given), through + DEEP)
    if long is None or (given.length is None and long <= through):
        raise impossible(
            f"The longest stock {size.name} screw, {fine_text(size.longest, show)}, doesn’t get "
            f"through {fine_text(through, show)} of strip and wall.",
            "Use a thicker screw, or enter a length.",
            "size",
        )
    return driven_of(
        SimpleNamespace(
            size=given.size,
            shank=None,
            over=through,
            under=DEEP,
            wood="soft",
            length=long,
            edge=None,
            head="pan",
            sink=Fraction(0),
            spare=Fraction(0),
            root=None,
            pilot=None,
            bits="half_mm" if metric(show) else "64",
        ),
        show,
    )
