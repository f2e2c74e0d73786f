"""A tape is made up from first principles, used, and its readings are corrected to the truth.

The made-up tape: its inch marks lie `scale` true inches apart, and what the hook touches lies
`hook` true inches before the zero mark. Nothing else is known to the oracle.
"""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

hooks = st.fractions(min_value=Fraction(-1, 8), max_value=Fraction(1, 8), max_denominator=128)
scales = st.fractions(
    min_value=Fraction(99, 100), max_value=Fraction(101, 100), max_denominator=200
)
readings = st.fractions(min_value=1, max_value=300, max_denominator=32)


def place_of_mark(reads, scale):
    """Where a mark lies, in true inches from the zero mark: so many stretched inches along."""
    whole, rest = divmod(reads, 1)
    return sum(scale for _ in range(whole)) + rest * scale


def mark_at(place, scale):
    """What mark lies at a place."""
    return place / scale


def text(value):
    return f"{value.numerator}/{value.denominator} in"


def compared(hook, scale, block=Fraction(4), distance=Fraction(96)):
    """What the made-up tape reads on two true lengths that are hooked on."""
    return {
        "block": text(block),
        "block_reads": text(mark_at(block - hook, scale)),
        "distance": text(distance),
        "distance_reads": text(mark_at(distance - hook, scale)),
    }


@given(hooks, scales, readings)
def test_a_reading_from_the_hook_is_corrected_to_the_truth(hook, scale, reading):
    told = compared(hook, scale)
    said = reckon("tape_error", solve="true", reading=text(reading), which="typed", **told)
    true = place_of_mark(reading, scale) + hook
    assert exact(said["by_key"]["true"]) == true
    assert exact(said["by_key"]["off"]) == abs(true - reading)
    way = said["by_key"]["way"]["text"]
    assert ("reads short" in way, "reads long" in way) == (true > reading, true < reading)


@given(hooks, scales, readings)
def test_from_a_line_of_the_tape_the_hook_takes_no_part(hook, scale, reading):
    told = compared(hook, scale) | {"since": "line", "start": "1/2 in"}
    said = reckon("tape_error", solve="true", reading=text(reading), which="typed", **told)
    true = place_of_mark(reading, scale) - place_of_mark(Fraction(1, 2), scale)
    assert exact(said["by_key"]["true"]) == true


@given(hooks, scales, readings)
def test_the_mark_to_aim_at_lies_at_the_wanted_length(hook, scale, reading):
    told = compared(hook, scale)
    said = reckon("tape_error", solve="true", reading=text(reading), which="typed", **told)
    aim = exact(said["by_key"]["aim"])
    assert place_of_mark(aim, scale) + hook == reading


@given(hooks, scales, readings)
def test_from_a_line_the_mark_to_aim_at_lies_at_the_wanted_length_past_that_line(
    hook, scale, reading
):
    """The wanted length is what was read from the line on, and the hook takes no part."""
    told = compared(hook, scale) | {"since": "line", "start": "1/2 in"}
    said = reckon("tape_error", solve="true", reading=text(reading), which="typed", **told)
    aim = exact(said["by_key"]["aim"])
    laid_out = place_of_mark(aim, scale) - place_of_mark(Fraction(1, 2), scale)
    assert laid_out == reading - Fraction(1, 2)


def test_the_working_says_which_length_is_laid_out_from_where():
    """By hand: 50 true inches are read as 49 15/16, so from the 10 line to 59 7/8 are 49 7/8
    marks, and 49 7/8 true inches are 49 7/8 × 799/800 = 49.81266 marks on: 59.81266.
    """
    tape = {"which": "typed", "distance": "100", "distance_reads": "99 7/8"}
    said = reckon("tape_error", reading="59 7/8", since="line", start="10", **tape)
    assert said["by_key"]["aim"]["text"] == "59 13/16″"
    line = said["working"][-1]["text"]
    assert line.startswith("To lay out 49 7/8 from the line at 10″: 10 + 49 7/8 ÷ 1.00125")


