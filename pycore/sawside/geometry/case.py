"""The heights of a case and of the shelves in it, each measured from where it is wanted.

Places are inches above the inside bottom, exact. From the floor up a case is its kick, the bottom
panel, the inside, the top panel.
"""

from dataclasses import dataclass, field
from fractions import Fraction

from sawside.lengths.real import Exact

FEET = {
    "floor": "On the floor",
    "under_bottom": "On the toe kick, flush with the underside of the bottom",
    "over_bottom": "On top of the bottom",
}
"""Where the lower end of a side is."""
HEADS = {"over_top": "Flush with the top face of the top", "under_top": "Under the top"}
"""Where the upper end of a side is."""
ORIGINS = {
    "inside_bottom": "Inside bottom",
    "floor": "Floor",
    "lower_end": "Bottom end of the side",
    "upper_end": "Top end of the side",
}
"""What a mark is measured from; from the upper end it is measured down."""
EDGES = {"bottom": "Bottom edge", "top": "Top edge", "center": "Center line"}
"""What of a shelf is marked."""
_PART = {"bottom": Fraction(0), "top": Fraction(1), "center": Fraction(1, 2)}


@dataclass(frozen=True, slots=True)
class Case:
    """One case: the clear height inside, and the parts below and above it, in inches.

    `foot` is one of `FEET`, `head` one of `HEADS`. `whole` says that top, bottom and kick are
    known; without them only the inside is.
    """

    inside: Exact
    bottom: Fraction = Fraction(0)
    top: Fraction = Fraction(0)
    kick: Fraction = Fraction(0)
    foot: str = "floor"
    head: str = "over_top"
    whole: bool = False

    @property
    def floor(self):
        """The floor, as a place: below the inside bottom, so not above 0."""
        return -(self.kick + self.bottom)

    @property
    def overall(self):
        """The height from the floor to the upper face of the top."""
        return self.kick + self.bottom + self.inside + self.top

    @property
    def lower_end(self):
        """The place of the side's lower end."""
        return {"floor": self.floor, "under_bottom": -self.bottom, "over_bottom": 0}[self.foot]

    @property
    def upper_end(self):
        """The place of the side's upper end."""
        return self.inside + (self.top if self.head == "over_top" else 0)

    @property
    def side(self):
        """The length of a side."""
        return self.upper_end - self.lower_end

    def measured(self, place, origin):
        """How far a place is from one of `ORIGINS`."""
        if origin == "upper_end":
            return self.upper_end - place
        return place - self._zero(origin)

    def place(self, measure, origin):
        """The place at a measure from one of `ORIGINS`; the reverse of `measured`."""
        if origin == "upper_end":
            return self.upper_end - measure
        return measure + self._zero(origin)

    def _zero(self, origin):
        zeros = {"inside_bottom": 0, "floor": self.floor, "lower_end": self.lower_end}
        return zeros[origin]


@dataclass(frozen=True, slots=True)
class Shelving:
    """Shelves in a case from the bottom up: the place of each bottom edge, and each thickness."""

    case: Case
    bottoms: tuple[Exact, ...]
    thicknesses: tuple[Fraction, ...]
    edge: str = "bottom"
    origin: str = "inside_bottom"
    marks: tuple[Exact, ...] = field(init=False)
    """The exact measure of the marked edge of each shelf from the origin."""

    def __post_init__(self):
        marks = tuple(
            self.case.measured(bottom + _PART[self.edge] * thickness, self.origin)
            for bottom, thickness in zip(self.bottoms, self.thicknesses, strict=True)
        )
        object.__setattr__(self, "marks", marks)

    @property
    def openings(self):
        """The exact openings, from the bottom up: one more than there are shelves."""
        return _openings(self.bottoms, self.thicknesses, self.case.inside)

    def openings_marked(self, to_mark):
        """The openings of shelves that stand with their edge on `to_mark` of its measure."""
        bottoms = [
            self.case.place(to_mark(mark), self.origin) - _PART[self.edge] * thickness
            for mark, thickness in zip(self.marks, self.thicknesses, strict=True)
        ]
        return _openings(bottoms, self.thicknesses, self.case.inside)


def stacked(openings, thicknesses):
    """The place of each bottom edge of shelves with such openings below them, from the bottom up.

    `openings` may have the one above the last shelf as well; it is not needed.
    """
    bottoms, place = [], Fraction(0)
    for opening, thickness in zip(openings, thicknesses, strict=False):
        bottoms.append(place + opening)
        place = bottoms[-1] + thickness
    return tuple(bottoms)


def _openings(bottoms, thicknesses, inside):
    tops = [0, *(b + t for b, t in zip(bottoms, thicknesses, strict=True))]
    return [bottom - top for bottom, top in zip([*bottoms, inside], tops, strict=True)]
