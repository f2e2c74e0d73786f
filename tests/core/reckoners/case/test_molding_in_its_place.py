"""A molding goes around a case where the pieces that are told hang on it: boxes without a gap."""

import random
from fractions import Fraction
from itertools import combinations

import pytest
from asking import found

from sawside.geometry.placed import Box, Placed
from sawside.lengths.marks import exact_of
from sawside.lengths.real import nearby
from tests.core.oracles import wrapped_cases

CASES = 120
BASE = {
    "molding": "base",
    "case_width": "36",
    "case_depth": "15",
    "thickness": "3/4",
    "frame": "3/4",
    "frame_left": "1/4",
    "molding_height": "4",
    "bottom_at": "1",
}


def case(width=36, height=30, depth=15):
    """A bare case."""
    return Placed({}, Box(Fraction(0), Fraction(width), Fraction(0), Fraction(height), 0, depth))


def framed(past, thick, width=36):
    """A face frame in front of it."""
    return Placed({}, Box(-past, width + past, Fraction(0), Fraction(30), -thick, 0))


def boxes(values, around=None, frames=()):
    """{key: its one box} of a molding on a case."""
    placed = found("case_molding", values).wraps(around or case(), frames)
    assert all(len(each) == 1 for each in placed.parts.values())
    return {key: each for key, (each,) in placed.parts.items()}


def test_a_base_wraps_the_frame_of_a_free_case():
    """By hand: across a frame 36 1/2 wide from its corners on, 3/4 out; along both sides from the
    frame's face, 3/4 before the case, to the wall 15 behind its front; 1 to 5 above the floor."""
    quarter, thick = Fraction(1, 4), Fraction(3, 4)
    made = boxes(BASE, frames=(framed(quarter, thick),))
    assert made == {
        "front": Box(-1, 37, 1, 5, -2 * thick, -thick),
        "left_side": Box(-1, -quarter, 1, 5, -thick, 15),
        "right_side": Box(36 + quarter, 37, 1, 5, -thick, 15),
    }


def test_returns_end_a_run_between_the_corners():
    """Across the front alone, set back 1 from the corners: 36 − 2 × (1 + 3/4) between them."""
    ends = {"left_end": "return", "right_end": "return", "left_short": "1", "right_short": "1"}
    plain = {"built": "walls", "frame_left": "0"}
    made = boxes(BASE | plain | ends)
    thick = Fraction(3, 4)
    assert {key: box.across for key, box in made.items()} == {
        "left_self_return": (1, 1 + thick),
        "front": (1 + thick, 35 - thick),
        "right_self_return": (35 - thick, 35),
    }
    assert {box.inward for box in made.values()} == {(-thick, 0)}


def test_between_walls_a_crown_stands_before_the_frame_that_is_there():
    """Its drop of 2 from 1/2 above the case, 30 high; its projection of 1 before the frame."""
    crown = {"molding": "crown", "built": "walls", "found": "legs", "case_width": "36"}
    crown |= {"drop": "2", "projection": "1", "rise": "1/2"}
    [front] = boxes(crown, frames=(framed(Fraction(0), Fraction(3, 4)),)).values()
    high = Fraction(61, 2)
    assert front == Box(0, 36, high - 2, high, Fraction(-7, 4), Fraction(-3, 4))
    [front] = boxes(crown | {"case_height": "40"}).values()
    assert front.upward == (Fraction(77, 2), Fraction(81, 2))


def test_a_molding_over_the_width_of_the_frame_begins_at_the_frame():
    over = BASE | {"built": "walls", "case_width": "36 1/2", "frame_left": "0"}
    made = boxes(over, frames=(framed(Fraction(1, 4), Fraction(3, 4)),))
    assert made["front"].across == (Fraction(-1, 4), Fraction("36.25"))


def test_a_molding_for_another_width_goes_around_no_such_case():
    assert found("case_molding", BASE).wraps(case(width=40), ()) is None


def test_what_is_not_told_how_high_it_is_has_no_place():
    low = {key: each for key, each in BASE.items() if key != "molding_height"}
    assert found("case_molding", low).wraps is None
    assert found("case_molding", BASE | {"molding": "strip"}).wraps is None


@pytest.mark.parametrize("seed", range(CASES))
def test_its_ends_are_where_a_molding_that_is_hung_has_them(seed):
    """The lines of `wrapped_cases`, which lies on the frame's face and left edge: each inside edge
    ends where it says, the front piece at a corner with its outside edge; no two boxes share a
    place, every part has one, and a return is as long as its part."""
    chance = random.Random(f"in place {seed}")
    hung = wrapped_cases.Case(chance, "base")
    out = Fraction(3, 4)
    values = hung.values | {"thickness": "3/4", "molding_height": "3"}
    said = found("case_molding", values)
    width, depth, frame, past = (
        Fraction(values[key].removesuffix(" in"))
        for key in ("case_width", "case_depth", "frame", "frame_left")
    )
    right = Fraction(values["frame_right"].removesuffix(" in"))
    front = Placed({}, Box(-past, width + right, Fraction(0), Fraction(9), -frame, 0))
    made = boxes(values, case(width, 30, depth), (front,))
    for one, other in combinations(made.values(), 2):
        apart = zip(spans(one), spans(other), strict=True)
        assert any(a[1] <= b[0] or b[1] <= a[0] for a, b in apart)
    for key, *line in hung.lines():
        wanted = wrapped_cases.places(hung, line, float(out))
        for number, side in enumerate(("left", "right")):
            corner = line[-1][number] == "corner"
            edge = "outside" if corner and key == "front" else "inside"
            x, y, _ = wanted[side, edge]
            there = x - float(past), y - float(frame)
            assert is_an_end(made[key], there, key, number)
    lengths = {part.key: nearby(exact_of(part.length)) for part in said.parts}
    assert set(lengths) == set(made)
    for key, long in lengths.items():
        sides = (made[key].across, made[key].inward)
        assert not key.endswith("self_return") or long in {end - start for start, end in sides}


def spans(box):
    return box.across, box.upward, box.inward


def is_an_end(box, there, key, number):
    """Whether a box ends there along its piece."""
    if key == "front":
        return float(box.across[number]) == pytest.approx(there[0])
    back = (key == "left_side") == (number == 0)
    return float(box.inward[back]) == pytest.approx(there[1])
