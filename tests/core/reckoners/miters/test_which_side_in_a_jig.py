"""A compound cut past the saw says which way saw and blade go, the work square to the fence."""

import re

import pytest
from asking import reckon
from at_the_saw import LAID, UP, blade
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.solid import rotation

SIDES = ("left", "right")
SQUARE = re.compile(
    r"[Ff]or the (?P<end>left|right) end, swing the saw (?P<turn>left|right) and tilt the top "
    r"of the blade (?P<tilt>left|right)"
)
NOT_SO = re.compile(
    r"For the (?P<end>left|right) end the blade would lean (?P<tilt>left|right), which this "
    r"saw doesn’t do"
)
CROWN = {"found": "angle", "measured": "", "left_end": "inside", "right_end": "outside"}


def crown(spring=80, corner=60, **more):
    values = {"spring": str(spring), "left_corner": str(corner), "right_corner": str(corner)}
    return reckon("crown", **(CROWN | values | more))


def past(said):
    (caution,) = [each for each in said["cautions"] if "still tilted" in each]
    return caution


def degrees(said, key):
    return float(said["by_key"][key]["text"].strip("≈ °"))


def ends_cut(said, keys):
    """{end: (the plane told flat, the plane told in the jig)}, both in the piece's own axes; a side
    that the saw does not tilt to is left as (plane, None)."""
    miter, tilt = degrees(said, "miter"), degrees(said, "tilt")
    jigs = {found["end"]: found for found in SQUARE.finditer(past(said))}
    planes = {}
    for end, key in zip(SIDES, keys, strict=True):
        laid = LAID.search(said["by_key"][key]["text"])
        flat = rotation(UP, 0 if laid["edge"] == "top" else 180)
        there = flat.back.direction(blade(laid["turn"], miter, laid["tilt"], tilt))
        planes[end] = (there, None)
        if jig := jigs.get(end):
            # What is kept of the piece runs to the front: a fence is behind it.
            square = rotation(UP, -90 if end == "left" else 90)
            told = blade(jig["turn"], 90 - miter, jig["tilt"], tilt)
            planes[end] = (there, square.back.direction(told))
    return planes


def same_plane(one, other):
    return abs(abs(one @ other) - 1) < 1e-6


@settings(max_examples=40, deadline=None)
@given(
    st.integers(62, 84), st.integers(30, 70), st.sampled_from(["inside", "outside"]), st.booleans()
)
def test_crown_square_to_the_fence_is_cut_in_the_plane_of_the_flat_cut(spring, corner, kind, top):
    ends = {"left_end": kind, "right_end": kind, "measured_on": "top" if top else "bottom"}
    said = crown(spring, corner, **ends)
    if degrees(said, "miter") <= 50.01 or degrees(said, "tilt") > 45:
        return
    for there, jig in ends_cut(said, ("left_flat", "right_flat")).values():
        assert same_plane(there, jig)


@pytest.mark.parametrize("wide", ["top", "bottom"])
def test_a_sloping_box_square_to_the_fence_is_cut_in_the_plane_of_the_flat_cut(wide):
    """Three sides at a slope of 60: arctan (sin 60 x tan 60) = 56.3, arcsin (cos 60 x sin 60)."""
    values = {"sides": "3", "slope": "60", "height": "2", "wide": wide, "size_at": wide}
    said = reckon("sloped_box", **values, size="30", thickness="1/2")
    for there, jig in ends_cut(said, SIDES).values():
        assert same_plane(there, jig)
    for part in said["parts"]:
        for end in SIDES:
            (step,) = [each for each in part["ends"][end]["at_the_saw"] if "jig" in each]
            jig = next(each for each in SQUARE.finditer(past(said)) if each["end"] == end)
            assert step == f"in a jig: miter {jig['turn']} ≈ 33.69°, bevel {jig['tilt']}"


@pytest.mark.parametrize("only", SIDES)
def test_a_saw_that_does_not_tilt_that_way_is_told_to_hold_the_work_at_its_own_slope(only):
    """Held in its place with the blade upright a corner of 76 is turned 52, half of the rest to
    180, and square to the fence 38."""
    said = crown(84, 76, left_end="outside", right_end="outside", tilts=only)
    text = past(said)
    ((end, tilt),) = [found.groups() for found in NOT_SO.finditer(text)]
    assert tilt != only
    planes = ends_cut(said, ("left_flat", "right_flat"))
    assert planes[end][1] is None
    (other,) = set(SIDES) - {end}
    assert same_plane(*planes[other])
    assert re.search(
        r"at its own slope, .* blade upright, and set the saw to a (≈ )?38° miter", text
    )


def test_two_settings_have_their_ends_told_apart():
    said = crown(80, 60, right_corner="55")
    told = [each for each in said["cautions"] if "still tilted" in each]
    assert [SQUARE.findall(each)[0][0] for each in told] == ["left", "right"]


def test_what_is_listed_has_the_same_caution_once():
    text = past(crown())
    assert past(crown(width="4", measured="60")) == text
    assert len(SQUARE.findall(text)) == 2
    assert degrees(crown(), "miter") == 59.62
