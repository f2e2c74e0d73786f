"""On paper at true size every mark stands where it belongs, on whatever sheet, to 0.001 mm."""

from fractions import Fraction
from itertools import pairwise

import pytest
from asking import errors
from hypothesis import given, settings
from hypothesis import strategies as st

import sawside
from tests.core.oracles.brute_shelves import THICK, built
from tests.core.oracles.joined_sheets import heights, laid_together, printed, shapes

MM = Fraction(254, 10)
PANEL = Fraction(3, 4)
SIZES = {"letter": (215.9, 279.4), "a4": (210, 297)}  # ANSI/ASME Y14.1, ISO 216; from memory
openings = st.fractions(min_value=2, max_value=20, max_denominator=16)
papers = st.sampled_from(list(SIZES))


@settings(max_examples=60)
@given(papers, openings, st.integers(1, 6))
def test_each_mark_stands_at_its_exact_place_when_the_sheets_are_joined(paper, opening, shelves):
    """The oracle adds the case up from the floor; the sheets are measured by their lines alone."""
    edges = built([opening] * (shelves + 1), [THICK] * shelves, PANEL, PANEL, Fraction(4))
    said = printed(
        "shelf_layout",
        paper,
        {
            "height": f"{edges['overall']} in",
            "shelf_count": str(shelves),
            "thickness": f"{THICK} in",
            "case_parts": "whole",
            "kick": "4",
            "foot": "floor",
        },
    )
    found = heights(said["sheets"])
    for number, (low, high) in enumerate(edges["shelves"], 1):
        for edge, place in (("bottom", low), ("top", high)):
            for height in found[f"Shelf {number} {edge}"]:
                assert height == pytest.approx(float(place * MM), abs=0.001)
    assert set(found) == {mark["name"] for mark in said["marks"]}
    ends = [
        line["from"][1] + move
        for sheet, move in laid_together(said["sheets"])
        for line in shapes(sheet, "line", "end")
    ]
    assert max(ends) - min(ends) == pytest.approx(float(edges["overall"] * MM), abs=0.001)


@settings(max_examples=60)
@given(
    papers,
    st.fractions(min_value=1, max_value=2, max_denominator=16),
    st.sampled_from([Fraction(1), Fraction(5, 4), Fraction(320, 254)]),
    st.integers(20, 60),
)
def test_each_hole_stands_at_its_exact_place_and_setback(paper, setback, pitch, side):
    """The oracle adds pitch to pitch."""
    said = printed(
        "pin_holes",
        paper,
        {
            "side": f"{side} in",
            "depth": "14 in",
            "first": "4 in",
            "pitch": "own",
            "own_pitch": f"{pitch} in",
            "diameter": "1/4 in",
            "front": f"{setback} in",
            "back": f"{setback} in",
        },
    )
    found = heights(said["sheets"])
    assert len(found) == (side - 8) // pitch + 1
    for number in range(1, len(found) + 1):
        for height in found[f"Hole {number}"]:
            assert height == pytest.approx(float((4 + (number - 1) * pitch) * MM), abs=0.001)
    for sheet in said["sheets"]:
        edges = [line["from"][0] for line in shapes(sheet, "line", "edge")]
        marks = {line["from"][1] for line in shapes(sheet, "line", "mark") if "name" in line}
        for hole in shapes(sheet, "circle", "hole"):
            x, y = hole["center"]
            assert hole["radius"] == pytest.approx(3.175, abs=1e-4)
            assert y in marks
            assert [abs(x - edge) for edge in edges] == pytest.approx(
                [float(setback * MM)] * 2, abs=0.001
            )


@settings(max_examples=40)
@given(papers, st.integers(4, 100), st.sampled_from(["in", "mm"]))
def test_the_ruler_runs_on_from_sheet_to_sheet(paper, height, unit):
    said = printed(
        "shelf_layout", paper, {"height": f"{height} in", "shelf_count": "1"}, {"display": unit}
    )
    apart, ending = (25.4, "″") if unit == "in" else (10, " cm")
    found = heights(said["sheets"], "ruler")
    most = int(height * 25.4 / apart + 1e-9)
    assert set(found) == {f"{number}{ending}" for number in range(most + 1)}
    for text, places in found.items():
        for place in places:
            assert place == pytest.approx(int(text.removesuffix(ending)) * apart, abs=0.001)


@pytest.mark.parametrize("paper", SIZES)
def test_every_sheet_has_both_bars_both_ways_and_keeps_the_margin(paper):
    wide, high = SIZES[paper]
    said = printed("shelf_layout", paper, example("shelf_layout"))
    said["sheets"] += printed("pin_holes", paper, example("pin_holes"))["sheets"]
    for sheet in said["sheets"]:
        assert (sheet["width"], sheet["height"]) == (wide, high)
        bars = {
            bar["name"]: [abs(a - b) for a, b in zip(bar["from"], bar["to"], strict=True)]
            for bar in shapes(sheet, "line", "bar")
        }
        assert bars == {
            "100 mm across": pytest.approx([100, 0], abs=1e-3),
            "100 mm up": pytest.approx([0, 100], abs=1e-3),
            "4 in across": pytest.approx([101.6, 0], abs=1e-3),
            "4 in up": pytest.approx([0, 101.6], abs=1e-3),
        }
        for line in (shape for shape in sheet["shapes"] if shape["kind"] == "line"):
            for x, y in (line["from"], line["to"]):
                assert 12 <= x <= wide - 12
                assert 12 <= y <= high - 12


