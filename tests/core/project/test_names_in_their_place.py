"""A name that stands for a list, or for a length where a number is due, is refused in a sentence.

The sums are worked by hand: an alcove of 37 1/2 and boards of 3/4 are 50 boards side by side.
"""

import pytest
from asking import errors
from projects import acts, ask, begun, change, changed

import sawside

QUESTIONS = sawside.handle({"do": "describe"})["reckoners"]
LISTS = [each for each in QUESTIONS if each["answers"][0]["kind"] == "lengths"]


def framed(question):
    kept = {"name": "Frame", "reckoner": question["key"], "values": question["example"]}
    return changed(begun(), "keep_line", **kept)


def test_there_are_questions_that_answer_with_a_list():
    assert len(LISTS) > 5


@pytest.mark.parametrize("question", LISTS, ids=[each["key"] for each in LISTS])
def test_a_name_of_a_list_is_refused_with_the_way_to_one_of_it(question):
    document, label = framed(question), question["answers"][0]["label"]
    for text in ("[Frame] + 1", f"[Frame: {label}] + 1"):
        error = ask("read", document, text=text)["error"]
        assert (error["kind"], error["field"]) == ("unknown", "text")
        assert "is a list" in error["message"]
        kept = change(document, "keep_reading", name="More", text=text)["error"]
        assert (kept["kind"], kept["field"]) == ("unknown", "text")
        assert "Frame: " in kept["message"]
        assert f": {label} 1" in error["remedy"]
        assert kept["remedy"] == error["remedy"]
    assert ask("read", document, text=f"[Frame: {label} 1] + 1")["ok"]


def cabinet():
    return acts(
        begun(),
        ("keep_reading", {"name": "Alcove", "text": "37 1/2"}),
        ("keep_reading", {"name": "Ply", "text": "3/4"}),
        ("keep_reading", {"name": "Face", "text": "[Alcove] × [Alcove]"}),
    )


def shelves(**values):
    known = {"height": "60", "thickness": "3/4", "shelf_count": "4"}
    message = {"reckoner": "shelf_layout", "values": known | values}
    return ask("reckon", cabinet(), **message)


@pytest.mark.parametrize(
    "text",
    [
        "[Alcove] + 1",
        "1 + [Alcove]",
        "1 − [Alcove]",
        "1 ÷ [Alcove]",
        "[Alcove] × 2",
        "[Alcove]",
        "2 of [Alcove]",
        "([Alcove] + 1)",
        "[Face] + 1",
        "1 + [Face]",
        "[Alcove] + [Face]",
        "[Face] ÷ [Alcove] + 1",
        "Alcove + 1",
    ],
)
def test_a_length_in_a_field_of_whole_numbers_is_refused_in_a_sentence(text):
    error = errors(shelves(shelf_count=text))["shelf_count"]
    assert error["kind"] == "unreadable"
    assert error["message"].endswith(".")
    assert error["remedy"].endswith(".")


def test_what_is_added_to_a_length_there_may_still_become_a_number():
    error = errors(shelves(shelf_count="1 + [Alcove]"))["shelf_count"]
    assert error["unfinished"]
    assert error["message"] == "I can’t add a number and a length."
    assert error["remedy"] == "Leave the length out, or divide it by another length."


def test_a_length_by_a_length_is_a_number():
    said = shelves(shelf_count="[Alcove] ÷ [Ply] − 46")
    assert said["echoes"]["shelf_count"] == "[Alcove] ÷ [Ply] − 46"
    assert said["ok"]


@pytest.mark.parametrize("text", ["[] + 1", "1 + []", "[ ]", "[]lcove", "([])", "[]", "[][]"])
def test_empty_brackets_are_refused_whatever_is_there(text):
    for document in (begun(), cabinet()):
        error = ask("read", document, text=text)["error"]
        assert (error["kind"], error["at"]) == ("unreadable", text.index("["))
        kept = change(document, "keep_reading", name="More", text=text)["error"]
        assert kept["kind"] in ("unreadable", "missing")


def test_empty_brackets_beside_a_name_are_called_so():
    error = ask("read", cabinet(), text="[Alcove] − [ ]")["error"]
    assert (error["message"], error["at"]) == ("The brackets are empty.", 11)


def test_numbers_are_taken_as_their_text_beside_names_too():
    values = {"known": "[Alcove]", "width": 2, "left_end": "45", "right_end": "45"}
    said = ask("reckon", cabinet(), reckoner="mitered_length", values=values)
    assert said["answers"][0]["text"] == "41 1/2″"


@pytest.mark.parametrize("value", [1e308, 3, 0, True, {}, {"a": "[Alcove]"}, [["[Alcove]"]], [3]])
def test_a_value_that_is_no_text_is_read_or_refused_beside_names_as_without(value):
    message = {"do": "reckon", "reckoner": "mitered_length"}
    values = {"known": value, "width": "2 1/4", "left_end": "45", "right_end": "45"}
    alone = sawside.handle(message | {"values": values})
    assert sawside.handle(message | {"values": values, "document": cabinet()}) == alone
    assert alone["ok"] or alone["error"]["kind"] in ("message", "unreadable", "range", "missing")
