"""The materials: every figure is that of its table, and says where it was read."""

import re
from fractions import Fraction

import pytest

import sawside
from sawside.reckoners import RECKONERS
from sawside.wood.materials import MATERIALS, from_shrinkage, having, in_a_sentence
from sawside.wood.tables import known, noted
from sawside.wood.tables import rows as own_rows
from tables import rows

TABLES = (
    "stiffness strength dimensional_change shrinkage creep shelf_loads sag_limits moisture_regions "
    "beam_coefficients panel_thickness softwood_sizes hardwood_thickness sheet_thickness weight "
    "plate_ratios"
).split()
STATUSES = ("read", "common practice, no source", "from memory", "worked out", "average read")
STATUSES += ("radial read", "not checked against the source")


@pytest.mark.parametrize("table", TABLES)
def test_every_row_says_how_it_is_known_and_where_it_stands(table):
    for row in own_rows(f"{table}.csv"):
        assert row["status"].startswith(STATUSES), row
        if row["status"] != "common practice, no source":
            assert row["source"], row


@pytest.mark.parametrize("table", [name for name in TABLES if name != "beam_coefficients"])
def test_no_row_stands_twice(table):
    keys = [row["key"] for row in own_rows(f"{table}.csv")]
    assert len(set(keys)) == len(keys)


def by_name(figure):
    return {each.name: getattr(each, figure) for each in having(figure)}


def test_stiffness_is_that_of_the_handbook():
    """Wood Handbook, Tables 5-3 and 12-1, in 10**6 psi or in megapascals."""
    found, checked = by_name("stiffness"), 0
    for row in rows("wood_stiffness.csv"):
        figure = found[row["species"]]
        assert figure.least == figure.most
        if row["MOE_1e6_psi"]:
            printed = Fraction(row["MOE_1e6_psi"]) * 10**6
            assert figure.least == printed
        else:
            assert float(figure.least) * 0.006894757 == pytest.approx(
                float(row["MOE_MPa"]), rel=1e-6
            )
        checked += 1
    assert checked > 25


def test_panels_have_the_ranges_of_the_handbook():
    """Wood Handbook, Table 12-1; both of its systems agree to their decimals."""
    found = by_name("stiffness")
    for row in rows("panel_stiffness.csv"):
        figure = found[row["material"]]
        printed = [Fraction(each) * 10**6 for each in row["MOE_1e6_psi"].split("-")]
        assert [figure.least, figure.most] == [printed[0], printed[-1]]
        metric = [float(each) for each in row["MOE_GPa"].split("-")]
        for psi, giga in zip((figure.least, figure.most), (metric[0], metric[-1]), strict=True):
            assert float(psi) * 6.894757e-6 == pytest.approx(giga, abs=0.05)


def test_change_is_that_of_the_handbook():
    """Wood Handbook, Table 13-5."""
    found = {row["name"]: row for row in own_rows("dimensional_change.csv")}
    for row in rows("wood_dimensional_change.csv"):
        name = row["species"].replace("water/laurel/willow", "water, laurel, willow")
        assert (found[name]["radial"], found[name]["tangential"]) == (row["C_R"], row["C_T"])


def test_shrinkage_is_that_of_the_handbook():
    """Wood Handbook, Table 4-3."""
    found = {row["name"]: row for row in own_rows("shrinkage.csv")}
    for row in rows("wood_shrinkage.csv"):
        own = found[row["species"]]
        assert [own["radial"], own["tangential"], own["volumetric"]] == [
            row["radial_pct"],
            row["tangential_pct"],
            row["volumetric_pct"],
        ]


@pytest.mark.parametrize(
    "species", ["Cherry, black", "Beech, American", "Walnut, black", "Sweetgum", "Alder, red"]
)
def test_change_worked_out_from_shrinkage_is_that_of_the_table(species):
    """Named rows: some others stand for a group or borrow a neighbor's figure."""
    change = next(row for row in own_rows("dimensional_change.csv") if row["name"] == species)
    shrinkage = next(row for row in own_rows("shrinkage.csv") if row["name"] == species)
    for column in ("radial", "tangential"):
        assert round(from_shrinkage(shrinkage[column]), 5) == Fraction(change[column])


