"""Span, thickness, load and edge strip worked out backwards from the sag that is allowed."""

from dataclasses import replace
from fractions import Fraction
from random import Random

import pytest
from asking import ask, errors, exact, inches, reckon
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from sawside.wood.strength.loads import load_of
from sawside.wood.strength.shelf import Shelf, Strip
from tests.core.oracles import loaded_shelf

STEP = Fraction(1, 16)
MOST_SPAN, MOST_LOAD = 240, 10_000
"""What the form takes, in inches and pounds."""
spans = st.fractions(min_value=12, max_value=80, max_denominator=16)
depths = st.fractions(min_value=4, max_value=24, max_denominator=8)
thicknesses = st.fractions(min_value="3/8", max_value=2, max_denominator=16)
pounds = st.integers(min_value=10, max_value=60)
heights = st.fractions(min_value="1/4", max_value=4, max_denominator=16)
MILLION = Fraction(10**6)
EDGES = ("front", "back", "both")
limits = st.sampled_from(["cabinet_test", "casework", "eye"])


@settings(max_examples=40)
@given(spans, depths, thicknesses, pounds)
def test_backwards_finds_the_very_number_that_went_forwards(span, depth, thickness, load):
    shelf = Shelf(MILLION, thickness, depth, span, load_of(load, "lb/ft"))
    sag = shelf.sag
    for what, wrong, low, high in (
        ("span", Fraction(9), Fraction(1), Fraction(240)),
        ("thickness", Fraction(5), Fraction(1, 16), Fraction(6)),
    ):
        blank = shelf.changed(**{what: wrong})
        found = blank.solved(what, lambda each: each.sag - sag, low, high)
        assert found == getattr(shelf, what)
    one = replace(shelf, load=load_of(Fraction(1), "lb"))
    assert sag / one.sag == shelf.pounds


@settings(max_examples=15)
@given(spans, depths, thicknesses, pounds, heights, st.booleans(), st.sampled_from(EDGES))
def test_backwards_through_a_plate_comes_as_near_as_its_floats(
    span, depth, thickness, load, height, under, edges
):
    strip = Strip(2 * MILLION, Fraction(3, 4), height, edges, under)
    shelf = Shelf(MILLION, thickness, depth, span, load_of(load, "lb/ft"), strip=strip)
    sag = shelf.sag
    for what, wrong, low, high in (
        ("span", Fraction(9), Fraction(1), Fraction(240)),
        ("thickness", Fraction(5), Fraction(1, 16), Fraction(6)),
    ):
        blank = shelf.changed(**{what: wrong})
        found = blank.solved(what, lambda each: each.sag - sag, low, high)
        assert abs(found - getattr(shelf, what)) < Fraction(1, 10**5)
    one = replace(shelf, load=load_of(Fraction(1), "lb"))
    assert abs(sag / one.sag / shelf.pounds - 1) < Fraction(1, 10**9)


def forwards(**case):
    return reckon("shelf_strength", **case)["by_key"]


def excess(limit, span, said):
    most = {"cabinet_test": min(span / 192, Fraction(1, 4)), "casework": span / 144}
    return exact(said["sag_after_years"]) - most.get(limit, span / 600)


@settings(max_examples=30)
@given(depths, thicknesses, pounds, limits)
def test_the_longest_span_keeps_the_limit_and_the_next_mark_does_not(depth, thickness, load, limit):
    case = {
        "depth": inches(depth),
        "thickness": inches(thickness),
        "material": "plywood",
        "load": "own_lb_ft",
        "own_lb_ft": str(load),
        "limit": limit,
    }
    said = ask("shelf_strength", solve="span", **case)
    if not said["ok"]:
        assert errors(said)["limit"]["kind"] == "impossible"
        assert excess(limit, MOST_SPAN, forwards(span=inches(MOST_SPAN), **case)) <= 0
        return
    assert said["verdict"].startswith("Span up to ")
    span = Fraction(said["answers"][0]["mark"])
    assert excess(limit, span, forwards(span=inches(span), **case)) <= 0
    longer = span + STEP
    if longer <= MOST_SPAN:
        assert excess(limit, longer, forwards(span=inches(longer), **case)) > 0


@settings(max_examples=30)
@given(spans, depths, pounds, limits, st.sampled_from(["resting", "fixed", "overhanging"]))
def test_the_thinnest_board_keeps_the_limit_and_the_mark_before_does_not(
    span, depth, load, limit, supports
):
    case = {
        "span": inches(span),
        "depth": inches(depth),
        "material": "oak_white",
        "load": "own_lb_ft",
        "own_lb_ft": str(load),
        "limit": limit,
        "supports": supports,
        "overhang": inches(span / 8),
    }
    found = reckon("shelf_strength", solve="thickness", **case)["by_key"]
    thickness = Fraction(found["thickness"]["mark"])
    said = forwards(thickness=inches(thickness), **case)
    assert excess(limit, span, said) <= 0
    assert found["sag"]["exact"] == said["sag"]["exact"]
    if thickness > STEP:
        thinner = forwards(thickness=inches(thickness - STEP), **case)
        assert excess(limit, span, thinner) > 0


@settings(max_examples=30)
@given(spans, depths, thicknesses, limits, st.sampled_from(["even", "middle", "quarters"]))
def test_the_heaviest_load_keeps_the_limit_and_a_tenth_more_does_not(
    span, depth, thickness, limit, spread
):
    case = {
        "span": inches(span),
        "depth": inches(depth),
        "thickness": inches(thickness),
        "material": "oak_white",
        "limit": limit,
        "spread": spread,
    }
    said = ask("shelf_strength", solve="load", **case)
    heaviest = 0  # refused: not even a tenth of a pound may stand on it
    if said["ok"]:
        text = said["answers"][0]["text"]
        heaviest = Fraction(text.split(" lb")[0].replace(",", ""))
        if heaviest <= MOST_LOAD:
            assert excess(limit, span, forwards(load="own_lb", own_lb=str(heaviest), **case)) <= 0
    if heaviest + Fraction(1, 10) <= MOST_LOAD:
        more = forwards(load="own_lb", own_lb=str(heaviest + Fraction(1, 10)), **case)
        assert excess(limit, span, more) > 0


