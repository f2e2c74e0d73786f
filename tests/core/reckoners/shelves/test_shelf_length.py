"""Shelf length and width of the case solve for each other, whatever the joint."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

KEY = "shelf_length"
IN_DADOES = {"width_is": "inside", "joint": "dado"}
FIXED = {"width_is": "inside", "joint": "fixed"}
widths = st.fractions(min_value=12, max_value=60, max_denominator=32)
small = st.fractions(min_value="1/8", max_value="3/4", max_denominator=32)


@given(widths, small, small, small, st.sampled_from(["dado", "pins", "fixed"]), st.booleans())
def test_shelf_and_width_solve_for_each_other(inside, left, right, side, joint, outside):
    """The oracle lays the shelf out from the left: dado, clearance, shelf, clearance, dado."""
    play = Fraction(1, 32)
    start, end = {
        "dado": (-left + play, inside + right - play),
        "pins": (play, inside - play),
        "fixed": (Fraction(0), inside),
    }[joint]
    width = inside + 2 * side if outside else inside
    form = {
        "width_is": "outside" if outside else "inside",
        "side_thickness": f"{side} in",
        "joint": joint,
        "left_depth": f"{left} in",
        "right_depth": f"{right} in",
        "play": "1/32",
        "gap": "1/32",
    }
    out = reckon(KEY, width=f"{width} in", **form)
    assert exact(out["by_key"]["shelf"]) == end - start
    assert exact(out["by_key"]["inside"]) == inside
    back = reckon(KEY, shelf=f"{end - start} in", **form)["by_key"]
    assert exact(back["width"]) == width
    assert exact(back["change"]) == end - start - inside


def test_the_part_is_the_shelf_as_often_as_it_is_needed():
    (part,) = reckon(KEY, width="30", **FIXED, depth="11 1/4", how_many="3")["parts"]
    assert (part["count"], part["length"]["text"], part["width"]["text"]) == (3, "30″", "11 1/4″")
    assert part["ends"]["left"]["cut"] == part["ends"]["right"]["cut"] == "square"


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({}, "width", "conflict"),
        ({"width": "30", "shelf": "29"}, "shelf", "conflict"),
        ({"width": "1", "width_is": "outside"}, "width", "impossible"),
        ({"width": "1", "joint": "pins", "gap": "1"}, "width", "impossible"),
        ({"width": "30", "play": "1/2"}, "play", "impossible"),
        ({"shelf": "1/2", "left_depth": "1"}, "shelf", "impossible"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    assert errors(ask(KEY, **IN_DADOES | values))[field]["kind"] == kind


def test_the_drawing_shows_the_shelf_between_the_sides_and_in_their_dadoes():
    def drawn(**values):
        shapes = reckon(KEY, **values)["drawing"]["shapes"]
        texts = [shape["text"] for shape in shapes if shape["kind"] == "dimension"]
        left_side, *_ = (shape["points"] for shape in shapes if shape["kind"] == "polygon")
        return texts, {x for x, _ in left_side}

    texts, faces = drawn(width="60", **FIXED, depth="8")
    assert (texts, len(faces)) == (["inside 60″", "shelf 60″"], 2)
    texts, faces = drawn(width="36 5/8", **IN_DADOES | {"width_is": "outside"})
    assert [text.split()[0] for text in texts] == ["inside", "shelf", "case"]
    assert len(faces) == 3  # outside, inside, and the bottom of the dado


def test_a_long_shelf_is_drawn_with_a_break_and_its_length():
    (part,) = reckon(KEY, width="60", **FIXED, depth="8")["parts"]
    shapes = part["drawing"]["shapes"]
    assert [shape for shape in shapes if shape.get("role") == "break"]
    (dimension,) = [shape for shape in shapes if shape["kind"] == "dimension"]
    assert (dimension["text"], dimension["role"]) == ("60″", "answer")


def test_what_changes_the_length_most_is_asked_and_not_taken_for_granted():
    said = errors(ask(KEY, width="30"))
    assert {field: error["kind"] for field, error in said.items()} == {
        "width_is": "missing",
        "joint": "missing",
    }
