"""Wood on hand goes out as a table and comes back as it was; an edited one changes its line."""

import csv
import io

import pytest
from projects import acts, answered, ask, begun, changed, view

BOARD = {
    "form": "board",
    "material": "cherry",
    "thickness": "13/16",
    "width": "6 3/8",
    "length": "85 1/2",
    "count": "2",
    "bad": "0 to 1 1/2, 40 to 44",
    "note": "left rack, top",
}
STICK = {"form": "stick", "length": "61", "stick_width": "2 1/4"}


def project(*rows):
    line = {"name": "Rack", "reckoner": "wood_on_hand", "values": {"wood": list(rows)}}
    return acts(begun(), ("keep_line", line))


def table(document):
    """The text of the table, and its rows by the names of the columns."""
    text = answered("csv", document, what="stock")["text"]
    return text, [*csv.DictReader(io.StringIO(text, newline=""))]


def taken(document, text):
    return answered("take_csv", document, what="stock", text=text, when="2026-11-25")


def refused(document, text):
    return ask("take_csv", document, what="stock", text=text)["error"]


def wood(document, at=0):
    return document["entries"][at]["values"]["wood"]


def test_wood_goes_out_as_it_was_typed_and_comes_back_into_an_empty_project():
    text, rows = table(project(BOARD, STICK))
    assert rows[0]["Bad stretches"] == "0 to 1 1/2, 40 to 44"
    assert (rows[1]["What"], rows[1]["Width"], rows[1]["Unit"]) == ("stick", "2 1/4", "in")
    again = taken(begun(), text)["document"]
    assert (again["entries"][0]["name"], wood(again)) == ("Rack", [BOARD, STICK])
    assert table(again)[0] == text


def test_a_table_of_ones_own_changes_nothing():
    document = project(BOARD, STICK | {"count": ""})
    assert refused(document, table(document)[0])["kind"] == "missing"


def test_an_edited_table_changes_its_line_and_is_undone():
    document = project(BOARD, STICK)
    edited = taken(document, table(document)[0].replace("85 1/2", "60"))
    assert wood(edited["document"])[0]["length"] == "60"
    assert edited["said"] == "Imported 1 row of stock."
    back = answered("change", edited["document"], act=edited["undo"])["document"]
    assert wood(back) == [BOARD, STICK]


def test_a_column_that_is_not_there_leaves_its_fields_alone_and_a_blank_cell_clears_one():
    document = project(BOARD)
    edited = taken(document, "Name,Length,Note\r\nRack,60,\r\n")["document"]
    assert wood(edited) == [{key: BOARD[key] for key in BOARD if key != "note"} | {"length": "60"}]


def test_metric_wood_keeps_its_unit_in_a_project_of_inches():
    metric = changed(begun(), "set", settings={"unit": "mm"})
    row = {"thickness": "20", "width": "150", "length": "2000"}
    line = {"name": "Rack", "reckoner": "wood_on_hand", "values": {"wood": [row]}}
    text, _ = table(acts(metric, ("keep_line", line)))
    again = taken(begun(), text)["document"]
    assert again["entries"][0]["unit"] == "mm"
    assert view(again)["entries"][0]["ok"]


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("Name,Length,Unit\r\nRack,60,mm\r\n", "Row 2: its unit is mm"),
        ("Name,Length,Unit\r\nRack,60,ell\r\n", "Row 2: “ell” is no unit"),
        ("Name,Length,What\r\nRack,60,log\r\n", "Row 2: “log” is no wood"),
        ("Name,Length\r\nRack,\r\n", "Row 2: Wood 1: Length is blank."),
        ("Name,What\r\nRack,board\r\n", "no column “Length”"),
        ("Name;Length\r\nRack;1.024\r\nRack;31,5\r\n", "“1.024” could mean two things"),
    ],
)
def test_a_bad_row_is_named_and_nothing_is_taken(text, says):
    said = refused(project(BOARD), text)
    assert says in said["message"]
    assert said["remedy"]
