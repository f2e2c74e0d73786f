"""Loose tenons and biscuits: by hand, and every slot again as a box in the board."""

from fractions import Fraction
from itertools import pairwise

import pytest
from asking import ask, errors, exact, items, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

KEY = "loose_tenons"
JOINT = {"long": "15 1/4", "thickness": "3/4"}


def test_a_shelf_of_fifteen_and_a_quarter_as_by_hand():
    """15 1/4 − 2 × 2 1/2 = 10 1/4 is more than one step of 8: two of 5 1/8. 15/16 ÷ 2 + 1/32 =
    1/2 deep; (3/4 − 5/32) ÷ 2 = 19/64 at each face; 3/4 − 1/2 = 1/4 under a slot."""
    said = reckon(KEY, **JOINT, behind="3/4")
    assert items(said, "centers") == [Fraction(5, 2), Fraction(61, 8), Fraction(51, 4)]
    assert said["verdict"] == "3 slots 1/2″ deep, centers"
    assert items(said, "at_faces") == [Fraction(19, 64)] * 2
    assert said["by_key"]["behind"]["text"] == "1/4″"


def test_a_short_joint_has_one_slot_in_its_middle_and_says_so():
    said = reckon(KEY, **JOINT | {"long": "6"})
    assert items(said, "centers") == [3]
    assert "twist" in said["cautions"][0]


LENGTHS = st.integers(8, 320).map(lambda number: Fraction(number, 8))


@settings(max_examples=150)
@given(
    LENGTHS,
    st.integers(2, 32).map(lambda number: Fraction(number, 8)),
    st.integers(1, 32).map(lambda number: Fraction(number, 8)),
    st.integers(2, 12),
    st.none() | st.integers(1, 8),
    st.sampled_from([Fraction(1, 8), Fraction(1, 4), Fraction(3, 4)]),
    st.none() | st.sampled_from([Fraction(1, 4), Fraction(3, 4)]),
)
def test_no_slots_are_told_that_meet_or_come_out(long, along, inset, spacing, count, thick, behind):
    typed = {"long": long, "along": along, "inset": inset, "spacing": spacing, "thick": thick}
    values = {key: f"{each} in" for key, each in typed.items()} | {"thickness": "3/4"}
    values |= {"count": str(count)} if count else {}
    values |= {"behind": f"{behind} in"} if behind else {}
    said = ask(KEY, **values)
    if not said["ok"]:
        assert {each["kind"] for each in errors(said).values()} == {"impossible"}
        span = long - 2 * inset
        steps = next(each for each in range(1, 500) if each * spacing >= span)
        crowded = inset < along / 2 or span <= ((count - 1) if count else steps) * along
        assert thick == Fraction(3, 4) or behind == Fraction(1, 4) or along > long or crowded
        return
    boxes = [(center - along / 2, center + along / 2) for center in items(said, "centers")]
    assert all(low >= 0 and high <= long for low, high in boxes)
    assert all(one[1] < two[0] for one, two in pairwise(boxes))
    assert len(boxes) == count if count else True
    starts = [low for low, _ in boxes]
    if not count and len(boxes) > 1:
        assert max(b - a for a, b in pairwise(starts)) <= spacing
    assert thick + sum(items(said, "at_faces")) == Fraction(3, 4)
    depth = exact(said["by_key"]["depth"])
    assert 2 * depth == Fraction(15, 16) + Fraction(1, 16)
    if behind:
        assert exact(said["by_key"]["behind"]) == behind - depth > 0


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"long": "2"}, "along", "impossible"),
        ({"thick": "3/4"}, "thick", "impossible"),
        ({"from_face": "1/16"}, "from_face", "impossible"),
        ({"from_face": "11/16"}, "from_face", "impossible"),
        ({"behind": "1/2"}, "behind", "impossible"),
        ({"inset": "1"}, "inset", "impossible"),
        ({"count": "6"}, "count", "impossible"),
        ({"count": "5"}, "count", None),
        ({"spacing": "2"}, "spacing", "impossible"),
        ({"count": "0"}, "count", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    """Five of 2 3/8 take 4 × 2 3/8 = 9 1/2 of 10 1/4, six 11 7/8."""
    said = ask(KEY, **JOINT | values)
    assert (None if said["ok"] else errors(said)[field]["kind"]) == kind


@pytest.mark.parametrize(
    ("values", "warned"),
    [
        ({"thick": "7/16"}, "more than half of the stock"),
        ({"behind": "9/16"}, "Only 1/16″ of wood is left under a slot"),
    ],
)
def test_what_weakens_the_joint_is_warned_of_first(values, warned):
    assert warned in reckon(KEY, **JOINT | values)["cautions"][0]
    always = reckon(KEY, **JOINT)["cautions"]
    assert len(always) == 2
    assert "maker’s instructions come first" in always[0]


def test_the_slots_are_drawn_in_scale_along_the_joint():
    shapes = reckon(KEY, **JOINT)["drawing"]["shapes"]
    slots = [each["points"] for each in shapes if each.get("role") == "hatch"]
    assert [points[0][0] for points in slots] == [1.3125, 6.4375, 11.5625]
    assert [points[1][0] - points[0][0] for points in slots] == [2.375] * 3
    assert {each["field"] for each in shapes if each.get("field")} == {"long", "inset"}
