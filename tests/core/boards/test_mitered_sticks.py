"""Mitered pieces go in as they are laid: cut again as polygons, with the dust of each cut."""

from fractions import Fraction
from itertools import permutations, product
from math import cos, radians, tan

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.boards.planner import plan
from sawside.boards.request import Piece, Request, Stock
from tests.core.oracles.slanted_sticks import common, faults, longest_frame

KERF, WIDTH, STICK = Fraction(1, 8), Fraction(5, 2), Fraction(96)
ANGLES = st.sampled_from([0, 45, -45, Fraction(45, 2), Fraction(-45, 2), 30, Fraction(135, 2)])
STRETCHES = st.tuples(st.integers(0, 80), st.integers(1, 6)).map(lambda at: (at[0], sum(at)))


@st.composite
def requests(draw, most_pieces, most_count=3):
    """Pieces mitered any way, on sticks with and without bad wood."""
    width = draw(st.fractions(1, 4, max_denominator=8))
    lengths = st.fractions(22, 45, max_denominator=16)
    piece = st.builds(Piece, lengths, st.integers(1, most_count), st.just(""), ANGLES, ANGLES)
    pieces = draw(st.lists(piece, min_size=1, max_size=most_pieces))
    hand = draw(st.lists(st.tuples(st.integers(40, 90), st.lists(STRETCHES, max_size=2))))[:2]
    return Request(
        tuple(pieces),
        tuple(Stock(Fraction(length), 1, None, tuple(bad)) for length, bad in hand),
        (Stock(STICK), Stock(Fraction(120))),
        draw(st.sampled_from([Fraction(0), KERF])),
        draw(st.sampled_from([Fraction(0), Fraction(1, 2)])),
        width,
        draw(st.booleans()),
    )


def sides(length, count, left=45, right=45, **more):
    """A request for so many pieces alike out of one length on sale."""
    pieces = (Piece(Fraction(length), count, "", Fraction(left), Fraction(right)),)
    return Request(pieces, (), (Stock(STICK),), KERF, Fraction(0), WIDTH, **more)


def test_the_checker_finds_what_overlaps():
    square = [(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0)]
    slanted = [(1.0, 0.0), (3.0, 0.0), (5.0, 2.0), (3.0, 2.0)]
    assert common(square, slanted) == pytest.approx(0.5)
    assert common(square, [(x + 2, y) for x, y in square]) == 0


@given(requests(6))
@settings(max_examples=60, deadline=None)
def test_what_is_planned_goes_in_as_polygons_clear_of_every_cut_and_of_bad_wood(request):
    found = plan(request, 20_000)
    assert faults(request, found) == []
    assert found.bound <= found.value
    cut = [place for stick in found.sticks for place in stick.pieces]
    assert sorted(cut) == [i for i, piece in enumerate(request.pieces) for _ in range(piece.count)]


@given(requests(3, most_count=1))
@settings(max_examples=40, deadline=None)
def test_no_plan_of_a_few_mitered_pieces_is_better_than_its_bound(request):
    """One stick is enough where some order and attitude of all pieces goes into it."""
    found = plan(Request(**_fields(request) | {"on_hand": ()}))
    one_will_do = _least_way(request) <= 120 - 2 * float(request.trim)
    if one_will_do:
        assert found.bound <= 1
    if found.value == 1:
        assert one_will_do


def _fields(request):
    return {name: getattr(request, name) for name in Request.__dataclass_fields__}


def _least_way(request):
    """The shortest stretch of stick that all pieces go into, by trying every way to lay them."""
    width, kerf = float(request.width), float(request.kerf)
    best = float("inf")
    for order in permutations(request.pieces):
        for turned in product(range(4 if request.turning else 1), repeat=len(order)):
            at, before, start = 0.0, None, 0.0
            for piece, turn in zip(order, turned, strict=True):
                near, left, right = _lying(piece, turn, width)
                if before is None:
                    at = max(0.0, -left * width)
                else:
                    steep = max((1 + slope * slope) ** 0.5 for slope in (before, left))
                    at = start + max(0.0, (before - left) * width) + kerf * steep
                start, before = at + near, right
            best = min(best, start + max(0.0, before * width))
    return best - 1e-9


