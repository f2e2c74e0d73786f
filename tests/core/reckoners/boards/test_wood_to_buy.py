"""Wood to buy: what it measures, what it is counted as, what one costs, and what is refused."""

from decimal import ROUND_HALF_EVEN, Decimal
from fractions import Fraction

import pytest
from asking import ask, errors, found, reckon, texts
from hypothesis import given
from hypothesis import strategies as st

from sawside.lengths.reading.reader import read_length
from sawside.reckoners import RECKONERS
from tests.core.oracles.counted_wood import QUARTERS, cost, surface
from tests.core.tables import rows

SOFTWOOD = {(row["dimension"], row["nominal_in"]): row for row in rows("softwood_sizes.csv")}


def buy(**row):
    """The answer for one kind of wood."""
    return reckon("wood_to_buy", wood=[row])


def offer(**row):
    """The offer that one kind of wood makes."""
    [made] = found("wood_to_buy", {"wood": [row]}).stock
    return made


def refused(**row):
    """The refusal of one kind of wood."""
    return errors(ask("wood_to_buy", wood=[row]))["wood"]


def parsed(text):
    """ "5 1/2" as a number."""
    return sum(map(Fraction, text.split()))


def hardwood(**more):
    return {"sold": "hardwood", "average": "6", "length": "8 ft"} | more


@pytest.mark.parametrize(
    "nominal", ["1 x 4", "1 x 6", "1 x 8", "1 x 12", "2 x 4", "2 x 10", "4 x 4"]
)
def test_nominal_softwood_measures_what_ps_20_says_dry(nominal):
    """NIST PS 20, least dressed sizes (secondary copy): tests/published/wood/softwood_sizes.csv."""
    thick, wide = nominal.split(" x ")
    made = offer(nominal=nominal, length="8 ft")
    assert made.thickness == parsed(SOFTWOOD["thickness", thick]["min_dressed_dry_in"])
    assert made.width == parsed(SOFTWOOD["face width", wide]["min_dressed_dry_in"])
    assert (made.form, made.length, made.count) == ("board", 96, None)


def test_five_quarter_softwood_is_an_inch_thick():
    """NIST PS 20: nominal 1 1/4 is 1 in, nominal 6 is 5 1/2 in."""
    made = offer(nominal="1_1_4 x 6", length="8 ft")
    assert (made.thickness, made.width) == (1, Fraction(11, 2))
    assert made.name == "5/4 × 6"


def test_softwood_is_counted_by_its_nominal_size():
    """A 1 × 6 of 8 ft is 4 board feet, a 2 × 4 is 5 1/3: 2 × 4 × 96 ÷ 144 (NIST PS 20 counts by
    nominal size; from memory)."""
    assert "4 board feet" in texts(buy(nominal="1 x 6", length="8 ft"))["each"]
    assert "5.33 board feet" in texts(buy(nominal="2 x 4", length="8 ft"))["each"]


@pytest.mark.parametrize("row", rows("hardwood_thickness.csv"), ids=lambda row: row["rough"])
def test_surfaced_hardwood_is_as_thick_as_nhla_says(row):
    """NHLA standard thicknesses: tests/published/wood/hardwood_thickness.csv."""
    key = "thickness_" + row["rough"].partition(" ")[0].replace("/", "_")
    for surfaced in ("one_side", "two_sides"):
        values = hardwood(quarters=key, surfaced=surfaced)
        if row[surfaced]:
            assert offer(**values).thickness == parsed(row[surfaced])
        else:
            assert "no thickness on file" in refused(**values)["message"]
    assert offer(**hardwood(quarters=key)).thickness == QUARTERS[key]


@pytest.mark.parametrize("row", rows("surface_measure.csv"), ids=lambda row: row["width"])
def test_hardwood_by_surface_measure_is_counted_by_the_nhla_rule(row):
    """tests/published/boards/surface_measure.csv names the source of each."""
    key = "thickness_" + row["quarters"].replace("/", "_")
    values = hardwood(quarters=key, average=row["width"], length=row["length"])
    assert offer(**values, price="1", per="surface").price == Fraction(row["board_feet"])
    told = texts(buy(**values, price="1", per="surface"))["each"]
    assert f"{float(row['board_feet']):g} board feet" in told


def test_by_volume_the_board_of_the_nhla_example_is_a_third_of_a_board_foot_more():
    """2 × 6 1/4 × 96 ÷ 144 = 8 1/3, arithmetic; by surface measure it is 8 (NHLA example)."""
    values = hardwood(quarters="thickness_8_4", average="6 1/4")
    assert offer(**values, price="3", per="board_foot").price == 25
    assert offer(**values, price="3", per="surface").price == 24


def test_thin_hardwood_counts_as_an_inch_thick_by_surface_measure():
    """NHLA: standard thicknesses under 1 in are counted as 1 in (read in a copy)."""
    values = hardwood(quarters="thickness_1_2", average="8", length="12 ft")
    assert offer(**values, price="1", per="surface").price == 8


