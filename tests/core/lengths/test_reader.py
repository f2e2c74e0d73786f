"""The reader takes every customary form of a length, and says what is wrong with all others."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sawside.errors import Refusal
from sawside.lengths.reading.reader import read, read_angle, read_count, read_length
from tests.core.lengths.read_vectors import ANGLES, ECHOED, MM, READ, REFUSED, REMEDIES


@pytest.mark.parametrize(("text", "inches"), READ)
def test_a_customary_form_is_read(text, inches):
    assert read_length(text).value == inches


@pytest.mark.parametrize(
    ("unit", "inches"), [("in", 4), ("ft", 48), ("mm", 4 * MM), ("cm", 40 * MM), ("m", 4000 * MM)]
)
def test_a_bare_number_is_in_the_unit_of_the_settings(unit, inches):
    assert read("4", unit).value == read("2 × 2", unit).value == read("8 ÷ 2", unit).value == inches
    assert read("4 + 1 in", unit).value == inches + 1
    assert read("6 in ÷ 4", unit).value == Fraction(3, 2)
    assert read("10'6", unit).value == 126


@pytest.mark.parametrize(("text", "echo"), ECHOED)
def test_the_echo_says_how_the_text_was_read(text, echo):
    assert read(text).echo == echo


@pytest.mark.parametrize(("text", "kind", "at"), REFUSED)
def test_what_can_not_be_read_is_refused_at_its_place_with_a_remedy(text, kind, at):
    with pytest.raises(Refusal) as caught:
        read(text)
    refusal = caught.value
    assert (refusal.kind, refusal.at) == (kind, at)
    assert refusal.message.endswith((".", "?"))
    assert refusal.remedy.endswith(".")


@pytest.mark.parametrize(("text", "remedy"), REMEDIES)
def test_the_remedy_fits_the_text(text, remedy):
    with pytest.raises(Refusal) as caught:
        read(text)
    assert caught.value.remedy == remedy


@pytest.mark.parametrize("text", ["37 9//16", "37 9 / 16", "6' 7 9//32", "37 9//", "3 + 37 9//16"])
def test_a_sign_that_is_there_is_never_said_to_be_missing(text):
    with pytest.raises(Refusal) as caught:
        read(text)
    assert "no sign" not in caught.value.message
    assert "over what" not in caught.value.message


def test_a_length_times_a_length_is_an_area_and_no_length():
    assert (read("3 in × 4 in").value, read("3 in × 4 in").power) == (12, 2)
    assert read("12 in × 12 in × 1 in").power == 3
    with pytest.raises(Refusal, match="works out to an area"):
        read_length("3 in × 4 in")


def test_a_length_by_a_length_is_a_count_with_its_remainder():
    reading = read('96" ÷ 7 1/2"')
    assert (reading.value, reading.power) == (Fraction(64, 5), 0)
    assert reading.remainder == 6
    assert read("7 ÷ 2 in").remainder == 1


@pytest.mark.parametrize(("text", "degrees"), ANGLES)
def test_an_angle_is_read_in_degrees(text, degrees):
    assert read_angle(text).value == degrees


@pytest.mark.parametrize("text", ["45 in", "45'", "1° × 1°", "", "forty"])
def test_what_is_no_angle_is_refused(text):
    with pytest.raises(Refusal):
        read_angle(text)


def test_a_count_is_a_whole_number():
    assert read_count("4").value == read_count("2 × 2").value == 4
    for text in ("4.5", "4 in", "1/2", ""):
        with pytest.raises(Refusal):
            read_count(text)


def outcome(text):
    """The reading of a text, or its refusal; anything else that is raised fails the test."""
    try:
        return read(text)
    except Refusal as refusal:
        return refusal


characters = st.text(
    alphabet=st.sampled_from("0123456789 ./-+×x*of'\"ftinm½⅞⁄³₄()÷,^eE°µ−"), max_size=40
)


@given(characters | st.text(max_size=60))
def test_random_text_raises_nothing_but_a_refusal_with_a_place_in_the_text(text):
    reading = outcome(text)
    if isinstance(reading, Refusal):
        assert reading.kind in ("missing", "unreadable", "range")
        assert 0 <= reading.at <= len(text)
    else:
        assert read(reading.echo).value == reading.value


numbers = st.fractions(min_value=0, max_value=400, max_denominator=64)


def written(number):
    whole, part = divmod(number, 1)
    return f"{whole} {part}" if whole and part else str(part or whole)


class Sum:
    """An independent evaluator: a random sum knows its own value by `fractions` alone."""

    def __init__(self, text, value):
        self.text = text
        self.value = value


def joined(pair):
    (left, right), sign = pair
    if sign == "÷":
        if right.value == 0:
            return left
        return Sum(f"({left.text}) ÷ ({right.text})", left.value / right.value)
    if sign == "×":
        return Sum(f"({left.text}) × ({right.text})", left.value * right.value)
    if sign == "+":
        return Sum(f"{left.text} + ({right.text})", left.value + right.value)
    return Sum(f"{left.text} - ({right.text})", left.value - right.value)


sums = st.recursive(
    numbers.map(lambda number: Sum(written(number), number)),
    lambda inner: st.tuples(st.tuples(inner, inner), st.sampled_from("+-×÷")).map(joined),
    max_leaves=6,
)


@given(sums)
def test_sums_agree_with_fractions(made):
    if len(made.text) > 200:
        return
    if abs(made.value) > 63360:
        with pytest.raises(Refusal, match="mile"):
            read(made.text)
    else:
        assert read(made.text).value == made.value


@given(st.lists(st.tuples(numbers, st.sampled_from("+-×")), min_size=1, max_size=10))
def test_times_binds_before_plus_without_parentheses(parts):
    text, total, product, plus = "", Fraction(0), None, 1
    for number, sign in parts:
        text += f"{written(number)} {sign} "
        product = number if product is None else product * number
        if sign != "×":
            total, product = total + plus * product, None
            plus = 1 if sign == "+" else -1
    text += "1"
    total += plus * (1 if product is None else product)
    if len(text) <= 200 and abs(total) <= 63360:
        assert read(text).value == total


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("(" * 99 + "1" + ")" * 99, 1),
        ("1-" * 99 + "1", -98),
        ("1+" * 99 + "1", 100),
        (" " * 199 + "1", 1),
        ("-(" * 50 + "1" + ")" * 50, 1),
    ],
)
def test_the_longest_texts_are_read_without_recursion(text, inches):
    assert read(text).value == inches


@pytest.mark.parametrize("text", ["1" * 200, "1 " * 100, "(" * 200, "/" * 200, "1'" * 100])
def test_the_longest_texts_that_mean_nothing_are_refused(text):
    with pytest.raises(Refusal):
        read(text)
