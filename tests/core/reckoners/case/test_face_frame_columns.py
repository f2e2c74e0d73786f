"""Face frames whose columns have openings of their own, by hand."""

import pytest
from asking import ask, errors, exact, reckon
from projects import acts, begun, view

from tests.core.oracles.laid_out_frame import ALONE, CABINET, KEY, by_name, items, spans_told

DRAWERS = [{"column": "1", "opening": "5 1/2"}, {"column": "1", "opening": "5 1/2"}]
FRONT = CABINET | {"middle_stiles": "1", "rows": "columns", "column_rails": DRAWERS}
"""Two drawers over a door at the left, one door at the right. Between the rails 34 1/2 − 3 1/2 −
2 × 1 1/2 = 28; at the left 28 − 2 × 1 1/2 − 2 × 5 1/2 = 14 for the door."""


def part(said, name):
    return next(each for each in said["parts"] if each["name"] == name)


def test_two_drawers_over_a_door_beside_one_door():
    """33 between the stiles less 1 1/2, in two: 15 3/4 wide."""
    said = reckon(KEY, **FRONT)
    assert items(said, "opening_heights") == {
        "Column 1, opening 1": 5.5,
        "Column 1, opening 2": 5.5,
        "Column 1, opening 3": 14,
        "Column 2": 28,
    }
    assert set(items(said, "opening_widths").values()) == {15.75}
    assert by_name(said, "rails")["Middle rail", None] == 15.75
    assert part(said, "Middle rail")["count"] == 2
    assert said["verdict"] == "Rails (4 openings)"
    working = [line["text"] for line in said["working"]]
    assert "Column 1, last opening: 25 − 5 1/2 − 5 1/2 = 14" in working


def test_each_stile_has_the_rails_of_its_own_column():
    """From the bottom 1 1/2 + 14 = 15 1/2, and 1 1/2 + 5 1/2 higher 22 1/2."""
    said = reckon(KEY, **FRONT)
    rails = [("middle rail", 15.5, 17), ("middle rail", 22.5, 24)]
    outer = [("bottom rail", 0, 1.5)], [("top rail", 29.5, 31)]
    assert spans_told(part(said, "Left stile"), "the inside edge") == [*outer[0], *rails, *outer[1]]
    assert spans_told(part(said, "Right stile"), "the inside edge") == [*outer[0], *outer[1]]
    middle = part(said, "Middle stile")
    assert spans_told(middle, "the left edge") == [(name, a - 1.5, b - 1.5) for name, a, b in rails]
    assert not spans_told(middle, "the right edge")
    assert not any("mirror" in each for each in part(said, "Left stile")["about"])


def test_openings_without_a_height_share_what_is_left_in_their_column():
    """28 − 2 × 1 1/2 − 5 1/2 = 19 1/2 in two; the right one in two: (28 − 1 1/2) ÷ 2 = 13 1/4."""
    rails = [{"column": "1", "opening": "5 1/2"}, {"column": "1"}, {"column": "2"}]
    said = reckon(KEY, **FRONT | {"column_rails": rails})
    assert list(items(said, "opening_heights").values()) == [5.5, 9.75, 9.75, 13.25, 13.25]


def test_columns_that_come_out_alike_are_told_as_rows():
    rails = [{"column": "1", "opening": "5"}, {"column": "2", "opening": "5"}]
    said = reckon(KEY, **FRONT | {"column_rails": rails})
    assert items(said, "opening_heights") == {"Row 1 from the top": 5, "Row 2 from the top": 21.5}
    assert part(said, "Stile")["count"] == 2
    plain = reckon(KEY, **CABINET, middle_stiles="1", rows="given", heights=["5"])
    assert plain["parts"][0]["about"] == said["parts"][0]["about"]


def test_middle_stiles_with_other_rails_on_them_are_listed_apart():
    said = reckon(KEY, **FRONT | {"middle_stiles": "2"})
    names = [each["name"] for each in said["parts"]]
    assert names[2:4] == ["Middle stile (right of bay 1)", "Middle stile (right of bay 2)"]


def test_a_door_takes_its_opening_from_the_frame_by_name():
    line = {"name": "Front", "reckoner": KEY, "values": FRONT}
    texts = ("[Front: Opening height 3]", "[Front: Opening height 4]")
    readings = [
        ("keep_reading", {"name": f"Door {number}", "text": text})
        for number, text in enumerate(texts)
    ]
    seen = view(acts(begun(), ("keep_line", line), *readings))
    assert [exact(each["headline"]) for each in seen["entries"][1:]] == [14, 28]


