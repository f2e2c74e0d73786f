"""A table that was edited says what is to change; what it leaves out stays as it is."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from projects import acts, answered, ask, begun, changed, entry, headlines
from test_project_tables import table, taken

TOLD = {
    "where": "at the floor",
    "tape": "Old",
    "side": "light",
    "fineness": "1/8",
    "off": "1/16",
    "when": "2026-11-24",
}
TAPES = {"tapes": [{"name": "Old"}]}


def told():
    """A project with a reading of which everything is told."""
    document = changed(begun(), "set", settings=TAPES)
    return changed(document, "keep_reading", name="Width", text="37", **TOLD)


def reading(document):
    """What is told of its first reading beside name, unit and text."""
    kept = document["entries"][0]
    return {key: kept[key] for key in kept if key in TOLD}


def test_a_column_that_is_missing_leaves_its_field_alone():
    document = taken(told(), "readings", "Name,Text\nWidth,36\n")["document"]
    assert headlines(document) == {"Width": "36″"}
    assert reading(document) == {key: TOLD[key] for key in TOLD if key != "when"}
    document = taken(told(), "readings", "Name,Text,Where\nWidth,37,in the middle\n")["document"]
    assert reading(document) == TOLD | {"where": "in the middle"}


def test_an_empty_cell_clears_its_field():
    document = taken(told(), "readings", "Name,Text,Where,Side\nWidth,37,,\n")["document"]
    assert reading(document) == {key: TOLD[key] for key in TOLD if key not in ("where", "side")}
    document = taken(told(), "readings", "Name,Text,Where,Side\nWidth,37,here\n")["document"]
    assert reading(document) == {key: TOLD[key] for key in TOLD if key != "side"} | {
        "where": "here"
    }


def test_a_unit_that_was_changed_is_taken_and_what_it_may_be_off_by_stays():
    text, _ = table(told(), "readings")
    said = taken(told(), "readings", "Name,Text,Unit\nWidth,37,cm\n")
    kept = said["document"]["entries"][0]
    assert (kept["unit"], kept["text"], kept["off"]) == ("cm", "37", "1/16 in")
    assert entry(said["document"], "Width")["headline"]["exact"] == str(37 * Fraction(50, 127))
    assert taken(told(), "readings", text.replace(",in,", ",cm,"))["document"] != told()
    error = ask("take_csv", told(), what="readings", text="Name,Text,Unit\nWidth,37,ell\n")["error"]
    assert "unit" in error["message"]
    same = ask("take_csv", told(), what="readings", text="Name,Text,Unit\nWidth,37,\n")["error"]
    assert same["message"] == "Nothing in this table is new."


def part(length):
    """A project with one part."""
    values = {"length": length, "width": "5 1/3"}
    return changed(begun(), "keep_line", name="Side", reckoner="piece_by_hand", values=values)


@pytest.mark.parametrize(
    ("length", "old", "new", "words"),
    [
        ("36", ',"36""",', ',"35""",', 'Length “35"” and Length exact “36 in”'),
        ("36", ",36 in,", ",35 in,", 'Length “36"” and Length exact “35 in”'),
        ("30 1/3", ',"30 5/16""",', ',"30 1/4""",', 'Length “30 1/4"” and Length exact “91/3 in”'),
        ("36", ',"36""",', ",abc,", "Length “abc” and Length exact “36 in”"),
        ("36", ',"5 5/16""",', ',"5 3/8""",', 'Width “5 3/8"” and Width exact “16/3 in”'),
    ],
)
def test_two_cells_of_one_length_that_do_not_agree_are_refused_by_their_names(
    length, old, new, words
):
    text, _ = table(part(length), "parts")
    assert old in text
    error = ask("take_csv", begun(), what="parts", text=text.replace(old, new))["error"]
    assert error["message"] == f"Row 2: {words} don’t match."
    assert error["remedy"] == "Make them match, or clear one of the two cells."
    assert error["field"] == "text"


def test_one_of_the_two_cells_is_enough():
    text, _ = table(part("36"), "parts")
    for gone, found in ((',"36""",36 in,', ',"35""",,'), (',"36""",36 in,', ",,35 in,")):
        document = taken(begun(), "parts", text.replace(gone, found))["document"]
        assert headlines(document) == {"Side": "35″"}


SETTINGS = st.fixed_dictionaries(
    {
        "mark": st.sampled_from(["1/2", "1/16", "1/64", ".01 in", "1 mm", "0.1 mm"]),
        "rounding": st.sampled_from(["nearest", "up", "down"]),
        "unit": st.sampled_from(["in", "mm"]),
    }
)


@settings(max_examples=100)
@given(st.fractions(1, 1000, max_denominator=997), SETTINGS, SETTINGS)
def test_a_table_comes_back_exactly_whatever_the_settings_there_and_here(length, there, here):
    document = changed(part(f"{length} in"), "set", settings=there)
    text, _ = table(document, "parts")
    again = taken(changed(begun(), "set", settings=here), "parts", text)["document"]
    assert Fraction(entry(again, "Side")["headline"]["exact"]) == length


def test_pieces_keep_what_a_table_of_them_does_not_have():
    document = acts(
        part("36"),
        ("cut", {"id": "1", "part": "piece", "by": 1, "when": "2026-11-24"}),
        ("spoil", {"id": "1", "part": "piece"}),
        ("cut", {"id": "1", "part": "piece", "by": 1, "when": "2026-11-25"}),
    )
    text = "Name,Part,When\nSide,piece,2026-11-26\n"
    kept = taken(document, "cuts", text)["document"]["entries"][0]
    before = document["entries"][0]
    assert kept["spoiled"] == before["spoiled"]
    assert kept["cut"]["piece"] == [before["cut"]["piece"][0] | {"when": "2026-11-26"}]


def test_every_table_of_a_project_that_is_not_edited_changes_nothing():
    document = told()
    text, _ = table(document, "readings")
    assert ask("take_csv", document, what="readings", text=text)["error"]["kind"] == "missing"
    assert answered("csv", document, what="readings")["text"] == text
