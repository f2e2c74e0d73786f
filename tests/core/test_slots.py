"""Slots for what must let a top move: screws of a fixed top, pins of breadboard ends."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.reckoners import RECKONERS
from sawside.wood.materials import MATERIALS, having

TOP = RECKONERS["slots_for_a_fixed_top"].example
ENDS = RECKONERS["breadboard_ends"].example
woods = st.sampled_from([each.key for each in having("movement")])
moistures = st.integers(min_value=6, max_value=14)
places = st.lists(st.fractions(0, 20, max_denominator=16), min_size=1, max_size=4)


def season(wood, now, low, high):
    return {"species": wood, "now": str(now), "year": "own", "low": str(low), "high": str(high)}


def walked(wood, now, low, high, distance):
    """How far a point so far from the fixed line goes out and in, from where it is now."""
    each = MATERIALS[wood].movement.tangential
    moves = [distance * each * (moisture - now) for moisture in (low, high, now)]
    return max(moves), -min(moves)


@settings(max_examples=50)
@given(woods, moistures, moistures, moistures, places, st.sampled_from(["middle", "front", "back"]))
def test_each_screw_finds_room_in_its_slot_all_year(wood, now, one, other, screws, fixed):
    low, high = sorted((one, other))
    said = reckon(
        "slots_for_a_fixed_top", width="20 in", fixed=fixed, shank="3/16 in",
        screws=[f"{each} in" for each in screws], **season(wood, now, low, high),
    )["by_key"]  # fmt: skip
    line = {"middle": 10, "front": 0, "back": 20}[fixed]
    for number, place in enumerate(screws):
        out, back = walked(wood, now, low, high, abs(place - line))
        assert exact(said["away"]["items"][number]) == out
        assert exact(said["towards"]["items"][number]) == back
        slot = said["slots"]["items"][number]
        assert exact(slot) == Fraction(3, 16) + out + back
        assert 0 <= Fraction(slot["mark"]) - exact(slot) < Fraction(1, 16)


@settings(max_examples=50)
@given(woods, moistures, moistures, moistures, st.fractions(1, 9, max_denominator=8))
def test_a_breadboard_end_sees_half_of_the_movement_at_each_side(wood, now, one, other, pin):
    low, high = sorted((one, other))
    said = reckon(
        "breadboard_ends", width="20 in", pins=[f"{pin} in"], pin="1/4 in",
        **season(wood, now, low, high),
    )["by_key"]  # fmt: skip
    out, back = walked(wood, now, low, high, 10)
    assert exact(said["proud"]) == out
    assert exact(said["short"]) == back
    out, back = walked(wood, now, low, high, pin)
    assert exact(said["slots"]["items"][0]) == Fraction(1, 4) + out + back


def test_a_case_worked_by_hand():
    """Black cherry, 18 in, 6 to 10 %, fixed at the front: 18 x .00248 x 4 = 0.17856."""
    case = season("cherry_black", 6, 6, 10) | {"width": "18", "fixed": "front", "screws": ["18"]}
    said = reckon("slots_for_a_fixed_top", **case)["by_key"]
    assert exact(said["away"]["items"][0]) == Fraction("0.17856")
    assert exact(said["towards"]["items"][0]) == 0


def test_a_place_beyond_the_top_names_its_row():
    said = ask("slots_for_a_fixed_top", **TOP | {"screws": ["3", "15"]})
    assert (said["error"]["field"], said["error"]["row"]) == ("screws", 1)
    said = ask("breadboard_ends", **ENDS | {"pins": ["7 1/4"]})
    assert (said["error"]["field"], said["error"]["row"]) == ("pins", 0)


@pytest.mark.parametrize(
    ("question", "case"), [("slots_for_a_fixed_top", TOP), ("breadboard_ends", ENDS)]
)
def test_moisture_out_of_range_and_blank_places_are_refused(question, case):
    places = "screws" if question == "slots_for_a_fixed_top" else "pins"
    assert errors(ask(question, **case | {"now": "20"}))["now"]["kind"] == "range"
    assert errors(ask(question, **case | {places: []}))[places]["kind"] == "missing"


@pytest.mark.parametrize(
    ("question", "case"), [("slots_for_a_fixed_top", TOP), ("breadboard_ends", ENDS)]
)
def test_the_drawing_shows_the_longest_slot(question, case):
    said = reckon(question, **case)
    drawn = said["drawing"]
    answers = [each["text"] for each in drawn["shapes"] if each.get("role") == "answer"]
    assert len(answers) == 1
    assert answers[0].endswith("″")
    slot, shank = (each["points"] for each in drawn["shapes"] if each["kind"] == "polygon")
    longest = max(exact(each) for each in said["by_key"]["slots"]["items"])
    assert max(x for x, _ in slot) - min(x for x, _ in slot) == pytest.approx(
        float(longest), abs=1e-3
    )
    assert min(x for x, _ in slot) <= min(x for x, _ in shank)
