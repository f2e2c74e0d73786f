"""A solid panel with room in its groove all year."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from sawside.reckoners import RECKONERS
from sawside.wood.materials import MATERIALS, having

EXAMPLE = RECKONERS["panel_in_its_groove"].example
openings = st.fractions(min_value=4, max_value=36, max_denominator=16)
grooves = st.fractions(min_value="1/4", max_value="3/4", max_denominator=16)
moistures = st.integers(min_value=6, max_value=14)
woods = st.sampled_from([each.key for each in having("movement")])


def case(wood, opening, groove, now, low, high, clearance="1/32"):
    return {
        "species": wood,
        "opening": f"{opening} in",
        "groove": f"{groove} in",
        "now": str(now),
        "year": "own",
        "low": str(low),
        "high": str(high),
        "clearance": f"{clearance} in",
    }


@settings(max_examples=60)
@given(woods, openings, grooves, moistures, moistures, moistures)
def test_the_panel_fits_at_its_dampest_and_is_held_at_its_driest(
    wood, opening, groove, now, one, other
):
    """The oracle walks a panel of that width through the year, from now."""
    low, high = sorted((one, other))
    said = ask("panel_in_its_groove", **case(wood, opening, groove, now, low, high))
    if not said["ok"]:
        assert said["error"]["kind"] == "impossible"
        return
    found = said["by_key"]
    width = Fraction(found["width"]["mark"])
    each = MATERIALS[wood].movement.tangential
    walked = [width * (1 + each * (moisture - now)) for moisture in (low, high, now)]
    room = opening + 2 * groove
    assert max(walked) + Fraction(1, 16) <= room
    more = width + Fraction(1, 16)
    assert (
        max(more * (1 + each * (moisture - now)) for moisture in (low, high, now)) + Fraction(1, 16)
        > room
    )
    assert min(walked) > opening
    assert exact(found["held"]) == (min(walked) - opening) / 2
    assert exact(found["gap"]) == (room - width) / 2


def test_the_case_worked_by_hand():
    """12 in of flat sawn red oak at 8 %, from 6 to 11 %: grows 0.1328, shrinks 0.0886."""
    opening = Fraction(12) * (1 + Fraction("0.00369") * 3) - Fraction(3, 4)
    values = case("red_oak_commercial", opening, "3/8", 8, 6, 11, "0")
    said = reckon("panel_in_its_groove", **values)["by_key"]
    assert said["width"]["text"] == "12″"
    assert float(exact(said["growth"])) == pytest.approx(0.1328, abs=5e-5)
    assert float(exact(said["gap"])) == pytest.approx(0.0664, abs=5e-5)
    assert float(exact(said["shrinkage"])) / 2 == pytest.approx(0.0443, abs=5e-5)


@settings(max_examples=30)
@given(openings, grooves, moistures)
def test_built_in_the_dampest_season_only_the_clearance_is_left(opening, groove, low):
    assume(low < 14)
    said = ask("panel_in_its_groove", **case("maple_red", opening, groove, 14, low, 14))
    if said["ok"]:
        gap = exact(said["by_key"]["gap"])
        assert Fraction(1, 32) <= gap < Fraction(1, 32) + Fraction(1, 32)


def test_a_panel_that_would_come_out_is_refused():
    said = ask("panel_in_its_groove", **case("beech_american", 36, "3/16", 12, 6, 12))
    assert errors(said)["groove"]["kind"] == "impossible"


def test_a_panel_that_is_hardly_held_is_warned_of():
    said = reckon("panel_in_its_groove", **case("maple_red", 12, "3/16", 8, 6, 10))
    assert any("less than 1/8″" in caution for caution in said["cautions"])


def test_a_clearance_that_takes_the_groove_is_refused():
    said = ask("panel_in_its_groove", **EXAMPLE | {"clearance": "7/16"})
    assert errors(said)["clearance"]["kind"] == "impossible"


def test_the_drawing_tells_gap_depth_and_what_is_held():
    said = reckon("panel_in_its_groove", **EXAMPLE)
    texts = " ".join(str(each.get("text")) for each in said["drawing"]["shapes"])
    for part in ("gap ", "deep 7/16″", "left in the groove at driest"):
        assert part in texts
