"""Drawers put together from their told parts, by independent judges."""

from copy import deepcopy
from fractions import Fraction
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles import random_column
from tests.core.oracles.random_column import check_column, stacked_faults
from tests.core.oracles.random_corners import check_box_joint, check_dovetails
from tests.core.oracles.random_drawer import asked_for, check_drawer, check_told, random_drawer

HAIR = Fraction(1, 8)


@settings(max_examples=300, deadline=None)
@given(st.randoms(use_true_random=False))
def test_told_parts_make_a_drawer_that_goes_in_with_the_room_asked_for(random):
    """No overlap, corners filled, gaps as asked for; the bottom in its grooves at its driest and
    free at its wettest (`drawers_together`: independent code)."""
    assert check_drawer(random) == []


def answered(number):
    """A random drawer that is not refused, and what is said of it."""
    random = Random(f"hair {number}")
    while True:
        asked = random_drawer(random)
        said = asked_for(asked)
        if said["ok"]:
            return asked, said


@pytest.mark.parametrize("number", range(20))
def test_the_judge_sees_a_part_that_is_an_eighth_off(number):
    asked, said = answered(number)
    assert not check_told(asked, said)
    for at, part in enumerate(said["parts"]):
        for measure in ("length", "width"):
            if part["key"] == "bottom":
                continue  # its room is asked for: the next test
            for off in (HAIR, -HAIR):
                other = deepcopy(said)
                told = other["parts"][at][measure]
                told["mark"] = str(Fraction(told["mark"]) + off)
                assert check_told(asked, other), (part["key"], measure, off)


@pytest.mark.parametrize("number", range(20))
def test_the_judge_sees_a_bottom_too_large_or_far_too_small(number):
    asked, said = answered(number)
    at = next(at for at, part in enumerate(said["parts"]) if part["key"] == "bottom")
    for measure in ("length", "width"):
        for off in (HAIR, -2):
            other = deepcopy(said)
            told = other["parts"][at][measure]
            told["mark"] = str(Fraction(told["mark"]) + off)
            assert check_told(asked, other), (measure, off)


@settings(max_examples=200, deadline=None)
@given(st.randoms(use_true_random=False))
def test_pins_of_both_boards_fill_the_corner_of_a_box_joint(random):
    assert check_box_joint(random) == []


@settings(max_examples=200, deadline=None)
@given(st.randoms(use_true_random=False))
def test_tails_and_pins_fill_a_dovetailed_corner(random):
    assert check_dovetails(random) == []


@settings(max_examples=200, deadline=None)
@given(st.randoms(use_true_random=False))
def test_told_fronts_with_what_is_between_them_come_to_the_opening(random):
    assert check_column(random) == []


def test_the_judge_sees_a_front_that_is_a_sixteenth_off():
    seen = 0
    for number in range(30):
        asked = random_column.random_column(Random(f"column {number}"))
        said = random_column.asked_for(asked)
        if not said["ok"]:
            continue
        for item in said["by_key"]["fronts"]["items"]:
            mark = item["mark"]
            item["mark"] = str(Fraction(mark) + Fraction(1, 16))
            assert list(stacked_faults(asked, said["by_key"]))
            item["mark"] = mark
            seen += 1
    assert seen > 30
