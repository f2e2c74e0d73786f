"""How far a tape may be off: the published figures, the band, never less for a longer length."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

import sawside
from tables import rows

RULES = ["h44", "I", "II", "III"]
_TABLE = rows("tape_tolerances.csv")


def allowed(length, rule, settings=None):
    """By how much the most true length is more than the tape reads, exact inches."""
    said = reckon("tape_error", settings, solve="allowed", reading=length, rule=rule)["by_key"]
    reads = Fraction(answered_length(length))
    if "least" in said:
        assert exact(said["least"]) + exact(said["most"]) == 2 * reads
    return exact(said["most"]) - reads


def answered_length(text):
    """The exact inches of a length as it is typed."""
    return sawside.handle({"do": "read", "text": text})["value"]["exact"]


@pytest.mark.parametrize("row", _TABLE, ids=lambda row: f"{row['rule']} {row['length']}")
def test_the_published_figure_is_given(row):
    figure = Fraction(row["tolerance"])
    inches = figure if row["rule"] == "h44" else figure / Fraction("25.4")
    assert allowed(row["length"], row["rule"]) == inches


@given(st.fractions(min_value=Fraction(1, 64), max_value=1199), st.sampled_from(RULES))
def test_a_longer_length_is_never_allowed_less(length, rule):
    shorter = Fraction(round(length * 64), 64) or Fraction(1, 64)
    longer = shorter + 1
    assert allowed(f"{longer} in", rule) >= allowed(f"{shorter} in", rule)


@given(st.integers(1, 30_000), st.sampled_from(["I", "II", "III"]))
def test_a_class_goes_by_the_next_whole_meter(millimeters, rule):
    """Oracle: the meters are counted in whole millimeters, as integers."""
    meters = -(-millimeters // 1000)
    tenths = {"I": 1 + meters, "II": 3 + 2 * meters, "III": 6 + 4 * meters}[rule]
    assert allowed(f"{millimeters} mm", rule) == Fraction(tenths, 254)


def test_the_allowance_is_told_in_marks_and_in_millimeters():
    said = reckon("tape_error", solve="allowed", reading="10 ft", rule="h44")["by_key"]
    assert said["allowed"]["text"] == "± 1/16″"
    assert said["marks"]["text"] == "1/16″, 1 mark (sixteenths)"
    inches = reckon("tape_error", solve="allowed", reading="5 m", rule="II")["by_key"]
    assert inches["allowed"]["text"] == "± 1.3 mm"
    assert inches["marks"]["text"] == "≈ 3/64″, 0.8… of a mark (sixteenths)"
    metric = reckon("tape_error", {"unit": "mm"}, solve="allowed", reading="5000", rule="II")[
        "by_key"
    ]
    assert metric["allowed"]["text"] == "± 1.3 mm"
    assert metric["millimeters"]["text"] == "1.3 mm, 0.0511…″"


def test_every_rule_is_beside_the_chosen_one():
    said = reckon("tape_error", {"unit": "mm"}, solve="allowed", reading="5000", rule="II")[
        "by_key"
    ]["rules"]
    labels = [item["label"] for item in said["items"]]
    assert labels == [
        "NIST Handbook 44, 1.58… mm",
        "EU class I, 0.6 mm",
        "EU class II, 1.3 mm",
        "EU class III, 2.6 mm",
    ]
    assert [item["text"] for item in said["items"]] == ["1.6 mm", "0.6 mm", "1.3 mm", "2.6 mm"]


def test_bad_lengths_are_refused():
    for length, kind in (("0", "range"), ("100.1 ft", "range"), ("3//4", "unreadable")):
        assert errors(ask("tape_error", solve="allowed", reading=length))["reading"]["kind"] == kind


@pytest.mark.parametrize("rule", RULES)
@pytest.mark.parametrize("settings", [{}, {"unit": "mm"}, {"mark": ".001 in"}])
def test_the_band_lies_even_around_the_mark(rule, settings):
    said = reckon("tape_error", settings, solve="allowed", reading="41 1/4 in", rule=rule)
    shapes = said["drawing"]["shapes"]
    band = next(shape["points"] for shape in shapes if shape["kind"] == "polygon")
    middle = next(shape["from"][0] for shape in shapes if shape.get("role") == "cut")
    assert middle - band[0][0] == pytest.approx(band[1][0] - middle, abs=0.001)
    dimensions = {shape["text"] for shape in shapes if shape["kind"] == "dimension"}
    told = said["by_key"]["marks"]["text"].split(", ")[0]
    assert dimensions == {told}


def test_a_length_that_the_allowance_could_take_whole_has_no_least():
    said = reckon("tape_error", solve="allowed", reading="1/64")
    assert "least" not in said["by_key"]
    assert said["by_key"]["most"]["text"] == "3/64″"
