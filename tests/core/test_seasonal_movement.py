"""How far boards move with the seasons: worked cases, plane geometry, and the range that holds."""

import math
from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.wood.materials import MATERIALS, having
from tables import rows

moistures = st.integers(min_value=12, max_value=28).map(lambda half: Fraction(half, 2))
widths = st.fractions(min_value=1, max_value=48, max_denominator=16)
woods = st.sampled_from([each.key for each in having("movement")])


def board(species, width, now, low, high, **more):
    return {
        "species": species, "width": f"{width} in", "now": str(float(now)), "year": "own",
        "low": str(float(low)), "high": str(float(high)),
    } | more  # fmt: skip


@pytest.mark.parametrize(
    "row", rows("wood_movement_worked.csv"), ids=lambda row: f"{row['species']} to {row['to']}"
)
def test_the_cases_worked_by_hand(row):
    low, high = sorted((row["from"], row["to"]), key=float)
    case = board(row["species"], row["width"], Fraction(row["from"]), Fraction(low),
                 Fraction(high), sawn=row["sawn"])  # fmt: skip
    case["width"] = f"{row['width']} {row['unit']}"
    said = reckon("seasonal_movement", **case)["by_key"]
    inch = 1 if row["unit"] == "in" else Fraction("25.4")
    change = exact(said["whole"]) * inch * (-1 if row["change"].startswith("-") else 1)
    assert float(change) == pytest.approx(float(row["change"]), abs=6e-4 if inch != 1 else 6e-6)


def test_the_worked_example_of_the_handbook_to_its_decimals():
    """A 232 mm board ends at 11 % 1.7 mm wider, 233.7 mm (Wood Handbook, chapter 13)."""
    case = board("fir_white", 1, 8, 8, 11) | {"width": "232 mm"}
    said = reckon("seasonal_movement", {"mark": "0.1 mm"}, **case)["by_key"]
    assert said["whole"]["text"] == "1.7 mm"
    assert said["widest"]["text"] == "233.7 mm"


@settings(max_examples=60)
@given(woods, widths, moistures, moistures, moistures)
def test_widths_are_the_width_times_coefficient_times_change(wood, width, now, one, other):
    low, high = sorted((one, other))
    said = reckon("seasonal_movement", **board(wood, width, now, low, high))["by_key"]
    each = MATERIALS[wood].movement.tangential
    assert exact(said["narrowest"]) == width * (1 + each * (low - now))
    assert exact(said["widest"]) == width * (1 + each * (high - now))
    assert exact(said["whole"]) == exact(said["widest"]) - exact(said["narrowest"])


@settings(max_examples=40)
@given(woods, widths, st.integers(min_value=0, max_value=90))
def test_rings_in_between_turn_the_strain(wood, width, rings):
    """The strain tensor turned by the angle of the rings, worked with floats."""
    case = board(wood, width, 8, 8, 12, sawn="between", rings=str(rings))
    said = reckon("seasonal_movement", **case)["by_key"]
    moves = MATERIALS[wood].movement
    cos, sin = math.cos(math.radians(rings)), math.sin(math.radians(rings))
    turned = float(moves.tangential) * cos**2 + float(moves.radial) * sin**2
    found = float(said["whole"]["decimals"].rstrip("…"))
    assert found == pytest.approx(float(width) * 4 * turned, abs=2e-6)


def test_rings_at_0_and_90_are_flat_and_quarter():
    for rings, sawn in (("0", "flat"), ("90", "quarter")):
        case = board("oak_white", 9, 8, 6, 12, sawn="between", rings=rings)
        between = reckon("seasonal_movement", **case)
        plain = reckon("seasonal_movement", **board("oak_white", 9, 8, 6, 12, sawn=sawn))
        assert between["by_key"]["whole"]["exact"] == plain["by_key"]["whole"]["exact"]


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"now": "5.9"}, "now"),
        ({"now": "14.1"}, "now"),
        ({"now": "19"}, "now"),
        ({"low": "4"}, "low"),
        ({"high": "18"}, "high"),
        ({"now_by": "air_f", "temperature_f": "70", "humidity": "90"}, "humidity"),
        ({"now_by": "air_c", "temperature_c": "20", "humidity": "10"}, "humidity"),
    ],
)
def test_outside_6_to_14_percent_it_says_so(change, field):
    """The range for which Wood Handbook Table 13-5 gives its coefficients."""
    said = errors(ask("seasonal_movement", **board("maple_red", 12, 8, 6, 12) | change))
    assert said[field]["kind"] == "range"
    assert "from 6 to 14 %" in said[field]["message"]


@pytest.mark.parametrize("edge", ["6", "14"])
def test_6_and_14_percent_are_inside(edge):
    assert ask("seasonal_movement", **board("maple_red", 12, Fraction(edge), 6, 14))["ok"]


def test_a_region_that_goes_beyond_is_reckoned_to_the_edge_and_says_so():
    said = reckon("seasonal_movement", width="12", species="maple_red", now="8", year="southwest")
    assert exact(said["by_key"]["whole"]) == 12 * 3 * Fraction("0.00289")
    assert "4 to 9 %" in said["cautions"][0]
    assert "from memory" in said["by_key"]["wood"]["text"]


def test_moisture_from_the_air_is_that_of_the_equation():
    case = {"width": "12", "species": "maple_red", "year": "own", "low": "6", "high": "12",
            "now_by": "air_f", "temperature_f": "70", "humidity": "50"}  # fmt: skip
    text = reckon("seasonal_movement", **case)["by_key"]["wood"]["text"]
    assert "Now 9.2 %" in text  # Table 4-2


def test_wood_of_ones_own():
    case = board("own", 10, 8, 8, 10, own_tangential="0.003", own_radial="0.0015")
    flat = reckon("seasonal_movement", **case)["by_key"]
    assert exact(flat["whole"]) == Fraction("0.06")
    quarter = reckon("seasonal_movement", **case | {"sawn": "quarter"})["by_key"]
    assert exact(quarter["whole"]) == Fraction("0.03")


@pytest.mark.parametrize(
    ("change", "field", "kind"),
    [
        ({"species": "granite"}, "species", "unknown"),
        ({"width": "-3 in"}, "width", "range"),
        ({"now": ""}, "now", "missing"),
        ({"now": "damp"}, "now", "unreadable"),
        ({"low": "12", "high": "7"}, "high", "impossible"),
        ({"sawn": "between"}, "rings", "missing"),
    ],
)
def test_bad_input_names_its_field(change, field, kind):
    said = errors(ask("seasonal_movement", **board("maple_red", 12, 8, 6, 12) | change))
    assert said[field]["kind"] == kind


def test_the_drawing_shows_it_dry_now_and_damp():
    said = reckon("seasonal_movement", **board("maple_red", "13 1/4", 8, 6, 10))
    boards = [each["points"] for each in said["drawing"]["shapes"] if each["kind"] == "polygon"]
    wide = [points[1][0] - points[0][0] for points in boards]
    assert wide[0] < wide[1] < wide[2]
    texts = " ".join(str(each.get("text")) for each in said["drawing"]["shapes"])
    for part in ("Driest: ≈ 5/64″ narrower", "Now: 13 1/4″", "Dampest: ≈ 5/64″ wider"):
        assert part in texts
