"""Sag of a beam: Wood Handbook Table 9-1, kb W L**3 / (E I) + ks W L / (G A'), W the whole load.

Beams that stand over their supports at both ends are not in that table. They follow from the same
theory: between supports L apart, with ends of length a and an even load w for each inch, the
middle drops by w L**2 (5 L**2 - 24 a**2) / (384 E I) and an end by
w a (3 a**3 + 6 a**2 L - L**3) / (24 E I); shear adds w L**2 / 8 and w a**2 / 2, over G A'.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.wood.tables import rows

_TABLE = {(row["spread"], row["supports"]): row for row in rows("beam_coefficients.csv")}
_SLOPES = {"middle": Fraction(1, 16), "quarters": Fraction(3, 64)}
"""Slope at a support, in W L**2 / (E I): beam theory."""
_LOADS = {"middle": (Fraction(1, 2),), "quarters": (Fraction(1, 4), Fraction(3, 4))}


@dataclass(frozen=True, slots=True)
class Beam:
    """How a beam is held and loaded: `span` between supports in inches, `load` in pounds in all.

    `supports` is "resting", "fixed" or "overhanging" with `overhang` inches beyond each support;
    `spread` is "even" over the whole length, "middle" or "quarters" of the span.
    """

    supports: str
    spread: str
    span: Fraction
    load: Fraction
    overhang: Fraction = Fraction(0)

    def _coefficient(self, column):
        supports = "resting" if self.supports == "overhanging" else self.supports
        return Fraction(_TABLE[self.spread, supports][column])

    @property
    def _even_overhang(self):
        return self.supports == "overhanging" and self.spread == "even"

    @property
    def each_inch(self):
        """The load on each inch of a beam that is loaded evenly, in pounds."""
        return self.load / (self.span + 2 * self.overhang)

    def middle(self, bending, shear):
        """Drop of the middle below the supports, in inches; negative where it rises."""
        span = self.span
        if self._even_overhang:
            square = span**2
            bent = square * (5 * square - 24 * self.overhang**2) / 384
            return self.each_inch * (bent / bending + square / 8 / shear)
        bent, sheared = self._coefficient("bending"), self._coefficient("shear")
        return self.load * (bent * span**3 / bending + sheared * span / shear)

    def end(self, bending, shear):
        """Drop of an overhanging end below the supports, in inches; negative where it rises."""
        span, over = self.span, self.overhang
        if self.spread != "even":
            return -_SLOPES[self.spread] * self.load * span**2 * over / bending
        bent = over * (3 * over**3 + 6 * over**2 * span - span**3) / 24
        return self.each_inch * (bent / bending + over**2 / 2 / shear)

    @property
    def moments(self):
        """Bending moments over a support and in the middle, in pounds x inches.

        Negative where the beam is bent upward. Between fixed ends the larger one is over the
        supports, and the middle is left out.
        """
        if self._even_overhang:
            over = self.each_inch * self.overhang**2 / 2
            return -over, self.each_inch * self.span**2 / 8 - over
        most = self._coefficient("moment") * self.load * self.span
        return (-most, Fraction(0)) if self.supports == "fixed" else (Fraction(0), most)

    @property
    def moment(self):
        """The largest bending moment, in pounds x inches."""
        return max(abs(each) for each in self.moments)

    def drop_at(self, part):
        """Drop by bending alone, in inches x E I, at a part of the span from the left support.

        From 0 to 1 between the supports; beyond them it is an overhanging end. For drawing.
        """
        span, even = self.span, self.spread == "even"
        if part < 0 or part > 1:
            beyond = (-part if part < 0 else part - 1) * span
            over, each = self.overhang, self.each_inch if even else 0
            hanging = each * beyond**2 * (6 * over**2 - 4 * over * beyond + beyond**2) / 24
            return hanging - self._slope * beyond
        return self._slope * part * span - self._twice_summed(part * span)

    @property
    def _slope(self):
        return self._twice_summed(self.span) / self.span

    def _twice_summed(self, at):
        """The moments up to a place, summed twice along the beam from the left support."""
        span, even = self.span, self.spread == "even"
        start = -self.moment if self.supports == "fixed" else Fraction(0)
        each = self.each_inch if even else 0
        if even:
            start -= each * self.overhang**2 / 2
        loads = () if even else _LOADS[self.spread]
        carried = each * span if even else self.load
        total = start * at**2 / 2 + carried / 2 * at**3 / 6 - each * at**4 / 24
        for place in loads:
            total -= self.load / len(loads) * max(at - place * span, 0) ** 3 / 6
        return total
