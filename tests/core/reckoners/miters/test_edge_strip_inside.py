"""Strips in an inside corner of a panel, such as a notch: the face is the shorter side."""

from fractions import Fraction

import numpy as np
import pytest
from asking import ask, errors, exact, reckon
from exactly import exactly
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.solid import board, faces_meet, overlap, placed

lengths = st.fractions(min_value=12, max_value=60, max_denominator=32)
thin = st.fractions(min_value="1/8", max_value=2, max_denominator=32)


def strip(panel, thickness, left, right, **more):
    values = {"panel": f"{panel} in", "thickness": f"{thickness} in"}
    return values | {"left_end": left, "right_end": right} | more


def test_a_square_inside_corner_takes_the_thickness_off_the_face():
    """Common practice, no source: at a 45 the face is shorter by the thickness."""
    said = reckon("edge_strip", **strip(20, "3/8", "flush", "inside"))
    by_key = {key: answer["text"] for key, answer in said["by_key"].items()}
    assert (by_key["panel_side"], by_key["face_side"]) == ("20″", "19 5/8″")
    assert (by_key["long_side"], by_key["right_set_back"]) == ("20″", "3/8″")
    (part,) = said["parts"]
    assert part["ends"]["right"] == {
        "cut": "bevel",
        "angle": "45°, saw swung left",
        "at_the_saw": ["45°", "swung left"],
    }
    assert part["short_side"]["text"] == "19 5/8″"
    assert "At the face: 20 − 3/8 = 19 5/8" in [line["text"] for line in said["working"]]


def test_between_an_outside_and_an_inside_corner_it_is_cut_from_tip_to_tip():
    """By hand: 3/8 stands out at the left, and the right end of the face stands back as far."""
    said = reckon("edge_strip", **strip(20, "3/8", "miter", "inside"))["by_key"]
    assert [exact(said[key]) for key in ("panel_side", "face_side")] == [20, 20]
    assert exact(said["long_side"]) == Fraction("20.375")


@settings(max_examples=60, deadline=None)
@given(lengths, lengths, thin, st.integers(40, 160))
def test_two_strips_close_in_an_inside_corner(panel, other, thickness, corner):
    """Independent oracle: both strips as solids, with the corner of the panel at the origin."""
    angle = str(corner)
    along = exactly("edge_strip", **strip(panel, thickness, "flush", "inside", right_corner=angle))
    beside = exactly("edge_strip", **strip(other, thickness, "inside", "flush", left_corner=angle))
    turn = np.radians(corner)
    one = solid(along, thickness, "right").moved(
        placed((-float(panel), 0, 0), (1, 0, 0), (0, -1, 0))
    )
    two = solid(beside, thickness, "left").moved(
        placed((0, 0, 0), (-np.cos(turn), -np.sin(turn), 0), (-np.sin(turn), np.cos(turn), 0))
    )
    assert faces_meet(one, "right", two, "left")
    assert overlap(one, two) < 1e-9


def solid(told, thickness, end):
    """The strip with its panel side on y = 0; one end as it was told, the other one square."""
    long, thick = float(told["panel_side"]), float(thickness)
    lean = {"left": 0.0, "right": 0.0} | {end: float(told[f"{end}_set_back"]) / thick}
    return (
        board(thick, 1.0)
        .cut("left", (-1, lean["left"], 0), (0, 0, 0))
        .cut("right", (1, lean["right"], 0), (long, 0, 0))
    )


def test_a_strip_whose_face_is_taken_by_inside_corners_is_refused():
    values = strip(1, 1, "inside", "inside", left_corner="60", right_corner="60")
    error = errors(ask("edge_strip", **values))["panel"]
    assert error["kind"] == "impossible"
    assert "thinner strip" in error["remedy"]


@pytest.mark.parametrize("degrees", ["179.5", "180"])
def test_an_inside_corner_as_good_as_straight_is_refused(degrees):
    said = ask("edge_strip", **strip(20, 1, "inside", "flush", left_corner=degrees))
    assert errors(said)["left_corner"]["kind"] == "range"
