"""The largest triangle of sides 3, 4 and 5 that fits into a corner."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

rooms = st.fractions(min_value=12, max_value=300, max_denominator=16)


def test_a_room_of_nine_by_twelve_feet_takes_the_triangle_of_nine_twelve_and_fifteen():
    """Worked by hand: 3 × 3, 3 × 4 and 3 × 5 feet."""
    said = reckon(
        "square", {"display": "ft-in"}, solve="triangle", along="9'", across="12' 6", step="1 ft"
    )
    by_key = said["by_key"]
    assert [by_key[key]["text"] for key in ("between", "along", "across")] == [
        "15′ 0″",
        "9′ 0″",
        "12′ 0″",
    ]


@given(rooms, rooms, st.sampled_from(["1/4 in", "1 in", "3 in", "10 mm"]))
def test_it_fits_is_square_and_the_next_one_does_not_fit(along, across, step):
    said = reckon("square", solve="triangle", along=f"{along} in", across=f"{across} in", step=step)
    first, second, diagonal = (exact(said["by_key"][k]) for k in ("along", "across", "between"))
    assert first**2 + second**2 == diagonal**2
    assert first <= along
    assert second <= across
    size = Fraction(50, 127) if step == "10 mm" else Fraction(step.split()[0])
    times = diagonal / 5 / size
    assert times.denominator == 1
    larger = (times + 1) * size
    assert not (3 * larger <= along and 4 * larger <= across)
    assert not (4 * larger <= along and 3 * larger <= across)


@given(rooms, rooms)
def test_the_smaller_ones_are_square_too(along, across):
    said = reckon(
        "square", solve="triangle", along=f"{along} in", across=f"{across} in", step="1 in"
    )
    others = said["by_key"]["others"]["items"]
    assert exact(others[0]) == exact(said["by_key"]["between"])
    found = [exact(item) for item in others]
    assert found == sorted(found, reverse=True)
    for item in others:
        assert exact(item) % 5 == 0
        short = exact(item) / 5
        sides = sorted(Fraction(side.strip("″")) for side in item["label"].split(" and "))
        assert sides == [3 * short, 4 * short]


def test_a_corner_that_is_too_small_asks_for_a_smaller_measure():
    error = errors(ask("square", solve="triangle", along="3'", across="3' 11", step="1 ft"))["step"]
    assert error["kind"] == "impossible"
    assert "finer" in error["remedy"]


def test_bad_fields_are_each_told_of():
    said = errors(ask("square", solve="triangle", along="1/2", across="x", step="1 mile"))
    assert {field: error["kind"] for field, error in said.items()} == {
        "along": "range",
        "across": "unreadable",
        "step": "unknown",
    }


@pytest.mark.parametrize(("along", "across"), [("37 9/16", "16 1/4"), ("50", "90")])
def test_the_drawing_tells_all_three_sides(along, across):
    said = reckon("square", solve="triangle", along=along, across=across)
    drawn = said["drawing"]
    left, top, right, bottom = drawn["box"]
    assert 0.9 <= (right - left) / (bottom - top) <= 3
    texts = [shape["text"] for shape in drawn["shapes"] if shape["kind"] == "dimension"]
    assert texts == [said["by_key"][key]["text"] for key in ("along", "across", "between")]


def test_in_a_project_in_millimeters_the_marks_are_whole_centimeters():
    """By hand: of 950 and 400, 400 ÷ 3 is 133.3; in centimeters 130: 520, 390 and 650."""
    said = reckon("square", {"unit": "mm"}, solve="triangle", along="950", across="400")
    assert said["verdict"] == "Mark 520 mm and 390 mm: square at 650 mm"
