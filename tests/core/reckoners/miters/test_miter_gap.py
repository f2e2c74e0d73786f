"""A setting or a length that is off opens joints, and the gap tells which of the two it was."""

from fractions import Fraction

import mpmath
import pytest
from asking import ask, errors, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

RING = {"asked": "angle", "corners": "4", "width": "2 1/4", "angle_off": "0.5", "side": "13 7/8"}


def number(value):
    return float(value["decimals"].rstrip("…"))


def test_half_a_degree_opens_a_square_frame_by_a_twentieth_of_an_inch():
    """Worked by hand: the face is 2.25 / cos 44.5 = 3.1546 long; 2 x 3.1546 x sin 0.5 = 0.05506."""
    said = reckon("miter_gap", **RING)["by_key"]
    assert number(said["gap"]) == pytest.approx(0.05506, abs=1e-5)
    assert said["feeler"]["text"] == "0.055″, 1.39 mm"
    assert "toe" in said["opens"]["text"]
    assert said["closing"]["exact"] == "4"


@pytest.mark.parametrize("corners", range(3, 25))
def test_closing_angles_add_up_over_all_cuts(corners):
    """Every corner has two cuts; what each is off adds up."""
    values = RING | {"corners": str(corners), "angle_off": "0.1", "angle_way": "large"}
    said = reckon("miter_gap", **values)["by_key"]
    assert Fraction(said["closing"]["exact"]) == Fraction(2 * corners, 10)
    assert "heel" in said["opens"]["text"]


def test_a_wrong_length_opens_a_joint_evenly_by_its_part_square_to_the_cut():
    """Textbook trigonometry: 1/4 x cos 45 = 0.176777; at three corners 1/4 x cos 60 = 1/8."""
    said = reckon("miter_gap", asked="length", length_off="1/4")["by_key"]
    assert number(said["gap"]) == pytest.approx(0.176777, abs=2e-6)
    three = reckon("miter_gap", asked="length", length_off="1/4", corners="3")["by_key"]
    assert three["gap"]["exact"] == "1/8"


@settings(max_examples=40)
@given(
    st.integers(min_value=3, max_value=24),
    st.fractions(min_value="1/4", max_value=6, max_denominator=16),
    st.fractions(min_value="1/20", max_value=2, max_denominator=20),
    st.booleans(),
)
def test_the_gap_of_an_error_names_that_error_again(corners, width, off, small):
    way = "small" if small else "large"
    shown = reckon(
        "miter_gap",
        asked="angle",
        corners=str(corners),
        width=f"{width} in",
        side="20",
        angle_off=str(off),
        angle_way=way,
    )["by_key"]
    with mpmath.workdps(30):
        turn = mpmath.radians(mpmath.mpf(off.numerator) / off.denominator)
        cut = mpmath.pi / corners + (-turn if small else turn)
        wide = mpmath.mpf(width.numerator) / width.denominator
        gap = 2 * wide / mpmath.cos(cut) * mpmath.sin(turn)
        assert number(shown["gap"]) == pytest.approx(float(gap), abs=2e-6)
        open_ = f"{float(gap):.10f}"
    seen = reckon(
        "miter_gap",
        corners=str(corners),
        width=f"{width} in",
        **{"toe" if small else "heel": f"{open_} in"},
    )["by_key"]
    assert float(seen["setting_off"]["text"].strip("≈ °")) == pytest.approx(float(off), abs=0.0051)
    assert ("too low" if small else "too high") in seen["told"]["text"]
    assert seen["fault"]["text"] == "Angle"
    assert "length_off" not in seen


def test_an_even_gap_is_a_length_and_an_uneven_one_is_both():
    even = reckon("miter_gap", width="2 1/4", heel="1/8", toe="1/8")["by_key"]
    assert "setting_off" not in even
    assert number(even["length_off"]) == pytest.approx(0.176777, abs=2e-6)
    both = reckon("miter_gap", width="2 1/4", heel="1/16", toe="1/8")["by_key"]
    assert "setting_off" in both
    assert (even["fault"]["text"], both["fault"]["text"]) == ("Length", "Angle and length")
    assert number(both["length_off"]) == pytest.approx(0.088388, abs=2e-6)


def test_the_verdict_names_the_fault_and_what_to_do_about_it():
    said = reckon("miter_gap", width="2 1/4", heel="0", toe="1/32")
    assert said["verdict"] == (
        "Angle: increase the miter ≈ 0.28° (from 45° to ≈ 45.28°) on both pieces"
    )


@pytest.mark.parametrize(
    ("question", "values", "field", "kind"),
    [
        ("miter_gap", RING | {"corners": "2"}, "corners", "range"),
        ("miter_gap", RING | {"angle_off": "0"}, "angle_off", "range"),
        ("miter_gap", RING | {"corners": "5", "other_side": "3"}, "other_side", "conflict"),
        ("miter_gap", {"asked": "length", "length_off": "0"}, "length_off", "range"),
        ("miter_gap", {"width": "2"}, "toe", "impossible"),
        ("miter_gap", {"width": "2", "heel": "1"}, "heel", "impossible"),
    ],
)
def test_what_can_not_be_is_refused_by_its_field(question, values, field, kind):
    error = errors(ask(question, **values))[field]
    assert error["kind"] == kind
    assert error["remedy"]


def test_the_drawing_opens_where_the_joint_does():
    def gaps(**values):
        shapes = reckon("miter_gap", **(RING | values))["drawing"]["shapes"]
        left, right = (shape["points"] for shape in shapes if shape["kind"] == "polygon")
        return right[0][0] - left[0][0], right[3][0] - left[3][0]

    heel, toe = gaps(angle_way="small")
    assert heel < toe
    heel, toe = gaps(angle_way="large")
    assert heel > toe
