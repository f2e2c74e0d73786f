"""One shelf lands where it was told to; the others share the room below and above it."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.brute_shelves import THICK, built, measured

KEY = "shelf_layout"
openings = st.fractions(min_value=2, max_value=20, max_denominator=16)
counts = st.integers(0, 5)
edges_ = st.sampled_from(["bottom", "top", "center"])
origins = st.sampled_from(["inside_bottom", "floor", "lower_end", "upper_end"])


@settings(max_examples=150)
@given(openings, openings, counts, counts, edges_, origins, st.booleans())
def test_the_fixed_shelf_lands_and_the_others_are_even(low, high, below, above, edge, origin, rail):
    """The oracle adds the case up from the floor."""
    fixed = Fraction(5, 2) if rail else THICK
    every = [low] * (below + 1) + [high] * (above + 1)
    thicknesses = [THICK] * below + [fixed] + [THICK] * above
    bottom, top, kick = Fraction(3, 4), Fraction(1), Fraction(4)
    edges = built(every, thicknesses, bottom, top, kick)
    marks = [
        measured(edges, shelf, edge, origin, "under_bottom", "under_top")
        for shelf in edges["shelves"]
    ]
    said = reckon(
        KEY,
        layout="fixed",
        height=f"{edges['overall']} in",
        fixed_at=f"{marks[below]} in",
        edge=edge,
        thickness=f"{THICK} in",
        fixed_thickness=f"{fixed} in" if rail else "",
        below=str(below),
        above=str(above),
        case_parts="whole",
        bottom="3/4",
        top="1",
        kick="4",
        origin=origin,
        foot="under_bottom",
        head="under_top",
    )["by_key"]
    assert [exact(item) for item in said["marks"]["items"]] == marks
    assert (exact(said["opening_below"]), exact(said["opening_above"])) == (low, high)
    inside = edges["inside_top"] - edges["inside_bottom"]
    found = [exact(item) for item in said["openings"]["items"]]
    assert sum(found) + sum(thicknesses) == inside


@settings(max_examples=80)
@given(st.fractions(min_value=10, max_value=60, max_denominator=8), openings)
def test_a_blank_count_is_as_many_as_leave_the_least_opening(place, least):
    said = ask(
        KEY,
        layout="fixed",
        height="80",
        fixed_at=f"{place} in",
        thickness=f"{THICK} in",
        above="0",
        least=f"{least} in",
    )
    if least > place:
        assert errors(said)["least"]["kind"] == "impossible"
        return
    shelves = 0
    while (shelves + 1) * THICK + (shelves + 2) * least <= place:
        shelves += 1
    answers = said["by_key"]
    assert answers["below"]["text"] == str(shelves)
    assert exact(answers["opening_below"]) >= least


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"fixed_at": "40"}, "fixed_at", "impossible"),
        ({"fixed_at": "0"}, "fixed_at", "impossible"),
        ({"fixed_at": "39 1/2"}, "fixed_at", "impossible"),
        ({"below": ""}, "least", "conflict"),
        ({"below": "30"}, "below", "impossible"),
        ({"above": "40"}, "above", "impossible"),
        ({"below": "61"}, "below", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    form = {"height": "40", "fixed_at": "20", "below": "1", "above": "1"}
    assert errors(ask(KEY, layout="fixed", **(form | values)))[field]["kind"] == kind


def test_the_drawing_shows_which_shelf_was_fixed():
    said = reckon(KEY, layout="fixed", height="40", fixed_at="20", below="1", above="1")
    (fixed,) = [shape for shape in said["drawing"]["shapes"] if shape.get("role") == "hatch"]
    assert max(y for _, y in fixed["points"]) == -20
    assert "Shelf 2 is the fixed one" in said["drawing"]["words"]


@pytest.mark.parametrize(("below", "fixed"), [("0", 0), ("1", 1), ("3", 3)])
def test_the_list_of_marks_says_which_shelf_is_the_fixed_one(below, fixed):
    said = reckon(KEY, layout="fixed", height="40", fixed_at="20", below=below, above="1")
    items = said["by_key"]["marks"]["items"]
    labels = [f"Shelf {number}" for number in range(1, len(items) + 1)]
    labels[fixed] += ", fixed"
    assert [each["label"] for each in items] == labels
    assert items[fixed]["text"] == "20″"


def test_an_opening_that_the_marks_leave_nothing_of_is_refused():
    case = {"height": "40 1/16", "fixed_at": "13 3/8", "thickness": "23/32", "below": "17"}
    said = ask("shelf_layout", {"mark": "1/2"}, layout="fixed", **case, least="8")
    assert errors(said)["thickness"]["kind"] == "impossible"
    assert "finer mark" in said["error"]["remedy"]
