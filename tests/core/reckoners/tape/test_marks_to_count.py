"""A length is told as marks to count, and who counts as told comes to its mark."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

NUMBERS = (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen "
    "sixteen seventeen eighteen nineteen twenty"
).split()
NUMBERS += [f"twenty-{ones}" for ones in NUMBERS[1:10]] + ["thirty", "thirty-one", "thirty-two"]


def counted(words, division):
    """Where a helper ends who counts from the inch: "four small marks short of 30 (…)"."""
    if words.startswith("on "):
        return Fraction(words.removeprefix("on "))
    number, rest = words.split(" small mark")
    way = 1 if " past " in rest or rest.startswith("s past") else -1
    inch = int(rest.split(" (")[0].split()[-1])
    return inch + way * Fraction(NUMBERS.index(number), division)


@given(
    st.fractions(min_value=0, max_value=400, max_denominator=300),
    st.sampled_from([2, 4, 8, 16, 32, 64]),
)
def test_who_counts_from_the_inch_comes_to_the_nearest_mark(length, division):
    said = reckon("marks_to_count", length=f"{length} in", division=str(division))
    mark = Fraction(said["by_key"]["mark"]["mark"])
    assert counted(said["by_key"]["from_inch"]["text"], division) == mark
    assert abs(mark - length) <= Fraction(1, 2 * division)
    assert exact(said["by_key"]["mark"]) == length


@given(st.fractions(min_value=0, max_value=400, max_denominator=64))
def test_the_larger_mark_is_never_more_than_two_small_marks_away(length):
    how = reckon("marks_to_count", length=f"{length} in", division="64")["by_key"]["how"]["text"]
    assert how.startswith(("on ", "one small mark ", "two small marks "))


@pytest.mark.parametrize(
    ("length", "division", "how", "from_inch"),
    [
        (
            "7 11/16",
            "32",
            "two small marks past the five-eighths after 7 (thirty-seconds)",
            "ten small marks short of 8 (thirty-seconds)",
        ),
        (
            "29 3/4",
            "16",
            "on the three-quarters past 29",
            "four small marks short of 30 (sixteenths)",
        ),
        ("36", "8", "on 36", "on 36"),
        ("18 mm", "mm", "two small marks short of 20 (millimeters)", None),
    ],
)
def test_the_words_are_those_of_the_trade(length, division, how, from_inch):
    """Counted by hand on a rule."""
    settings = {"unit": "mm"} if division == "mm" else {}
    said = reckon("marks_to_count", settings, length=length, division=division)["by_key"]
    assert said["how"]["text"] == how
    assert said.get("from_inch", {}).get("text") == from_inch


def test_marks_are_those_of_the_settings_where_a_tape_has_such_marks():
    def mark(settings):
        return reckon("marks_to_count", settings, length="10.3 in")["answers"][0]["text"]

    assert mark({"mark": "1/8"}) == "10 1/4″"
    assert mark({"mark": ".001 in"}) == "10 5/16″"
    assert mark({"mark": "0.5 mm"}) == "261.5 mm"
    assert mark({"mark": "0.1 mm"}) == "262 mm"


def test_a_bad_length_is_told_of():
    assert errors(ask("marks_to_count", length="3//4"))["length"]["kind"] == "unreadable"
    assert errors(ask("marks_to_count", length="101 ft"))["length"]["kind"] == "range"
