"""Face frames: known ones by hand, and what cannot be."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon
from projects import acts, begun, view

from tests.core.oracles.laid_out_frame import ALONE, CABINET, CROSSED, KEY, OUTER, by_name, items


def test_a_cabinet_front_with_a_door_under_a_drawer_is_cut_as_by_hand():
    """By hand: 36 − 2 × 1 1/2 = 33 between the stiles; 34 1/2 − 3 1/2 = 31 high, less three rails
    of 1 1/2 is 26 1/2: a drawer of 5 leaves a door of 21 1/2. Sides of 3/4 leave 1 1/2 − 3/4 of
    the stile inside, and the bottom, 3 1/2 + 3/4 up, is 3/4 below the top of its rail."""
    said = reckon(KEY, **CABINET, rows="given", heights=["5 in"])
    assert items(said, "rails") == {"Top rail, bottom rail and middle rail, 3 pieces": 33}
    assert items(said, "stiles") == {"Stile, 2 pieces": 31}
    assert items(said, "opening_widths") == {"Every opening": 33}
    assert items(said, "opening_heights") == {
        "Row 1 from the top": 5,
        "Row 2 from the top": Fraction(43, 2),
    }
    assert items(said, "covers") == {"Left": Fraction(3, 4), "Right": Fraction(3, 4)}
    assert exact(said["by_key"]["lip"]) == Fraction(3, 4)
    assert exact(said["by_key"]["total"]) == 3 * 33 + 2 * 31
    assert "shoulders" not in said["by_key"]
    sizes = [
        [part["name"], part["count"], *(part[each]["text"] for each in ("length", "thickness"))]
        for part in said["parts"]
    ]
    assert sizes == [
        ["Stile", 2, "31″", "3/4″"],
        ["Top rail", 1, "33″", "3/4″"],
        ["Bottom rail", 1, "33″", "3/4″"],
        ["Middle rail", 1, "33″", "3/4″"],
    ]


def test_the_openings_have_names_for_doors_and_drawers_in_a_project():
    """The openings of the frame above: 33 wide, a drawer of 5 over a door of 21 1/2."""
    values = CABINET | {"rows": "given", "heights": ["5 in"]}
    line = {"name": "Front", "reckoner": KEY, "values": values}
    texts = ("[Front: Opening width 1]", "[Front: Opening height 1]", "[Front: Opening height 2]")
    readings = [
        ("keep_reading", {"name": f"Size {number}", "text": text})
        for number, text in enumerate(texts)
    ]
    seen = view(acts(begun(), ("keep_line", line), *readings))
    assert [exact(each["headline"]) for each in seen["entries"][1:]] == [33, 5, Fraction(43, 2)]


def test_stiles_that_run_to_the_floor_are_the_case_s_height_and_leave_the_openings_as_they_are():
    """34 1/2 and what goes past the top, and the same rows as above the toe kick."""
    short = reckon(KEY, **CABINET, middle_rails="1", top_past="1/2")
    long = reckon(KEY, **CABINET, middle_rails="1", top_past="1/2", stiles_run="floor")
    assert items(long, "stiles") == {"Stile, 2 pieces": 35}
    assert items(short, "stiles") == {"Stile, 2 pieces": Fraction(63, 2)}
    assert items(long, "opening_heights") == items(short, "opening_heights")
    assert exact(long["by_key"]["lip"]) == exact(short["by_key"]["lip"])


def test_a_flush_stile_is_as_wide_as_the_side_and_what_goes_past_it():
    """23/32 + 1/4 to scribe is 31/32; the right one 23/32; past the inside by 1/4 more."""
    case = CABINET | {"side": "23/32", "left_past": "1/4", "right_past": "0"}
    flush = reckon(KEY, **case, edge="flush")
    assert items(flush, "stiles") == {"Left stile and right stile, 2 pieces": 31}
    widths = [part["width"]["text"] for part in flush["parts"][:2]]
    assert widths == ["31/32″", "23/32″"]
    assert items(flush, "covers") == {"Left": 0, "Right": 0}
    assert items(flush, "opening_widths")["Every opening"] == 36 - 2 * Fraction(23, 32)
    past = reckon(KEY, **case, edge="past", reveal="1/4")
    assert items(past, "covers") == {"Left": Fraction(1, 4), "Right": Fraction(1, 4)}
    typed = reckon(KEY, **case, edge="flush", left_stile="3")
    assert items(typed, "covers") == {"Left": 3 - Fraction(31, 32), "Right": 0}


@pytest.mark.parametrize(
    ("values", "wide", "lip"),
    [
        ({"bottom_edge": "flush", "bottom_height": "5"}, "1 1/2″", "0″"),
        ({"bottom_edge": "above", "bottom_height": "5", "lip": "1/4"}, "1 3/4″", "1/4″"),
        ({"bottom_edge": "flush"}, "3/4″", "0″"),
        ({"bottom_rail": "2"}, "2″", "1 1/4″"),
        ({"bottom_rail": "2", "bottom_edge": "flush"}, "2″", "1 1/4″"),
    ],
)
def test_a_bottom_rail_is_flush_with_the_case_s_bottom_or_above_it(values, wide, lip):
    """On a kick of 3 1/2: 5 − 3 1/2 = 1 1/2; the bottom is 3/4 thick where nothing says more."""
    said = reckon(KEY, **CABINET | values)
    rail = next(part for part in said["parts"] if part["name"] == "Bottom rail")
    assert (rail["width"]["text"], said["by_key"]["lip"]["text"]) == (wide, lip)


@pytest.mark.parametrize(
    ("joint", "rail", "middle"),
    [
        ({"joint": "screws"}, 27, 21),
        ({"joint": "dowels"}, 27, 21),
        ({"joint": "tenon", "tenon": "3/8"}, Fraction(111, 4), Fraction(87, 4)),
        ({"joint": "through"}, 30, 24),
    ],
)
def test_a_joint_adds_to_a_rail_what_goes_into_the_stiles(joint, rail, middle):
    """30 − 2 × 1 1/2 = 27 between shoulders; butted nothing, 2 × 3/8, or both stiles' width."""
    said = reckon(KEY, **ALONE, middle_stiles="1", **joint)
    assert items(said, "rails") == {OUTER: rail}
    stiles = {("Stile", None): 24, ("Middle stile", None): middle}
    assert by_name(said, "stiles") == stiles
    if rail != 27:
        assert items(said, "shoulders") == {"Middle stile": 21, OUTER: 27}


