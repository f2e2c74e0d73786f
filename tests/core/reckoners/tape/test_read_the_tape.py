"""A place on the tape that was counted in small marks is the length that it is."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

DIVISIONS = [2, 4, 8, 16, 32, 64]


@st.composite
def counts(draw):
    """A division, a larger mark that it has, and a number of its small marks."""
    division = draw(st.sampled_from(DIVISIONS))
    larger = Fraction(draw(st.integers(0, min(division, 16) - 1)), min(division, 16))
    return division, larger, draw(st.integers(0, division))


@given(st.integers(1, 300), counts(), st.sampled_from(["past", "short"]))
def test_counting_marks_is_addition_on_the_counted_division(inches, counted, side):
    division, larger, marks = counted
    values = {"marks": str(marks), "smallest": str(division), "side": side, "larger": str(larger)}
    said = reckon("tape_marks", solve="length", inches=str(inches), **values)
    place = inches + larger + Fraction(marks if side == "past" else -marks, division)
    answer = said["answers"][0]
    assert exact(answer) == place == Fraction(answer["mark"])
    assert answer["direction"] == "exact"
    assert said["by_key"]["how"]["text"] == said["tape"]["words"]


def test_two_small_marks_past_the_five_eighths_are_three_quarters():
    """Counted by hand: 5/8 is 10/16, and two more are 12/16."""
    said = reckon("tape_marks", solve="length", inches="14", larger="5/8", marks="2", smallest="16")
    assert said["answers"][0]["text"] == "14 3/4″"
    assert said["working"][0]["text"] == "14 + 5/8 + 2 × 1/16 = 14 3/4"


def test_what_was_counted_is_not_rounded_to_a_coarser_setting():
    said = reckon(
        "tape_marks", {"mark": "1/8"}, solve="length", inches="14", marks="5", smallest="32"
    )
    assert said["answers"][0]["text"] == "14 5/32″"
    assert said["working"][0]["text"] == "14 + 5 × 1/32 = 14 5/32"


@pytest.mark.parametrize(
    ("values", "field"),
    [
        ({"inches": "3", "marks": "17", "smallest": "16"}, "marks"),
        ({"inches": "0", "marks": "1", "smallest": "16", "side": "short"}, "marks"),
        ({"inches": "3", "marks": "1", "smallest": "4", "larger": "3/8"}, "larger"),
    ],
)
def test_a_place_that_no_tape_has_is_impossible(values, field):
    assert errors(ask("tape_marks", solve="length", **values))[field]["kind"] == "impossible"
