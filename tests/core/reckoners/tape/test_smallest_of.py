"""The smallest of several readings counts, whatever order and unit they were taken in."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st
from projects import acts, begun, change, entry

KEY = "opening"
readings = st.lists(
    st.fractions(min_value=1, max_value=300, max_denominator=64), min_size=1, max_size=20
)


def test_an_alcove_measured_at_three_heights():
    """By hand: 37 1/2 is the smallest, less 1/4 is 37 1/4; 112 11/16 ÷ 3 is 37 9/16."""
    said = reckon(KEY, way="spots", readings=["37 9/16", "37 1/2", "37 5/8"], room="1/4")["by_key"]
    texts = {key: value["text"] for key, value in said.items()}
    assert texts == {
        "fits": "37 1/4″",
        "smallest": "37 1/2″",
        "largest": "37 5/8″",
        "apart": "1/8″",
        "mean": "37 9/16″",
    }


@given(readings, st.fractions(min_value=0, max_value="1/2", max_denominator=32))
def test_what_goes_in_goes_in_everywhere_and_nothing_larger_does(each, room):
    said = reckon(KEY, way="spots", readings=[f"{one} in" for one in each], room=f"{room} in")[
        "by_key"
    ]
    fits = exact(said["fits"])
    left = [one - fits - room for one in each]
    assert all(free >= 0 for free in left)
    assert 0 in left
    assert exact(said["apart"]) == max(one - other for one in each for other in each)
    assert exact(said["mean"]) * len(each) == sum(each)


def test_readings_in_other_units_are_compared_as_lengths():
    said = reckon(KEY, way="spots", readings=["1 m", "39 3/8", "3 ft 3 1/4"])["by_key"]
    assert exact(said["smallest"]) == Fraction(157, 4)
    assert exact(said["largest"]) == Fraction(39375, 1000)


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({}, "readings", "missing"),
        ({"readings": ["37", "x"]}, "readings", "unreadable"),
        ({"readings": ["1/4"], "room": "1"}, "room", "impossible"),
        ({"readings": ["12"] * 21}, "readings", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    assert errors(ask(KEY, way="spots", **values))[field]["kind"] == kind


def test_the_case_follows_whichever_reading_becomes_the_smallest():
    document = acts(
        begun(),
        ("keep_reading", {"name": "Floor", "text": "37 9/16"}),
        ("keep_reading", {"name": "Top", "text": "37 5/8"}),
        (
            "keep_line",
            {
                "name": "Case",
                "reckoner": KEY,
                "values": {"way": "spots", "readings": ["[Floor]", "[Top]"], "room": "1/4"},
            },
        ),
    )
    top = entry(document, "Top")["id"]
    (follow,) = change(document, "correct", id=top, text="37 1/2")["follows"]
    assert (follow["name"], follow["before"]["text"], follow["after"]["text"]) == (
        "Case",
        "37 5/16″",
        "37 1/4″",
    )


def test_the_smallest_reading_and_what_goes_in_are_drawn_as_answers():
    shapes = reckon(KEY, way="spots", readings=["37 9/16", "37 1/2"], room="1/4")["drawing"][
        "shapes"
    ]
    texts = [(shape["role"], shape["text"]) for shape in shapes if shape["kind"] == "dimension"]
    assert texts == [("given", "37 9/16″"), ("answer", "37 1/2″"), ("answer", "37 1/4″")]


def test_readings_of_a_tape_with_an_error_of_its_own_are_corrected():
    """By hand: a hook that adds 1/32 to 37 1/2 is 37 17/32, less 1/4 is 37 9/32."""
    tapes = [{"name": "Bent", "block": "4", "block_reads": "3 31/32"}]
    values = {"readings": ["37 9/16", "37 1/2"], "room": "1/4", "tape": "Bent"}
    said = reckon(KEY, {"tapes": tapes}, way="spots", **values)
    assert exact(said["by_key"]["smallest"]) == Fraction("37.53125")
    assert said["answers"][0]["text"] == "37 9/32″"
    assert len([line for line in said["working"] if line["text"].startswith("Bent reads")]) == 2


def test_one_reading_in_the_list_is_an_opening_that_does_not_vary():
    said = reckon(KEY, way="spots", readings=["37 1/2"], room="1/8")
    assert said["verdict"] == "Cut 37 3/8″"
    assert said["by_key"]["apart"]["text"] == "0″"


def test_the_verdict_says_how_much_an_opening_varies():
    said = reckon(KEY, way="spots", readings=["37 1/2", "37 5/8"], room="1/4")
    assert said["verdict"] == "Cut 37 1/4″; varies 1/8″"


def test_the_verdict_says_that_no_clearance_was_left():
    said = reckon(KEY, way="spots", readings=["37 1/2"])
    assert said["verdict"] == "Cut 37 1/2″, no clearance"


def test_the_verdict_and_the_list_tell_one_difference():
    """By hand: 921 less 919 is 2 mm, 0.0787 of an inch, and 1/16 is the nearest of sixteenths."""
    said = reckon(KEY, way="spots", readings=["919 mm", "921 mm"], room="1/16")
    assert said["verdict"].endswith("varies ≈ 1/16″")
    assert said["by_key"]["apart"]["text"] == "1/16″"
