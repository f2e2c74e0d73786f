"""A plan of sheets is sawn as it says, buys no less than its bound, and keeps to every rule."""

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.boards.fills import OutOfStepsError, Steps
from sawside.boards.first_plans import NoRoomError
from sawside.boards.sheets.pattern_bounds import pattern_sums
from sawside.boards.sheets.planner import plan_sheets
from sawside.boards.sheets.recursion import Recursion
from sawside.boards.sheets.request import Panel, Sheet, SheetRequest
from sawside.boards.sheets.search import Search
from sawside.boards.sheets.whole import whole
from tests.core.oracles.sawn_sheets import faults, least

KERFS = st.sampled_from([Fraction(0), Fraction(1, 8), Fraction(3, 32), Fraction(16, 127)])
TRIMS = st.sampled_from([Fraction(0), Fraction(1, 2), Fraction(1, 3)])
BOARD = Sheet(Fraction(96), Fraction(48))


def sides(least_side, most, most_denominator=16):
    """Strategy for sides in inches."""
    return st.fractions(least_side, most, max_denominator=most_denominator)


@st.composite
def panels(draw, most_count=4, matched=True):
    """Panels of every kind, small enough for every sheet and rule."""
    match = draw(st.sampled_from(["", "", "", "doors", "fronts"])) if matched else ""
    return Panel(
        draw(sides(3, 14)),
        draw(sides(2, 9)),
        draw(st.integers(0 if match else 1, 2 if match else most_count)),
        grain=draw(st.sampled_from(["fixed", "free"])),
        match=match,
        place=draw(st.integers(0, 2)),
        laid="end" if match == "fronts" else "side",
    )


@st.composite
def requests(draw, most_pieces, matched=True):
    """Requests of every kind: on hand, several sizes, prices or none, rules."""
    priced = draw(st.booleans())
    kinds = draw(st.lists(st.tuples(sides(70, 99), sides(48, 60)), min_size=1, max_size=3))
    prices = [draw(st.fractions(1, 90, max_denominator=100)) if priced else None for _ in kinds]
    to_buy = tuple(Sheet(*kind, None, price) for kind, price in zip(kinds, prices, strict=True))
    hand = draw(st.lists(st.tuples(sides(3, 60), sides(2, 40)), max_size=3))
    return SheetRequest(
        tuple(draw(st.lists(panels(matched=matched), min_size=1, max_size=most_pieces))),
        tuple(Sheet(*each, 1) for each in hand),
        to_buy,
        draw(KERFS),
        draw(TRIMS),
        draw(st.sampled_from(["either", "rip", "crosscut"])),
        None,
    )


@given(requests(25), st.sampled_from([500, 30_000]))
@settings(max_examples=60, deadline=None)
def test_every_plan_can_be_sawn_wherever_its_steps_end(request, steps):
    assert faults(request, plan_sheets(request, steps)) == []


@given(
    requests(15),
    st.sampled_from([3, 4, None]),
    st.sampled_from([None, (Fraction(110), Fraction(30)), (Fraction(70), Fraction(60))]),
)
@settings(max_examples=60, deadline=None)
def test_stages_and_the_largest_part_to_handle_are_kept_to(request, stages, handled):
    """Matched panels that are trimmed and then cut apart take four levels at most."""
    matched = any(panel.match for panel in request.panels)
    asked = replace(request, stages=4 if matched and stages else stages, handled=handled)
    try:
        found = plan_sheets(asked, 20_000)
    except NoRoomError:
        assert handled
        return
    assert faults(asked, found) == []


@given(requests(15, matched=False))
@settings(max_examples=30, deadline=None)
def test_two_stages_are_kept_to(request):
    asked = replace(request, stages=2)
    found = plan_sheets(asked, 20_000)
    assert faults(asked, found) == []


@given(requests(12))
@settings(max_examples=10, deadline=None)
def test_the_same_request_and_steps_give_the_same_plan(request):
    assert plan_sheets(request, 20_000) == plan_sheets(request, 20_000)


