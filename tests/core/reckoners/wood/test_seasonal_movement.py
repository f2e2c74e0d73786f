"""How far boards move with the seasons: worked cases, plane geometry, and the range that holds."""

import math
from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.reckoners import RECKONERS
from sawside.wood.materials import MATERIALS, having
from tables import rows

moistures = st.integers(min_value=12, max_value=28).map(lambda half: Fraction(half, 2))
widths = st.fractions(min_value=1, max_value=48, max_denominator=16)
woods = st.sampled_from([each.key for each in having("movement")])


def board(species, width, now, low, high, **more):
    return {
        "species": species,
        "width": f"{width} in",
        "now": str(float(now)),
        "year": "own",
        "low": str(float(low)),
        "high": str(float(high)),
    } | more


@pytest.mark.parametrize(
    "row", rows("wood_movement_worked.csv"), ids=lambda row: f"{row['species']} to {row['to']}"
)
def test_the_cases_worked_by_hand(row):
    low, high = sorted((row["from"], row["to"]), key=float)
    case = board(
        row["species"],
        row["width"],
        Fraction(row["from"]),
        Fraction(low),
        Fraction(high),
        sawn=row["sawn"],
    )
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


def working(said):
    """The lines of working as one text: they say where each figure is from."""
    return " ".join(line["text"] for line in said["working"])


def shrunk(shrinkage, moisture):
    """How wide a board is as a part of its green width, shrinking evenly from 30 % to 0."""
    return 1 - Fraction(shrinkage) / 100 * (30 - Fraction(min(moisture, 30))) / 30


outside = st.sampled_from([0, 2, 4, 5, "5.9", "14.1", 17, 22, 28, 30])
any_moisture = st.one_of(outside, moistures).map(Fraction)


@settings(max_examples=80)
@given(st.sampled_from(rows("wood_shrinkage.csv")), any_moisture, outside, any_moisture)
def test_outside_6_to_14_percent_boards_shrink_evenly_from_green_to_oven_dry(row, now, low, high):
    """Shrinkage by Wood Handbook, Table 4-3; the board is walked through its green width."""
    wood = next((each for each in having("movement") if each.name == row["species"]), None)
    low, high = sorted((Fraction(low), high))
    if wood is None or not row["tangential_pct"] or not row["radial_pct"]:
        return
    for sawn, column in (("flat", "tangential_pct"), ("quarter", "radial_pct")):
        said = reckon("seasonal_movement", **board(wood.key, 20, now, low, high, sawn=sawn))
        for key, moisture in (("narrowest", low), ("widest", high)):
            walked = 20 * shrunk(row[column], moisture) / shrunk(row[column], now)
            assert exact(said["by_key"][key]) == walked


@settings(max_examples=40)
@given(st.integers(50, 600), any_moisture, outside, any_moisture)
def test_a_wood_with_a_coefficient_only_moves_along_one_straight_line(parts, now, one, other):
    """It grows evenly with moisture, for each 1 % by its coefficient times its width at 10 %.

    That is where the Handbook's coefficients and its shrinkages agree (Table 13-5).
    """
    coefficient, (low, high) = Fraction(parts, 10**5), sorted((Fraction(one), other))
    own = {"own_tangential": f"{parts / 10**5:.5f}", "own_radial": "0.001"}
    told = reckon("seasonal_movement", **board("own", 20, now, low, high, **own))
    said = told["by_key"]
    for key, moisture in (("narrowest", low), ("widest", high)):
        at_ten = 20 / (1 + coefficient * (now - 10))
        assert exact(said[key]) == at_ten * (1 + coefficient * (moisture - 10))
    assert "worked back from its coefficient" in working(told)


