"""A length from a line of the tape is the difference, and the two questions undo each other."""

from fractions import Fraction

import pytest
from asking import as_drawn, ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

lengths = st.fractions(min_value=Fraction(1, 64), max_value=200, max_denominator=64)
starts = st.fractions(min_value=Fraction(1, 64), max_value=100, max_denominator=64)
TAPE = {"name": "Long one", "distance": "100", "distance_reads": "99 7/8"}


def test_the_inch_that_was_burned_is_taken_away():
    said = reckon("burned_inch", solve="length", reading="32 5/8")
    assert said["answers"][0]["text"] == "31 5/8″"
    assert said["working"][0]["text"] == "32 5/8 − 1 = 31 5/8"


def test_the_inch_that_is_to_be_burned_is_added():
    said = reckon("burned_inch", solve="mark", length="31 5/8")
    assert said["answers"][0]["text"] == "32 5/8″"
    assert said["working"][0]["text"] == "1 + 31 5/8 = 32 5/8"


@given(lengths, starts, st.booleans())
def test_what_was_marked_measures_the_same_again(length, start, stretched):
    settings = {"tapes": [TAPE]} if stretched else {}
    tape = "Long one" if stretched else ""
    values = {"start": f"{start} in", "tape": tape}
    mark = exact(
        reckon("burned_inch", settings, solve="mark", length=f"{length} in", **values)["answers"][0]
    )
    inches_of_tape = length * Fraction(799, 800) if stretched else length
    assert mark - start == inches_of_tape
    back = reckon(
        "burned_inch",
        settings,
        solve="length",
        reading=f"{mark.numerator}/{mark.denominator} in",
        **values,
    )
    assert exact(back["answers"][0]) == length


def test_a_bent_hook_takes_no_part_where_the_tape_starts_at_a_line():
    tapes = [{"name": "Bent", "block": "4", "block_reads": "3 31/32"}]
    said = reckon("burned_inch", {"tapes": tapes}, solve="length", reading="11", tape="Bent")
    assert exact(said["answers"][0]) == 10


def test_a_far_end_before_the_line_is_impossible():
    said = errors(ask("burned_inch", solve="length", reading="1", start="1"))
    assert said["reading"]["kind"] == "impossible"


@pytest.mark.parametrize("solve", ["length", "mark"])
def test_a_tape_that_nobody_told_of_is_unknown(solve):
    values = {"reading" if solve == "length" else "length": "12"}
    assert (
        errors(ask("burned_inch", solve=solve, tape="Lost", **values))["tape"]["kind"] == "unknown"
    )


@given(lengths, starts, st.sampled_from(["in", "ft-in", "mm"]))
def test_the_drawing_has_both_ends_in_their_order_and_stays_in_its_box(length, start, display):
    said = reckon(
        "burned_inch",
        {"display": display},
        solve="mark",
        length=f"{length} in",
        start=f"{start} in",
    )
    drawn = said["drawing"]
    left, top, right, bottom = drawn["box"]
    assert 1 <= (right - left) / (bottom - top) <= 3
    found = next(each for each in drawn["shapes"] if each["kind"] == "dimension")
    assert left <= found["from"][0] < found["to"][0] <= right
    points = [point for shape in drawn["shapes"] for point in shape.get("points", [])]
    assert all(left <= x <= right and top <= y <= bottom for x, y in points)
    texts = [shape["text"] for shape in drawn["shapes"] if shape["kind"] == "label"]
    assert as_drawn(said["answers"][0]) in texts
