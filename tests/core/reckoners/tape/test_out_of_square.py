"""Two unequal diagonals tell how far a frame leans, and which corner to push."""

from fractions import Fraction

import mpmath
import pytest
from asking import ask, errors, exact, reckon
from hypothesis import assume, given
from hypothesis import strategies as st

sides = st.fractions(min_value=4, max_value=120, max_denominator=32)
leans = st.fractions(min_value="1/64", max_value=3, max_denominator=64)
MEASURE_AGAIN = "Measure again: the sides don’t fit the diagonals"


def frame(width, height, rising, falling, **settings):
    return reckon(
        "square",
        settings,
        solve="out",
        bottom=f"{width} in",
        side=f"{height} in",
        rising=f"{rising} in",
        falling=f"{falling} in",
    )


def decimals(value, places=11):
    """A measure to so many decimals, as a person with a very good rule would read it."""
    return Fraction(int(mpmath.nint(value * 10**places)), 10**places)


def test_equal_diagonals_are_square():
    said = frame(36, 27, 45, 45)
    assert said["by_key"]["offset"]["text"] == "0″"
    assert said["by_key"]["push"]["text"].startswith("Square")
    assert said["by_key"]["angle"]["text"] == "0°"
    assert [item["text"] for item in (said["by_key"]["goal"], said["by_key"]["square"])] == [
        "45″",
        "45″",
    ]


def test_a_rhombus_of_two_triangles_leans_by_half_its_side():
    """Plane geometry: sides 5, diagonals 6 and 8; p² - q² = 28 = 4 × 5 × offset, offset 7/5.

    The half diagonals 3 and 4 meet the side 5 at right angles, so the corner is twice
    atan(3/4) = 73.739795° and the lean 90° less that, 16.260204°.
    """
    said = frame(5, 5, 8, 6)["by_key"]
    assert exact(said["offset"]) == Fraction(7, 5)
    assert said["angle"]["text"] == "≈ 16.26°"
    assert said["angle"]["text"] == "≈ 16.26°"
    assert said["goal"]["rational"] is said["square"]["rational"] is False
    assert said["goal"]["decimals"] == said["square"]["decimals"] == "7.071067…"


@given(sides, sides, leans, st.booleans())
def test_a_frame_built_to_lean_is_told_to_lean_so(width, height, lean, to_right):
    """The oracle places four corners in a plane, at 60 digits, and measures its diagonals."""
    assume(lean < height / 2)
    with mpmath.workdps(60):
        w, h, off = (
            mpmath.mpf(each.numerator) / each.denominator for each in (width, height, lean)
        )
        off = off if to_right else -off
        up = mpmath.sqrt(h * h - off * off)
        rising = decimals(mpmath.hypot(w + off, up), 9)
        falling = decimals(mpmath.hypot(w - off, up), 9)
        degrees = mpmath.degrees(mpmath.asin(abs(off) / h))
    said = frame(width, height, rising, falling)
    by_key = said["by_key"]
    assert abs(exact(by_key["offset"]) - lean) < Fraction(1, 10**6)
    corner, way = ("right", "left") if to_right else ("left", "right")
    assert f"upper {corner} corner" in by_key["push"]["text"]
    assert f"to the {way}" in by_key["push"]["text"]
    shown = float(by_key["angle"]["text"].strip("≈ °"))
    assert abs(shown - float(degrees)) <= 0.0501
    goal, square = (float(by_key[key]["decimals"].rstrip("…")) for key in ("goal", "square"))
    assert abs(goal - square) < 2e-6
    assert not any("again" in caution for caution in said["cautions"])


@given(sides, sides, leans)
def test_the_mirrored_frame_is_off_by_the_same_to_the_other_side(width, height, difference):
    shorter = (width**2 + height**2) / max(width, height) / Fraction(11, 10)
    assume(abs(width - height) < shorter and shorter + difference < width + height)
    there = ask_frame(width, height, shorter, shorter + difference)
    back = ask_frame(width, height, shorter + difference, shorter)
    assume(there["ok"])
    keys = ("offset", "angle", "goal")
    one, other = (said["by_key"] for said in (there, back))
    assert [one[key] for key in keys] == [other[key] for key in keys]
    corners = ("upper left", "upper right")
    for corner, said, by_key in zip(corners, (there, back), (one, other), strict=True):
        told = by_key["push"]["text"]
        assert corner in told or said["verdict"] == told == MEASURE_AGAIN


def ask_frame(width, height, rising, falling):
    values = {"bottom": width, "side": height, "rising": rising, "falling": falling}
    return ask("square", solve="out", **{key: f"{each} in" for key, each in values.items()})


def test_measures_that_can_not_belong_to_one_frame_are_to_be_measured_again():
    assert any("Measure again" in each for each in frame(36, 27, "45 1/4", "45 1/4")["cautions"])
    assert not any("Measure again" in each for each in frame(36, 27, "45", "45 1/16")["cautions"])


@pytest.mark.parametrize("falling", ["45 1/4", "45 3/8"])
def test_nothing_is_called_square_or_pushed_that_has_to_be_measured_again(falling):
    """Worked by hand: 36 by 27 has diagonals of 45 (common practice, no source)."""
    said = frame(36, 27, "45 1/4", falling)
    assert said["verdict"] == MEASURE_AGAIN
    assert said["by_key"]["push"]["text"] == MEASURE_AGAIN
    assert said["cautions"][0].startswith("These four measurements don’t fit")
    drawn = said["drawing"]
    assert not [each for each in drawn["shapes"] if each.get("text", "").startswith("push")]
    assert "Push" not in drawn["words"]


