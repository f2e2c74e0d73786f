"""Wood of one size that pieces can come out of: on hand, or as it is sold."""

from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Offer:
    """One row of a list of wood; lengths in exact inches.

    `form` is "board", "sheet" or "stick"; of a stick only the length is cut. `material` is as
    typed, "" for any. `thickness` and `width` are as measured (None: any, or as the pieces are).
    `count` is how many are on hand, None for as many as one buys; `price` is exact dollars for one
    (None: not told). `bad` are stretches (from, to) along the length that no piece may have, and
    `trim` is what goes off each end and each edge. `key` is that of its row in its line.
    """

    key: str
    form: str
    material: str
    length: Fraction
    width: Fraction | None = None
    thickness: Fraction | None = None
    count: int | None = None
    price: Fraction | None = None
    bad: tuple[tuple[Fraction, Fraction], ...] = ()
    trim: Fraction = Fraction(0)
    name: str = ""
