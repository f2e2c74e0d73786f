"""Crown is cut so that its pieces meet, as solids, however it is laid at the saw."""

import random
import re

import numpy as np
import pytest
from asking import as_drawn, ask, errors, exact, reckon
from at_the_saw import LAID
from exactly import exactly
from hypothesis import given, settings
from hypothesis import strategies as st

from tables import rows
from tests.core.oracles.solid import same_place
from tests.core.oracles.sprung_corners import CHECKS, cut_piece


@pytest.mark.parametrize("row", rows("compound_angles.csv"), ids=lambda row: row["spring"])
@pytest.mark.parametrize("kind", ["inside", "outside"])
def test_settings_are_the_commonly_printed_ones(row, kind):
    said = reckon("crown", spring=row["spring"], left_end=kind, left_corner=row["corner"])
    for key, printed in (("miter", row["miter"]), ("tilt", row["bevel"])):
        found = said["by_key"][key]["text"].removeprefix("≈ ").removesuffix("°")
        assert float(found) == float(printed)
    assert said["by_key"]["held"]["exact"] == "45"


def test_a_spring_of_45_in_a_square_corner_tilts_exactly_30():
    """sin 30 = 1/2 = cos 45 x cos 45: textbook trigonometry."""
    assert reckon("crown", spring="45")["by_key"]["tilt"]["exact"] == "30"
    assert (
        reckon("crown", found="legs", drop="3", projection="3")["by_key"]["tilt"]["exact"] == "30"
    )


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.__name__)
def test_pieces_cut_as_told_meet_as_solids_flat_or_held(check):
    for number in range(100):
        assert check(random.Random(f"{check.__name__} {number}")) == []


@pytest.mark.parametrize("key", ["miter", "tilt"])
def test_a_setting_that_is_a_hundredth_off_is_seen(key):
    """The judge is not blind."""
    told = exactly("crown", spring="38", width="4", measured="40", left_end="outside")
    true = cut_piece(told, 4, 38)
    off = cut_piece(told | {key: told[key] + 0.01}, 4, 38)
    for end in ("left", "right"):
        assert not same_place(true.normal(end), off.normal(end))


@settings(max_examples=60)
@given(st.integers(1, 60), st.integers(1, 60))
def test_the_spring_is_what_drop_and_projection_make_it(drop, projection):
    """Independent oracle: the machine's own arctangent."""
    degrees = np.degrees(np.arctan2(projection, drop))
    values = {"found": "legs", "drop": f"{drop}/4 in", "projection": f"{projection}/4 in"}
    if not 5 <= degrees <= 85:
        assert errors(ask("crown", **values))["projection"]["kind"] == "impossible"
        return
    told = exactly("crown", **values)
    assert told["spring"] == pytest.approx(degrees)
    assert told["width"] == pytest.approx(np.hypot(drop, projection) / 4)


def test_a_molding_of_three_four_five_is_known_by_any_two_of_its_measures():
    """A triangle of 3, 4, 5: arctan 3/4 = 36.87 degrees, as printed in any table."""
    three, four, five = ("1 1/2", "2", "2 1/2")
    for values in (
        {"found": "legs", "projection": three, "drop": four},
        {"found": "drop", "drop": four, "width": five},
        {"found": "projection", "projection": three, "width": five},
    ):
        said = reckon("crown", **values, measured="30", right_end="outside")["by_key"]
        assert said["spring"]["text"] == "≈ 36.87°"
        lengths = [exact(said[key]) * 2 for key in ("projection", "drop", "width")]
        assert lengths == [3, 4, 5]


def test_square_corners_change_the_top_edge_by_the_projection():
    """Worked by hand: at 45 in plan an edge moves by what it stands out (common practice)."""
    values = {"found": "legs", "projection": "2", "drop": "3", "measured": "40"}
    for left, right, top in (
        ("inside", "inside", 36),
        ("outside", "outside", 44),
        ("inside", "outside", 40),
        ("square", "outside", 42),
        ("inside", "square", 38),
    ):
        said = reckon("crown", **values, left_end=left, right_end=right)
        assert exact(said["by_key"]["top"]) == top
        back = reckon(
            "crown",
            **values | {"measured": str(top), "measured_on": "top"},
            left_end=left,
            right_end=right,
        )
        assert exact(back["by_key"]["bottom"]) == 40
        (part,) = said["parts"]
        tips = 40 + 2 * [left, right].count("outside")
        assert part["length"]["exact"] == str(tips)


@settings(max_examples=60)
@given(
    st.sampled_from(["inside", "outside", "square"]),
    st.sampled_from(["inside", "outside", "square"]),
    st.integers(40, 170),
    st.integers(40, 170),
    st.sampled_from(["top", "bottom"]),
)
def test_the_molding_it_takes_reaches_from_the_outermost_corner_to_the_other(
    left, right, left_corner, right_corner, measured_on
):
    """Points of the two edges in plan, worked with floats: both corners of both ends."""
    if left == right == "square":
        return
    projection = 2.0
    values = {
        "found": "legs",
        "projection": "2",
        "drop": "3",
        "measured": "60",
        "measured_on": measured_on,
        "left_end": left,
        "right_end": right,
        "left_corner": str(left_corner),
        "right_corner": str(right_corner),
    }
    told = exactly("crown", **values)
    bottom = float(told["bottom"])
    ends = []
    for kind, corner, at, way in ((left, left_corner, 0.0, -1), (right, right_corner, bottom, 1)):
        slant = 0.0 if kind == "square" else projection / np.tan(np.radians(corner / 2))
        ends += [at, at + way * slant * (1 if kind == "outside" else -1)]
    assert float(told["tips"]) == pytest.approx(max(ends) - min(ends))
    said = reckon("crown", **values)
    assert said["parts"][0]["length"]["text"] == said["by_key"]["tips"]["text"]


