"""What the page draws a form from: the plain case, fields asked for once, pictures of choices."""

import pytest

import sawside

DESCRIBED = sawside.handle({"do": "describe"})
QUESTIONS = {each["key"]: each for each in DESCRIBED["reckoners"]}
each_question = pytest.mark.parametrize("question", QUESTIONS.values(), ids=list(QUESTIONS))


def fields_of(key):
    """The fields of a question by their keys."""
    return {field["key"]: field for field in QUESTIONS[key]["fields"]}


@each_question
def test_the_fields_of_the_plain_case_are_enough_for_an_answer(question):
    fields = {field["key"]: field for field in question["fields"]}
    asked = {key for key, each in fields.items() if each["basic"] or each["kind"] == "choice"}
    values = {key: value for key, value in question["example"].items() if key in asked}
    said = sawside.handle({"do": "reckon", "reckoner": question["key"], "values": values})
    assert said["ok"]


def test_what_hangs_on_a_folded_choice_folds_with_it():
    fields = fields_of("piece_by_hand")
    assert not fields["left_end"]["basic"]
    assert not fields["left_angle"]["basic"]
    assert fields_of("mitered_length")["left_angle"]["basic"]


def test_both_ends_are_called_so_while_they_are_asked_for_once():
    fields = fields_of("mitered_length")
    labels = {key: fields[key]["twin"]["label"] for key in fields if "twin" in fields[key]}
    assert labels == {
        "left_end": "Both ends",
        "left_angle": "Both ends angle",
        "left_tilt": "Both ends bevel",
        "left_corner": "Corner at both ends",
        "left_neighbor": "Width of the piece at both ends",
    }
    assert fields_of("edge_strip")["left_chamfer"]["twin"]["label"] == "Chamfer"
    dado = fields_of("shelf_length")["left_depth"]["twin"]
    assert (dado["key"], dado["label"], dado["apart"]) == (
        "right_depth",
        "Dado depth",
        "Different dadoes",
    )


@each_question
def test_twins_are_alike_in_all_but_their_side(question):
    fields = {field["key"]: field for field in question["fields"]}
    for field in fields.values():
        if "twin" in field:
            other = fields[field["twin"]["key"]]
            same = ("kind", "default", "least", "most", "may_be_blank", "basic")
            assert [field[each] for each in same] == [other[each] for each in same]


@each_question
def test_the_picture_of_a_choice_has_words_and_stays_in_its_box(question):
    for field in question["fields"]:
        pictured = [each for each in field.get("choices", ()) if "picture" in each]
        for choice in pictured:
            picture = choice["picture"]
            left, top, right, bottom = picture["box"]
            assert picture["words"].endswith(".")
            for shape in picture["shapes"]:
                points = shape.get("points") or [shape[k] for k in ("from", "to") if k in shape]
                assert all(left <= x <= right and top <= y <= bottom for x, y in points)
