"""Dowel layout: known joints by hand, and every one drilled again as circles and slots."""

from fractions import Fraction
from itertools import combinations

import pytest
from asking import ask, errors, exact, items, reckon, texts
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.reckoners.case.dowels import JOINT, KEY


@pytest.mark.parametrize(
    ("long", "deep"), [("2", "1 1/16″"), ("1 1/2", "13/16″"), ("1 1/4", "11/16″")]
)
def test_both_holes_are_an_eighth_longer_together_than_the_dowel(long, deep):
    """A 19th-century workshop handbook (Dowelling): the dowel is cut 1/8 in shorter than the two
    hole depths together. A two-inch dowel wants holes of an inch and a sixteenth."""
    said = reckon(KEY, **JOINT | {"stile": "3"}, dowel_length=long)["by_key"]
    assert said["depth"]["text"] == said["stop"]["text"] == deep
    assert 2 * exact(said["depth"]) - exact(said["dowel_length"]) == Fraction(1, 8)


def test_a_rail_of_two_and_a_quarter_has_two_dowels_as_by_hand():
    """A quarter of 2 1/4 is 9/16; the other one is 1 11/16 from the same edge. The hole is
    1 1/2 ÷ 2 + 1/16 = 13/16 deep, the bit sticks out 1 1/8 more through the guide, 1 15/16. It
    leaves 1 3/4 − 13/16 = 15/16, and (3/4 − 3/8) ÷ 2 = 3/16 at each face."""
    dowel = {"diameter": "3/8", "dowel_length": "1 1/2", "guide": "1 1/8"}
    said = reckon(KEY, **JOINT, **dowel)
    assert items(said, "centers") == [Fraction(9, 16), Fraction(27, 16)]
    assert items(said, "mirrored") == [Fraction(27, 16), Fraction(9, 16)]
    told = texts(said)
    assert (told["from_face"], told["depth"], told["stop"]) == ("3/8″", "13/16″", "1 15/16″")
    assert (told["beyond"], told["at_faces"]) == ("15/16″", "3/16″, 3/16″")
    assert (told["apart"], told["at_edge"]) == ("3/4″", "3/8″")
    assert said["verdict"] == "Dowel centers (3/8″ × 1 1/2″; holes 13/16″ deep, stop 1 15/16″)"
    assert "between" not in told


def test_a_metric_joint_is_laid_out_in_millimeters():
    """60 ÷ 4 = 15 and 60 − 15 = 45; 40 ÷ 2 + 1.5 = 21.5; 40 − 21.5 = 18.5; (18 − 8) ÷ 2 = 5."""
    joint = {"rail": "60", "thickness": "18", "dowel_length": "40"}
    told = texts(reckon(KEY, {"unit": "mm"}, **joint))
    assert (told["centers"], told["depth"], told["bit"]) == ("15 mm, 45 mm", "21.5 mm", "8.0 mm")
    assert (told["beyond"], told["at_faces"]) == ("18.5 mm", "5.0 mm, 5.0 mm")


def small(low, high):
    return st.fractions(min_value=low, max_value=high, max_denominator=32)


@settings(max_examples=200)
@given(
    small(1, 12),
    small("1/2", 2),
    small("1", 4),
    st.none() | small("1/8", "1"),
    st.none() | small("1/2", 3),
    st.none() | st.integers(1, 6),
    st.none() | small("1/8", 3),
    st.none() | small("1/8", 2),
    small(0, "1/4"),
    st.booleans(),
)
def test_no_joint_is_told_whose_holes_meet_or_come_out(
    rail, stock, stile, bit, long, count, inset, face, play, both
):
    """Drilled again: circles in the rail's end and slots in the stile, by their own geometry."""
    typed = {
        "rail": rail,
        "thickness": stock,
        "stile": stile,
        "diameter": bit,
        "dowel_length": long,
        "inset": inset,
        "from_face": face,
        "play": play,
    }
    values = {key: f"{each} in" for key, each in typed.items() if each is not None}
    values |= {"both": "yes" if both else "no"} | ({"count": str(count)} if count else {})
    said = ask(KEY, **values)
    if not said["ok"]:
        told = errors(said)
        assert all(each["kind"] == "impossible" for each in told.values()), told
        assert set(told) <= {*typed, "count"}
        return
    centers, mirrored = items(said, "centers"), items(said, "mirrored")
    diameter, depth, across = (exact(said["by_key"][key]) for key in ("bit", "depth", "from_face"))
    assert {one + other for one, other in zip(centers, mirrored, strict=True)} == {rail}
    assert 2 * diameter <= stock
    holes = [(center, across) for center in centers]
    for x, y in holes:
        for near, far in ((x, rail - x), (y, stock - y)):
            assert near > diameter / 2
            assert far > diameter / 2
    for (x, y), (other_x, other_y) in combinations(holes, 2):
        assert (x - other_x) ** 2 + (y - other_y) ** 2 > diameter**2
    slots = [(0, depth), *([(stile - depth, stile)] if both else [])]
    assert all(0 <= low < high < stile or 0 < low < high <= stile for low, high in slots)
    if both:
        assert slots[0][1] < slots[1][0]
        assert exact(said["by_key"]["between"]) == slots[1][0] - slots[0][1]
    assert exact(said["by_key"]["beyond"]) == stile - depth
    assert 2 * depth == exact(said["by_key"]["dowel_length"]) + 2 * play
    drawn = [shape for shape in said["drawing"]["shapes"] if shape["kind"] == "circle"]
    assert len(drawn) == 2 * len(holes)
    places = [shape["center"][1] for shape in drawn]
    assert places == pytest.approx([float(center) for center in centers] * 2, abs=1e-3)


def test_holes_from_both_sides_are_drawn_and_given_places_open_their_fields():
    values = {"inset": "1/2", "from_face": "5/16", "dowel_length": "1 1/2"}
    one, two = (reckon(KEY, **JOINT, **values, both=both)["drawing"] for both in ("no", "yes"))
    hidden = [
        sum(shape.get("role") == "hidden" for shape in drawing["shapes"]) for drawing in (one, two)
    ]
    assert hidden == [6, 12]
    opened = {shape["text"]: shape["field"] for shape in two["shapes"] if shape.get("field")}
    assert opened == {"1/2″": "inset", "5/16″": "from_face"}
