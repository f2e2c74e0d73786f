"""Doors by hand, of each fit, joint and panel, and how they are drawn.

Where no other source is named the numbers are arithmetic on common practice, no source.
"""

from fractions import Fraction

import pytest
from asking import ask, exact, reckon
from projects import acts, begun, view

from sawside.reckoners import RECKONERS
from tests.core.reckoners.doors.opening import OPENING, SOLID


def sizes(said):
    """(count, length, width) of each part by its name, as told."""
    return {
        part["name"]: (part["count"], part["length"]["text"], part["width"]["text"])
        for part in said["parts"]
    }


def items(said, key):
    """The lengths of an answer by their labels."""
    answer = said["by_key"][key]
    return {each["label"]: exact(each) for each in answer["items"]}


def test_an_inset_pair_by_hand():
    """30 less 3/32, 1/8 and 3/32 is 29 11/16: each door 14 27/32. Rails: less two stiles of 2 1/4,
    more two tongues of 3/8: 11 3/32. Panel: 10 11/32 + 2 × (3/8 − 1/32) = 11 1/32."""
    said = reckon("doors", **OPENING, doors="2")
    assert said["verdict"] == "Door width (23 13/16″ high, 2 doors)"
    assert said["by_key"]["width"]["text"] == "14 27/32″"
    assert sizes(said) == {
        "Stile": (4, "23 13/16″", "2 1/4″"),
        "Rail": (4, "11 3/32″", "2 1/4″"),
        "Panel": (2, "20″", "11 1/32″"),
    }
    gaps = items(said, "gaps")
    assert gaps == {
        "Left": Fraction(3, 32),
        "Between": Fraction(1, 8),
        "Right": Fraction(3, 32),
        "Bottom": Fraction(3, 32),
        "Top": Fraction(3, 32),
    }


@pytest.mark.parametrize(
    ("values", "width"),
    [
        ({"fit": "overlay", "lap": "3/8"}, "30 3/4″"),  # opening + 2 × overlay
        ({"fit": "overlay", "lap": "1/2"}, "31″"),
        ({"fit": "lipped"}, "30 1/2″"),  # a 3/8 rabbet: opening + 1/2
        ({"fit": "full"}, "31 3/8″"),  # 3/4 sides, 1/16 shown on each
        ({"fit": "half"}, "30 5/8″"),  # 3/4 shared with a neighbor 1/8 away: 5/16 on each
        ({"fit": "full", "right_lap": "5/16"}, "31″"),  # full at the left, half at the right
    ],
)
def test_doors_that_lap_the_case_are_as_the_trade_makes_them(values, width):
    """Common practice, no source: door = opening + 2 × overlay; a lip of 1/4 with a 3/8 rabbet."""
    assert reckon("doors", **OPENING, **values)["by_key"]["width"]["text"] == width


def test_a_lipped_door_has_an_eighth_of_room_behind_its_lip():
    """3/8 rabbet less 1/4 lip, on each side: common practice, no source."""
    said = reckon("doors", **OPENING, fit="lipped")
    assert exact(said["by_key"]["lip_gap"]) == Fraction(1, 8)


def test_three_doors_that_do_not_divide_on_marks_add_up_with_their_gaps():
    """30 less 2 × 3/32 and 2 × 1/8 is 29 9/16, a third of it 9.854: cut 9 27/32 (9.844), and the
    1/32 that is left goes between them, a 64th to each gap."""
    said = reckon("doors", **OPENING, doors="3")
    assert said["by_key"]["width"]["text"] == "9 27/32″"
    gaps = items(said, "gaps")
    assert gaps["Between 1 and 2"] == gaps["Between 2 and 3"] == Fraction(9, 64)
    across = [gap for name, gap in gaps.items() if name not in ("Bottom", "Top")]
    assert 3 * Fraction(315, 32) + sum(across) == 30


@pytest.mark.parametrize(
    ("joint", "rail", "stile"),
    [
        ({"joint": "cope"}, "26 1/16″", "23 13/16″"),
        ({"joint": "stub", "tongue": "1/4"}, "25 13/16″", "23 13/16″"),
        ({"joint": "mortise"}, "27 13/16″", "23 13/16″"),
        ({"joint": "miter"}, "29 13/16″", "23 13/16″"),
        ({"joint": "lap"}, "29 13/16″", "23 13/16″"),
    ],
)
def test_each_joint_adds_to_the_rails_what_it_takes(joint, rail, stile):
    """29 13/16 less 4 1/2 is 25 5/16 between shoulders; two tongues of 3/8 or 1/4, two tenons of
    1 1/4, or the whole width."""
    told = sizes(reckon("doors", **OPENING, **joint))
    assert told["Rail"][1] == rail
    assert told["Stile"][1] == stile


