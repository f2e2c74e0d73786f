"""A shelf under load: how far it sags, how hard it is bent, and what it would take.

Its own weight, where that is known, lies evenly along it and is carried besides the load.

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
    board's, or `under` the board. `weight` is in pounds for each cubic inch, None if not known.
    """

    stiffness: Fraction
    thickness: Fraction
    height: Fraction
    edges: str
    under: bool = False
    weight: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Shelf:
    """A loaded shelf; stiffness in psi, lengths in inches, `weight` as that of a strip."""

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
    def own_weights(self):
        """What each part of the section weighs, in pounds; 0 where that is not known."""
        strip = self.strip and self.strip.weight
        return tuple(
            (each or 0) * part.breadth * part.height * self.long
            for each, part in zip((self.weight, strip), self.section.parts, strict=False)
        )

    @property
    def carried(self):
        """What the section carries of the load, in pounds."""
        return self.pounds / 2 if self.cleat else self.pounds

    @property
    def beams(self):
        """The section as a beam under all that it carries; two where its weight lies otherwise."""
        own = sum(self.own_weights)
        if self.spread == "even":
            return (self._beam("even", self.carried + own),)
        return self._beam(self.spread, self.carried), self._beam("even", own)

    def _beam(self, spread, load):
        return Beam(self.supports, spread, self.span, load, self.overhang)

    @property
    def drops(self):
        """Drops of the middle and of the ends below the supports at once, in inches."""
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
        return boundary(of, low, high)
