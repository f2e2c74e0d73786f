"""A case that might tip: statics worked by hand, and work done in a small turn as an oracle."""

import math
import re
from fractions import Fraction

import pytest
from asking import ask, errors, reckon, texts
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.reckoners import RECKONERS

KEY = "tip_over"
BOOKCASE = {"height": "72", "depth": "12", "weight_lb": "80"}


def pounds(answer):
    return int(answer["text"].split(" lb")[0].replace(",", ""))


def test_a_child_on_an_empty_bookcase_is_worked_by_hand():
    """Holds 80 × 6 = 480. A 60 lb child 6 inches out tips by 360: 720 with the margin of twice.

    240 are lacking, over 72 inches and two anchors 1.67 lb each: up to 2. Alone it tips under a
    climber of 480 ÷ 6 = 80 lb. Statics by hand.
    """
    said = reckon(KEY, **BOOKCASE)
    assert said["verdict"] == "Nearly tips: use anchors rated"
    assert pounds(said["by_key"]["each"]) == 2
    assert said["by_key"]["margin"]["text"] == "1.3 times"
    assert pounds(said["by_key"]["climber"]) == 80


def test_all_that_tips_it_at_once_is_worked_by_hand():
    """Arm 12/2 − 2 = 4: holds 320. Climber 60 × (10 + 2) = 720, door 12 × (16/2 + 2) = 120,
    pull 15 × 60 = 900: 1740. The margin of 1 leaves 1420, over 48 and four anchors 7.4 lb.
    """
    said = reckon(
        KEY,
        **BOOKCASE,
        kick="2",
        out="10",
        door_lb="12",
        door_width="16",
        pull_lb="15",
        pull_height="60",
        anchor_height="48",
        anchors="4",
        times="1",
    )
    assert said["verdict"] == "Tips over: use anchors rated"
    assert pounds(said["by_key"]["each"]) == 8
    assert said["by_key"]["margin"]["text"] == "0.1 times"
    assert pounds(said["by_key"]["climber"]) == 0


def test_what_is_inside_counts_only_where_it_makes_it_worse():
    """The empty case is judged; but over a deep recess a load falls forward with the case."""
    bare, loaded = (reckon(KEY, **BOOKCASE, **more) for more in ({}, {"load_lb": "200"}))
    assert bare["by_key"]["each"] == loaded["by_key"]["each"]
    bare, loaded = (reckon(KEY, **BOOKCASE, kick="7", **more) for more in ({}, {"load_lb": "200"}))
    assert bare["verdict"] == loaded["verdict"] == "Falls over by itself: use anchors rated"
    assert pounds(loaded["by_key"]["each"]) > pounds(bare["by_key"]["each"])


def test_anchors_that_are_pulled_harder_than_any_is_tested_are_rated_for_their_pull():
    """Holds 80 × 6 = 480; 200 lb 20 inches out tip by 4,000, twice 8,000: 7,520 over 72 and one
    anchor are 104.4 lb."""
    said = reckon(KEY, **BOOKCASE, climber_lb="200", out="20", anchors="1")
    assert pounds(said["by_key"]["rating"]) == pounds(said["by_key"]["each"]) == 105
    assert [each["field"] for each in said["fixes"]] == ["anchors", "anchor_height"]
    assert reckon(KEY, **BOOKCASE)["fixes"] == []


def test_a_heavy_low_case_does_not_tip_and_is_still_to_be_anchored():
    said = reckon(KEY, height="30", depth="24", weight_lb="150", out="1")
    assert said["verdict"] == "Doesn’t tip, but anchor it: use anchors rated"
    assert said["by_key"]["margin"]["text"] == "30 times"  # 150 × 12 over 60 × 1
    assert pounds(said["answers"][0]) == 50  # what any furniture anchor is tested with
    assert pounds(said["by_key"]["each"]) == 0
    said = reckon(KEY, height="30", depth="24", weight_lb="150", out="0")
    assert said["verdict"].startswith("Doesn’t tip")
    assert "climber" not in said["by_key"]
    assert said["cautions"][0].startswith("Anchor it")


