"""Set-ups that no saw reaches say what to do instead, in every question that tells a set-up."""

import math
import re

import numpy as np
import pytest
from asking import reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.reckoners import RECKONERS

NOT_SET = {
    "between_faces",
    "corner",
    "between",
    "least",
    "most",
    "left_corner",
    "right_corner",
    "rise_angle",
    "rise_worst",
    "spacer_angle",
    "spacer_worst",
    "other_angle",
    "spring",
    "slope",
    "setting_off",
    "all_off",
    "angle",
    "closing",
    "opens",
    "needs",
    "lean",
}
"""Angles that are measured, or differences: nobody sets a saw to them."""


def past(said):
    return [each for each in said["cautions"] if each.startswith("Few saws")]


def test_every_angle_that_is_told_says_whether_a_saw_is_set_to_it():
    for reckoner in RECKONERS.values():
        for answer in reckoner.answers:
            if answer.kind == "angle":
                assert (answer.sets is None) == (answer.key in NOT_SET), (reckoner.key, answer.key)


def mitered(**end):
    return {
        "known": "30",
        "known_face": "outside",
        "width": "2",
        "thickness": "3/4",
        "left_end": "square",
        "right_end": "square",
    } | end


COPED = {"length": "30", "turn": "inside", "corner": "60"}
CASES = [
    ("mitered_length", mitered(left_end="other", left_angle="62"), "62°", "28°"),
    ("mitered_length", mitered(left_end="edge", left_tilt="60"), "60°", "30°"),
    ("mitered_length", mitered(left_end="corner", left_corner="50"), "65°", "25°"),
    ("mitered_frame", {"shape": "polygon", "sides": "3", "size": "12"}, "60°", "30°"),
    ("mitered_frame", None, None, None),
    ("corner_setting", {"found": "angle", "angle": "60"}, "60°", "30°"),
    (
        "corner_setting",
        {"found": "lengths", "one_leg": "12", "other_leg": "12", "across": "12"},
        "60°",
        "30°",
    ),
    ("molding_run", {"walls": [{"length": "30", "corner": "70"}, {"length": "30"}]}, "55°", "35°"),
    ("molding_run", {"walls": [COPED, {"length": "30"}]}, "60°", "30°"),
    ("scarf", {"cut": "slope", "slope": "8"}, "≈ 82.87°", "≈ 7.13°"),
    ("edge_strip", {"left_corner": "60"}, "60°", "30°"),
    ("piece_by_hand", {"left_end": "other", "left_angle": "70"}, "70°", "20°"),
    ("piece_by_hand", {"left_end": "edge", "left_tilt": "70"}, "70°", "20°"),
    ("chamfer", {"angle": "30"}, "60°", "30°"),
    ("chamfer", {"angle": "60"}, "60°", "30°"),
    ("sloped_box", {"slope": "60", "height": "2"}, "60°", "30°"),
    ("sloped_box", {"slope": "0", "sides": "3", "other": ""}, "60°", "30°"),
]


@pytest.mark.parametrize(("question", "values", "asked", "rest"), CASES)
def test_what_no_saw_reaches_says_what_to_do(question, values, asked, rest):
    said = reckon(question, **RECKONERS[question].example | (values or {}))
    found = past(said)
    if asked is None:
        assert found == []
        return
    left = re.compile(rf"what’s left of 90, (a miter of )?{re.escape(rest)}")
    assert any(f" to {asked} (most" in each and left.search(each) for each in found)
    assert all("jig" in each and "by hand" in each for each in found)
    assert said["cautions"][: len(found)] == found


@pytest.mark.parametrize("reckoner", RECKONERS.values(), ids=lambda each: each.key)
def test_an_example_is_within_reach(reckoner):
    assert past(reckon(reckoner.key, **reckoner.example)) == []


