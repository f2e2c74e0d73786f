"""A line kept before its question became part of another one comes to the numbers of before.

Source: the tables beside this file hold what the questions of before answered, recorded from them
as they were: each answer under its label, and what the line's name and each label stood for. Two
that were wrong were mended there: where to mark a length that is laid out from a line of the tape,
and a push where the verdict says to measure again.
"""

import json
from fractions import Fraction
from functools import cache
from pathlib import Path

import pytest
from projects import answered, ask

from sawside.project.schema.former_questions import miters, tape, wood

RECORDED = Path(__file__).parent
_MOLDINGS = {"wrap", "coped_corner"}
"""Theirs are in `test_molding_as_before.py`."""
MERGED = {"tape": tape.MERGED, "wood": wood.MERGED, "frames": set(miters.MERGED) - _MOLDINGS}
SUBJECTS = tuple(MERGED)


@cache
def recorded(subject):
    return json.loads((RECORDED / f"{subject}.json").read_text(encoding="utf-8"))


LINES = [
    pytest.param(subject, line, id=f"{line['question']}-{at}")
    for subject in SUBJECTS
    for at, line in enumerate(recorded(subject)["lines"])
]


def document(subject, line):
    """A project of schema 5 with the line in it."""
    kept = {"id": "1", "kind": "line", "name": "Line", "reckoner": line["question"]}
    return {
        "schema": 5,
        "name": "Record cabinet",
        "settings": {"unit": line["unit"], "tapes": recorded(subject)["tapes"]},
        "next": 2,
        "entries": [kept | {"unit": line["unit"], "values": line["values"]}],
    }


def text_and_exact(value):
    return [value.get("text", ""), value.get("exact")]


def under_labels(answers):
    """By its label what is told of each answer, and of the items of a list."""
    return {
        answer["label"]: [
            *text_and_exact(answer),
            *(text_and_exact(item) for item in answer.get("items", ())),
        ]
        for answer in answers
    }


def is_same_angle(now, before):
    """A tenth of a degree was told then, a hundredth is now; what is exact is the same."""
    (text, exact), (as_then, exact_then) = now, before
    if not (text.endswith("°") and as_then.endswith("°")):
        return False
    apart = abs(Fraction(text.strip("≈ °")) - Fraction(as_then.strip("≈ °")))
    return exact == exact_then and apart <= Fraction(11, 200)


@pytest.mark.parametrize(("subject", "line"), LINES)
def test_the_same_numbers_are_under_the_same_labels(subject, line):
    said = answered("entry", document(subject, line), id="1")
    told = under_labels(said["reckoning"]["answers"])
    assert said["entry"]["headline"]["text"] == line["headline"]
    for label, *before in line["answers"]:
        now = told.get(label)
        assert now == before or is_same_angle(now, before), label


@pytest.mark.parametrize(("subject", "line"), LINES)
def test_the_same_names_stand_for_the_same_numbers(subject, line):
    kept = document(subject, line)
    said = {text: ask("read", kept, text=text) for text in line["names"]}
    assert {text: worth(each) for text, each in said.items()} == line["names"]


def worth(said):
    """What a name stands for, or the kind of its refusal."""
    if not said["ok"]:
        return said["error"]["kind"]
    return said["value"].get("exact") or said["value"]["text"]


@pytest.mark.parametrize(("subject", "line"), [each for each in LINES if "parts" in each.values[1]])
def test_the_same_pieces_are_cut(subject, line):
    parts = answered("entry", document(subject, line), id="1")["reckoning"]["parts"]
    sizes = ("length", "long_side", "short_side")
    assert line["parts"] == [
        [
            *(part[key] for key in ("key", "name", "count")),
            *(part[size]["text"] for size in sizes),
            *(part["ends"][side]["angle"] for side in ("left", "right")),
        ]
        for part in parts
    ]


@pytest.mark.parametrize("subject", SUBJECTS)
def test_each_question_of_before_was_recorded_a_dozen_times(subject):
    asked = [line["question"] for line in recorded(subject)["lines"]]
    assert set(MERGED[subject]) <= set(asked)
    assert all(asked.count(key) >= 12 for key in set(asked))
