"""A corner that was found with a protractor, a bevel or three lengths is halved for the saw."""

from fractions import Fraction

import mpmath
import pytest
from asking import ask, errors, reckon
from hypothesis import example, given, settings
from hypothesis import strategies as st

legs = st.fractions(min_value=10, max_value=40, max_denominator=32)


def degrees(value):
    return float(value["text"].strip("≈ °"))


@pytest.mark.parametrize(
    ("corner", "setting", "name"),
    [
        ("90", "45°", "Inside"),
        ("135", "22.5°", "Inside"),
        ("270", "45°", "Outside"),
        ("20", "80°", "Inside"),
        ("340", "80°", "Outside"),
    ],
)
def test_a_corner_is_halved_from_square(corner, setting, name):
    """Plane geometry: 90 less half the corner; beyond 180 the wall lies inside the angle."""
    said = reckon("corner_setting", angle=corner)["by_key"]
    assert said["setting"]["text"] == setting
    assert said["corner"]["exact"] == corner
    assert said["way"]["text"].startswith(f"{name} corner")


@pytest.mark.parametrize(
    "values",
    [
        {"angle": "90.5"},
        {"angle": "123.4567"},
        {"found": "lengths", "one_leg": "30", "other_leg": "31", "across": "43 1/2"},
    ],
)
def test_the_miter_is_told_by_one_precision_wherever_it_stands(values):
    """By hand: half of 90.5 from square is 44.75."""
    said = reckon("corner_setting", **values)
    told = said["by_key"]["setting"]["text"]
    assert told == "44.75°" or values.get("angle") != "90.5"
    assert f"cut both pieces at {told}," in said["by_key"]["way"]["text"]
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    assert f"miter {told}" in texts
    assert f"cut both at {told}." in said["drawing"]["words"]


def test_three_four_five_is_square_and_three_equal_lengths_make_60_degrees_exactly():
    """Textbook trigonometry: the sides 3, 4, 5, and an equilateral triangle."""
    square = reckon("corner_setting", found="lengths", one_leg="36", other_leg="48", across="60")
    assert square["by_key"]["between"]["exact"] == "90"
    even = reckon("corner_setting", found="lengths", one_leg="24", other_leg="24", across="24")
    assert even["by_key"]["between"]["exact"] == "60"
    assert even["by_key"]["setting"]["text"] == "60°"


@settings(max_examples=60)
@given(legs, legs, st.integers(min_value=25, max_value=170), st.sampled_from(["1/64", "1/16"]))
@example(Fraction(10), Fraction(10), 170, "1/16")  # The shortest legs of it lie straight.
def test_three_lengths_give_the_corner_and_all_that_the_readings_allow(one, other, turn, off):
    """The law of cosines in another library, and every one of the readings moved by its doubt."""
    a, b, e = float(one), float(other), float(Fraction(off))
    across = round(
        float(mpmath.sqrt(a * a + b * b - 2 * a * b * mpmath.cos(mpmath.radians(turn)))) * 32
    )
    c = across / 32

    def corner(a, b, c):
        cosine = (a * a + b * b - c * c) / (2 * a * b)
        return float(mpmath.degrees(mpmath.acos(min(max(cosine, -1), 1))))

    said = reckon(
        "corner_setting",
        found="lengths",
        one_leg=f"{one} in",
        other_leg=f"{other} in",
        across=f"{across}/32 in",
        length_off=off,
    )["by_key"]
    assert degrees(said["between"]) == pytest.approx(corner(a, b, c), abs=0.0051)
    steps = (-e, -e / 2, 0, e / 2, e)
    moved = [corner(a + x, b + y, c + z) for x in steps for y in steps for z in steps]
    assert degrees(said["most"]) == pytest.approx(90 - min(moved) / 2, abs=0.006)
    assert degrees(said["least"]) == pytest.approx(90 - max(moved) / 2, abs=0.006)


def test_a_bevel_on_a_board_is_read_by_rise_over_run():
    """Textbook trigonometry: equal lengths along and over are 45 degrees, or its rest of 180."""
    values = {"found": "bevel", "along": "8", "square_over": "8"}
    closed = reckon("corner_setting", **values, bevel_opens="closed")["by_key"]
    opened = reckon("corner_setting", **values, bevel_opens="open", corner="outside")["by_key"]
    assert closed["between"]["exact"] == "45"
    assert opened["between"]["exact"] == "135"
    assert opened["corner"]["exact"] == "225"


@pytest.mark.parametrize("opens", ["closed", "open"])
def test_the_doubt_of_a_bevel_holds_what_the_readings_allow(opens):
    said = reckon(
        "corner_setting",
        found="bevel",
        along="10",
        square_over="7",
        length_off="1/16",
        bevel_opens=opens,
    )["by_key"]
    leans = [
        float(mpmath.degrees(mpmath.atan2(7 + y, 10 + x)))
        for x in (-1 / 16, 1 / 16)
        for y in (-1 / 16, 1 / 16)
    ]
    corners = [180 - lean for lean in leans] if opens == "open" else leans
    assert degrees(said["least"]) == pytest.approx(90 - max(corners) / 2, abs=0.006)
    assert degrees(said["most"]) == pytest.approx(90 - min(corners) / 2, abs=0.006)


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"angle": "19"}, "angle", "range"),
        ({"angle": "341"}, "angle", "range"),
        ({"angle": "180"}, "angle", "impossible"),
        (
            {"found": "lengths", "one_leg": "24", "other_leg": "24", "across": "48"},
            "across",
            "impossible",
        ),
        (
            {"found": "lengths", "one_leg": "24", "other_leg": "12", "across": "12"},
            "across",
            "impossible",
        ),
        ({"found": "lengths", "one_leg": "24", "other_leg": "24"}, "across", "missing"),
        ({"found": "bevel", "along": "24", "square_over": "1"}, "square_over", "impossible"),
    ],
)
def test_what_is_no_corner_is_refused_by_its_field(values, field, kind):
    error = errors(ask("corner_setting", **values))[field]
    assert error["kind"] == kind
    assert error["remedy"]


def test_the_drawing_tells_the_corner_the_setting_and_where_the_wall_is():
    outside = reckon("corner_setting", angle="300")["drawing"]
    texts = [shape.get("text") for shape in outside["shapes"]]
    assert {"60°", "miter 60°", "wall"} <= set(texts)
    inside = reckon("corner_setting", angle="120")["drawing"]
    assert "room" in [shape.get("text") for shape in inside["shapes"]]
    left, top, right, bottom = outside["box"]
    assert 0.5 <= (right - left) / (bottom - top) <= 3
