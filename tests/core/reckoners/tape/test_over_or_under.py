"""A piece that misses its length is told by how much, which way, and what to do about it."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon, texts
from hypothesis import example, given
from hypothesis import strategies as st

lengths = st.fractions(min_value="1/64", max_value=200, max_denominator=64)
sixty_fourths = st.integers(1, 10_000).map(lambda number: Fraction(number, 64))


def test_a_heavy_piece_against_a_stop_wants_the_stop_nearer_to_the_blade():
    """Worked by hand: 34 29/32 - 34 7/8 = 1/32 = 31.25 thousandths = 0.79375 mm."""
    said = texts(reckon("over_or_under", aimed="34 7/8", measured="34 29/32", cut="stop"))
    assert said["difference"] == "1/32″"
    assert said["direction"].startswith("Heavy")
    assert said["remedy"].startswith("Move the stop 1/32″ toward the blade")
    assert said["marks"] == "1/2 of a mark (sixteenths)"
    assert said["thousandths"] == "31.25 thousandths of an inch"
    assert said["millimeters"] == "0.7937… mm"


def test_a_light_piece_against_a_stop_wants_it_farther_away():
    said = texts(reckon("over_or_under", aimed="34 7/8", measured="34 11/16", cut="stop"))
    assert said["direction"].startswith("Light")
    assert "3/16″ away from the blade" in said["remedy"]
    assert said["marks"] == "3 marks (sixteenths)"


def test_a_piece_cut_to_a_mark_is_trimmed_or_cut_again():
    heavy = reckon("over_or_under", aimed="12", measured="12 1/16", cut="mark")
    light = reckon("over_or_under", aimed="12", measured="11 15/16", cut="mark")
    assert texts(heavy)["remedy"] == "Trim 1/16″ off"
    assert "Cut another" in texts(light)["remedy"]
    assert any("maker’s instructions" in caution for caution in heavy["cautions"])
    assert texts(heavy)["marks"] == texts(light)["marks"] == "1 mark (sixteenths)"


@pytest.mark.parametrize(("cut", "remedy"), [("mark", "Nothing to do"), ("stop", "Leave the stop")])
def test_a_piece_on_the_mark_needs_nothing(cut, remedy):
    said = reckon("over_or_under", aimed="12", measured="1 ft", cut=cut)
    assert texts(said)["direction"] == "On the mark"
    assert texts(said)["remedy"].startswith(remedy)
    assert texts(said)["marks"] == "0 marks (sixteenths)"
    assert said["cautions"] == []


@given(lengths, lengths, st.sampled_from(["mark", "stop"]))
def test_measured_is_aimed_at_and_the_difference_in_its_direction(aimed, measured, cut):
    said = reckon("over_or_under", aimed=f"{aimed} in", measured=f"{measured} in", cut=cut)
    size = exact(said["by_key"]["difference"])
    way = {"O": 0, "H": 1, "L": -1}[said["by_key"]["direction"]["text"][0]]
    assert aimed + way * size == measured
    assert (size == 0) == (way == 0)
    if cut == "stop" and way:
        assert ("toward" if way > 0 else "away") in said["by_key"]["remedy"]["text"]
    told = said["by_key"]["thousandths"]["text"].split()[0]
    assert 0 <= size * 1000 - Fraction(told.rstrip("…")) < Fraction(1, 1000)


def test_a_difference_below_all_marks_is_told_in_decimals():
    said = texts(reckon("over_or_under", aimed="12", measured="12.004", cut="mark"))
    assert said["remedy"] == "Trim 0.004″ off"
    assert said["marks"] == "0.06… of a mark (sixteenths)"


def test_the_difference_is_told_in_the_persons_own_system():
    metric = reckon("over_or_under", {"unit": "mm"}, aimed="880", measured="881.5", cut="stop")
    assert "1.5 mm toward" in texts(metric)["remedy"]
    assert texts(metric)["marks"] == "1 1/2 marks (1 mm)"
    decimal = reckon("over_or_under", {"mark": ".001 in"}, aimed="2", measured="2.012", cut="stop")
    assert "0.012″ toward" in texts(decimal)["remedy"]


def test_bad_fields_are_each_told_of():
    said = errors(ask("over_or_under", aimed="0", measured="3//4", cut="saw"))
    assert {field: error["kind"] for field, error in said.items()} == {
        "aimed": "range",
        "measured": "unreadable",
        "cut": "unknown",
    }


@given(sixty_fourths, sixty_fourths)
@example(Fraction("34.875"), Fraction("34.8751"))
def test_the_drawing_stays_in_its_box_and_shows_the_difference(aimed, measured):
    said = reckon("over_or_under", aimed=f"{aimed} in", measured=f"{measured} in", cut="stop")
    drawn = said["drawing"]
    left, top, right, bottom = drawn["box"]
    assert 1 <= (right - left) / (bottom - top) <= 3
    points = [point for shape in drawn["shapes"] for point in shape.get("points", [])]
    assert all(left <= x <= right and top <= y <= bottom for x, y in points)
    dimensions = [each["text"] for each in drawn["shapes"] if each["kind"] == "dimension"]
    assert len(dimensions) == (aimed != measured)
    if 64 % abs(aimed - measured).denominator == 0:
        assert set(dimensions) <= {said["by_key"]["difference"]["text"]}
    if aimed != measured:
        (shape,) = [each for each in drawn["shapes"] if each["kind"] == "dimension"]
        assert abs(shape["from"][0] - shape["to"][0]) > (right - left) / 6
    roles = [shape["role"] for shape in drawn["shapes"] if shape["kind"] == "polygon"]
    assert roles == ["stock", "stock", "hatch", "ghost"]


def test_the_drawing_names_the_stop_and_says_that_its_ends_are_large():
    said = reckon("over_or_under", aimed="34 7/8", measured="34 29/32", cut="stop")
    texts = {shape.get("text") for shape in said["drawing"]["shapes"]}
    assert {"stop", "ends drawn large"} <= texts
    marked = reckon("over_or_under", aimed="34 7/8", measured="34 29/32", cut="mark")
    assert "stop" not in {shape.get("text") for shape in marked["drawing"]["shapes"]}
