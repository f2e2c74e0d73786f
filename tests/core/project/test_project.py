"""A project keeps what was typed, and works everything out of it."""

import pytest
from projects import RAIL, acts, begun, cabinet, change, changed, view

from sawside.reckoners import RECKONERS


def test_a_project_is_what_was_typed_and_nothing_derived():
    assert cabinet() == {
        "schema": 8,
        "name": "Record cabinet",
        "settings": {},
        "next": 4,
        "entries": [
            {"id": "1", "kind": "reading", "name": "Alcove width", "unit": "in", "text": "37 9/16"},
            {
                "id": "2",
                "kind": "line",
                "name": "Top rail",
                "unit": "in",
                "reckoner": "mitered_length",
                "values": RAIL,
            },
            {
                "id": "3",
                "kind": "line",
                "name": "Mitered length",
                "unit": "in",
                "reckoner": "mitered_length",
                "values": RAIL | {"known": "40"},
            },
        ],
        "log": [
            {"when": "", "said": "Started Record cabinet."},
            {"when": "", "said": "Saved Alcove width."},
            {"when": "", "said": "Saved Top rail."},
            {"when": "", "said": "Saved Mitered length."},
        ],
    }


def test_a_view_works_everything_out_longest_piece_first():
    seen = view(cabinet())
    assert [entry["headline"]["text"] for entry in seen["entries"]] == [
        "37 9/16″",
        "36 1/8″",
        "44 1/2″",
    ]
    assert seen["entries"][0]["summary"] == "37 9/16″"
    assert seen["entries"][1]["summary"] == "31 5/8″ measured, 2 1/4″ stock, 45° miter both ends"
    assert [(piece["name"], piece["length"]["text"]) for piece in seen["pieces"]] == [
        ("Mitered length", "44 1/2″"),
        ("Top rail", "36 1/8″"),
    ]


def test_a_line_that_fails_says_so_and_stops_nothing():
    document = cabinet()
    document["entries"][1]["values"] = {"known": "x"}
    document["entries"][2]["reckoner"] = "from_the_future"
    seen = view(document)
    assert [entry["ok"] for entry in seen["entries"]] == [True, False, False]
    assert seen["entries"][1]["error"]["field"] == "known"
    assert seen["entries"][2]["error"]["kind"] == "unknown"
    assert seen["pieces"] == []


def test_settings_of_the_project_are_those_of_its_answers():
    document = changed(cabinet(), "set", settings={"unit": "in", "mark": "1 mm"})
    assert view(document)["entries"][1]["headline"]["text"] == "918 mm"


def test_pieces_are_cut_one_at_a_time_and_no_more_than_there_are():
    document = changed(cabinet(), "cut", id="2", part="piece", by=1)
    piece = next(each for each in view(document)["pieces"] if each["entry"] == "2")
    assert (piece["count"], piece["cut"], piece["left"]) == (1, 1, 0)
    assert change(document, "cut", id="2", part="piece", by=1)["error"]["kind"] == "conflict"
    document = changed(document, "cut", id="2", part="piece", by=-1)
    assert change(document, "cut", id="2", part="piece", by=-1)["error"]["kind"] == "conflict"
    assert change(document, "cut", id="2", part="leg", by=1)["error"]["kind"] == "unknown"
    assert change(document, "cut", id="1", part="piece", by=1)["error"]["kind"] == "unknown"
    assert change(document, "cut", id="2", part="piece", by=2)["error"]["kind"] == "message"


def test_a_name_that_is_taken_gets_a_number_when_kept_and_is_refused_when_renamed():
    document = changed(cabinet(), "keep_reading", name="top rail", text="3")
    assert document["entries"][-1]["name"] == "top rail 2"
    refused = change(document, "rename", id="4", name="TOP RAIL")
    assert (refused["error"]["kind"], refused["error"]["field"]) == ("conflict", "name")
    assert changed(document, "rename", id="2", name="TOP RAIL")["entries"][1]["name"] == "TOP RAIL"


@pytest.mark.parametrize(
    ("name", "kind"),
    [
        ("", "missing"),
        ("  ", "missing"),
        ("x" * 81, "range"),
        ("a\u200bb", "unreadable"),
        (3, "message"),
    ],
)
def test_a_name_that_can_not_be_shown_is_refused(name, kind):
    assert change(cabinet(), "rename", id="2", name=name)["error"]["kind"] == kind
    assert change(None, "begin", name=name)["error"]["kind"] == kind


