"""A panel of a case and what is cut in it, as it is on the bench. Inches.

Along is its length: of an upright panel from the bottom end, of a level one from the left end.
Across is its width, from the front edge of its panel to the back.
"""

from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Cut:
    """A dado, rabbet, groove or notch: from where to where, how deep into which face.

    `face` is inside, upper, lower, "both" (the same in both faces) or "through".
    """

    kind: str
    face: str
    along: tuple[Fraction, Fraction]
    across: tuple[Fraction, Fraction]
    deep: Fraction
    purpose: str


@dataclass(frozen=True, slots=True)
class Panel:
    """Panels that are alike. `bands` says how long the edging is on the front of each, 0 without;
    `must` is how its sizes round, None where they agree with the others. One that is `turned` is
    marked on its lower face, with places that aren't the same from either end: lower face up and
    front edge down, its left end is at the right."""

    key: str
    name: str
    length: Fraction
    width: Fraction
    thickness: Fraction
    count: int = 1
    upright: bool = False
    must: str | None = None
    bands: Fraction = Fraction(0)
    cuts: tuple[Cut, ...] = ()
    notes: tuple[str, ...] = ()
    turned: bool = False

    @property
    def is_shelf(self):
        """Whether it has the edging of shelves, and not that of the case."""
        return self.key.startswith(("fixed", "adjustable"))

    @property
    def area(self):
        """Square inches of one face of all of them."""
        return self.count * self.length * self.width
