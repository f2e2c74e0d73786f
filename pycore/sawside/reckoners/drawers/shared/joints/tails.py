"""Where the tails and pins of a dovetailed corner go. Inches, from the reference edge.

Tails are widest at the end of their board and narrow towards its shoulder line; the pins between
them are narrowest there. The tails share what the pins leave, all alike.
"""

from dataclasses import dataclass
from fractions import Fraction
from math import floor

from sawside.errors import Refusal
from sawside.reckoners.case.shared.carcass.as_measured import measured_text

_A_TAIL = Fraction(3, 2)
"""About so wide with its pin. Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Dovetails:
    """All of a corner: `tail` and `pin` as they are at the end of the tail board, `lean` what a
    flank comes in by from there to the shoulder line, `deep` away."""

    height: Fraction
    tails: int
    tail: Fraction
    pin: Fraction
    half: Fraction
    deep: Fraction
    lean: Fraction

    @property
    def at_end(self):
        """(from, to) of each tail at the end of its board."""
        step = self.tail + self.pin
        starts = [self.half + number * step for number in range(self.tails)]
        return [(start, start + self.tail) for start in starts]

    @property
    def at_shoulder(self):
        """(from, to) of each tail at its shoulder line."""
        return [(start + self.lean, end - self.lean) for start, end in self.at_end]


def dovetails_of(given, show):
    """The `Dovetails` of a form; "impossible" where the tails have no width, or no lap is left."""
    deep = given.pin_board
    if given.kind == "blind":
        if given.lap >= given.pin_board:
            thick = measured_text(given.pin_board, show)
            raise Refusal(
                "impossible",
                f"A lap of {measured_text(given.lap, show)} is all of a front that’s {thick} "
                "thick.",
                f"Enter less than {thick}; a quarter to a third is usual (shop practice).",
                field="lap",
            )
        deep -= given.lap
    half = given.pin if given.half is None else given.half
    tails = given.tails
    if tails is None:
        tails = max(floor(given.height / _A_TAIL + Fraction(1, 2)), 1)
    wood = 2 * half + (tails - 1) * given.pin
    lean = deep / Fraction(given.slope)
    tail = (given.height - wood) / tails
    if tail <= 0:
        raise Refusal(
            "impossible",
            f"The pins take up {show.text(wood)} of a board {show.text(given.height)} wide: "
            "nothing is left for the tails.",
            "Use fewer tails, narrower pins or a wider board.",
            field="pin",
        )
    if tail <= 2 * lean:
        raise Refusal(
            "impossible",
            f"Tails {show.brief(tail)} wide run to a point before the shoulder line: their sides "
            f"come in {show.brief(2 * lean)}.",
            "Use fewer tails, narrower pins or a slope of 8 to 1.",
            field="slope" if given.tails is None else "tails",
        )
    return Dovetails(given.height, tails, tail, given.pin, half, deep, lean)