def test_a_mitered_door_has_its_miters_in_the_cut_list():
    (stile, *_) = reckon("doors", **OPENING, joint="miter")["parts"]
    assert stile["ends"]["left"] == {"cut": "miter", "angle": "45°", "at_the_saw": ["45°"]}
    assert stile["short_side"]["text"] == "19 5/16″"


def test_a_solid_panel_moves_across_its_grain_only():
    """Red maple, flat sawn, moves .00289 of its width for each 1 % (Wood Handbook, Table 13-5):
    from 8 to 12 % it grows 1.16 %. Room 25 5/16 + 2 × (3/8 − 1/32) = 26 less nothing along, and
    ÷ 1.01156 = 25.703 across: cut 25 11/16."""
    said = reckon("doors", **OPENING, made="wood", **SOLID)
    assert sizes(said)["Panel"] == (1, "20″", "25 11/16″")
    turned = reckon("doors", **OPENING, made="wood", grain="across", **SOLID)
    assert sizes(turned)["Panel"] == (1, "26″", "19 3/4″")


def test_a_solid_inset_slab_gets_its_gap_by_the_season_it_is_fitted_in():
    """29 13/16 at its wettest ÷ (1 + 4 × .00289) = 29.472 at 8 %: cut 29 15/32. Fitted at 12 % it
    is 29 13/16 and only shrinks (Wood Handbook, equation 13-2)."""
    dry = reckon("doors", **OPENING, made="solid", **SOLID)
    assert dry["by_key"]["width"]["text"] == "29 15/32″"
    assert items(dry, "gaps")["Right"] == 30 - Fraction(943, 32) - Fraction(3, 32)
    wet = reckon("doors", **OPENING, made="solid", **SOLID | {"now": "12"})
    assert wet["by_key"]["width"]["text"] == "29 13/16″"


def test_edge_banding_is_part_of_a_slab_doors_size():
    said = reckon("doors", **OPENING, made="slab", banding="1/32")
    assert sizes(said) == {"Slab": (1, "23 3/4″", "29 3/4″")}


def test_what_is_trimmed_to_fit_is_on_every_edge_of_the_glued_up_door():
    said = reckon("doors", **OPENING, trim="1/16")
    assert sizes(said)["Stile"] == (2, "23 15/16″", "2 5/16″")
    assert sizes(said)["Rail"] == (2, "26 1/16″", "2 5/16″")
    assert items(said, "rough") == {"Width": Fraction(479, 16), "Height": Fraction(383, 16)}


def test_glass_has_its_clearance_its_cautions_and_no_saw():
    """25 5/16 + 2 × (3/8 − 1/16)."""
    said = reckon("doors", **OPENING, made="glass")
    assert sizes(said)["Glass"] == (1, "19 15/16″", "25 15/16″")
    text = " ".join(said["cautions"])
    assert "safety glass" in text
    assert "gloves" in text


def about(said, name):
    """What is said of a part."""
    return " ".join(next(part for part in said["parts"] if part["name"] == name)["about"])


def test_a_rabbet_that_runs_past_a_joint_says_what_fills_it():
    """Long and short shoulders, or a rabbet routed after glue-up (common practice, no source)."""
    glass = OPENING | {"made": "glass"}
    assert "back shoulders 3/8″ longer" in about(reckon("doors", **glass, joint="mortise"), "Rail")
    assert "after glue-up" in about(reckon("doors", **glass, joint="lap"), "Stile")
    assert "back lip" in about(reckon("doors", **glass, joint="cope"), "Stile")
    assert "Rabbet" not in about(reckon("doors", **OPENING, joint="mortise"), "Rail")


