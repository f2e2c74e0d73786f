"""How far a shelf sags: worked cases, an independent beam, and what is said about it."""

import re
from fractions import Fraction
from random import Random

import pytest
from asking import ask, errors, exact, inches, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.reckoners import RECKONERS
from sawside.wood.materials import MATERIALS
from tables import rows
from tests.core.oracles import loaded_shelf

EXAMPLE = RECKONERS["shelf_strength"].example
POUNDS = {"pine_eastern_white": "24.47256", "oak_northern_red": "44.050608", "mdf": "48"}
"""For each cubic foot: 62.43 × 1.12 × .35 and × .63 (Wood Handbook, Table 5-3); common practice, no
source, for MDF."""
spans = st.fractions(min_value=10, max_value=90, max_denominator=16)
depths = st.fractions(min_value=4, max_value=24, max_denominator=8)
thicknesses = st.fractions(min_value="3/8", max_value=2, max_denominator=32)
pounds = st.integers(min_value=5, max_value=80)
materials = st.sampled_from(["plywood", "mdf", "maple_red", "pine_ponderosa", "oak_white"])


def plain(material, thickness, depth, span, load, **more):
    return {
        "material": material,
        "thickness": inches(thickness),
        "depth": inches(depth),
        "span": inches(span),
        "load": "own_lb_ft",
        "own_lb_ft": str(load),
        "strip": "none",
    } | more


@pytest.mark.parametrize("row", rows("shelf_sag_worked.csv"), ids=lambda row: row["material"])
def test_the_cases_worked_by_hand(row):
    """They leave out shear, which adds ks W L/(G A'), and the shelf's own weight.

    Both are worked out here and taken off again: all of it lies evenly, so that the sag of the load
    is the part of the whole sag that the load is of the whole weight.
    """
    thickness, depth, span, load = (
        Fraction(row[key]) for key in ("thickness", "depth", "span", "pounds_per_foot")
    )
    said = reckon(
        "shelf_strength", **plain(row["material"], thickness, depth, span, row["pounds_per_foot"])
    )
    stiffness = MATERIALS[row["material"]].stiffness.least
    shear = load * span / 12 * span / 8 / (stiffness / 16 * Fraction(5, 6) * thickness * depth)
    own = Fraction(POUNDS[row["material"]]) * thickness * depth / 144
    sag = float(exact(said["by_key"]["sag"]) * load / (load + own) - shear)
    assert sag == pytest.approx(float(row["sag"]), abs=6e-6)
    assert sag * 1.5 == pytest.approx(float(row["sag_times_1.5"]), abs=9e-6)
    assert round(float(span) / sag) == int(row["part"])
    assert 0 < float(shear) < 0.05 * sag


@pytest.mark.parametrize("number", range(150))
def test_sag_is_that_of_an_independent_beam(number):
    """Finite elements: every support and load."""
    assert loaded_shelf.sag(Random(f"shelf {number}")) == []


@settings(max_examples=60)
@given(materials, thicknesses, depths, spans, spans, pounds)
def test_a_longer_span_sags_more(material, thickness, depth, one, other, load):
    short, long = sorted((one, other))
    sags = [
        exact(
            reckon("shelf_strength", **plain(material, thickness, depth, span, load))["by_key"][
                "sag"
            ]
        )
        for span in (short, long)
    ]
    assert (sags[0] < sags[1]) == (short < long)


def test_records_weigh_54_kilograms_on_each_meter():
    """IASA-TC 05, 4.6 Shelving."""
    said = reckon("shelf_strength", **EXAMPLE)["by_key"]
    assert "total, 36.3 lb/ft (54 kg/m); the shelf itself weighs" in said["load"]["text"]
    assert "IASA-TC 05, 4.6 Shelving" in said["figures"]["text"]


def test_a_load_by_the_square_foot_takes_the_depth_with_it():
    """15 lb on a square foot, 12 in deep, is 15 lb/ft (ANSI/KCMA A161.1 5.1, worked out)."""
    said = reckon("shelf_strength", **plain("mdf", 1, 12, 36, 1) | {"load": "cabinet_test"})[
        "by_key"
    ]
    assert said["load"]["text"].startswith("45 lb")
    assert "15 lb/ft" in said["load"]["text"]


@pytest.mark.parametrize(
    ("creep", "more", "factor"),
    [
        ("usual", {}, "3.25"),
        ("seasoned", {}, "1.5"),
        ("unseasoned", {}, "2"),
        ("most", {}, "3"),
        ("own", {"own_creep": "2.25"}, "2.25"),
    ],
)
def test_after_years_it_sags_by_the_factor_of_creep(creep, more, factor):
    said = reckon("shelf_strength", **plain("mdf", 1, 12, 36, 20, creep=creep, **more))["by_key"]
    assert exact(said["sag_after_years"]) == Fraction(factor) * exact(said["sag"])
    assert f"Creep: {factor} times" in said["figures"]["text"]


