"""When coats go on: days worked by hand, a clock that goes by minutes, and what is never asked."""

import csv
from datetime import datetime, timedelta
from itertools import pairwise
from pathlib import Path

import pytest
from asking import ask, errors, reckon
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from sawside.reckoners.finish.shared.finishes import FINISHES
from tests.core.oracles.finished_by_clock import coats, stays

START = "2026-11-30T18:00"
PUBLISHED = Path(__file__).parents[3] / "published/finish/drying_times.csv"
USUAL = (7, 22, None)


def times(said, begins="coat"):
    """The moments of the steps whose keys begin so."""
    return [step["due"]["at"] for step in said["steps"] if step["key"].startswith(begins)]


def moments(said):
    return [datetime.fromisoformat(each) for each in times(said)]


def test_varnish_worked_by_hand():
    """Mon 6 PM; 24 h later 30 min of sanding, so Tue 6:30 PM, Wed 7 PM, Thu 7:30 PM. 28 days of
    cure are Dec 31. By hand; Nov 30, 2026 is a Monday (any calendar)."""
    said = reckon("coats", finish="wiping", recoat="24", start=START)
    assert times(said) == [
        "2026-11-30T18:00",
        "2026-12-01T18:30",
        "2026-12-02T19:00",
        "2026-12-03T19:30",
    ]
    assert said["verdict"] == "4 coats, the last one"
    assert said["answers"][0]["text"] == "Thu Dec 3, 7:30 PM"
    assert said["by_key"]["ready"]["text"] == "Thu Dec 31, 7:30 PM"


def test_shellac_goes_on_in_one_evening_until_bedtime_and_then_in_the_morning():
    """6 PM, dry at 8, sanded until 8:30; dry at 10:30 PM, past the day: 7 AM, coat at 7:30."""
    said = reckon("coats", finish="shellac", start=START)
    assert times(said) == ["2026-11-30T18:00", "2026-11-30T20:30", "2026-12-01T07:30"]
    assert times(said, "sand") == ["2026-11-30T20:00", "2026-12-01T07:00"]


def test_oil_is_wiped_off_and_its_rags_are_spread_while_somebody_is_there():
    """20 min after it goes on. Its sitting is 50 min, so at 9:30 PM it waits until morning."""
    said = reckon("coats", finish="linseed", start="2026-11-30T21:30")
    assert times(said, "coat")[0] == "2026-12-01T07:00"
    assert times(said, "wipe")[0] == times(said, "rags")[0] == "2026-12-01T07:20"
    assert times(said)[1] == "2026-12-02T07:20"


def test_nobody_is_woken_for_what_is_cured():
    """By hand: wiped at 3:15 PM; at 61 °F a day is 24 × (1 + 9/18) = 36 h, so 3:15 AM."""
    air = {"air": "air_f", "temperature_f": "61", "humidity": "50"}
    plain = {"finish": "wax", "coats": "1", "cure": "1", "start": "2026-12-01T15:00"}
    said = reckon("coats", **plain, **air)
    cured = said["steps"][-1]
    assert (cured["earliest"]["at"], cured["due"]["at"]) == ("2026-12-03T03:15", "2026-12-03T07:00")
    assert said["by_key"]["ready"]["text"] == "Thu Dec 3, 3:15 AM"


def test_somebody_who_works_finishes_in_the_evening_and_on_the_weekend():
    """By hand: Fri 6 PM + 12 h is 6 AM Sat, the day starts at 7, and 30 min of sanding go before
    each coat. Sun 9 PM + 10 h is Mon 7 AM: until 8 there is just the hour that it takes, and for
    one who leaves at 7 the evening from 5 PM."""
    said = reckon(
        "coats", finish="lacquer", recoat="12", start="2026-12-04T18:00", away="away", coats="5"
    )
    assert times(said) == [
        "2026-12-04T18:00",
        "2026-12-05T07:30",
        "2026-12-05T20:00",
        "2026-12-06T08:30",
        "2026-12-06T21:00",
    ]
    later = reckon("coats", finish="lacquer", recoat="10", start="2026-12-06T21:00", away="away")
    assert times(later)[1] == "2026-12-07T07:30"
    short = reckon(
        "coats", finish="lacquer", recoat="10", start="2026-12-06T21:00", away="away", leaves="7"
    )
    assert times(short)[1] == "2026-12-07T17:30"


