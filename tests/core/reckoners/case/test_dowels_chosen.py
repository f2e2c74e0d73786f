"""Which dowels a joint gets where they are left blank: how thick, how long and how many."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon, texts

from tables import rows
from tests.core.reckoners.case.dowels import JOINT, KEY


@pytest.mark.parametrize(
    ("stock", "unit", "bit"),
    [
        ("3/4", "in", "3/8″"),
        ("23/32", "in", "5/16″"),
        ("18", "mm", "8.0 mm"),
        ("1 1/4", "in", "1/2″"),
    ],
)
def test_a_blank_diameter_is_the_thickest_common_one_up_to_half_of_the_stock(stock, unit, bit):
    """3/4 in stock: 1/4, 5/16 or 3/8 in; 18 mm: 6 or 8 mm: a third to a half (common practice, no
    source)."""
    joint = {"rail": f"60 {unit}", "stile": f"60 {unit}", "thickness": f"{stock} {unit}"}
    joint |= {} if unit == "mm" else {"rail": "3", "stile": "3"}
    assert reckon(KEY, {"unit": unit}, **joint)["by_key"]["bit"]["text"] == bit


@pytest.mark.parametrize("row", rows("dowels_for_stock.csv"), ids=lambda row: row["stock"])
def test_a_dowel_of_a_third_to_half_of_the_stock_is_taken_without_a_word(row):
    """That of a size more is refused."""
    unit = row["unit"]
    joint = {"rail": "6 in", "stile": "6 in", "thickness": f"{row['stock']} {unit}"}
    for dowel in row["dowels"].split():
        said = reckon(KEY, {"unit": unit}, **joint, diameter=dowel, dowel_length="2 in")
        assert len(said["cautions"]) == 4
    thick = ask(KEY, {"unit": unit}, **joint, diameter=row["thicker"], dowel_length="2 in")
    assert errors(thick)["diameter"]["kind"] == "impossible"


@pytest.mark.parametrize("row", rows("dowel_lengths.csv"), ids=lambda row: row["diameter"])
def test_a_blank_length_is_one_that_is_sold_as_the_stile_gets_narrower(row):
    """Both halves are 1/16 in or 1.5 mm from the bottoms, and an eighth is left past the hole."""
    unit, metric = row["unit"], row["unit"] == "mm"
    play, left = (
        (Fraction(3, 2), Fraction(127, 40)) if metric else (Fraction(1, 16), Fraction(1, 8))
    )
    joint = {"rail": "6 in", "thickness": "2 in", "diameter": f"{row['diameter']} {unit}"}
    for long in map(Fraction, row["lengths"].split()):
        stile = f"{long / 2 + play + left} {unit}"
        said = reckon(KEY, {"unit": unit}, **joint, stile=stile)["by_key"]
        assert exact(said["dowel_length"]) == (long * Fraction(5, 127) if metric else long)
        narrower = ask(KEY, {"unit": unit}, **joint, stile=f"{stile} - 1/100 in")
        if narrower["ok"]:
            found = {each["key"]: each for each in narrower["answers"]}
            assert exact(found["dowel_length"]) < exact(said["dowel_length"])
        else:
            assert errors(narrower)["stile"]["kind"] == "impossible"


@pytest.mark.parametrize(
    ("stile", "both", "long"),
    [
        ("1 1/2", "no", "2″"),
        ("1 1/8", "no", "1 1/2″"),
        ("1 3/4", "yes", "1 1/2″"),
        ("1 11/16", "yes", "1 1/4″"),
    ],
)
def test_a_blank_length_is_the_longest_common_one_that_leaves_an_eighth(stile, both, long):
    """3/8 dowels of 1 1/2 and 2 (common practice, no source): 1 1/16 + 1/8 needs 1 3/16, and two
    of 13/16 with 1/8 between them 1 3/4. A 32nd less takes a 1/4 dowel of 1 1/4."""
    said = reckon(KEY, **JOINT | {"stile": stile, "both": both})["by_key"]
    assert said["dowel_length"]["text"] == long


@pytest.mark.parametrize(
    ("values", "bit", "long"),
    [
        ({"stile": "1 1/2", "both": "yes"}, "1/4″", "1 1/4″"),
        ({"stile": "40 mm", "both": "yes", "thickness": "18 mm"}, "6.0 mm", "30.0 mm"),
        ({"stile": "45 mm", "both": "yes", "thickness": "18 mm"}, "8.0 mm", "35.0 mm"),
        ({"rail": "5/8"}, "5/16″", "1 1/2″"),
        ({"rail": "1/2"}, "1/4″", "1 1/4″"),
        ({"stile": "7/8"}, "1/4″", "1 1/4″"),
    ],
)
def test_blank_dowels_get_thinner_or_shorter_until_they_fit(values, bit, long):
    """The ordinary middle stile of 1 1/2: two holes of 1 1/4 ÷ 2 + 1/16 = 11/16 leave 1/8 between
    them. In 7/8 one of 13/16 would leave 1/16, 11/16 leaves 3/16; a rail of twice its dowel
    leaves half of it at each edge (common practice, no source)."""
    unit = "mm" if "mm" in str(values) else "in"
    said = reckon(KEY, {"unit": unit}, **{"rail": "2 1/4 in", "thickness": "3/4"} | values)
    told = texts(said)
    assert (told["bit"], told["dowel_length"]) == (bit, long)
    assert not any("Only" in each or "diameters" in each for each in said["cautions"])


@pytest.mark.parametrize(
    ("rail", "count", "first"),
    [
        ("3/4", 1, "3/8"),
        ("1 1/4", 1, "5/8"),
        ("1 1/2", 2, "3/8"),
        ("6", 2, "1 1/2"),
        ("8", 3, "1 1/2"),
    ],
)
def test_a_narrow_rail_has_one_dowel_and_a_wide_one_more_than_two(rail, count, first):
    """Two of 3/8 need 3/8 + 9/16 + 3/8 = 1 5/16; 8 − 2 × 1 1/2 = 5 is more than 3 (common
    practice, no source)."""
    said = reckon(KEY, **JOINT | {"rail": rail}, diameter="3/8")
    assert said["by_key"]["dowels"]["text"] == str(count)
    assert said["by_key"]["centers"]["items"][0]["text"] == f"{first}″"
    assert any("One dowel" in each for each in said["cautions"]) == (count == 1)


def test_a_panel_a_hair_under_its_name_takes_the_dowel_of_its_name():
    """A 3/8 dowel is used in 3/4 stock, and in the 23/32 that it measures (common practice, no
    source)."""
    assert ask(KEY, rail="1 1/2", thickness="23/32", diameter="3/8")["ok"]
    assert not ask(KEY, rail="1 1/2", thickness="11/16", diameter="3/8")["ok"]
