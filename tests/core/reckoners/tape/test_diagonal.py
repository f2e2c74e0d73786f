"""Both diagonals of a square frame measure the root of the sum of its sides' squares."""

from fractions import Fraction

import mpmath
import pytest
from asking import as_drawn, ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

sides = st.fractions(min_value="1/64", max_value=1200, max_denominator=64)


@pytest.mark.parametrize(
    ("width", "height", "diagonal"),
    [(3, 4, 5), (5, 12, 13), (8, 15, 17), (20, 21, 29), (28, 45, 53)],
)
def test_pythagorean_triples_come_out_exact(width, height, diagonal):
    """Source: the triples follow from Euclid, Elements, book X, lemma 1 to proposition 28."""
    said = reckon("square", solve="diagonal", width=f"{width} 0/8 in", height=f"{height} in")
    assert exact(said["answers"][0]) == diagonal
    assert said["answers"][0]["rational"]


def test_a_square_of_one_foot_has_the_root_of_two_for_its_diagonal():
    """Source: the square root of 2 is 1.41421356…; twelve times that is 16.970562…"""
    answer = reckon("square", solve="diagonal", width="12", height="12")["answers"][0]
    assert answer["decimals"] == "16.970562…"
    assert (answer["text"], answer["direction"], answer["rational"]) == ("17″", "light", False)


@given(sides, sides, st.sampled_from(["1/16", "1/64", ".001 in", "0.1 mm"]))
def test_the_mark_is_the_nearest_to_the_root_at_a_hundred_digits(width, height, mark):
    said = reckon(
        "square", {"mark": mark}, solve="diagonal", width=f"{width} in", height=f"{height} in"
    )
    answer = said["answers"][0]
    step = Fraction(mark.split()[0]) * (Fraction(5, 127) if mark.endswith("mm") else 1)
    with mpmath.workdps(100):
        squares = width**2 + height**2
        root = mpmath.sqrt(mpmath.mpf(squares.numerator) / squares.denominator)
        number = mpmath.nint(root * step.denominator / step.numerator)
        assert Fraction(answer["mark"]) == int(number) * step or told_finer(answer, step)
        sign = mpmath.sign(root - mpmath.mpf(int(number) * step.numerator) / step.denominator)
    if not answer["rational"] and not told_finer(answer, step):
        assert answer["direction"] == {1: "heavy", -1: "light"}[int(sign)]


def told_finer(answer, step):
    """Whether it lies exactly on a finer mark, or is so short that its mark would be 0."""
    return answer["direction"] == "exact" or 0 < Fraction(answer["mark"]) < step


def test_bad_fields_are_each_told_of():
    said = errors(ask("square", solve="diagonal", width="0", height="1,200"))
    assert {field: error["kind"] for field, error in said.items()} == {
        "width": "range",
        "height": "unreadable",
    }


@pytest.mark.parametrize(("width", "height"), [("36 1/8", "41 1/4"), ("90", "2"), ("2", "90")])
def test_the_drawing_tells_both_sides_and_the_diagonal(width, height):
    said = reckon("square", solve="diagonal", width=width, height=height)
    drawn = said["drawing"]
    left, top, right, bottom = drawn["box"]
    assert 0.9 <= (right - left) / (bottom - top) <= 3.5
    texts = {shape["text"] for shape in drawn["shapes"] if "text" in shape}
    assert texts == {as_drawn(said["answers"][0]), f"{width}″", f"{height}″"}
    assert len([each for each in drawn["shapes"] if each.get("role") == "center"]) == 2
