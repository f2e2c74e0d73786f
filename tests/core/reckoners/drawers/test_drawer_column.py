"""Drawer heights: known columns by hand, what can't be built, the drawing."""

from fractions import Fraction

import pytest
from asking import ask, errors, reckon

KEY = "drawer_column"


def items(said, key):
    """The texts of an answer that is a list."""
    return [each["text"] for each in said["by_key"][key]["items"]]


def test_equal_fronts_come_out_on_the_marks_and_add_up():
    """By hand: 26 − 8 × 1/8 = 25; ÷ 7 is 3 4/7, on sixteenths 3 9/16, and 1/16 is left over for
    the bottom one: 6 × 3 9/16 + 3 5/8 = 25."""
    said = reckon(KEY, height="26", drawers="7")
    assert items(said, "fronts") == ["3 9/16″"] * 6 + ["3 5/8″"]
    assert said["verdict"] == "7 fronts, 3 9/16″ down to 3 5/8″"


def test_graduated_fronts_grow_by_the_step_from_the_top_down():
    """By hand: 26 1/2 − 5 × 1/8 = 25 7/8; less 1 + 2 + 3 is 19 7/8, ÷ 4 = 4 31/32."""
    said = reckon(KEY, height="26 1/2", drawers="4", layout="step", step="1")
    assert items(said, "fronts") == ["4 31/32″", "5 31/32″", "6 31/32″", "7 31/32″"]
    assert items(said, "boxes") == ["3 31/32″", "4 31/32″", "5 31/32″", "6 31/32″"]
    assert items(said, "marks")[0] == "5 3/32″"


def test_fronts_by_a_ratio_are_within_a_mark_of_it():
    """By hand: weights 1, 0.8, 0.64 of 20 + 2 × 1/4 − 2 × 1/8 = 20 1/4: 8.30, 6.64, 5.31."""
    column = {"height": "20", "drawers": "3", "front": "overlay", "lap": "1/4"}
    said = reckon(KEY, **column, layout="ratio", percent="80")
    told = [Fraction(each["mark"]) for each in said["by_key"]["fronts"]["items"]]
    assert sum(told) == Fraction(81, 4)
    for mark, share in zip(told, (Fraction(64), Fraction(80), Fraction(100)), strict=True):
        assert abs(mark - Fraction(81, 4) * share / 244) < Fraction(1, 16)


def test_rails_between_inset_drawers_leave_openings_a_gap_larger_all_round():
    """By hand: 26 − 1/4 − 2 × (3/4 + 1/4) = 23 3/4; 5, 7 1/2 and the rest, 11 1/4."""
    column = {"height": "26", "drawers": "3", "divided": "rails"}
    said = reckon(KEY, **column, layout="given", heights=["5", "7 1/2"])
    assert items(said, "fronts") == ["5″", "7 1/2″", "11 1/4″"]
    assert items(said, "openings") == ["5 1/4″", "7 3/4″", "11 1/2″"]


@pytest.mark.parametrize(
    ("values", "settings", "box", "less"),
    [
        ({"divided": "rails", "rail": "1 1/2"}, None, "7 1/4″", "3/4 + 2 × 3/8 = 1 1/2"),
        ({}, None, "7 3/4″", "3/4 + 3/8 = 1 1/8"),
        (
            {"divided": "rails", "rail": "40 mm", "height": "656 mm"},
            {"unit": "mm"},
            "174 mm",
            "18 + 2 × 10 = 38",
        ),
    ],
)
def test_boxes_behind_overlay_fronts_keep_room_in_their_openings(values, settings, box, less):
    """By hand, 3/4 in (18 mm) as in Drawer box: 27 − 2 × 1 1/2 = 24, three openings of 8, less 3/4.
    Without rails 26 1/8 + 2 × 3/8 − 2 × 1/8 = 26 5/8, a front of 8 7/8; the case takes 3/8 of it at
    one edge, so less 1 1/8. 656 − 2 × 40 = 576, three openings of 192, less 18."""
    column = {"height": "27" if values else "26 1/8", "drawers": "3", "front": "overlay"}
    said = reckon(KEY, settings, **column | values)
    assert items(said, "boxes")[0] == box
    assert any(f"Box lower by: {less}" in each["text"] for each in said["working"])


def test_an_opening_off_the_marks_leaves_its_rest_with_one_front():
    said = reckon(KEY, height="26 1/40", drawers="4")
    told = [Fraction(each["exact"]) for each in said["by_key"]["fronts"]["items"]]
    assert sum(told) == Fraction("26.025") - Fraction(5, 8)


@pytest.mark.parametrize(
    ("values", "field", "words"),
    [
        ({"height": "3", "drawers": "6"}, "drawers", "under 1/2″"),
        ({"layout": "step", "step": "9"}, "step", "under 1/2″"),
        ({"layout": "given", "heights": ["20", "8"]}, "heights", "under 1/2″"),
        ({"layout": "given", "heights": ["5"]}, "heights", "need 2 heights, but there is 1"),
        ({"divided": "rails", "front": "overlay", "lap": "3/8"}, "lap", "meet on a rail 3/4″ high"),
        ({"less": "10"}, "less", "is nothing"),
        (
            {"divided": "rails", "rail": "2", "front": "overlay", "lap": "3/4", "less": "1"},
            "less",
            "higher than its opening",
        ),
        ({"front": "overlay", "lap": "3/4", "less": "1/2"}, "less", "higher than its opening"),
    ],
)
def test_what_cant_be_stacked_is_refused_by_the_field_to_change(values, field, words):
    said = errors(ask(KEY, **{"height": "26", "drawers": "3"} | values))
    assert said[field]["kind"] == "impossible"
    assert words in said[field]["message"]


def test_the_drawing_tells_each_front_and_opens_what_was_typed():
    column = {"height": "26", "drawers": "3", "layout": "given", "heights": ["5", "7 1/2"]}
    said = reckon(KEY, **column)["drawing"]
    told = {each["text"]: each.get("field") for each in said["shapes"] if "text" in each}
    assert told == {"26″": "height", "5″": "heights", "7 1/2″": "heights", "13″": None}