def test_a_case_full_of_records_is_judged_full_and_its_anchors_for_it_empty():
    """Records by IASA-TC 05, 4.6: 54 kg for each meter. 9 ft are 2.7432 m: 148.13 kg, 326.58 lb.

    By hand: 80 × 6 + 326.58 × 6 = 2,439.5 over a 60 lb child at 6: 6.7 times. The anchors stay at
    2 × 360 − 480 = 240 lb·in over 72: 3.33 lb on one of them.
    """
    empty = reckon(KEY, **BOOKCASE)
    said = reckon(KEY, **BOOKCASE, state="full", inside="records_12", loaded="9 ft")
    assert said["verdict"] == "Doesn’t tip when full, but anchor it: use anchors rated"
    assert said["by_key"]["margin"]["text"] == "6.7 times"
    assert said["by_key"]["figured"]["text"].startswith("With 326.6 lb (148.1 kg) in all of it")
    for key in ("rating", "each", "by_number"):
        assert said["by_key"][key] == empty["by_key"][key]


def test_the_pull_is_told_for_one_to_four_anchors_each_rounded_up():
    """By hand: 240 ÷ 72 is 3.33, 1.67, 1.11 and 0.83 lb: 1.512, 0.756, 0.504 and 0.378 kg."""
    assert reckon(KEY, **BOOKCASE)["by_key"]["by_number"]["text"] == (
        "4 lb (2 kg) on 1, 2 lb (1 kg) on 2, 2 lb (1 kg) on 3, 1 lb (1 kg) on 4"
    )


def test_a_load_up_high_falls_sooner_than_one_in_all_of_it_and_both_sooner_than_it_says_empty():
    """By hand: 80 at 36 and 160 at 36 or 54 high: arctan(6/36) = 9.46°, arctan(6/48) = 7.13°."""
    lean = {}
    for state in ("full", "above"):
        said = reckon(KEY, **BOOKCASE, state=state, load_lb="160")["by_key"]
        lean[state] = said["lean"]["text"]
    assert lean == {"full": "≈ 9.46°", "above": "≈ 7.13°"}
    assert "lean" not in reckon(KEY, **BOOKCASE, load_lb="160")["by_key"]
    worse = reckon(KEY, **BOOKCASE, load_lb="160")["by_key"]["figured"]["text"]
    assert worse == "Empty, which is worse than with 160 lb (72.6 kg)"


def test_what_is_inside_is_pounds_by_the_foot_and_kilograms_by_the_meter_alike():
    """25 lb/ft of books over 4 ft are 100 lb: as 100 lb, or 45.359237 kg, typed."""
    typed = reckon(KEY, **BOOKCASE, state="full", load_lb="100")["by_key"]
    books = reckon(KEY, **BOOKCASE, state="full", inside="books", loaded="4 ft")["by_key"]
    assert books == typed
    kilograms = {"units": "kg", "weight_kg": "36.2873896", "climber_kg": "27.2155422"}
    form = {"height": "72", "depth": "12", "state": "full", "load_kg": "45.359237"}
    assert reckon(KEY, **form, **kilograms)["by_key"] == typed


@settings(max_examples=60)
@given(
    st.fractions(min_value=8, max_value=40, max_denominator=4),
    st.fractions(min_value=20, max_value=200, max_denominator=2),
    st.fractions(min_value=1, max_value=500, max_denominator=2),
    st.sampled_from(("full", "above")),
)
def test_it_falls_by_itself_where_its_weight_stands_highest_over_the_edge(
    depth, weight, load, state
):
    """An oracle by energy: turned about its edge in small steps, the weight is highest there."""
    said = reckon(
        KEY,
        height="80",
        depth=f"{depth} in",
        weight_lb=str(float(weight)),
        load_lb=str(float(load)),
        state=state,
    )
    back = -float(depth) / 2
    masses = [(float(weight), back, 40.0), (float(load), back, 60.0 if state == "above" else 40.0)]
    step = math.radians(0.01)
    highest = max(range(9000), key=lambda turn: energy(turn * step, masses))
    told = float(said["by_key"]["lean"]["text"].removeprefix("≈ ").removesuffix("°"))
    assert told == pytest.approx(highest / 100, abs=0.02)


def energy(turn, weights):
    """What a case gains in height, times weight, when it turns a little about the front of its
    foot. `weights` are (pounds, in front of the foot, height)."""
    gained = 0.0
    for weight, front, high in weights:
        far, steep = math.hypot(front, high), math.atan2(high, front)
        gained += weight * far * (math.sin(steep - turn) - math.sin(steep))
    return gained


amounts = st.fractions(min_value=1, max_value=300, max_denominator=2)
sizes = st.fractions(min_value=8, max_value=100, max_denominator=8)


