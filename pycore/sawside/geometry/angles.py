"""Sine, cosine, tangent and arctangent of exact degrees, as rationals or proven enclosures.

A rational number of degrees has a rational sine or cosine only at multiples of 30 and 90, and a
rational tangent only at multiples of 45 (Niven's theorem). Those come out as `Fraction`; at the
other multiples of 30 and 45 the value is made of square roots, every other one is a series.
Series are summed in integers with 32 spare bits, and the enclosure is widened by more than all
their roundings together: below 2**16 units for up to `MOST_BITS` bits.
"""

from fractions import Fraction
from functools import cache, lru_cache

from sawside.lengths.real import Exact, Real, enclosed, sign, sqrt

_SPARE = 32
_SLACK = 1 << 16


@cache
def _pi(bits):
    """Enclosure of pi by Machin's formula, 16 arctan 1/5 - 4 arctan 1/239."""
    one = 1 << (bits + _SPARE)
    middle = 16 * _arctan_of_reciprocal(5, one) - 4 * _arctan_of_reciprocal(239, one)
    return _widened(middle, middle)


def _arctan_of_reciprocal(number, one):
    power = total = one // number
    count = 1
    while power:
        power //= number * number
        count += 2
        total += -(power // count) if count % 4 == 3 else power // count
    return total


def _widened(low, high):
    return (low - _SLACK) >> _SPARE, -(-(high + _SLACK) >> _SPARE)


PI = Real(_pi)


def sine(degrees):
    """Sine of a rational number of degrees: exact at multiples of 30 where it is rational."""
    degrees = Fraction(degrees) % 360
    if degrees >= 180:
        return -sine(degrees - 180)
    if degrees > 90:
        degrees = 180 - degrees
    exact = {0: Fraction(0), 30: Fraction(1, 2), 90: Fraction(1)}.get(degrees)
    if exact is not None:
        return exact
    if degrees in (45, 60):
        return sqrt(2 if degrees == 45 else 3) / 2
    if degrees > 45:
        return Real(lambda bits: _cosine_enclosed(90 - degrees, bits))
    return Real(lambda bits: _sine_enclosed(degrees, bits))


def cosine(degrees):
    """Cosine of a rational number of degrees."""
    return sine(Fraction(degrees) + 90)


@lru_cache(maxsize=256)  # the settings of a project are few
def tangent(degrees):
    """Tangent of a rational number of degrees; ValueError where there is none (90, 270)."""
    degrees = Fraction(degrees) % 180
    if degrees == 90:
        raise ValueError("90 degrees has no tangent")
    if degrees > 90:
        return -tangent(180 - degrees)
    exact = {0: Fraction(0), 45: Fraction(1)}.get(degrees)
    if exact is not None:
        return exact
    if degrees in (30, 60):
        return sqrt(3) / (3 if degrees == 30 else 1)
    return sine(degrees) / cosine(degrees)


def arctangent(ratio: Exact):
    """The angle in degrees, between -90 and 90, whose tangent is an exact number."""
    if sign(ratio) < 0:
        return -arctangent(-ratio)
    if not isinstance(ratio, Real) and ratio in (0, 1):
        return Fraction(45 * ratio)
    if ratio > 1:
        return 90 - arctangent(1 / ratio)
    for _ in range(
        3
    ):  # arctan t = 2 arctan(t / (1 + sqrt(1 + t*t))): below 1/8 the series is quick
        ratio = ratio / (1 + sqrt(1 + ratio * ratio))
    return Real(lambda bits: _arctangent_enclosed(ratio, bits)) * 8 * 180 / PI


def arctangent_of_root(square):
    """The angle from 0 to below 90 whose tangent is the square root of a number from 0 up.

    Where the number is rational, 30 and 60 degrees come out exact as well.
    """
    if not isinstance(square, Real) and square in (3, Fraction(1, 3)):
        return Fraction(60 if square == 3 else 30)
    return arctangent(sqrt(square))


def arcsine(ratio):
    """The angle from -90 to 90 whose sine is an exact number; ValueError beyond -1 to 1."""
    if sign(ratio) < 0:
        return -arcsine(-ratio)
    square = ratio * ratio
    rest = 1 - square
    if sign(rest) < 0:
        raise ValueError("a sine is at most 1")
    return Fraction(90) if sign(rest) == 0 else arctangent_of_root(square / rest)


def _radians(degrees, bits):
    low, high = _pi(bits)
    top, bottom = degrees.numerator, 180 * degrees.denominator
    return low * top // bottom, -(-high * top // bottom)


def _sine_enclosed(degrees, bits):
    low, high = _radians(degrees, bits + _SPARE)
    return _widened(*(_series(end, end, 1, bits + _SPARE) for end in (low, high)))


def _cosine_enclosed(degrees, bits):
    low, high = _radians(degrees, bits + _SPARE)
    one = 1 << (bits + _SPARE)
    return _widened(*(_series(end, one, 0, bits + _SPARE) for end in (high, low)))


def _series(angle, term, power, bits):
    """Sum of alternating terms, each the last times angle**2 over the next two whole numbers."""
    square = angle * angle >> bits
    total = term
    while term > 0:
        term = (term * square >> bits) // ((power + 1) * (power + 2))
        power += 2
        total += -term if power % 4 > 1 else term
    return total


def _arctangent_enclosed(ratio, bits):
    work = bits + _SPARE
    low, high = enclosed(ratio, work)
    return _widened(*(_arctangent_series(max(end, 0), work) for end in (low, high)))


def _arctangent_series(ratio, bits):
    square = ratio * ratio >> bits
    power, total, count = ratio, ratio, 1
    while power:
        power = power * square >> bits
        count += 2
        total += -(power // count) if count % 4 == 3 else power // count
    return total