def test_who_works_nights_finishes_in_the_afternoon_and_not_on_saturday_morning():
    """By hand: away 10 PM to 6 AM, up from 2 PM to 7 AM. Fri Dec 4, 9 PM is an hour before work,
    and 24 h later is Saturday night, at home. On Monday at 5 AM one is at home, as Sunday is no
    workday; on Tuesday one works until 6."""
    nights = {"away": "away", "leaves": "22", "back": "6", "up": "14", "down": "7"}
    plain = {"finish": "lacquer", "recoat": "24", **nights}
    said = reckon("coats", start="2026-12-04T21:00", coats="2", **plain)
    assert times(said) == ["2026-12-04T21:00", "2026-12-05T21:30"]
    for start, coat in (
        ("07T05:00", "07T05:00"),
        ("08T05:00", "08T06:00"),
        ("08T06:45", "08T14:00"),
    ):
        said = reckon("coats", start=f"2026-12-{start}", coats="1", **plain)
        assert times(said) == [f"2026-12-{coat}"]


@pytest.mark.parametrize(
    ("night", "lost"),
    [
        # Second Sunday of March in the US (15 U.S.C. 260a), last one in Europe (Directive
        # 2000/84/EC), both from memory; dates by any calendar. In fall an hour is won.
        ("2026-03-07", 1),
        ("2027-03-13", 1),
        ("2026-03-28", 1),
        ("2027-03-27", 1),
        ("2026-03-14", 0),
        ("2026-03-08", 0),
        ("2026-10-31", 0),
    ],
)
def test_in_a_night_when_clocks_are_set_ahead_a_coat_dries_as_long_as_in_any(night, lost):
    """24 h from 8 AM, and half an hour of sanding."""
    said = reckon("coats", recoat="24", start=f"{night}T08:00", coats="2")
    apart = moments(said)[1] - moments(said)[0]
    assert apart == timedelta(hours=24.5 + lost)
    (coat,) = [step for step in said["steps"] if step["key"] == "coat2"]
    assert ("set ahead" in coat["about"]) == bool(lost)


def test_cold_and_damp_air_dries_slower_by_the_rules_that_are_told():
    """60 °F: 1 + 10/18; 75%: oil half again, so 24 × 1.5556 × 1.5 = 56 h. Water-borne at 75%: 50/25
    twice, 3 h become 6. By hand."""
    air = {"air": "air_f", "temperature_f": "60", "humidity": "75"}
    said = reckon("coats", finish="linseed", recoat="24", start=START, **air)
    assert said["by_key"]["between"]["text"] == "56 h at least"
    said = reckon("coats", finish="water", air="air_f", temperature_f="70", humidity="75")
    assert said["by_key"]["between"]["text"] == "6 h at least"
    celsius = {"air": "air_c", "temperature_c": "20", "humidity": "50"}
    said = reckon("coats", finish="shellac", **celsius)  # 68 °F: 2 h × (1 + 2/18) = 2 h 13.3 min
    assert said["by_key"]["between"]["text"] == "2 h 15 min at least"
    usual = celsius | {"temperature_c": "21"}  # 69.8 °F, which the form itself calls 70
    said = reckon("coats", finish="shellac", **usual)
    assert said["by_key"]["between"]["text"] == "2 h at least"


def test_warm_and_dry_air_never_shortens_what_the_can_says():
    said = reckon("coats", recoat="4", air="air_f", temperature_f="85", humidity="20")
    assert said["by_key"]["between"]["text"] == "4 h at least"


