"""Unit names and factors come from the definition file by way of pint, exactly."""

from fractions import Fraction
from pathlib import Path

import pytest

import sawside
from sawside.lengths.reading.reader import read
from sawside.lengths.units import LENGTHS, convert
from tables import rows


@pytest.mark.parametrize("row", rows("unit_factors.csv"), ids=lambda row: row["unit"])
def test_each_factor_is_the_published_one(row):
    assert convert(1, row["unit"], row["in_unit"]) == Fraction(row["factor"])


@pytest.mark.parametrize("row", rows("fractions_64ths.csv"), ids=lambda row: row["reduced"])
def test_each_sixty_fourth_is_exact_in_inches_and_millimeters(row):
    read_inches = read(row["reduced"]).value
    assert read_inches == Fraction(int(row["n_of_64"]), 64) == Fraction(row["inch_exact_decimal"])
    assert convert(read_inches, "inch", "millimeter") == Fraction(row["mm_exact"])
    assert read(f"{row['mm_exact']} mm").value == read_inches


def test_every_name_of_a_length_in_the_definition_file_is_read():
    for name, inches in LENGTHS.items():
        assert read(f"3 {name}").value == 3 * inches
        assert read(f"3{name.upper()}").value == 3 * inches


def test_a_reading_does_not_wait_for_pint(monkeypatch):
    def asked(*_):
        raise AssertionError("pint was asked")

    for name in ("convert", "parse_expression", "parse_units", "get_base_units"):
        monkeypatch.setattr(f"sawside.lengths.units.registry.{name}", asked)
    assert sawside.handle({"do": "read", "text": "6 ft 7-9/32 in + 18 mm"})["ok"]


def test_only_one_file_knows_pint():
    core = Path(sawside.__file__).parent
    knowing = [path.name for path in core.rglob("*.py") if "import pint" in path.read_text("utf-8")]
    assert knowing == ["units.py"]
