"""A length is told in text, stack, words and plain form, and each reads back to what it tells."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sawside.lengths.display import decimal_text, length_value, mixed_text
from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.reading.reader import read
from sawside.lengths.real import sqrt
from sawside.lengths.words import whole_in_words

lengths = st.fractions(min_value=-5000, max_value=5000, max_denominator=10**6)
grids = st.sampled_from(list(GRIDS.values()))


def told(text, mark="1/16", display="in", rounding="nearest"):
    return length_value("a", "A", to_mark(read(text).value, GRIDS[mark], rounding), display)


def from_stack(stack):
    """The stack put together again as plain text."""
    text = "-" if stack["sign"] else ""
    if stack["feet"]:
        text += f"{stack['feet']}' "
    text += stack["whole"] or ""
    if stack["numerator"]:
        text += f" {stack['numerator']}/{stack['denominator']}"
    return text + stack["unit"]


@given(lengths, grids, st.sampled_from(["in", "ft-in", "mm"]))
def test_every_form_of_a_mark_is_read_back_to_the_mark(length, grid, display):
    display = "mm" if grid.unit == "mm" else display
    value = length_value("a", "A", to_mark(length, grid), display)
    mark = Fraction(value["mark"])
    assert read(value["text"]).value == mark
    assert read(value["plain"]).value == mark
    assert value["plain"].isascii()
    assert read(from_stack(value["stack"])).value == mark
    assert mark + Fraction(value["dropped"]) == Fraction(value["exact"]) == length


@given(lengths)
def test_decimals_that_were_not_cut_are_read_back_exactly(length):
    for display, unit in (("in", "in"), ("mm", "mm")):
        value = length_value("a", "A", to_mark(length, GRIDS["1/64"]), display)
        if not value["decimals"].endswith("…"):
            assert read(value["decimals"], unit).value == length
        if not value["other"].startswith("≈"):
            assert read(value["other"]).value == length


@pytest.mark.parametrize(
    ("text", "mark", "display", "shown", "words"),
    [
        ("36 1/8", "1/16", "in", "36 1/8″", "thirty-six and one eighth inches"),
        ("39 11/16", "1/16", "in", "39 11/16″", "thirty-nine and eleven sixteenths inches"),
        ("1", "1/16", "in", "1″", "one inch"),
        ("0", "1/16", "in", "0″", "zero inches"),
        ("1/2", "1/16", "in", "1/2″", "one half of an inch"),
        ("3/4", "1/16", "in", "3/4″", "three quarters of an inch"),
        ("-2 5/8", "1/16", "in", "−2 5/8″", "minus two and five eighths inches"),
        ("36 1/8", "1/16", "ft-in", "3′ 0 1/8″", "three feet and one eighth of an inch"),
        ("12", "1/16", "ft-in", "1′ 0″", "one foot"),
        ("79 9/32", "1/32", "ft-in", "6′ 7 9/32″", "six feet seven and nine thirty-seconds inches"),
        ("11 1/2", "1/16", "ft-in", "11 1/2″", "eleven and one half inches"),
        ("917.6 mm", "0.1 mm", "mm", "917.6 mm", "nine hundred seventeen point six millimeters"),
        ("918 mm", "1 mm", "mm", "918 mm", "nine hundred eighteen millimeters"),
        (
            "36 1/8",
            "1/16",
            "mm",
            "917.575 mm",
            "nine hundred seventeen point five seven five millimeters",
        ),
        (
            "1/64",
            "1/64",
            "mm",
            "0.396875 mm",
            "zero point three nine six eight seven five millimeters",
        ),
        ("36.125", ".001 in", "in", "36.125″", "thirty-six point one two five inches"),
        ("1", ".01 in", "in", "1.00″", "one inch"),
    ],
)
def test_a_mark_is_told_as_the_shop_says_it(text, mark, display, shown, words):
    value = told(text, mark, display)
    assert (value["text"], value["words"]) == (shown, words)


@pytest.mark.parametrize(
    ("text", "mark", "dropped", "direction"),
    [
        ("36 1/8", "1/16", "", "exact"),
        ("36 9/64", "1/16", "1/64″ heavy", "heavy"),
        ("36 7/64", "1/16", "1/64″ light", "light"),
        ("1/3", "1/16", "0.021″ heavy", "heavy"),
        ("1/4096", "1/16", "less than 0.001″ heavy", "heavy"),
        ("917.575 mm", "1 mm", "0.425 mm light", "light"),
    ],
)
def test_what_was_dropped_is_said_with_its_direction(text, mark, dropped, direction):
    value = told(text, mark, "mm" if "mm" in mark else "in")
    assert (value["dropped_text"], value["direction"]) == (dropped, direction)


@pytest.mark.parametrize(
    ("text", "display", "other"),
    [
        ("1", "in", "25.4 mm"),
        ("1500 mm", "in", "1500 mm"),
        ("36 1/8", "in", "≈ 917.6 mm"),
        ("25.4 mm", "mm", "1″"),
        ("18 mm", "mm", "≈ 45/64″"),
    ],
)
def test_the_other_system_says_when_it_was_rounded(text, display, other):
    assert told(text, "1 mm" if display == "mm" else "1/16", display)["other"] == other


def test_an_irrational_length_says_that_it_is_and_gives_its_decimals():
    value = length_value("a", "A", to_mark(sqrt(2), GRIDS["1/16"]), "in")
    assert (value["exact"], value["rational"]) == (None, False)
    assert value["decimals"] == "1.414213…"
    assert value["dropped"] == "≈-0.023286437"
    assert (value["text"], value["dropped_text"]) == ("1 7/16″", "0.023″ light")


def test_a_rounded_number_can_not_be_told_without_its_mark():
    with pytest.raises(TypeError):
        length_value("a", "A", Fraction(1, 3), "in")


@given(st.fractions(max_denominator=64, min_value=-999, max_value=999))
def test_a_mixed_number_is_read_back(number):
    assert read(mixed_text(number)).value == number


@pytest.mark.parametrize(
    ("number", "text"),
    [
        (Fraction(1, 3), "0.333333…"),
        (Fraction(1, 8), "0.125"),
        (Fraction(-1, 8), "−0.125"),
        (Fraction(3), "3"),
        (Fraction(10), "10"),
    ],
)
def test_decimals_end_in_an_ellipsis_when_they_were_cut(number, text):
    assert decimal_text(number) == text


@pytest.mark.parametrize(
    ("number", "words"),
    [
        (0, "zero"),
        (13, "thirteen"),
        (20, "twenty"),
        (45, "forty-five"),
        (100, "one hundred"),
        (305, "three hundred five"),
        (1000, "one thousand"),
        (63360, "sixty-three thousand three hundred sixty"),
        (2_000_001, "two million one"),
    ],
)
def test_whole_numbers_are_told_in_words(number, words):
    assert whole_in_words(number) == words
