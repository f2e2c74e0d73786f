"""What a woodworker types finds the questions that help, and nothing where none does.

The page's own search runs in node, on the questions as the core describes them.
"""

import json
import os
import re
import subprocess

import pytest

import sawside
from tests.core.tables import rows
from web.build import environment
from web.build.environment import ROOT

PHRASES = rows("phrases_searched.csv")
DESCRIBED = sawside.handle({"do": "describe"})
SCRIPT = """
import { readFileSync } from "node:fs";
import { searchOf } from "./places/list/search.js";
const { described, typed } = JSON.parse(readFileSync(0, "utf-8"));
const search = searchOf(described);
console.log(JSON.stringify(typed.map((each) => search(each).map(({ key }) => key))));
"""


def searched(typed, described=DESCRIBED):
    """The keys of what the page finds for each of some texts, in its order."""
    done = subprocess.run(
        ["node", "--input-type=module", "--eval", SCRIPT],
        input=json.dumps({"described": described, "typed": typed}),
        cwd=ROOT / "web",
        env={**os.environ, **environment.ready(tests=True).variables},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    return dict(zip(typed, json.loads(done.stdout), strict=True))


@pytest.fixture(scope="module")
def found():
    """What every phrase of the table finds."""
    return searched([row["phrase"] for row in PHRASES])


@pytest.mark.parametrize("row", PHRASES, ids=lambda row: row["phrase"])
def test_a_phrase_finds_what_helps_and_nothing_else(row, found):
    keys = found[row["phrase"]]
    if row["first"] == "nothing":
        assert keys == []
        return
    first, absent = row["first"].split(), row["absent"].split()
    assert sorted(keys[: len(first)]) == sorted(first)
    if absent == ["*"]:
        assert len(keys) == len(first)
    assert set(keys).isdisjoint(absent)


QUESTIONS = [each for each in DESCRIBED["reckoners"] if each["offered"]]


def test_what_is_not_offered_is_found_by_none_of_its_own_words():
    hidden = [each for each in DESCRIBED["reckoners"] if not each["offered"]]
    assert [each["key"] for each in hidden] == ["piece_by_hand"]
    found = searched([word for each in hidden for word in (each["title"], *each["words"])])
    assert not [keys for keys in found.values() if {each["key"] for each in hidden} & set(keys)]


def test_a_question_is_the_first_that_its_own_title_finds():
    found = searched([each["title"] for each in QUESTIONS])
    wrong = {each["title"]: found[each["title"]][:1] for each in QUESTIONS}
    assert wrong == {each["title"]: [each["key"]] for each in QUESTIONS}


def test_a_question_is_found_by_all_its_own_words():
    found = searched([word for each in QUESTIONS for word in each["words"]])
    lost = [
        (each["key"], word)
        for each in QUESTIONS
        for word in each["words"]
        if each["key"] not in found[word]
    ]
    assert lost == []


def slips(word):
    """A word with one letter wrong, missing, added and two swapped, behind its first letters."""
    at = len(word) // 2
    yield f"{word[:at]}q{word[at + 1 :]}"
    yield word[:at] + word[at + 1 :]
    yield f"{word[:at]}q{word[at:]}"
    yield word[:at] + word[at + 1] + word[at] + word[at + 2 :]


LONG = [
    (each["key"], word)
    for each in QUESTIONS
    for word in re.findall(r"[a-z]{7,}", each["title"].lower())
]


@pytest.mark.parametrize("change", [0, 1, 2, 3], ids=["wrong", "missing", "added", "swapped"])
def test_one_slip_in_a_long_word_of_its_title_finds_a_question(change):
    slipped = {word: list(slips(word))[change] for _, word in LONG}
    found = searched(list(slipped.values()))
    assert [pair for pair in LONG if pair[0] not in found[slipped[pair[1]]]] == []


def test_a_question_is_found_while_a_word_of_its_title_is_typed():
    begun = {word: [word[:end] for end in range(4, len(word))] for _, word in LONG}
    found = searched([part for parts in begun.values() for part in parts])
    lost = [(key, part) for key, word in LONG for part in begun[word] if key not in found[part]]
    assert lost == []


def test_what_sawside_does_not_do_is_no_slip_of_what_it_does():
    elsewhere = DESCRIBED["search"]["elsewhere"]
    assert {word: keys for word, keys in searched(elsewhere).items() if keys} == {}


def test_the_questions_of_an_older_core_are_found_by_what_they_declare():
    older = {key: value for key, value in DESCRIBED.items() if key != "search"}
    assert searched(["crown"], older)["crown"][0] == "crown"
