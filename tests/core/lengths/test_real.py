"""Numbers that no fraction tells: the work to settle one grows gently with its formula."""

from fractions import Fraction

import mpmath
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.geometry.angles import arctangent, tangent
from sawside.lengths.real import MOST_BITS, Real, sign, sqrt


def counted(value):
    """A real with the value of a rational, and the list of finenesses that it was asked for."""
    asked = []

    def enclose(bits):
        asked.append(bits)
        scaled = value.numerator << bits
        return scaled // value.denominator, -(-scaled // value.denominator)

    return Real(enclose), asked


@pytest.mark.parametrize("steps", [4, 8, 16, 32])
def test_a_number_used_twice_at_every_step_is_not_asked_for_twice_as_often_at_every_step(steps):
    """Each step takes the root of a square plus one: the same number in two places."""
    value, asked = counted(Fraction(5, 7))
    for _ in range(steps):
        value = value / (1 + sqrt(1 + value * value))
    value.enclosure(64)
    assert len(asked) <= 4 * steps
    assert max(asked) <= 64 + 4 * steps


@settings(max_examples=25)
@given(st.fractions(min_value=1, max_value=89, max_denominator=60))
def test_an_angle_found_from_its_own_tangent_is_that_angle_to_the_finest_enclosure(degrees):
    there_and_back = arctangent(tangent(degrees))
    assert sign(there_and_back - degrees) == 0
    if isinstance(there_and_back, Real):
        low, high = there_and_back.enclosure(MOST_BITS)
        assert low <= degrees * 2**MOST_BITS <= high


@given(st.fractions(min_value=0, max_value=Fraction(1, 10**6), max_denominator=10**12))
def test_roots_of_numbers_near_nothing_are_enclosed_as_tightly(value):
    low, high = sqrt(value + sqrt(2) - sqrt(2)).enclosure(256)
    with mpmath.workdps(200):
        exact = mpmath.sqrt(mpmath.mpf(value.numerator) / value.denominator) * mpmath.mpf(2) ** 256
        assert low <= exact <= high
    assert high - low <= 2**8 or value == 0
