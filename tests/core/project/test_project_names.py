"""What a text calls by a name is found, refused and renamed as the person means it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from projects import acts, answered, ask, begun, change, changed, entry, headlines, linked


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


def test_what_each_name_in_a_text_stands_for_is_told_beside_how_the_text_was_read():
    document = linked()
    said = answered("read", document, text="[Top rail] + case width - [top rail: Short side]")
    assert said["names"] == [
        {"name": "Top rail", "stands_for": "37 5/16″"},
        {"name": "case width", "stands_for": "37 5/16″"},
        {"name": "top rail: Short side", "stands_for": "32 13/16″"},
    ]
    values = {"stick": "96", "piece": "[Top rail]", "kerf": "1/8"}
    asked = answered("reckon", document, reckoner="how_many_fit", values=values)
    assert asked["names"] == {"piece": [{"name": "Top rail", "stands_for": "37 5/16″"}]}


def test_a_name_in_a_list_is_told_with_the_row_and_the_field_that_it_stands_in():
    widths = ["40", "[Top rail] + 1", "Top rail"]
    values = {"widths": widths, "left_height": "90", "right_height": "[Case width]"}
    said = answered("reckon", linked(), reckoner="space", values=values)["names"]
    assert said["widths"] == [
        {"name": "Top rail", "stands_for": "37 5/16″", "rows": [in_row(1), in_row(2)]}
    ]
    assert "rows" not in said["right_height"][0]
    pieces = [{"length": "20", "count": "2"}, {"length": "[Top rail]", "count": "1"}]
    said = answered("reckon", linked(), reckoner="sticks", values={"pieces": pieces})["names"]
    assert said["pieces"][0]["rows"] == [in_row(1, "length")]


def in_row(row, part=None):
    return {"row": row, "part": part}


@pytest.mark.parametrize("text", ["37 5/16", "3 × 4 in", "[Top rail: Left saw setting] + 1"])
def test_nothing_is_told_of_names_where_there_are_none_or_where_one_is_an_angle(text):
    assert "names" not in ask("read", linked(), text=text)


def test_an_item_of_a_list_of_answers_is_called_by_its_number():
    values = {"height": "34", "shelf_count": "2", "thickness": "3/4"}
    document = acts(
        begun(),
        ("keep_line", {"name": "Shelves", "reckoner": "shelf_layout", "values": values}),
        ("keep_reading", {"name": "Second", "text": "1"}),
    )
    links = answered("entry", document, id="1")["links"]
    lists = [each for each in links if each["label"].endswith(" 2")]
    document = changed(document, "correct", id="2", text=lists[0]["insert"])
    assert headlines(document)["Second"] == lists[0]["text"].removeprefix("≈ ")


def test_every_link_that_is_offered_can_be_used():
    document = linked()
    for identity in "1234":
        for link in answered("entry", document, id=identity)["links"]:
            text = link["insert"]
            if link["text"].endswith("°"):
                continue
            after = changed(document, "keep_reading", name="Test", text=text)
            told = " in²" if link["kind"] == "area" else link["text"]
            assert headlines(after)["Test"].endswith(told), link


def test_an_angle_goes_into_an_angle_and_into_nothing_else():
    half = "[Top rail: Left saw setting] ÷ 2"
    values = {
        "known": "30",
        "width": "2",
        "left_end": "other",
        "left_angle": half,
        "right_end": "square",
    }
    document = changed(linked(), "keep_line", name="Half", reckoner="mitered_length", values=values)
    setting = answered("entry", document, id="5")["reckoning"]["answers"]
    assert next(a["text"] for a in setting if a["key"] == "left_setting") == "22.5°"
    refused = change(document, "keep_reading", name="No", text="[Top rail: Left saw setting] + 1")
    assert "is an angle" in refused["error"]["message"]
    refused = change(document, "correct", id="5", values=values | {"left_angle": "Case width"})
    assert "isn’t an angle" in refused["error"]["message"]


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("[Shelf] + 1", "There’s no Shelf"),
        ("[Top rail: Weight]", "isn’t one of its answers"),
        ("[Top rail: Left end at the saw]", "is in words, not a number"),
        ("[Top rail: At the back of the rabbet]", "isn’t one of its answers now"),
        ("[Alcove width: Length]", "A reading has no"),
    ],
)
def test_a_name_that_stands_for_no_number_is_refused_at_its_place(text, words):
    refused = change(linked(), "keep_reading", name="Test", text=text)["error"]
    assert words in refused["message"]
    assert (refused["field"], refused["at"]) == ("text", 0)


def test_a_new_name_is_followed_by_the_texts_that_use_it():
    document = changed(linked(), "rename", id="2", name="Case, outside (width)")
    texts = [each.get("text") or each["values"]["known"] for each in document["entries"]]
    assert texts[2] == "[Case, outside (width)]"
    document = changed(document, "rename", id="3", name="Rail")
    assert document["entries"][3]["values"]["known"] == "[Rail: Short side] + 2 × 3/8"
    document = changed(document, "rename", id="1", name="Alcove")
    assert document["entries"][1]["text"] == "[Alcove] - 2 × 1/8"
    assert headlines(document)["Panel"] == "33 9/16″"


def test_a_name_that_no_text_could_hold_is_refused():
    text = " + ".join(["[Side]"] * 20)
    document = acts(
        begun(),
        ("keep_reading", {"name": "Side", "text": "1"}),
        ("keep_reading", {"name": "Sum", "text": text}),
    )
    long = change(document, "rename", id="1", name="A name that is rather long")
    assert (long["error"]["kind"], long["error"]["field"]) == ("range", "name")
    brackets = change(document, "rename", id="1", name="Side [left]")
    assert brackets["error"]["field"] == "name"
    brackets = change(document, "keep_reading", name="[a]", text="1")
    assert brackets["error"]["field"] == "name"
    unnamed = changed(document, "keep_reading", name="", text="[Side] + 1")
    assert unnamed["entries"][-1]["name"] == "Side + 1"


def test_names_inside_rows_are_followed_and_told_of_their_field():
    """Two layers around a case; the second takes its thickness from the case as well."""
    values = {
        "walls": [{"length": "12"}, {"length": "[Case width]"}, {"length": "12"}],
        "layers": [{"projection": "3/4"}, {"projection": "[Case width] ÷ 50"}],
    }
    document = changed(linked(), "keep_line", name="Crown", reckoner="molding_run", values=values)
    before = headlines(document)["Crown"]
    document = changed(document, "rename", id="2", name="Case")
    kept = document["entries"][-1]["values"]
    assert kept["walls"][1] == {"length": "[Case]"}
    assert kept["layers"][1] == {"projection": "[Case] ÷ 50"}
    assert headlines(document)["Crown"] == before
    longer = changed(document, "correct", id="1", text="40")
    assert headlines(longer)["Crown"] != before
    gone = changed(document, "delete", id="2")
    assert entry(gone, "Crown")["error"]["field"] == "walls"


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
        (
            "keep_line",
            {
                "name": "Rail",
                "reckoner": "mitered_length",
                "values": {"known": "900 mm", "known_face": "inside", "width": "60 mm"},
            },
        ),
    )
    assert entry(document, "Rail")["uses"] == []


def test_a_numbered_name_that_is_gone_is_not_taken_for_the_one_without_a_number():
    document = acts(
        begun(),
        ("keep_reading", {"name": "Side", "text": "3"}),
        ("keep_reading", {"name": "Side", "text": "4"}),
        ("correct", {"id": "1", "text": "Side 2 + 1"}),
        ("delete", {"id": "2"}),
    )
    assert entry(document, "Side")["error"]["message"] == "There’s no Side 2 in this project."


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
    assert error["message"] == "There’s no Side gap in this project."
    read = ask("read", document, text="Side x 2 of 3")["error"]
    assert read["at"] == 0
