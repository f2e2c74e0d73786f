"""Moldings around a case and coped walls, kept while they were questions of their own, and pieces
of crown, kept before there were runs of it: what they answered then is answered now, under the
names and labels of then. Only a piece of crown from tip to tip, which was rounded up then, is told
as its edges are, and its table was mended so."""

import json
from fractions import Fraction
from pathlib import Path

import pytest
from projects import begun

import sawside
from sawside.lengths.show import Show
from sawside.project.schema.former_questions import line_of_today
from sawside.project.schema.former_questions.miters import MERGED
from sawside.reckoning.links import named
from sawside.reckoning.reckon import find
from sawside.reckoning.values import read_values
from sawside.settings.settings import read_settings

KEPT = Path(__file__).parent
LINES = [
    line
    for name in ("molding", "crown")
    for line in json.loads((KEPT / f"{name}.json").read_text())["lines"]
]
CLOSE = Fraction(1, 10**24)
SIZES = ("length", "width", "thickness", "long_side", "short_side")

each_line = pytest.mark.parametrize("kept", LINES, ids=lambda kept: kept["question"])


def brought_up(kept):
    """The line of today."""
    return line_of_today({"reckoner": kept["question"], "values": kept["values"]})


def answered(kept):
    """What is answered today."""
    line = brought_up(kept)
    message = {"do": "reckon", "reckoner": line["reckoner"], "values": line["values"]}
    return sawside.handle(message | {"settings": kept["settings"]})


def exact(text):
    """A recorded number: a fraction, or ≈ units of the 25th decimal."""
    return Fraction(int(text[2:]), 10**25) if text.startswith("≈") else Fraction(text)


@each_line
def test_every_name_stands_for_the_number_that_it_stood_for(kept):
    line = brought_up(kept)
    settings, reckoner = read_settings(kept["settings"]), find(line["reckoner"])
    form = read_values(reckoner, line["values"], settings)
    found = reckoner.compute(form.given, Show(settings, form.lengths(reckoner)))
    for label, number in kept["names"].items():
        value = named(reckoner, found, label.casefold()).value
        assert abs(value - exact(number)) <= CLOSE, label


@each_line
def test_the_same_pieces_are_cut_to_the_same_marks(kept):
    said = answered(kept)
    keys = line_of_today(
        {
            "reckoner": kept["question"],
            "values": kept["values"],
            "cut": {part["key"]: part for part in kept["parts"]},
        }
    )["cut"]
    assert list(keys) == [part["key"] for part in said["parts"]]
    for part in said["parts"]:
        before = keys[part["key"]]
        for size in SIZES:
            now = part.get(size)
            assert before[size] == (now and [now["text"], now["exact"]]), size
        ends = [part["ends"][side] for side in ("left", "right")]
        assert before["ends"] == [f"{end['cut']} {end['angle']}".strip() for end in ends]


@each_line
def test_the_marks_that_were_told_are_still_told(kept):
    told = [each["text"] for each in answered(kept)["answers"]]
    for label, text in kept["answers"].items():
        if not text.endswith("°"):  # a tenth of it was told then, a hundredth now
            assert text in told, label


@pytest.mark.parametrize("kept", LINES[::9], ids=lambda kept: kept["question"])
def test_a_project_of_before_opens_with_its_cut_pieces(kept):
    cut = {part["key"]: [{}] for part in kept["parts"][:1]}
    entry = {
        "id": "1",
        "kind": "line",
        "name": "Line",
        "reckoner": kept["question"],
        "values": kept["values"],
        "unit": kept["settings"].get("unit", "in"),
        "cut": cut,
    }
    old = {"schema": 5, "settings": kept["settings"], "entries": [entry], "next": 2}
    seen = sawside.handle({"do": "view", "document": begun() | old})
    assert seen["ok"], seen
    assert [entry["error"] for entry in seen["entries"]] == [None]
    assert sum(piece["cut"] for piece in seen["pieces"]) == len(cut)
    assert len(seen["pieces"]) == len(kept["parts"])


@pytest.mark.parametrize("key", sorted(MERGED))
@pytest.mark.parametrize("value", [None, 3, [], {}, "no such", [3], [{"length": []}]])
def test_whatever_stood_in_a_field_it_is_brought_up_to_be_checked(key, value):
    fields = ("around", "width", "walls", "layers", "left_side", "left_depth", "right_corner")
    for field in fields:
        line = line_of_today({"reckoner": key, "values": {field: value}})
        assert line["reckoner"] == MERGED[key].question