def test_a_board_of_2438_mm_is_one_of_eight_feet():
    made = found(
        "wood_to_buy",
        {"wood": [hardwood(average="203.2", length="2438", price="1", per="surface")]},
        {"unit": "mm"},
    )
    assert made.stock[0].price == 5  # 8 × 8 ÷ 12 = 5 1/3


def test_a_half_foot_of_surface_measure_counts_up():
    """9 × 8 ÷ 12 = 6; 7 1/2 × 4 ÷ 12 = 2 1/2: the rule takes it up and down in turn."""
    half = hardwood(average="7 1/2", length="4 ft", price="1", per="surface")
    assert offer(**half).price == 3


def test_surfaced_hardwood_is_billed_by_its_rough_thickness_and_offered_as_it_is_planed():
    values = hardwood(surfaced="two_sides", planed="3/4", price="6", per="board_foot")
    made = offer(**values)
    assert made.price == 24  # 1 × 6 × 96 ÷ 144 = 4
    assert made.thickness == Fraction(3, 4)


def test_a_sheet_keeps_its_trim_and_is_priced_by_the_sheet_or_the_square_foot():
    """48 × 96 ÷ 144 = 32 sq ft, arithmetic."""
    sheet = {"sold": "sheet", "thickness": "23/32", "width": "48", "length": "96", "trim": "1/4"}
    assert offer(**sheet, price="72", sheet_per="piece").price == 72
    made = offer(**sheet, price="2.25", sheet_per="square_foot")
    assert (made.price, made.trim, made.form) == (72, Fraction(1, 4), "sheet")
    assert "32 sq ft" in texts(buy(**sheet))["each"]


def test_a_sheet_of_mdf_is_weighed_and_over_50_lb_asks_for_help():
    """3/4 × 49 × 97 ÷ 1728 × 48 lb per cubic foot = 99.0 lb; 48 of the table of weights (from
    memory there)."""
    sheet = {"sold": "sheet", "thickness": "3/4", "width": "49", "length": "97", "material": "MDF"}
    said = buy(**sheet)
    assert "99 lb" in texts(said)["each"]
    assert any("Get a second person" in each for each in said["cautions"])
    light = buy(**sheet | {"length": "24"})
    assert not any("Get a second person" in each for each in light["cautions"])


def test_a_board_is_weighed_where_its_wood_is_one_of_the_tables():
    """Black cherry, .50 of water at 12% (Wood Handbook, Table 5-3a): 1 × 6 × 96 ÷ 1728 × 62.43 ×
    1.12 × .5 = 11.65 lb."""
    assert "11.7 lb" in texts(buy(**hardwood(material="Cherry")))["each"]
    for unknown in ("maple", "bubinga", ""):
        assert " lb" not in texts(buy(**hardwood(material=unknown)))["each"]


def test_a_sheet_called_by_its_face_is_not_weighed_as_solid_wood():
    sheet = {"sold": "sheet", "thickness": "3/4", "width": "48", "length": "96"}
    assert " lb" not in texts(buy(**sheet, material="red oak"))["each"]
    assert "68 lb" in texts(buy(**sheet, material="red oak plywood"))["each"]  # 2 cu ft × 34


def test_a_material_of_ones_own_is_weighed_by_its_own_figure():
    own = [{"name": "Shop blank", "stiffness": "1.5", "weight": "30", "note": "weighed"}]
    said = reckon("wood_to_buy", {"materials": own}, wood=[hardwood(material="shop blank")])
    assert "10 lb" in texts(said)["each"]  # 1/3 cu ft × 30


def test_a_stick_needs_no_more_than_its_length():
    made = offer(sold="stick", length="12 ft", price="1.85", stick_per="foot", material="base cap")
    assert (made.form, made.width, made.thickness) == ("stick", None, None)
    assert made.price == Fraction("22.2")
    assert buy(sold="stick", length="12 ft")["verdict"] == "12 ft stick"


def test_one_price_leads_and_several_give_their_range_and_are_compared():
    """Usable: 8.90 for 3/4 × 5 1/2 × 72 ÷ 144 = 2.0625 board feet is 4.32; 47 for 1 × 6 1/4 × 96 ÷
    144 = 4 1/6 is 11.28."""
    pine = {"nominal": "1 x 6", "length": "6 ft", "price": "8.90", "per": "piece"}
    assert buy(**pine)["verdict"] == "$8.90 each, 3 board feet"
    cherry = hardwood(quarters="thickness_5_4", planed="1", average="6 1/4")
    said = reckon("wood_to_buy", wood=[cherry | {"price": "9.40", "per": "surface"}, pine])
    assert said["verdict"] == "2 kinds of wood, $8.90 to $47.00 each"
    assert texts(said)["compared"] == (
        "Wood 1: $11.28 per usable board foot; Wood 2: $4.32 per usable board foot"
    )
    assert "compared" not in texts(buy(**pine))


