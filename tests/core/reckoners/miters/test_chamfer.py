"""A chamfer is a right triangle: any one side and the angle make the others."""

from math import cos, radians, sin

import pytest
from asking import as_drawn, ask, errors, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

measures = st.fractions(min_value="1/8", max_value=4, max_denominator=32)
angles = st.integers(5 * 4, 85 * 4).map(lambda quarters: quarters / 4)


def test_at_45_the_chamfer_is_wider_than_its_set_back_by_the_root_of_2():
    """Textbook trigonometry: 3/8 x 1.41421 = 0.53033."""
    said = reckon("chamfer", {"mark": ".001 in"}, measure="3/8")["by_key"]
    assert said["width"]["decimals"] == "0.530330…"
    assert said["face"]["exact"] == said["edge"]["exact"] == "3/8"


def test_at_30_half_of_the_width_goes_down_the_edge():
    """Textbook trigonometry: sin 30 = 1/2 exactly."""
    said = reckon("chamfer", known="width", measure="1", angle="30")["by_key"]
    assert said["edge"]["exact"] == "1/2"
    assert (said["flat"]["text"], said["on_edge"]["text"]) == ("60°", "30°")


@settings(max_examples=120)
@given(measures, angles, st.sampled_from(["face", "edge", "width"]))
def test_the_three_measures_are_one_triangle(measure, turn, known):
    said = reckon(
        "chamfer", {"mark": ".001 in"}, known=known, measure=f"{measure} in", angle=f"{turn}"
    )["by_key"]
    found = {key: float(said[key]["decimals"].rstrip("…")) for key in ("face", "edge", "width")}
    assert found[known] == pytest.approx(float(measure), abs=2e-6)
    assert found["face"] == pytest.approx(found["width"] * cos(radians(turn)), abs=4e-6)
    assert found["edge"] == pytest.approx(found["width"] * sin(radians(turn)), abs=4e-6)


@settings(max_examples=60)
@given(measures, angles)
def test_the_mirrored_chamfer_swaps_face_and_edge(measure, turn):
    one = reckon("chamfer", known="face", measure=f"{measure} in", angle=f"{turn}")["by_key"]
    other = reckon("chamfer", known="edge", measure=f"{measure} in", angle=f"{90 - turn}")["by_key"]
    assert one["edge"]["mark"] == other["face"]["mark"]
    assert one["width"]["mark"] == other["width"]["mark"]
    assert one["flat"]["text"] == other["on_edge"]["text"]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"measure": "3/4", "angle": "60", "thickness": "3/4"}, "measure", "impossible"),
        ({"measure": "3/4", "angle": "90"}, "angle", "range"),
        ({"measure": "3/4", "angle": "0"}, "angle", "range"),
        ({"measure": ""}, "measure", "missing"),
        ({"measure": "3/8", "known": "slope"}, "known", "unknown"),
    ],
)
def test_bad_input_names_its_field_and_a_remedy(values, field, kind):
    error = errors(ask("chamfer", **values))[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


def test_a_chamfer_may_take_the_whole_edge():
    assert ask("chamfer", measure="3/4", thickness="3/4")["ok"]


@pytest.mark.parametrize("known", ["face", "edge", "width"])
@pytest.mark.parametrize("turn", ["5", "45", "85"])
def test_the_drawing_tells_all_three_measures_in_its_box(known, turn):
    said = reckon("chamfer", known=known, measure="3/8", angle=turn)
    left, top, right, bottom = said["drawing"]["box"]
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    by_key = said["by_key"]
    for text in (as_drawn(by_key["face"]), as_drawn(by_key["edge"])):
        assert text in texts
    assert f"chamfer {as_drawn(by_key['width'])}" in texts
    for shape in said["drawing"]["shapes"]:
        for x, y in shape.get("points", []):
            assert left <= x <= right
            assert top <= y <= bottom


def test_the_verdict_says_which_measure_is_on_which_side():
    said = reckon("chamfer", known="face", measure="3/8", angle="45")
    assert said["verdict"] == "Chamfer width (3/8″ on the face, 3/8″ on the edge)"
    assert said["by_key"]["width"]["in_decimals"] == "≈ 0.5303″"
