"""A frame or gap kept before its question became part of another comes to the numbers of before.

Source: `frames.json` holds what the questions of before answered, recorded from them as they
were: each answer under its label, what the line's name and each of its labels stood for, its parts.
"""

import json
from pathlib import Path

import pytest
from projects import answered, ask

RECORDED = json.loads((Path(__file__).parent / "frames.json").read_text(encoding="utf-8"))
LINES = [
    pytest.param(line, id=f"{line['question']}-{at}") for at, line in enumerate(RECORDED["lines"])
]
each_line = pytest.mark.parametrize("line", LINES)


def document(line):
    """A project of schema 5 with the line in it."""
    kept = {"id": "1", "kind": "line", "name": "Line", "reckoner": line["question"]}
    return {
        "schema": 5,
        "name": "Record cabinet",
        "settings": {"unit": line["unit"]},
        "next": 2,
        "entries": [kept | {"unit": line["unit"], "values": line["values"]}],
    }


def text_and_exact(value):
    return [value.get("text", ""), value.get("exact")]


@each_line
def test_the_same_numbers_are_under_the_same_labels(line):
    said = answered("entry", document(line), id="1")
    told = {
        answer["label"]: [
            *text_and_exact(answer),
            *([item["label"], *text_and_exact(item)] for item in answer.get("items", ())),
        ]
        for answer in said["reckoning"]["answers"]
    }
    assert said["entry"]["headline"]["text"] == line["headline"]
    assert told == {label: values for label, *values in line["answers"]}


@each_line
def test_the_same_names_stand_for_the_same_numbers(line):
    for text, number in line["names"].items():
        said = ask("read", document(line), text=text)
        value = said["value"] if said["ok"] else {"text": said["error"]["kind"]}
        assert (value.get("exact") or value["text"]) == number, text


@each_line
def test_the_same_pieces_are_cut(line):
    parts = answered("entry", document(line), id="1")["reckoning"]["parts"]
    sizes = ("length", "long_side", "short_side")
    assert line.get("parts", []) == [
        [
            *(part[key] for key in ("key", "name", "count")),
            *(part[size]["text"] for size in sizes),
            *(part["ends"][side]["angle"] for side in ("left", "right")),
        ]
        for part in parts
    ]
