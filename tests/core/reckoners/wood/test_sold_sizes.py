"""Nominal sizes: softwood, hardwood and plywood measure what their standards print."""

from fractions import Fraction

import pytest
from asking import as_number, ask, errors, exact, reckon

from sawside.wood.sold_sizes import HARDWOOD, PLYWOOD, SHEETS, SOFTWOOD_THICK, SOFTWOOD_WIDE
from tables import rows


def told(said):
    return [exact(item) for item in said["by_key"]["sizes"]["items"]]


@pytest.mark.parametrize("row", rows("plywood_thickness.csv"), ids=lambda row: str(row))
def test_plywood_has_the_limits_of_ps_1(row):
    nominal = row["performance_category_in"]
    key = next(key for key, each in PLYWOOD.items() if each.name == nominal)
    limits = Fraction(row["min_thickness_in"]), Fraction(row["max_thickness_in"])
    said = reckon("sold_sizes", wood="plywood", category=key)
    assert tuple(told(said)) == limits
    for measured, word in (
        (limits[0], "within"),
        (limits[1], "within"),
        (limits[0] - Fraction(1, 500), "outside"),
        (limits[1] + Fraction(1, 500), "outside"),
    ):
        said = reckon("sold_sizes", wood="plywood", category=key, measured=f"{measured} in")
        assert f"is {word} the PS 1 limits" in said["by_key"]["verdict"]["text"]


@pytest.mark.parametrize("row", rows("softwood_sizes.csv"), ids=lambda row: str(row))
def test_softwood_has_the_dressed_sizes_of_ps_20(row):
    wide = row["dimension"] != "thickness"
    sizes = SOFTWOOD_WIDE if wide else SOFTWOOD_THICK
    key = next(key for key, each in sizes.items() if each.name == row["nominal_in"])
    field = "wide" if wide else "thick"
    for state, column in (("dry", "min_dressed_dry_in"), ("green", "min_dressed_green_in")):
        said = reckon("sold_sizes", wood="softwood", state=state, **{field: key})
        assert told(said)[wide] == as_number(row[column])


def test_sizes_grow_with_their_names():
    for sizes in (PLYWOOD, SOFTWOOD_THICK, SOFTWOOD_WIDE, HARDWOOD):
        for column in next(iter(sizes.values())).figures:
            found = [each.figures[column] for each in sizes.values() if each.figures[column]]
            assert found == sorted(found)
            assert len(set(found)) == len(found)


def test_hardwood_surfaced_on_two_sides_is_thinner_than_on_one():
    for each in HARDWOOD.values():
        one, two = each.figures["one_side"], each.figures["two_sides"]
        assert one is None or two < one


def test_hardwood_of_four_quarters_is_thirteen_sixteenths():
    """NHLA, read in a secondary copy: 4/4 surfaced on two sides."""
    said = reckon("sold_sizes", wood="hardwood", quarters="thickness_4_4", measured="25/32")
    assert said["answers"][0]["items"][0]["text"] == "13/16″"
    assert "1/32″ thinner" in said["by_key"]["verdict"]["text"]
    assert "from a copy" in said["by_key"]["where"]["text"]


def test_hardwood_plywood_is_told_as_common_practice_and_thinner_than_its_name():
    for key, each in SHEETS.items():
        said = reckon("sold_sizes", wood="sheet", sheet=key, measured=each.name)
        assert told(said)[0] < Fraction(each.name)
        assert "thicker than the usual size" in said["by_key"]["verdict"]["text"]
        assert said["by_key"]["where"]["text"] == "shop practice."


def test_a_size_that_no_table_has_is_refused_by_name():
    said = ask("sold_sizes", wood="hardwood", quarters="thickness_7_4", surfaced="one_side")
    assert errors(said)["surfaced"]["kind"] == "unknown"


def test_what_is_from_memory_says_so_in_its_name():
    assert [each.name for each in HARDWOOD.values() if "unchecked" in each.name] == [
        "10/4 (2 1/2) (unchecked)"
    ]


@pytest.mark.parametrize(
    ("values", "verdict"),
    [
        ({"wood": "softwood"}, "3/4″ × 5 1/2″"),
        ({"wood": "plywood", "category": "ps1_23_32"}, "≈ 11/16″ to 3/4″ thick"),
        (
            {"wood": "plywood", "category": "ps1_23_32", "measured": "45/64"},
            "45/64″ is within the PS 1 limits: ≈ 11/16″ to 3/4″ thick",
        ),
        ({"wood": "hardwood", "measured": "25/32"}, "25/32″ is 1/32″ thinner than the standard"),
    ],
)
def test_two_sizes_are_told_as_a_range_or_as_thickness_by_width(values, verdict):
    """NIST PS 20: a 1 x 6 is 3/4 by 5 1/2; PS 1: 23/32 is 0.688 to 0.750; NHLA: 4/4 is 13/16."""
    assert reckon("sold_sizes", **values)["verdict"] == verdict
