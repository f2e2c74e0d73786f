"""Roots against mpmath; rational where there is a rational one."""

from fractions import Fraction

import mpmath
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from sawside.lengths.real import Real
from sawside.lengths.roots import ratio_of_sum, root

positives = st.fractions(min_value="1/50", max_value=400, max_denominator=64)


def encloses(value, exactly):
    """Whether 200 bits of a real hold what mpmath says to some 90 decimals."""
    low, high = (mpmath.mpf(end) / (1 << 200) for end in value.enclosure(200))
    slack = mpmath.mpf(2) ** -190
    return low - slack <= exactly <= high + slack and high - low < slack


@given(positives, st.integers(2, 40))
def test_a_root_is_as_mpmath_says(value, degree):
    found = root(value, degree)
    if isinstance(found, Fraction):
        assert found**degree == value
        return
    with mpmath.workdps(90):
        assert encloses(found, mpmath.root(mpmath.mpf(value.numerator) / value.denominator, degree))


@given(st.fractions(min_value=0, max_value=40, max_denominator=64), st.integers(1, 40))
def test_the_root_of_a_power_is_the_number_itself(value, degree):
    assert root(value**degree, degree) == value


@settings(max_examples=100)
@given(st.integers(2, 40), st.fractions(min_value=1, max_value=60, max_denominator=64))
def test_the_ratio_of_a_sum_is_as_mpmath_says(terms, total):
    found = ratio_of_sum(terms, total)
    if isinstance(found, Fraction):
        assert sum(found**power for power in range(terms)) == total
        return
    with mpmath.workdps(90):
        goal = mpmath.mpf(total.numerator) / total.denominator
        exactly = mpmath.root(goal, terms - 1)  # above the root, where Newton's steps fall to it
        for _ in range(60):
            slope = mpmath.fsum(power * exactly ** (power - 1) for power in range(1, terms))
            exactly -= (mpmath.fsum(exactly**power for power in range(terms)) - goal) / slope
        assert encloses(found, exactly)


@settings(max_examples=100)
@given(st.fractions(min_value="1/20", max_value=3, max_denominator=32), st.integers(2, 20))
def test_a_rational_ratio_is_found_again(ratio, terms):
    total = sum(ratio**power for power in range(terms))
    found = ratio_of_sum(terms, total)
    assert isinstance(found, Fraction)
    assert found == ratio


@settings(max_examples=50)
@given(st.integers(2, 12), st.fractions(min_value=1, max_value=12, max_denominator=16))
def test_a_larger_sum_has_a_larger_ratio(terms, total):
    more = total + Fraction(1, 7)
    assume(total > 1)
    assert ratio_of_sum(terms, more) > ratio_of_sum(terms, total)


def test_the_square_root_of_two_is_no_fraction():
    assert isinstance(root(2, 2), Real)
    assert root(Fraction(8, 27), 3) == Fraction(2, 3)


@pytest.mark.parametrize(
    ("make", "arguments"),
    [(root, (-1, 2)), (ratio_of_sum, (3, Fraction(1, 2))), (ratio_of_sum, (1, 2))],
)
def test_what_has_no_root_is_refused(make, arguments):
    with pytest.raises(ValueError, match="no"):
        make(*arguments)
