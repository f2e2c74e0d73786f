"""Dadoes: their edges from the lower end, the measured width, and the wood that is left."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

KEY = "dado_layout"
SIDE = {"side": "44", "depth": "14", "places": ["12 in", "26 in"]}
fractions = st.fractions(min_value="1/4", max_value=1, max_denominator=64)


@settings(max_examples=150)
@given(
    st.lists(st.fractions(min_value=2, max_value=12, max_denominator=16), min_size=1, max_size=5),
    fractions,
    st.fractions(min_value=0, max_value="1/8", max_denominator=64),
    st.sampled_from(["bottom", "top", "center"]),
    st.booleans(),
)
def test_every_dado_holds_its_shelf_from_below(gaps, shelf, play, edge, from_above):
    """The oracle stacks openings and shelves, and gives the heights as a person would read them."""
    place, lows = Fraction(0), []
    for gap in gaps:
        lows.append(place + gap)
        place = lows[-1] + shelf
    side = place + 3
    part = {"bottom": Fraction(0), "top": shelf, "center": shelf / 2}[edge]
    heights = [side - low - part if from_above else low + part for low in lows]
    said = reckon(
        KEY,
        side=f"{side} in",
        depth="14",
        shelf=f"{shelf} in",
        play=f"{play} in",
        edge=edge,
        measured="upper" if from_above else "lower",
        places=[f"{each} in" for each in heights],
    )["by_key"]
    assert [exact(item) for item in said["lower"]["items"]] == lows
    assert [exact(item) for item in said["upper"]["items"]] == [low + shelf + play for low in lows]
    assert exact(said["width"]) == shelf + play
    for item in said["lower"]["items"] + said["upper"]["items"]:
        assert abs(Fraction(item["dropped"])) <= Fraction(1, 32)


@given(fractions, st.fractions(min_value="1/64", max_value="15/64", max_denominator=64))
def test_depth_and_what_is_left_are_the_side(thickness, depth):
    form = SIDE | {"side_thickness": f"{thickness} in"}
    said = reckon(KEY, **form, dado_depth=f"{depth} in")["by_key"]
    assert exact(said["depth"]) + exact(said["left"]) == thickness
    assert exact(said["longer"]) == 2 * depth
    usual = exact(reckon(KEY, **form)["by_key"]["depth"])
    assert abs(usual - thickness / 3) <= Fraction(1, 32)
    assert (usual * 16).denominator == 1


def test_the_width_is_told_as_finely_as_a_panel_is_measured():
    said = reckon(KEY, {"mark": "1/8"}, **SIDE, shelf="23/32")["by_key"]
    assert said["width"]["text"] == "23/32″"


def test_rabbets_take_the_panels_at_the_ends():
    said = reckon(KEY, **SIDE, rabbets="both", panel="1/2", play="1/32")["by_key"]
    assert [item["label"] for item in said["lower"]["items"]] == [
        "Bottom rabbet",
        "Dado 1",
        "Dado 2",
        "Top rabbet",
    ]
    assert exact(said["lower"]["items"][0]) == 0
    assert exact(said["upper"]["items"][0]) == Fraction(17, 32)
    assert exact(said["lower"]["items"][-1]) == 44 - Fraction(17, 32)
    assert exact(said["upper"]["items"][-1]) == 44


@pytest.mark.parametrize(
    ("values", "warned"),
    [
        ({"dado_depth": "1/2"}, "more than half"),
        ({"places": ["1/4 in"]}, "could break out"),
        ({"places": ["12 in", "13 in"]}, "could break out"),
        ({"play": "1/8"}, "loose for a glue joint"),
    ],
)
def test_what_weakens_the_joint_is_warned_of_first(values, warned):
    assert warned in reckon(KEY, **(SIDE | values))["cautions"][0]
    assert len(reckon(KEY, **SIDE)["cautions"]) == 3


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"dado_depth": "3/4"}, "dado_depth", "impossible"),
        ({"places": ["12 in", "12 1/2 in"]}, "places", "impossible"),
        ({"places": ["43 1/2 in"]}, "places", "impossible"),
        ({"places": ["1/2 in"], "edge": "top"}, "places", "impossible"),
        ({"places": ["1/2 in"], "rabbets": "lower"}, "places", "impossible"),
        ({"places": []}, "places", "missing"),
        ({"shelf": "0"}, "shelf", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    assert errors(ask(KEY, **(SIDE | values)))[field]["kind"] == kind


def test_both_sides_are_drawn_as_mirror_images_with_stopped_dadoes():
    drawing = reckon(KEY, **SIDE, run="stopped", stop="1")["drawing"]
    bands = [shape["points"] for shape in drawing["shapes"] if shape.get("role") == "hatch"]
    sides = [shape["points"] for shape in drawing["shapes"] if shape.get("role") == "stock"]
    assert (len(bands), len(sides)) == (4, 2)
    whole = min(x for x, _ in sides[0]) + max(x for x, _ in sides[1])
    for left, right in zip(bands[::2], bands[1::2], strict=True):
        mirrored = sorted([round(whole - x, 3), y] for x, y in left)
        assert mirrored == sorted([round(x, 3), y] for x, y in right)
        assert 0 < min(x for x, _ in left) < max(x for x, _ in left)
    texts = {shape.get("text") for shape in drawing["shapes"]}
    assert {"12″", "26″", "Left", "Right"} <= texts


def test_the_stick_has_both_edges_of_every_dado():
    marks = reckon(KEY, **SIDE)["stick"]["marks"]
    assert [mark["name"] for mark in marks] == [
        "Dado 1, bottom edge",
        "Dado 1, top edge",
        "Dado 2, bottom edge",
        "Dado 2, top edge",
    ]
    assert marks[0]["at_mm"] == 304.8


@pytest.mark.parametrize(
    ("measured", "told"),
    [("45/64", "Sold as 23/32: from"), ("43/64", "is outside"), ("49/64", "is outside")],
)
def test_a_panel_outside_the_limits_of_what_it_is_sold_as_is_warned_of(measured, told):
    """NIST PS 1: 23/32 structural plywood is from 0.688 to 0.750 in."""
    side = {"side": "44 1/2", "depth": "14 1/2", "places": ["12"]}
    said = reckon("dado_layout", **side, shelf=measured, sold_as="ps1_23_32")
    warned = [each for each in said["cautions"] if "PS 1" in each]
    assert len(warned) == 1
    assert told in warned[0]
    assert "from 0.688″ to 0.75″" in warned[0]
    said = reckon("dado_layout", **side, shelf=measured)
    assert not [each for each in said["cautions"] if "PS 1" in each]
