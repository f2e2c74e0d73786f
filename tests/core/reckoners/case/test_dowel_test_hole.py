"""A test hole tells which way the drill stop goes, and how far."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon, texts
from hypothesis import given
from hypothesis import strategies as st

from tests.core.reckoners.case import dowels
from tests.core.reckoners.case.dowels import KEY

JOINT = dowels.JOINT | {"dowel_length": "1 1/2"}
"""Holes 1 1/2 ÷ 2 + 1/16 = 13/16 deep."""


@pytest.mark.parametrize(
    ("hole", "off", "move"),
    [
        ("27/32", "1/32″", "Move the stop 1/32″ toward the tip, and drill another."),
        ("3/4", "1/16″", "Move the stop 1/16″ away from the tip, and drill another."),
        ("13/16", "0″", "Leave the stop where it is."),
    ],
)
def test_a_hole_that_is_off_says_how_far_the_stop_moves(hole, off, move):
    """27/32 − 13/16 = 1/32 too deep: the bit sticks out too far (arithmetic)."""
    said = reckon(KEY, **JOINT, test_hole=hole)
    told = texts(said)
    assert (told["off"], told["move"]) == (off, move)
    assert said["answers"][0]["key"] == "centers"


@pytest.mark.parametrize(("hole", "right"), [("21.3", True), ("21.8", True), ("21", False)])
def test_what_is_off_by_less_than_a_stop_can_be_set_is_left(hole, right):
    """40 ÷ 2 + 1.5 = 21.5 mm; 1/64 in is 0.4 mm (common practice, no source)."""
    form = {"rail": "50", "thickness": "18", "stile": "40", "test_hole": hole}
    said = reckon(KEY, {"unit": "mm", "mark": "1 mm"}, **form)
    assert ("test hole right" in said["verdict"]) == right
    assert said["by_key"]["move"]["text"].startswith("Leave the stop") == right


def test_the_verdict_says_what_the_test_hole_wants():
    deep = reckon(KEY, **JOINT, test_hole="27/32")["verdict"]
    assert "test hole 1/32″ too deep: move the stop toward the tip" in deep
    assert "test hole right" in reckon(KEY, **JOINT, test_hole="13/16")["verdict"]
    blank = reckon(KEY, **JOINT)
    assert "test hole" not in blank["verdict"]
    assert not {"off", "move"} & set(blank["by_key"])


@given(st.integers(-40, 40), st.sampled_from(["0", "1 1/8"]))
def test_the_next_hole_is_right_however_the_stop_was_off(bias, guide):
    """A bit that sticks out by the stop less the guide, and by what the stop slipped: moved as
    told, it drills what was asked for."""
    slipped = Fraction(bias, 64)
    asked = reckon(KEY, **JOINT, guide=guide)["by_key"]
    stop = exact(asked["stop"])
    through = sum(map(Fraction, guide.split()))
    hole = stop + slipped - through
    said = reckon(KEY, **JOINT, guide=guide, test_hole=f"{hole} in")["by_key"]
    moved = exact(said["off"]) * (1 if "away from" in said["move"]["text"] else -1)
    assert stop + slipped + moved - through == exact(asked["depth"])


def test_no_hole_is_no_test_hole():
    assert errors(ask(KEY, **JOINT, test_hole="0"))["test_hole"]["kind"] == "range"


def test_the_drawing_says_what_its_wood_is():
    drawn = {each.get("text") for each in reckon(KEY, **JOINT)["drawing"]["shapes"]}
    assert {"13/16″ deep", "15/16″ of wood"} <= drawn
