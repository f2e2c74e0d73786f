"""Swings by hand, what a door touches, and what cannot open."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon

DOOR = {"width": "15"}


def degrees(said, key):
    """An angle as it is told."""
    return float(said["by_key"][key]["text"].removeprefix("≈ ").removesuffix("°"))


def test_a_square_free_edge_needs_the_diagonal_less_the_width():
    """A door 4 wide and 3 thick reaches 5: it needs a gap of 1 (plane geometry, 3-4-5)."""
    said = reckon("door_swing", width="4", thickness="3", gap="1")
    assert exact(said["by_key"]["square_gap"]) == 1
    assert "bevel" not in said["by_key"]


def test_a_tight_gap_asks_for_a_bevel_that_clears():
    """√(5 1/2² − 3 1/2²) is 4.2426 of a door 5 wide: 0.7574 off, told up."""
    said = reckon("door_swing", width="5", thickness="3 1/2", gap="1/2")
    told = Fraction(said["by_key"]["bevel"]["mark"])
    assert Fraction("0.7573") < told < Fraction("0.7574") + Fraction(1, 64)
    assert degrees(said, "edge_bevel") == pytest.approx(12.21, abs=0.01)
    assert said["verdict"].startswith("Bevel")


def test_a_pin_in_front_of_the_face_needs_less_or_more_as_the_circle_says():
    """√(15² + 1² − 1/4²) − 15 = 0.0312: to the face's plane only (plane geometry); told up."""
    said = reckon("door_swing", **DOOR, out="1/4")
    assert said["by_key"]["square_gap"]["text"] == "1/32″"
    assert "bevel" in reckon("door_swing", **DOOR, out="1/4", gap="0.031")["by_key"]
    assert "bevel" not in reckon("door_swing", **DOOR, out="1/4", gap="0.0313")["by_key"]


def test_a_door_with_no_wall_opens_until_its_hinge_stops_it():
    """180° with a butt hinge, 110° with a cup hinge: common practice, no source."""
    assert reckon("door_swing", **DOOR)["by_key"]["opens"]["text"] == "180°"
    assert reckon("door_swing", **DOOR, hinge="cup")["by_key"]["opens"]["text"] == "110°"
    assert reckon("door_swing", **DOOR, stops="95")["by_key"]["opens"]["text"] == "95°"


def test_a_handle_against_a_wall_at_the_hinge_edge_stops_short_of_square():
    """A knob 1 out and 12 along: 90° − arctan (1 ÷ 12) = 85.24°."""
    said = reckon(
        "door_swing", **DOOR, wall="0", handle="1", handle_from="3", handle_wide="0", fit="overlay"
    )
    assert degrees(said, "opens") == pytest.approx(85.24, abs=0.006)
    assert said["by_key"]["touches"]["text"] == "Handle, on the wall"


def test_a_handle_that_sticks_out_as_far_as_the_wall_is_away_stops_at_square():
    """At 90° a point on a handle 1 out is 1 behind the pin."""
    said = reckon("door_swing", **DOOR, wall="1", handle="1", handle_wide="0")
    assert degrees(said, "opens") == 90


def test_a_handle_stops_a_door_at_its_neighbors_front():
    """A knob 1 out and 12 along, hung at the face: 180° − arctan (1 ÷ 12) = 175.24°."""
    knob = {"handle": "1", "handle_from": "3", "handle_wide": "0"}
    said = reckon("door_swing", **DOOR, **knob, neighbor="yes")
    assert degrees(said, "opens") == pytest.approx(175.24, abs=0.006)
    assert said["by_key"]["touches"]["text"] == "Handle, on the neighbor"
    bare = reckon("door_swing", **DOOR, handle="0", neighbor="yes")
    assert degrees(bare, "opens") == 180


def test_a_handle_at_the_pin_that_stays_behind_it_meets_no_neighbor():
    """A knob 1/4 out at the hinge edge never gets as far as a pin 1/2 out in front."""
    knob = {"handle": "1/4", "handle_from": "15", "handle_wide": "0"}
    said = reckon("door_swing", **DOOR, **knob, out="1/2", neighbor="yes")
    assert degrees(said, "opens") == 180


def test_without_a_handle_the_free_edge_touches():
    """90° + arcsin (7 1/2 ÷ 15) = 120°."""
    said = reckon("door_swing", **DOOR, wall="7 1/2", handle="0")
    assert degrees(said, "opens") == 120
    assert said["by_key"]["touches"]["text"] == "Free edge, on the wall"


def test_a_drawer_as_far_in_as_the_door_is_thick_passes_it_square():
    """At 90° the back of a door 3/4 thick, hung at its face, is 3/4 in."""
    said = reckon("door_swing", **DOOR, drawer="3/4")
    assert degrees(said, "needs") == 90
    assert said["by_key"]["drawer"]["text"] == "Passes the open door"


def test_a_drawer_behind_a_door_that_a_wall_stops_is_hit_and_says_what_helps():
    said = reckon("door_swing", **DOOR, drawer="1/2", wall="1", handle="1 1/2")
    assert said["by_key"]["drawer"]["text"] == "Hits the open door"
    assert said["verdict"].startswith("Drawer hits")
    assert {each["field"] for each in said["fixes"]} == {"drawer", "wall"}
    assert any("Fur the drawer out" in each for each in said["cautions"])


def test_a_cup_hinge_says_that_its_sheet_comes_first():
    cautions = reckon("door_swing", **DOOR, hinge="cup")["cautions"]
    assert any("hinge maker’s sheet comes first" in each for each in cautions)


@pytest.mark.parametrize(
    ("values", "field"),
    [
        ({"handle_from": "16"}, "handle_from"),
        ({"handle_wide": "14"}, "handle_wide"),
        ({"drawer": "16"}, "drawer"),
        ({"hinge": "cup", "behind": "1"}, "behind"),
        ({"hinge": "cup", "along": "4", "width": "6"}, "along"),
        ({"hinge": "cup", "wall": "0"}, "wall"),
        ({"thickness": "3", "width": "3"}, "thickness"),
    ],
)
def test_a_door_that_cannot_be_is_refused_with_the_field_and_a_remedy(values, field):
    said = ask("door_swing", **DOOR | values)
    assert set(errors(said)) == {field}
    assert said["error"]["kind"] == "impossible"
    assert said["error"]["remedy"].endswith(".")


def test_the_drawing_shows_the_open_door_at_the_wall():
    """The handle of the open door is at the wall and no farther."""
    drawing = reckon("door_swing", **DOOR, wall="1 1/2", handle="1 1/4")["drawing"]
    leaf = [shape for shape in drawing["shapes"] if shape.get("role") == "stock"]
    assert min(x for shape in leaf for x, _ in shape["points"]) == pytest.approx(-1.5, abs=1e-3)
    fields = {shape.get("field") for shape in drawing["shapes"] if shape["kind"] == "dimension"}
    assert fields == {"wall", "width"}
