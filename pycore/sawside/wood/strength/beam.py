"""Sag of a beam: Wood Handbook Table 9-1, kb W L**3 / (E I) + ks W L / (G A'), W the whole load.

Beams that stand over their supports at both ends are not in that table. They follow from the same
theory: between supports L apart, with ends of length a and an even load w for each inch, the
middle drops by w L**2 (5 L**2 - 24 a**2) / (384 E I) and an end by
w a (3 a**3 + 6 a**2 L - L**3) / (24 E I); shear adds w L**2 / 8 and w a**2 / 2, over G A'.
"""

from dataclasses import dataclass
from fractions import Fraction
from math import factorial

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
            bent = self.each_inch * square * (5 * square - 24 * self.overhang**2) / 384
        else:
            bent = self.load * self._coefficient("bending") * span**3
        return bent / bending + self.sheared[0] / shear

    def end(self, bending, shear):
        """Drop of an overhanging end below the supports, in inches; negative where it rises."""
        span, over = self.span, self.overhang
        if self.spread != "even":
            return -_SLOPES[self.spread] * self.load * span**2 * over / bending
        bent = over * (3 * over**3 + 6 * over**2 * span - span**3) / 24
        return self.each_inch * bent / bending + self.sheared[1] / shear

    @property
    def sheared(self):
        """What shear adds to the drops of the middle and of an end, in inches x G A'."""
        if self._even_overhang:
            return self.each_inch * self.span**2 / 8, self.each_inch * self.overhang**2 / 2
        return self.load * self._coefficient("shear") * self.span, Fraction(0)

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

    def drop_at(self, part, derivative=0):
        """Drop by bending alone, in inches x E I, at a part of the span from the left support.

        From 0 to 1 between the supports; beyond them it is an overhanging end. `derivative` 1 is
        the slope along the beam there, 2 the curvature: less the bending moment.
        """
        span, even = self.span, self.spread == "even"
        if part < 0 or part > 1:
            beyond = (-part if part < 0 else part - 1) * span
            toward = (-1 if part < 0 else 1) ** derivative
            over, each = self.overhang, self.each_inch if even else 0
            tilt = (beyond, 1, 0)[derivative] * self._slope
            return toward * (each * _hanging(over, beyond)[derivative] - tilt)
        tilt = (part * span, 1, 0)[derivative] * self._slope
        return tilt - self._summed(part * span, 2 - derivative)

    @property
    def _slope(self):
        return self._summed(self.span, 2) / self.span

    def _summed(self, at, times):
        """The moments up to a place, summed so many times along the beam from the left support."""
        span, even = self.span, self.spread == "even"
        start = -self.moment if self.supports == "fixed" else Fraction(0)
        each = self.each_inch if even else 0
        if even:
            start -= each * self.overhang**2 / 2
        loads = () if even else _LOADS[self.spread]
        carried = each * span if even else self.load
        total = start * at**times / factorial(times)
        total += carried / 2 * at ** (times + 1) / factorial(times + 1)
        total -= each * at ** (times + 2) / factorial(times + 2)
        for place in loads:
            beyond = max(at - place * span, 0) ** (times + 1)
            total -= self.load / len(loads) * beyond / factorial(times + 1)
        return total


def _hanging(over, beyond):
    """What one pound an inch bends an end that is held at its support: drop, slope, curvature."""
    return (
        beyond**2 * (6 * over**2 - 4 * over * beyond + beyond**2) / 24,
        beyond * (3 * over**2 - 3 * over * beyond + beyond**2) / 6,
        (over - beyond) ** 2 / 2,
    )