def test_texts_of_marks_never_cover_each_other():
    said = printed(
        "pin_holes",
        "letter",
        {
            "side": "28",
            "depth": "14",
            "first": "1",
            "pitch": "own",
            "own_pitch": "5/32",
            "diameter": "1/8",
        },
    )
    told = 0
    for sheet in said["sheets"]:
        places = sorted(text["at"][1] for text in shapes(sheet, "label", "mark"))
        assert min((b - a for a, b in pairwise(places)), default=9) > 3.5
        told += len(places)
    assert told >= 166


def test_rows_of_unequal_setback_have_a_template_each():
    said = printed("pin_holes", "a4", example("pin_holes") | {"front": "1 1/2", "back": "2"})
    titles = {
        text["text"].split(":")[0]
        for sheet in said["sheets"]
        for text in shapes(sheet, "label", "name")
    }
    assert titles == {"Pin holes, one row, front row", "Pin holes, one row, back row"}


def test_a_setback_wider_than_the_paper_is_joined_across():
    """The edge is on one sheet and the row on another; the joining lines bring them together."""
    said = printed(
        "pin_holes", "a4", {"side": "10", "depth": "40", "first": "4", "front": "6", "back": "6"}
    )
    columns = [sheet for sheet in said["sheets"] if sheet["from"] == 0]
    assert len(columns) > 1
    place, edges, rows = 0.0, set(), set()
    for one, other in zip([None, *columns], columns, strict=False):
        if one:
            here, there = (
                {
                    each["name"]: each["from"][0]
                    for each in shapes(sheet, "line", "join")
                    if each["from"][0] == each["to"][0]
                }
                for sheet in (one, other)
            )
            (move,) = {round(here[name] - there[name], 3) for name in here if name in there}
            place += move
        edges |= {round(line["from"][0] + place, 2) for line in shapes(other, "line", "edge")}
        rows |= {round(hole["center"][0] + place, 2) for hole in shapes(other, "circle", "hole")}
    (row,) = rows
    assert sorted(abs(edge - row) for edge in edges) == pytest.approx([152.4, 152.4], abs=0.01)


def test_a_short_stick_needs_one_sheet_without_joints():
    (sheet,) = printed("shelf_layout", "a4", {"height": "8", "shelf_count": "1"})["sheets"]
    assert shapes(sheet, "line", "join") == []
    assert (sheet["number"], sheet["of"]) == (1, 1)


def test_the_list_to_transfer_has_the_marks_of_the_answer():
    said = printed("pin_holes", "a4", example("pin_holes"))
    question = {"do": "reckon", "reckoner": "pin_holes", "values": example("pin_holes")}
    holes = sawside.handle(question)["answers"][0]["items"]
    told = [(mark["name"], mark["text"], mark["dropped_text"]) for mark in said["marks"]]
    assert told == [(hole["label"], hole["text"], hole["dropped_text"]) for hole in holes]


def test_a_mark_to_transfer_says_by_how_much_it_misses_its_place():
    """72 5/8 less 5 × 23/32 is 69 1/32, a sixth of it 11 97/192; with one shelf 12 43/192."""
    values = {"height": "72 5/8", "shelf_count": "5", "thickness": "23/32"}
    marks = {each["name"]: each for each in printed("shelf_layout", "a4", values)["marks"]}
    told = {name: (each["text"], each["dropped_text"]) for name, each in marks.items()}
    assert told["Shelf 1 bottom"] == ("11 1/2″", "0.005″ heavy")
    assert told["Shelf 1 top"] == ("12 1/4″", "0.026″ light")
    assert told["Inside top"] == ("72 5/8″", "")


def test_a_name_of_the_project_stands_in_what_is_printed_as_in_what_is_answered():
    document = sawside.handle(
        {"do": "change", "document": None, "act": {"act": "begin", "name": "Record cabinet"}}
    )["document"]
    keep = {"act": "keep_reading", "name": "Alcove height", "text": "44 1/2"}
    document = sawside.handle({"do": "change", "document": document, "act": keep})["document"]
    message = {"do": "paper", "reckoner": "shelf_layout", "paper": "a4"}
    linked = {"height": "[Alcove height] - 1/2", "shelf_count": "2"}
    said = sawside.handle(message | {"values": linked, "document": document})
    typed = sawside.handle(message | {"values": linked | {"height": "44"}})
    assert said["ok"], said
    assert said["sheets"] == typed["sheets"]


@pytest.mark.parametrize(
    ("change", "field", "kind"),
    [
        ({"paper": "a3"}, "paper", "unknown"),
        ({"paper": ["a4"]}, "paper", "message"),
        (
            {"reckoner": "mitered_length", "values": {"known": "3", "width": "1"}},
            "reckoner",
            "impossible",
        ),
        ({"values": {"height": "99 ft", "shelf_count": "2"}}, "paper", "impossible"),
        ({"values": {"height": "3//4", "shelf_count": "2"}}, "height", "unreadable"),
        ({"values": 3}, "values", "message"),
    ],
)
def test_what_cannot_be_printed_is_told_of_its_field(change, field, kind):
    message = {
        "do": "paper",
        "reckoner": "shelf_layout",
        "paper": "a4",
        "values": {"height": "40", "shelf_count": "2"},
    }
    error = errors(sawside.handle(message | change))[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


def test_describe_offers_the_papers():
    papers = sawside.handle({"do": "describe"})["papers"]
    assert {each["key"]: (each["width"], each["height"]) for each in papers} == SIZES


def example(key):
    """The example of a question."""
    reckoners = sawside.handle({"do": "describe"})["reckoners"]
    return next(each["example"] for each in reckoners if each["key"] == key)
