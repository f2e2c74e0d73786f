"""Entries use one another by name: worked out in order, told what they wait for, never in a loop.

Lengths by hand: 37 9/16 - 1/4 = 37 5/16; a 45° miter takes the stock's width at each end, so the
short side of the rail is 37 5/16 - 4 1/2 = 32 13/16 (common practice, no source).
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from projects import (
    acts,
    answered,
    ask,
    begun,
    change,
    changed,
    headlines,
    linked,
    view,
)


def entry(document, name):
    return next(each for each in view(document)["entries"] if each["name"] == name)


def test_a_correction_of_a_reading_reaches_all_that_depends_on_it():
    document = linked()
    assert headlines(document) == {
        "Alcove width": "37 9/16″", "Case width": "37 5/16″", "Top rail": "37 5/16″",
        "Panel": "33 9/16″",
    }  # fmt: skip
    document = changed(document, "correct", id="1", text="37 7/16")
    assert headlines(document) == {
        "Alcove width": "37 7/16″", "Case width": "37 3/16″", "Top rail": "37 3/16″",
        "Panel": "33 7/16″",
    }  # fmt: skip


def test_an_entry_says_what_it_uses_and_what_uses_it():
    rail = entry(linked(), "Top rail")
    assert (rail["uses"], rail["used_by"], rail["insert"]) == (["2"], ["4"], "[Top rail]")
    assert entry(linked(), "Case width")["title"] == "Sum"
    assert entry(linked(), "Alcove width")["title"] == "Reading"


def test_exact_numbers_are_linked_and_never_their_marks():
    document = acts(
        begun(),
        ("keep_reading", {"name": "Third", "text": "10 ÷ 3"}),
        ("keep_reading", {"name": "Whole", "text": "3 × Third"}),
    )
    assert headlines(document) == {"Third": "3 5/16″", "Whole": "10″"}


def test_a_number_that_no_fraction_tells_goes_on_as_closely_as_no_mark_can_show():
    diagonal = {"width": "1", "height": "1"}
    document = acts(
        begun(),
        ("keep_line", {"name": "Across", "reckoner": "diagonal", "values": diagonal}),
        ("keep_reading", {"name": "Square", "text": "Across × Across"}),
    )
    square = entry(document, "Square")["headline"]["decimals"]
    assert square in ("2", "2.000000…", "1.999999…")


@pytest.mark.parametrize(
    ("value", "inches"),
    [
        ("[Top rail]", "37 5/16″"),
        ("Top rail", "37 5/16″"),
        ("[top rail: short side]", "32 13/16″"),
        ("[Top rail: Left end adds] × 10", "22 1/2″"),
        ("2 × [Case width] - Top rail", "37 5/16″"),
    ],
)
def test_an_answer_is_called_by_its_line_and_its_label(value, inches):
    document = changed(linked(), "keep_reading", name="Test", text=value)
    assert headlines(document)["Test"] == inches


def test_an_item_of_a_list_of_answers_is_called_by_its_number():
    values = {"height": "34", "shelf_count": "2", "thickness": "3/4"}
    document = acts(
        begun(),
        ("keep_line", {"name": "Shelves", "reckoner": "equal_shelf_spacing", "values": values}),
        ("keep_reading", {"name": "Second", "text": "1"}),
    )
    links = answered("entry", document, id="1")["links"]
    lists = [each for each in links if each["label"].endswith(" 2")]
    document = changed(document, "correct", id="2", text=lists[0]["insert"])
    assert headlines(document)["Second"] == lists[0]["text"]


def test_every_link_that_is_offered_can_be_used():
    document = linked()
    for identity in "1234":
        for link in answered("entry", document, id=identity)["links"]:
            text = link["insert"]
            if link["text"].endswith("°"):
                continue
            after = changed(document, "keep_reading", name="Test", text=text)
            assert headlines(after)["Test"] == link["text"], link


def test_an_angle_goes_into_an_angle_and_into_nothing_else():
    half = "[Top rail: Left saw setting] ÷ 2"
    values = {"known": "30", "width": "2", "left_end": "other", "left_angle": half,
              "right_end": "square"}  # fmt: skip
    document = changed(linked(), "keep_line", name="Half", reckoner="mitered_length", values=values)
    setting = answered("entry", document, id="5")["reckoning"]["answers"]
    assert next(a["text"] for a in setting if a["key"] == "left_setting") == "22.5°"
    refused = change(document, "keep_reading", name="No", text="[Top rail: Left saw setting] + 1")
    assert "is an angle" in refused["error"]["message"]
    refused = change(document, "correct", id="5", values=values | {"left_angle": "Case width"})
    assert "no angle" in refused["error"]["message"]


def test_what_is_missing_is_named_and_what_comes_after_says_what_it_waits_for():
    document = changed(linked(), "delete", id="1")
    case, rail, panel = (entry(document, name) for name in ("Case width", "Top rail", "Panel"))
    assert case["error"]["message"] == "There is no Alcove width in this project."
    assert case["text"] == "Alcove width - 2 × 1/8"
    assert rail["error"]["message"] == "Waits for Case width."
    assert rail["waits"] == [{"id": "2", "name": "Case width"}]
    assert panel["waits"] == [{"id": "3", "name": "Top rail"}]
    assert (rail["error"]["kind"], rail["error"]["field"]) == ("missing", "known")
    again = changed(document, "keep_reading", name="Alcove width", text="37 9/16")
    assert headlines(again)["Panel"] == "33 9/16″"


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("[Shelf] + 1", "There is no Shelf"),
        ("[Top rail: Weight]", "is no answer"),
        ("[Top rail: Left end at the saw]", "told in words"),
        ("[Top rail: At the back of the rabbet]", "not among its answers now"),
        ("[Alcove width: Length]", "A reading has no"),
    ],
)
def test_a_name_that_stands_for_no_number_is_refused_at_its_place(text, words):
    refused = change(linked(), "keep_reading", name="Test", text=text)["error"]
    assert words in refused["message"]
    assert (refused["field"], refused["at"]) == ("text", 0)


def test_a_circle_is_refused_with_its_chain_named():
    refused = change(linked(), "correct", id="1", text="[Panel] + 4")["error"]
    assert refused["kind"] == "conflict"
    assert refused["message"] == (
        "Alcove width → Case width → Top rail → Panel → Alcove width goes round in a circle."
    )
    assert refused["field"] == "text"
    refused = change(linked(), "correct", id="1", text="Alcove width + 4")["error"]
    assert refused["message"] == "Alcove width → Alcove width goes round in a circle."


def test_a_circle_in_a_document_from_outside_is_told_and_stops_nothing_else():
    document = linked()
    document["entries"][0]["text"] = "[Panel] + 4"
    document = changed(document, "keep_reading", name="Depth", text="11")
    seen = {each["name"]: each for each in view(document)["entries"]}
    assert "goes round in a circle" in seen["Alcove width"]["error"]["message"]
    assert seen["Depth"]["headline"]["text"] == "11″"
    mended = changed(document, "correct", id="1", text="37 9/16")
    assert headlines(mended)["Panel"] == "33 9/16″"


def test_a_new_name_is_followed_by_the_texts_that_use_it():
    document = changed(linked(), "rename", id="2", name="Case, outside (width)")
    texts = [each.get("text") or each["values"]["known"] for each in document["entries"]]
    assert texts[2] == "[Case, outside (width)]"
    document = changed(document, "rename", id="3", name="Rail")
    assert document["entries"][3]["values"]["known"] == "[Rail: Short side] + 2 × 3/8"
    document = changed(document, "rename", id="1", name="Alcove")
    assert document["entries"][1]["text"] == "[Alcove] - 2 × 1/8"
    assert headlines(document)["Panel"] == "33 9/16″"


def test_a_longer_name_is_never_taken_for_a_shorter_one():
    document = acts(
        begun(),
        ("keep_reading", {"name": "Side", "text": "3/4"}),
        ("keep_reading", {"name": "Side gap", "text": "1/8"}),
        ("keep_reading", {"name": "Both", "text": "side gap + Side + [ SIDE ]"}),
        ("rename", {"id": "1", "name": "End"}),
    )
    assert document["entries"][2]["text"] == "side gap + [End] + [End]"
    assert headlines(document)["Both"] == "1 5/8″"


def test_a_unit_or_a_choice_is_no_use_of_an_entry_with_that_name():
    document = acts(
        begun(),
        ("keep_reading", {"name": "mm", "text": "1"}),
        ("keep_reading", {"name": "inside", "text": "1"}),
        ("keep_line", {"name": "Rail", "reckoner": "mitered_length",
                       "values": {"known": "900 mm", "known_face": "inside", "width": "60 mm"}}),
    )  # fmt: skip
    assert entry(document, "Rail")["uses"] == []


def test_a_field_that_is_not_shown_makes_nothing_wait():
    values = {"known": "30", "width": "2", "left_end": "45", "left_angle": "[Nothing]"}
    document = changed(begun(), "keep_line", name="a", reckoner="mitered_length", values=values)
    assert entry(document, "a")["waits"] == []


def test_a_question_not_yet_kept_is_answered_with_the_names_of_the_project():
    values = {"known": "[Case width] - 1/16", "width": "2"}
    said = answered("reckon", linked(), reckoner="mitered_length", values=values)
    assert said["echoes"]["known"] == "[Case width] − 1/16″"
    assert said["answers"][0]["text"] == "41 1/4″"
    read = answered("read", linked(), text="Top rail ÷ 2")
    assert read["value"]["exact"] == "597/32"
    waits = ask("reckon", linked(), reckoner="mitered_length", id="2",
                values=values | {"known": "[Top rail]"})  # fmt: skip
    assert waits["error"]["field"] == "known"
    assert "would go round in a circle" in waits["error"]["message"]
    both = ask("reckon", linked(), reckoner="mitered_length",
               values={"known": "Alc", "width": "Lost + 1"})  # fmt: skip
    errors = [both["error"], *both["more"]]
    assert [(each["field"], each["message"]) for each in errors] == [
        ("known", "There is no Alc in this project."),
        ("width", "There is no Lost in this project."),
    ]
    assert [each.get("unfinished", False) for each in errors] == [True, False]


def test_a_reading_is_corrected_by_the_tape_that_it_was_read_with():
    tape = {"name": "Old tape", "block": "1", "block_reads": "1 1/16"}
    document = acts(
        begun(),
        ("set", {"settings": {"tapes": [tape]}}),
        ("keep_reading", {"name": "Width", "text": "37 9/16", "tape": "Old tape"}),
        ("keep_reading", {"name": "Half", "text": "Width ÷ 2"}),
    )
    assert headlines(document) == {"Width": "37 1/2″", "Half": "18 3/4″"}
    assert entry(document, "Width")["summary"] == "37 9/16″ by Old tape, corrected"
    lost = changed(document, "set", settings={})
    assert "no tape" in entry(lost, "Width")["error"]["message"]
    assert entry(lost, "Half")["waits"] == [{"id": "1", "name": "Width"}]


def test_what_is_told_of_a_reading_is_kept_and_its_earlier_texts_as_well():
    told = {"where": "at the floor", "side": "light", "fineness": "1/32", "photo": "p1"}
    document = changed(begun(), "keep_reading", name="Width", text="37 9/16",
                       when="2026-11-24T18:05", **told)  # fmt: skip
    document = changed(document, "correct", id="1", text="37 7/16", when="2026-11-25T09:30")
    seen = entry(document, "Width")
    assert {key: seen[key] for key in told} == told
    assert seen["when"] == "2026-11-25T09:30"
    assert seen["earlier"] == [{"text": "37 9/16", "when": "2026-11-24T18:05"}]
    assert view(document)["log"][0] == {
        "when": "2026-11-25T09:30", "said": "Corrected Width: 37 9/16 → 37 7/16.",
    }  # fmt: skip
    cleared = changed(document, "describe", id="1", where="", side="heavy")
    assert "where" not in cleared["entries"][0]
    assert cleared["entries"][0]["side"] == "heavy"


def test_a_numbered_name_that_is_gone_is_not_taken_for_the_one_without_a_number():
    document = acts(
        begun(),
        ("keep_reading", {"name": "Side", "text": "3"}),
        ("keep_reading", {"name": "Side", "text": "4"}),
        ("correct", {"id": "1", "text": "Side 2 + 1"}),
        ("delete", {"id": "2"}),
    )
    assert entry(document, "Side")["error"]["message"] == "There is no Side 2 in this project."


@given(st.text(alphabet="[]ab S:ide+-÷(3x/mof", max_size=24))
def test_no_text_makes_a_project_fail(text):
    document = acts(
        begun(),
        ("keep_reading", {"name": "Side", "text": "3/4"}),
        ("keep_reading", {"name": "a", "text": "1/8"}),
    )
    said = change(document, "keep_reading", name="Test", text=text)
    assert said["ok"] or said["error"]["kind"] in ("missing", "unreadable", "conflict", "unknown")


def test_a_name_that_is_gone_is_never_taken_for_a_shorter_one():
    document = acts(
        begun(),
        ("keep_reading", {"name": "Side gap", "text": "1/8"}),
        ("keep_reading", {"name": "Side", "text": "Side gap × 6"}),
        ("delete", {"id": "1"}),
    )
    error = entry(document, "Side")["error"]
    assert error["message"] == "There is no Side gap in this project."
    read = ask("read", document, text="Side x 2 of 3")["error"]
    assert read["at"] == 0
