"""A drawn stretch of tape holds the mark, and its words find it by counting."""

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sawside.lengths.marks import GRIDS, to_mark
from sawside.lengths.reading.reader import read
from sawside.lengths.tape import stretch

_PARTS = """
one-half 1/2 | one-quarter 1/4 | three-quarters 3/4
one-eighth 1/8 | three-eighths 3/8 | five-eighths 5/8 | seven-eighths 7/8
one-sixteenth 1/16 | three-sixteenths 3/16 | five-sixteenths 5/16 | seven-sixteenths 7/16
nine-sixteenths 9/16 | eleven-sixteenths 11/16 | thirteen-sixteenths 13/16
fifteen-sixteenths 15/16
"""
PARTS = dict(cell.split() for line in _PARTS.split("\n") for cell in line.split("|") if cell)
DIVISIONS = {
    name: 2**power
    for power, name in enumerate(
        "halves quarters eighths sixteenths thirty-seconds sixty-fourths".split(), 1
    )
}
DIVISIONS |= {name.removesuffix("s"): number for name, number in DIVISIONS.items()} | {"half": 2}
COUNTED = re.compile(r"(\d+) (\S+) (past|short of) (.*)")


def found(words):
    """The place that a helper finds who follows the words, counting on the tape."""
    words = words.removeprefix("on ")
    count = step = 0
    if counted := COUNTED.fullmatch(words):
        number, division, way, words = counted.groups()
        assert (number == "1") == (not division.endswith("s"))
        count, step = int(number) * (1 if way == "past" else -1), Fraction(1, DIVISIONS[division])
    part, _, whole = words.replace(" past ", " after ").partition(" after ")
    if part.startswith("the "):
        return Fraction(PARTS[part.removeprefix("the ")]) + int(whole or 0) + count * step
    return int(part) + count * step


@given(
    st.fractions(min_value=0, max_value=300, max_denominator=640),
    st.sampled_from([grid for grid in GRIDS.values() if grid.division]),
)
def test_who_counts_as_the_words_say_finds_the_mark(length, grid):
    rounded = to_mark(length, grid)
    assert found(stretch(rounded)["words"]) == rounded.mark


@given(
    st.fractions(min_value=0, max_value=5000, max_denominator=1000),
    st.sampled_from(list(GRIDS.values())),
)
def test_the_mark_and_the_true_place_lie_on_the_stretch(length, grid):
    tape = stretch(to_mark(length, grid))
    assert tape["from"] <= tape["at"] <= tape["to"]
    assert tape["from"] - 1 <= tape["true_at"] <= tape["to"] + 1
    assert tape["to"] - tape["from"] == (50 if tape["unit"] == "mm" else 2)
    places = [tick["at"] for tick in tape["ticks"]]
    assert places == sorted(places)
    assert (places[0], places[-1]) == (tape["from"], tape["to"])


@pytest.mark.parametrize(
    ("text", "mark", "words"),
    [
        ("36 1/8", "1/16", "2 sixteenths past 36"),
        ("7 11/16", "1/32", "2 thirty-seconds past the five-eighths after 7"),
        ("36", "1/16", "on 36"),
        ("36 3/4", "1/16", "on the three-quarters past 36"),
        ("11/16", "1/16", "1 sixteenth short of the three-quarters"),
        ("918 mm", "1 mm", "2 millimeters short of 920"),
        ("920 mm", "1 mm", "on 920"),
        ("917.5 mm", "0.5 mm", "halfway between 917 and 918"),
        ("36.13", ".01 in", "between 36 1/8 and 36 3/16"),
    ],
)
def test_the_words_are_those_of_a_helper_with_a_tape(text, mark, words):
    assert stretch(to_mark(read(text).value, GRIDS[mark]))["words"] == words


def test_there_is_no_tape_below_zero():
    assert stretch(to_mark(Fraction(-1), GRIDS["1/16"])) is None


def test_whole_inches_are_numbered():
    labels = [tick["label"] for tick in stretch(to_mark(Fraction(36), GRIDS["1/16"]))["ticks"]]
    assert [label for label in labels if label] == ["35", "36", "37"]
