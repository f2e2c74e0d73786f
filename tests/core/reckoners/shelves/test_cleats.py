"""Cleats: lengths, screws no farther apart than asked, and how far a screw reaches."""

from fractions import Fraction
from itertools import pairwise

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

KEY = "cleats"
SHELF = {"inside": "35", "depth": "12"}
depths = st.fractions(min_value=6, max_value=30, max_denominator=16)
thicknesses = st.fractions(min_value="1/2", max_value="3/2", max_denominator=16)
spacings = st.fractions(min_value=1, max_value=12, max_denominator=8)


@given(depths, thicknesses, st.booleans(), spacings)
def test_cleats_fill_the_depth_and_screws_are_close_enough(depth, thickness, back, spacing):
    said = reckon(
        KEY,
        inside="35",
        depth=f"{depth} in",
        thickness=f"{thickness} in",
        back="yes" if back else "no",
        spacing=f"{spacing} in",
        setback="1",
        end="1 1/2",
    )
    long = exact(said["by_key"]["side_cleat"])
    assert long + 1 + (thickness if back else 0) == depth
    places = [exact(item) for item in said["by_key"]["screws"]["items"]]
    assert (places[0], places[-1]) == (Fraction(3, 2), long - Fraction(3, 2))
    gaps = {high - low for low, high in pairwise(places)}
    assert len(gaps) <= 1
    assert all(gap <= spacing for gap in gaps)
    if len(places) > 2:
        assert (places[-1] - places[0]) / (len(places) - 2) > spacing  # one fewer is too few
    assert [part["name"] for part in said["parts"]] == ["Side cleat"] + ["Back cleat"] * back
    assert ("back_cleat" in said["by_key"]) == back


@given(thicknesses, thicknesses, st.fractions(min_value=0, max_value="1/4", max_denominator=16))
def test_the_longest_screw_leaves_just_what_was_asked(cleat, side, sink):
    form = SHELF | {"thickness": f"{cleat} in", "side": f"{side} in", "sink": f"{sink} in"}
    said = reckon(KEY, **form)["by_key"]
    assert exact(said["left"]) == Fraction(1, 8)
    assert exact(said["reach"]) + exact(said["left"]) == side
    longest = exact(said["longest"])
    again = reckon(KEY, **form, screw=f"{longest} in")["by_key"]
    assert exact(again["reach"]) == longest - cleat + sink


def test_where_the_screw_comes_through_nothing_is_told_as_left():
    said = reckon(KEY, **SHELF, screw="1 1/2")["by_key"]
    assert "left" not in said
    assert "left" in reckon(KEY, **SHELF, screw="1 7/16")["by_key"]


@given(
    st.fractions(2, 20, max_denominator=16),
    st.sampled_from([12, 16, 24]),
    st.fractions(20, 90, max_denominator=8),
)
def test_back_screws_are_in_every_stud_that_is_far_enough_from_the_ends(first, apart, inside):
    """The studs are walked along the wall, one after the other."""
    said = ask(
        KEY, inside=f"{inside} in", depth="12", first_stud=f"{first} in", studs=f"{apart} in"
    )
    studs = [first + number * apart for number in range(40)]
    behind = [stud for stud in studs if Fraction(3, 2) <= stud <= inside - Fraction(3, 2)]
    if not behind:
        assert errors(said)["first_stud"]["kind"] == "impossible"
        return
    found = said["by_key"]
    assert [exact(item) for item in found["back_screws"]["items"]] == behind
    one = any("only one stud" in caution for caution in said["cautions"])
    assert one == (len(behind) == 1)


@pytest.mark.parametrize(
    ("first", "sooner"), [("20", "4″"), ("36 1/4", "20 1/4″"), ("17", None), ("5", None)]
)
def test_a_stud_that_may_be_before_the_first_one_is_told_of(first, sooner):
    """At 16 inches apart; one less than 1 1/2 from the end would take no screw."""
    said = reckon(KEY, inside="60", depth="12", first_stud=first)["cautions"]
    told = [each for each in said if "There could be another stud" in each]
    assert len(told) == (sooner is not None)
    assert all(f"{sooner} from the left end" in each for each in told)


def test_without_a_stud_the_back_screws_are_spread_and_it_says_so():
    said = reckon(KEY, **SHELF)
    places = [exact(item) for item in said["by_key"]["back_screws"]["items"]]
    assert (places[0], places[-1]) == (Fraction(3, 2), 35 - Fraction(3, 2))
    assert any("Find the studs" in caution for caution in said["cautions"])


@pytest.mark.parametrize(
    ("display", "longest", "sold", "back"),
    [("in", "1 11/32″", "1 1/4″", "2 1/4″"), ("mm", "≈ 34.1 mm", "30.0 mm", "60.0 mm")],
)
def test_screws_are_offered_as_they_are_sold(display, longest, sold, back):
    """Lengths in which screws are sold: from memory. 3/4 + 23/32 − 1/8 = 1 11/32.

    Through a cleat of 3/4, drywall of 1/2 and an inch into the stud a screw is 2 1/4.
    """
    said = reckon(KEY, {"display": display}, **SHELF, side="23/32")["by_key"]
    assert said["longest"]["text"] == longest.removeprefix("≈ ")
    assert (said["sold"]["text"], said["back_screw"]["text"]) == (sold, back)


