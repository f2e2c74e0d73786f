"""Doors of solid wood in a dry season, and what a lip's rabbet leaves of a door, by hand.

Northern red oak, flat sawn: shrinkage of 8.6 % (Wood Handbook, Table 4-3) is .086/30 ÷ (1 − 20 ×
.086/30) = .003041 of the width for each 1 %. The rest is arithmetic, or common practice, no source.
"""

import pytest
from asking import ask, errors, reckon

OAK = {"species": "oak_northern_red", "now": "6", "year": "own", "low": "6", "high": "11"}
DOOR = {"width": "18 3/4", "height": "30"}
SLAB = DOOR | {"made": "solid"} | OAK
PANELED = DOOR | {"made": "wood"} | OAK


def warned(values, words):
    return [each for each in reckon("doors", **values)["cautions"] if words in each]


def test_a_lipped_slab_that_shrinks_out_of_its_lap_is_warned_of_first():
    """18 3/4 + 1/2 is 19 1/4 at its wettest, ÷ 1.0152 = 18.961, cut 18 15/16: hung with its lap of
    1/4 at the hinges it ends 18 3/4 − (18 15/16 − 1/4) = 1/16 short of covering the opening."""
    said = reckon("doors", **SLAB, fit="lipped")
    assert "stops 1/16″ short of covering the opening" in said["cautions"][0]
    assert said["fixes"] == [{"label": "A wider lip", "field": "lip"}]
    half = reckon("doors", **SLAB, fit="half")
    assert "laps the case by only 0″" in half["cautions"][0]


def test_a_slab_that_is_cut_at_its_wettest_is_judged_at_its_driest():
    """Cut 19 1/4 at 11 %, it shrinks by 5 × .003041 × 19 1/4 = .2927, 3/64 more than its lip."""
    said = reckon("doors", **SLAB | {"now": "11"}, fit="lipped")
    assert "stops ≈ 3/64″ short" in said["cautions"][0]


def test_where_enough_of_a_lap_is_left_nothing_is_said_of_it():
    """A lap of 1/2 keeps about 3/16; a pair shrinks between its doors; plywood stays."""
    for values in (
        SLAB | {"fit": "overlay"},
        SLAB | {"fit": "lipped", "doors": "2"},
        SLAB | {"fit": "inset"},
        DOOR | {"fit": "lipped"},
    ):
        assert not warned(values, "At its driest")


@pytest.mark.parametrize(
    ("values", "said"),
    [
        ({"fit": "lipped", "lip": "0"}, "laps the case by only 0″ at its left, right, bottom and"),
        ({"fit": "full", "reveal": "11/16"}, "laps the case by only 1/16″ at its left, right"),
        ({"fit": "overlay", "left_lap": "0"}, "laps the case by only 0″ at its left edge."),
    ],
)
def test_a_door_that_hardly_laps_its_case_is_warned_of(values, said):
    """An eighth at the least (common practice, no source)."""
    assert said in reckon("doors", **DOOR | values)["cautions"][0]


@pytest.mark.parametrize("lap", ["1/8", "3 mm"])
def test_a_lap_of_an_eighth_is_enough(lap):
    assert not warned(DOOR | {"fit": "overlay", "lap": lap}, "laps the case")


def test_a_frame_that_swells_by_half_its_gaps_is_told():
    """Two stiles of 3 swell by 6 × 5 × .003041 = .091, of gaps of 3/16 in all nearly half; two
    doors by .182, more than half of 5/16."""
    assert not warned(PANELED | {"stile": "3"}, "swell")
    (said,) = warned(PANELED | {"stile": "3", "doors": "2", "width": "36"}, "swell")
    assert "swell ≈ 3/16″" in said


def test_a_frame_that_laps_the_case_may_swell():
    wide = PANELED | {"stile": "3", "doors": "2", "width": "36", "fit": "overlay"}
    assert not warned(wide, "swell")