@given(sizes, amounts, amounts, st.fractions(min_value=0, max_value=20, max_denominator=4), sizes)
def test_anchors_hold_just_what_a_small_turn_gives(depth, weight, climber, out, anchor):
    """An oracle by virtual work: with the anchors' pull the turn neither gains nor loses."""
    said = reckon(
        KEY,
        height="100",
        depth=f"{depth} in",
        weight_lb=str(float(weight)),
        climber_lb=str(float(climber)),
        out=f"{out} in",
        anchor_height=f"{anchor} in",
        anchors="1",
        times="1",
    )
    turn = 1e-6
    masses = [(float(weight), -float(depth) / 2, 50.0), (float(climber), float(out), 60.0)]
    # To and fro, so that what grows with the square of the turn is gone.
    free = (energy(turn, masses) - energy(-turn, masses)) / 2
    needed = -free / turn / float(anchor)
    told = pounds(said["by_key"]["each"])
    assert told - 1 - 1e-3 <= max(needed, 0) <= told + 1e-3
    if abs(free) > 1e-4:
        tips = said["verdict"].startswith(("Tips", "Falls"))
        assert tips == (free < 0)


def test_in_a_metric_project_weights_are_kilograms_and_mean_the_same():
    settings = {"unit": "mm", "display": "mm", "mark": "1 mm"}
    form = {"height": "1829", "depth": "305", "weight_kg": "36.3", "units": "kg"}
    said = reckon(KEY, settings, **form)
    told = texts(said)
    assert re.fullmatch(r"\d+ kg", told["each"])
    # 36.3 × 152.5 = 5,535.75 over 27.2 × 150 = 4,080.
    assert told["margin"] == "1.3 times"
    assert int(Fraction("5535.75") / 150) == int(told["climber"].split()[0])


@pytest.mark.parametrize(
    ("more", "field", "words"),
    [
        ({"kick": "12"}, "kick", "past the back of the case"),
        ({"anchor_height": "73"}, "anchor_height", "above the top of the case"),
        ({"pull_lb": "10", "pull_height": "80"}, "pull_height", "above the top of the case"),
        ({"anchors": "0"}, "anchors", "1"),
        ({"weight_lb": ""}, "weight_lb", ""),
        ({"state": "full"}, "state", "no load to figure it full with"),
        ({"inside": "books"}, "loaded", ""),
    ],
)
def test_what_cannot_be_is_refused_beside_its_field(more, field, words):
    error = errors(ask(KEY, **{**BOOKCASE, **more}))[field]
    assert words in error["message"] + error["remedy"]


def test_the_drawing_opens_the_fields_and_names_the_pull():
    said = reckon(KEY, **BOOKCASE)
    shapes = said["drawing"]["shapes"]
    fields = {each.get("field") for each in shapes if each["kind"] == "dimension"}
    assert {"height", "depth"} <= fields
    assert any(each.get("text") == said["by_key"]["rating"]["text"] for each in shapes)


def test_the_depth_is_asked_for_at_the_sides_as_the_recess_is_taken_off_it():
    """By hand: 12/2 − 3 is an arm of 3, and 80 × 3 = 240 holds a climber 6 + 3 out of 26.7 lb."""
    said = reckon(KEY, **BOOKCASE, kick="3")
    assert pounds(said["by_key"]["climber"]) == 26
    (depth,) = [each for each in RECKONERS[KEY].fields if each.key == "depth"]
    assert depth.help == "Front to back, at the sides, with no recess taken off."


def test_a_recess_below_is_asked_for_at_once_as_it_tips_a_case_sooner():
    """By hand: 60 lb at 6 in against 100 lb at 7 in is 1.9 times; over a recess of 3 in it is
    60 × 9 against 100 × 4, 0.7 times."""
    assert "kick" in RECKONERS["tip_over"].basic
    case = {"height": "84", "depth": "14", "weight_lb": "100"}
    margins = [
        reckon("tip_over", **case, **more)["by_key"]["margin"]["text"]
        for more in ({}, {"kick": "3"})
    ]
    assert margins == ["1.9 times", "0.7 times"]


def test_it_says_that_nobody_climbs_it():
    """Consumer advice on tip-over, from memory."""
    assert any(
        "Don’t climb it or let anyone else" in e for e in reckon(KEY, **BOOKCASE)["cautions"]
    )
