"""A place on the tape that was counted in small marks is the length that it is."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st


@given(
    st.integers(min_value=1, max_value=300),
    st.sampled_from([2, 4, 8, 16, 32, 64]).flatmap(
        lambda division: st.tuples(st.just(division), st.integers(0, division))
    ),
    st.sampled_from(["past", "short"]),
)
def test_counting_marks_is_addition_on_the_counted_division(inches, counted, side):
    division, marks = counted
    said = reckon(
        "read_the_tape", inches=str(inches), marks=str(marks), division=str(division), side=side
    )
    place = inches + Fraction(marks if side == "past" else -marks, division)
    answer = said["answers"][0]
    assert exact(answer) == place == Fraction(answer["mark"])
    assert answer["direction"] == "exact"
    assert said["by_key"]["how"]["text"] == said["tape"]["words"]


def test_what_was_counted_is_not_rounded_to_a_coarser_setting():
    said = reckon("read_the_tape", {"mark": "1/8"}, inches="14", marks="5", division="32")
    assert said["answers"][0]["text"] == "14 5/32″"
    assert said["working"][0]["text"] == "14 + 5 × 1/32 = 14 5/32"


@pytest.mark.parametrize(
    "values",
    [
        {"inches": "3", "marks": "17", "division": "16"},
        {"inches": "0", "marks": "1", "division": "16", "side": "short"},
    ],
)
def test_a_place_that_no_tape_has_is_impossible(values):
    assert errors(ask("read_the_tape", **values))["marks"]["kind"] == "impossible"
