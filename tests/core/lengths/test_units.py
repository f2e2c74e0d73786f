"""Unit names and factors come from the definition file by way of pint, exactly."""

import subprocess
import sys
from fractions import Fraction
from pathlib import Path

import pytest

import sawside
from sawside.lengths.reading.reader import read
from sawside.lengths.unit_definitions import convert, tables
from sawside.lengths.units import ANGLES, BOARD_FOOT, LENGTHS, SQUARE_FOOT
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


def test_what_a_start_reads_is_what_pint_makes_of_the_definitions():
    made = tables()
    for name, kept in (("lengths", LENGTHS), ("angles", ANGLES)):
        assert {unit: Fraction(factor) for unit, factor in made[name].items()} == kept
    assert (Fraction(made["square_foot"]), Fraction(made["board_foot"])) == (
        SQUARE_FOOT,
        BOARD_FOOT,
    )


def test_no_start_and_no_reading_waits_for_pint():
    ask = """
import json, sys, sawside
assert json.loads(sawside.handle_json(json.dumps(
    {"do": "read", "text": "6 ft 7-9/32 in + 18 mm", "settings": {}})))["ok"]
assert json.loads(sawside.handle_json('{"do": "describe"}'))["ok"]
print("pint" in sys.modules)
"""
    ran = subprocess.run([sys.executable, "-c", ask], capture_output=True, text=True, check=True)
    assert ran.stdout == "False\n"


def test_only_one_file_knows_pint():
    core = Path(sawside.__file__).parent
    knowing = [path.name for path in core.rglob("*.py") if "import pint" in path.read_text("utf-8")]
    assert knowing == ["unit_definitions.py"]
