"""Whether the case that fills a space can be tipped up in it."""

from fractions import Fraction
from math import hypot

import pytest
from asking import inches, reckon
from hypothesis import given
from hypothesis import strategies as st

from tests.core.reckoners.case.spaces import KEY, MARK, WALLS


def test_a_case_up_to_the_ceiling_never_stands_up_and_says_what_would():
    """By hand: √(96² − 24²) is 92.95, down to 92 15/16; half of 96 passes, so two boxes."""
    said = reckon(KEY, **WALLS, left_depth="24")
    assert said["verdict"] == "37″ wide, 96″ high, 24″ deep; won’t tip up in one piece"
    assert said["by_key"]["tallest"]["text"] == "92 15/16″"
    assert said["by_key"]["boxes"]["text"] == "2"
    assert [fix["field"] for fix in said["fixes"]] == ["above", "kick"]
    lower = reckon(KEY, **WALLS, left_depth="24", above="3 1/16")
    assert "boxes" not in lower["by_key"]
    assert lower["verdict"].endswith("24″ deep")
    on_a_base = reckon(KEY, **WALLS, left_depth="24", kick="4")
    assert on_a_base["by_key"]["diagonal"]["text"] == "95 1/8″"  # √(92² + 24²) = 95.079


def test_a_case_up_to_the_ceiling_is_told_that_no_depth_of_it_tips_up():
    said = reckon(KEY, built="walls", widths=["40"], left_height="96")
    assert said["verdict"] == "39 1/2″ wide, 96″ high; won’t tip up in one piece"
    assert any("whatever its depth" in each for each in said["cautions"])
    assert [fix["field"] for fix in said["fixes"]] == ["above", "kick"]
    assert "deepest" not in said["by_key"]


def test_where_no_depth_is_given_the_deepest_that_tips_up_is_told():
    """By hand: √(96² − 93²) = 23.812, a hair under 23 13/16, down to 23 3/4; a floor out of
    level by 3/8 leaves a case of 95 5/8, and √(96² − 95.625²) = 8.477, down to 8 7/16."""
    said = reckon(KEY, **WALLS, above="3")
    assert said["by_key"]["deepest"]["text"] == "23 3/4″"
    assert said["verdict"] == "37″ wide, 93″ high"
    out = reckon(KEY, **WALLS, floor="left", floor_out="3/8")
    assert out["verdict"].endswith("; tips up if it’s no more than ≈ 8 7/16″ deep")
    assert [fix["field"] for fix in out["fixes"]] == ["above"]


@given(st.integers(800, 1700), st.integers(1, 400))
def test_the_deepest_that_tips_up_passes_the_ceiling_and_a_mark_more_does_not(high, gap):
    form = WALLS | {"left_height": inches(Fraction(high, 16)), "above": inches(Fraction(gap, 16))}
    deepest = Fraction(reckon(KEY, **form)["by_key"]["deepest"]["mark"])
    case, ceiling = (high - gap) / 16, high / 16
    assert hypot(case, float(deepest)) <= ceiling + 1e-9
    assert hypot(case, float(deepest + MARK)) > ceiling


@pytest.mark.parametrize("depth", ["16", ""])
def test_a_case_up_to_the_ceiling_has_no_room_to_be_lifted_onto_its_base(depth):
    form = WALLS | {"left_height": "90", "left_depth": depth, "kick": "4"}
    said = reckon(KEY, **form)
    assert said["verdict"].endswith("; no room to lift it onto its base")
    assert any(each.startswith("There’s no room to lift it onto") for each in said["cautions"])
    assert [fix["field"] for fix in said["fixes"]] == ["above"]
    little = reckon(KEY, **form, above="1/4")
    assert any("hardly any room to lift it onto its base" in each for each in little["cautions"])
    enough = reckon(KEY, **form, above="1")
    assert not any("onto its base" in each for each in enough["cautions"])


def test_the_tallest_on_a_separate_base_is_told_without_it():
    """By hand: √(96² − 40²) = 87.27, down to 87 1/4, where the box is 92."""
    said = reckon(KEY, **WALLS, left_depth="40", kick="4")
    assert said["by_key"]["tallest_box"]["text"] == "87 1/4″"
    assert "tallest" not in said["by_key"]
    (caution,) = [each for each in said["cautions"] if each.startswith("It won’t tip up")]
    assert "make the toe kick higher" in caution