def test_random_widths_say_what_an_average_means():
    assert any("as wide as your average" in each for each in buy(**hardwood())["cautions"])
    assert not buy(nominal="1 x 6", length="8 ft")["cautions"]


BOARD = {"sold": "board", "thickness": "3/4", "width": "6", "length": "96"}


@pytest.mark.parametrize(
    ("row", "part", "says"),
    [
        (BOARD | {"length": ""}, "length", "Wood 1: Length is blank."),
        (BOARD | {"width": ""}, "width", "Wood 1: Width is blank."),
        (BOARD | {"sold": "sheet", "thickness": ""}, "thickness", "Wood 1: Thickness is blank."),
        (BOARD | {"price": "9"}, "per", "the price has no unit"),
        (BOARD | {"sold": "sheet", "price": "9"}, "sheet_per", "the price has no unit"),
        (BOARD | {"price": "9", "per": "surface"}, "per", "surface measure counts rough hardwood"),
        (BOARD | {"sold": "sheet", "trim": "3"}, "trim", "trim takes all of it"),
        (hardwood(planed="1 1/16"), "planed", "can’t be planed to more"),
        (hardwood(length="11", price="1", per="surface"), "per", "counts as nothing"),
        (hardwood(quarters="thickness_7_4", surfaced="one_side"), "surfaced", "no thickness"),
    ],
)
def test_what_lacks_a_size_or_a_unit_says_so_beside_it(row, part, says):
    said = refused(**row)
    assert says in said["message"]
    assert said["remedy"].endswith(".")
    assert (said["row"], said["part"]) == (0, part)


def test_in_a_metric_project_all_is_told_in_meters_with_the_board_feet_beside_it():
    """25 × 150 × 2400 mm are .009 m³; a board foot is .002359737 m³: 3.81."""
    board = {"sold": "board", "thickness": "25", "width": "150", "length": "2400"}
    said = reckon("wood_to_buy", {"unit": "mm"}, wood=[board | {"price": "4", "per": "meter"}])
    assert (
        texts(said)["each"] == "25 mm × 150 mm × 2400 mm: $9.60 each, 0.009 m³ (3.81 board feet)."
    )
    sheet = board | {"sold": "sheet", "width": "1220", "length": "2440"}
    said = reckon("wood_to_buy", {"unit": "mm"}, wood=[sheet])
    assert "2.98 m²" in texts(said)["each"]


@given(
    st.sampled_from(sorted(QUARTERS)),
    st.integers(4, 400),
    st.integers(24, 400),
    st.sampled_from(["piece", "foot", "meter", "board_foot", "surface", "square_foot"]),
    st.integers(1, 5000),
)
def test_what_hardwood_costs_is_what_a_tally_by_hand_makes_of_it(key, wide, long, per, cents):
    width, length, price = Fraction(wide, 16), Fraction(long, 2), Fraction(cents, 100)
    values = hardwood(quarters=key, average=f"{width} in", length=f"{length} in")
    values |= {"price": f"{cents / 100:.2f}", "per": per}
    thickness, told = QUARTERS[key], surface(width, length)
    if per == "surface" and not told:
        assert refused(**values)["part"] == "per"
        return
    by_hand = cost(
        price,
        per,
        counted=thickness * width * length / 144,
        width=width,
        length=length,
        surface_feet=told * max(thickness, 1),
    )
    assert offer(**values).price == by_hand
    cents = Decimal(by_hand.numerator * 100) / Decimal(by_hand.denominator)
    rounded = cents.quantize(Decimal(1), ROUND_HALF_EVEN) / 100
    assert buy(**values)["verdict"].startswith(f"${rounded:,.2f} each, ")


def test_the_lengths_of_the_table_of_surface_measure_are_read_as_they_are_printed():
    assert read_length("12 ft 11 in").value == 155


def test_a_thin_board_by_the_board_foot_warns_that_a_yard_counts_an_inch():
    """NHLA and PS 20: wood under 1 in. thick is counted as 1 in."""
    row = {"sold": "board", "thickness": "3/4", "width": "6", "length": "8 ft", "price": "5"}
    said = reckon("wood_to_buy", wood=[row | {"per": "board_foot"}])
    assert said["verdict"] == "$15.00 each, 3 board feet"
    assert any("counts wood under 1″ as 1″ thick" in caution for caution in said["cautions"])
    for other in ({"per": "piece"}, {"per": "board_foot", "thickness": "1"}):
        cautions = reckon("wood_to_buy", wood=[row | other])["cautions"]
        assert not any("under 1″" in caution for caution in cautions)


def test_no_default_of_a_board_is_in_inches_where_the_project_is_in_millimeters():
    [rows_of] = RECKONERS["wood_to_buy"].fields
    lengths = [field for field in rows_of.fields if field.kind == "length" and field.default]
    assert [field.key for field in lengths] == ["trim"]
    assert all(field.metric.endswith("mm") for field in lengths)
