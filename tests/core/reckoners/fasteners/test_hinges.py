"""Hinges of a door: how many, and where every place of a grid was tried."""

from fractions import Fraction
from itertools import pairwise

import pytest
from asking import ask, errors, exact, items, reckon
from hypothesis import given, settings
from hypothesis import strategies as st
from oracles.hinged_door import clear_place

KEY = "hinges"
DOOR = {"height": "48", "width": "17 1/4"}


@pytest.mark.parametrize(
    ("height", "many"),
    [("12", 2), ("40", 2), ("40 1/16", 3), ("60", 3), ("61", 4), ("80", 4), ("81", 5), ("101", 6)],
)
def test_taller_doors_have_more_hinges(height, many):
    """To 40 in 2, to 60 3, to 80 4 (common practice, no source)."""
    assert reckon(KEY, **DOOR | {"height": height})["by_key"]["count"]["text"] == str(many)


def test_three_hinges_as_by_hand():
    """A 2 1/2 hinge is its own length from the ends, its center 2 1/2 + 1 1/4 = 3 3/4 from them."""
    said = reckon(KEY, **DOOR)
    assert items(said, "centers") == [Fraction(15, 4), 24, Fraction(177, 4)]
    assert items(said, "starts") == [Fraction(5, 2), Fraction(91, 4), 43]
    assert said["verdict"] == "3 hinges, centers from the bottom"


@pytest.mark.parametrize(("hinge", "center"), [("1", "5/2"), ("3", "9/2"), ("5", "13/2")])
def test_an_end_hinge_is_its_length_from_the_end_between_two_and_four(hinge, center):
    """One hinge length, or 2 to 4 in (common practice, no source)."""
    assert items(reckon(KEY, **DOOR, hinge=hinge), "centers")[0] == Fraction(center)


def test_a_shelf_behind_a_hinge_moves_it_just_clear():
    """The shelf from 23 1/2 to 24 1/4: above it, 24 1/4 + 1/4 + 1 1/4 = 25 3/4, 1 3/4 off; below it
    23 1/2 − 1/4 − 1 1/4 = 22, 2 off."""
    said = reckon(KEY, **DOOR, shelves=["23 1/2"])
    assert items(said, "centers")[1] == Fraction(103, 4)
    assert said["cautions"][0] == "Hinge 2 moved to clear a shelf."


def test_a_low_door_has_its_hinges_closer_to_the_ends():
    """8 in with two of 2 1/2: 3 are free, a quarter of that at each end."""
    assert items(reckon(KEY, **DOOR | {"height": "8"}), "centers") == [2, 6]


@pytest.mark.parametrize(
    ("material", "cubic_foot"), [("plywood", "34"), ("mdf", "48"), ("oak_northern_red", "44.05")]
)
def test_a_door_weighs_what_its_wood_does(material, cubic_foot):
    """48 × 17 1/4 × 3/4 ÷ 1728 = .3594 cubic feet. Panels: common practice, no source; red oak
    .63 × 1.12 × 62.43 = 44.05 (Wood Handbook)."""
    text = reckon(KEY, **DOOR, material=material)["by_key"]["weight"]["text"]
    volume = 48 * 17.25 * 0.75 / 1728
    assert float(text.split(" lb")[0]) == pytest.approx(float(cubic_foot) * volume, abs=0.06)


def test_a_metric_door_is_weighed_in_millimeters_and_kilograms():
    """1200 × 450 × 18 mm is .00972 m³: × 34 lb per cubic foot, 544.63 kg/m³, 5.29 kg."""
    metric = {"unit": "mm", "display": "mm"}
    values = {"height": "1200", "width": "450"}
    said = reckon(KEY, metric, **values)
    assert said["by_key"]["weight"]["text"] == "5.3 kg"
    lines = [line["text"] for line in said["working"]]
    assert "Weight: 1200 × 450 × 18 ÷ 1,000,000,000 × 544.63 = 5.29 kg" in lines
    rated = reckon(KEY, metric, **values, weight_kg="22", rating_kg="5")["working"]
    assert {"text": "By weight: 22 ÷ 5 = 4.4, so 5 hinges"} in rated


def test_a_heavy_door_has_as_many_hinges_as_their_rating_asks():
    """40 lb at 9 lb each: 4.44, so 5."""
    said = reckon(KEY, **DOOR, weight_lb="40", rating_lb="9")
    assert said["by_key"]["count"]["text"] == "5"
    fewer = reckon(KEY, **DOOR, weight_lb="40", rating_lb="9", count="3")
    assert "of that weight usually has 5 hinges" in fewer["cautions"][0]
    few = reckon(KEY, **DOOR, count="2")
    assert "of that height usually has 3 hinges" in few["cautions"][0]


def test_a_wood_of_ones_own_without_a_weight_gives_the_places_but_no_number_by_weight():
    own = {"materials": [{"name": "Barn boards", "stiffness": "1.3"}]}
    values = DOOR | {"material": "own: Barn boards"}
    assert "weight" not in reckon(KEY, own, **values)["by_key"]
    refused = errors(ask(KEY, own, **values, rating_lb="9"))["weight_lb"]
    assert refused["message"] == "“Barn boards” has no weight in Settings."
    assert ask(KEY, own, **values, rating_lb="9", weight_lb="20")["ok"]


