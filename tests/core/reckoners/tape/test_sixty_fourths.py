"""The table holds every fraction of an inch with its exact decimals and millimeters."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon

from tables import rows


def table(settings=None, **values):
    return reckon("fractions", settings, solve="table", **values)["answers"][0]["items"]


@pytest.mark.parametrize("settings", [{}, {"display": "mm"}, {"unit": "mm"}, {"mark": "1/8"}])
def test_the_table_is_the_published_one(settings):
    published = rows("fractions_64ths.csv")
    found = table(settings)
    assert len(found) == len(published) == 64
    for item, row in zip(found, published, strict=True):
        inches, millimeters = item["label"].split("″, ")
        assert exact(item) == Fraction(int(row["n_of_64"]), 64) == Fraction(item["mark"])
        assert Fraction(inches) == Fraction(row["inch_exact_decimal"])
        assert Fraction(millimeters.removesuffix(" mm")) == Fraction(row["mm_exact"])


def test_fractions_are_shown_in_their_lowest_terms():
    published = [row["reduced"] for row in rows("fractions_64ths.csv")]
    assert [item["text"].rstrip("″") for item in table()] == published


@pytest.mark.parametrize("division", [64, 32, 16, 8])
def test_a_coarser_table_has_every_mark_of_its_division_in_any_inch(division):
    found = table(division=str(division), inches="12")
    assert [exact(item) for item in found] == [
        12 + Fraction(number, division) for number in range(1, division + 1)
    ]


def test_bad_fields_are_each_told_of():
    said = errors(ask("fractions", solve="table", division="7", inches="1/2"))
    assert {field: error["kind"] for field, error in said.items()} == {
        "division": "unknown",
        "inches": "unreadable",
    }
