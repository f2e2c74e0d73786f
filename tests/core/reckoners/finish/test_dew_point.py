"""The dew point: printed tables, another published formula, and wood against its room."""

import re
from fractions import Fraction
from itertools import pairwise

import pytest
from asking import ask, errors, reckon, texts
from hypothesis import given
from hypothesis import strategies as st
from oracles.saturated_air import dew_point_by_halving

from sawside.reckoners import RECKONERS
from sawside.wood.humid_air import dew_point
from sawside.wood.moisture import equilibrium
from tables import rows

KEY = "dew_point"
SHOP = {"scale": "air_f", "temperature_f": "68", "humidity": "55"}
degrees = st.integers(-10, 480).map(lambda tenths: Fraction(tenths, 10))
humidities = st.integers(1, 100)


def test_it_is_the_formula_worked_by_hand():
    """20 °C at 50 %: 17.625 × 20 ÷ 263.04 = 1.340100; ln .5 = −.693147; g = .646953;
    243.04 × .646953 ÷ (17.625 − .646953) = 157.2355 ÷ 16.978047 = 9.2611."""
    assert float(dew_point(20, 50)) == pytest.approx(9.2611, abs=1e-4)


def test_it_is_that_of_a_printed_table_within_a_quarter_of_a_degree():
    """All cells of a trade's rounded table; most are within a tenth."""
    cells = [
        (abs(float(dew_point(row["air"], humid)) - float(printed)), row["air"], humid)
        for row in rows("dew_points.csv")
        for humid, printed in row.items()
        if humid != "air" and printed
    ]
    assert len(cells) == 105
    assert [cell for cell in cells if cell[0] > 0.25] == []
    assert sum(cell[0] < 0.11 for cell in cells) > 80


def test_at_the_dew_point_the_handbooks_vapor_saturates_the_air():
    """Handbook of Chemistry and Physics: the humidity at which air of each temperature drops its
    water at each lower one is the ratio of their pressures. Printed to .01 mbar."""
    table = [(int(row["celsius"]), float(row["millibars"])) for row in rows("vapor_pressure.csv")]
    pairs = [(one, other) for one in table for other in table if other[0] < one[0]]
    assert len(pairs) == 153
    for (air, full), (dew, held) in pairs:
        humid = Fraction(held / full * 100)
        assert float(dew_point(air, humid)) == pytest.approx(dew, abs=0.05)


@given(degrees, humidities)
def test_it_is_the_dew_point_of_another_published_formula(air, humid):
    """ASHRAE's equation over water, from 0 °C up; within .1 degree, .3 below freezing."""
    there = dew_point_by_halving(float(air), humid)
    assert float(dew_point(air, humid)) == pytest.approx(there, abs=0.1 if there >= 0 else 0.3)


@given(degrees, humidities)
def test_it_is_below_the_air_and_rises_with_it_and_with_its_humidity(air, humid):
    dew = dew_point(air, humid)
    assert dew == air if humid == 100 else dew < air
    assert dew < dew_point(air + Fraction(1, 10), humid)
    if humid < 100:
        assert dew < dew_point(air, humid + 1)


@given(degrees, humidities)
def test_fahrenheit_and_celsius_are_the_same_air(air, humid):
    warm = air * 9 / 5 + 32
    one = texts(reckon(KEY, temperature_f=str(warm), humidity=str(humid)))["dew"]
    two = texts(reckon(KEY, scale="air_c", temperature_c=str(air), humidity=str(humid)))["dew"]
    number = [Fraction(each.split()[0].replace("−", "-")) for each in (one, two)]
    assert abs((number[0] - 32) * 5 / 9 - number[1]) < Fraction(8, 100)


@pytest.mark.parametrize(
    ("surface", "verdict", "above"),
    [
        # 68 °F at 55 %: 20 °C, a dew point of 10.69 °C or 51.23 °F.
        ("57", "Warm enough: dew point 51.2 °F", "5.7 °F above it"),
        ("56", "Too cold: dew point 51.2 °F", "4.7 °F above it"),
        # 51.23 + 5 and 4.96 °F above, which must not be told as 5.
        ("56.19", "Too cold: dew point 51.2 °F", "4.9 °F above it"),
        ("50", "Don’t finish: wood gets wet at 51.2 °F", "1.2 °F below it"),
        ("", "Warm enough: dew point 51.2 °F", "16.7 °F above it"),
    ],
)
def test_the_surface_has_to_be_5_degrees_above_it(surface, verdict, above):
    """The rule of 5 °F or 3 °C that goes with ISO 8502-4 (from memory)."""
    said = reckon(KEY, **SHOP, surface_f=surface)
    assert said["verdict"] == verdict
    assert said["by_key"]["above"]["text"].startswith(above)
    cold = verdict[0] in "DT"
    assert said["fixes"] == ([{"label": "Warm the wood", "field": "surface_f"}] if cold else [])


@pytest.mark.parametrize(
    ("values", "verdict", "fix"),
    [
        # 68 °F at 90 %: 65.0 °F (the same formula by hand), 3 below the air: no wood as warm as
        # that air is warm enough, so it's the air that is to change.
        ({}, "Too damp: dew point 65 °F", "humidity"),
        ({"surface_f": "66"}, "Too damp: dew point 65 °F", "humidity"),
        ({"surface_f": "60"}, "Don’t finish: wood gets wet at 65 °F", "humidity"),
        # Warm enough above the dew point, but past the 85% of the cans.
        ({"surface_f": "75"}, "Too damp to dry: 85% is the most", "humidity"),
    ],
)
def test_air_that_is_too_damp_for_any_wood_in_it_is_to_be_dried(values, verdict, fix):
    said = reckon(KEY, **SHOP | {"humidity": "90"} | values)
    assert said["verdict"] == verdict
    assert [each["field"] for each in said["fixes"]] == ([fix] if fix else [])


