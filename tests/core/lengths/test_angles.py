"""Sines, cosines, tangents and arctangents are exact where they are rational, else proven."""

from fractions import Fraction

import mpmath
import pytest
from hypothesis import given
from hypothesis import strategies as st

from sawside.geometry.angles import (
    PI,
    arcsine,
    arctangent,
    arctangent_of_root,
    cosine,
    sine,
    tangent,
)
from sawside.geometry.miter import allowance
from sawside.lengths.real import MOST_BITS, Real, nearby, reciprocal, sign, sqrt
from tables import rows

degrees = st.fractions(min_value=-720, max_value=720, max_denominator=60)
bits = st.sampled_from([64, 128, 512, MOST_BITS])


def of(fraction):
    return mpmath.mpf(fraction.numerator) / fraction.denominator


def encloses(value, exact, bits, *, slack=1 << 10):
    """The enclosure holds the value that mpmath finds with digits to spare, and is tight; a
    rational is that value."""
    if not isinstance(value, Real):
        return abs(of(value) - exact) < mpmath.mpf(10) ** -690
    low, high = value.enclosure(bits)
    return low <= exact * mpmath.mpf(2) ** bits <= high and high - low <= slack


@given(degrees, bits)
def test_enclosures_hold_what_mpmath_finds(angle, bits):
    with mpmath.workdps(700):
        turn = of(angle) * mpmath.pi / 180
        assert encloses(sine(angle), mpmath.sin(turn), bits)
        assert encloses(cosine(angle), mpmath.cos(turn), bits)
        if abs(mpmath.cos(turn)) > 0.1:
            assert encloses(tangent(angle), mpmath.tan(turn), bits)


@given(st.fractions(min_value=-1000, max_value=1000, max_denominator=1000), bits)
def test_arctangents_and_square_roots_hold_what_mpmath_finds(ratio, bits):
    with mpmath.workdps(700):
        turn = mpmath.atan(of(ratio)) * 180 / mpmath.pi
        assert encloses(arctangent(ratio), turn, bits, slack=1 << 20)
        assert encloses(sqrt(abs(ratio)), mpmath.sqrt(of(abs(ratio))), bits)


def test_pi_is_enclosed_to_the_last_bits():
    with mpmath.workdps(700):
        assert encloses(PI, mpmath.pi, MOST_BITS, slack=4)


@pytest.mark.parametrize(
    ("function", "values"),
    [
        (sine, {30: "1/2", 90: 1, 180: 0, -30: "-1/2"}),
        (cosine, {60: "1/2", 90: 0, 180: -1}),
        (tangent, {0: 0, 45: 1, 135: -1, 225: 1}),
        (arctangent, {Fraction(1): 45, Fraction(-1): -45, Fraction(0): 0}),
        (sqrt, {Fraction(9, 4): "3/2", 0: 0}),
    ],
)
def test_what_is_rational_stays_exact(function, values):
    for argument, exact in values.items():
        assert isinstance(function(argument), Fraction)
        assert function(argument) == Fraction(exact)


@pytest.mark.parametrize("row", rows("tangents.csv"), ids=lambda row: row["degrees"])
def test_tangents_are_their_closed_forms(row):
    with mpmath.workdps(120):
        exact = eval(row["closed_form"], {"sqrt": mpmath.sqrt})
        assert encloses(tangent(Fraction(row["degrees"])), exact, 300)


@pytest.mark.parametrize("row", rows("miter_settings.csv"), ids=lambda row: row["degrees_in"])
def test_miter_settings_are_the_commonly_printed_ones(row):
    if row["what"] == "sides":
        assert Fraction(180, int(row["degrees_in"])) == Fraction(row["miter"])
    else:
        setting = nearby(arctangent(sine(Fraction(row["degrees_in"])) / tangent(45)))
        assert round(setting * 100) == Fraction(row["miter"]) * 100


@given(st.fractions(min_value="1/64", max_value=48, max_denominator=64))
def test_at_45_degrees_a_miter_adds_the_width_exactly(width):
    assert allowance(width, 45) == width
    assert allowance(width, 0) == 0


def test_90_degrees_has_no_tangent():
    with pytest.raises(ValueError, match="90 degrees"):
        tangent(90)


def test_a_number_that_can_not_be_told_from_0_has_no_reciprocal():
    with pytest.raises(ZeroDivisionError):
        reciprocal(sqrt(2) * sqrt(2) - 2)
    with pytest.raises(ValueError, match="negative"):
        sqrt(-1)


@given(
    st.fractions(min_value=-9, max_value=9, max_denominator=99),
    st.fractions(min_value=1, max_value=9, max_denominator=99),
)
def test_arithmetic_of_enclosures_holds_what_mpmath_finds(rational, radicand):
    root = sqrt(radicand + Fraction(1, 10**9))
    with mpmath.workdps(700):
        number, exact = of(rational), mpmath.sqrt(of(radicand + Fraction(1, 10**9)))
        assert encloses(rational - root * rational + root, number - exact * number + exact, 512)
        assert encloses(rational / root - 1 / (root * root), number / exact - 1 / exact**2, 512)
        assert sign(root - rational) == mpmath.sign(exact - number)
        assert abs(-root) > 0 >= -root


def test_a_real_times_zero_is_exactly_zero():
    assert sqrt(2) * 0 == Fraction(0)
    assert isinstance(sqrt(2) + 0, Real)


@given(st.fractions(min_value=-1, max_value=1, max_denominator=1000), bits)
def test_arcsines_hold_what_mpmath_finds(ratio, bits):
    with mpmath.workdps(700):
        turn = mpmath.asin(of(ratio)) * 180 / mpmath.pi
        assert encloses(arcsine(ratio), turn, bits, slack=1 << 24)


def test_a_sine_beyond_1_has_no_angle():
    with pytest.raises(ValueError, match="at most 1"):
        arcsine(Fraction(11, 10))


@pytest.mark.parametrize(("angle", "square"), [(0, 0), (30, Fraction(1, 3)), (45, 1), (60, 3)])
def test_the_angles_of_exact_radicals_come_out_exact(angle, square):
    """Textbook trigonometry: the tangents of 30, 45 and 60 are the roots of 1/3, 1 and 3."""
    assert arctangent_of_root(Fraction(square)) == angle
    assert isinstance(arctangent_of_root(Fraction(square)), Fraction)


@pytest.mark.parametrize(
    ("function", "radicals"),
    [
        (sine, {45: "sqrt(2)/2", 60: "sqrt(3)/2"}),
        (cosine, {45: "sqrt(2)/2", 150: "-sqrt(3)/2"}),
        (tangent, {30: "sqrt(3)/3", 120: "-sqrt(3)"}),
    ],
)
def test_values_at_30_45_and_60_are_their_radicals(function, radicals):
    with mpmath.workdps(700):
        for angle, radical in radicals.items():
            assert encloses(function(angle), eval(radical, {"sqrt": mpmath.sqrt}), MOST_BITS)