def test_the_verdict_follows_the_limit_that_was_chosen():
    """ANSI/KCMA A161.1 5.1: 1/16 in for each foot, at most 1/4 in."""
    case = plain("mdf", "3/4", 12, 72, 10, judged="once", limit="cabinet_test")
    assert "limit 1/4″" in reckon("shelf_strength", **case)["verdict"]
    case = plain("mdf", "3/4", 12, 24, 10, judged="once", limit="cabinet_test")
    assert reckon("shelf_strength", **case)["verdict"].startswith("Fine")
    own = case | {"limit": "own", "own_limit": "1/64"}
    assert reckon("shelf_strength", **own)["verdict"].startswith("Too much")


def test_a_sag_beside_its_limit_is_told_so_finely_that_the_two_differ():
    """33/12 × 1/16 in is the most: 0.171875 in, 11/64; 0.1767 in is on the same mark."""
    case = plain("plywood", "3/4", "13 1/2", 33, "33.9", judged="years", limit="cabinet_test")
    said = reckon("shelf_strength", **case)["verdict"]
    assert "11/64" not in said
    assert "limit 0.1719″" in said
    assert re.search(r"long-term \(0\.\d+″ now\)", said), "in one verdict all is told as finely"


def test_what_sags_now_is_never_told_as_more_than_what_it_sags_after_years():
    """Under the finest mark after years, it is rounded up to that mark by what it sags now."""
    said = reckon("shelf_strength", **plain("plywood", "23/32", "13 3/4", 16, 44))["verdict"]
    assert said.startswith("Fine: under 1/64″ long-term, limit ")


@pytest.mark.parametrize(
    ("load", "said"), [(9, "Probably not"), (25, "A sharp eye"), (45, "Yes: more")]
)
def test_the_eye_is_told_by_the_sag_in_each_foot(load, said):
    """0.02 in and 1/32 in for each foot: common practice, no source."""
    case = plain("oak_white", "3/4", 11, 36, load, creep="own", own_creep="1")
    sag = exact(reckon("shelf_strength", **case)["by_key"]["sag"]) / 3
    expected = "Probably not" if sag <= Fraction("0.02") else "A sharp eye"
    expected = "Yes: more" if sag > Fraction(1, 32) else expected
    assert expected == said
    assert reckon("shelf_strength", **case)["by_key"]["eye"]["text"].startswith(said)


def test_stress_stands_beside_the_published_strength():
    """18 in of white oak, 12 x 3/4, 100 lb in the middle: M = 450, S = 1.125, 400 psi of 15,200.

    Its own 12 × 3/4 × 18 ÷ 1728 × 47.55 = 4.457 lb add W L ÷ 8 = 10.03: M = 460.03, 409 psi.
    """
    case = plain("oak_white", "3/4", 12, 18, 1, spread="middle") | {
        "load": "own_lb",
        "own_lb": "100",
    }
    told = reckon("shelf_strength", **case)["by_key"]
    text = told["stress"]["text"]
    assert text.startswith("Board: 409 psi. White oak fails at about 15,200 psi, 37.2 times this")
    assert "Strength of white oak: 15,200 psi (Wood Handbook" in told["figures"]["text"]
    meranti = case | {"material": "meranti_yellow"}
    text = reckon("shelf_strength", **meranti)["by_key"]["stress"]["text"]
    assert text.endswith("There’s no strength on file for yellow meranti.")


def test_a_material_of_ones_own_is_reckoned_with_its_figures():
    """Beside a listed wood of which no weight is on file either."""
    case = plain("own", "3/4", 11, 36, 25, own_stiffness="1.55")
    own = reckon("shelf_strength", **case)["by_key"]
    listed = reckon("shelf_strength", **(case | {"material": "meranti_yellow"}))["by_key"]
    assert own["sag"]["exact"] == listed["sag"]["exact"]
    assert "your own figure" in own["figures"]["text"]
    strip = {"strip": "front", "strip_material": "own", "strip_own_stiffness": "1.55"}
    same = {"strip": "front", "strip_material": "same"}
    sags = [
        reckon("shelf_strength", **case | each)["by_key"]["sag"]["exact"] for each in (strip, same)
    ]
    assert sags[0] == sags[1]


def test_what_is_known_only_from_memory_says_so():
    case = plain("spruce_sitka", "3/4", 11, 36, 25)
    assert "unchecked" in reckon("shelf_strength", **case)["by_key"]["figures"]["text"]
    assert "(unchecked)" in reckon("shelf_strength", **case)["summary"]