def test_celsius_is_worked_in_fahrenheit_with_a_line_that_says_so():
    """20 °C is 68 °F."""
    celsius = {"air": "air_c", "temperature_c": "20", "humidity": "50"}
    assert reckon("coats", **celsius)["working"][0]["text"] == "In °F: 20 × 1.8 + 32 = 68"


def test_oil_based_paint_is_treated_as_an_oil_and_water_based_paint_says_that_it_is_none():
    """NFPA tip sheet on oily rags: oil-based paints too heat up by themselves."""
    said = reckon("coats", finish="oil_paint", start=START)
    assert any("never pile" in each for each in said["cautions"])
    assert any("flames" in each for each in said["cautions"])
    assert said["steps"][0]["said"] == "Coat of primer"
    assert times(said)[1] == "2026-12-01T18:30"  # 24 h, and half an hour of sanding
    assert FINISHES["paint"].name == "Water-based paint with primer"


def test_of_one_coat_nothing_is_told_of_a_time_between_coats():
    said = reckon("coats", finish="oil_paint", coats="1", start=START)
    assert "between" not in said["by_key"]
    assert not any("between" in line["text"] for line in said["working"])


def test_without_a_start_nothing_has_a_date_and_how_far_apart_is_told():
    said = reckon("coats", finish="shellac")
    assert {step["due"] for step in said["steps"]} == {None}
    assert said["answers"][0]["text"] == "4 h after the first, or later"


def test_times_are_the_cautious_end_of_what_is_usual():
    with PUBLISHED.open(encoding="utf-8") as file:
        for row in csv.DictReader(line for line in file if not line.startswith("#")):
            assert FINISHES[row["finish"]].recoat == float(row["most"])
            assert float(row["least"]) < float(row["most"])


hour = st.integers(0, 23)


@settings(max_examples=120, deadline=None)
@given(
    start=st.datetimes(datetime(2026, 4, 1), datetime(2027, 1, 31)),  # no clock is set ahead then
    finish=st.sampled_from(["linseed", "shellac", "wiping", "water", "paint"]),
    quarters=st.integers(1, 200),
    count=st.integers(1, 4),
    up=hour,
    down=hour,
    away=st.none() | st.tuples(hour, hour),
)
def test_coats_go_on_as_by_a_clock_that_goes_by_minutes(
    start, finish, quarters, count, up, down, away
):
    assume(up != down)
    assume(away is None or away[0] != away[1])
    start = start.replace(second=0, microsecond=0)
    values = {"finish": finish, "recoat": str(quarters / 4), "coats": str(count)}
    values |= {"start": start.isoformat(timespec="minutes"), "up": str(up), "down": str(down)}
    if away:
        values |= {"away": "away", "leaves": str(away[0]), "back": str(away[1])}
    said = ask("coats", **values)
    wipe, sanding = (20, 0) if finish == "linseed" else (0, 30)
    need = 30 + wipe + (sanding if count > 1 else 0)
    # Days begin, end and are broken off on the hour, so the longest stretches begin there too.
    week = (datetime(2026, 1, 5) + timedelta(hours=each) for each in range(7 * 24))
    if not any(stays(each, need, (up, down, away)) for each in week):
        assert errors(said)["down"]["kind"] == "impossible"
        return
    sands = [number > 0 and sanding > 0 for number in range(count)]
    asked = coats(start, [15 * quarters] * count, wipe, sands, (up, down, away))
    assert moments(said) == asked


@settings(max_examples=60, deadline=None)
@given(st.integers(0, 100), st.integers(50, 110), st.integers(0, 85), st.sampled_from([*FINISHES]))
def test_no_coat_goes_on_before_the_one_before_it_has_dried_as_long_as_the_can_says(
    quarters, degrees, humidity, finish
):
    hours = (quarters + 1) / 4
    air = {"air": "air_f", "temperature_f": str(degrees), "humidity": str(humidity)}
    said = reckon("coats", finish=finish, recoat=str(hours), start=START, **air)
    there = moments(said)
    for one, other in pairwise(there):
        assert other - one >= timedelta(hours=hours)
        assert stays(other, 30, USUAL)