@pytest.mark.parametrize(
    ("values", "field", "remedy"),
    [
        ({"lip_rabbet": "2"}, "lip_rabbet", "less than 1 7/8″"),
        ({"stile": "3/4", "groove": "5/16", "lip_rabbet": "7/16"}, "lip_rabbet", "less than 7/16″"),
        ({"joint": "mortise", "tenon": "2"}, "tenon", "1 3/4″ at most"),
        ({"made": "slab", "width": "3", "lip_rabbet": "1 3/4"}, "lip_rabbet", "less than 1 3/4″"),
    ],
)
def test_a_rabbet_that_leaves_nothing_behind_the_lip_is_refused(values, field, remedy):
    """2 1/4 less a groove of 3/8 is 1 7/8; a rabbet of 3/8
    and 1/8 past it leave a tenon 1 3/4; 3/4 − 5/16 is 7/16;
    a slab of 3 1/2 has two rabbets."""
    said = ask("doors", **DOOR | {"fit": "lipped"} | values)
    assert remedy in errors(said)[field]["remedy"]


def test_what_a_rabbet_leaves_may_be_used():
    for values in ({"lip_rabbet": "1 3/4"}, {"joint": "mortise", "tenon": "1 3/4"}):
        assert ask("doors", **DOOR | {"fit": "lipped"} | values)["ok"], values


def about(name, **values):
    parts = reckon("doors", **DOOR | values)["parts"]
    return " ".join(next(part for part in parts if part["name"] == name)["about"])


def test_a_groove_that_would_show_at_an_end_is_stopped_or_filled():
    """Common practice, no source: a haunch fills it behind a tenon, a lap has it stopped."""
    assert "haunch 3/8″ long fills the groove" in about("Rail", joint="mortise")
    assert "haunch" not in about("Rail", joint="mortise", made="glass")
    assert "haunch" not in about("Middle rail", joint="mortise", middle="rail")
    assert "haunch" not in about("Rail", joint="mortise", tenon="3/8")
    assert "Mortise" not in about("Stile", joint="mortise", tenon="3/8")
    for name in ("Stile", "Rail"):
        assert "Stop it at the laps." in about(name, joint="lap")
    assert "Stop it" not in about("Stile", joint="lap", made="glass")
    assert "Stop it" not in about("Stile")


def test_a_panel_too_thick_for_a_groove_gets_a_tongue():
    """A groove of half the door's thickness leaves a quarter on each side (common practice)."""
    assert "tongue" in about("Panel", panel="1/2")
    assert "tongue" not in about("Panel", panel="3/8")
    assert "tongue" not in about("Panel", panel="1/2", hold="rabbet")


def test_banding_leaves_a_slab_to_band():
    """2 13/16 less two of 1 1/2 is less than nothing; 29/32 on each side leaves an inch."""
    narrow = {"width": "3", "height": "30", "made": "slab"}
    refused = errors(ask("doors", **narrow, banding="1 1/2"))["banding"]
    assert refused["kind"] == "impossible"
    assert refused["remedy"] == "Make it 29/32″ at most."
    assert ask("doors", **narrow, banding="29/32")["ok"]


def test_a_slab_of_mdf_has_no_grain_to_follow_and_a_rabbet_is_no_groove():
    assert "if it has one" in about("Slab", made="slab")
    assert "Grain runs up and down." in about("Slab", **OAK, made="solid")
    assert "groove" not in about("Panel", **OAK, made="wood", hold="rabbet").lower()


def test_a_half_lap_is_cut_where_a_middle_member_crosses_too():
    stile = about("Stile", joint="lap", middle="rail")
    assert "Half lap at both ends and where the middle rail crosses" in stile
    assert "middle" not in about("Rail", joint="lap", middle="rail")
    assert "where the middle stile crosses" in about("Rail", joint="lap", middle="stile")
    assert "middle" not in about("Stile", joint="lap", middle="stile")


def test_a_stub_tenon_without_a_glued_panel_is_warned_of():
    """A plywood panel glued in its groove holds such a frame (common practice, no source)."""
    for values in ({"made": "glass"}, {"made": "wood"} | OAK):
        assert warned(DOOR | {"joint": "stub"} | values, "glued plywood panel")
        assert not warned(DOOR | {"joint": "mortise"} | values, "glued plywood panel")
    assert not warned(DOOR | {"joint": "stub"}, "glued plywood panel")