def _lying(piece, turn, width):
    """(near edge, slope of the left cut, of the right one): turn 1 is end for end, 2 face down."""
    left, right = tan(radians(piece.left)), -tan(radians(piece.right))
    if turn & 1:
        left, right = right, left
    if turn & 2:
        left, right = -left, -right
    return float(piece.length) - max(0.0, (right - left) * width), left, right


def test_sides_of_a_frame_are_nested_head_to_tail():
    """Worked by hand, as parallelograms of 45 degrees: four of 24 take 4 × 21 1/2 along their
    middle, 3 × 1/8 × √2 of kerf and 2 1/2 for the two ends: 89.03 of 96. Side by side without
    turning they take 4 × 24 and three kerfs, more than a stick."""
    found = plan(sides(24, 4))
    assert faults(sides(24, 4), found) == []
    assert (found.value, found.proved) == (1, True)
    (section,) = found.sticks[0].sections
    end = max(section.laid[-1].near[1], section.laid[-1].far[1])
    assert float(end) == pytest.approx(4 * 21.5 + 3 * 0.125 * 2**0.5 + 2.5, abs=0.004)
    assert plan(sides(24, 4, turning=False)).value == 2


@pytest.mark.parametrize("count", [2, 3, 4, 5])
def test_as_many_as_go_in_head_to_tail_are_cut_from_one_stick_and_no_longer_ones(count):
    most = longest_frame(2.5, 0.125, 96, count)
    fits = Fraction(int(most * 64), 64)
    assert plan(sides(fits, count)).value == 1
    longer = plan(sides(fits + Fraction(1, 64), count))
    assert (longer.value, longer.proved) == (2, True)


def test_molding_of_a_frame_is_cut_end_to_end_in_one_attitude():
    """Worked by hand: no cut is shared, so four take 4 × 23 3/4 and 3 × 1/8 × √2 of kerf: 95.53."""
    request = sides(Fraction(95, 4), 4, turning=False)
    found = plan(request)
    assert faults(request, found) == []
    assert (found.value, found.proved) == (1, True)
    near = [laid.near[1] - laid.near[0] for laid in found.sticks[0].sections[0].laid]
    assert near == [Fraction(95, 4)] * 4


def test_parallel_cuts_are_shared_without_turning():
    """Worked by hand: four of 23 edges and 3 × 1/8 × √2 of kerf and 2 1/2 for the slant: 95.03."""
    request = sides(23, 4, 45, -45, turning=False)
    found = plan(request)
    assert faults(request, found) == []
    assert (found.value, found.proved) == (1, True)


def test_the_kerf_of_a_slanting_cut_is_counted_along_the_edge():
    """Worked by hand: 1/8 ÷ cos 45° is 0.1768. So five pieces that fill a stick with four such cuts
    go into it, and five that would fill it with four of 1/8 do not."""
    cut = 0.125 / cos(radians(45))
    middle = (96 - 2.5 - 4 * cut) / 5
    length = Fraction(int((middle + 2.5) * 128), 128)
    assert plan(sides(length, 5)).value == 1
    square_kerf = (96 - 2.5 - 4 * 0.125) / 5 + 2.5
    assert plan(sides(Fraction(int(square_kerf * 128), 128), 5)).value == 2


def test_an_end_with_a_miter_meets_another_one_and_square_ends_meet_square_ones():
    """Worked by hand: two of 49 with one miter of 45 degrees each, miter to miter: 49 + 49 − 2 1/2
    + 1/8 × √2 = 95.68 of 96; square end to miter they take 98."""
    request = sides(49, 2, 0, 45)
    found = plan(request)
    assert faults(request, found) == []
    assert (found.value, found.proved) == (1, True)
