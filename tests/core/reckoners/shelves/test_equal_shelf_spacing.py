"""Shelves with equal openings, each marked from its own exact place."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, inches, reckon
from hypothesis import given
from hypothesis import strategies as st

from tests.core.oracles.brute_shelves import built, measured

measures = st.fractions(min_value=1, max_value=40, max_denominator=32)
thicknesses = st.fractions(min_value="1/8", max_value=2, max_denominator=32)
heights = st.fractions(min_value=30, max_value=90, max_denominator=64)
counts = st.integers(min_value=0, max_value=12)


@given(measures, thicknesses, counts)
def test_height_count_and_opening_solve_for_each_other(opening, thickness, shelves):
    """The oracle builds the case up from its parts."""
    height = opening + sum([thickness + opening] * shelves)
    case = {"height": inches(height), "shelf_count": str(shelves), "opening": inches(opening)}
    for blank in case:
        said = reckon("shelf_layout", thickness=inches(thickness), **(case | {blank: ""}))
        assert said["solved"] == [blank]
        assert exact(said["by_key"]["height"]) == height
        assert exact(said["by_key"]["opening"]) == opening
        assert said["by_key"]["shelf_count"]["text"] == str(shelves)


@given(heights, thicknesses, counts)
def test_marks_are_each_from_their_own_exact_place(height, thickness, shelves):
    said = reckon(
        "shelf_layout", height=inches(height), thickness=inches(thickness), shelf_count=str(shelves)
    )["by_key"]
    items = said["marks"]["items"] if shelves else []
    assert ("marks" in said) == bool(shelves)
    marks = [exact(item) for item in items]
    opening = (height - shelves * thickness) / (shelves + 1)
    place, expected = opening, []
    for _ in range(shelves):
        expected.append(place)
        place += thickness + opening
    assert marks == expected
    for item in items:
        assert abs(Fraction(item["dropped"])) <= Fraction(1, 32)


@given(heights, thicknesses, counts)
def test_the_openings_of_the_marks_fill_the_case(height, thickness, shelves):
    said = reckon(
        "shelf_layout", height=inches(height), thickness=inches(thickness), shelf_count=str(shelves)
    )["by_key"]
    openings = [exact(item) for item in said["openings"]["items"]]
    assert sum(openings) + shelves * thickness == height
    assert exact(said["difference"]) == max(openings) - min(openings)
    for opening in openings:
        assert abs(opening - exact(said["opening"])) <= Fraction(1, 16)


@given(heights, thicknesses, measures)
def test_as_many_shelves_as_leave_at_least_the_opening(height, thickness, least):
    said = ask(
        "shelf_layout", height=inches(height), thickness=inches(thickness), opening=inches(least)
    )
    if least > height:
        assert errors(said)["opening"]["kind"] == "impossible"
        return
    shelves = 0
    while (shelves + 1) * thickness + (shelves + 2) * least <= height:
        shelves += 1
    if shelves > 60:
        assert errors(said)["opening"]["kind"] == "impossible"
        return
    answers = said["by_key"]
    assert answers["shelf_count"]["text"] == str(shelves)
    assert exact(answers["opening"]) >= least


def test_a_difference_too_small_for_a_mark_is_told_in_decimals_and_never_as_nothing():
    """18 mm is 90/127 in: with three such shelves the openings of the marks differ a little."""
    said = reckon(
        "shelf_layout", height="44.3", shelf_count="3", thickness="18 mm", settings={"mark": "1/64"}
    )["by_key"]
    for item in (*said["openings"]["items"], said["difference"]):
        left = Fraction(item["exact"]) - Fraction(item["mark"])
        assert (item["dropped_text"] != "") == (left != 0)
        assert item["dropped_text"].endswith(
            {1: "heavy", -1: "light", 0: ""}[(left > 0) - (left < 0)]
        )
    assert said["difference"]["mark"] != "0"


def test_stepping_off_with_one_block_is_warned_of():
    said = reckon("shelf_layout", height="41 1/4", shelf_count="2", thickness="23/32")
    assert said["by_key"]["stepping"]["text"] == (
        "13 1/4″ stepped off 3 times ends 1/16″ short. Mark each one from the same end instead."
    )
    alone = reckon("shelf_layout", height="41 1/4", shelf_count="0")["by_key"]
    assert "stepping" not in alone


def test_the_working_shows_this_case():
    said = reckon("shelf_layout", height="41 1/4", shelf_count="2", thickness="23/32")
    assert said["working"][0]["text"] == "(41 1/4 − 2 × 23/32) ÷ 3 = 13 13/48 → 13 1/4″"
    assert said["answers"][0]["dropped_text"] == "0.021″ heavy"


@pytest.mark.parametrize(
    ("values", "field"),
    [
        ({"height": "40"}, "shelf_count"),
        ({}, "height"),
        ({"height": "40", "shelf_count": "2", "opening": "9"}, "opening"),
    ],
)
def test_exactly_one_of_three_is_left_blank(values, field):
    assert errors(ask("shelf_layout", **values))[field]["kind"] == "conflict"


def test_shelves_that_fill_the_case_are_impossible():
    said = ask("shelf_layout", height="3", shelf_count="4", thickness="3/4")
    assert errors(said)["shelf_count"]["kind"] == "impossible"


def test_the_drawing_tells_marks_and_opening():
    said = reckon("shelf_layout", height="41 1/4", shelf_count="2", thickness="23/32")
    texts = {shape.get("text") for shape in said["drawing"]["shapes"]}
    assert {"≈ 13 1/4″", "≈ 27 1/4″", "41 1/4″"} <= texts
    assert any("tip" in caution for caution in said["cautions"])


@pytest.mark.parametrize("shelves", [0, 1, 8, 60])
def test_any_count_of_shelves_is_drawn_inside_the_box(shelves):
    drawing = reckon("shelf_layout", height="90", shelf_count=str(shelves))["drawing"]
    left, top, right, bottom = drawing["box"]
    assert 1 <= (right - left) / (bottom - top) <= 3
    stock = [shape for shape in drawing["shapes"] if shape["kind"] == "polygon"]
    assert len(stock) == shelves + 4
    figures = [shape for shape in drawing["shapes"] if shape.get("align") == "start"]
    assert len(figures) == min(shelves, 8) + 1


parts = st.fractions(min_value=0, max_value=6, max_denominator=32)


@given(
    st.tuples(measures, thicknesses, st.integers(1, 8)),
    st.tuples(parts, parts, parts),
    st.sampled_from(["bottom", "top", "center"]),
    st.sampled_from(["inside_bottom", "floor", "lower_end", "upper_end"]),
    st.sampled_from(["floor", "under_bottom", "over_bottom"]),
    st.sampled_from(["over_top", "under_top"]),
    st.booleans(),
)
def test_any_edge_is_marked_from_any_place(shelving, panels, edge, origin, foot, head, inside):
    """The oracle adds the case up from the floor."""
    opening, thickness, shelves = shelving
    bottom, top, kick = panels
    edges = built([opening] * (shelves + 1), [thickness] * shelves, bottom, top, kick)
    height = edges["inside_top"] - edges["inside_bottom"] if inside else edges["overall"]
    said = reckon(
        "shelf_layout",
        height=inches(height),
        shelf_count=str(shelves),
        thickness=inches(thickness),
        edge=edge,
        case_parts="whole",
        origin=origin,
        foot=foot,
        head=head,
        bottom=inches(bottom),
        top=inches(top),
        kick=inches(kick),
        height_is="inside" if inside else "overall",
    )["by_key"]
    assert exact(said["opening"]) == opening
    assert exact(said["overall"]) == edges["overall"]
    marks = [exact(item) for item in said["marks"]["items"]]
    assert marks == [measured(edges, shelf, edge, origin, foot, head) for shelf in edges["shelves"]]
    for item in said["marks"]["items"]:
        assert abs(Fraction(item["dropped"])) <= Fraction(1, 32)
    openings = [exact(item) for item in said["openings"]["items"]]
    assert sum(openings) + shelves * thickness == edges["inside_top"] - edges["inside_bottom"]
    assert all(abs(each - opening) <= Fraction(1, 16) for each in openings)


def test_parts_that_fill_the_overall_height_are_impossible():
    said = ask("shelf_layout", height="5", shelf_count="1", case_parts="whole", kick="4")
    assert errors(said)["height"]["kind"] == "impossible"


def test_side_and_overall_height_are_told_only_of_a_whole_case():
    bare = reckon("shelf_layout", height="40", shelf_count="2")["by_key"]
    assert not {"side", "overall"} & set(bare)
    whole = reckon(
        "shelf_layout",
        height="40",
        shelf_count="2",
        case_parts="whole",
        kick="3",
        foot="under_bottom",
        head="under_top",
    )["by_key"]
    assert (whole["overall"]["text"], whole["side"]["text"]) == ("40″", "36 1/4″")


def test_the_drawing_of_a_whole_case_shows_kick_and_zero_of_the_tape():
    said = reckon(
        "shelf_layout", height="40", shelf_count="2", case_parts="whole", kick="3", origin="floor"
    )
    shapes = said["drawing"]["shapes"]
    assert [shape for shape in shapes if shape.get("role") == "ghost"]
    (zero,) = [shape for shape in shapes if shape.get("text") == "0"]
    heights = [y for shape in shapes for _, y in shape.get("points", [])]
    assert zero["at"][1] == max(heights)
    assert "measured from the floor" in said["drawing"]["words"]
