"""What mitered ends take of a stick, as numbers that a search can add up.

Along its middle a piece has the mean of its two edges. Between two pieces whose facing ends run off
by a and b (their slopes: inches along the stick for one across it) the middles are apart by
width / 2 × |a − b| and by what the blade takes of the edge there, kerf / cos of the steeper cut;
the square end of the stick is a slope of 0 without a kerf. Plane trigonometry.

So the way from 0 over all slopes and back to 0 is what is lost. A `Model` says of each piece what
it adds and of each stretch of stick what it has, so that what adds up always goes in
(`safe_models`) or that what goes in always adds up (`low_models`). Where all miters are alike the
two agree but for the rounding of what no fraction tells, 1/1024 in for each length.
"""

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

from sawside.geometry.angles import cosine, tangent
from sawside.lengths.real import Real

_BITS = 48
_ROUNDED = 1024

_SLACK = Fraction(1, 1 << 36)
"""More than all roundings to `_BITS` in one stretch of stick together."""


class Span(NamedTuple):
    """A number between two fractions; both are the number where a fraction tells it."""

    low: Fraction
    high: Fraction

    def plus(self, other, times=1):
        """The sum of this and so many times the other."""
        low, high = (other.low, other.high) if times >= 0 else (other.high, other.low)
        return Span(self.low + times * low, self.high + times * high)

    def by(self, times):
        """So many times this."""
        return Span(Fraction(0), Fraction(0)).plus(self, times)

    @property
    def size(self):
        """How much it is, whatever its sign."""
        if self.low >= 0:
            return self
        return self.by(-1) if self.high <= 0 else Span(Fraction(0), max(-self.low, self.high))

    @property
    def up(self):
        """A fraction that is not less."""
        if self.low == self.high:
            return self.high
        return Fraction(-(-(self.high + _SLACK) * _ROUNDED // 1), _ROUNDED)

    @property
    def down(self):
        """A fraction that is not more, and not below 0."""
        if self.low == self.high:
            return self.low
        return Fraction(max((self.low - _SLACK) * _ROUNDED // 1, 0), _ROUNDED)


ZERO = Span(Fraction(0), Fraction(0))


@dataclass(frozen=True, slots=True)
class Model:
    """What each piece of a request adds (its kerf in it), and what a stretch has beyond its
    length."""

    sizes: tuple[Fraction, ...]
    beyond: Fraction


@lru_cache(maxsize=256)
def slope(degrees):
    """The tangent of a miter, with its sign."""
    return _span(tangent(abs(degrees))).by(-1 if degrees < 0 else 1)


@lru_cache(maxsize=256)
def steepness(degrees):
    """What a cut takes of the edge for each inch of kerf: 1 / cos."""
    return _span(1 / cosine(degrees))


def _span(number):
    if not isinstance(number, Real):
        return Span(Fraction(number), Fraction(number))
    low, high = number.enclosure(_BITS)
    return Span(Fraction(low, 1 << _BITS), Fraction(high, 1 << _BITS))


def ends(piece):
    """The slopes of a piece's left and right cut, as it lies with its near edge down."""
    return slope(piece.left), slope(piece.right).by(-1)


def middle(piece, width):
    """How long a piece is along its middle."""
    if piece.left == -piece.right:
        return Span(piece.length, piece.length)
    left, right = ends(piece)
    exact = Span(piece.length, piece.length)
    return exact.plus(left.plus(right, -1).size, -Fraction(width) / 2)


def shorter_edge(piece, width):
    """How long a piece's shorter edge is; not above 0 where its cuts cross in the stick."""
    left, right = ends(piece)
    exact = Span(piece.length, piece.length)
    return exact.plus(left.plus(right, -1).size, -Fraction(width))


def alone(piece, width):
    """How much of a stick a piece takes by itself, from the first point of it to the last."""
    left, right = ends(piece)
    return middle(piece, width).plus(left.size.plus(right.size), Fraction(width) / 2)


def steepest(request):
    """What the steepest of all cuts takes of the edge for each inch of kerf."""
    found = (steepness(each) for piece in request.pieces for each in (piece.left, piece.right))
    return max(found, key=lambda each: each.high, default=steepness(Fraction(0)))


def safe_models(request):
    """Models by which whatever adds up goes in: one way at least of laying the pieces out is no
    longer. The first is the best one where all miters are alike."""
    middles = [middle(piece, request.width).up for piece in request.pieces]
    kerf = steepest(request).by(request.kerf).up
    half = request.width / 2
    slopes = [ends(piece) for piece in request.pieces]
    hulls = [left.size.plus(right.size).by(half).up for left, right in slopes]
    hull = _model(middles, hulls, kerf, kerf)
    if all(piece.square for piece in request.pieces):
        return (hull,)
    if request.turning:
        highest = max(max(left.size.high, right.size.high) for left, right in slopes)
        way = Span(highest, highest).by(request.width).up
        return _model(middles, [0] * len(middles), kerf, kerf - way), hull
    back = [left.plus(right, -1).size.by(half).up for left, right in slopes]
    lefts = [left for left, _ in slopes]
    there = max(0, *(each.high for each in lefts)) - min(0, *(each.low for each in lefts))
    return hull, _model(middles, back, kerf, kerf - there * request.width)


def low_models(request):
    """Models by which whatever goes in adds up: no way of laying the pieces out is shorter."""
    kerfs = [
        steepness(piece.left).plus(steepness(piece.right)).by(request.kerf / 2).down
        for piece in request.pieces
    ]
    middles = [middle(piece, request.width) for piece in request.pieces]
    most = steepest(request).by(request.kerf).up
    half = request.width / 2
    slopes = [ends(piece) for piece in request.pieces]
    if request.turning:
        least = min(min(left.size.low, right.size.low) for left, right in slopes)
        return (_low(middles, kerfs, most - request.width * least),)
    first, last = (min(each[side].size.low for each in slopes) for side in (0, 1))
    near, far = (
        [
            each.plus(left.plus(right, -1), times * half)
            for each, (left, right) in zip(middles, slopes, strict=True)
        ]
        for times in (1, -1)
    )
    return (
        _low(middles, kerfs, most - half * (first + last)),
        _low(near, kerfs, most),
        _low(far, kerfs, most),
    )


def _model(middles, more, kerf, beyond):
    added = zip(middles, more, strict=True)
    return Model(tuple(each + beside + kerf for each, beside in added), beyond)


def _low(lengths, kerfs, beyond):
    added = zip(lengths, kerfs, strict=True)
    return Model(tuple(each.down + kerf for each, kerf in added), beyond)
