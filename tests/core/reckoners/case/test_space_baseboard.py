"""How a baseboard cuts into a case: by hand, and tried in a space built of its faces."""

from fractions import Fraction

import pytest
from asking import inches, reckon
from hypothesis import given
from hypothesis import strategies as st

from tests.core.oracles.crooked_space import Space
from tests.core.reckoners.case.spaces import KEY, MARK, WALLS, leaning, leans, sixteenths, texts


def test_a_case_clear_of_the_baseboard_is_shallower_and_clear_of_it_on_each_wall():
    """By hand: 37 1/2 less 2 × 1/2 and 2 × 1/4 is 36; 15 3/8 less 1/2 is 14 7/8."""
    form = {"left_depth": "15 1/2", "right_depth": "15 3/8", "baseboard": "1/2"}
    clear = reckon(KEY, **WALLS | form, at_baseboard="front")["by_key"]
    assert (clear["width"]["text"], clear["depth"]["text"]) == ("36″", "14 7/8″")
    assert texts(clear["strips"])[0] == ("Left, at the floor", "3/4″")
    notched = reckon(KEY, **WALLS | form, at_baseboard="notch")
    by_key = notched["by_key"]
    assert (by_key["width"]["text"], by_key["depth"]["text"]) == ("37″", "15 3/8″")
    assert texts(by_key["notches"]) == [
        ("Back", "1/2″"),
        ("Left side", "1/4″"),
        ("Right side", "1/4″"),
    ]
    assert any(
        each.startswith("Notch the back 1/2″ and both sides 1/4″.") for each in notched["cautions"]
    )
    away = reckon(KEY, **WALLS | form, at_baseboard="cut")
    by_key = away["by_key"]
    assert (by_key["width"]["text"], by_key["depth"]["text"]) == ("37″", "15 3/8″")
    assert "notches" not in by_key
    assert not any("otch" in each for each in away["cautions"])


def test_a_side_is_notched_by_what_its_strip_does_not_leave_and_may_be_too_thin_for_it():
    """By hand: 3/4 less a strip of 1/4 is 1/2, and 1/4 of wood behind it makes 3/4: more than a
    sold 3/4 panel's 23/32 (PS 1). What must be left, 1/4, is shop practice, no source."""
    form = {"widths": ["40"], "baseboard": "3/4", "left_depth": "16", "above": "3"}
    said = reckon(KEY, **WALLS | form)
    assert texts(said["by_key"]["notches"])[1:] == [("Left side", "1/2″"), ("Right side", "1/2″")]
    (caution,) = [each for each in said["cautions"] if each.startswith("Notch the back 3/4″")]
    assert "Don’t notch a side thinner than 3/4″" in caution
    assert "cut the baseboard away" in caution
    assert "Left side’s notch: 3/4 − 1/4 = 1/2" in [line["text"] for line in said["working"]]
    metric = {"unit": "mm", "mark": "1 mm"}
    form = {"widths": ["1000"], "left_height": "2400", "baseboard": "19", "scribe": "6"}
    said = reckon(KEY, metric, built="walls", **form)
    assert any("thinner than 19 mm" in each for each in said["cautions"])


def test_only_the_sides_that_the_baseboard_reaches_are_notched():
    """By hand: leaning in by 1 the left strip is 1 1/4 at the floor, past a baseboard of 1/2."""
    form = {"widths": ["38", "37"], "baseboard": "1/2"}
    said = reckon(KEY, **WALLS | form | leaning("left", Fraction(1)))
    assert texts(said["by_key"]["notches"]) == [("Back", "1/2″"), ("Right side", "1/4″")]
    assert any(
        each.startswith("Notch the back 1/2″ and the right side 1/4″.") for each in said["cautions"]
    )
    free = reckon(KEY, **WALLS | form | {"built": "free"})
    assert texts(free["by_key"]["notches"]) == [("Back", "1/2″")]
    assert not any("thinner" in each for each in free["cautions"])


def test_a_baseboard_counts_at_the_foot_and_a_lean_at_the_top():
    """By hand: leaning in by 1 the top counts, not a baseboard of 1/2; away, the baseboard does."""
    base = {"baseboard": "1/2", "at_baseboard": "front", "built": "left", "scribe": "0"}
    form = WALLS | base | {"widths": ["38", "37"]}
    inside = reckon(KEY, **form | leaning("left", Fraction(1)))["by_key"]
    assert inside["width"]["text"] == "37″"
    away = reckon(KEY, **form | leaning("left", Fraction(-1)))["by_key"]
    assert away["width"]["text"] == "36 1/2″"


@given(st.integers(400, 900), leans, leans, sixteenths, st.integers(1, 24))
def test_a_notch_and_the_gap_beside_it_take_the_baseboard_and_a_mark_less_would_not(
    wide, left, right, scribe, thick
):
    """At the foot of each wall of a space built of its faces, the case amid what is free."""
    space, base = Space(Fraction(wide, 16), left, right, (0, 0), (96, 96)), Fraction(thick, 16)
    readings = [inches(space.reading(Fraction(part, 2))) for part in (1, 0, 2)]
    form = leaning("left", left) | leaning("right", right) | {"baseboard": inches(base)}
    said = reckon(KEY, **WALLS | {"widths": readings, "scribe": inches(scribe), **form})["by_key"]
    told = Fraction(said["width"]["mark"])
    start = space.amid(told)
    cut = {each["label"]: Fraction(each["mark"]) for each in said["notches"]["items"]}
    assert cut.pop("Back") == base
    for side, gap in zip(("Left", "Right"), space.gaps(start, told, 0), strict=True):
        notch = cut.get(f"{side} side", Fraction(0))
        assert notch + gap >= base
        assert notch == 0 or notch - MARK + gap < base


@pytest.mark.parametrize(("widths", "told"), [(["37"], False), (["37", "37 1/8"], True)])
def test_where_walls_may_bow_the_gap_is_measured_before_a_side_is_notched(widths, told):
    said = reckon(KEY, **WALLS | {"widths": widths, "baseboard": "1/2"})
    assert any("measure the gap at the floor" in each for each in said["cautions"]) == told