def test_a_strength_of_a_list_without_a_source_is_never_told_as_a_printed_one():
    for row in own_rows("strength.csv"):
        printed = row["status"].startswith(("read", "from memory"))
        assert printed == (row["source"] == "Wood Handbook"), row
        assert "secondary" not in row["status"], row
    unchecked = next(each for each in having("strength") if each.key == "ash_white")
    assert "unchecked" in unchecked.strength.cited


def test_strengths_are_in_proportion_to_what_they_are_of():
    """No slip of a unit or a digit: clear wood breaks at 0.5 to 1.1 percent of its stiffness."""
    for each in having("strength"):
        if each.kind == "species":
            assert (
                Fraction(4, 1000) < each.strength.least / each.stiffness.least < Fraction(12, 1000)
            )


LISTS = [
    pytest.param(question["key"], field, id=f"{question['key']} {field['key']}")
    for question in sawside.handle({"do": "describe"})["reckoners"]
    for field in question["fields"]
    if field["kind"] == "material" and question["key"] != "materials_list"
]
"""Each field with materials to choose from, save the list of all there is."""


@pytest.mark.parametrize(("question", "field"), LISTS)
def test_what_is_from_memory_is_marked_in_the_lists(question, field):
    """By the figure that the question needs; where any material will do, by its weight."""
    [own] = [each for each in RECKONERS[question].fields if each.key == field["key"]]
    found = [each for each in field["choices"] if each["value"] not in ("own", "same")]
    assert found
    for choice in found:
        status = getattr(MATERIALS[choice["value"]], own.figure or "weight").status
        assert choice["label"].endswith("(unchecked)") == ("from memory" in status)


def test_numbers_are_fields_with_a_unit_behind_them():
    described = sawside.handle({"do": "describe"})
    question = next(each for each in described["reckoners"] if each["key"] == "shelf_strength")
    field = next(each for each in question["fields"] if each["key"] == "own_lb_ft")
    assert (field["kind"], field["unit"]) == ("number", "lb/ft")


def test_five_plies_of_equal_thickness_are_as_stiff_across_as_plywood_is_taken():
    """Layers added, Wood Handbook, chapter 12: of 5**3 the outer two and the middle one, 99, go
    along, 26 across; a ply is .06 as stiff across its grain (Table 5-1, from memory)."""
    found = next(row for row in own_rows("plate_ratios.csv") if row["key"] == "plywood")
    assert float(found["across"]) == pytest.approx((26 + 0.06 * 99) / (99 + 0.06 * 26), abs=0.02)


@pytest.mark.parametrize(
    ("listed", "said"),
    [
        ("Maple, red", "red maple"),
        ("Douglas-fir, coast", "coast Douglas-fir"),
        ("White oak, Oregon white", "Oregon white oak"),
        ("Red oak, California", "California red oak"),
        ("Red oak: water, laurel, willow", "red oak: water, laurel, willow"),
        ("Shorea, bullau group", "shorea, bullau group"),
        ("Spanish-cedar", "Spanish-cedar"),
        ("Plywood", "plywood"),
        ("MDF", "MDF"),
    ],
)
def test_a_name_of_a_sorted_list_is_said_as_one_says_it_in_a_sentence(listed, said):
    assert in_a_sentence(listed) == said


def test_no_note_of_how_a_row_was_found_is_shown():
    for table in TABLES:
        for row in own_rows(f"{table}.csv"):
            shown = known(row["status"])
            assert not re.search(r"\bread\b|from memory|no source", shown), shown
            unread = "from memory" in row["status"] or "not checked" in row["status"]
            assert ("unchecked" in shown) == unread


@pytest.mark.parametrize(
    ("cited_as", "note"),
    [
        ("Wood Handbook, Table 13-5", ""),
        ("Wood Handbook, Table 13-5; unchecked", " (unchecked)"),
        ("shop practice", " (shop practice)"),
    ],
)
def test_a_number_without_its_citation_still_says_that_it_is_unchecked(cited_as, note):
    assert noted(cited_as) == note
