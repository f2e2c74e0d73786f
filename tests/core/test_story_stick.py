"""A story stick in millimeters, and the sheets that it is printed on at true size."""

from fractions import Fraction
from itertools import pairwise

import pytest
from asking import reckon
from brute_shelves import THICK, built
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.drawing.story_stick import PAPERS, sheets

openings = st.fractions(min_value=2, max_value=20, max_denominator=16)


@settings(max_examples=60)
@given(openings, st.integers(1, 6), st.sampled_from(["floor", "under_bottom", "over_bottom"]))
def test_the_stick_has_both_edges_of_every_shelf(opening, shelves, foot):
    """The oracle adds the case up from the floor."""
    bottom, kick = Fraction(3, 4), Fraction(4)
    edges = built([opening] * (shelves + 1), [THICK] * shelves, bottom, bottom, kick)
    stick = reckon(
        "equal_shelf_spacing", height=f"{edges['overall']} in", shelf_count=str(shelves),
        thickness=f"{THICK} in", case_parts="whole", kick="4", foot=foot, edge="center",
    )["stick"]  # fmt: skip
    start = {"floor": Fraction(0), "under_bottom": kick, "over_bottom": kick + bottom}[foot]
    places = {mark["name"]: mark["at_mm"] for mark in stick["marks"]}
    for number, (low, high) in enumerate(edges["shelves"], 1):
        for edge, place in (("bottom", low), ("top", high)):
            exactly = float((place - start) * Fraction(254, 10))
            assert places[f"Shelf {number} {edge}"] == pytest.approx(exactly, abs=1e-4)
    assert stick["length_mm"] == pytest.approx(float(edges["overall"] - start) * 25.4, abs=1e-4)
    assert [mark["at_mm"] for mark in stick["marks"]] == sorted(places.values())


@pytest.mark.parametrize("paper", PAPERS)
@settings(max_examples=60)
@given(st.integers(1, 100))
def test_the_sheets_show_the_whole_stick_at_true_size(paper, height):
    stick = reckon("equal_shelf_spacing", height=str(height + 3), shelf_count="3")["stick"]
    pages = sheets(stick, paper)
    assert pages[0]["from"] == 0
    assert pages[-1]["to"] == stick["length_mm"]
    for one, other in pairwise(pages):
        assert one["to"] - other["from"] == pytest.approx(20)  # both repeat this stretch
        joints = [
            [y - page["margin"] + page["from"] for y in page["overlaps"]] for page in (one, other)
        ]
        assert joints[0][-2:] == pytest.approx(joints[1][:2])
    shown = set()
    for page in pages:
        assert page["to"] - page["from"] <= page["height"] - 2 * page["margin"] + 1e-6
        for mark in page["marks"]:
            at = mark["y"] - page["margin"] + page["from"]
            assert at == pytest.approx(mark["at_mm"], abs=1e-3)
            shown.add(mark["name"])
        for tick in page["ruler"]:
            at = tick["y"] - page["margin"] + page["from"]
            assert at == pytest.approx(10 * int(tick["label"].split()[0]), abs=1e-3)
        assert [bar["length"] for bar in page["bars"]] == [100, 101.6]
    assert shown == {mark["name"] for mark in stick["marks"]}


def test_a_short_stick_needs_one_sheet_without_joints():
    (page,) = sheets(reckon("equal_shelf_spacing", height="8", shelf_count="1")["stick"], "a4")
    assert page["overlaps"] == []
    assert (page["number"], page["of"]) == (1, 1)
