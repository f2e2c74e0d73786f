"""A piece with mitered ends is as long as the one side that is known makes it."""

from fractions import Fraction

import mpmath
import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given
from hypothesis import strategies as st

from sawside.reckoners import RECKONERS

widths = st.fractions(min_value="1/8", max_value=20, max_denominator=64)
knowns = st.fractions(min_value=41, max_value=400, max_denominator=64)


def rail(**more):
    return {"known": "31 5/8", "known_face": "inside", "width": "2 1/4"} | more


def test_two_45_degree_ends_make_the_long_side_longer_by_two_widths():
    """Common practice, no source: at 45 degrees a piece grows by its width per mitered end."""
    said = reckon("mitered_length", **rail(left_end="45", right_end="45"))
    assert said["answers"][0]["text"] == "36 1/8″"
    assert said["by_key"]["short_side"]["text"] == "31 5/8″"
    assert "31 5/8 + 2 1/4 + 2 1/4 = 36 1/8" in said["working"][-1]["text"]
    assert said["tape"]["at"] == 36.125


@pytest.mark.parametrize(
    ("left", "right", "long_side"),
    [("square", "square", "31 5/8″"), ("45", "square", "33 7/8″"), ("square", "45", "33 7/8″")],
)
def test_a_square_end_adds_nothing(left, right, long_side):
    said = reckon("mitered_length", **rail(left_end=left, right_end=right))
    assert said["answers"][0]["text"] == long_side


def test_a_piece_square_at_both_ends_has_no_long_or_short_point():
    said = reckon("mitered_length", **rail(left_end="square", right_end="square"))
    assert said["verdict"] == "Length of both edges"


@given(knowns, widths)
def test_inside_and_outside_are_each_others_inverse(known, width):
    out = reckon("mitered_length", known=f"{known} in", width=f"{width} in", known_face="inside")
    long_side = exact(out["by_key"]["long_side"])
    back = reckon(
        "mitered_length", known=f"{long_side} in", width=f"{width} in", known_face="outside"
    )
    assert exact(back["by_key"]["short_side"]) == known
    assert long_side == known + 2 * width


@given(widths, st.fractions(min_value=1, max_value=80, max_denominator=4).filter(lambda a: a != 45))
def test_another_angle_adds_the_width_times_its_tangent(width, degrees):
    said = reckon(
        "mitered_length",
        {"mark": "1/64"},
        known="400",
        width=f"{width}",
        left_end="other",
        left_angle=f"{degrees}",
        right_end="square",
    )
    adds = said["by_key"]["left_allowance"]
    with mpmath.workdps(50):
        turn = mpmath.mpf(degrees.numerator) / degrees.denominator * mpmath.pi / 180
        exactly = mpmath.mpf(width.numerator) / width.denominator * mpmath.tan(turn)
        assert abs(exactly - mpmath.mpf(adds["decimals"].rstrip("…"))) < 1e-6
        mark = Fraction(adds["mark"])
        assert abs(exactly - mpmath.mpf(mark.numerator) / mark.denominator) <= mpmath.mpf(1) / 128
    assert adds["rational"] is False
    assert adds["exact"] is None
    assert said["answers"][0]["rational"] is False


def test_another_angle_of_45_is_the_45_degree_miter():
    typed = reckon("mitered_length", **rail(left_end="other", left_angle="45", right_end="45"))
    chosen = reckon("mitered_length", **rail(left_end="45", right_end="45"))
    assert typed["answers"] == chosen["answers"]


def test_the_saw_is_set_from_square_and_the_corner_is_the_rest_of_90():
    said = reckon("mitered_length", **rail(left_end="other", left_angle="22 1/2"))["by_key"]
    assert (said["left_setting"]["text"], said["left_corner"]["text"]) == ("22.5°", "67.5°")
    assert (said["right_setting"]["text"], said["right_corner"]["text"]) == ("45°", "45°")


def test_ends_that_meet_are_impossible_and_say_what_to_change():
    said = ask("mitered_length", known="4 1/2", known_face="outside", width="2 1/4")
    error = errors(said)["known"]
    assert error["kind"] == "impossible"
    assert "4 1/2″" in error["message"]
    assert error["remedy"]