@pytest.mark.parametrize(("way", "limit"), [("other", 50), ("edge", 45)])
def test_the_limit_itself_is_within_reach(way, limit):
    key = {"other": "left_angle", "edge": "left_tilt"}[way]
    at = reckon("mitered_length", **mitered(left_end=way, **{key: str(limit)}))
    assert past(at) == []
    more = reckon("mitered_length", **mitered(left_end=way, **{key: f"{limit}.1"}))
    assert len(past(more)) == 1
    assert "jig" in more["parts"][0]["ends"]["left"]["at_the_saw"][-1]
    assert "jig" not in str(more["parts"][0]["ends"]["right"])


def test_a_compound_cut_past_the_turn_is_told_once_with_its_tilt():
    """A spring of 80 in a corner of 60: arctan (sin 80 ÷ tan 30) = 59.6, and 8.65 of tilt."""
    ends = {"left_end": "inside", "left_corner": "60", "right_end": "square", "measured": ""}
    said = past(reckon("crown", found="angle", spring="80", **ends))
    assert [each.split(" (")[0] for each in said] == [
        "Few saws miter to ≈ 59.62°",
        "Few saws miter to 60°",
    ]
    assert "30.38°, with the blade still tilted to ≈ 8.65°" in said[0]
    assert "still tilted" not in said[1]  # held in its place


def test_two_ends_alike_are_told_once():
    ends = {"left_end": "other", "left_angle": "62", "right_end": "other", "right_angle": "62"}
    assert len(past(reckon("mitered_length", **mitered(**ends)))) == 1


def turned(axis, degrees):
    """A turn about an axis (0 along the fence, 1 away from it, 2 up), as a matrix."""
    cos, sin = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    one, two = [each for each in range(3) if each != axis]
    made = np.eye(3)
    made[one, one], made[one, two], made[two, one], made[two, two] = cos, -sin, sin, cos
    return made


def blade(miter, tilt):
    """What the blade is square to, when the saw is turned and the blade tilted."""
    return turned(2, miter) @ turned(1, tilt) @ np.array([1.0, 0, 0])


def same_plane(one, other):
    return abs(abs(one @ other) - 1) < 1e-9


@given(st.floats(1, 89), st.floats(0, 44))
def test_square_to_the_fence_the_rest_to_90_cuts_the_same_face(miter, tilt):
    """Vectors: the work turned a quarter about the upright, the saw turned the other way."""
    there = blade(miter, tilt)
    assert any(
        same_plane(there, turned(2, quarter) @ blade(way * (90 - miter), lean * tilt))
        for quarter in (90, -90)
        for way in (1, -1)
        for lean in (1, -1)
    )


@given(st.floats(1, 89))
def test_on_edge_the_rest_to_90_cuts_the_same_bevel(tilt):
    """Vectors: the work turned a quarter about the line of the cut."""
    assert any(
        same_plane(blade(0, tilt), turned(1, quarter) @ blade(0, way * (90 - tilt)))
        for quarter in (90, -90)
        for way in (1, -1)
    )


@settings(max_examples=40)
@given(st.integers(5, 40), st.integers(20, 80))
def test_a_compound_cut_past_the_tilt_is_cut_leaning_with_the_blade_upright(spring, corner):
    """Vectors: the molding rolled about its length until the blade's plane is upright."""
    values = {
        "found": "angle",
        "spring": str(spring),
        "left_end": "inside",
        "left_corner": str(corner),
        "right_end": "square",
        "measured": "",
    }
    said = reckon("crown", **values)
    miter, tilt = (float(said["by_key"][key]["text"].strip("≈ °")) for key in ("miter", "tilt"))
    found = [each for each in past(said) if "at its own slope" in each]
    assert bool(found) == (tilt > 45)
    if not found:
        return
    leaning = 90 - corner / 2
    normal = blade(miter, tilt)
    roll = math.degrees(math.atan2(normal[2], normal[1]))
    rolled = turned(0, -roll) @ normal
    assert rolled[2] == pytest.approx(0, abs=1e-9)
    assert math.degrees(math.acos(abs(rolled[0]))) == pytest.approx(leaning, abs=0.02)
    told = f"{leaning:g}°" if leaning <= 50 else f"{90 - leaning:g}°"
    assert told in found[0]
