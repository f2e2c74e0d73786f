"""What is told and drawn of shelves of every layout; their places: `test_spaced_shelves.py`."""

import pytest
from asking import ask, errors, reckon

THINGS = [{"height": "12 5/8", "clearance": "1/2", "openings": "2"}, {"height": "9 1/4"}]


@pytest.mark.parametrize(
    ("values", "verdict"),
    [
        # (44 1/2 − 2 × 3/4) ÷ 3 = 14 1/3
        ({"height": "44 1/2", "shelf_count": "2"}, "2 shelves, 3 openings of ≈ 14 5/16″"),
        ({"height": "44", "shelf_count": "0"}, "No shelves: one opening of 44″"),
        # 4 × 11 + 3 × 3/4
        ({"shelf_count": "3", "opening": "11"}, "46 1/4″ inside for 3 shelves"),
        # 8 at the top: 45 3/4 is 4 × 8 + 6 steps, so a step is 2 7/24, the lowest 14 7/8
        (
            {"layout": "graduated", "height": "48", "shelf_count": "3", "highest": "8"},
            "4 openings, 14 7/8″ down to 8″",
        ),
        # 2 × 13 1/8 + 9 3/4 + 2 × 3/4 = 37 1/2
        ({"layout": "fit", "things": THINGS, "height": "40"}, "2 shelves, 2 1/2″ left over"),
        ({"layout": "fit", "things": THINGS, "height": "37 1/2"}, "2 shelves, an exact fit"),
        ({"layout": "fit", "things": THINGS}, "2 shelves, 37 1/2″ inside"),
        (
            {"layout": "fit", "things": THINGS[1:], "height": "30"},
            "No shelves needed, 20 1/4″ left over",
        ),
        # below (30 − 3/4) ÷ 2, above (72 − 30 3/4 − 2 × 3/4) ÷ 3
        (
            {"layout": "fixed", "height": "72", "fixed_at": "30", "below": "1", "above": "2"},
            "Openings 14 5/8″ below, 13 1/4″ above",
        ),
    ],
)
def test_the_verdict_is_what_one_calls_across_the_shop(values, verdict):
    assert reckon("shelf_layout", **values)["verdict"] == verdict


def test_without_a_shelf_there_are_no_marks_and_the_height_is_what_was_asked_for():
    assert "marks" not in reckon("shelf_layout", height="44", shelf_count="0")["by_key"]
    said = reckon("shelf_layout", layout="fit", things=[{"height": "12"}], height="30")
    assert (said["answers"][0]["key"], said["answers"][0]["text"]) == ("needed", "12 1/2″")


def test_what_goes_in_is_drawn_in_its_opening():
    """The clearance above is left over it: 9 1/4 from 37 1/2 − 9 3/4 = 27 3/4 on."""
    drawn = reckon("shelf_layout", layout="fit", things=THINGS)["drawing"]["shapes"]
    ghosts = [each["points"] for each in drawn if each.get("role") == "ghost"]
    spans = [(min(y for _, y in points), max(y for _, y in points)) for points in ghosts]
    assert spans == [(-12.625, 0), (-26.5, -13.875), (-37, -27.75)]


def test_a_fixed_shelf_is_called_so_in_the_drawing():
    case = {"layout": "fixed", "height": "72", "fixed_at": "30", "below": "1", "above": "2"}
    drawn = reckon("shelf_layout", **case)["drawing"]["shapes"]
    assert "30″ fixed" in [each.get("text") for each in drawn]


@pytest.mark.parametrize(
    ("more", "field"),
    [
        ({}, "height"),
        ({"case_parts": "whole"}, "height"),
        ({"case_parts": "whole", "height_is": "inside"}, None),
    ],
)
def test_the_height_that_was_typed_is_the_dimension_that_opens_its_field(more, field):
    drawn = reckon("shelf_layout", height="72", shelf_count="2", **more)["drawing"]["shapes"]
    measured = [each for each in drawn if each["kind"] == "dimension" and each["role"] == "given"]
    assert [each.get("field") for each in measured] == [field]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({}, "height", "conflict"),
        ({"layout": "graduated", "height": "48"}, "shelf_count", "conflict"),
        (
            {"layout": "graduated", "height": "48", "shelf_count": "0", "highest": "8"},
            "shelf_count",
            "range",
        ),
        ({"layout": "fit"}, "things", "missing"),
        ({"layout": "fixed", "fixed_at": "30", "below": "1", "above": "1"}, "height", "missing"),
        ({"layout": "spread"}, "layout", "unknown"),
        ({"height": "4", "shelf_count": "2", "thickness": "2"}, "shelf_count", "impossible"),
    ],
)
def test_what_is_still_missing_is_asked_for_where_one_fills_in_first(values, field, kind):
    assert errors(ask("shelf_layout", **values))[field]["kind"] == kind