def test_what_can_not_be_read_or_answered_is_not_kept():
    document = cabinet()
    assert change(document, "keep_reading", name="a", text="3//4")["error"]["field"] == "text"
    bad = change(document, "keep_line", name="a", reckoner="mitered_length", values={"known": "1"})
    assert bad["error"]["field"] == "width"
    assert change(document, "correct", id="1", text="")["error"]["kind"] == "missing"


@pytest.mark.parametrize("act", ["rename", "correct", "delete", "cut"])
def test_an_entry_that_is_not_there_is_told(act):
    assert (
        change(cabinet(), act, id="99", name="a", part="piece", by=1)["error"]["kind"] == "unknown"
    )


def test_an_act_that_is_none_is_refused():
    assert change(cabinet(), "explode")["error"]["kind"] == "message"
    assert change(cabinet(), "begin", name="a")["error"]["kind"] == "message"
    assert change(cabinet(), "restore", entry={}, at=0)["error"]["kind"] == "message"
    entry = {"id": "9", "kind": "reading", "name": "a", "unit": "in", "text": "3"}
    assert change(cabinet(), "restore", entry=entry, at=0)["error"]["kind"] == "conflict"
    assert (
        change(cabinet(), "restore", entry=entry | {"id": "1"}, at=0)["error"]["kind"] == "conflict"
    )
    assert change(cabinet(), "restore", entry=entry, at=True)["error"]["kind"] == "message"


def test_another_unit_in_the_settings_never_changes_what_a_kept_number_says():
    document = cabinet()
    before = view(document)
    metric = change(document, "set", settings={"unit": "mm"})["document"]
    after = view(metric)
    for entry, same in zip(before["entries"], after["entries"], strict=True):
        assert entry["headline"]["exact"] == same["headline"]["exact"]
    corrected = change(metric, "correct", id="1", text="37 5/8")["document"]
    seen = view(corrected)
    assert seen["entries"][0]["headline"]["exact"] == "301/8"
    fresh = change(metric, "keep_reading", name="Depth", text="300")["document"]
    seen = view(fresh)
    assert seen["entries"][-1]["headline"]["exact"] == "1500/127"  # 300 / 25.4


def test_what_was_typed_in_another_unit_is_kept_with_the_unit_that_it_meant():
    metric = changed(cabinet(), "set", settings={"unit": "mm"})
    kept = changed(metric, "keep_reading", name="Depth", text="15 1/4", unit="in")
    kept = changed(
        kept, "keep_line", name="Rail", reckoner="mitered_length", values=RAIL, unit="in"
    )
    depth, rail = view(kept)["entries"][-2:]
    assert depth["headline"]["exact"] == "61/4"
    assert rail["headline"]["exact"] == "289/8"  # 31 5/8 + 2 × 2 1/4 = 36 1/8
    refused = change(metric, "keep_reading", name="Depth", text="15", unit="cubit")
    assert refused["error"]["kind"] == "message"


@pytest.mark.parametrize(
    ("reckoner", "values", "along"),
    [
        ("mitered_length", RAIL, {"long point"}),
        ("mitered_length", RAIL | {"left_end": "square", "right_end": "square"}, {""}),
        ("scarf", None, {"long point"}),
        ("piece_by_hand", {"length": "30"}, {""}),
    ],
)
def test_a_piece_with_two_lengths_says_along_which_side_its_own_is(reckoner, values, along):
    values = values or RECKONERS[reckoner].example
    document = changed(cabinet(), "keep_line", name="Piece", reckoner=reckoner, values=values)
    kept = document["entries"][-1]["id"]
    pieces = [piece for piece in view(document)["pieces"] if piece["entry"] == kept]
    assert {piece["length_along"] for piece in pieces} == along


def test_a_shelf_that_sags_too_much_says_so_in_its_line():
    """The number of the line is what it sags now; what to make of it hangs on the years as well."""
    weak = {"load": "records_12", "span": "60", "depth": "13", "thickness": "3/4"}
    kept = {"name": "Shelf", "reckoner": "shelf_strength", "values": weak | {"material": "plywood"}}
    (entry,) = view(acts(begun(), ("keep_line", kept)))["entries"]
    assert entry["verdict"].startswith("Too much: ")
    assert entry["headline"]["text"] in entry["verdict"]
