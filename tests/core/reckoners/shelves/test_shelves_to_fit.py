"""Shelves for things of given heights; the leftover is shared or given to one opening."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.brute_shelves import THICK, built, measured

KEY = "shelf_layout"
heights = st.fractions(min_value=1, max_value=16, max_denominator=16)
things = st.lists(
    st.tuples(
        heights, st.fractions(min_value=0, max_value=3, max_denominator=8), st.integers(1, 3)
    ),
    min_size=1,
    max_size=4,
)
leftovers = st.fractions(min_value=0, max_value=12, max_denominator=16)


def typed(rows):
    return [
        {"height": f"{height} in", "clearance": f"{clearance} in", "openings": str(many)}
        for height, clearance, many in rows
    ]


@settings(max_examples=150)
@given(things, leftovers, st.sampled_from(["shared", "bottom", "top", "numbered"]), st.data())
def test_every_thing_fits_and_the_leftover_goes_where_it_was_sent(rows, left, rest, data):
    """The oracle lays the openings out one by one and adds the case up from the floor."""
    openings = [height + clearance for height, clearance, many in rows for _ in range(many)]
    number = data.draw(st.integers(1, len(openings)))
    shelves = len(openings) - 1
    needed = sum(openings) + shelves * THICK
    if rest == "shared":
        openings = [each + left / len(openings) for each in openings]
    else:
        openings[{"bottom": 0, "top": -1}.get(rest, number - 1)] += left
    said = reckon(
        KEY,
        layout="fit",
        things=typed(rows),
        thickness=f"{THICK} in",
        height=f"{needed + left} in",
        rest=rest,
        opening_number=str(number),
        edge="top",
    )["by_key"]
    edges = built(openings, [THICK] * shelves, Fraction(0), Fraction(0), Fraction(0))
    marks = said["marks"]["items"] if shelves else []
    assert [exact(item) for item in marks] == [
        measured(edges, shelf, "top", "inside_bottom", "floor", "over_top")
        for shelf in edges["shelves"]
    ]
    assert exact(said["left_over"]) == left
    assert exact(said["needed"]) == needed
    assert sum(exact(item) for item in said["openings"]["items"]) + shelves * THICK == needed + left


@settings(max_examples=60)
@given(things)
def test_a_blank_height_is_just_what_the_things_need(rows):
    said = reckon(KEY, layout="fit", things=typed(rows), thickness=f"{THICK} in")["by_key"]
    openings = [height + clearance for height, clearance, many in rows for _ in range(many)]
    assert exact(said["height"]) == sum(openings) + (len(openings) - 1) * THICK
    assert exact(said["left_over"]) == 0


def test_things_that_do_not_fit_say_by_how_much():
    rows = typed([(Fraction(12), Fraction(1, 2), 3)])
    error = errors(ask(KEY, layout="fit", things=rows, height="30", thickness="3/4"))["things"]
    assert error["kind"] == "impossible"
    assert "9″ more" in error["message"]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        (
            {"rest": "numbered", "opening_number": "4", "height": "60"},
            "opening_number",
            "impossible",
        ),
        ({"things": []}, "things", "missing"),
        ({"things": [{"height": "1", "openings": "40"}] * 2}, "things", "impossible"),
        ({"things": [{"clearance": "1"}]}, "things", "missing"),
        ({"things": [{"height": "-3"}]}, "things", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    rows = typed([(Fraction(12), Fraction(1, 2), 3)])
    assert errors(ask(KEY, layout="fit", **({"things": rows} | values)))[field]["kind"] == kind


def test_the_drawing_tells_each_opening():
    rows = typed([(Fraction(12), Fraction(1, 2), 2), (Fraction(9), Fraction(1), 1)])
    said = reckon(KEY, layout="fit", things=rows, height="40", rest="top")
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    assert texts.count("12 1/2″") == 3  # two openings, and the first mark
    assert "13 1/2″" in texts


@pytest.mark.parametrize(
    ("clearance", "mark", "told"), [("0", "25 7/16″", 1), ("1/16", "25 9/16″", 0)]
)
def test_an_opening_that_its_mark_makes_too_small_for_its_thing_is_told_of(clearance, mark, told):
    """Worked by hand: 2 × 12.375 + 0.7 = 25.45 is marked at 25.4375; from 12.375 + 0.7 = 13.075
    that leaves 12.3625 for 12.375. With 1/16 each it is 25.5625 − 13.1375 = 12.425, enough.
    """
    things = [{"height": "12 3/8", "clearance": clearance, "openings": "3"}]
    said = reckon(KEY, layout="fit", height="40", thickness="0.7", rest="top", things=things)
    assert said["by_key"]["marks"]["items"][1]["text"] == mark
    small = [each for each in said["cautions"] if "won’t fit opening 2" in each]
    assert len(small) == told
    assert all("12 3/8″" in each and "12 23/64″" in each for each in small)
