"""Every question answers in every setting: no choice of unit, mark or display breaks one."""

from itertools import count, islice

import pytest

import sawside

DESCRIBED = sawside.handle({"do": "describe"})
CHOICES = {
    field["key"]: [choice["value"] for choice in field["choices"]]
    for field in DESCRIBED["settings"]
    if field["key"] in ("unit", "mark", "display", "rounding")
}
each_question = pytest.mark.parametrize(
    "number", range(len(DESCRIBED["reckoners"])), ids=[q["key"] for q in DESCRIBED["reckoners"]]
)


def combinations(number):
    """Settings without end: every twelve hold each choice, paired otherwise for each question."""
    for turn in count():
        places = {
            "mark": turn,
            "unit": turn + number,
            "display": turn + turn // 4 + number // 5,
            "rounding": turn + turn // 3 + number // 20,
        }
        yield {key: choices[places[key] % len(choices)] for key, choices in CHOICES.items()}


def with_units(field, value):
    """An example's value with its unit written out, so that it means the same in every setting."""
    if field["kind"] == "length":
        return f"{value} in" if value[-1:].isdigit() else value
    if field["kind"] == "lengths":
        return [f"{each} in" if each[-1:].isdigit() else each for each in value]
    if field["kind"] == "rows":
        return [example(field, row) for row in value]
    return value


def example(declared, values):
    fields = {field["key"]: field for field in declared["fields"]}
    return {key: with_units(fields[key], value) for key, value in values.items()}


def reckon(question, values, settings):
    return sawside.handle(
        {"do": "reckon", "reckoner": question["key"], "values": values, "settings": settings}
    )


@each_question
def test_its_example_is_answered_in_settings_of_every_kind(number):
    question = DESCRIBED["reckoners"][number]
    values = example(question, question["example"])
    seen = {key: set() for key in CHOICES}
    for settings in islice(combinations(number), 12):
        said = reckon(question, values, settings)
        assert said["ok"], (settings, said)
        for key, value in settings.items():
            seen[key].add(value)
    assert seen == {key: set(values) for key, values in CHOICES.items()}


@each_question
def test_no_choice_of_a_field_breaks_it_in_any_setting(number):
    """A choice may lack what it needs; that is told, and is never a fault of the program."""
    question = DESCRIBED["reckoners"][number]
    values = example(question, question["example"])
    settings = combinations(number)
    for field in question["fields"]:
        for choice in field.get("choices", ())[:6]:
            said = reckon(question, values | {field["key"]: choice["value"]}, next(settings))
            assert said["ok"] or said["error"]["kind"] != "internal", said


def test_a_mark_in_millimeters_is_told_in_them_whatever_the_settings_show():
    values = {"length": "3 5/16 in", "division": "mm"}
    for display in CHOICES["display"]:
        said = reckon({"key": "tape_marks"}, values, {"mark": "1/16", "display": display})
        assert said["answers"][0]["text"] == said["answers"][0]["plain"] == "84 mm"
        assert said["answers"][0]["dropped_text"] == "0.138 mm heavy"