def test_a_piece_between_an_inside_and_an_outside_corner_takes_more_than_either_edge():
    """Worked by hand: both edges 41 7/16, and the projection of 2 7/8 beyond them."""
    said = reckon(
        "crown",
        found="legs",
        drop="3 1/4",
        projection="2 7/8",
        measured="41 7/16",
        left_end="inside",
        right_end="outside",
    )["by_key"]
    assert said["top"]["text"] == said["bottom"]["text"] == "41 7/16″"
    assert said["tips"]["text"] == "44 5/16″"


def test_the_mirror_image_swaps_left_and_right():
    swap = {"left": "right", "right": "left"}
    for saw in ("left", "right", "both"):
        one = exactly(
            "crown",
            spring="38",
            left_end="outside",
            left_corner="80",
            right_corner="100",
            tilts=saw,
        )
        other = exactly(
            "crown",
            spring="38",
            right_end="outside",
            right_corner="80",
            left_corner="100",
            tilts=swap.get(saw, saw),
        )
        for side in swap:
            for way in ("flat", "up"):
                mirrored = re.sub(
                    r"\b(left|right)\b", lambda hit: swap[hit[0]], one[f"{side}_{way}"]
                )
                assert mirrored == other[f"{swap[side]}_{way}"]
        assert one["miter"] == other["right_miter"]
        assert one["tilt"] == other["right_tilt"]


def test_a_spring_near_flat_on_the_ceiling_comes_near_to_a_flat_miter():
    told = [exactly("crown", spring=each) for each in ("70", "80", "85")]
    assert [round(each["miter"]) for each in told] == [43, 45, 45]
    assert told[0]["tilt"] > told[1]["tilt"] > told[2]["tilt"] > 0


def test_a_saw_that_tilts_one_way_is_never_asked_to_tilt_the_other():
    for saw in ("left", "right"):
        for kind in ("inside", "outside"):
            told = exactly("crown", spring="38", left_end=kind, tilts=saw)
            for side in ("left", "right"):
                assert LAID.search(told[f"{side}_flat"])["tilt"] == saw


@pytest.mark.parametrize("edge", ["top", "bottom"])
def test_a_saw_that_tilts_both_ways_has_the_measured_edge_at_the_fence(edge):
    told = exactly("crown", spring="38", measured_on=edge, right_end="outside")
    assert {LAID.search(told[f"{side}_flat"])["edge"] for side in ("left", "right")} == {edge}


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"spring": ""}, "spring", "missing"),
        ({"spring": "0"}, "spring", "impossible"),
        ({"spring": "90"}, "spring", "impossible"),
        ({"spring": "91"}, "spring", "range"),
        ({"found": "legs", "drop": "3", "projection": "1/8"}, "projection", "impossible"),
        ({"found": "drop", "drop": "3", "width": "3"}, "drop", "impossible"),
        ({"found": "projection", "projection": "4", "width": "3"}, "projection", "impossible"),
        ({"found": "projection", "projection": "2", "width": ""}, "width", "missing"),
        ({"left_corner": "180"}, "left_corner", "range"),
        ({"right_corner": "10"}, "right_corner", "range"),
        ({"left_end": "square", "right_end": "square"}, "right_end", "impossible"),
        ({"measured": "6"}, "measured", "impossible"),
        ({"measured": "30", "width": ""}, "width", "missing"),
        ({"ceiling": "sloped"}, "ceiling", "impossible"),
        ({"width": "3 x"}, "width", "unreadable"),
    ],
)
def test_bad_input_names_its_field_and_a_remedy(values, field, kind):
    said = ask("crown", **({"spring": "38", "width": "5 1/4"} | values))
    error = errors(said)[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


def test_a_short_piece_and_a_leaning_wall_are_cautioned_against():
    said = reckon(
        "crown", spring="38", width="3", measured="6", left_end="square", right_end="outside"
    )
    assert any("short" in each for each in said["cautions"])
    assert any("If either is out" in each for each in said["cautions"])


@pytest.mark.parametrize(
    "values",
    [
        {"spring": "38"},
        {"spring": "6", "width": "5 1/4", "measured": "40", "right_end": "outside"},
        {"spring": "84", "width": "5 1/4", "measured": "40", "left_end": "square"},
        {"found": "legs", "drop": "3", "projection": "2", "measured": "40", "right_corner": "30"},
    ],
)
def test_the_drawing_stays_in_its_box_and_tells_the_edges(values):
    said = reckon("crown", **values)
    for drawing in (said["drawing"], *(part["drawing"] for part in said["parts"])):
        left, top, right, bottom = drawing["box"]
        for shape in drawing["shapes"]:
            for x, y in shape.get("points", []):
                assert left <= x <= right
                assert top <= y <= bottom
        texts = " ".join(shape.get("text", "") for shape in drawing["shapes"])
        for edge in ("top", "bottom"):
            long = f" {as_drawn(said['by_key'][edge])}" if "measured" in values else ""
            assert f"{edge} edge{long}" in texts
    assert f"spring {said['by_key']['spring']['text']}" in " ".join(
        shape.get("text", "") for shape in said["drawing"]["shapes"]
    )
