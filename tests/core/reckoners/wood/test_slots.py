"""Slots for what must let a top move: screws of a fixed top, pins of breadboard ends."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.reckoners import RECKONERS
from sawside.wood.materials import MATERIALS, having

TOP = RECKONERS["slots_for_a_top"].example
ENDS = TOP | {"held": "pins"}
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
        "slots_for_a_top",
        held="screws",
        width="20 in",
        fixed=fixed,
        shank="3/16 in",
        screws=[f"{each} in" for each in screws],
        **season(wood, now, low, high),
    )["by_key"]
    line = {"middle": 10, "front": 0, "back": 20}[fixed]
    for number, place in enumerate(screws):
        out, back = walked(wood, now, low, high, abs(place - line))
        assert exact(said["away"]["items"][number]) == out
        assert exact(said["towards"]["items"][number]) == back
        slot = said["slots"]["items"][number]
        assert exact(slot) == Fraction(3, 16) + out + back
        assert 0 <= Fraction(slot["mark"]) - exact(slot) < Fraction(1, 16)


def tops(wood, now, low, high):
    """How wide a top is at its driest, wettest and now, as parts of its width now."""
    each = MATERIALS[wood].movement.tangential
    return [1 + each * (moisture - now) for moisture in (low, high, now)]


@settings(max_examples=50)
@given(woods, moistures, moistures, moistures, places, st.sampled_from(["middle", "front", "back"]))
def test_a_screw_in_the_moving_top_stays_inside_its_slot_in_the_apron(
    wood, now, one, other, screws, fixed
):
    """The apron stays. A screw walks with the top, from the line where the top is fixed."""
    low, high = sorted((one, other))
    said = reckon(
        "slots_for_a_top",
        held="screws",
        width="20 in",
        fixed=fixed,
        shank="3/16 in",
        screws=[f"{each} in" for each in screws],
        **season(wood, now, low, high),
    )["by_key"]
    line, shank = {"middle": 10, "front": 0, "back": 20}[fixed], Fraction(3, 16)
    for number, place in enumerate(screws):
        away, towards = (exact(said[key]["items"][number]) for key in ("away", "towards"))
        outward = 1 if place >= line else -1
        ends = sorted(
            (place - outward * (towards + shank / 2), place + outward * (away + shank / 2))
        )
        walked = [line + (place - line) * wide for wide in tops(wood, now, low, high)]
        assert ends[0] == min(walked) - shank / 2
        assert ends[1] == max(walked) + shank / 2


@settings(max_examples=80)
@given(
    woods,
    moistures,
    moistures,
    moistures,
    st.fractions("1/8", 9, max_denominator=8),
    st.sampled_from([1, -1]),
)
def test_a_pin_that_stays_in_the_end_is_inside_its_slot_in_the_moving_tongue(
    wood, now, one, other, pin, side
):
    """The pin stays where it is. The slot was cut now and moves with the tongue, ends and all.

    Checked at the driest, at the wettest and now, for pins on both sides of the center; at one of
    them each end of the slot touches the pin, so that it is no longer than it must be.
    """
    low, high = sorted((one, other))
    said = reckon(
        "slots_for_a_top",
        held="pins",
        width="20 in",
        pins=[f"{pin} in"],
        pin="1/4 in",
        **season(wood, now, low, high),
    )["by_key"]
    away, towards = (exact(said[key]["items"][0]) for key in ("pin_away", "pin_towards"))
    half = Fraction(1, 8)
    assert exact(said["slots"]["items"][0]) == 2 * half + away + towards
    ends = sorted((side * (pin - half - towards), side * (pin + half + away)))
    room = []
    for wide in tops(wood, now, low, high):
        room.append((side * pin - half - ends[0] * wide, ends[1] * wide - (side * pin + half)))
        assert min(room[-1]) >= 0, (wide, room[-1])
    assert [min(way) for way in zip(*room, strict=True)] == [0, 0]


def test_a_pin_in_the_middle_where_the_end_is_glued_has_a_hole_and_no_slot():
    year = season("cherry_black", 9, 6, 12)
    said = reckon("slots_for_a_top", **ENDS | {"pins": ["0", "6"]} | year)
    slots, away, towards = (
        said["by_key"][key]["items"] for key in ("slots", "pin_away", "pin_towards")
    )
    assert exact(slots[0]) == Fraction(1, 4)
    assert exact(away[0]) == exact(towards[0]) == 0
    assert min(exact(away[1]), exact(towards[1])) > 0
    lines = (*(line["text"] for line in said["working"]), *said["cautions"])
    assert [line for line in lines if line.startswith(("Fastener 1", "Pin 1"))] == [
        "Fastener 1 is at the center, where the end is glued: a plain 1/4″ hole",
        "Pin 1 is at the center, where you glue the end. Drill a plain hole for it, not a slot.",
    ]


def test_behind_a_breadboard_end_the_slot_runs_toward_the_center_for_what_the_top_grows():
    grows = reckon("slots_for_a_top", **ENDS | season("cherry_black", 6, 6, 12))["by_key"]
    assert exact(grows["pin_away"]["items"][0]) == 0 < exact(grows["pin_towards"]["items"][0])
    assert "toward the center" in grows["pin_towards"]["label"]
    shrinks = reckon("slots_for_a_top", **ENDS | season("cherry_black", 12, 6, 12))["by_key"]
    assert exact(shrinks["pin_towards"]["items"][0]) == 0 < exact(shrinks["pin_away"]["items"][0])
    assert "toward the edge" in shrinks["pin_away"]["label"]


@settings(max_examples=20)
@given(woods, moistures, moistures, moistures)
def test_a_breadboard_end_sees_half_of_the_movement_at_each_side(wood, now, one, other):
    low, high = sorted((one, other))
    said = reckon(
        "slots_for_a_top",
        held="pins",
        width="20 in",
        pins=["3 in"],
        pin="1/4 in",
        **season(wood, now, low, high),
    )["by_key"]
    widths = [10 * wide for wide in tops(wood, now, low, high)]
    assert exact(said["proud"]) == max(widths) - 10
    assert exact(said["short"]) == 10 - min(widths)


def test_a_case_worked_by_hand():
    """Black cherry, 18 in, 6 to 10 %, fixed at the front: 18 x .00248 x 4 = 0.17856."""
    case = season("cherry_black", 6, 6, 10) | {"width": "18", "fixed": "front", "screws": ["18"]}
    said = reckon("slots_for_a_top", **case)["by_key"]
    assert exact(said["away"]["items"][0]) == Fraction("0.17856")
    assert exact(said["towards"]["items"][0]) == 0


def test_a_place_beyond_the_top_names_its_row():
    said = ask("slots_for_a_top", **TOP | {"screws": ["3", "15"]})
    assert (said["error"]["field"], said["error"]["row"]) == ("screws", 1)
    said = ask("slots_for_a_top", **ENDS | {"pins": ["7 1/4"]})
    assert (said["error"]["field"], said["error"]["row"]) == ("pins", 0)


@pytest.mark.parametrize(("places", "case"), [("screws", TOP), ("pins", ENDS)])
def test_moisture_of_no_wood_and_blank_places_are_refused(places, case):
    assert errors(ask("slots_for_a_top", **case | {"now": "300"}))["now"]["kind"] == "range"
    assert errors(ask("slots_for_a_top", **case | {places: []}))[places]["kind"] == "missing"


@pytest.mark.parametrize("case", [TOP, ENDS])
def test_the_drawing_shows_the_longest_slot(case):
    said = reckon("slots_for_a_top", **case)
    drawn = said["drawing"]
    answers = [each["text"] for each in drawn["shapes"] if each.get("role") == "answer"]
    assert len(answers) == 1
    items = said["by_key"]["slots"]["items"]
    told = max(items, key=exact)["text"]
    assert answers[0] == f"≈ {told}"
    (name,) = [each["text"] for each in drawn["shapes"] if each.get("role") == "name"]
    assert name.endswith(", rounded up")
    assert "(up)" not in drawn["words"] + "".join(each.get("text", "") for each in drawn["shapes"])
    slot, shank = (each["points"] for each in drawn["shapes"] if each["kind"] == "polygon")
    longest = max(exact(each) for each in items)
    assert max(x for x, _ in slot) - min(x for x, _ in slot) == pytest.approx(
        float(longest), abs=1e-3
    )
    assert min(x for x, _ in slot) <= min(x for x, _ in shank)


@pytest.mark.parametrize("now", ["6", "12"])
def test_the_drawing_has_the_pin_at_the_end_of_the_slot_where_it_is_now(now):
    """The center of the top is at the left: at its driest a slot goes on to the left only."""
    said = reckon("slots_for_a_top", **ENDS | season("cherry_black", now, 6, 12))
    slot, pin = (
        [x for x, _ in each["points"]]
        for each in said["drawing"]["shapes"]
        if each["kind"] == "polygon"
    )
    if now == "6":
        assert max(pin) == pytest.approx(max(slot))
        assert min(pin) > min(slot)
    else:
        assert min(pin) == pytest.approx(min(slot))
        assert max(pin) < max(slot)


@pytest.mark.parametrize(
    ("pin", "out"), [("9 7/8", True), ("9 3/4", True), ("9 5/8", False), ("3", False)]
)
def test_a_slot_that_would_run_out_at_the_edge_of_the_tongue_is_told_of(pin, out):
    """Worked by hand: cherry, 12 to 6 %, is 1 − 0.00248 × 6 = 0.98512 of its width now. A pin of
    1/4 at 9 3/4 needs 9.875 ÷ 0.98512 = 10.024 of a half that is 10; at 9 5/8 it is 9.897.
    """
    said = reckon(
        "slots_for_a_top",
        held="pins",
        width="20",
        pin="1/4",
        pins=["2", pin],
        **season("cherry_black", 12, 6, 12),
    )
    told = [each for each in said["cautions"] if "runs out the edge" in each]
    assert len(told) == out
    assert all(each.startswith("Pin 2") for each in told)
