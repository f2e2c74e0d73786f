"""Cleats: lengths, screws no farther apart than asked, and how far a screw reaches."""

from fractions import Fraction
from itertools import pairwise

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

KEY = "cleats"
SHELF = {"inside": "35", "depth": "12"}
depths = st.fractions(min_value=6, max_value=30, max_denominator=16)
thicknesses = st.fractions(min_value="1/2", max_value="3/2", max_denominator=16)
spacings = st.fractions(min_value=1, max_value=12, max_denominator=8)


@given(depths, thicknesses, st.booleans(), spacings)
def test_cleats_fill_the_depth_and_screws_are_close_enough(depth, thickness, back, spacing):
    said = reckon(
        KEY, inside="35", depth=f"{depth} in", thickness=f"{thickness} in",
        back="yes" if back else "no", spacing=f"{spacing} in", setback="1", end="1 1/2",
    )  # fmt: skip
    long = exact(said["by_key"]["side_cleat"])
    assert long + 1 + (thickness if back else 0) == depth
    places = [exact(item) for item in said["by_key"]["screws"]["items"]]
    assert (places[0], places[-1]) == (Fraction(3, 2), long - Fraction(3, 2))
    gaps = {high - low for low, high in pairwise(places)}
    assert len(gaps) <= 1
    assert all(gap <= spacing for gap in gaps)
    if len(places) > 2:
        assert (places[-1] - places[0]) / (len(places) - 2) > spacing  # one fewer is too few
    assert [part["name"] for part in said["parts"]] == ["Side cleat"] + ["Back cleat"] * back
    assert ("back_cleat" in said["by_key"]) == back


@given(thicknesses, thicknesses, st.fractions(min_value=0, max_value="1/4", max_denominator=16))
def test_the_longest_screw_leaves_just_what_was_asked(cleat, side, sink):
    form = SHELF | {"thickness": f"{cleat} in", "side": f"{side} in", "sink": f"{sink} in"}
    said = reckon(KEY, **form)["by_key"]
    assert exact(said["left"]) == Fraction(1, 8)
    assert exact(said["reach"]) + exact(said["left"]) == side
    longest = exact(said["longest"])
    again = reckon(KEY, **form, screw=f"{longest} in")["by_key"]
    assert exact(again["reach"]) == longest - cleat + sink


@pytest.mark.parametrize(
    ("screw", "warned"),
    [("1 1/2", "comes through"), ("1 7/16", "is left before"), ("1", "less than half")],
)
def test_a_screw_that_is_too_long_or_too_short_is_warned_of_first(screw, warned):
    assert warned in reckon(KEY, **SHELF, screw=screw)["cautions"][0]
    usual = reckon(KEY, **SHELF, screw="1 1/4")["cautions"]
    assert len(usual) == 2
    assert any("licensed practice" in caution for caution in usual)


def test_each_shelf_needs_two_side_cleats_and_one_at_the_back():
    parts = reckon(KEY, **SHELF, shelves="3")["parts"]
    assert [(part["name"], part["count"]) for part in parts] == [
        ("Side cleat", 6), ("Back cleat", 3),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"depth": "1 1/2"}, "setback", "impossible"),
        ({"depth": "4"}, "end", "impossible"),
        ({"sink": "3/4"}, "sink", "impossible"),
        ({"screw": "3/4"}, "screw", "impossible"),
        ({"spare": "1"}, "spare", "impossible"),
        ({"screw": "1//4"}, "screw", "unreadable"),
        ({"spacing": "0"}, "spacing", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    assert errors(ask(KEY, **(SHELF | values)))[field]["kind"] == kind


def test_the_drawing_shows_every_screw_of_a_side_cleat():
    said = reckon(KEY, **SHELF, spacing="3")
    dots = [shape for shape in said["drawing"]["shapes"] if shape.get("role") == "hatch"]
    places = [float(exact(item)) for item in said["by_key"]["screws"]["items"]]
    assert [sum(x for x, _ in dot["points"]) / 4 for dot in dots] == pytest.approx(places, abs=1e-3)
    assert f"{len(dots)} screws along it" in said["drawing"]["words"]
