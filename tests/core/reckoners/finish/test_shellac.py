"""Shellac: printed charts, and nothing lost or made as a cut becomes another one."""

import re
from fractions import Fraction

import pytest
from asking import ask, errors, reckon, texts
from hypothesis import given
from hypothesis import strategies as st

from sawside.wood.liquids import GRAMS_PER_LITER, MILLILITERS_PER_GALLON
from tables import rows

KEY = "shellac"
CUTS = st.integers(1, 32).map(lambda quarters: Fraction(quarters, 4))


def amount(text):
    """The number of an answer as "9.7 fl oz"."""
    return Fraction(re.match(r"[\d,.]+", text)[0].replace(",", ""))


def amounts(**values):
    """The answers of a form as numbers, and whether anything was answered."""
    told = texts(reckon(KEY, **{key: str(each) for key, each in values.items()}))
    return {key: amount(text) for key, text in told.items()}


def test_the_units_are_those_of_the_standards():
    """1 US gal = 3.785411784 L, 1 lb = 453.59237 g (NIST SP 811): 1 lb/gal = 119.826 g/L."""
    assert Fraction("3785.411784") == MILLILITERS_PER_GALLON
    assert float(GRAMS_PER_LITER) == pytest.approx(119.826427, abs=1e-6)


@pytest.mark.parametrize("row", rows("shellac_flakes.csv"), ids=lambda row: str(row["alcohol"]))
def test_flakes_are_those_of_a_printed_chart(row):
    said = amounts(way="mix", known="hand", hand_us=row["alcohol"], cut_us=row["cut"])
    assert said["flakes"] == Fraction(row["flakes"])
    assert said["alcohol"] == Fraction(row["alcohol"])


def test_alcohol_to_thin_by_is_that_of_a_printed_table():
    """Parts that are rounded to what one pours: all within a fifth, most within a tenth."""
    off = []
    for row in rows("shellac_thinning.csv"):
        cuts = {"have_us": row["now"], "cut_us": row["wanted"]}
        parts = amounts(way="change", known="hand", hand_us=100, **cuts)["alcohol"] / 100
        off.append(abs(Fraction(row["alcohol"]) / parts - 1))
    assert len(off) == 27
    assert max(off) < Fraction(24, 100)
    assert sum(each < Fraction(11, 100) for each in off) >= 20


def test_two_pounds_in_a_gallon_make_a_fifth_more_than_a_gallon():
    """The same magazine: 1.2 gal, so that a gallon of a 2 lb cut has 1.66 lb of flakes in it."""
    assert amounts(way="mix", known="hand", hand_us=128, cut_us=2)["makes"] == Fraction("153.6")
    assert amounts(way="mix", made_us=128, cut_us=2)["flakes"] == Fraction("26.7")


def test_a_pint_of_a_one_pound_cut_from_three_pounds_as_by_hand():
    """16 fl oz of 1 lb: 16 ÷ 1.1 = 14.545 of alcohol with 14.545 ÷ 8 = 1.818 oz. In a 3 lb cut
    these have 1.818 ÷ 3 × 8 = 4.848 of alcohol, 4.848 × 1.3 = 6.303 in all; 9.697 to add."""
    said = reckon(KEY, way="change", have_us="3", cut_us="1", made_us="16")
    assert said["verdict"] == "Add 9.7 fl oz of alcohol to 6.3 fl oz of shellac"
    assert texts(said)["cut"] == "1 lb cut (120 g/L)"
    assert said["working"][-1]["text"].endswith("1.81818 ÷ 0.125 − 4.84848 = 9.69697")


def test_a_cut_is_made_stronger_by_flakes():
    """A gallon of alcohol with 1 lb is 1.1 gal; 2 lb more make it a 3 lb cut of 1.3 gal."""
    said = amounts(way="change", known="hand", hand_us="140.8", have_us=1, cut_us=3)
    assert said["flakes"] == 32
    assert said["makes"] == Fraction("166.4")
    assert "alcohol" not in said


@given(CUTS, CUTS, st.integers(40, 1200), st.booleans())
def test_no_flake_is_lost_or_made_as_a_cut_becomes_another(now, wanted, typed, by_hand):
    """In gallons and pounds of their own: a gallon of alcohol with c pounds fills 1 + c/10."""
    known = {"known": "hand", "hand_us": str(typed)} if by_hand else {"made_us": str(typed)}
    said = ask(KEY, way="change", have_us=str(now), cut_us=str(wanted), **known)
    if now == wanted:
        assert errors(said)["cut_us"]["kind"] == "impossible"
        return
    told = {key: amount(text) for key, text in texts(said).items()}
    flakes, start, made = told.get("flakes", 0), told["start"], told["makes"]
    assert (wanted > now) == (flakes > 0) == ("alcohol" not in told)
    assert (start if by_hand else made) == typed
    before = start / 128 * now / (1 + now / 10)
    after = made / 128 * wanted / (1 + wanted / 10)
    assert abs(before + Fraction(flakes) / 16 - after) < Fraction(1, 100)
    grown = Fraction(flakes) / 16 * Fraction(128, 10) + told.get("alcohol", 0)
    assert abs(start + grown - made) < Fraction(3, 10)


@given(CUTS, st.integers(10, 600))
def test_grams_and_milliliters_are_the_same_shellac(cut, ounces):
    us = amounts(way="mix", cut_us=cut, made_us=ounces)
    there = amounts(
        way="mix",
        measured="metric",
        cut_metric=f"{float(cut * GRAMS_PER_LITER):.3f}",
        made_metric=f"{float(ounces * MILLILITERS_PER_GALLON / 128):.3f}",
    )
    assert float(us["flakes"]) * 28.349523 == pytest.approx(float(there["flakes"]), abs=2.5)
    assert float(us["alcohol"]) * 29.57353 == pytest.approx(float(there["alcohol"]), abs=2.5)


def test_a_metric_project_is_asked_for_grams_to_the_liter():
    """240 g in a liter: 500 ml of alcohol take 120 g, which add 120 × .8345 = 100 ml."""
    said = reckon(KEY, {"unit": "mm"}, way="mix", known="hand", hand_metric="500")
    assert said["verdict"] == "Dissolve 120 g of flakes in 500 ml of alcohol"
    assert texts(said)["makes"] == "600 ml"
    assert texts(said)["cut"] == "240 g/L (2 lb cut)"


def test_alcohol_is_cautioned_of():
    said = reckon(KEY, way="mix")
    assert "flames" in said["cautions"][0]
    assert "poison" in said["cautions"][1]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"way": "mix", "cut_us": "0"}, "cut_us", "range"),
        ({"way": "mix", "cut_us": "9"}, "cut_us", "range"),
        ({"way": "mix", "made_us": "-16"}, "made_us", "range"),
        ({"way": "mix", "made_us": "a pint"}, "made_us", "unreadable"),
        ({"way": "change"}, "have_us", "missing"),
        ({"way": "mix", "known": "hand"}, "hand_us", "missing"),
        ({"way": "change", "have_us": "2", "cut_us": "2"}, "cut_us", "impossible"),
        ({"way": "thin"}, "way", "unknown"),
    ],
)
def test_bad_input_names_its_field(values, field, kind):
    assert errors(ask(KEY, **values))[field]["kind"] == kind
