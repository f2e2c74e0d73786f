"""The middle of a span is as far from one end as from the other, wherever the tape begins."""

from fractions import Fraction

import pytest
from asking import as_drawn, ask, errors, exact, reckon
from hypothesis import assume, given
from hypothesis import strategies as st

readings = st.fractions(min_value=0, max_value=300, max_denominator=64)
parts = st.fractions(min_value="1/8", max_value=1, max_denominator=64)


def test_the_middle_of_a_span_from_zero_is_its_half():
    """Worked by hand: 37 9/16 is 601/16, and its half 601/32 = 18 25/32."""
    said = reckon("middle", {"mark": "1/32"}, last="37 9/16")
    assert said["answers"][0]["text"] == "18 25/32″"
    assert [item["label"] for item in said["by_key"]["marks"]["items"]] == ["Center"]
    assert said["working"][0]["text"] == "(0 + 37 9/16) ÷ 2 = 18 25/32"


@given(readings, readings.filter(bool))
def test_the_middle_is_as_far_from_both_ends(first, length):
    said = reckon("middle", first=f"{first} in", last=f"{first + length} in")["by_key"]
    middle = exact(said["middle"])
    assert middle - first == first + length - middle == exact(said["side"])
    assert exact(said["span"]) == length


@given(readings, readings.filter(bool), parts)
def test_what_is_centered_leaves_the_same_at_both_sides(first, length, part):
    width = length * part
    assume(width >= Fraction(1, 64))
    said = reckon("middle", first=f"{first} in", last=f"{first + length} in", width=f"{width} in")[
        "by_key"
    ]
    near, middle, far = (exact(item) for item in said["marks"]["items"])
    assert near - first == first + length - far == exact(said["side"])
    assert far - near == width
    assert middle == (near + far) / 2


def test_the_ends_may_be_told_in_either_order():
    there = reckon("middle", first="10", last="37 9/16", width="3")
    back = reckon("middle", first="37 9/16", last="10", width="3")
    assert there["answers"] == back["answers"]


@pytest.mark.parametrize(
    ("values", "field"),
    [({"first": "12", "last": "1 ft"}, "last"), ({"last": "12", "width": "12 1/64"}, "width")],
)
def test_no_span_and_a_thing_wider_than_it_are_impossible(values, field):
    error = errors(ask("middle", **values))[field]
    assert error["kind"] == "impossible"
    assert error["remedy"].endswith(".")


def test_a_thing_as_wide_as_the_span_leaves_nothing():
    said = reckon("middle", last="12", width="12")
    assert said["by_key"]["side"]["text"] == "0″"
    assert not [each for each in said["drawing"]["shapes"] if each["kind"] == "dimension"]


@pytest.mark.parametrize("width", ["", "1/64", "20", "37 9/16"])
def test_the_drawing_shows_the_middle_and_both_sides_inside_its_box(width):
    said = reckon("middle", last="37 9/16", width=width)
    drawn = said["drawing"]
    left, top, right, bottom = drawn["box"]
    assert 1 <= (right - left) / (bottom - top) <= 3
    points = [point for shape in drawn["shapes"] for point in shape.get("points", [])]
    assert all(left <= x <= right and top <= y <= bottom for x, y in points)
    labels = [each["text"] for each in drawn["shapes"] if each["kind"] == "label"]
    assert labels == [as_drawn(said["answers"][0]), "0″", "37 9/16″"]
