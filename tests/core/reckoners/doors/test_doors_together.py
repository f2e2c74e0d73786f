"""Doors put together from their cut list are what was asked for, all year."""

from copy import deepcopy
from fractions import Fraction
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.assembled_doors import STEPS, check_doors, check_told, told
from tests.core.oracles.random_doors import random_doors

HAIR = Fraction(1, 10_000)


@settings(max_examples=300, deadline=None)
@given(st.randoms(use_true_random=False))
def test_parts_make_doors_that_fill_their_opening_but_for_the_gaps(random):
    """The solids, joints and places are those of `assembled_doors`: independent code."""
    assert check_doors(random) == []


def answered(number):
    """A random form that is answered, and the answer."""
    random = Random(f"hair {number}")
    while True:
        asked = random_doors(random)
        said, _ = told(asked, "1/64")
        if said is not None:
            return asked, said


def test_the_judge_sees_a_part_that_is_a_hair_off():
    """Length and width of every part, either way."""
    seen = 0
    for number in range(40):
        asked, said = answered(number)
        assert not list(check_told(asked, said, STEPS["1/64"]))
        for at, part in enumerate(said["parts"]):
            for measure in ("length", "width"):
                for hair in (HAIR, -HAIR):
                    off = deepcopy(said)
                    if part["key"] in ("panel", "glass"):
                        hair *= 400  # past a mark: the judge lets a panel be a mark small
                    changed = Fraction(part[measure]["exact"]) + hair
                    told_as = Fraction(part[measure]["mark"]) + hair
                    off["parts"][at][measure] |= {"exact": str(changed), "mark": str(told_as)}
                    if measure == "length" and "long_side" in part:
                        off["parts"][at]["long_side"] = off["parts"][at][measure]
                    assert list(check_told(asked, off, STEPS["1/64"])), (number, part["key"])
                    seen += 1
    assert seen > 300


def test_the_judge_sees_a_gap_that_is_a_hair_off():
    seen = 0
    for number in range(20):
        asked, said = answered(number)
        for at, answer in enumerate(said["answers"]):
            if answer["key"] in ("gaps", "laps"):
                off = deepcopy(said)
                item = off["answers"][at]["items"][0]
                item["exact"] = str(Fraction(item["exact"]) + HAIR)
                assert list(check_told(asked, off, STEPS["1/64"]))
                seen += 1
    assert seen >= 20


def test_few_random_doors_are_refused():
    refused = sum(
        told(random_doors(Random(f"refused {number}")), "1/16")[0] is None for number in range(200)
    )
    assert refused < 40
