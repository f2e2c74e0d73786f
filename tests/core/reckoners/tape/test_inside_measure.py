"""Between two walls: what was measured and what stands beyond it add up to the opening."""

from fractions import Fraction

import pytest
from asking import as_drawn, ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

lengths = st.fractions(min_value=1, max_value=100, max_denominator=64)
cases = st.fractions(min_value=Fraction(1, 2), max_value=12, max_denominator=64)
TAPES = [
    {"name": "Short one", "case": "3 1/8"},
    {"name": "Bent", "case": "3", "block": "4", "block_reads": "3 31/32"},
    {"name": "No case"},
]


def inside(settings=None, **values):
    return exact(reckon("opening", settings, **values)["answers"][0])


@given(lengths, cases)
def test_a_case_or_a_block_in_the_corner_is_added(reading, beyond):
    for way in ("case", "block"):
        values = {"way": way, "reading": f"{reading} in", way: f"{beyond} in"}
        assert inside(**values) == reading + beyond


@given(st.lists(st.integers(1, 6400), min_size=3, max_size=3, unique=True).map(sorted))
def test_two_sticks_reach_from_wall_to_wall_whatever_their_overlap(places):
    """Oracle: the sticks laid out, places from the left wall: near end of the second stick, far
    end of the first one, far wall."""
    near, far, wall = (Fraction(place, 64) for place in places)
    sticks = {"first": far, "second": wall - near, "overlap": far - near}
    told = {key: f"{value.numerator}/{value.denominator} in" for key, value in sticks.items()}
    assert inside(way="sticks", **told) == wall


def test_the_sticks_of_the_alcove():
    """Worked by hand: 24 + 20 1/4 - 6 11/16 = 37 9/16."""
    said = reckon("opening", way="sticks", first="24", second="20 1/4", overlap="6 11/16")
    assert said["answers"][0]["text"] == "37 9/16″"


def test_the_case_comes_from_the_tape_unless_it_is_typed():
    settings = {"tapes": TAPES}
    values = {"way": "case", "reading": "30", "tape": "Short one"}
    assert inside(settings, **values) == Fraction(265, 8)
    assert inside(settings, **values, case="3 1/4") == Fraction(133, 4)


def test_a_tape_whose_hook_is_bent_is_corrected_first():
    """The hook reaches 1/32 beyond zero, so every reading from it is 1/32 more in truth."""
    said = reckon(
        "opening", {"tapes": TAPES, "mark": "1/32"}, way="case", reading="30", tape="Bent"
    )
    assert said["answers"][0]["text"] == "33 1/32″"
    assert "30 + 1/32 = 30 1/32" in said["working"][0]["text"]


def test_a_bent_tape_is_sure_only_to_within_its_doubt():
    said = reckon("opening", way="bent", reading="37 1/2", doubt="1/8")["by_key"]
    assert [said[key]["text"] for key in ("least", "inside", "most")] == [
        "37 3/8″",
        "37 1/2″",
        "37 5/8″",
    ]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"way": "case", "reading": "30"}, "case", "missing"),
        ({"way": "case", "reading": "30", "tape": "No case"}, "case", "missing"),
        ({"way": "case", "reading": "30", "case": "13"}, "case", "range"),
        ({"way": "block", "reading": "30"}, "block", "missing"),
        ({"way": "bent", "reading": "1/32", "doubt": "1/16"}, "doubt", "impossible"),
        ({"way": "sticks", "first": "3", "second": "4", "overlap": "3"}, "overlap", "impossible"),
        ({"way": "hope"}, "way", "unknown"),
    ],
)
def test_what_does_not_add_up_is_refused(values, field, kind):
    assert errors(ask("opening", {"tapes": TAPES}, **values))[field]["kind"] == kind


@pytest.mark.parametrize("way", ["case", "block", "bent", "sticks"])
@pytest.mark.parametrize("display", ["in", "ft-in", "mm"])
def test_the_drawing_tells_the_opening_and_what_was_measured(way, display):
    values = {
        "reading": "91 11/16",
        "case": "3 1/16",
        "block": "11 15/16",
        "first": "80 1/16",
        "second": "2 3/16",
        "overlap": "1/16",
    }
    said = reckon("opening", {"display": display}, way=way, **values)
    drawn = said["drawing"]
    left, top, right, bottom = drawn["box"]
    points = [point for shape in drawn["shapes"] for point in shape.get("points", [])]
    assert all(left <= x <= right and top <= y <= bottom for x, y in points)
    answers = [shape["text"] for shape in drawn["shapes"] if shape.get("role") == "answer"]
    assert answers == [as_drawn(said["answers"][0])]
    assert said["answers"][0]["text"] in drawn["words"]


@given(lengths, cases, st.fractions(min_value="1/64", max_value="1/2", max_denominator=64))
def test_with_a_clearance_what_goes_in_leads_and_is_that_much_less(reading, beyond, room):
    values = {"way": "case", "reading": f"{reading} in", "case": f"{beyond} in"}
    said = reckon("opening", **values, room=f"{room} in")
    assert said["answers"][0]["key"] == "fits"
    assert exact(said["answers"][0]) == reading + beyond - room
    assert exact(said["by_key"]["inside"]) == reading + beyond


def test_what_goes_in_by_a_bent_tape_goes_into_the_least_that_it_could_be():
    """By hand: 37 1/2 less 1/16 less 1/8 is 37 5/16."""
    said = reckon("opening", way="bent", reading="37 1/2", doubt="1/16", room="1/8")
    assert said["answers"][0]["text"] == "37 5/16″"
    assert said["verdict"] == "Inside 37 1/2″; cut 37 5/16″"


def test_a_clearance_that_leaves_nothing_is_impossible():
    said = ask("opening", way="sticks", first="3", second="3", overlap="2 7/8", room="4")
    assert errors(said)["room"]["kind"] == "impossible"
