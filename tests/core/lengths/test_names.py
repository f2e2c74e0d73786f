"""Names in a sum stand for values; they are found, refused and renamed by rules told here."""

from contextlib import suppress
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sawside.errors import Refusal
from sawside.lengths.reading.names import Named, check_name
from sawside.lengths.reading.reader import last_step, read

NAMES = {
    "3": Named(Fraction(271, 8), 1),
    "side": Named(Fraction(3, 4), 1),
    "side gap": Named(Fraction(1, 8), 1),
    "top": Named(Fraction(12), 2),
    "doors": Named(Fraction(2), 0),
    "lost": None,
}


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("[3]", Fraction(271, 8)),
        ("[3] + 3/4", Fraction(277, 8)),
        ("side", Fraction(3, 4)),
        ("2 × side", Fraction(3, 2)),
        ("40 - 2 * [ side ]", Fraction(77, 2)),
        ("side gap + side", Fraction(7, 8)),
        ("SIDE + [Side Gap]", Fraction(7, 8)),
        ("−side + 1", Fraction(1, 4)),
        ("(side + side gap) ÷ doors", Fraction(7, 16)),
        ("1/2 of side", Fraction(3, 8)),
    ],
)
def test_a_name_stands_for_its_value_and_of_two_that_fit_the_longer_is_meant(text, inches):
    reading = read(text, "in", NAMES)
    assert (reading.value, reading.power) == (inches, 1)


def test_a_named_area_and_a_named_count_keep_their_kind():
    assert read("top ÷ 4 in", "in", NAMES).power == 1
    with pytest.raises(Refusal, match="can’t add"):
        read("doors + side", "in", NAMES)


@pytest.mark.parametrize(
    ("text", "at", "words"),
    [
        ("1 + [4]", 4, "named “4”"),
        ("1 + [side", 4, "isn’t closed"),
        ("lost + 1", 0, "no value yet"),
        ("sides + 1", 0, "where a number should be"),
    ],
)
def test_a_name_that_stands_for_nothing_is_refused_at_its_place(text, at, words):
    with pytest.raises(Refusal) as caught:
        read(text, "in", NAMES)
    assert caught.value.at == at
    assert words in caught.value.message


@pytest.mark.parametrize("name", ["mm", "x", "of", "in the corner", "3rd", "a+b", "", "deg", "[a]"])
def test_a_name_that_could_be_a_number_unit_or_sign_is_refused(name):
    with pytest.raises(Refusal):
        check_name(name)


@pytest.mark.parametrize("name", ["side", "Left side", "h2", "Höhe"])
def test_a_plain_name_is_taken(name):
    check_name(name)


@pytest.mark.parametrize(
    ("text", "step"),
    [
        ("31 5/8 + 2 1/4", "+ 2 1/4"),
        ("31 5/8 + 2 × 3/4", "+ 2 × 3/4"),
        ("37 − (3 + 4)", "− (3 + 4)"),
        ("(3 + 4) ÷ 2", "÷ 2"),
        ("-3", None),
        ("7 13/16", None),
        ("7-13/16", None),
    ],
)
def test_the_last_step_of_a_sum_is_what_again_repeats(text, step):
    assert last_step(text) == step


@given(st.text(alphabet="[]abs 3+-ide×÷(/", max_size=30))
def test_no_text_with_names_raises_anything_but_a_refusal(text):
    with suppress(Refusal):
        assert read(text, "in", NAMES).power in (0, 1, 2, 3)
