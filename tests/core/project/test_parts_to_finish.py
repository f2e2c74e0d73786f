"""The parts of a project as rows of How much finish: each once, no edging, none without a width.

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
    """The rows and answers of the last line."""
    entry = document["entries"][-1]
    assert entry["reckoner"] == "finish_amount"
    told = answered("entry", document, id=entry["id"])["reckoning"]
    return entry["values"]["faces"], {each["key"]: each["text"] for each in told["answers"]}


def test_parts_of_one_size_are_a_row_and_their_area_is_that_by_hand():
    """Four of 36 × 16 and two more by another line: 6 × 2 × 576 = 6912 in² = 48 ft²."""
    document = acts(
        begun(),
        line("Shelf", PIECE, length="36", width="16", count="4"),
        line("Top", PIECE, length="36", width="16", count="2"),
        ("finish_parts", {}),
    )
    rows, told = finish_of(document)
    assert rows == [{"length": "36 in", "width": "16 in", "count": "6"}]
    assert told["area"] == "48 ft²"


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
    rows, told = finish_of(said["document"])
    assert [row["length"] for row in rows] == ["36 in"]
    assert told["area"] == "8 ft²"
    assert said["document"]["log"][-1]["said"] == (
        "Listed 1 size of parts to finish, without Dowel and Front edge."
    )


def test_a_long_list_is_told_in_short_beside_its_line():
    document = changed(sample_case(), "finish_parts")
    entry = answered("view", document)["entries"][-1]
    assert entry["summary"].startswith("14 parts, ")
    few = acts(begun(), line("Shelf", PIECE, length="36", width="16"), ("finish_parts", {}))
    assert answered("view", few)["entries"][-1]["summary"].startswith("Parts (36″ long, 16″ wide")


def test_a_part_counts_once_whether_it_is_cut_or_not():
    document = acts(
        begun(),
        line("Shelf", PIECE, length="36", width="16", count="4"),
        ("cut", {"id": "1", "part": "piece", "by": 1}),
        ("finish_parts", {}),
    )
    assert finish_of(document)[0][0]["count"] == "4"


def test_the_sample_case_has_the_area_of_its_cut_list():
    """Its table of parts, added up apart in decimals: both faces of each."""
    document = changed(sample_case(), "finish_parts")
    table = answered("csv", sample_case(), what="parts")["text"]
    square = sum(
        float(row["Length in"]) * float(row["Width in"]) * int(row["Count"])
        for row in csv.DictReader(StringIO(table))
    )
    assert finish_of(document)[1]["area"] == f"{2 * square / 144:.1f} ft²"


def test_a_project_in_millimeters_is_listed_in_millimeters():
    document = acts(
        begun(),
        ("set", {"settings": {"unit": "mm", "display": "mm", "mark": "1 mm"}}),
        line("Shelf", PIECE, length="900", width="400.5"),
        ("finish_parts", {}),
    )
    rows, told = finish_of(document)
    assert rows == [{"length": "900 mm", "width": "400 1/2 mm", "count": "1"}]
    assert told["area"] == "0.72 m²"


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
            "The parts have 31 sizes, and the list holds 30.",
        ),
    ],
)
def test_what_can_not_be_listed_is_refused_with_a_remedy(lines, said):
    error = change(acts(begun(), *lines), "finish_parts")["error"]
    assert error["message"] == said
    assert error["remedy"].endswith(".")
