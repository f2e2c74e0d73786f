"""Real numbers that no fraction can tell: an enclosure refined until the answer is certain.

A `Real` knows how to enclose itself between two rationals as tightly as asked: at `bits` bits it
gives two integers, low and high, with low/2**bits <= x <= high/2**bits. Arithmetic is interval
arithmetic in integers, so the enclosure is a proof and no float takes part. A value that can be
told as a `Fraction` stays one; `Exact` below means either.

Whether a real lies exactly on a boundary can't always be decided by refining (square root of 2
times itself is 2). Refining stops at `MOST_BITS`; the boundary that still lies inside an
enclosure some 600 decimals wide is then taken, and `settled` says so.
"""

from fractions import Fraction
from math import isqrt

FIRST_BITS = 64
MOST_BITS = 2048


class Real:
    """A real number as a function from bits to an enclosure, with + - * / and comparison."""

    __slots__ = ("_enclose", "_held")

    def __init__(self, enclose):
        self._enclose = enclose
        self._held = {}

    def enclosure(self, bits):
        """Integers (low, high): low/2**bits <= self <= high/2**bits.

        Held for each `bits`: a number that stands twice in a formula is asked for at two
        finenesses, and without holding both the work doubles with every such step.
        """
        held = self._held.get(bits)
        if held is None:
            held = self._held[bits] = self._enclose(bits)
        return held

    def __add__(self, other):
        return _both(self, other, _added)

    __radd__ = __add__

    def __neg__(self):
        return Real(lambda bits: tuple(-end for end in reversed(self.enclosure(bits))))

    def __sub__(self, other):
        return self + (-other)

    def __rsub__(self, other):
        return -self + other

    def __mul__(self, other):
        return Fraction(0) if other == 0 else _both(self, other, _multiplied)

    __rmul__ = __mul__

    def __truediv__(self, other):
        return self * (reciprocal(other) if isinstance(other, Real) else 1 / Fraction(other))

    def __rtruediv__(self, other):
        return reciprocal(self) * other

    def __abs__(self):
        return -self if sign(self) < 0 else self

    def __lt__(self, other):
        return sign(self - other) < 0

    def __le__(self, other):
        return sign(self - other) <= 0

    def __gt__(self, other):
        return sign(self - other) > 0

    def __ge__(self, other):
        return sign(self - other) >= 0


Exact = Fraction | Real
"""A length or number without error: a rational where one can tell it, else a real."""


def enclosed(value, bits):
    """The enclosure of a real, or the tightest one of a rational, at `bits` bits."""
    if isinstance(value, Real):
        return value.enclosure(bits)
    scaled = value.numerator << bits
    return scaled // value.denominator, -(-scaled // value.denominator)


def _both(one, other, combine):
    if not isinstance(other, (Real, Fraction, int)):
        return NotImplemented
    return Real(lambda bits: combine(enclosed(one, bits), enclosed(other, bits), bits))


def _added(one, other, _bits):
    return one[0] + other[0], one[1] + other[1]


def _multiplied(one, other, bits):
    products = [a * b for a in one for b in other]
    return min(products) >> bits, -(-max(products) >> bits)


def reciprocal(value):
    """1 / value for a Real that is not 0; ZeroDivisionError when it can't be told from 0."""
    if sign(value) == 0:
        raise ZeroDivisionError("the number can't be told from 0")

    def enclose(bits):
        tight = bits
        while True:
            low, high = value.enclosure(tight)
            if low > 0 or high < 0:
                one = 1 << (2 * tight)
                spare = tight - bits
                return (one // high) >> spare, -((-one // low) >> spare)
            tight *= 2

    return Real(enclose)


def sqrt(value):
    """The square root of an exact number from 0 up; a rational where the root is one."""
    if sign(value) < 0:
        raise ValueError("a negative number has no square root")
    if not isinstance(value, Real):
        value = Fraction(value)
        top, bottom = isqrt(value.numerator), isqrt(value.denominator)
        if top * top == value.numerator and bottom * bottom == value.denominator:
            return Fraction(top, bottom)

    def enclose(bits):
        # The root is as well known as its number, unless that is small.
        fine = bits + 2
        low, high = enclosed(value, fine)
        if low >> bits == 0:
            fine = 2 * bits
            low, high = enclosed(value, fine)
        more = 2 * bits - fine
        return isqrt(max(low, 0) << more), isqrt(high << more) + 1

    return Real(enclose)


def sign(value):
    """-1, 0 or 1; 0 as well for a real that can't be told from 0 at `MOST_BITS`."""
    if not isinstance(value, Real):
        return (value > 0) - (value < 0)
    bits = FIRST_BITS
    while bits <= MOST_BITS:
        low, high = value.enclosure(bits)
        if low > 0:
            return 1
        if high < 0:
            return -1
        bits *= 2
    return 0


def settle(value, decide):
    """`decide` of a real, for a step function `decide` from rationals to integers.

    Returns (the step, settled). Both ends of the enclosure must agree; when they still do not
    at `MOST_BITS`, the simplest rational inside (the boundary that it straddles) decides.
    """
    if not isinstance(value, Real):
        return decide(Fraction(value)), True
    bits = FIRST_BITS
    while bits <= MOST_BITS:
        low, high = (Fraction(end, 1 << bits) for end in value.enclosure(bits))
        if decide(low) == decide(high):
            return decide(low), True
        bits *= 2
    return decide(simplest_between(low, high)), False


def simplest_between(low, high):
    """The rational of least denominator in [low, high], by continued fractions."""
    whole = low.numerator // low.denominator
    if whole == low or whole + 1 <= high:
        return Fraction(whole if whole == low else whole + 1)
    return whole + 1 / simplest_between(1 / (high - whole), 1 / (low - whole))


def nearby(value):
    """A rational within 2**-60 of an exact number: for drawing, never for a shown length."""
    if not isinstance(value, Real):
        return Fraction(value)
    low, high = value.enclosure(FIRST_BITS)
    return Fraction(low + high, 2 << FIRST_BITS)