@given(degrees, humidities, st.sampled_from(["air_f", "air_c"]))
def test_the_coldest_that_is_told_is_warm_enough_and_a_tenth_less_is_not(air, humid, scale):
    letter = scale[-1]
    typed = air if letter == "c" else air * 9 / 5 + 32
    values = {"scale": scale, f"temperature_{letter}": str(typed), "humidity": str(humid)}
    told = texts(reckon(KEY, **values))["coolest"]
    coolest = Fraction(re.match(r"−?[\d.]+", told)[0].replace("−", "-"))
    for less, warm in ((0, True), (Fraction(1, 10), False)):
        surface = coolest - less
        if surface < (0 if letter == "f" else -18):
            continue
        said = reckon(KEY, **values, **{f"surface_{letter}": str(surface)})
        wet = re.match("Don’t finish|Too cold:|Too damp:", said["verdict"])
        assert (wet is None) == warm


def test_wood_is_set_against_the_room_it_goes_to():
    """Wood Handbook, Table 4-2: 70 °F at 40 % brings wood to 7.7 %; within 2 points is ready
    (common practice, no source)."""
    assert round(float(equilibrium(70, 40)), 1) == 7.7
    room = {"room_f": "70", "room_humidity": "40"}
    told = [texts(reckon(KEY, **SHOP, **room, wood=wood))["room"] for wood in ("9", "11", "5")]
    assert told == [
        "9% now, 7.7% there: ready",
        "11% now, 7.7% there: 3.3 points too wet, let it settle first",
        "5% now, 7.7% there: 2.7 points too dry, let it settle first",
    ]
    assert "room" not in texts(reckon(KEY, **SHOP))
    leads = [reckon(KEY, **SHOP, **room, wood=wood)["verdict"] for wood in ("9", "11", "5")]
    assert leads == [
        "Warm enough: dew point 51.2 °F",
        "Let the wood settle first: too wet",
        "Let the wood settle first: too dry",
    ]


def test_the_room_is_this_air_where_nothing_is_said_of_it():
    """Wood Handbook, Table 4-2: 70 °F at 55 % gives 10.1."""
    there = texts(reckon(KEY, temperature_f="70", humidity="55", wood="10"))["room"]
    assert there == "10% now, 10.1% there: ready"
    damp = texts(reckon(KEY, temperature_f="70", humidity="98", wood="10"))["room"]
    assert damp == "No wood is dry in air over 95%."


def test_colder_air_than_freezing_is_told_with_its_sign():
    said = texts(reckon(KEY, scale="air_c", temperature_c="-1", humidity="20"))
    assert said["dew"].startswith("−21.")
    drops = [dew_point(-1, each) for each in range(1, 101)]
    assert all(one < two for one, two in pairwise(drops))


def test_air_that_no_finish_dries_in_is_warned_of_however_warm_the_wood_is():
    """50 °F and 85% as with Coats (common practice, no source)."""
    damp = reckon(KEY, **SHOP | {"humidity": "86", "surface_f": "80"})
    assert damp["verdict"] == "Too damp to dry: 85% is the most"
    assert damp["cautions"][0].startswith("Above 85% humidity a finish may turn cloudy")
    cold = reckon(KEY, scale="air_c", temperature_c="9", humidity="40")
    assert cold["cautions"][0].startswith("Below 50 °F (10 °C)")
    assert cold["verdict"] == "Too cold to dry: 10 °C is the least"
    assert cold["fixes"] == [{"label": "Warm the shop", "field": "temperature_c"}]
    chilled = reckon(KEY, temperature_f="70", humidity="20", surface_f="45")
    assert chilled["verdict"] == "Too cold to dry: 50 °F is the least"
    assert chilled["fixes"] == [{"label": "Warm the wood", "field": "surface_f"}]
    assert len(reckon(KEY, **SHOP | {"humidity": "85"})["cautions"]) == 1


def test_flames_and_fumes_are_cautioned_of():
    assert "flames" in reckon(KEY, **SHOP)["cautions"][0]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        (SHOP | {"humidity": "0"}, "humidity", "range"),
        (SHOP | {"humidity": "101"}, "humidity", "range"),
        (SHOP | {"humidity": ""}, "humidity", "missing"),
        (SHOP | {"temperature_f": "130"}, "temperature_f", "range"),
        (SHOP | {"temperature_f": "warm"}, "temperature_f", "unreadable"),
        (SHOP | {"surface_f": "400"}, "surface_f", "range"),
        (SHOP | {"wood": "-1"}, "wood", "range"),
        ({"scale": "air_c", "temperature_c": "68", "humidity": "50"}, "temperature_c", "range"),
    ],
)
def test_bad_input_names_its_field(values, field, kind):
    assert errors(ask(KEY, **values))[field]["kind"] == kind


def test_the_example_is_in_the_scale_of_the_project():
    for settings, dew in ((None, "51.2 °F"), ({"unit": "mm"}, "10.7 °C")):
        said = reckon(KEY, settings, **RECKONERS[KEY].example)
        assert said["verdict"] == f"Warm enough: dew point {dew}"
