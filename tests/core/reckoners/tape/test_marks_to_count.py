"""A length is told as marks to count, and who counts as told comes to its mark."""

import re
from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

PARTS = {2: "halves half", 4: "quarters quarter", 8: "eighths eighth", 16: "sixteenths sixteenth"}
PARTS |= {32: "thirty-seconds thirty-second", 64: "sixty-fourths sixty-fourth"}
COUNTED = re.compile(r"(\d+) (\S+) (past|short of) (\d+)")


def counted(words, division):
    """Where a helper ends who counts from the inch: "4 sixteenths short of 30"."""
    if words.startswith("on "):
        return Fraction(words.removeprefix("on "))
    number, parts, way, inch = COUNTED.fullmatch(words).groups()
    assert parts == PARTS[division].split()[number == "1"]
    return int(inch) + (1 if way == "past" else -1) * Fraction(int(number), division)


@given(
    st.fractions(min_value=0, max_value=400, max_denominator=300),
    st.sampled_from([2, 4, 8, 16, 32, 64]),
)
def test_who_counts_from_the_inch_comes_to_the_nearest_mark(length, division):
    said = reckon("tape_marks", solve="mark", length=f"{length} in", division=str(division))
    mark = Fraction(said["by_key"]["mark"]["mark"])
    assert counted(said["by_key"]["from_inch"]["text"], division) == mark
    assert abs(mark - length) <= Fraction(1, 2 * division)
    assert exact(said["by_key"]["mark"]) == length


@given(st.fractions(min_value=0, max_value=400, max_denominator=64))
def test_the_larger_mark_is_never_more_than_two_small_marks_away(length):
    how = reckon("tape_marks", solve="mark", length=f"{length} in", division="64")["by_key"]["way"][
        "text"
    ]
    assert how.startswith(("on ", "1 sixty-fourth ", "2 sixty-fourths "))


@pytest.mark.parametrize(
    ("length", "division", "how", "from_inch"),
    [
        (
            "7 11/16",
            "32",
            "2 thirty-seconds past the five-eighths after 7",
            "10 thirty-seconds short of 8",
        ),
        ("29 3/4", "16", "on the three-quarters past 29", "4 sixteenths short of 30"),
        ("36", "8", "on 36", "on 36"),
        ("18 mm", "mm", "2 millimeters short of 20", None),
    ],
)
def test_the_words_are_those_of_the_trade(length, division, how, from_inch):
    """Counted by hand on a rule."""
    settings = {"unit": "mm"} if division == "mm" else {}
    said = reckon("tape_marks", settings, solve="mark", length=length, division=division)["by_key"]
    assert said["way"]["text"] == how
    assert said.get("from_inch", {}).get("text") == from_inch


def test_marks_are_those_of_the_settings_where_a_tape_has_such_marks():
    def mark(settings):
        return reckon("tape_marks", settings, solve="mark", length="10.3 in")["answers"][0]["text"]

    assert mark({"mark": "1/8"}) == "10 1/4″"
    assert mark({"mark": ".001 in"}) == "10 5/16″"
    assert mark({"mark": "0.5 mm"}) == "261.5 mm"
    assert mark({"mark": "0.1 mm"}) == "262 mm"


def test_a_bad_length_is_told_of():
    assert errors(ask("tape_marks", solve="mark", length="3//4"))["length"]["kind"] == "unreadable"
    assert errors(ask("tape_marks", solve="mark", length="101 ft"))["length"]["kind"] == "range"
