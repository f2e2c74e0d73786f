"""Roots that no fraction can tell: of a power, and of a sum of powers. Proven as `real` says."""

from fractions import Fraction

from sawside.lengths.real import FIRST_BITS, Real, simplest_between

_SPARE = 64


def root(value, degree):
    """The root of a rational from 0 up; rational where it is one. `degree` from 1 up."""
    value = Fraction(value)
    if value < 0:
        raise ValueError("a negative number has no such root")
    top, bottom = (_floor_root(each, degree) for each in (value.numerator, value.denominator))
    if top**degree == value.numerator and bottom**degree == value.denominator:
        return Fraction(top, bottom)

    def enclose(bits):
        low = _floor_root((value.numerator << degree * bits) // value.denominator, degree)
        return low, low + 1

    return Real(enclose)


def _floor_root(number, degree):
    """The largest whole number whose power is not above `number`, by Newton's steps from above."""
    if number < 2 or degree == 1:
        return number
    guess = 1 << -(-number.bit_length() // degree)
    while True:
        closer = ((degree - 1) * guess + number // guess ** (degree - 1)) // degree
        if closer >= guess:
            return guess
        guess = closer


def ratio_of_sum(terms, total):
    """The x from 0 up with 1 + x + x**2 + … = total, `terms` powers on the left.

    `terms` from 2 up, `total` a rational from 1 up. Rational where x is a rational that is told
    at once; there is exactly one such x, since the sum grows with x.
    """
    total = Fraction(total)
    if total < 1 or terms < 2:
        raise ValueError("no ratio makes such a sum")

    def enclose(bits):
        """Bisection in integers; the sum is taken rounded down, and then rounded up."""
        work = bits + _SPARE
        goal = (total.numerator << work) // total.denominator
        most = goal + 1
        least = _last(most, lambda x: _sum_above(x, terms, work) <= goal)
        beyond = _last(most, lambda x: _sum_below(x, terms, work) <= goal) + 1
        return least >> _SPARE, -(-beyond >> _SPARE)

    low, high = (Fraction(end, 1 << FIRST_BITS) for end in enclose(FIRST_BITS))
    simplest = simplest_between(low, high)
    return simplest if sum(simplest**power for power in range(terms)) == total else Real(enclose)


def _last(most, holds):
    """The largest whole number from 0 to `most` for which a falling condition holds."""
    low, high = 0, most
    while low < high:
        middle = (low + high + 1) // 2
        low, high = (middle, high) if holds(middle) else (low, middle - 1)
    return low


def _sum_below(x, terms, bits):
    total = one = 1 << bits
    for _ in range(terms - 1):
        total = (total * x >> bits) + one
    return total


def _sum_above(x, terms, bits):
    total = one = 1 << bits
    for _ in range(terms - 1):
        total = -(-total * x >> bits) + one
    return total