@settings(max_examples=30)
@given(
    spans,
    depths,
    pounds,
    limits,
    st.sampled_from(["edge", "under"]),
    st.sampled_from(EDGES),
    st.sampled_from(["none", "back"]),
)
def test_the_edge_strip_keeps_the_limit_and_the_mark_before_does_not(
    span, depth, load, limit, place, edges, cleat
):
    assume((edges, cleat) != ("back", "back"))
    case = {
        "span": inches(span),
        "depth": inches(depth),
        "thickness": "23/32 in",
        "material": "mdf",
        "load": "own_lb_ft",
        "own_lb_ft": str(load),
        "limit": limit,
        "strip": edges,
        "strip_place": place,
        "strip_material": "maple_red",
        "cleat": cleat,
    }
    said = ask("shelf_strength", solve="strip", **case)
    if not said["ok"]:
        (field,) = errors(said)
        assert field == ("strip" if edges != "both" and cleat == "none" else "strip_thickness")
        assert excess(limit, span, forwards(strip_height="12 in", **case)) > 0
        return
    height = Fraction(said["answers"][0]["mark"])
    if height == 0:
        assert excess(limit, span, forwards(**case | {"strip": "none"})) <= 0
        return
    assert excess(limit, span, forwards(strip_height=inches(height), **case)) <= 0
    if height > STEP:
        lower = forwards(strip_height=inches(height - STEP), **case)
        assert excess(limit, span, lower) > 0


@pytest.mark.parametrize("number", range(60))
def test_what_is_found_backwards_keeps_the_limit_of_an_independent_beam(number):
    """Finite elements: span, thickness and load, every support and spread."""
    assert loaded_shelf.solved(Random(f"limit {number}")) == []


def test_a_span_that_a_person_used_comes_back_as_typed():
    """Forwards to a sag that is written out, back to the span that it came from."""
    case = {
        "depth": "12",
        "thickness": "1",
        "material": "own",
        "own_stiffness": "1.2",
        "load": "own_lb",
        "own_lb": "64",
        "creep": "own",
        "own_creep": "1",
    }
    sag = exact(forwards(span="40", **case)["sag"])
    assert str(sag).count("/") == 1
    back = reckon("shelf_strength", solve="span", limit="own", own_limit=str(sag), **case)
    assert back["by_key"]["span"]["exact"] == "40"


def test_a_shelf_that_needs_no_strip_is_told_so():
    case = {
        "span": "20",
        "depth": "12",
        "thickness": "3/4",
        "material": "oak_white",
        "load": "compact_discs",
        "strip": "front",
        "strip_material": "maple_red",
    }
    said = reckon("shelf_strength", solve="strip", **case)
    assert said["verdict"].startswith("No edging needed: ")
    assert said["by_key"]["strip_height"]["text"] == "0″"
    assert "no edging needed" in said["working"][0]["text"]


HEAVY = {"load": "own_lb", "own_lb": "9000", "material": "mdf", "depth": "12"}


@pytest.mark.parametrize(
    ("solve", "values", "field"),
    [
        ("span", HEAVY | {"thickness": "1/16", "limit": "own", "own_limit": "1/64"}, "load"),
        (
            "span",
            HEAVY | {"thickness": "6", "own_lb": "0.01", "material": "own", "own_stiffness": "40"},
            "limit",
        ),
        ("thickness", HEAVY | {"span": "20 ft"}, "span"),
        ("strip", HEAVY | {"span": "20 ft", "thickness": "1/4", "strip": "front"}, "strip"),
        (
            "strip",
            HEAVY | {"span": "20 ft", "thickness": "1/4", "strip": "both"},
            "strip_thickness",
        ),
        ("load", {"material": "mdf", "depth": "1/2", "thickness": "1/16", "span": "20 ft"}, "span"),
    ],
)
def test_what_no_number_can_do_is_told(solve, values, field):
    said = errors(ask("shelf_strength", solve=solve, **values))
    assert said[field]["kind"] == "impossible"
    assert said[field]["remedy"].endswith(".")


def test_a_strip_where_the_cleat_is_does_nothing():
    values = {
        "span": "40",
        "depth": "12",
        "thickness": "3/4",
        "material": "mdf",
        "load": "books",
        "strip": "back",
        "cleat": "back",
    }
    assert errors(ask("shelf_strength", solve="strip", **values))["strip"]["kind"] == "conflict"


@pytest.mark.parametrize("solve", ["load", "span", "thickness"])
def test_no_load_span_or_board_is_named_that_breaks_before_it_sags_so_far(solve):
    """By hand: a span of 60, 3/4 thick, bends to 12 inches at some 14,800 psi (beam theory);
    eastern white pine breaks at about 8,600 (Wood Handbook, Table 5-3b)."""
    values = {"depth": "12", "material": "pine_eastern_white", "limit": "own", "own_limit": "12"}
    heavy = {"load": "own_lb_ft", "own_lb_ft": "444"} if solve != "load" else {}
    sizes = {"span": "60", "thickness": "3/4", "judged": "once"}
    error = errors(ask("shelf_strength", solve=solve, **values, **heavy, **sizes))["own_limit"]
    assert "could break" in error["message"]
    assert error["remedy"] == "Use a smaller sag limit."