@st.composite
def tiny(draw):
    """A few pieces on few marks, so that every way can be tried."""
    whole = st.integers(2, 9).map(Fraction)
    made = [
        Panel(draw(whole), draw(whole), 1, grain=draw(st.sampled_from(["fixed", "free"])))
        for _ in range(draw(st.integers(1, 5)))
    ]
    kinds = draw(
        st.lists(st.tuples(st.integers(10, 13), st.integers(9, 11)), min_size=1, max_size=2)
    )
    hand = draw(st.lists(st.tuples(st.integers(4, 12), st.integers(4, 9)), max_size=1))
    prices = [Fraction(draw(st.integers(1, 5))) for _ in kinds]
    return SheetRequest(
        tuple(made),
        tuple(Sheet(*map(Fraction, each), 1) for each in hand),
        tuple(Sheet(*map(Fraction, k), None, p) for k, p in zip(kinds, prices, strict=True)),
        Fraction(draw(st.sampled_from([0, 1]))),
    )


@given(tiny())
@settings(max_examples=60, deadline=None)
def test_small_plans_are_what_trying_every_way_finds(request):
    found = plan_sheets(request)
    wanted = least(
        [(p.length, p.width, p.grain == "free") for p in request.panels],
        [(s.length, s.width) for s in request.on_hand],
        [(s.length, s.width) for s in request.to_buy],
        [s.price for s in request.to_buy],
        request.kerf,
    )
    assert faults(request, found) == []
    assert found.bound <= wanted == found.value


def test_prices_prove_what_neither_area_nor_single_sides_do():
    """Worked by hand: of 37 × 17 without a kerf a sheet of 96 × 48 gives 2 × 2, so nine take three
    sheets, though by their area 1.23 would do; every price says so."""
    request = SheetRequest((Panel(Fraction(37), Fraction(17), 9),), (), (BOARD,))
    made = list(pattern_sums(whole(request), (), Steps(10_000)))
    assert made
    assert all(sums.rooms[96, 48] * 9 == sums.pieces * 4 for sums in made)


def test_matched_panels_lie_side_by_side_in_their_order():
    """Worked by hand: 12 + 10 + 8 and two kerfs of 1/8 are 30 1/4 wide; the grain runs through."""
    sizes = ((12, 3), (10, 2), (8, 1))
    doors = tuple(
        Panel(Fraction(30), Fraction(width), match="doors", place=place) for width, place in sizes
    )
    request = SheetRequest(doors, (), (BOARD,), Fraction(1, 8))
    found = plan_sheets(request)
    assert faults(request, found) == []
    cut = [p for c in found.sheets[0].cuts for p in (c.takes, c.leaves) if p]
    order = sorted((p.y, p.width) for p in cut if p.panel is not None)
    assert [width for _, width in order] == [8, 10, 12]
    assert order[-1][0] + 12 - order[0][0] == Fraction(121, 4)


@pytest.mark.timeout(20)
def test_sides_without_a_common_mark_are_planned_exactly_and_soon():
    panels = tuple(
        Panel(Fraction(each, 127) + Fraction(1, 7), Fraction(each, 640) + Fraction(1, 9), 2)
        for each in range(2000, 2012)
    )
    request = SheetRequest(panels, (), (BOARD,), Fraction(1, 11), Fraction(1, 13))
    assert faults(request, plan_sheets(request)) == []
    with pytest.raises(OutOfStepsError):
        Recursion([(7**8, 5**9, 1, None)], (10**8, 10**8), Steps(10**9))


def test_what_no_sheet_holds_is_said():
    with pytest.raises(NoRoomError):
        plan_sheets(SheetRequest((Panel(Fraction(100), Fraction(9)),), (), (BOARD,)))


def test_a_long_list_is_put_in_a_few_ways_before_there_is_an_answer(monkeypatch):
    """So that it is there at once: nine ways of 450 pieces are three times as much work."""
    tried = []
    one_by_one = Search._one_by_one
    monkeypatch.setattr(
        Search, "_one_by_one", lambda self, *how: tried.append(how) or one_by_one(self, *how)
    )
    panels = tuple(Panel(Fraction(10 + n, 2), Fraction(7 + n, 3), 45) for n in range(10))
    found = plan_sheets(SheetRequest(panels, (), (BOARD,)), 0)
    assert len(tried) == 3
    assert found.bound <= found.value
