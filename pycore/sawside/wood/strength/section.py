"""A cross-section built of rectangles of different stiffness, glued so that they bend as one.

The neutral axis lies at the stiffness-weighted middle: sum E A y / sum E A. The bending stiffness
about it is sum E (b h**3 / 12 + b h (y - axis)**2): transformed-section theory, as in Wood
Handbook chapter 9 for members of several materials. Shear: G = E/16, which ASTM D245 takes for
wood (from memory), and 5/6 of the area, as Wood Handbook Table 9-1 gives A' for a rectangle.
"""

from dataclasses import dataclass
from fractions import Fraction

SHEAR_PART = Fraction(1, 16)
SHAPE_PART = Fraction(5, 6)


@dataclass(frozen=True, slots=True)
class Rectangle:
    """One part: stiffness in psi, breadth and height in inches, its top below the section's top."""

    stiffness: Fraction
    breadth: Fraction
    height: Fraction
    top: Fraction = Fraction(0)

    @property
    def middle(self):
        """Depth of its middle below the top of the section."""
        return self.top + self.height / 2

    @property
    def pull(self):
        """E A, in pounds."""
        return self.stiffness * self.breadth * self.height


@dataclass(frozen=True, slots=True)
class Section:
    """Rectangles that bend as one."""

    parts: tuple[Rectangle, ...]

    @property
    def axis(self):
        """Depth of the neutral axis below the top, in inches."""
        return sum(part.pull * part.middle for part in self.parts) / sum(
            part.pull for part in self.parts
        )

    @property
    def bending(self):
        """Bending stiffness E I about the neutral axis, in pounds x square inches."""
        axis = self.axis
        return sum(
            part.pull * (part.height**2 / 12 + (part.middle - axis) ** 2) for part in self.parts
        )

    @property
    def shear(self):
        """Shear stiffness G A', in pounds."""
        return SHEAR_PART * SHAPE_PART * sum(part.pull for part in self.parts)

    def stress(self, part, moment):
        """The largest bending stress in a part, in psi, under a moment in pounds x inches."""
        axis = self.axis
        far = max(abs(part.top - axis), abs(part.top + part.height - axis))
        return part.stiffness * moment * far / self.bending
