"""Every question declares itself so completely that the page needs nothing else."""

from string import Formatter

import pytest

import sawside
from sawside.reckoners import RECKONERS
from sawside.settings.clearances import CLEARANCES

DESCRIBED = sawside.handle({"do": "describe"})
FIELD_KINDS = {
    "length",
    "angle",
    "count",
    "number",
    "choice",
    "material",
    "moment",
    "lengths",
    "rows",
    "text",
}
ANSWER_KINDS = {"length", "lengths", "count", "angle", "weight", "text"}
each_question = pytest.mark.parametrize(
    "question", DESCRIBED["reckoners"], ids=lambda question: question["key"]
)


def test_the_questions_come_in_their_order():
    assert [each["key"] for each in DESCRIBED["reckoners"]] == list(RECKONERS)
    jobs = [each["key"] for each in DESCRIBED["jobs"]]
    orders = [(jobs.index(each.job), each.order) for each in RECKONERS.values()]
    assert orders == sorted(orders)


def test_each_question_is_named_as_its_file():
    for key, reckoner in RECKONERS.items():
        assert reckoner.compute.__module__.split(".")[-1] == key


@each_question
def test_a_question_says_what_it_answers_in_one_sentence(question):
    assert question["asks"].endswith("?")
    assert question["words"]
    assert question["title"]
    assert question["source"].endswith(".")


@each_question
def test_its_fields_are_complete(question):
    keys = [field["key"] for field in question["fields"]]
    assert len(set(keys)) == len(keys)
    for field in question["fields"]:
        assert field["kind"] in FIELD_KINDS
        assert field["label"]
        if "choices_from" in field:  # the page adds the rows of that setting
            assert field["choices_from"] in [each["key"] for each in DESCRIBED["settings"]]
            assert field["choices"] or field["may_be_blank"]
        if field.get("choices_from") == "tapes":
            assert field["kind"] == "choice"
        elif field["kind"] in ("choice", "material"):
            values = [choice["value"] for choice in field["choices"]]
            assert len(set(values)) == len(values) > 1
            assert field["default"] is None or field["default"] in values
        for shown in field["shown_when"]:
            other = next(each for each in question["fields"] if each["key"] == shown["field"])
            assert set(shown["is"]) <= {c["value"] for c in other["choices"]}
        if field["may_be_blank"]:
            assert field["blank_means"].endswith(".")
            assert field["default"] is None
    assert set(question["solve_one_of"]) <= {
        field["key"] for field in question["fields"] if field["may_be_blank"]
    }


@each_question
def test_its_example_works_and_gives_its_answers_in_their_order(question):
    """Some answers are there only in some cases; the first one always is."""
    said = sawside.handle(
        {"do": "reckon", "reckoner": question["key"], "values": question["example"]}
    )
    assert said["ok"], said
    found = [(each["key"], each["label"], each["kind"]) for each in said["answers"]]
    declared = [(each["key"], each["label"], each["kind"]) for each in question["answers"]]
    assert found == [each for each in declared if each in found]
    assert found[0] == declared[0]
    assert {kind for _, _, kind in found} <= ANSWER_KINDS
    assert said["working"]
    assert said["source"] == question["source"]
    assert bool(said["parts"]) == question["makes_parts"]


@each_question
def test_a_bad_text_in_any_field_names_that_field(question):
    for field in question["fields"]:
        if field["shown_when"]:
            continue
        bad = {"lengths": ["3//4"], "rows": [{field.get("fields", [{}])[0].get("key"): "3//4"}]}
        values = question["example"] | {field["key"]: bad.get(field["kind"], "3//4")}
        said = sawside.handle({"do": "reckon", "reckoner": question["key"], "values": values})
        assert not said["ok"]
        assert said["error"]["field"] == field["key"]
        assert said["error"]["kind"] in ("unreadable", "unknown")
        assert said["error"]["remedy"].endswith(".")


def test_settings_are_declared_as_choices_whose_first_is_the_default():
    keys = [field["key"] for field in DESCRIBED["settings"]]
    handled = ("part_length", "part_width")
    own = ["kerf", "first_cut", "rounds", *handled, *CLEARANCES, "tapes", "materials"]
    assert keys == ["unit", "mark", "rounding", "display", *own]
    chosen = [field for field in DESCRIBED["settings"] if field["kind"] == "choice"]
    assert len(chosen) == 6
    for field in chosen:
        assert field["default"] == field["choices"][0]["value"]


@each_question
def test_what_is_basic_is_asked_and_the_verdict_names_answers(question):
    reckoner = RECKONERS[question["key"]]
    keys = {answer.key for answer in reckoner.answers}
    assert set(reckoner.basic) <= {field.key for field in reckoner.fields}
    assert {name for _, name, _, _ in Formatter().parse(reckoner.verdict) if name} <= keys
