"""The parts of a project in How much finish, by their lines: no edging, none without a width.

Checked against areas added up by hand, and by the cut list as the project's table has it.
"""

import csv
from io import StringIO

import pytest
from projects import acts, answered, begun, change, changed

from sawside.project.sample_case import sample_case

PIECE = "piece_by_hand"


def line(name, reckoner, **values):
    return ("keep_line", {"name": name, "reckoner": reckoner, "values": values})


def finish_of(document):
    """What is filled in of the last line, and its answers."""
    entry = document["entries"][-1]
    assert entry["reckoner"] == "finish_amount"
    told = answered("entry", document, id=entry["id"])["reckoning"]
    return entry["values"], {each["key"]: each["text"] for each in told["answers"]}


def test_the_parts_of_each_line_are_a_row_and_their_area_is_that_by_hand():
    """Four of 36 × 16 and two more by another line: 6 × 2 × 576 = 6912 in² = 48 ft²."""
    document = acts(
        begun(),
        line("Shelf", PIECE, length="36", width="16", count="4"),
        line("Top", PIECE, length="36", width="16", count="2"),
        ("finish_parts", {}),
    )
    values, told = finish_of(document)
    assert values == {
        "parts_by": "area",
        "areas_us": [{"area": "[Shelf: Area of parts]"}, {"area": "[Top: Area of parts]"}],
    }
    assert told["area"] == "48 ft²"


def test_a_part_that_is_corrected_changes_the_area_to_finish_and_is_told_so():
    """By hand: 4 × 2 × 576 is 32 ft²; five of them 40."""
    shelf = {"length": "36", "width": "16", "count": "4"}
    document = acts(begun(), line("Shelf", PIECE, **shelf), ("finish_parts", {}))
    assert finish_of(document)[1]["area"] == "32 ft²"
    more = {"id": "1", "values": shelf | {"count": "5"}}
    (follow,) = change(document, "correct", **more)["follows"]
    assert follow["name"] == "How much finish"
    assert finish_of(changed(document, "correct", **more))[1]["area"] == "40 ft²"


def test_one_face_of_a_line_and_an_area_that_is_typed_beside_it_add_up():
    """By hand: one face of 576 in² is 4 ft², both faces of a door of 2 1/2 typed are 5."""
    areas = [{"area": "[Back: Area of parts]", "sides": "one"}, {"area": "2 1/2"}]
    document = acts(
        begun(),
        line("Back", PIECE, length="36", width="16"),
        line("Oil", "finish_amount", parts_by="area", areas_us=areas),
    )
    assert finish_of(document)[1]["area"] == "9 ft²"
    working = answered("entry", document, id="2")["reckoning"]["working"]
    assert {"text": "All faces, ft²: 4 + 5 = 9"} in working


def test_an_area_is_offered_by_name_and_told_in_its_unit_beside_its_field():
    document = acts(begun(), line("Back", PIECE, length="36", width="16"))
    links = answered("entry", document, id="1")["links"]
    assert links[-1] == {
        "label": "Area of parts",
        "kind": "area",
        "insert": "[Back: Area of parts]",
        "text": "4 ft²",
    }
    values = {"parts_by": "area", "areas_us": [{"area": "2 × [Back: Area of parts] + 1"}]}
    said = answered("reckon", document, reckoner="finish_amount", values=values)
    (told,) = said["names"]["areas_us"]
    assert told["stands_for"] == "4 ft²"
    assert {each["key"]: each["text"] for each in said["answers"]}["area"] == "18 ft²"


def test_an_area_is_refused_where_a_length_or_a_number_is_asked_for():
    document = acts(begun(), line("Back", PIECE, length="36", width="16"))
    for field in ("length", "count"):
        values = {"length": "3", "width": "3"} | {field: "[Back: Area of parts]"}
        error = change(document, "keep_line", name="N", reckoner=PIECE, values=values)["error"]
        assert error["field"] == field
        assert "That works out to an area, but this needs" in error["message"]


def test_a_line_without_faces_has_no_area():
    document = acts(begun(), line("Dowel", PIECE, length="40"))
    values = {"parts_by": "area", "areas_us": [{"area": "[Dowel: Area of parts]"}]}
    error = change(document, "keep_line", name="N", reckoner="finish_amount", values=values)[
        "error"
    ]
    assert error["message"] == "Dowel: “Area of parts” isn’t one of its answers."