def test_a_wide_door_is_sent_to_the_makers_table():
    said = reckon(KEY, **DOOR | {"width": "25"})["cautions"]
    assert "Check the hinge maker’s table" in said[0]
    assert len(reckon(KEY, **DOOR)["cautions"]) == 1


EIGHTHS = st.integers(0, 8 * 40).map(lambda number: Fraction(number, 8))


@settings(max_examples=50)
@given(
    st.integers(12, 50),
    st.sampled_from([Fraction(3, 2), Fraction(5, 2), Fraction(4)]),
    st.integers(2, 5),
    st.lists(EIGHTHS, max_size=5),
    st.sampled_from([Fraction(3, 4), Fraction(1)]),
    st.sampled_from([Fraction(0), Fraction(1, 4)]),
)
def test_every_hinge_is_at_the_nearest_clear_place_of_a_grid(
    height, hinge, many, bottoms, thick, clear
):
    """The wished places: those of the ends by hand, the others evenly between the end ones."""
    values = {"height": f"{height} in", "width": "15 in", "hinge": f"{hinge} in"}
    values |= {"count": str(many), "clear": f"{clear} in", "inset": f"{hinge} in"}
    values |= {"shelves": [f"{each} in" for each in bottoms], "shelf": f"{thick} in"}
    shelves = [(each, thick) for each in bottoms]
    said = ask(KEY, **values)
    around = (height, hinge, shelves, clear)
    step = Fraction(1, 32)
    ends = [clear_place(each, *around, step) for each in (hinge, height - hinge)]
    if many * hinge > height or 2 * hinge > height - (many - 1) * hinge or None in ends:
        assert {each["kind"] for each in errors(said).values()} == {"impossible"}
        return
    apart = (ends[1] - ends[0]) / (many - 1)
    wished = [ends[0] + apart * each for each in range(1, many - 1)]
    places = [ends[0], *(clear_place(each, *around, step) for each in wished), ends[1]]
    if not said["ok"]:
        assert min(b - a for a, b in pairwise(places)) < hinge + step
        return
    told = said["by_key"]
    centers = [exact(each) for each in told["centers"]["items"]]
    assert len(centers) == many
    for found, place, wish in zip(centers, places, [ends[0], *wished, ends[1]], strict=True):
        assert abs(found - wish) <= abs(place - wish)
        assert abs(abs(found - wish) - abs(place - wish)) <= step
        low, high = found - hinge / 2, found + hinge / 2
        assert low >= 0
        assert high <= height
        assert all(high + clear <= a or low - clear >= a + b for a, b in shelves)
    assert all(b - a >= hinge for a, b in pairwise(centers))


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"height": "4", "hinge": "2 1/2"}, "hinge", "impossible"),
        ({"height": "5", "hinge": "2 1/2"}, "hinge", None),
        ({"count": "12", "hinge": "5"}, "count", "impossible"),
        ({"inset": "1"}, "inset", "impossible"),
        ({"inset": "22"}, "inset", "impossible"),
        ({"inset": "21 1/2", "count": "3"}, "inset", None),
        ({"shelves": [str(each) for each in range(0, 48, 3)]}, "hinge", "impossible"),
        ({"count": "1"}, "count", "range"),
        ({"height": "0"}, "height", "range"),
        ({"rating_lb": "0"}, "rating_lb", "range"),
        ({"rating_lb": "1", "weight_lb": "12"}, "rating_lb", None),
        ({"rating_lb": "1", "weight_lb": "13"}, "rating_lb", "impossible"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    """Two of 2 1/2 are longer than 4; shelves 3 apart leave 2 1/4; centers 22 from the ends are 4
    apart, less than three hinges of 2 1/2 take: (48 − 5) ÷ 2 = 21 1/2."""
    said = ask(KEY, **DOOR | values)
    assert (None if said["ok"] else errors(said)[field]["kind"]) == kind


@pytest.mark.parametrize(
    ("values", "remedy"),
    [
        ({"height": "30", "hinge": "30"}, "Use hinges of 15″ or less."),
        ({"height": "48", "hinge": "30"}, "Use hinges of 16″ or less, or fewer."),
    ],
)
def test_fewer_hinges_than_two_are_no_remedy(values, remedy):
    assert errors(ask(KEY, **DOOR | values))["hinge"]["remedy"] == remedy


def test_a_weight_that_no_rating_is_there_to_judge_is_told():
    said = reckon(KEY, **DOOR, weight_lb="200")["cautions"]
    assert "isn’t checked against the hinges" in said[0]
    assert "isn’t checked" not in reckon(KEY, **DOOR, weight_lb="20", rating_lb="20")["cautions"][0]


def test_hinges_that_are_pushed_together_by_shelves_are_refused():
    """Between shelves that bar all but one gap both would go into it."""
    said = ask(KEY, height="16", width="12", count="2", shelves=["0", "9"], shelf="6", clear="0")
    assert "would overlap" in errors(said)["count"]["message"]


def test_the_door_is_drawn_in_scale_with_its_hinges():
    said = reckon(KEY, **DOOR)["drawing"]
    leaves = [each["points"] for each in said["shapes"] if each.get("role") == "hatch"]
    assert [points[0][1] for points in leaves] == [-5.0, -25.25, -45.5]
    assert [points[2][1] for points in leaves] == [-2.5, -22.75, -43.0]
    opened = {each["field"] for each in said["shapes"] if each.get("field")}
    assert opened == {"height", "width"}