def test_each_part_says_its_joint_and_what_is_cut_in_it():
    said = reckon("doors", **OPENING, fit="lipped", joint="mortise")
    assert "Mortises 1 1/4″ deep" in about(said, "Stile")
    assert "Tenon 1 1/4″ long at both ends." in about(said, "Rail")
    assert "Lip: rabbet 3/8″ wide" in about(said, "Rail")
    assert "Mitered at both ends." in about(reckon("doors", **OPENING, joint="miter"), "Rail")
    banded = reckon("doors", **OPENING, made="slab", banding="1/32", trim="1/16")
    assert "Band all four edges, 1/32″ thick." in about(banded, "Slab")
    assert "1/16″ to trim off each edge." in about(banded, "Slab")


def test_a_coped_rail_is_never_routed_freehand():
    assert any("backer block" in each for each in reckon("doors", **OPENING)["cautions"])


def test_a_middle_rail_makes_two_openings_alike():
    """23 13/16 − 4 1/2 − 2 1/4 is 17 1/16, half of it 8 17/32, + 2 × 11/32 = 9 7/32."""
    told = sizes(reckon("doors", **OPENING, middle="rail"))
    assert told["Middle rail"] == (1, "26 1/16″", "2 1/4″")
    assert told["Panel"] == (2, "9 7/32″", "26″")


def test_a_door_that_is_there_tells_the_opening_it_wants():
    """Doors of 14 1/2 × 20: inset 2 × 14 1/2 + 2 × 3/32 + 1/8; lipped 1/4 less on each side."""
    door = {"known": "door", "width": "14 1/2", "height": "20", "doors": "2"}
    inset = reckon("doors", **door)
    assert inset["verdict"] == "Opening width (20 3/16″ high, 2 doors)"
    assert inset["by_key"]["opening_width"]["text"] == "29 5/16″"
    assert "width" not in inset["by_key"]
    lipped = reckon("doors", **door, fit="lipped")["by_key"]
    assert lipped["opening_width"]["text"] == "28 5/8″"
    assert lipped["opening_height"]["text"] == "19 1/2″"


def test_an_opening_wanted_is_rounded_up_and_its_doors_go_in():
    door = {"known": "door", "width": "380 mm", "height": "508 mm"}
    said = reckon("doors", {"mark": "1/16"}, **door)
    assert exact(said["by_key"]["opening_width"]) >= Fraction(380 * 5, 127) + Fraction(3, 16)
    assert said["by_key"]["opening_width"]["why"] == "rounded up so it’s enough"


def test_an_opening_of_a_face_frame_is_taken_by_its_name():
    """36 − 2 × 1 1/2 = 33 wide, 30 − 3 high: a pair of (33 − 5/16) ÷ 2."""
    document = acts(
        begun(),
        (
            "keep_line",
            {
                "name": "Face frame",
                "reckoner": "face_frame",
                "values": {"size_of": "frame", "width": "36", "height": "30"},
            },
        ),
        (
            "keep_line",
            {
                "name": "Doors",
                "reckoner": "doors",
                "values": {
                    "width": "[Face frame: Opening width 1]",
                    "height": "[Face frame: Opening height 1]",
                    "doors": "2",
                },
            },
        ),
    )
    told = view(document)["entries"][1]["headline"]
    assert exact(told) == (33 - Fraction(5, 16)) / 2


def test_the_drawing_has_every_member_at_its_size_and_opens_its_fields():
    """Two doors of four members each over a panel, in their opening."""
    drawing = reckon("doors", **OPENING, doors="2")["drawing"]
    stock = [shape for shape in drawing["shapes"] if shape.get("role") == "stock"]
    assert len(stock) == 8
    xs = sorted({x for shape in stock for x, _ in shape["points"]})
    assert xs[0] == pytest.approx(3 / 32, abs=1e-3)
    assert xs[-1] == pytest.approx(30 - 3 / 32, abs=1e-3)
    fields = {shape.get("field") for shape in drawing["shapes"] if shape["kind"] == "dimension"}
    assert fields == {"width", "height", None}


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_every_made_and_joint_is_answered_in_inches_and_millimeters(unit):
    choices = {
        field.key: [choice.value for choice in field.choices]
        for field in RECKONERS["doors"].fields
        if field.kind == "choice"
    }
    size = {"width": "800 mm", "height": "600 mm"}
    for made in choices["made"]:
        for joint in choices["joint"]:
            for fit in choices["fit"]:
                values = size | {"made": made, "joint": joint, "fit": fit} | SOLID
                assert ask("doors", {"unit": unit}, **values)["ok"], values