def test_it_says_that_it_is_no_structural_design():
    cautions = " ".join(reckon("shelf_strength", **EXAMPLE)["cautions"])
    assert "isn’t structural design" in cautions
    assert "licensed engineer" in cautions
    assert "Damp" in cautions


def test_the_drawing_shows_the_bend_larger_beside_its_limit_and_says_so():
    """Plywood is judged by 1.8 times the sag at once (EN 1995-1-1, from memory); .02 in for each
    foot of 31 5/8 in is .0527 in (common practice, no source)."""
    said = reckon("shelf_strength", **EXAMPLE)
    drawn = said["drawing"]
    texts = [shape.get("text") for shape in drawn["shapes"]]
    times = next(int(text.split()[-1][:-1]) for text in texts if text and "exaggerated" in text)
    assert f"Bend exaggerated {times}×" in texts
    assert "–·– limit ≈ 3/64″" in texts
    front, back, most = (
        float(exact(said["by_key"][key])) * 1.8 * times for key in ("sag_front", "sag_back", "sag")
    )
    (board,) = [shape["points"] for shape in drawn["shapes"] if len(shape.get("points", ())) > 9]
    tops = [y for _, y in board[: len(board) // 2]]
    assert max(tops) - min(tops) == pytest.approx(front, abs=2e-4)
    behind = [shape for shape in drawn["shapes"] if shape["role"] == "center"]
    places = [shape[end][1] for shape in behind for end in ("from", "to")]
    assert max(places) - min(places) == pytest.approx(back, abs=2e-4)
    (straight,) = [shape for shape in drawn["shapes"] if shape["role"] == "hidden"]
    limit = next(shape for shape in drawn["shapes"] if shape["role"] == "cut")
    assert limit["to"][1] - straight["to"][1] == pytest.approx(0.0527083 * times, abs=2e-4)
    (sag,) = [shape for shape in drawn["shapes"] if shape["role"] == "answer"]
    assert sag["to"][1] - sag["from"][1] == pytest.approx(most, abs=2e-4)


def test_the_span_is_drawn_beside_the_longest_one():
    drawn = reckon("shelf_strength", span="36", depth="12", material="plywood")["drawing"]
    texts = [shape.get("text") for shape in drawn["shapes"]]
    assert {"span 36″", "longest 23 5/8″"} <= set(texts)
    bar = [shape["points"] for shape in drawn["shapes"] if shape["role"] in ("stock", "waste")][-2:]
    whole, within = (points[1][0] - points[0][0] for points in bar)
    now = next(s for s in reversed(drawn["shapes"]) if s["role"] == "cut")["from"][0]
    assert within / now == pytest.approx(23.625 / 36, abs=1e-3)
    assert now < whole


@pytest.mark.parametrize("supports", ["resting", "fixed", "overhanging"])
@pytest.mark.parametrize("span", ["8", "31 5/8", "200"])
def test_every_shelf_is_drawn_inside_its_box(supports, span):
    case = EXAMPLE | {"supports": supports, "overhang": "3", "span": span}
    drawn = reckon("shelf_strength", **case)["drawing"]
    left, top, right, bottom = drawn["box"]
    assert 0.5 <= (right - left) / (bottom - top) <= 3
    for shape in drawn["shapes"]:
        for x, y in shape.get("points", ()):
            assert left <= x <= right
            assert top <= y <= bottom


@pytest.mark.parametrize(
    ("change", "field", "kind"),
    [
        ({"span": "0"}, "span", "range"),
        ({"span": "-5"}, "span", "range"),
        ({"span": ""}, "span", "missing"),
        ({"material": "granite"}, "material", "unknown"),
        ({"material": ""}, "material", "missing"),
        ({"load": "own_lb_ft", "own_lb_ft": "heavy"}, "own_lb_ft", "unreadable"),
        ({"load": "own_lb_ft", "own_lb_ft": "-3"}, "own_lb_ft", "range"),
        ({"load": "own_lb_ft"}, "own_lb_ft", "missing"),
        ({"material": "own"}, "own_stiffness", "missing"),
        ({"thickness": "0"}, "thickness", "range"),
    ],
)
def test_bad_input_names_its_field(change, field, kind):
    said = errors(ask("shelf_strength", **EXAMPLE | change))
    assert said[field]["kind"] == kind
    assert said[field]["remedy"].endswith(".")


def test_a_number_out_of_range_is_told_with_its_unit():
    said = errors(ask("shelf_strength", **EXAMPLE | {"load": "own_lb_ft", "own_lb_ft": "0"}))
    assert said["own_lb_ft"]["message"] == "Weight must be at least 0.01 lb/ft."
