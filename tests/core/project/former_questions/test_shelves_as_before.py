"""What the questions about shelves answered before some became one: `shelves.json`.

Each was recorded with the question of its own name, as a line of a document. Lines kept then are
of schema 5, and have to come to the same numbers, pieces and names.
"""

import json
from pathlib import Path

import pytest
from projects import answered, ask

from sawside.project.schema.former_questions.shelves import MERGED

RECORDED = json.loads(Path(__file__).with_name("shelves.json").read_text("utf-8"))
CASES = [
    pytest.param(key, case, id=f"{key} {number}")
    for key, cases in RECORDED["questions"].items()
    for number, case in enumerate(cases, 1)
]


def kept(key, case):
    """A project of schema 5 with the line of a case."""
    line = {"id": "1", "kind": "line", "name": "Case", "reckoner": key}
    return {
        "schema": 5,
        "name": "Record cabinet",
        "settings": {"unit": case["unit"]},
        "next": 2,
        "entries": [line | {"unit": case["unit"], "values": case["values"]}],
    }


def numbers(answer):
    """An answer as it was recorded: each number exactly and as it was told, or only its text."""
    if answer["kind"] == "lengths":
        return [numbers(each) for each in answer["items"]]
    return [answer["exact"], answer["text"]] if "exact" in answer else answer["text"]


def read(document, text):
    """What a text comes to in a project, exactly where it can be; or why it can't be read."""
    said = ask("read", document, text=text, settings=document["settings"])
    if not said["ok"]:
        return said["error"]["message"]
    return said["value"].get("exact") or said["value"]["text"]


@pytest.mark.parametrize(("key", "case"), CASES)
def test_a_line_that_was_kept_comes_to_the_same_by_every_name(key, case):
    document = kept(key, case)
    said = answered("entry", document, id="1")
    if "refused" in case:
        assert said["entry"]["error"]["kind"] == case["refused"][0]
        return
    told = {answer["label"]: numbers(answer) for answer in said["reckoning"]["answers"]}
    recorded = {label: each for label, each in case["answers"].items() if each}  # [] tells nothing
    assert recorded.items() <= told.items()
    assert said["reckoning"]["answers"][0]["label"] == case["main"]
    assert said["reckoning"]["parts"] == case["parts"]
    assert {text: read(document, text) for text in case["named"]} == case["named"]


def test_every_question_that_was_merged_was_recorded_a_dozen_times():
    assert RECORDED["questions"].keys() == MERGED.keys()
    assert all(len(cases) >= 12 for cases in RECORDED["questions"].values())
