"""A person's own tape: how long its case is, and what it reads where the truth is known.

A tape errs in two ways: its hook is bent or worn, which shifts every reading by the same amount,
and its scale is stretched, which grows with the length. Two known lengths tell the two apart: the
straight line through the two points (what the tape reads, what is true). One known length alone
is taken as the hook when it is the block, as the scale when it is the distance. Linear
calibration by two points is textbook metrology; the errors themselves are the person's own.
"""

from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class OwnTape:
    """All lengths in exact inches, None where nothing was measured.

    `case` is added when the tape's case stands in a corner. `block` is a short reference, and
    `block_reads` what the tape reads on it; `distance` a long one, with `distance_reads`.
    """

    name: str
    case: Fraction | None = None
    block: Fraction | None = None
    block_reads: Fraction | None = None
    distance: Fraction | None = None
    distance_reads: Fraction | None = None

    @property
    def scale(self):
        """True inches in each inch that the tape reads."""
        if self.distance is None:
            return Fraction(1)
        if self.block is None:
            return self.distance / self.distance_reads
        return (self.distance - self.block) / (self.distance_reads - self.block_reads)

    @property
    def hook(self):
        """What is added to every reading, in inches."""
        return Fraction(0) if self.block is None else self.block - self.scale * self.block_reads

    def true(self, reading):
        """The true length where the tape reads `reading`."""
        return self.hook + self.scale * reading