@pytest.mark.parametrize(
    ("coats", "taken"),
    [
        ({"finish": "blend", "coats": "2"}, {"finish": "blend", "coats": "2"}),
        ({"finish": "paint"}, {"finish": "paint"}),
        ({"finish": "wax"}, {}),
        ({"finish": ["paint"]}, {}),
    ],
)
def test_the_finish_is_that_of_the_coats_of_the_project(coats, taken):
    """Wax is sold by weight: it has no cans here. What is no finish is of a file from elsewhere."""
    document = acts(
        begun(),
        line("Shelf", PIECE, length="36", width="16"),
        line("First", "coats", finish="shellac"),
        line("Second", "coats", finish="tung"),
    )
    *others, last = document["entries"]
    document = document | {"entries": [*others, last | {"values": coats}]}
    values, _ = finish_of(changed(document, "finish_parts"))
    assert {key: values[key] for key in ("finish", "coats") if key in values} == taken


def test_edging_and_what_has_no_width_are_no_faces_and_the_log_names_them():
    said = change(
        acts(
            begun(),
            line("Shelf", PIECE, length="36", width="16"),
            line("Front edge", "edge_strip", panel="36", width="3/4"),
            line("Dowel", PIECE, length="40"),
        ),
        "finish_parts",
    )
    values, told = finish_of(said["document"])
    assert [row["area"] for row in values["areas_us"]] == ["[Shelf: Area of parts]"]
    assert told["area"] == "8 ft²"
    assert said["document"]["log"][-1]["said"] == (
        "Took both faces of the parts of 1 line, without Dowel and Front edge."
    )


def test_the_area_of_a_case_is_that_which_it_tells_itself_without_its_edging_strips():
    values = {"width": "36", "height": "30", "depth": "12", "thickness": "3/4", "fixed": "1"}
    values |= {"banding": "all", "band": "1/4"}
    document = acts(begun(), line("Carcass", "carcass", **values), ("finish_parts", {}))
    case = answered("entry", document, id="1")["reckoning"]
    assert any(part["name"].startswith("Edging") for part in case["parts"])
    told = {each["key"]: each["text"] for each in case["answers"]}
    assert finish_of(document)[1]["area"] == told["finish"]


def test_the_areas_are_told_in_short_beside_their_line():
    few = acts(begun(), line("Shelf", PIECE, length="36", width="16"), ("finish_parts", {}))
    summary = answered("view", few)["entries"][-1]["summary"]
    assert summary == "Areas (The area of parts of Shelf), wiping varnish, parts by area"


def test_a_part_counts_once_whether_it_is_cut_or_not():
    document = acts(
        begun(),
        line("Shelf", PIECE, length="36", width="16", count="4"),
        ("cut", {"id": "1", "part": "piece", "by": 1}),
        ("finish_parts", {}),
    )
    assert finish_of(document)[1]["area"] == "32 ft²"


def test_the_sample_case_has_the_area_of_its_cut_list():
    """Its table of parts, added up apart in decimals: both faces of each."""
    document = changed(sample_case(), "finish_parts")
    table = answered("csv", sample_case(), what="parts")["text"]
    square = sum(
        float(row["Length in"]) * float(row["Width in"]) * int(row["Count"])
        for row in csv.DictReader(StringIO(table))
    )
    assert finish_of(document)[1]["area"] == f"{2 * square / 144:.1f} ft²"


def test_a_project_in_millimeters_is_listed_in_square_meters():
    document = acts(
        begun(),
        ("set", {"settings": {"unit": "mm", "display": "mm", "mark": "1 mm"}}),
        line("Shelf", PIECE, length="900", width="400.5"),
        ("finish_parts", {}),
    )
    values, told = finish_of(document)
    assert values == {"parts_by": "area", "areas_metric": [{"area": "[Shelf: Area of parts]"}]}
    assert told["area"] == "0.72 m²"
    (link,) = answered("entry", document, id="1")["links"][-1:]
    assert link["text"] == "0.36 m²"


def test_a_list_that_somebody_typed_stays_and_the_new_one_is_undone():
    document = acts(
        begun(),
        line("Shelf", PIECE, length="36", width="16"),
        line("Oil", "finish_amount", faces=[{"length": "10", "width": "10"}]),
    )
    said = change(document, "finish_parts")
    assert said["document"]["entries"][:-1] == document["entries"]
    undone = change(said["document"], **said["undo"])["document"]
    assert undone["entries"] == document["entries"]


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        ([], "No part of this project has a width."),
        ([line("Dowel", PIECE, length="40")], "No part of this project has a width."),
        (
            [line(f"P{n}", PIECE, length=str(20 + n), width="4") for n in range(31)],
            "31 lines have parts, and the list holds 30.",
        ),
    ],
)
def test_what_can_not_be_listed_is_refused_with_a_remedy(lines, said):
    error = change(acts(begun(), *lines), "finish_parts")["error"]
    assert error["message"] == said
    assert error["remedy"].endswith(".")