def test_every_bad_field_is_told_of_its_own_error():
    said = ask(
        "mitered_length", known="31//8", width="", left_end="other", left_angle="95", right_end="x"
    )
    found = {field: error["kind"] for field, error in errors(said).items()}
    assert found == {
        "known": "unreadable",
        "width": "missing",
        "left_angle": "range",
        "right_end": "unknown",
    }
    assert said["error"]["at"] == 3


def test_an_angle_that_is_not_shown_is_not_read():
    said = reckon("mitered_length", **rail(left_end="square", left_angle="rubbish"))
    assert said["by_key"]["left_setting"]["text"] == "0°"
    assert "left_angle" not in said["echoes"]


def test_a_short_piece_brings_the_caution_for_short_pieces():
    short = reckon("mitered_length", known="7 15/16", width="1")["cautions"]
    longer = reckon("mitered_length", known="8", width="1")["cautions"]
    assert len(short) == len(longer) + 1
    assert any("maker’s instructions" in caution for caution in longer)


def test_the_part_carries_both_ends_and_both_sides():
    (part,) = reckon("mitered_length", **rail(left_end="45", right_end="square"))["parts"]
    assert part["ends"]["left"] == {"cut": "miter", "angle": "45°", "at_the_saw": ["45°"]}
    assert part["ends"]["right"]["cut"] == "square"
    assert part["length"]["text"] == part["long_side"]["text"] == "33 7/8″"
    assert part["short_side"]["text"] == "31 5/8″"
    assert part["width"]["text"] == "2 1/4″"


ENDS = {
    "a square end": {"end": "square"},
    "an edge miter": {"end": "edge", "tilt": "30"},
    "half a corner": {"end": "corner", "corner": "135"},
    "unequal widths": {"end": "unequal", "corner": "90", "neighbor": "3 1/2"},
}


def end(side, kind):
    return {f"{side}_{key}": text for key, text in ENDS[kind].items()}


def test_the_back_of_a_rabbet_lies_part_of_the_way_from_the_inside_to_the_outside():
    """At 45 degrees each end adds the way across, so the rabbet's back adds its own depth."""
    inside = rail(rabbet="3/8")
    said = reckon("mitered_length", **inside)["by_key"]
    assert said["rabbet_side"]["text"] == "32 3/8″"
    back = reckon("mitered_length", **(inside | {"known": "32 3/8", "known_face": "rabbet"}))
    assert back["by_key"]["short_side"]["text"] == "31 5/8″"
    assert back["by_key"]["long_side"]["text"] == "36 1/8″"
    assert "rabbet_side" not in reckon("mitered_length", **rail())["by_key"]


def test_whichever_line_is_measured_the_others_come_out_alike():
    lines = reckon("mitered_length", **rail(rabbet="5/16", right_end="square"))["by_key"]
    for face, key in (("outside", "long_side"), ("rabbet", "rabbet_side")):
        known = f"{lines[key]['exact']} in"
        values = rail(known=known, known_face=face, rabbet="5/16", right_end="square")
        said = reckon("mitered_length", **values)["by_key"]
        for each in ("short_side", "rabbet_side", "long_side"):
            assert said[each]["exact"] == lines[each]["exact"]


def test_an_edge_miter_adds_the_thickness_at_45_degrees():
    """Common practice, no source: the same rule as across the face, with the thickness."""
    values = rail(thickness="3/4", left_end="edge", right_end="edge")
    said = reckon("mitered_length", **values)["by_key"]
    assert said["long_side"]["text"] == "33 1/8″"
    assert "outside face up, top of the blade tilted left" in (said["left_cut"]["text"].lower())


