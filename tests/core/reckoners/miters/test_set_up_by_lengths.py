"""An angle is set up by lengths that can be marked, with what one mark of error does."""

from fractions import Fraction

import mpmath
import pytest
from asking import as_drawn, ask, errors, reckon
from hypothesis import given, settings
from hypothesis import strategies as st


def number(value):
    return float(value["decimals"].rstrip("…"))


def degrees(value):
    return float(value["text"].strip("≈ °"))


@pytest.mark.parametrize(("angle", "rise", "spacer"), [("45", "12″", None), ("30", None, "5″")])
def test_rise_and_spacer_that_are_rational_are_exact(angle, rise, spacer):
    """Textbook trigonometry: tan 45 = 1, sin 30 = 1/2."""
    said = reckon("set_up_by_lengths", angle=angle, run="12", bar="10")["by_key"]
    for key, text in (("rise", rise), ("spacer", spacer)):
        if text:
            assert (said[key]["text"], said[key]["dropped_text"]) == (text, "")
            assert said[f"{key}_angle"]["exact"] == angle


@settings(max_examples=80)
@given(
    st.fractions(min_value=1, max_value=84, max_denominator=20),
    st.fractions(min_value=4, max_value=40, max_denominator=8),
    st.sampled_from([("1/16", "in", 1 / 64), ("1/64", "in", 1 / 64), ("1 mm", "mm", 0.1 / 25.4)]),
)
def test_lengths_on_the_finest_marks_and_one_mark_of_error_are_as_another_library_finds(
    angle, run, marks
):
    mark, display, step = marks
    said = reckon(
        "set_up_by_lengths",
        {"mark": mark, "display": display},
        angle=str(angle),
        run=f"{run} in",
        bar=f"{run} in",
    )["by_key"]
    turn = float(angle)
    long = float(run)
    for key, length, back in (
        ("rise", long * mpmath.tan(mpmath.radians(turn)), lambda x: mpmath.atan(x / long)),
        (
            "spacer",
            long * mpmath.sin(mpmath.radians(turn)),
            lambda x: mpmath.asin(min(x / long, 1)),
        ),
    ):
        assert said[key]["rational"] or said[key]["dropped"].startswith("≈")
        at = float(Fraction(said[key]["mark"]))
        assert abs(at - float(length)) <= step / 2 + 1e-9
        found = float(mpmath.degrees(back(at)))
        assert degrees(said[f"{key}_angle"]) == pytest.approx(found, abs=0.0051)
        worst = max(
            abs(float(mpmath.degrees(back(max(at + way * step, 0)))) - turn) for way in (-1, 1)
        )
        assert degrees(said[f"{key}_worst"]) == pytest.approx(worst, abs=0.0051)


@pytest.mark.parametrize(
    ("angle", "sets"),
    [
        ("33.86", "sets ≈ 33.84°, 0.02° low"),
        ("45", "sets 45° exactly"),
        ("30", "sets ≈ 29.98°, 0.02° low"),
    ],
)
def test_the_verdict_tells_what_the_mark_of_the_rise_sets_and_how_far_off_that_is(angle, sets):
    """By a table: arctan (8 3/64 ÷ 12) is 33.845; 12 × tan 30 is 6.9282, arctan (6 59/64 ÷ 12)
    is 29.977, so 30 is 0.02 low."""
    said = reckon("set_up_by_lengths", angle=angle, run="12")
    assert sets in said["verdict"]


def test_a_longer_run_is_less_touched_by_a_mark():
    short, long = (
        reckon("set_up_by_lengths", angle="22.5", run=run)["by_key"]["rise_worst"]
        for run in ("6", "24")
    )
    assert degrees(long) < degrees(short)


@pytest.mark.parametrize(
    ("values", "field"),
    [({"angle": "0"}, "angle"), ({"angle": "86"}, "angle"), ({"angle": "9", "run": "0"}, "run")],
)
def test_what_can_not_be_laid_out_is_refused_by_its_field(values, field):
    error = errors(ask("set_up_by_lengths", **values))[field]
    assert error["kind"] == "range"
    assert error["remedy"]


@pytest.mark.parametrize("angle", ["0.1", "3", "45", "85"])
def test_the_drawing_tells_run_and_rise(angle):
    said = reckon("set_up_by_lengths", angle=angle)
    texts = [shape.get("text") for shape in said["drawing"]["shapes"]]
    assert f"rise {as_drawn(said['by_key']['rise'])}" in texts
    assert "run 12″" in texts
    left, top, right, bottom = said["drawing"]["box"]
    assert 0.3 <= (right - left) / (bottom - top) <= 5