def test_like_diagonals_alone_are_square_only_where_opposite_sides_are_alike():
    """Euclid: a trapezoid with like legs has like diagonals, and is no rectangle."""
    said = reckon("square", solve="out", rising="45", falling="45")
    assert any("only if opposite sides match too" in each for each in said["cautions"])


@pytest.mark.parametrize(
    ("rising", "falling", "bad"),
    [("63", "45", "rising"), ("45", "9", "falling"), ("100", "64", "rising")],
)
def test_diagonals_that_close_no_frame_are_impossible(rising, falling, bad):
    """Worked by hand: of 36 by 27 a diagonal lies between 36 - 27 = 9 and 36 + 27 = 63."""
    said = ask("square", solve="out", bottom="36", side="27", rising=rising, falling=falling)
    error = errors(said)[bad]
    assert error["kind"] == "impossible"
    assert error["remedy"].endswith(".")


def test_any_two_diagonals_that_close_are_answered():
    said = ask("square", solve="out", bottom="36", side="27", rising="62 63/64", falling="9 1/64")
    assert said["ok"]


@pytest.mark.parametrize(
    ("rising", "falling", "corner"),
    [("54 15/16", "54 23/32", "right"), ("54 23/32", "54 15/16", "left"), ("54", "54", None)],
)
def test_the_drawing_leans_as_the_frame_does(rising, falling, corner):
    said = reckon(
        "square", solve="out", bottom="36 1/8", side="41 1/4", rising=rising, falling=falling
    )
    drawn = said["drawing"]
    left, top, right, bottom = drawn["box"]
    assert 0.9 <= (right - left) / (bottom - top) <= 3
    (stock,) = [each for each in drawn["shapes"] if each.get("role") == "stock"]
    lean = stock["points"][0][0] - stock["points"][3][0]
    assert (lean > 0, lean < 0) == (corner == "right", corner == "left")
    texts = [each["text"] for each in drawn["shapes"] if "text" in each]
    pushed = [text for text in texts if text.startswith("push")]
    assert len(pushed) == (1 if corner else 0)
    assert ("exaggerated" in drawn["words"]) == bool(corner)


@pytest.mark.parametrize(("width", "height"), [(90, 4), (4, 90), (30, 30)])
def test_long_and_tall_frames_are_drawn_in_a_box_that_fits_a_screen(width, height):
    left, top, right, bottom = frame(width, height, max(width, height), max(width, height))[
        "drawing"
    ]["box"]
    assert 0.9 <= (right - left) / (bottom - top) <= 3.5


def test_two_diagonals_alone_say_the_corner_and_what_both_should_measure():
    """By hand: 45 1/4 and 44 3/4 are 1/2 apart; √((45 1/4² + 44 3/4²) ÷ 2) = √2025.0625 = 45.0007,
    on the mark 45, which is what both measure in a frame of 36 by 27.
    """
    said = reckon("square", solve="out", rising="45 1/4", falling="44 3/4")
    first, by_key = said["answers"][0], said["by_key"]
    assert (first["key"], first["text"]) == ("apart", "1/2″")
    assert by_key["goal"]["text"] == "45″"
    assert "upper right corner to the left" in by_key["push"]["text"]
    assert {"offset", "angle", "square"}.isdisjoint(by_key)
    assert said["verdict"] == "Push the upper right corner left"


@given(sides, sides, leans, st.booleans())
def test_the_bottom_alone_tells_as_much_of_the_lean_as_both_sides(width, height, lean, to_right):
    short = (width**2 + height**2) / (width + height)
    assume(abs(width - height) < short and short + lean < width + height)
    pair = {"rising": short, "falling": short + lean}
    pair = pair if to_right else dict(zip(pair, reversed(pair.values()), strict=True))
    told = {key: f"{each} in" for key, each in (pair | {"bottom": width}).items()}
    both = ask("square", solve="out", **told, side=f"{height} in")
    one = ask("square", solve="out", **told)
    assume(both["ok"] and one["ok"])
    assert one["answers"][0] == both["answers"][0]
    assert both["verdict"] in (one["verdict"], MEASURE_AGAIN)
    assert "angle" not in {each["key"] for each in one["answers"]}


@pytest.mark.parametrize(("key", "size"), [("bottom", "50"), ("side", "4"), ("side", "10")])
def test_a_side_that_no_frame_has_with_these_diagonals_is_impossible(key, size):
    """Plane geometry: the halves of both diagonals, 30 and 20, and a side are a triangle."""
    said = ask("square", solve="out", rising="60", falling="40", **{key: size})
    assert errors(said)[key]["kind"] == "impossible"


def test_a_square_frame_says_so_and_draws_no_push():
    said = reckon("square", solve="out", rising="45", falling="45")
    assert said["verdict"] == "Square"
    assert said["answers"][0]["text"] == "0″"
    assert not [each for each in said["drawing"]["shapes"] if each["kind"] == "dimension"]


def test_touching_a_drawn_side_opens_its_field():
    shapes = frame(36, 27, "45 1/16", "44 15/16")["drawing"]["shapes"]
    fields = [each.get("field") for each in shapes if each["kind"] == "dimension"]
    assert fields == [None, "bottom", "side"]