def test_through_tenons_from_both_sides_meet_in_the_middle_of_a_middle_stile():
    """(30 − 3 × 1 1/2) ÷ 2 = 12 3/4, and 1 1/2 through the end stile, 3/4 into the middle one."""
    said = reckon(KEY, **ALONE, middle_stiles="1", middle_rails="1", joint="through")
    assert by_name(said, "rails")["Middle rail", None] == 15
    assert any("stop half way" in each for each in said["cautions"])


def test_middle_stiles_that_run_through_split_the_top_and_bottom_rails():
    said = reckon(KEY, **ALONE, bays="given", widths=["10"], middle_stiles_run="through")
    assert items(said, "stiles") == {"Stile and middle stile, 3 pieces": 24}
    assert items(said, "rails") == {
        "Top rail (bay 1) and bottom rail (bay 1), 2 pieces": 10,
        "Top rail (bay 2) and bottom rail (bay 2), 2 pieces": Fraction(31, 2),
    }


def test_the_sides_are_of_the_panel_that_a_case_starts_with():
    """1 1/2 − 23/32 = 25/32; 40 − 18 = 22 mm."""
    case = {"width": "36 in", "height": "34 in"}
    for unit, covered in (("in", Fraction(25, 32)), ("mm", Fraction(22 * 5, 127))):
        said = reckon(KEY, {"unit": unit}, **case)
        assert items(said, "covers") == {"Left": covered, "Right": covered}