def test_a_hook_that_reaches_too_far_reads_short_so_its_error_is_added():
    """By hand: bent out 1/32, a 6 in block ends 1/32 before the 6: it reads 5 31/32."""
    said = reckon(
        "tape_error",
        {"mark": "1/32"},
        solve="true",
        reading="20",
        which="typed",
        block="6",
        block_reads="5 31/32",
    )
    assert said["by_key"]["true"]["text"] == "20 1/32″"
    assert said["by_key"]["hook"]["text"] == "Every reading from the hook: add 1/32″"
    assert said["by_key"]["scale"]["text"].endswith("nothing found")


def test_a_hook_that_is_pushed_in_reads_long_so_its_error_is_taken_away():
    said = reckon(
        "tape_error",
        {"mark": "1/32"},
        solve="true",
        reading="20",
        which="typed",
        block="6",
        block_reads="6 1/32",
    )
    assert said["by_key"]["true"]["text"] == "19 31/32″"
    assert "subtract 1/32″" in said["by_key"]["hook"]["text"]


def test_a_stretched_tape_reads_short_in_proportion():
    """By hand: 100 in read as 99 7/8, so 49 15/16 of its inches are 50."""
    said = reckon(
        "tape_error",
        solve="true",
        reading="49 15/16",
        which="typed",
        distance="100",
        distance_reads="99 7/8",
    )
    assert exact(said["by_key"]["true"]) == 50
    assert said["by_key"]["hook"]["text"].endswith("nothing found")


def test_a_tape_of_the_settings_is_corrected_like_one_that_is_told():
    told = compared(Fraction(1, 32), Fraction(1001, 1000))
    settings = {"tapes": [{"name": "Old one"} | told]}
    mine = reckon("tape_error", settings, solve="true", reading="70", which="mine", tape="Old one")
    typed = reckon("tape_error", settings, solve="true", reading="70", which="typed", **told)
    assert mine["answers"] == typed["answers"]
    assert "my tape Old one" in mine["summary"]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"which": "mine"}, "tape", "missing"),
        ({"which": "mine", "tape": "Lost"}, "tape", "unknown"),
        ({"which": "typed"}, "block", "missing"),
        ({"which": "typed", "block": "6"}, "block_reads", "missing"),
        ({"which": "typed", "distance_reads": "96"}, "distance", "missing"),
        ({"which": "typed", "block": "6", "block_reads": "5"}, "block_reads", "range"),
        ({"which": "typed", "distance": "100", "distance_reads": "90"}, "distance_reads", "range"),
        ({"which": "typed", "block": "0", "block_reads": "5"}, "block", "range"),
        (
            {"which": "typed", "block": "6", "block_reads": "6", "since": "line", "start": "20"},
            "reading",
            "impossible",
        ),
    ],
)
def test_what_can_not_be_a_tape_is_refused_at_its_field(values, field, kind):
    assert errors(ask("tape_error", solve="true", reading="20", **values))[field]["kind"] == kind


@given(hooks, readings)
def test_the_drawing_shows_the_reading_and_the_truth(hook, reading):
    told = compared(hook, Fraction(1))
    said = reckon("tape_error", solve="true", reading=text(reading), which="typed", **told)
    drawn = said["drawing"]
    names = [shape["text"] for shape in drawn["shapes"] if shape.get("role") == "name"]
    assert len(names) == 2
    if hook == 0 or abs(hook) >= Fraction(1, 64):  # less is too fine for the drawing's marks
        assert (names[0] == names[1]) == (hook == 0)
    left, _, right, _ = drawn["box"]
    ends = [
        end for shape in drawn["shapes"] if "from" in shape for end in (shape["from"], shape["to"])
    ]
    assert all(left <= x <= right for x, _ in ends)


def test_a_hook_that_is_off_by_more_than_the_reading_is_refused():
    tape = {"which": "typed", "block": "6", "block_reads": "6 1/16"}
    said = ask("tape_error", solve="true", reading="1/32", **tape)
    assert errors(said)["reading"]["kind"] == "impossible"
