"""Standing a case up and carrying it in: turned step by step, and tried in every orientation."""

from fractions import Fraction
from itertools import pairwise, permutations
from math import cos, hypot, pi, sin

import pytest
from asking import ask, errors, exact, inches, reckon
from hypothesis import assume, given
from hypothesis import strategies as st

KEY = "getting_it_in"
STEPS = 4000
sizes = st.integers(96, 1700).map(lambda number: Fraction(number, 16))
depths = st.integers(64, 500).map(lambda number: Fraction(number, 16))
DOOR = {"door": "yes", "door_width": "31 1/2", "door_height": "79 1/2"}


def highest_on_the_way_up(high, deep):
    """The highest corner of the side while it's turned from lying to upright, step by step."""
    best = 0.0
    for step in range(STEPS + 1):
        turn = pi / 2 * step / STEPS
        up, out = (sin(turn), cos(turn))
        best = max(best, *(h * up + d * out for h in (0, high) for d in (0, deep)))
    return best


@given(sizes, depths, sizes)
def test_a_case_stands_up_where_no_corner_meets_the_ceiling(high, deep, ceiling):
    need = highest_on_the_way_up(float(high), float(deep))
    assert need == pytest.approx(hypot(high, deep), rel=1e-6)
    assume(abs(hypot(high, deep) - float(ceiling)) > 1e-4)
    said = reckon(KEY, height=inches(high), depth=inches(deep), ceiling=inches(ceiling))
    stands = hypot(high, deep) <= ceiling
    assert said["verdict"].startswith("Yes, it goes in whole. Tips up") == stands
    by_key = said["by_key"]
    told = Fraction(by_key["diagonal"]["mark"])
    assert 0 <= float(told) - hypot(high, deep) + 1e-9 <= 1 / 16 + 1e-9
    if "tallest" in by_key:
        tallest = Fraction(by_key["tallest"]["mark"])
        assert hypot(tallest, deep) <= float(ceiling) + 1e-9
        assert hypot(tallest + Fraction(1, 16), deep) > float(ceiling) - 1e-9
    if "boxes" in by_key:
        many = int(by_key["boxes"]["text"])
        assert hypot(high / many, deep) <= float(ceiling) + 1e-9
        assert hypot(high / (many - 1), deep) > float(ceiling)
    else:
        assert stands or high > ceiling or deep >= ceiling


@given(sizes, sizes, depths, sizes, sizes)
def test_a_case_goes_through_a_doorway_where_one_of_its_orientations_does(
    high, wide, deep, door_wide, door_high
):
    """Every way of turning a box onto the three axes; what shows of it in the opening must fit."""
    boxes = set(permutations((high, wide, deep)))
    fits = [box for box in boxes if box[0] <= door_wide and box[1] <= door_high]
    said = reckon(
        KEY,
        height=inches(high),
        width=inches(wide),
        depth=inches(deep),
        ceiling="96",
        door="yes",
        door_width=inches(door_wide),
        door_height=inches(door_high),
    )["by_key"]
    assert said["through"]["text"].startswith("No,") == (not fits)
    if fits:
        best = max(min(door_wide - box[0], door_high - box[1]) for box in fits)
        assert min(exact(said["beside"]), exact(said["over"])) == best
        check_words(said, {"upright": high, "on its side": wide, "on its back": deep}, door_high)


def check_words(said, upright, door_high):
    lies = said["through"]["text"].lower().split(", ")[0]
    assert door_high - upright[lies] == exact(said["over"])


def test_the_record_cabinet_stands_up_and_goes_through_on_its_side():
    """By hand: √(93.75² + 15.375²) = 95.0024, under 96 1/8 by 1.1226; lying on its side it's 36 7/8
    high and 15 3/8 across."""
    form = {"height": "93 3/4", "depth": "15 3/8", "ceiling": "96 1/8", "width": "36 7/8"}
    said = reckon(KEY, **form, **DOOR)
    assert said["by_key"]["diagonal"]["text"] == "95 1/16″"
    assert said["by_key"]["spare"]["text"] == "1 1/16″"
    assert said["by_key"]["through"]["text"] == "On its side, top first"
    assert (exact(said["by_key"]["beside"]), exact(said["by_key"]["over"])) == (
        Fraction("16.125"),
        Fraction("42.625"),
    )