def test_at_a_square_corner_a_piece_grows_by_the_width_of_the_one_that_it_meets():
    """Plane geometry: the outer edges cross one neighbor's width beyond the inner corner."""
    said = reckon("mitered_length", **rail(right_end="square"), **end("left", "unequal widths"))[
        "by_key"
    ]
    assert said["left_allowance"]["text"] == "3 1/2″"
    assert said["left_setting"]["text"] == "≈ 57.26°"
    assert float(mpmath.degrees(mpmath.atan(mpmath.mpf("3.5") / mpmath.mpf("2.25")))) == (
        pytest.approx(57.2648, abs=1e-4)
    )


@pytest.mark.parametrize("corner", ["40", "90", "135", "170"])
def test_unequal_widths_that_are_equal_halve_the_corner(corner):
    one = rail(left_end="corner", left_corner=corner, right_end="square")
    other = one | {"left_end": "unequal", "left_neighbor": "2 1/4"}
    keys = ("left_setting", "left_corner")
    first, second = (reckon("mitered_length", **each)["by_key"] for each in (one, other))
    assert [first[key] for key in keys] == [second[key] for key in keys]
    assert first["left_setting"]["exact"] == str(90 - Fraction(corner) / 2)


@pytest.mark.parametrize("left", ENDS)
@pytest.mark.parametrize("right", ENDS)
def test_the_mirror_image_swaps_left_and_right(left, right):
    here = reckon(
        "mitered_length", **rail(thickness="3/4"), **end("left", left), **end("right", right)
    )
    there = reckon(
        "mitered_length", **rail(thickness="3/4"), **end("left", right), **end("right", left)
    )
    for key in ("long_side", "short_side"):
        assert here["by_key"][key] == there["by_key"][key]
    for key in ("allowance", "setting", "corner"):
        one, other = here["by_key"][f"left_{key}"], there["by_key"][f"right_{key}"]
        assert (one["text"], one.get("exact")) == (other["text"], other.get("exact"))


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"left_end": "edge"}, "thickness", "missing"),
        ({"known_face": "rabbet"}, "rabbet", "missing"),
        ({"rabbet": "2 1/4"}, "rabbet", "impossible"),
        ({"rabbet": "1/4", "thickness": "3/4", "left_end": "edge"}, "rabbet", "conflict"),
        ({"left_end": "corner", "left_corner": "19"}, "left_corner", "range"),
        (
            {"left_end": "unequal", "left_corner": "150", "left_neighbor": "1"},
            "left_neighbor",
            "impossible",
        ),
        (
            {"left_end": "unequal", "left_corner": "20", "left_neighbor": "8"},
            "left_neighbor",
            "impossible",
        ),
        ({"left_end": "other", "left_angle": "80.5"}, "left_angle", "range"),
    ],
)
def test_a_piece_that_can_not_be_is_refused_by_its_field_with_a_remedy(values, field, kind):
    error = errors(ask("mitered_length", **rail(**values)))[field]
    assert error["kind"] == kind
    assert error["remedy"]


def test_each_piece_says_how_it_lies_and_which_way_the_saw_is_turned():
    said = reckon("mitered_length", **rail())["by_key"]
    assert "long points against the fence" in said["left_cut"]["text"]
    assert "swung right, to 45°" in said["left_cut"]["text"]
    assert "swung left, to 45°" in said["right_cut"]["text"]


def test_an_angle_is_told_to_the_hundredth_everywhere():
    said = reckon("mitered_length", **rail(), **end("left", "unequal widths"))["by_key"][
        "left_setting"
    ]
    assert said["exact"] is None
    assert said["text"] == "≈ 57.26°"
    assert said["dropped_text"] == ""


def test_no_label_can_be_taken_for_a_square_corner():
    """A "right angle" is 90 degrees to everybody."""
    labels = {field.label for field in RECKONERS["mitered_length"].fields}
    assert {"Left end angle", "Right end angle"} <= labels
    assert not {"Left angle", "Right angle"} & labels


def test_several_pieces_of_one_length_wait_for_the_saw_as_one():
    assert reckon("mitered_length", **rail())["parts"][0]["count"] == 1
    assert reckon("mitered_length", **rail(how_many="4"))["parts"][0]["count"] == 4
    assert errors(ask("mitered_length", **rail(how_many="0")))["how_many"]["kind"] == "range"
