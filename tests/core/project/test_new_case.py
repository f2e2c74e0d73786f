"""A case to fill in: its lines stand in order, linked by names, and wait for what is blank."""

import json
from pathlib import Path

import pytest
from projects import acts, answered, ask, begun, change, changed, entry, headlines, lasting, view

import sawside
from sawside.project.schema.cache import forget

MEASURED = {
    "widths": ["41 3/8", "41 5/16", "41 1/4"],
    "left_height": "90 1/4",
    "right_height": "90 1/8",
    "left_depth": "14 1/2",
    "above": "48",
}
"""Of our own alcove: three widths, two heights, its depth, and what stays open above."""

FILLED = [
    ("Space", {"values": MEASURED}),
    ("Plywood", {"text": "23/32"}),
    ("Frame thickness", {"text": "3/4"}),
    ("Carcass", {"own": {"fixed": "1", "dividers": "1"}}),
    ("Shelf spacing", {"own": {"shelf_count": "2"}}),
    ("Shelf strength", {"own": {"material": "plywood", "load": "records_12"}}),
    ("Stile width", {"text": "1 1/2"}),
    ("Face frame", {"own": {"middle_stiles": "1"}}),
    ("Doors", {"own": {"doors": "1"}}),
    ("Hinges", {"own": {"hinge": "2 1/2"}}),
    ("Molding", {"own": {"thickness": "3/4"}}),
]
"""What a person types from the top down; `own` stands beside the links."""


def new_case():
    return changed(begun(), "new_case")


def filled(document, name, own=None, **given):
    """The document with one line filled in, and what was answered."""
    kept = next(each for each in document["entries"] if each["name"] == name)
    if own is not None:
        given["values"] = kept["values"] | own
    return answered("change", document, act={"act": "correct", "id": kept["id"]} | given)


def filled_to(last):
    document = new_case()
    for name, given in FILLED:
        document = filled(document, name, **given)["document"]
        if name == last:
            return document
    raise AssertionError(last)


def states(document):
    """{name: its state, "" for one that is filled in}."""
    return {
        each["name"]: each["to_fill"]["state"] if each["to_fill"] else ""
        for each in view(document)["entries"]
    }


def test_every_line_of_a_new_case_is_to_be_filled_in_or_waits():
    assert states(new_case()) == {
        "Space": "fill",
        "Plywood": "fill",
        "Frame thickness": "fill",
        "Carcass": "waits",
        "Shelf spacing": "waits",
        "Shelf strength": "waits",
        "Stile width": "fill",
        "Face frame": "waits",
        "Frame dowels": "waits",
        "Doors": "waits",
        "Hinges": "waits",
        "Molding": "waits",
        "Tip-over": "waits",
    }


def test_what_is_missing_is_told_by_its_labels():
    space, carcass = entry(new_case(), "Space"), entry(new_case(), "Carcass")
    assert [each["label"] for each in space["to_fill"]["fields"]] == [
        "Widths",
        "Height at the left",
    ]
    assert carcass["error"]["message"].startswith("Waiting on Space")
    assert carcass["error"]["remedy"] == "Fill that in first."
    assert carcass["to_fill"]["waits_for"][0] == space["id"]


def test_filled_in_from_the_top_it_is_answered_to_the_last_line():
    document = new_case()
    for name, given in FILLED:
        assert states(document)[name] in ("fill", "check"), name
        said = filled(document, name, **given)
        assert said["follows"] == [], "what had no number has not changed"
        assert said["said"].startswith("Filled in"), said["said"]
        document = said["document"]
    assert set(states(document).values()) == {""}
    assert None not in headlines(document).values()


def test_it_comes_to_the_sizes_worked_by_hand():
    """The narrowest width less a scribe of 1/4 at each side (the default of Space) is the case;
    the frame's 3/4 comes off its depth. Worked by hand."""
    case = filled_to("Carcass")
    links = answered("entry", case, id=entry(case, "Carcass")["id"])["links"]
    told = {each["label"]: each["text"] for each in links}
    assert told["Outside width"] == "40 3/4″"
    assert told["Outside depth"] == "13 3/4″"


def test_what_a_case_weighs_is_that_of_its_panels_and_nothing_of_tip_over_is_left_to_fill_in():
    for settings in ({}, {"unit": "mm"}):
        case = filled_to("Face frame")
        if settings:
            case = changed(case, "set", settings=settings)
        tip = entry(case, "Tip-over")
        assert tip["ok"], tip["error"]
        assert tip["to_fill"] is None


def test_a_line_with_nothing_typed_but_its_links_is_to_be_checked():
    """Its answer stands on usual sizes, which nobody has looked at yet."""
    case = filled_to("Frame thickness")
    carcass = entry(case, "Carcass")
    assert carcass["ok"]
    assert carcass["to_fill"]["state"] == "check"
    assert [each["label"] for each in carcass["to_fill"]["fields"]] == ["Fixed shelves per bay"]
    assert states(filled(case, "Carcass", own={"fixed": "0"})["document"])["Carcass"] == ""


def test_a_line_that_takes_a_name_of_none_is_wrong_and_does_not_wait():
    case = new_case()
    gone = changed(case, "delete", id=entry(case, "Plywood")["id"])
    assert states(gone)["Carcass"] == ""
    assert not entry(gone, "Carcass")["ok"]
    assert states(gone)["Shelf strength"] == ""


def test_a_line_that_waits_for_a_wrong_one_does_not_wait_to_be_filled_in():
    case = new_case()
    case["entries"][1]["text"] = "23/"
    assert entry(case, "Carcass")["to_fill"] is None
    assert entry(case, "Plywood")["to_fill"] is None


