"""A shelf under load: how far it sags, how hard it is bent, and what it would take.

Its own weight, where that is known, lies evenly along it and is carried besides the load.

A strip holds up its own edge and the other one less, a cleat holds up the back: such a shelf bends
as a plate (`wood.strength.plated_shelf`), and its sag is the largest of its front, its center and
its back. A plain board bends as a beam. A strip along the back adds nothing where a cleat is.
"""

from dataclasses import dataclass, replace
from fractions import Fraction

from sawside.wood.strength.beam import Beam
from sawside.wood.strength.boundary import boundary, near
from sawside.wood.strength.plated_shelf import plated
from sawside.wood.strength.section import SHEAR_PART, Rectangle, Section


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
    board's, or `under` the board. `weight` is in pounds for each cubic inch, None if not known;
    `slide` is its shear modulus as a part of its stiffness.
    """

    stiffness: Fraction
    thickness: Fraction
    height: Fraction
    edges: str
    under: bool = False
    weight: Fraction | None = None
    slide: Fraction = SHEAR_PART


@dataclass(frozen=True, slots=True)
class Shelf:
    """A loaded shelf; stiffness in psi, lengths in inches, `weight` as that of a strip.

    `across` is its stiffness from front to back, `slide` its shear modulus in its own plane, both
    as parts of its stiffness along it; they matter where strips are glued on.
    """

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
    weight: Fraction | None = None
    across: Fraction = Fraction(3, 50)
    slide: Fraction = SHEAR_PART

    def changed(self, **changes):
        """The same shelf with something else about it; strip_height changes the strip."""
        if "strip_height" in changes:
            changes["strip"] = replace(self.strip, height=changes.pop("strip_height"))
        return replace(self, **changes)

    @property
    def long(self):
        """The length of the board, over its supports."""
        return self.span + 2 * self.overhang

    @property
    def pounds(self):
        """The whole load, in pounds."""
        return self.load.pounds(self.long, self.depth)

    @property
    def glued(self):
        """The edges along which a strip helps to carry: "front", "back", both or none."""
        if self.strip is None or not self.strip.height:
            return ()
        edges = ("front", "back") if self.strip.edges == "both" else (self.strip.edges,)
        return tuple(edge for edge in edges if edge == "front" or not self.cleat)

    @property
    def section(self):
        """The section that bends: the board, then the strips as one."""
        parts = (Rectangle(self.stiffness, self.depth, self.thickness),)
        if self.glued:
            strip = self.strip
            top = self.thickness if strip.under else Fraction(0)
            breadth = len(self.glued) * strip.thickness
            parts += (Rectangle(strip.stiffness, breadth, strip.height, top),)
        return Section(parts)

    @property
    def own_weights(self):
        """What each part of the section weighs, in pounds; 0 where that is not known."""
        strip = self.strip and self.strip.weight
        return tuple(
            (each or 0) * part.breadth * part.height * self.long
            for each, part in zip((self.weight, strip), self.section.parts, strict=False)
        )

    @property
    def beams(self):
        """The section as a beam under all that it carries; two where its weight lies otherwise."""
        own = sum(self.own_weights)
        if self.spread == "even":
            return (self._beam("even", self.pounds + own),)
        return self._beam(self.spread, self.pounds), self._beam("even", own)

    def _beam(self, spread, load):
        return Beam(self.supports, spread, self.span, load, self.overhang)

    @property
    def plate(self):
        """The shelf bent as a plate; None for a plain board, which bends as a beam."""
        return plated(self) if self.glued or self.cleat else None

    @property
    def drops(self):
        """Drops of the middle and of the ends below the supports at once, in inches.

        Of a shelf that bends as a plate there are several of each, from the front to the back.
        """
        plate = self.plate
        if plate:
            return plate.drops
        section, beams = self.section, self.beams
        stiff = section.bending, section.shear
        return sum(beam.middle(*stiff) for beam in beams), sum(beam.end(*stiff) for beam in beams)

    @property
    def sag(self):
        """The largest drop below the supports at once, in inches."""
        return max(self.drops)

    def drop_at(self, part):
        """As `Beam.drop_at`, under all that it carries."""
        return sum(beam.drop_at(part) for beam in self.beams)

    @property
    def stresses(self):
        """The largest bending stress in the board, and in the strip where there is one, in psi."""
        plate = self.plate
        if plate:
            return plate.stresses
        section = self.section
        places = zip(*(beam.moments for beam in self.beams), strict=True)
        moment = max(abs(sum(place)) for place in places)
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
        exact = self.strip is None and not self.cleat
        return boundary(of, low, high) if exact else near(of, low, high)
