"""Moisture of wood in balance with the air."""

from decimal import Decimal
from fractions import Fraction

import pytest
from asking import ask, errors, reckon
from hypothesis import given
from hypothesis import strategies as st

from sawside.wood.moisture import equilibrium, fahrenheit
from tables import rows

TABLE = rows("wood_equilibrium_moisture.csv")


def test_every_cell_of_the_handbook_is_met_within_0_07():
    """Wood Handbook, Table 4-2: all 342 cells, printed to a tenth."""
    cells = [
        (abs(equilibrium(row["tempF"], column.removeprefix("RH")) - Fraction(printed)), row, column)
        for row in TABLE
        for column, printed in row.items()
        if column != "tempF"
    ]
    assert len(cells) == 342
    assert [cell for cell in cells if cell[0] > Fraction("0.07")] == []


@given(
    st.decimals(min_value=30, max_value=200, places=1),
    st.decimals(min_value=5, max_value=95, places=1),
)
def test_it_is_the_equation_worked_in_decimals(degrees, humidity):
    """Equation 4-5, worked again in 28 decimals."""
    t, h = degrees, humidity / 100
    w = 330 + Decimal(".452") * t + Decimal(".00415") * t * t
    k = Decimal(".791") + Decimal(".000463") * t - Decimal("8.44e-7") * t * t
    k1 = Decimal("6.34") + Decimal(".000775") * t - Decimal("9.35e-5") * t * t
    k2 = Decimal("1.09") + Decimal(".0284") * t - Decimal("9.04e-5") * t * t
    first = k * h / (1 - k * h)
    top = k1 * k * h + 2 * k1 * k2 * k * k * h * h
    expected = 1800 / w * (first + top / (1 + k1 * k * h + k1 * k2 * k * k * h * h))
    assert abs(equilibrium(degrees, humidity) - Fraction(expected)) < Fraction(1, 10**20)


@given(st.integers(min_value=30, max_value=200), st.integers(min_value=5, max_value=94))
def test_damper_air_makes_damper_wood(degrees, humidity):
    assert equilibrium(degrees, humidity) < equilibrium(degrees, humidity + 1)


def test_celsius_and_fahrenheit_are_the_same_air():
    assert fahrenheit(20) == 68
    told = [
        reckon("equilibrium_moisture", scale="air_f", temperature_f="68", humidity="45"),
        reckon("equilibrium_moisture", scale="air_c", temperature_c="20", humidity="45"),
    ]
    assert told[0]["answers"] == told[1]["answers"]
    assert told[0]["answers"][0]["text"] == "8.5%"


def test_it_says_by_what_movement_is_figured():
    dry = reckon("equilibrium_moisture", temperature_f="70", humidity="20")["by_key"]
    assert dry["moisture"]["text"] == "4.5%"
    assert dry["means"]["text"].startswith("It’s outside 6 to 14%")


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"temperature_f": "68", "humidity": "101"}, "humidity", "range"),
        ({"temperature_f": "68", "humidity": "-5"}, "humidity", "range"),
        ({"temperature_f": "500", "humidity": "40"}, "temperature_f", "range"),
        ({"temperature_f": "68"}, "humidity", "missing"),
        ({"temperature_f": "warm", "humidity": "40"}, "temperature_f", "unreadable"),
        ({"scale": "air_c", "temperature_c": "-20", "humidity": "40"}, "temperature_c", "range"),
    ],
)
def test_bad_input_names_its_field(values, field, kind):
    assert errors(ask("equilibrium_moisture", **values))[field]["kind"] == kind
