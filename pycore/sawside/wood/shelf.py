"""A shelf under load: how far it sags, how hard it is bent, and what it would take.

A cleat along the back carries half of the load. The front half of the board, with the strip along
its front, carries the other half between the ends, as though it were not tied to the back.
"""

from dataclasses import dataclass, replace
from fractions import Fraction

from sawside.wood.beam import Beam
from sawside.wood.boundary import boundary
from sawside.wood.section import Rectangle, Section


@dataclass(frozen=True, slots=True)
class Load:
    """`amount` pounds for each inch ("length"), each square inch ("area"), or in all ("whole")."""

    per: str
    amount: Fraction

    def pounds(self, long, deep):
        """The whole load on a shelf, in pounds; its measures in inches."""
        return self.amount * {"whole": 1, "length": long, "area": long * deep}[self.per]


@dataclass(frozen=True, slots=True)
class Strip:
    """A strip glued along an edge: stiffness in psi, thickness from front to back, height, inches.

    `edges` is "front", "back" or "both". It stands on the edge with its top level with the
    board's, or `under` the board.
    """

    stiffness: Fraction
    thickness: Fraction
    height: Fraction
    edges: str
    under: bool = False


@dataclass(frozen=True, slots=True)
class Shelf:
    """A loaded shelf; stiffness in psi, lengths in inches."""

    stiffness: Fraction
    thickness: Fraction
    depth: Fraction
    span: Fraction
    load: Load
    supports: str = "resting"
    spread: str = "even"
    overhang: Fraction = Fraction(0)
    strip: Strip | None = None
    cleat: bool = False

    def changed(self, **changes):
        """The same shelf with something else about it; strip_height changes the strip."""
        if "strip_height" in changes:
            changes["strip"] = replace(self.strip, height=changes.pop("strip_height"))
        return replace(self, **changes)

    @property
    def pounds(self):
        """The whole load, in pounds."""
        return self.load.pounds(self.span + 2 * self.overhang, self.depth)

    @property
    def strips(self):
        """How many strips help to carry what the front carries."""
        if self.strip is None:
            return 0
        return {"front": 1, "back": 0 if self.cleat else 1, "both": 1 if self.cleat else 2}[
            self.strip.edges
        ]

    @property
    def section(self):
        """The section that bends: the board, then the strips as one."""
        half = 2 if self.cleat else 1
        parts = (Rectangle(self.stiffness, self.depth / half, self.thickness),)
        if self.strips and self.strip.height:
            strip = self.strip
            top = self.thickness if strip.under else Fraction(0)
            breadth = self.strips * strip.thickness
            parts += (Rectangle(strip.stiffness, breadth, strip.height, top),)
        return Section(parts)

    @property
    def beam(self):
        """The beam that this section is, with the load that it carries."""
        load = self.pounds / 2 if self.cleat else self.pounds
        return Beam(self.supports, self.spread, self.span, load, self.overhang)

    @property
    def sag(self):
        """The largest drop below the supports at once, in inches."""
        section = self.section
        return self.beam.lowest(section.bending, section.shear)

    @property
    def stresses(self):
        """The largest bending stress in the board, and in the strip where there is one, in psi."""
        section, moment = self.section, self.beam.moment
        return tuple(section.stress(part, moment) for part in section.parts)

    def solved(self, what, excess, low, high):
        """The value of `what` at which `excess` of the changed shelf is 0; None where it is never.

        `what` is a field of the shelf or strip_height; `excess` takes a shelf, and changes its
        sign at most once from `low` to `high`.
        """

        def of(value):
            return excess(self.changed(**{what: value}))

        at_low, at_high = of(low), of(high)
        if (at_low <= 0) == (at_high <= 0):
            return None
        return boundary(of, low, high)
