"""A case that is checked for plumb: by hand, and a case that was racked and turned in floats."""

import pytest
from asking import ask, errors, exact, reckon, texts
from hypothesis import assume, given
from hypothesis import strategies as st
from oracles.put_up import turned_case

KEY = "plumb_check"
CASE = {"top": "2 1/4", "bottom": "2 7/16", "apart": "72", "width": "36"}
RACKED = {"also": "diagonals", "rising": "84 1/2", "falling": "84 5/8", "height": "76"}
ANGLES = st.integers(-80, 80).map(lambda number: number / 10_000)


def test_a_case_that_leans_is_shimmed_by_similar_triangles():
    """3/16 in 72 is 3/32 in 36, under the end that it leans to."""
    said = reckon(KEY, **CASE)
    assert said["verdict"] == "Leans left: shim the left end"
    assert texts(said)["shim"] == "3/32″"
    assert texts(said)["out"] == "3/16″"
    assert any(each.startswith("Check that it isn’t racked") for each in said["cautions"])
    said = reckon(KEY, **CASE | {"bottom": "2 1/16"})
    assert said["verdict"] == "Leans right: shim the right end"


@pytest.mark.parametrize(
    ("bottom", "tolerance", "verdict"),
    [
        ("2 1/4", "1/16", "Plumb"),
        ("2 5/16", "1/16", "Passes: out of plumb"),
        ("2 21/64", "1/16", "Leans left: shim the left end"),
        ("2 21/64", "1/8", "Passes: out of plumb"),
    ],
)
def test_it_passes_up_to_what_is_allowed(bottom, tolerance, verdict):
    """1/16 between the readings: common practice, no source."""
    said = reckon(KEY, **CASE | {"bottom": bottom, "tolerance": tolerance})
    assert said["verdict"] == verdict
    assert ("shim" in said["by_key"]) == verdict.startswith("Leans")


def test_a_case_that_passes_keeps_its_wall_screws():
    plain = {"top": "2", "apart": "72", "width": "36"}
    for bottom, loose in (("2", False), ("2 1/16", False), ("2 1/8", True)):
        said = reckon("plumb_check", **plain, bottom=bottom)["cautions"]
        assert any("Back out its wall screws" in each for each in said) == loose
    deep = {"front": "yes", "front_top": "1", "front_bottom": "1 1/4"}
    said = reckon("plumb_check", **plain, bottom="2", **deep)["cautions"]
    assert any("Back out its wall screws" in each for each in said)


def test_racking_by_the_diagonals_is_pushed_and_only_the_floors_part_is_shimmed():
    """Law of cosines: (84 1/2² − 84 5/8²) ÷ (4 × 37 1/8) = −41/288 at 76 up, −41/304 at 72 up.
    Of −5/16 the floor has −5/16 + 41/304 = −27/152: × 37 1/8 ÷ 72 is .0916."""
    case = CASE | {"bottom": "2 9/16", "width": "37 1/8"}
    said = reckon(KEY, **case, **RACKED)
    assert said["verdict"] == "Leans left: push its top right, then shim the left end"
    assert float(exact(said["by_key"]["shim"])) == pytest.approx(0.0916, abs=1e-4)
    assert texts(said)["racked"] == "9/64″"
    assert "upper left corner" in texts(said)["push"]


def test_a_case_that_leans_only_because_it_is_racked_gets_no_shim():
    """Racked −41/288 over 76; read 72 up that is −41/304, .1349: 2 1/4 + .1349."""
    case = CASE | {"bottom": "2 1/4 in + 41/304 in", "width": "37 1/8"}
    said = reckon(KEY, **case, **RACKED)
    assert said["verdict"] == "Leans left: push its top right"
    assert "shim" not in said["by_key"]


def test_a_plumb_side_of_a_racked_case_does_not_pass():
    case = CASE | {"bottom": "2 1/4", "width": "37 1/8"}
    said = reckon(KEY, **case, **RACKED)
    assert said["verdict"] == "Racked: push its top right, then shim the right end"


def test_diagonals_that_fit_no_such_case_are_to_be_measured_again():
    said = reckon(KEY, **CASE, **RACKED | {"rising": "90", "falling": "90 1/2"})
    assert said["verdict"].startswith("Measure again")
    assert "shim" not in said["by_key"]


def test_a_case_that_leans_forward_is_shimmed_at_its_front_and_warned_of():
    """1/4 in 72 over a depth of 18 is 1/16."""
    plumb = CASE | {"bottom": "2 1/4", "front": "yes", "front_top": "1", "front_bottom": "1 1/4"}
    said = reckon(KEY, **plumb, depth="18")
    assert said["verdict"] == "Leans forward: shim the front"
    assert texts(said)["front_shim"] == "1/16″"
    assert said["cautions"][0].startswith("It leans forward")
    assert reckon(KEY, **plumb)["verdict"] == "Leans forward"
    back = reckon(KEY, **plumb | {"front_top": "1 1/2"}, depth="18")
    assert back["verdict"] == "Leans back: shim the back"


@given(st.integers(20, 90), st.integers(24, 90), st.integers(60, 100), ANGLES, ANGLES)
def test_pushing_and_shimming_as_told_brings_a_racked_and_turned_case_upright(
    width, height, percent, rack, turn
):
    """Angles up to half a degree: their sines add as they do, to less than .001 in."""
    assume(abs(rack) > 1e-6 or abs(turn) > 1e-6)
    up = height * percent / 100
    top, bottom, rising, falling, drop = turned_case(width, height, up, rack, turn)
    said = reckon(
        KEY,
        top=f"{top:.6f} in",
        bottom=f"{bottom:.6f} in",
        apart=f"{up:.6f} in",
        width=str(width),
        also="diagonals",
        rising=f"{rising:.7f} in",
        falling=f"{falling:.7f} in",
        height=str(height),
        tolerance="0",
    )
    if "shim" in said["by_key"]:
        assert float(exact(said["by_key"]["shim"])) == pytest.approx(abs(drop), abs=1e-3)
        end = "left" if drop < 0 else "right"
        assert abs(drop) < 1e-4 or said["verdict"].endswith(f"shim the {end} end")
    else:
        assert abs(drop) < 1e-3
    if abs(rack) > 1e-4:
        way = "left" if rack > 0 else "right"
        assert f"push its top {way}" in said["verdict"]


@pytest.mark.parametrize(
    ("values", "field"),
    [
        ({"also": "diagonals", "rising": "80"}, "falling"),
        (RACKED | {"rising": "200", "falling": "200"}, "rising"),
        ({"also": "level", "level_gap": "8", "level_long": "6"}, "level_gap"),
        ({"front": "yes", "front_top": "1"}, "front_bottom"),
        ({"front": "yes", "front_top": "20", "front_bottom": "1", "apart": "12"}, "front_top"),
        ({"top": "20", "apart": "12"}, "top"),
        ({"apart": "1"}, "apart"),
    ],
)
def test_what_is_lacking_or_can_not_be_is_told_at_its_field(values, field):
    error = errors(ask(KEY, **CASE | values))[field]
    assert error["message"].endswith(".")


@pytest.mark.parametrize(("bottom", "way"), [("2 7/16", -1), ("2 1/16", 1), ("2 1/4", 0)])
def test_the_drawn_case_leans_the_way_it_is_told_to(bottom, way):
    shapes = reckon(KEY, **CASE | {"bottom": bottom})["drawing"]["shapes"]
    case = next(each for each in shapes if each["kind"] == "polygon")["points"]
    leans = case[0][0] - case[3][0]
    assert (leans > 0) - (leans < 0) == way
