"""Rectangles sawn edge to edge: what each cut takes off, and what it leaves beyond its kerf."""

from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class SawCut:
    """One cut, a "rip" along the board's length or a "crosscut", `at` how much comes off the part
    in hand. Part 0 is the board, cut n (from 0) makes 2 n + 1, which comes off, and 2 n + 2, which
    is left. What a `trim` takes off is waste."""

    way: str
    part: int
    at: Fraction
    trim: bool = False


@dataclass(frozen=True, slots=True)
class Part:
    """A rectangle of a board in exact inches, its corner from the board's left end and near edge;
    of a stick, of which only the length is cut, `width` is None. `cut` made it (None: the board
    itself), `level` is how often the way of cutting changed until then."""

    x: Fraction
    y: Fraction
    length: Fraction
    width: Fraction | None
    cut: int | None = None
    level: int = 0
    way: str = ""

    def size(self, way):
        """How much of it lies across a cut that goes this way."""
        return self.length if way == "crosscut" else self.width


def sawn(length, width, cuts, kerf):
    """Every part of a board, those that are cut further as well.

    Raises `ValueError` for a cut of a part that is not there, or that takes more than there is.
    """
    parts = [Part(Fraction(0), Fraction(0), length, width)]
    whole = {0}
    for number, cut in enumerate(cuts):
        if cut.part not in whole:
            raise ValueError("a cut of a part that is not there")
        whole.remove(cut.part)
        whole |= {len(parts), len(parts) + 1}
        parts += _halves(parts[cut.part], cut, kerf, number)
    return parts


def whole_parts(parts, cuts):
    """The numbers of the parts that no cut goes through."""
    through = {cut.part for cut in cuts}
    return [number for number in range(len(parts)) if number not in through]


def _halves(part, cut, kerf, number):
    size = part.size(cut.way)
    if size is None or not 0 <= cut.at <= size:
        raise ValueError("a cut that takes more than there is")
    start = min(cut.at + kerf, size)
    level = part.level + (part.way != cut.way)
    made = number, level, cut.way
    if cut.way == "crosscut":
        return (
            Part(part.x, part.y, cut.at, part.width, *made),
            Part(part.x + start, part.y, size - start, part.width, *made),
        )
    return (
        Part(part.x, part.y, part.length, cut.at, *made),
        Part(part.x, part.y + start, part.length, size - start, *made),
    )
