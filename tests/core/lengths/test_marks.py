"""A length is rounded to a mark of the tape, and what was dropped is never lost."""

from fractions import Fraction

import mpmath
import pytest
from hypothesis import given
from hypothesis import strategies as st

from sawside.geometry.angles import tangent
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.reading.reader import read
from sawside.lengths.real import Real, sqrt
from tables import rows

lengths = st.fractions(min_value=-5000, max_value=5000, max_denominator=10**6)
grids = st.sampled_from(list(GRIDS.values()))
roundings = st.sampled_from(["nearest", "up", "down"])


@pytest.mark.parametrize("row", rows("rounding_ties.csv"), ids=lambda row: row["exact"])
def test_an_exact_tie_goes_to_the_even_graduation(row):
    rounded = to_mark(read(row["exact"]).value, GRIDS[row["mark"]])
    assert rounded.mark == read(row["rounded"]).value


@given(lengths, grids)
def test_the_nearest_mark_is_a_graduation_at_most_half_a_step_away(length, grid):
    rounded = to_mark(length, grid)
    assert rounded.mark % grid.step == 0
    assert abs(rounded.dropped) <= grid.step / 2
    assert rounded.mark + rounded.dropped == length


@given(lengths, grids)
def test_up_and_down_are_the_marks_on_both_sides(length, grid):
    up, down = to_mark(length, grid, "up").mark, to_mark(length, grid, "down").mark
    assert down <= length <= up
    assert up - down == (0 if length % grid.step == 0 else grid.step)


@given(lengths, lengths, grids, roundings)
def test_a_longer_length_never_gets_a_lower_mark(one, other, grid, rounding):
    shorter, longer = sorted((one, other))
    assert to_mark(shorter, grid, rounding).mark <= to_mark(longer, grid, rounding).mark


@pytest.mark.parametrize(
    ("length", "direction"),
    [("36 1/8", "exact"), ("36 1/8 + 1/100", "heavy"), ("36 1/8 - 1/100", "light")],
)
def test_light_is_a_little_under_the_mark_and_heavy_a_little_over(length, direction):
    assert to_mark(read(length).value, GRIDS["1/16"]).direction == direction


def at_100_digits(length, grid, rounding):
    """The mark by mpmath at 100 digits: an independent way to round."""
    with mpmath.workdps(100):
        steps = length * grid.step.denominator / grid.step.numerator
        whole = {"nearest": mpmath.nint, "up": mpmath.ceil, "down": mpmath.floor}[rounding](steps)
        return int(whole) * grid.step


@given(
    st.fractions(min_value="1/64", max_value=100, max_denominator=64),
    st.fractions(min_value="1/10", max_value=80, max_denominator=10).filter(lambda a: a % 45),
    grids,
    roundings,
)
def test_an_irrational_length_is_rounded_as_at_100_digits(width, degrees, grid, rounding):
    length = width * tangent(degrees)
    with mpmath.workdps(100):
        turn = mpmath.mpf(degrees.numerator) / degrees.denominator * mpmath.pi / 180
        exact = mpmath.mpf(width.numerator) / width.denominator * mpmath.tan(turn)
    assert isinstance(length, Real)
    rounded = to_mark(length, grid, rounding)
    assert rounded.mark == at_100_digits(exact, grid, rounding)
    assert rounded.settled
    assert rounded.direction == (
        "heavy"
        if exact > mpmath.mpf(rounded.mark.numerator) / rounded.mark.denominator
        else "light"
    )


def test_a_length_a_hair_from_a_tie_is_refined_until_it_is_certain():
    """1/32 plus or minus an irrational hair of about 1e-80 is beyond any float."""
    hair = (sqrt(2) - Fraction(7, 5)) / 10**80
    assert to_mark(Fraction(3, 32) + hair, GRIDS["1/16"]).mark == Fraction(1, 8)
    assert to_mark(Fraction(1, 32) + hair, GRIDS["1/16"]).mark == Fraction(1, 16)
    assert to_mark(Fraction(1, 32) - hair, GRIDS["1/16"]).mark == 0


def test_what_can_not_be_told_from_a_mark_is_taken_as_on_it_and_said_so():
    rounded = to_mark(sqrt(2) * sqrt(2), GRIDS["1/16"])
    assert (rounded.mark, rounded.direction, rounded.settled) == (2, "exact", False)
    tie = to_mark(sqrt(2) * sqrt(2) / 64, GRIDS["1/16"])
    assert (tie.mark, tie.settled) == (0, False)