def test_a_wrong_number_beside_a_blank_one_is_wrong():
    case = new_case()
    case["entries"][0]["values"] = {"left_height": "high"}
    assert entry(case, "Space")["to_fill"] is None


def test_what_was_typed_until_now_can_be_kept_and_is_still_to_be_filled_in():
    half = filled(new_case(), "Space", own={"left_height": "90 1/4"})["document"]
    assert half["entries"][0]["values"] == {"left_height": "90 1/4"}
    space = entry(half, "Space")["to_fill"]
    assert (space["state"], [each["label"] for each in space["fields"]]) == ("fill", ["Widths"])


def test_a_line_that_waits_keeps_what_is_typed_into_it():
    case = filled(new_case(), "Carcass", own={"fixed": "2"})["document"]
    assert states(case)["Carcass"] == "waits"


def test_what_is_filled_in_cannot_be_blanked_nor_a_blank_line_be_added():
    case = filled_to("Plywood")
    identity = entry(case, "Plywood")["id"]
    assert change(case, "correct", id=identity, text=" ")["error"]["kind"] == "missing"
    assert change(case, "correct", id="1", values={})["error"]["kind"] == "missing"
    assert change(case, "keep_line", reckoner="space", values={})["error"]["kind"] == "missing"


def test_a_wrong_text_is_refused_in_what_is_to_be_filled_in():
    case = new_case()
    assert change(case, "correct", id="2", text="23/0")["error"]["field"] == "text"
    values = {"widths": ["41"], "left_height": "0"}
    assert not change(case, "correct", id="1", values=values)["ok"]


def test_it_is_taken_back_as_one_and_put_in_again():
    before = begun()
    said = change(before, "new_case")
    back = answered("change", said["document"], act=said["undo"])
    assert lasting(back["document"]) == lasting(before)
    again = answered("change", back["document"], act=back["undo"])
    assert lasting(again["document"]) == lasting(said["document"])


def test_a_second_case_in_a_project_calls_only_itself():
    twice = changed(filled_to("Molding"), "new_case")
    names = {each["name"] for each in twice["entries"]}
    assert len(names) == len(twice["entries"])
    assert {"Space 2", "Carcass 2", "Tip-over 2"} < names
    told = {each["id"]: each["name"] for each in view(twice)["entries"]}
    for each in view(twice)["entries"]:
        assert {told[used].endswith(" 2") for used in each["uses"]} <= {each["name"].endswith(" 2")}


def test_a_number_is_added_where_only_one_name_is_taken():
    project = changed(begun(), "keep_reading", name="Plywood", text="3/4")
    names = [each["name"] for each in changed(project, "new_case")["entries"]]
    assert names[:3] == ["Plywood", "Space 2", "Plywood 2"]


def test_every_line_of_it_can_be_deleted():
    case = new_case()
    for each in case["entries"]:
        view(changed(case, "delete", id=each["id"]))


def test_it_is_backed_up_merged_and_written_as_tables_as_it_is():
    half = filled_to("Plywood")
    text = answered("backup", half)["text"]
    assert answered("restore", None, text=text)["document"] == half
    assert lasting(answered("merge", begun(), text=text)["document"])["entries"] == half["entries"]
    assert answered("merge", half, text=text)["undo"] is None
    for what in ("parts", "readings", "cuts"):
        answered("csv", half, what=what)


def test_its_table_of_readings_comes_back_without_a_change():
    half = filled_to("Plywood")
    text = answered("csv", half, what="readings")["text"]
    said = ask("take_csv", half, what="readings", text=text)
    assert said["error"]["kind"] == "missing", "there is nothing new in it"


def test_a_project_in_millimeters_gets_its_case_in_millimeters():
    metric = changed(begun(), "set", settings={"unit": "mm"})
    case = changed(metric, "new_case")
    assert {each["unit"] for each in case["entries"]} == {"mm"}


def test_nothing_that_is_remembered_changes_what_is_to_be_filled_in():
    case = new_case()
    for name, given in FILLED:
        case = filled(case, name, **given)["document"]
        remembered = view(case)
        forget()
        assert view(case) == remembered


ORDER = json.loads((Path(sawside.__file__).parent / "project/new_case.json").read_text("utf-8"))


@pytest.mark.parametrize("line", ORDER, ids=lambda line: line["name"])
def test_each_of_its_lines_is_of_a_question_and_links_to_what_stands_above_it(line):
    above = [each["name"] for each in ORDER[: ORDER.index(line)]]
    told = {each["key"]: each for each in sawside.handle({"do": "describe"})["reckoners"]}
    if "text" in line:
        assert line["text"] == ""
        return
    question = told[line["reckoner"]]
    fields = {each["key"]: each for each in question["fields"]}
    for key, text in line["values"].items():
        assert key in fields
        called = [part.split("]")[0] for part in text.split("[")[1:]]
        assert called
        assert {each.split(":")[0] for each in called} <= set(above)
        for each in called:
            name, _, label = each.partition(": ")
            if label:
                used = next(other for other in ORDER if other["name"] == name)
                labels = {each["label"] for each in told[used["reckoner"]]["answers"]}
                assert label in labels or label.rstrip("0123456789").rstrip() in labels


def test_a_reading_filled_in_has_no_earlier_text():
    assert "earlier" not in filled_to("Plywood")["entries"][1]


def test_a_line_with_a_number_of_its_own_is_filled_in_whatever_else_is_usual():
    project = acts(
        begun(),
        ("keep_reading", {"name": "Depth", "text": "12"}),
        (
            "keep_line",
            {
                "name": "Rail",
                "reckoner": "mitered_length",
                "values": {"known": "[Depth]", "width": "2 1/4"},
            },
        ),
    )
    assert states(project) == {"Depth": "", "Rail": ""}
