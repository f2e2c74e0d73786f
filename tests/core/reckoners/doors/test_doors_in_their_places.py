"""Doors stand in their opening where their parts, put together, have them."""

from fractions import Fraction
from itertools import combinations

import pytest
from asking import found
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from sawside.errors import Refusal
from sawside.geometry.placed import Box
from sawside.lengths.marks import exact_of
from tests.core.oracles.framed_doors import insides_of
from tests.core.oracles.random_doors import FRAMED, form, random_doors

LEFT, LOW, FACE = Fraction(5), Fraction(7, 2), Fraction(-3, 4)
"""Where the lower left corner of an opening is, and its front."""
OPENING = {"width": "16", "height": "20"}
DOOR = {"gap": "1/8", "thickness": "3/4", "stile": "2", "panel": "1/4"}


def placed(values):
    """(the boxes of doors in their opening, what was found)."""
    said = found("doors", values)
    wide, high = said.fills.size
    opening = Box(LEFT, LEFT + wide, LOW, LOW + high, FACE, Fraction(0))
    return said.fills.place(opening), said


def ends(box):
    return (box.left - LEFT, box.right - LEFT, box.low - LOW, box.high - LOW)


def test_an_inset_door_stands_flush_in_its_opening():
    """By hand: gaps of 1/8 leave 15 3/4 × 19 3/4; rails of 2 between stiles of 2 are 11 3/4 from
    shoulder to shoulder; the panel of 1/4 is 1/4 behind the face of 3/4."""
    doors, _ = placed(OPENING | DOOR)
    eighth = Fraction(1, 8)
    low, high = eighth, 20 - eighth
    assert [ends(box) for box in doors.parts["stile"]] == [
        (eighth, 2 + eighth, low, high),
        (14 - eighth, 16 - eighth, low, high),
    ]
    across = (2 + eighth, 14 - eighth)
    assert [ends(box) for box in doors.parts["rail"]] == [
        (*across, low, low + 2),
        (*across, high - 2, high),
    ]
    [panel] = doors.parts["panel"]
    assert ends(panel) == (*across, low + 2, high - 2)
    assert panel.inward == (FACE + Fraction(1, 4), FACE + Fraction(1, 2))
    assert {box.inward for box in doors.parts["stile"]} == {(FACE, FACE + Fraction(3, 4))}


def test_two_lapped_doors_stand_before_their_opening():
    """By hand: 16 and a lap of 1/2 at both sides, less 1/8 between them, leave 8 7/16 each."""
    values = {"fit": "overlay", "lap": "1/2", "doors": "2", "between": "1/8", "made": "slab"}
    doors, _ = placed(OPENING | {"thickness": "3/4"} | values)
    half = Fraction(1, 2)
    each = Fraction(135, 16)
    assert [ends(box) for box in doors.parts["slab"]] == [
        (-half, each - half, -half, 20 + half),
        (16 + half - each, 16 + half, -half, 20 + half),
    ]
    assert {box.inward for box in doors.parts["slab"]} == {(FACE - Fraction(3, 4), FACE)}


def test_glass_lies_against_the_front_of_its_rabbet():
    """A rabbet 1/2 from the back of a door of 3/4 leaves 1/4 in front of the glass."""
    glass = {"made": "glass", "panel": "1/8", "deep": "1/2"}
    doors, _ = placed(OPENING | DOOR | glass)
    [pane] = doors.parts["glass"]
    assert pane.inward == (FACE + Fraction(1, 4), FACE + Fraction(3, 8))


@settings(max_examples=150, deadline=None)
@given(st.randoms(use_true_random=False))
def test_each_part_is_where_a_door_that_is_put_together_has_it(random):
    """Gaps are those that are told, panels fill the openings of the oracle's frame, and members
    with panels are the whole of a door: nothing is there twice."""
    asked = random_doors(random) | {"known": "opening"}
    try:
        doors, said = placed(form(asked))
    except Refusal:
        assume(False)
    wide, high = (each.mark for each in (said.answers["width"], said.answers["height"]))
    lefts = sorted({box.left for box in doors.parts["stile" if is_framed(asked) else "slab"]})
    first = lefts[:: len(lefts) // asked["doors"]]
    assert gaps_between(first, wide, said) == told_gaps(said)
    for left in first:
        own = {
            key: [box for box in boxes if left <= box.left < left + wide]
            for key, boxes in doors.parts.items()
        }
        low = min(box.low for boxes in own.values() for box in boxes)
        assert max(box.high for boxes in own.values() for box in boxes) - low == high
        whole(own, wide, high)
        panels = [*own.get("panel", ()), *own.get("glass", ())]
        if is_framed(asked):
            insides = sorted(insides_of(asked, wide, high))
            assert sorted(from_corner(box, left, low) for box in panels) == insides
    assert {key: len(boxes) for key, boxes in doors.parts.items()} == {
        part.key: part.count for part in said.parts
    }


def is_framed(asked):
    return asked["made"] in FRAMED


def from_corner(box, left, low):
    return (box.left - left, box.right - left, box.low - low, box.high - low)


def told_gaps(said):
    """At the left, between doors and at the right; laps below 0."""
    told = dict(said.answers.get("gaps", ()))
    told |= {key: -exact_of(each) for key, each in said.answers.get("laps", ())}
    return [exact_of(each) for key, each in in_order(told) if key not in ("Bottom", "Top")]


def in_order(told):
    places = {"Left": 0, "Right": 99}
    return sorted(told.items(), key=lambda each: places.get(each[0], 1))


def gaps_between(lefts, wide, said):
    edges = [LEFT, *(end for left in lefts for end in (left, left + wide))]
    edges.append(LEFT + said.fills.size[0])
    return [end - start for start, end in zip(edges[::2], edges[1::2], strict=True)]


def whole(own, wide, high):
    """That boxes, seen from the front, lie beside each other and cover all of a door."""
    boxes = [box for several in own.values() for box in several]
    for one, other in combinations(boxes, 2):
        assert (
            one.right <= other.left
            or other.right <= one.left
            or one.high <= other.low
            or other.high <= one.low
        )
    area = sum((box.right - box.left) * (box.high - box.low) for box in boxes)
    assert area == wide * high


@pytest.mark.parametrize("made", ["sheet", "slab"])
def test_an_opening_made_for_a_door_is_none_of_a_case(made):
    assert found("doors", OPENING | {"known": "door", "made": made}).fills is None