def test_a_rail_without_one_across_from_it_may_have_a_longer_tenon():
    """2 × 3/4 + 1/8 is past 1 1/2 where rails meet; alone 3/4 + 1/8 is not."""
    tenoned = {"joint": "tenon", "tenon": "3/4"}
    assert ask(KEY, **FRONT | tenoned)["ok"]
    across = [*DRAWERS, {"column": "2", "opening": "6"}]
    said = errors(ask(KEY, **FRONT | tenoned | {"column_rails": across}))
    assert "from both sides" in said["tenon"]["message"]
    thin = errors(ask(KEY, **FRONT | tenoned | {"middle_stile": "3/4"}))
    assert "far edge of the middle stile" in thin["tenon"]["message"]


def test_the_drawing_tells_the_openings_where_they_are():
    said = reckon(KEY, **FRONT)
    shapes = said["drawing"]["shapes"]
    told = [each["text"] for each in shapes if each.get("field") == "column_rails"]
    assert told == ["5 1/2″", "5 1/2″", "14″", "28″"]
    assert sum(each.get("role") == "stock" for each in shapes) == 7


@pytest.mark.parametrize(
    ("rails", "words"),
    [
        ([{"column": "3"}], "There are 2 columns, but a middle rail in column 3"),
        ([{"column": "1", "opening": "27"}], "In column 1, 1 opening takes 27″ of the 26 1/2″"),
        (
            [{"column": "1", "opening": "25 1/2"}, {"column": "1"}],
            "In column 1, 1 opening takes 25 1/2″ of the 25″",
        ),
        ([{"column": "2"}] * 19, "The rails take up"),
    ],
)
def test_columns_that_can_not_be_are_refused_in_their_list(rails, words):
    said = errors(ask(KEY, **FRONT | {"column_rails": rails}))["column_rails"]
    assert words in said["message"]
    assert said["remedy"]


def test_a_frame_without_middle_rails_by_column_is_one_opening_high():
    said = reckon(KEY, **ALONE, rows="columns")
    assert items(said, "opening_heights") == {"Every opening": 21}


def test_a_through_tenon_goes_through_a_middle_stile_where_no_rail_meets_it_across():
    """Two drawers at the left, nothing across: 15 3/4 and 1 1/2 at both ends."""
    said = reckon(KEY, **FRONT, joint="through")
    assert part(said, "Middle rail")["length"]["text"] == "18 3/4″"
    assert part(said, "Middle rail")["about"][1] == "Tenon 1 1/2″ long at both ends."
    assert part(said, "Middle stile")["about"][2].endswith("A mortise within each, right through.")
    assert not any("half way" in each for each in said["cautions"])


def test_a_through_tenon_stops_half_way_only_where_a_rail_meets_it_across():
    """At the left rails 15 1/2 to 17 and 22 1/2 to 24 up, at the right one 21 1/2 to 23 up: the
    upper one is met by that, so 1 1/2 + 3/4 longer than 15 3/4, the lower one isn't."""
    rails = [*DRAWERS, {"column": "2", "opening": "6 1/2"}]
    said = reckon(KEY, **FRONT | {"column_rails": rails}, joint="through")
    lengths = {each["name"]: each["length"]["text"] for each in said["parts"]}
    short = "Middle rail (bay 1 below opening 1; bay 2 below opening 1)"
    assert lengths[short] == "18″"
    assert lengths["Middle rail (bay 1 below opening 2)"] == "18 3/4″"
    assert len({each["key"] for each in said["parts"]}) == len(said["parts"])
    assert part(said, short)["about"][1] == (
        "Tenon 3/4″ long at the end in the middle stile, 1 1/2″ at the other."
    )
    stile = part(said, "Middle stile")["about"]
    assert stile[2].endswith(
        "middle rail 15 1/2″ to 17″ and middle rail 22 1/2″ to 24″ (half way). A mortise within "
        "each, right through unless it says half way."
    )
    assert stile[3].endswith("A mortise within each, half way through.")
    assert any("where rails meet there they stop half way" in each for each in said["cautions"])


def test_a_rail_between_two_middle_stiles_says_which_of_its_tenons_is_short():
    """Three columns, a rail in the first two: met at the left of the second, through at its
    right."""
    rails = [{"column": "1", "opening": "6"}, {"column": "2", "opening": "6"}]
    said = reckon(KEY, **FRONT | {"middle_stiles": "2", "column_rails": rails}, joint="through")
    assert part(said, "Middle rail (bay 2)")["about"][1] == (
        "Tenon 3/4″ long at the end across from another rail, 1 1/2″ at the other."
    )
    assert part(said, "Middle rail (bay 1)")["count"] == 1