@given(thicknesses, thicknesses, st.fractions("1/16", "1/4", max_denominator=16))
def test_a_screw_that_is_sold_stays_clear_and_gets_through_the_cleat(cleat, side, spare):
    form = {"thickness": f"{cleat} in", "side": f"{side} in", "spare": f"{spare} in"}
    said = reckon(KEY, **SHELF | form)["by_key"]
    if "sold" in said:
        assert cleat < exact(said["sold"]) <= exact(said["longest"])
        reach = exact(said["sold_reach"])
        assert reach == exact(said["sold"]) - cleat
        assert 0 < reach <= exact(said["reach"]) <= side - spare
    assert exact(said["back_screw"]) >= cleat + Fraction(1, 2) + 1


def test_how_far_the_screw_reaches_that_can_be_bought_is_told_where_none_is_given():
    """3/4 + 3/4 − 1/8 = 1 3/8, which isn't sold; 1 1/4 is, and 1 1/4 − 3/4 = 1/2."""
    said = reckon(KEY, **SHELF)["by_key"]
    assert (said["sold"]["text"], said["sold_reach"]["text"]) == ("1 1/4″", "1/2″")
    assert "sold_reach" not in reckon(KEY, **SHELF, screw="1 1/8")["by_key"]


def test_a_sold_screw_that_holds_in_less_than_half_of_the_side_is_warned_of():
    """25/32 + 3/4 − 5/16 = 1 7/32; 1 1/8 is sold, and reaches 11/32 into 24/32."""
    said = reckon(KEY, **SHELF, thickness="25/32", side="3/4", spare="5/16")
    assert said["by_key"]["sold_reach"]["text"] == "11/32″"
    assert "less than half" in said["cautions"][0]


def test_what_is_left_before_the_point_is_no_more_in_the_caution_than_in_the_answer():
    """0.75 − (1.445 − 0.75) = 0.055, which is more than 3/64 and less than 1/16."""
    said = reckon(KEY, **SHELF, screw="1.445")
    assert said["by_key"]["left"]["text"] == "3/64″"
    assert said["cautions"][0].startswith("Only ≈ 3/64″ (down) of the side")


@pytest.mark.parametrize(
    ("screw", "warned"),
    [("1 1/2", "comes through"), ("1 7/16", "is left past"), ("1", "less than half")],
)
def test_a_screw_that_is_too_long_or_too_short_is_warned_of_first(screw, warned):
    assert warned in reckon(KEY, **SHELF, screw=screw)["cautions"][0]
    usual = reckon(KEY, **SHELF, screw="1 1/4")["cautions"]
    assert len(usual) == 3  # and that the studs are to be found
    assert any("licensed pro" in caution for caution in usual)


def test_each_shelf_needs_two_side_cleats_and_one_at_the_back():
    parts = reckon(KEY, **SHELF, shelves="3")["parts"]
    assert [(part["name"], part["count"]) for part in parts] == [
        ("Side cleat", 6),
        ("Back cleat", 3),
    ]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"depth": "1 1/2"}, "setback", "impossible"),
        ({"depth": "4"}, "end", "impossible"),
        ({"sink": "3/4"}, "sink", "impossible"),
        ({"screw": "3/4"}, "screw", "impossible"),
        ({"spare": "1"}, "spare", "impossible"),
        ({"spare": "4", "screw": "1 1/4"}, "spare", "impossible"),
        ({"spare": "3/4"}, "spare", "impossible"),
        ({"first_stud": "34"}, "first_stud", "impossible"),
        ({"first_stud": "5", "studs": "0"}, "studs", "range"),
        ({"screw": "1//4"}, "screw", "unreadable"),
        ({"spacing": "0"}, "spacing", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    assert errors(ask(KEY, **(SHELF | values)))[field]["kind"] == kind


def test_the_drawing_shows_every_screw_of_a_side_cleat():
    said = reckon(KEY, **SHELF | {"setback": "3/4"}, spacing="3")
    places = [float(exact(item)) for item in said["by_key"]["screws"]["items"]]
    for drawing, front in ((said["parts"][0]["drawing"], 0), (said["drawing"], 0.75)):
        dots = [shape for shape in drawing["shapes"] if shape.get("role") == "hatch"]
        seen = [sum(x for x, _ in dot["points"]) / 4 - front for dot in dots]
        assert seen == pytest.approx(places, abs=1e-3)
        assert f"{len(dots)} screws along it" in drawing["words"]


def test_the_drawing_shows_the_shelf_over_its_cleats():
    def boxes(**values):
        shapes = reckon(KEY, **SHELF | values)["drawing"]["shapes"]
        return [shape["points"] for shape in shapes if shape.get("role") in ("stock", "waste")]

    shelf, side, back = boxes(back="yes")
    assert shelf[2][1] == side[0][1] == back[0][1]
    assert side[1][0] == back[0][0]
    assert len(boxes(back="no")) == 2


def test_the_longest_screw_is_told_with_the_one_of_its_length_that_is_sold():
    """Worked by hand: 3/4 + 23/32 - 1/8 = 1 11/32; the next screw below that is 1 1/4."""
    said = reckon("cleats", inside="35", depth="14", side="23/32", back="yes")
    assert said["verdict"] == "Side cleats (longest screw 1 11/32″, stock size 1 1/4″)"
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    assert "dashed: back cleat" in texts
