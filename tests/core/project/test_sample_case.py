"""The case to start from: all of it answered, and one reading of the space reaches the last piece.

Its numbers are our own. That sums agree is worked from the answers themselves, in rationals.
"""

from fractions import Fraction

from projects import changed, entry, view

import sawside
from sawside.project.schema.document import SCHEMA

SAMPLE = sawside.handle({"do": "describe"})["case"]


def test_it_is_a_project_of_today_that_is_answered_to_the_last_line():
    assert SAMPLE["schema"] == SCHEMA
    shown = view(SAMPLE)
    assert [each["name"] for each in shown["entries"] if not each["ok"]] == []
    kinds = [each["kind"] for each in SAMPLE["entries"]]
    assert kinds == sorted(kinds, key=("reading", "line").index)
    assert len(set(kinds)) == 2


def parts(document):
    """{name of a line: {name of a part: (count, exact length)}}."""
    return {
        each["name"]: {
            part["name"]: (part["count"], Fraction(part["length"]["exact"]))
            for part in each.get("parts", ())
        }
        for each in view(document)["entries"]
    }


def test_every_line_below_the_space_takes_something_of_a_line_above_it():
    lines = [each for each in SAMPLE["entries"] if each["kind"] == "line"]
    for number, line in enumerate(lines):
        above = [each["name"] for each in SAMPLE["entries"][: len(SAMPLE["entries"]) - len(lines)]]
        above += [each["name"] for each in lines[:number]]
        assert any(f"[{name}" in str(line["values"]) for name in above), line["name"]


def test_a_corrected_reading_of_the_space_reaches_the_last_piece():
    """The narrowest reading a quarter less: case, shelf and rail parts follow by what they must."""
    before = parts(SAMPLE)
    reading = entry(SAMPLE, "Alcove width, middle")
    narrow = changed(SAMPLE, "correct", id=reading["id"], text="37 1/4", unit="in")
    after = parts(narrow)
    grown = Fraction("37 1/4".replace(" ", "+").split("+")[0]) + Fraction(1, 4)
    assert grown - Fraction("37.5") == Fraction(-1, 4)
    moved = {
        (line, part)
        for line, its in before.items()
        for part in its
        if after[line][part] != its[part]
    }
    assert ("Carcass", "Bottom") in moved
    assert any(line == "Face frame" for line, _ in moved)
    for line, part in moved:
        count, length = before[line][part]
        assert (count, length - Fraction(1, 4)) == after[line][part] or length > after[line][part][1]