def test_a_three_four_five_just_passes_and_a_hair_more_does_not():
    """72² + 54² is 90² (three, four, five): exact, where a float might say either."""
    just = reckon(KEY, height="72", depth="54", ceiling="90")
    assert just["verdict"] == "Yes, it goes in whole. Tips up, nothing to spare"
    assert just["by_key"]["diagonal"]["text"] == "90″"
    hair = reckon(KEY, height="72 + 1/1000000", depth="54", ceiling="90")
    assert hair["verdict"] == "Not whole: in 2 boxes. Won’t tip up under 90″"
    assert hair["by_key"]["boxes"]["text"] == "2"
    assert [fix["field"] for fix in hair["fixes"]] == ["height", "depth", "kick"]


def test_without_its_separate_kick_a_case_stands_up_that_would_not():
    """By hand: √(95² + 24²) = 97.98 is over 96; √(91² + 24²) = 94.11, to spare 1.89, down 1 7/8."""
    form = {"height": "95", "depth": "24", "ceiling": "96"}
    assert reckon(KEY, **form)["verdict"].startswith("Not whole: in 2 boxes. Won’t tip up")
    said = reckon(KEY, **form, kick="4")
    assert (
        said["verdict"] == "Yes, it goes in whole. Tips up, 1″ to spare"
    )  # 96 − 95, once it's on its base
    assert any(each.startswith("Set the base first") for each in said["cautions"])


BASED = {"depth": "16", "ceiling": "96", "kick": "4"}


def test_a_case_as_high_as_the_ceiling_has_no_room_to_be_lifted_onto_its_base():
    """By hand: √(92² + 16²) = 93.38 passes under 96, but 92 + 4 is 96."""
    said = reckon(KEY, height="96", **BASED)
    no = "No, it doesn’t go in. "
    assert said["verdict"] == f"{no}Tips up, but there’s no room to lift it onto its base"
    assert "spare" not in said["by_key"]
    assert any(each.startswith("There’s no room to lift it") for each in said["cautions"])
    assert [fix["field"] for fix in said["fixes"]] == ["height"]


def test_a_case_a_mark_under_the_ceiling_has_that_mark_to_be_lifted_onto_its_base():
    """By hand: 96 − 95 15/16."""
    said = reckon(KEY, **BASED | {"height": "95 15/16", "depth": "12", "kick": "6"})
    assert said["by_key"]["spare"]["text"] == "1/16″"
    assert any("hardly any room to lift it onto its base" in each for each in said["cautions"])
    assert any(
        line["text"] == "Above it on its base: 96 − 95 15/16 = 1/16" for line in said["working"]
    )


@given(sizes, depths, sizes, st.integers(4, 95).map(lambda number: Fraction(number, 16)))
def test_what_is_left_is_the_less_of_the_way_up_and_of_standing_on_its_base(
    high, deep, ceiling, kick
):
    form = {"height": high, "depth": deep, "ceiling": ceiling, "kick": kick}
    by_key = reckon(KEY, **{key: inches(each) for key, each in form.items()})["by_key"]
    left = float(ceiling) - max(highest_on_the_way_up(float(high - kick), float(deep)), float(high))
    assume(abs(left) > 1e-3)
    assert ("spare" in by_key) == (left > 0)
    if left > 0:
        assert -1e-3 <= left - float(Fraction(by_key["spare"]["mark"])) <= 1 / 16 + 1e-3


def test_the_tallest_of_a_case_on_a_separate_base_is_told_without_it():
    """By hand: √(96² − 30²) = 91.19, down to 91 3/16; the box of 94 is higher."""
    said = reckon(KEY, **BASED | {"height": "96", "depth": "30", "kick": "2"})
    assert "tallest" not in said["by_key"]
    assert said["by_key"]["tallest_box"]["label"] == "Tallest without its toe kick"
    assert said["by_key"]["tallest_box"]["text"] == "91 3/16″"
    caution = next(each for each in said["cautions"] if each.startswith("It won’t tip up"))
    assert "no higher than ≈ 91 3/16″ without its toe kick, or make the toe kick higher" in caution
    assert "put it on a separate base" not in caution