def test_a_metric_frame_starts_with_members_of_40_mm():
    """900 − 2 × 40 = 820; (720 − 100 − 3 × 40) ÷ 2 = 250."""
    case = {"width": "900", "height": "720", "kick": "100", "middle_rails": "1"}
    said = reckon(KEY, {"unit": "mm"}, **case)["by_key"]
    assert said["rails"]["text"] == "820 mm"
    assert said["stiles"]["text"] == "620 mm"
    assert said["opening_heights"]["text"] == "250 mm, 250 mm"


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"width": "3"}, "width", "impossible"),
        ({"width": "3 1/2"}, "width", None),
        ({"width": "3.49"}, "width", "impossible"),
        ({"middle_stiles": "11", "stile": "3"}, "middle_stiles", "impossible"),
        ({"height": "6"}, "height", "impossible"),
        ({"height": "3 1/2"}, "kick", "impossible"),
        ({"middle_rails": "11", "middle_rail": "3"}, "middle_rails", "impossible"),
        ({"bays": "given", "widths": ["20", "11"]}, "widths", "impossible"),
        ({"bays": "given", "widths": ["1/4"]}, "widths", "range"),
        ({"bays": "given", "widths": []}, "widths", "missing"),
        ({"rows": "given", "heights": ["28"]}, "heights", "impossible"),
        ({"joint": "tenon", "tenon": "1 1/2"}, "tenon", "impossible"),
        ({"joint": "tenon", "tenon": "1", "middle_stiles": "1"}, "tenon", None),
        (
            {"joint": "tenon", "tenon": "1", "middle_stiles": "1", "middle_rails": "1"},
            "tenon",
            "impossible",
        ),
        (
            {"joint": "tenon", "tenon": "1", "middle_stiles": "1", "top_rail": "1"},
            "tenon",
            "impossible",
        ),
        ({"joint": "tenon", "tenon": "1 3/8"}, "tenon", None),
        ({"joint": "tenon", "tenon": "1 13/32"}, "tenon", "impossible"),
        *(
            (CROSSED | {"tenon": tenon}, "tenon", kind)
            for tenon, kind in (("11/16", None), ("45/64", "impossible"), ("3/4", "impossible"))
        ),
        ({"size_of": "frame", "bays": "centered"}, "bays", "impossible"),
        ({"bays": "centered", "middle_stiles": "11", "stile": "3"}, "middle_stiles", "impossible"),
        ({"bays": "centered", "middle_stiles": "8", "side": "4"}, "side", "impossible"),
        ({"bays": "centered", "middle_stiles": "1", "left_stile": "18"}, "bays", "impossible"),
        ({"edge": "past", "reveal": "2"}, "reveal", "impossible"),
        ({"left_past": "1 1/2"}, "left_past", "impossible"),
        ({"right_past": "1 1/2"}, "right_past", "impossible"),
        ({"top_past": "1 1/2"}, "top_past", "impossible"),
        ({"bottom_edge": "flush", "bottom_height": "3"}, "bottom_height", "impossible"),
        ({"stile": "0"}, "stile", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    """A stub tenon leaves an eighth of the 1 1/2 past it, and two leave it between them: common
    practice, no source."""
    said = ask(KEY, **(CABINET | values))
    assert (None if said["ok"] else errors(said)[field]["kind"]) == kind


@pytest.mark.parametrize(
    ("values", "warned"),
    [
        ({"left_past": "1"}, "left stile leaves 1/4″ of the side’s edge showing"),
        ({"bottom_height": "5 1/4"}, "leaves 1/4″ of the case bottom’s edge showing"),
        ({}, "cover up to 3/4″ of the inside"),
    ],
)
def test_what_shows_or_is_covered_is_warned_of_first(values, warned):
    assert warned in reckon(KEY, **CABINET | values)["cautions"][0]


def test_a_given_number_of_the_drawing_opens_its_field():
    said = reckon(
        KEY,
        **CABINET,
        bays="given",
        widths=["10"],
        rows="given",
        heights=["5"],
        stiles_run="floor",
        stile="2",
    )
    opened = {
        shape["text"]: shape["field"]
        for shape in said["drawing"]["shapes"]
        if shape.get("field") and shape["kind"] == "dimension"
    }
    assert opened == {
        "36″": "width",
        "34 1/2″": "height",
        "10″": "widths",
        "5″": "heights",
        "3 1/2″": "kick",
    }
    notes = [
        shape for shape in said["drawing"]["shapes"] if shape.get("text") == "stiles and rails 2″"
    ]
    assert [note["field"] for note in notes] == ["stile"]
