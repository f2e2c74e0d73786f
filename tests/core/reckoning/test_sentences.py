"""What was filled in is told in a sentence, as across the shop (no source: how one talks)."""

import pytest

import sawside
from sawside.project.sample_case import sample_case
from sawside.reckoners.fields import Field, choice, count, length, material, rows
from sawside.reckoning.values import read_values
from sawside.settings.settings import read_settings
from tests.core.asking import ask

ENDS = {"square": "Square", "45": "45° miter", "other": "Other angle"}


def said(*fields, **typed):
    """The sentence of a question that asks for these fields."""

    class Declared:
        solve_one_of = ()

    Declared.fields = fields
    return read_values(Declared, typed, read_settings({})).summary


def end(side, **more):
    return choice(
        f"{side}_end", f"{side.capitalize()} end", ENDS, in_short=f"{{}} {side} end", **more
    )


def test_a_rail_is_told_by_its_stock_and_its_ends():
    told = said(
        length("known", "Measured length"),
        length("width", "Stock width"),
        end("left", default="45"),
        end("right", default="45"),
        known="31 5/8",
        width="2 1/4",
    )
    assert told == "31 5/8″ measured, 2 1/4″ stock, 45° miter both ends"


@pytest.mark.parametrize(
    ("left", "right", "told"),
    [
        ("square", "square", "Square both ends"),
        ("square", "45", "Square left end, 45° miter right end"),
    ],
)
def test_ends_are_told_once_only_where_they_are_alike(left, right, told):
    assert said(end("left"), end("right"), left_end=left, right_end=right) == told


def test_what_is_alike_on_both_sides_is_told_once():
    fields = [
        length(f"{side}_dado", f"{side.capitalize()} dado depth") for side in ("left", "right")
    ]
    fields += [length(f"{side}_scribe", f"To scribe at the {side}") for side in ("left", "right")]
    told = said(*fields, left_dado="1/4", right_dado="1/4", left_scribe="1/8", right_scribe="1/8")
    assert told == "1/4″ dado depth both sides, 1/8″ to scribe at both sides"


def test_a_default_that_nobody_typed_is_left_out():
    fields = [length("span", "Span"), length("thickness", "Thickness", default='3/4"')]
    assert said(*fields, span="31 5/8") == "31 5/8″ span"
    assert said(*fields, span="31 5/8", thickness="1") == "31 5/8″ span, 1″ thick"


def test_where_nobody_typed_anything_the_defaults_are_told():
    assert said(material("wood", "Wood", default="maple_red")) == "Red maple"


def test_a_choice_that_only_opens_a_field_gives_way_to_it():
    fields = [end("left"), length("cut", "Left end cut", shown_when=("left_end", ("other",)))]
    assert said(*fields, left_end="other", cut="3") == "3″ left end cut"


def test_counts_rows_and_labels_that_lead_to_their_number_read_as_one_says_them():
    shelves = count("shelves", "Shelves")
    assert said(shelves, shelves="1") == "1 shelf"
    assert said(shelves, shelves="3") == "3 shelves"
    assert said(length("top", "No holes above"), top="38") == "No holes above 38″"
    wall = [length("long", "Length")]
    walls = rows("walls", "Walls, left to right", wall, row_label="Wall", most_rows=4)
    typed = [{"long": "14 7/8"}, {"long": "9"}]
    assert said(walls, walls=typed) == "Walls (14 7/8″ long; 9″ long)"
    assert said(Field("text", "told", "Left end"), told="rounded over") == "Rounded over"


def test_a_name_of_the_project_stands_in_the_sentence_as_it_is_called():
    begun = {"do": "change", "document": None, "act": {"act": "begin", "name": "Record cabinet"}}
    document = sawside.handle(begun)["document"]
    for act in (
        {"act": "keep_reading", "name": "Alcove width", "text": "37 9/16", "unit": "in"},
        {
            "act": "keep_line",
            "name": "Rail",
            "reckoner": "mitered_length",
            "values": {"known": "[Alcove width] − 1/4", "width": "2"},
        },
    ):
        document = sawside.handle({"do": "change", "document": document, "act": act})["document"]
    told = sawside.handle({"do": "view", "document": document})["entries"][1]["summary"]
    assert told == "Measured length is Alcove width − 1/4″, 2″ stock, 45° miter both ends"


def test_an_answer_of_another_line_stands_in_the_sentence_as_one_says_it():
    document = sample_case()
    told = {
        each["name"]: each["summary"]
        for each in sawside.handle({"do": "view", "document": document})["entries"]
    }
    assert told["Shelf spacing"].startswith(
        "Height is the inside height of Carcass, 1 shelf, shelf thickness is Plywood, "
    )
    assert "1 fixed shelf per bay" in told["Carcass"]
    assert "depth is the case depth of Space − Frame thickness" in told["Carcass"]


@pytest.mark.parametrize(
    ("many", "told"), [("1", "1 fixed shelf per bay"), ("2", "2 fixed shelves per bay")]
)
def test_one_of_several_words_is_told_as_one(many, told):
    assert said(count("fixed", "Fixed shelves per bay"), fixed=many) == told


def test_every_question_says_its_example_without_a_list_of_labels():
    for question in sawside.handle({"do": "describe"})["reckoners"]:
        told = ask(question["key"], **question["example"])["summary"]
        assert told, question["key"]
        labels = [field["label"] for field in question["fields"]]
        assert not [label for label in labels if f"{label}: " in told], question["key"]