def test_where_the_ceiling_ends_a_case_on_its_base_first_no_tallest_is_told():
    """By hand: a box 16 deep tips up 94.66 high, but with its kick of 4 that's over 96."""
    said = reckon(KEY, height="90", **BASED)
    assert not {"tallest", "tallest_box"} & set(said["by_key"])
    assert not any(line["text"].startswith("Tallest") for line in said["working"])


def test_a_case_deeper_than_it_is_wide_may_be_raised_off_its_side():
    """By hand: √(90² + 40²) = 98.5; √(90² + 20²) = 92.2."""
    form = {"height": "90", "depth": "40", "width": "20", "ceiling": "96"}
    said = reckon(KEY, **form, **DOOR)
    assert said["verdict"].startswith("Yes, it goes in whole. Tips up off its side, not off its")
    assert not said.get("fixes")


def test_a_case_taller_than_the_ceiling_is_no_matter_of_boxes():
    said = reckon(KEY, height="97", depth="12", ceiling="96")
    assert said["verdict"] == "No, it doesn’t go in. Taller than the ceiling, which is 96″"
    assert "boxes" not in said["by_key"]
    on_a_base = reckon(KEY, height="97", depth="12", ceiling="96", kick="4")
    assert on_a_base["verdict"] == said["verdict"]
    assert "spare" not in on_a_base["by_key"]
    assert not any(line["text"].startswith("Headroom") for line in on_a_base["working"])


def test_a_case_as_deep_as_the_ceiling_is_high_has_no_height_that_would_stand_up():
    said = reckon(KEY, height="20", depth="30", ceiling="30")
    assert "tallest" not in said["by_key"]
    assert said["verdict"].startswith("No, it doesn’t go in. Won’t tip up")


def test_a_case_too_large_for_the_doorway_is_told_so():
    form = {"height": "90", "depth": "40", "width": "36", "ceiling": "100"}
    said = reckon(KEY, **form, **DOOR)
    assert said["verdict"].endswith("; won’t go through the doorway")
    assert "beside" not in said["by_key"]


def test_raising_and_fastening_a_tall_case_have_their_cautions():
    """Two people, and an anchor by its instructions: consumer advice on tip-over, from memory."""
    cautions = " ".join(reckon(KEY, height="84", depth="12", ceiling="96")["cautions"])
    assert "two people" in cautions
    assert "follow the anchor’s instructions and local code" in cautions


def test_in_millimeters():
    """By hand: √(2300² + 400²) = 2334.52, up to 2335; 2400 less that is 65.48, down to 65."""
    said = reckon(KEY, {"unit": "mm", "mark": "1 mm"}, height="2300", depth="400", ceiling="2400")
    assert said["by_key"]["diagonal"]["text"] == "2335 mm"
    assert said["by_key"]["spare"]["text"] == "65 mm"


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"height": ""}, "height", "missing"),
        ({"kick": "84"}, "kick", "impossible"),
        ({"ceiling": "x"}, "ceiling", "unreadable"),
        ({"door": "yes", "door_width": "30", "door_height": "80"}, "width", "missing"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    form = {"height": "84", "depth": "12", "ceiling": "96"}
    assert errors(ask(KEY, **form | values))[field]["kind"] == kind


@pytest.mark.parametrize(("high", "stands"), [("84", True), ("95.5", False)])
def test_the_drawing_has_the_diagonal_upright_under_or_past_the_ceiling(high, stands):
    shapes = reckon(KEY, height=high, depth="14", ceiling="96")["drawing"]["shapes"]
    (diagonal,) = [each for each in shapes if each.get("role") == "answer"]
    assert diagonal["to"] == [0, 0]
    assert diagonal["from"][0] == 0
    assert (-diagonal["from"][1] <= 96) == stands
    (side,) = [each["points"] for each in shapes if each.get("role") == "stock"]
    lengths = [hypot(x - u, y - v) for (x, y), (u, v) in pairwise(side)]
    assert lengths == pytest.approx([14, float(high), 14], 1e-4)
    fields = [each.get("field") for each in shapes if each.get("role") == "given"]
    assert fields == ["height", "depth"]
    (ceiling,) = [each for each in shapes if each["kind"] == "label"]
    assert (ceiling["text"], ceiling["field"]) == ("ceiling 96″", "ceiling")
