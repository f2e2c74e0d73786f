"""Inside corners where one molding runs square into the corner and the next is coped over it.

At each corner just one piece runs in. The faces of both cross at projection x cot(corner / 2) from
the corner, so the coped piece is first mitered as for an inside corner: that cut shows the line.
"""

from dataclasses import dataclass
from fractions import Fraction

from sawside.geometry.angles import cosine, sine
from sawside.geometry.miter import allowance, half_corner
from sawside.lengths.real import Exact

FREE, SQUARE, COPED = "free", "square", "coped"


@dataclass(frozen=True, slots=True)
class WallEnd:
    """How a piece ends: free, square into a corner, or coped; `corner` in degrees, or None.

    `back` is what the end takes off the wall's length at the back of the piece, `face` what it
    takes off at the face, both in inches.
    """

    kind: str
    corner: Fraction | None
    back: Exact
    face: Exact


@dataclass(frozen=True, slots=True)
class WallPiece:
    """The molding of one wall (from 1, left to right), with its place in the order of fitting."""

    wall: int
    order: int
    length: Fraction
    left: WallEnd
    right: WallEnd

    @property
    def back(self):
        """The length along the wall: what is cut, before a coped end is sawn along its line."""
        return self.length - self.left.back - self.right.back

    @property
    def face(self):
        """The length in sight at the greatest projection."""
        return self.length - self.left.face - self.right.face


def coped_run(walls, corners, projection, first, *, closed):
    """The pieces in the order of fitting, from the wall `first` (from 0) on.

    `corners[i]` is the corner between wall i and the next one at its right. In a row the pieces at
    both sides of the first are coped towards it; around a room they follow to the right, and the
    last is coped at both ends.
    """
    count = len(walls)
    if closed:
        order = [(first + step) % count for step in range(count)]
    else:
        order = [*range(first, count), *range(first - 1, -1, -1)]
    rank = {wall: number for number, wall in enumerate(order, 1)}
    pieces = []
    for wall in order:
        ends = []
        for neighbor, corner in ((wall - 1, wall - 1), (wall + 1, wall)):
            if not closed and not 0 <= neighbor < count:
                ends.append(WallEnd(FREE, None, Fraction(0), Fraction(0)))
                continue
            meets = rank[neighbor % count] < rank[wall]
            ends.append(_end(COPED if meets else SQUARE, corners[corner % count], projection))
        pieces.append(WallPiece(wall + 1, rank[wall], walls[wall], *ends))
    return pieces


def _end(kind, corner, projection):
    if kind == COPED:
        return WallEnd(kind, corner, Fraction(0), allowance(projection, half_corner(corner)))
    back = projection * cosine(corner) / sine(corner) if corner < 90 else Fraction(0)
    return WallEnd(kind, corner, back, back)
