"""The strip has every mark of the person's tape, and what a mark writes reads back as its place."""

from fractions import Fraction

import pytest

import sawside
from sawside.lengths.reading.reader import read


def strip(**settings):
    said = sawside.handle({"do": "strip", "settings": settings})
    assert said["ok"]
    return said


@pytest.mark.parametrize("division", [2, 4, 8, 16, 32, 64])
def test_each_mark_of_an_inch_writes_the_fraction_of_its_place(division):
    said = strip(mark=f"1/{division}")
    assert len(said["marks"]) == division + 1
    for number, mark in enumerate(said["marks"][:-1]):
        written = f"7{said['separator']}{mark['text']}" if mark["text"] else "7"
        assert read(written).value == 7 + Fraction(number, division)
        assert Fraction(mark["at"]) == Fraction(number, division)
    assert said["marks"][-1]["text"] is None


@pytest.mark.parametrize(("mark", "steps"), [("1 mm", 10), ("0.5 mm", 20)])
def test_each_mark_of_a_centimeter_writes_the_millimeters_after_the_tens(mark, steps):
    said = strip(unit="mm", mark=mark)
    for number, each in enumerate(said["marks"][:-1]):
        written = f"91{said['separator']}{each['text']}"
        assert read(written, "mm").value == (910 + Fraction(10 * number, steps)) * Fraction(5, 127)


def test_a_mark_is_told_in_words():
    assert strip()["marks"][10]["words"] == "five eighths"
