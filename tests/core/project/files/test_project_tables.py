"""Parts, readings and cuts go out as tables by RFC 4180 and come back as they were."""

import csv
import io
from fractions import Fraction

import pytest
from hostile import project
from hypothesis import given, settings
from hypothesis import strategies as st
from projects import acts, answered, ask, begun, changed, headlines, lasting, linked, view


def table(document, what):
    """The text of a table, and its rows by the names of the columns."""
    text = answered("csv", document, what=what)["text"]
    return text, [*csv.DictReader(io.StringIO(text, newline=""))]


def taken(document, what, text):
    return answered("take_csv", document, what=what, text=text, when="2026-11-25")


def test_a_table_has_each_length_as_text_exactly_and_in_decimals():
    _, rows = table(linked(), "parts")
    assert [row["Name"] for row in rows] == ["Top rail", "Panel"]
    assert {key: rows[0][key] for key in ("Length", "Length exact", "Length in", "Length mm")} == {
        "Length": '37 5/16"',
        "Length exact": "597/16 in",
        "Length in": "37.3125",
        "Length mm": "947.7375",
    }
    assert rows[0]["Left end"] == "miter 45°"


def test_lines_end_as_the_standard_has_it_and_quotes_are_doubled():
    text, _ = table(linked(), "parts")
    assert text.count("\r\n") == 3
    assert '"37 5/16"""' in text


def test_parts_come_back_with_the_same_sizes_ends_and_materials():
    document = project()
    text, rows = table(document, "parts")
    again = taken(begun(), "parts", text)["document"]
    _, back = table(again, "parts")
    for row in (*rows, *back):
        for passing in ("From", "Cut", "Spoiled"):
            del row[passing]
    assert back == rows


BY_HAND = "Name,Length,Count,Material\nCleat,12 1/2,2,Maple\nCleat,12 1/2,2,Maple\nStop,9,1,\n"


@pytest.mark.parametrize("text", [BY_HAND, table(project(), "parts")[0]], ids=["typed", "told"])
def test_parts_that_are_here_already_are_not_added_again(text):
    once = taken(begun(), "parts", text)["document"]
    refused = ask("take_csv", once, what="parts", text=text)
    assert refused["error"]["kind"] == "missing"
    assert "new" in refused["error"]["message"]


def test_a_project_adds_nothing_of_its_own_table_of_parts():
    refused = ask("take_csv", linked(), what="parts", text=table(linked(), "parts")[0])
    assert refused["error"]["kind"] == "missing"


def test_of_a_table_of_parts_only_what_is_new_is_added():
    once = taken(begun(), "parts", BY_HAND)["document"]
    more = taken(once, "parts", BY_HAND.replace("Stop,9", "Stop,9 1/8"))
    assert more["said"] == "Imported 1 row of parts. 2 are here already."
    assert [each["name"] for each in view(more["document"])["entries"]] == [
        "Cleat",
        "Cleat 2",
        "Stop",
        "Stop 2",
    ]


def test_readings_come_back_and_those_of_the_same_name_are_corrected():
    document = project()
    text, rows = table(document, "readings")
    again = taken(begun(), "readings", text)
    assert table(again["document"], "readings") == (text, rows)
    corrected = taken(linked(), "readings", text)
    assert headlines(corrected["document"])["Panel"] == "33 1/2″"
    assert [each["name"] for each in corrected["follows"]] == [
        "Alcove width",
        "Case width",
        "Top rail",
        "Panel",
    ]
    undone = answered("change", corrected["document"], act=corrected["undo"])["document"]
    assert lasting(undone) == lasting(linked())
    nothing = ask("take_csv", corrected["document"], what="readings", text=text)
    assert nothing["error"]["kind"] == "missing"


