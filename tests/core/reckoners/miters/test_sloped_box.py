"""Sides of a sloping box, cut as told, close as solids; closed forms and degenerate slopes."""

import random
from fractions import Fraction
from math import asin, atan, cos, degrees, radians, sin, tan

import pytest
from asking import as_drawn, ask, errors, exact, reckon
from at_the_saw import UP
from exactly import exactly

from sawside.geometry.compound import lean_of_degrees, miter_and_tilt
from tests.core.oracles.sloping_boxes import CHECKS, cut_sides
from tests.core.oracles.solid import faces_meet, rotation, translation


def box(**more):
    return {"height": "6", "slope": "15", "size": "14", "thickness": "1/2"} | more


@pytest.mark.parametrize("sides", [3, 4, 5, 6, 8, 12, 24])
@pytest.mark.parametrize("slope", [0, 7.5, 15, 30, 45, 70])
def test_settings_are_those_of_the_closed_form(sides, slope):
    """Turned atan(sin A tan(180/n)), tilted asin(cos A sin(180/n)): solid geometry."""
    told = exactly("sloped_box", **box(sides=str(sides), slope=str(slope), size="400 in"))
    turn, lean = radians(180 / sides), radians(slope)
    assert told["miter"] == pytest.approx(degrees(atan(sin(lean) * tan(turn))))
    assert told["tilt"] == pytest.approx(degrees(asin(cos(lean) * sin(turn))))


@pytest.mark.parametrize("sides", [3, 4, 6, 12])
def test_upright_sides_are_those_of_a_plain_frame(sides):
    """180/n: plane geometry."""
    said = reckon("sloped_box", **box(sides=str(sides), slope="0"))["by_key"]
    assert said["miter"]["exact"] == "0"
    assert exact(said["tilt"]) * sides == 180
    assert said["top"]["text"] == said["bottom"]["text"] == "14″"


def test_sides_that_lie_almost_flat_come_near_to_flat_miters():
    told = exactly("sloped_box", **box(slope="85", height="1/4"))
    assert told["miter"] == pytest.approx(45, abs=0.2)
    assert told["tilt"] < 4


def test_a_lean_of_90_degrees_is_a_plain_flat_miter():
    """The law at its end, which no box and no crown reaches: 180/n, and an upright blade."""
    for corner, miter in ((90, 45), (60, 60), (120, 30)):
        assert miter_and_tilt(lean_of_degrees(Fraction(90)), Fraction(corner)) == (miter, 0)


def test_sides_that_reach_as_far_as_they_are_high_are_exact():
    """Worked by hand: at 45 a box 4 high is 8 wider; turned atan(sin 45), tilted asin(1/2) = 30."""
    said = reckon("sloped_box", found="reach", reach="4", height="4", size="20", thickness="1/2")
    by_key = said["by_key"]
    assert by_key["slope"]["exact"] == "45"
    assert by_key["tilt"]["exact"] == "30"
    assert by_key["miter"]["text"] == "≈ 35.26°"
    assert exact(by_key["bottom"]["items"][0]) == 12


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.__name__)
def test_sides_cut_as_told_close_as_solids(check):
    for number in range(60):
        assert check(random.Random(f"{check.__name__} {number}")) == []


def test_a_setting_that_is_a_hundredth_off_does_not_close():
    """The judge is not blind."""
    values = box(height="6 in", size="80 in", thickness="1/2 in", wide="top")
    told, faults = exactly("sloped_box", **values), []
    list(cut_sides(values, told | {"miter": told["miter"] + 0.01}, faults))
    assert faults
    ((_, side),) = cut_sides(values, told | {"tilt": told["tilt"] + 0.01}, [])
    bottom = told["bottom"][0][1] / 2
    after = side.moved(rotation(UP, 90)).moved(translation(bottom, 0, 0))
    assert not faces_meet(side.moved(translation(0, -bottom, 0)), "right", after, "left")


def test_a_blank_is_told_on_the_next_mark_up():
    said = reckon("sloped_box", **box(slope="12", height="7 1/2"))["by_key"]
    assert said["blank_width"]["direction"] in ("exact", "light")
    assert said["blank_width"]["text"] == "7 13/16″"


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"height": ""}, "height", "missing"),
        ({"slope": "90"}, "slope", "range"),
        ({"sides": "2"}, "sides", "range"),
        ({"sides": "6", "joint": "butt"}, "joint", "impossible"),
        ({"sides": "6", "other": "12"}, "other", "impossible"),
        ({"slope": "45", "size": "12"}, "size", "impossible"),
        ({"slope": "45", "size": "20", "other": "8"}, "other", "impossible"),
        ({"slope": "15", "size": "4", "joint": "butt", "thickness": "1"}, "size", "impossible"),
        ({"thickness": "0"}, "thickness", "range"),
        ({"height": "6//2"}, "height", "unreadable"),
    ],
)
def test_bad_input_names_its_field_and_a_remedy(values, field, kind):
    error = errors(ask("sloped_box", **box(**values)))[field]
    assert error["kind"] == kind
    assert error["remedy"].endswith(".")


def test_the_pieces_are_counted():
    for values, counts in (
        ({"sides": "6"}, [6]),
        ({"other": "10"}, [2, 2]),
        ({"joint": "butt"}, [2, 2]),
    ):
        said = reckon("sloped_box", **box(**values))
        assert [part["count"] for part in said["parts"]] == counts


@pytest.mark.parametrize(
    "values",
    [
        {},
        {"slope": "0"},
        {"slope": "80", "height": "1/2"},
        {"wide": "bottom", "joint": "butt"},
        {"sides": "3", "wide": "bottom", "size": "60"},
    ],
)
def test_the_drawing_stays_in_its_box_and_tells_the_edges(values):
    said = reckon("sloped_box", **box(**values))
    for drawing in (said["drawing"], *(part["drawing"] for part in said["parts"])):
        left, top, right, bottom = drawing["box"]
        for shape in drawing["shapes"]:
            for x, y in shape.get("points", []):
                assert left <= x <= right
                assert top <= y <= bottom
    texts = " ".join(shape.get("text", "") for shape in said["drawing"]["shapes"])
    for edge in ("top", "bottom"):
        assert f"{edge} {as_drawn(said['by_key'][edge]['items'][0])}" in texts
