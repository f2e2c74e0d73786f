"""A base on a floor that isn't level: by hand, and a level board let down on the floor."""

from fractions import Fraction
from itertools import accumulate

import pytest
from asking import ask, errors, exact, inches, items, reckon, texts
from hypothesis import given
from hypothesis import strategies as st
from oracles.put_up import along, lowered

KEY = "leveling"
TWO = {
    "front": ["36 1/8", "36 3/8", "36 1/2"],
    "back": ["36", "36 3/16", "36 5/16"],
    "cases": ["37 1/8", "37 1/8"],
}
DOWNS = st.lists(st.integers(16 * 30, 16 * 33), min_size=2, max_size=6)


def pairs(said, key):
    return [(each["label"], each["text"]) for each in said["by_key"][key]["items"]]


def test_two_cases_in_a_row_are_shimmed_from_the_high_point_by_hand():
    """The least reading is 36, at the left of the back: 36 1/8 − 36 = 1/8, and so on."""
    said = reckon(KEY, **TWO)
    assert said["verdict"] == "Highest at left end, back; thickest shim"
    assert texts(said)["most"] == "1/2″"
    assert pairs(said, "shims") == [
        ("Left end, front", "1/8″"),
        ("Joint 1, front", "3/8″"),
        ("Right end, front", "1/2″"),
        ("Joint 1, back", "3/16″"),
        ("Right end, back", "5/16″"),
    ]
    assert texts(said)["below"] == "32″"  # 36 − 4


def test_a_base_that_is_cut_is_highest_where_the_floor_is_lowest():
    """4 + 1/2 at the right end of the front, 4 at the high point."""
    said = reckon(KEY, **TWO, way="cut")
    assert said["verdict"] == "Highest at left end, back; rip the base to"
    assert texts(said)["rip"] == "4 1/2″"
    assert ("Left end, back", "4″") in pairs(said, "heights")
    assert ("Right end, front", "4 1/2″") in pairs(said, "heights")
    assert "shims" not in said["by_key"]


def test_a_joint_between_two_readings_is_on_the_straight_line_between_them():
    """From 30 to 31 over 40; 10 along is 30 1/4."""
    said = reckon(KEY, front=["30", "31"], cases=["10", "30"], taken="steps")
    assert pairs(said, "shims") == [("Joint 1, front", "1/4″"), ("Right end, front", "1″")]
    line = "Joint 1, front, between readings: 30 + (31 − 30) × 10 ÷ 40 = 30 1/4"
    assert line in [each["text"] for each in said["working"]]


def test_a_hump_between_the_joints_lifts_them_all():
    """By hand: 30 in the middle, 30 1/2 at both ends of one case."""
    said = reckon(KEY, front=["30 1/2", "30", "30 1/2"], cases=["40"], taken="steps")
    assert said["verdict"] == "Highest at place 1, front; thickest shim"
    assert pairs(said, "shims") == [("Left end, front", "1/2″"), ("Right end, front", "1/2″")]


def test_a_level_line_below_the_top_of_the_base_is_told_from_below():
    said = texts(reckon(KEY, front=["3", "3 1/4"], base="4"))
    assert said["above"] == "1″"
    assert "below" not in said


def test_a_floor_that_is_level_needs_no_shims():
    said = reckon(KEY, front=["30", "30"])
    assert said["verdict"] == "Level"
    assert "shims" not in said["by_key"]
    assert said["by_key"]["high"]["text"] == "Everywhere you measured"


def test_thick_shims_are_said_to_want_blocks():
    said = reckon(KEY, front=["30", "31"])["cautions"]
    assert any(each.startswith("1″ is a lot of shim") for each in said)
    assert any(each.startswith("The back isn’t figured") for each in said)
    assert not any("a lot of shim" in each for each in reckon(KEY, **TWO)["cautions"])


def test_shims_are_spoken_of_only_where_there_are_some():
    for more, there in (({}, True), ({"way": "cut"}, False)):
        said = reckon(KEY, **TWO, **more)["cautions"]
        assert any("Shim in pairs" in each for each in said) == there
    level = reckon(KEY, front=["36", "36"])["cautions"]
    assert not any("Shim in pairs" in each for each in level)


def test_a_floor_that_is_high_at_one_end_gets_the_shim_that_the_space_asks_for():
    """The question of the space, asked of the same floor: 3/8 low at the right."""
    space = reckon(
        "space", built="free", widths=["40"], left_height="96", floor="left", floor_out="3/8"
    )
    said = reckon(KEY, front=["30", "30 3/8"], cases=["40"])
    assert pairs(space, "shims") == [("Right end", "3/8″")]
    assert pairs(said, "shims") == [("Right end, front", "3/8″")]


@given(
    DOWNS,
    st.one_of(st.just([]), DOWNS),
    st.lists(st.integers(16 * 10, 16 * 50), min_size=1, max_size=4),
    st.sampled_from(("1/16", "1/4", "1 mm")),
)
def test_a_level_board_let_down_on_the_floor_needs_the_shims_and_cuts_that_are_told(
    front, back, widths, mark
):
    """Shims reach, and none is more than its mark too thick; a base cut as told is level on top."""
    cases = [Fraction(each, 16) for each in widths]
    run, joints = sum(cases), list(accumulate(cases, initial=Fraction(0)))
    lines = {
        edge: [
            (run * Fraction(at, len(downs) - 1), -Fraction(down, 16))
            for at, down in enumerate(downs)
        ]
        for edge, downs in (("front", front), ("back", back))
        if downs
    }
    form = {edge: [inches(-height) for _, height in line] for edge, line in lines.items()} | {
        "cases": [inches(each) for each in cases],
        "taken": "steps",
        "base": "5",
    }
    rest = lowered(lines.values())
    wanted = [rest - along(line, joint) for line in lines.values() for joint in joints]
    said = reckon(KEY, {"mark": mark}, **form)
    told = said["by_key"].get("shims", {"items": []})["items"]
    assert [exact(each) for each in told] == [each for each in wanted if each]
    for each in told:
        assert 0 <= Fraction(each["mark"]) - exact(each) < Fraction(1, 16)
    cut = reckon(KEY, {"mark": mark}, **form, way="cut")
    assert items(cut, "heights") == [5 + each for each in wanted]
    lowest = min(height for line in lines.values() for _, height in line)
    assert Fraction(cut["by_key"]["rip"]["mark"]) >= 5 + rest - lowest


@pytest.mark.parametrize(
    ("values", "field", "words"),
    [
        ({"front": ["30"]}, "front", "One reading along the front"),
        ({"front": ["30", "31"], "back": ["30"]}, "back", "One reading along the back"),
        ({"front": ["30", "31"], "cases": ["20", "20"]}, "front", "2 cases have 3 ends and joints"),
        ({"front": ["30", "31", "30"], "cases": ["20"]}, "front", "1 case has 2 ends and joints"),
    ],
)
def test_too_few_readings_are_refused(values, field, words):
    assert words in errors(ask(KEY, **values))[field]["message"]


def test_the_drawing_names_what_goes_under_each_place_of_the_front():
    shapes = reckon(KEY, **TWO)["drawing"]["shapes"]
    assert {"1/8″", "3/8″", "1/2″"} <= {each.get("text") for each in shapes}
    (floor,) = [each for each in shapes if each.get("role") == "hatch"]
    (base,) = [each for each in shapes if each["kind"] == "polygon" and each["role"] == "stock"]
    assert max(y for _, y in base["points"]) < min(y for _, y in floor["points"])