def test_sugar_maple_in_a_heated_room():
    """18 in flat sawn from 7 to 4 %: 18 × 3 ÷ (3000 ÷ 9.9 − 30 + 7), worked by hand."""
    said = reckon("seasonal_movement", **board("maple_sugar", 18, 7, 4, 9))
    assert said["by_key"]["driest"]["text"] == "≈ 3/16″ narrower"
    assert float(18 - exact(said["by_key"]["narrowest"])) == pytest.approx(0.1928, abs=5e-5)
    assert "equation 13-3" in working(said)
    assert "shrinkage of 9.9% from Wood Handbook" in working(said)
    assert any("÷ (30 × 100 ÷ 9.9 − 30 + 7) = 0.00357" in each["text"] for each in said["working"])


def test_a_heated_room_in_winter_is_answered():
    """70 °F at 28 % is 5.9 % (Wood Handbook, equation 4-5)."""
    case = board("maple_red", 12, 8, 6, 12)
    case |= {"now_by": "air_f", "temperature_f": "70", "humidity": "28"}
    said = reckon("seasonal_movement", **case)
    assert "Now 5.9%" in said["by_key"]["wood"]["text"]


@pytest.mark.parametrize(
    ("question", "held"),
    [("slots_for_a_top", "pins"), ("slots_for_a_top", "screws"), ("panel_in_its_groove", "")],
)
def test_every_question_of_movement_has_the_same_width_outside(question, held):
    """Sugar maple, 9.9 % from green to oven dry (Table 4-3), from 5 to 12 %."""
    season = {"species": "maple_sugar", "now": "5", "year": "own", "low": "5", "high": "12"}
    example = RECKONERS[question].example | season | ({"held": held} if held else {})
    said = reckon(question, **example)
    grown = shrunk("9.9", 12) / shrunk("9.9", 5) - 1
    if held == "pins":
        assert exact(said["by_key"]["proud"]) == Fraction("7.25") * grown
    elif held == "screws":
        assert exact(said["by_key"]["away"]["items"][2]) == 13 * grown
    else:
        cut = Fraction(said["by_key"]["width"]["mark"])
        assert exact(said["by_key"]["growth"]) == cut * grown
    assert "equation 13-3" in working(said)


@pytest.mark.parametrize("edge", ["6", "14"])
def test_6_and_14_percent_are_inside(edge):
    said = reckon("seasonal_movement", **board("maple_red", 12, Fraction(edge), 6, 14))
    assert "13-3" not in working(said)


def test_a_region_that_goes_beyond_is_taken_as_it_is_printed():
    said = reckon("seasonal_movement", width="12", species="maple_red", now="8", year="southwest")
    whole = 12 * (shrunk("8.2", 9) - shrunk("8.2", 4)) / shrunk("8.2", 8)
    assert exact(said["by_key"]["whole"]) == whole
    assert "4% to 9%" in said["by_key"]["wood"]["text"]
    assert "(unchecked)" in said["by_key"]["wood"]["text"]
    assert "Table 13-2; average from a copy, range unchecked" in working(said)


@pytest.mark.parametrize("soaked", ["31", "45", "120"])
def test_above_fiber_saturation_wood_keeps_its_size(soaked):
    case = board("maple_red", 12, 8, 6, 12)
    green = reckon("seasonal_movement", **case | {"now": "30"})
    more = reckon("seasonal_movement", **case | {"now": soaked})
    assert more["by_key"]["narrowest"] == green["by_key"]["narrowest"]
    assert more["by_key"]["widest"] == green["by_key"]["widest"]
    assert "fiber saturation" in more["cautions"][0]
    assert "fiber saturation" not in green["cautions"][0]
    assert errors(ask("seasonal_movement", **case | {"now": "251"}))["now"]["kind"] == "range"


def test_moisture_from_the_air_is_that_of_the_equation():
    case = {
        "width": "12",
        "species": "maple_red",
        "year": "own",
        "low": "6",
        "high": "12",
        "now_by": "air_f",
        "temperature_f": "70",
        "humidity": "50",
    }
    text = reckon("seasonal_movement", **case)["by_key"]["wood"]["text"]
    assert "Now 9.2%" in text  # Table 4-2


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
    for part in ("Driest: ≈ 5/64″ narrower", "Now: 13 1/4″", "Wettest: ≈ 5/64″ wider"):
        assert part in texts