def test_cuts_come_back():
    document = project()
    text, rows = table(document, "cuts")
    assert [(row["Name"], row["State"]) for row in rows] == [
        ("Top rail", "cut"),
        ("Panel", "spoiled"),
    ]
    blank = acts(
        document,
        ("cut", {"id": "3", "part": "piece", "by": -1}),
        ("cut", {"id": "4", "part": "piece", "by": 1}),
    )
    again = taken(blank, "cuts", text)["document"]
    assert table(again, "cuts")[0] == text
    assert lasting(again) == lasting(document)


@pytest.mark.parametrize("name", ["=1+1", "+SUM", "-3", "@a", "'", "'=1", "'a", 'a"b', "a,b"])
def test_what_another_program_could_take_for_a_formula_is_shielded_and_comes_back(name):
    document = changed(begun(), "keep_reading", name=name, text="-3 + 4")
    text, _ = table(document, "readings")
    cells = next(csv.reader(io.StringIO(text.split("\r\n", 1)[1], newline="")))
    assert not any(cell[:1] in "=+-@" and cell for cell in cells)
    again = taken(begun(), "readings", text)["document"]
    assert again["entries"][0]["name"] == name
    assert again["entries"][0]["text"] == "-3 + 4"


def test_a_table_of_another_program_is_taken_by_the_names_of_its_columns():
    text = "\ufeffname,LENGTH,Width,Color\nSide,30 1/2,11 1/4,red\n\nTop,,,\n"
    refused = ask("take_csv", begun(), what="parts", text=text)["error"]
    assert refused["message"] == "Row 4: Length is blank."
    document = taken(begun(), "parts", text.replace("Top,,,", ""))["document"]
    assert view(document)["pieces"][0]["length"]["text"] == "30 1/2″"


@pytest.mark.parametrize(
    ("what", "text", "words"),
    [
        ("parts", "", "Row 1 has no column “Name”"),
        ("parts", "Name,Name,Length\na,b,3", "two columns named “Name”"),
        ("parts", "Name,Length\na,3,4", "Row 2 has more cells"),
        ("parts", 'Name,Length\n"a,3', "Row 2 isn’t a table row"),
        ("parts", "Name,Length\na,3//4", "Row 2: "),
        ("parts", "Name,Length\na,3\nb,4\nc,0", "Row 4: Length must be at least"),
        ("readings", "Name,Text\na,3\nb,[c]", "Row 3: There’s no c"),
        ("readings", "Name,Text\n" + "a,3\n" * 2001, "more than 2000 rows"),
        ("readings", "Name,Text\na," + "3" * 5000, "very long cell"),
        ("readings", "Name,Text,Side\na,3,thick", "Row 2: This can’t be saved as “side”"),
        ("cuts", "Name,Part\nz,piece", "Row 2: there’s no line named “z”"),
        ("cuts", "Name,Part,State\nPanel,piece,lost", "neither cut nor spoiled"),
        ("cuts", "Name,Part,Length exact\nPanel,piece,36", "Row 2: “36” can’t be read"),
        ("songs", "Name", "no such table"),
    ],
)
def test_a_table_that_can_not_be_taken_names_the_row_and_nothing_is_taken(what, text, words):
    said = ask("take_csv", linked(), what=what, text=text)
    assert words in said["error"]["message"]
    assert "document" not in said


LENGTHS = st.fractions(min_value=1, max_value=1000, max_denominator=997)


@settings(max_examples=60)
@given(st.lists(LENGTHS, min_size=1, max_size=4))
def test_any_length_comes_back_exactly(lengths):
    document = begun()
    for number, length in enumerate(lengths):
        document = changed(
            document,
            "keep_line",
            name=f"P{number}",
            reckoner="piece_by_hand",
            values={"length": f"{length} in"},
        )
    text, _ = table(document, "parts")
    again = taken(begun(), "parts", text)["document"]
    seen = {each["name"]: Fraction(each["headline"]["exact"]) for each in view(again)["entries"]}
    assert seen == {f"P{number}": length for number, length in enumerate(lengths)}
