"""Drawer box: known ones by hand, what is said of each part, what doesn't go in, the drawing."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon, texts

KEY = "drawer_box"
DRAWER = {"width": "16 1/2", "height": "6", "depth": "15 1/4"}
UNDER = {"runs": "under", "inside_less": "1 5/8", "below_under": "9/16"}
ON_RUNNERS = DRAWER | {
    "runs": "wood",
    "front": "inset",
    "made": "part",
    "front_joint": "half_blind",
}
MAPLE = {"species": "maple_red", "now": "8", "year": "own", "low": "6", "high": "10"}


def parts(said):
    """(count, length, width) of every part by its key."""
    return {
        each["key"]: (each["count"], each["length"]["text"], each["width"]["text"])
        for each in said["parts"]
    }


def about(said, key):
    """What is said of a part, in one text."""
    return " ".join(next(each["about"] for each in said["parts"] if each["key"] == key))


def test_a_box_on_slides_is_an_inch_narrower_than_its_opening():
    """Common practice, no source: 1/2 in each side, slides every 2 in, joints half as deep as the
    side. By hand: 16 1/2 − 1 = 15 1/2 wide; a front between sides of 1/2 in rabbets of 1/4 is 15
    long; 6 − 1/2 − 1/4 = 5 1/4 high; a 14 in slide goes into 15 1/4 less 1/4."""
    said = reckon(KEY, **DRAWER)
    assert said["verdict"] == "Box 15 1/2″ wide, 5 1/4″ high, 14″ deep"
    assert texts(said)["slide"] == "14″"
    assert parts(said) == {
        "side": (2, "14″", "5 1/4″"),
        "front": (1, "15″", "5 1/4″"),
        "back": (1, "15″", "4 5/8″"),
        "bottom": (1, "14 15/16″", "13 3/4″"),
        "face": (1, "17 1/4″", "6 3/4″"),
    }


@pytest.mark.parametrize(
    ("joint", "front", "side"),
    [
        ("butt", "14 1/2″", "14″"),
        ("dowel", "14 1/2″", "14″"),
        ("rabbet", "15″", "14″"),
        ("dado", "15″", "14″"),
        ("box", "15 1/2″", "14″"),
        ("dovetail", "15 1/2″", "14″"),
        ("half_blind", "15 1/2″", "13 3/4″"),
    ],
)
def test_each_joint_adds_its_own_to_front_and_sides(joint, front, side):
    """By hand: inside 14 1/2; joints of 1/4 in both sides; fingers through both sides; a half-blind
    front of 1/2 keeps 1/4 in front of the sides."""
    said = reckon(KEY, **DRAWER, front_joint=joint, back_joint="butt")
    assert (texts(said)["front_length"], texts(said)["side_length"]) == (front, side)
    assert texts(said)["back_length"] == "14 1/2″"
    assert texts(said)["box_width"] == "15 1/2″"


def test_a_flush_drawer_of_solid_wood_has_its_room_for_the_damp_season():
    """Red maple, flat sawn: 0.00289 for each 1 % (Wood Handbook, FPL-GTR-190, Table 13-5, equation
    13-2). From 8 to 10 %: (6 − 1/16) ÷ 1.00578 = 5.9034, down to a 32nd at the most. The bottom:
    13 3/4 + 1/4 + 1/2 = 14 1/2, ÷ 1.00578 = 14.4167, and its front to back is across its grain."""
    said = reckon(KEY, **ON_RUNNERS, solid="both", **MAPLE)
    grown = 1 + Fraction("0.00289") * 2
    high = Fraction(said["by_key"]["box_height"]["mark"])
    assert 0 <= (6 - Fraction(1, 16)) / grown - high < Fraction(1, 32)
    deep = Fraction(said["by_key"]["bottom_depth"]["mark"])
    assert 0 <= Fraction(29, 2) / grown - deep < Fraction(1, 32)
    assert texts(said)["above"] == "1/8″"
    assert "Grain runs from side to side" in about(said, "bottom")
    assert "slotted screw" in about(said, "bottom")
    sheet = reckon(KEY, **ON_RUNNERS)
    assert texts(sheet)["box_height"] == "5 15/16″"
    assert "above" not in sheet["by_key"]


def test_a_front_that_is_part_of_the_box_takes_the_sides_in():
    """By hand: 15 1/4 − 3/4 − 1/4 = 14 1/4 behind the front; the sides go 3/4 − 1/4 = 1/2 in."""
    said = reckon(KEY, **ON_RUNNERS)
    assert texts(said)["side_length"] == "14 3/4″"
    assert texts(said)["box_depth"] == "15″"
    assert "front" not in parts(said)
    assert parts(said)["face"] == (1, "16 3/8″", "5 15/16″")
    told = about(said, "face")
    assert "Dovetail sockets 1/2″ deep and 1/2″ wide for the sides, outer edges at both" in told
    assert "Stopped groove 1/4″ wide, 1/4″ deep, 15 7/8″ long, centered" in told
    wide = reckon(KEY, **DRAWER, made="part", front_joint="dado")
    told = about(wide, "face")
    assert "Dadoes 1/2″ deep and 1/2″ wide for the sides, outer edges 7/8″ from both" in told
    assert "1″ up from the bottom edge" in told  # 3/8 up the side, 1/4 below the box, 3/8 of lap
    assert "Stop them 5/8″ and 5 7/8″ up from the bottom edge" in told  # 1/4 + 3/8, and 5 1/4 more


@pytest.mark.parametrize(
    ("values", "key", "words"),
    [
        ({}, "side", "Rabbets 1/2″ wide, 1/4″ deep in the inside face, across both ends."),
        ({"back_joint": "butt"}, "side", "Rabbet 1/2″ wide, 1/4″ deep in the inside face, across"),
        ({}, "side", "Groove 1/4″ wide, 1/4″ deep in the inside face, 3/8″ up"),
        (
            {"front_joint": "dado"},
            "side",
            "Dado 1/4″ wide, 1/4″ deep in the inside face, its front edge 1/4″ from the front end.",
        ),
        ({"front_joint": "dado"}, "front", "Tongue 1/4″ thick, 1/4″ long at both ends"),
        ({"back_joint": "dado"}, "side", "its back edge 1/2″ from the back end."),
        ({"front_joint": "box"}, "side", "lay it out in Box joint"),
        ({"front_joint": "dovetail"}, "front", "Joint 1/2″ long at both ends"),
        ({"front_joint": "half_blind"}, "side", "Tails 1/4″ long at the front end"),
        ({"front_joint": "box"}, "side", "from the top edge, on 4 5/8″ only"),
        ({"front_joint": "box"}, "side", "Cut it longer by what Box joint adds for proud pins."),
        ({"front_joint": "box"}, "front", "Cut it longer by what Box joint adds"),
        ({"front_joint": "box"}, "back", "Cut it longer by what Box joint adds"),
        ({"front_joint": "dowel"}, "side", "3 dowels 1/4″ × 1 1/4″"),
        ({"front_joint": "dowel"}, "side", "holes 3/8″ deep in the inside face, centers 1/4″ from"),
        ({"front_joint": "dowel"}, "front", "15/16″ deep in both ends"),
        ({"front_joint": "dowel", "end": "3/4", "side": "7/16"}, "side", "3 dowels 5/16″ × 1 1/2″"),
        ({"front_joint": "dowel"}, "back", "15/16″ deep in both ends"),
        ({"back": "full"}, "back", "Groove as in the sides"),
        ({"back": "full"}, "bottom", "before you close the last corner"),
        ({"made": "part", "front_joint": "butt"}, "face", "The sides butt against"),
    ],
)
def test_every_part_says_which_joints_are_cut_in_it(values, key, words):
    assert words in about(reckon(KEY, **DRAWER | values), key)


@pytest.mark.parametrize(
    ("values", "field", "words"),
    [
        ({"side_room": "2", "width": "4 1/2"}, "side_room", "but the opening is 4 1/2″ wide"),
        ({"runs": "wood", "kicker": "1", "height": "1"}, "kicker", "but the opening is 1″ high"),
        ({"box_height": "5 1/2"}, "box_height", "the opening has 5 1/4″ for it"),
        ({"groove": "1/2"}, "groove", "goes through a part that’s 1/2″ thick"),
        ({"joint_depth": "1/2"}, "joint_depth", "goes through a side that’s 1/2″ thick"),
        ({"front_joint": "half_blind", "blind": "1/2"}, "blind", "all of a front"),
        ({"made": "part", "front_joint": "box"}, "front_joint", "would show"),
        ({"slide": "16"}, "slide", "longer than its room, 15″"),
        ({"depth": "9"}, "slide", "No common slide goes into 8 3/4″"),
        ({"depth": "4", "behind": "4"}, "behind", "leave no box"),
        ({"up": "5"}, "up", "of a box 5 1/4″ high"),
        ({"front": "inset", "gap": "1/2"}, "gap", "is lower than the box"),
        ({"front": "inset", "gap": "3/8", "above": "1"}, "gap", "bottom edge of the box"),
        ({"front": "inset", "gap": "1/4", "side_room": "1/8"}, "gap", "is narrower than the box"),
        ({"made": "part", "front_joint": "half_blind"}, "front_joint", "can’t slide in"),
        (
            {"made": "part", "front_joint": "half_blind", "front": "inset"},
            "front_joint",
            "can’t slide in",
        ),
        (UNDER | {"side": "7/8"}, "inside_less", "but 1 5/8″ is all there is"),
        (UNDER | {"slide": "12", "depth_less": "12"}, "depth_less", "all of the slide"),
        (UNDER | {"below_under": "5 1/2"}, "below_under", "the opening is 6″ high"),
        ({"front_joint": "dowel", "side": "3/16", "groove": "1/8"}, "front_joint", "too thin"),
        ({"bottom_room": "1/4"}, "bottom_room", "could drop out"),
        ({"slide": "3", "end": "1 1/2"}, "slide", "leave nothing inside"),
        (
            {"solid": "bottom", "back": "full", "groove": "1/8", "bottom_room": "0", **MAPLE}
            | {"now": "12"},
            "groove",
            "At its driest",
        ),
        ({"solid": "box", "box_height": "5 1/4", **MAPLE}, "box_height", "at its wettest"),
    ],
)
def test_what_doesnt_go_in_is_refused_by_the_field_to_change(values, field, words):
    said = errors(ask(KEY, **DRAWER | values))
    assert said[field]["kind"] == "impossible"
    assert words in said[field]["message"]
    assert said[field]["remedy"]


def test_a_low_back_needs_its_grooves_open_at_the_back():
    """The bottom slides in from the back: a groove stopped there would keep it out."""
    low = " ".join(reckon(KEY, **DRAWER, back_joint="box")["cautions"])
    assert "Keep the bottom groove" not in low
    assert "Stop" not in low
    full = about(reckon(KEY, **DRAWER, front_joint="box", back="full"), "side")
    assert "from the top edge" not in full


def test_an_inset_front_has_the_clearance_of_inset_doors_or_that_of_its_box_on_runners():
    """By hand: 16 1/2 − 2 × 3/32 = 16 5/16 and 6 − 2 × 3/32 = 5 13/16; on runners the front is as
    wide as the box, 16 1/2 − 2 × 1/16 = 16 3/8."""
    said = reckon(KEY, **DRAWER, front="inset")
    assert (texts(said)["face_width"], texts(said)["face_height"]) == ("16 5/16″", "5 13/16″")
    told = texts(reckon(KEY, **DRAWER, runs="wood", front="inset"))
    assert told["face_width"] == told["box_width"] == "16 3/8″"


def test_a_box_over_its_slides_takes_off_what_their_maker_says():
    """By hand: inside 16 1/2 − 1 5/8 = 14 7/8, and two sides of 5/8 make 16 1/8; 6 − 9/16 − 1/2 =
    4 15/16 high; a slide of 15 less 3/8 is 14 5/8 deep. A front of 6 + 3/4, 9/16 below the box and
    3/8 of lap."""
    said = reckon(KEY, **DRAWER, **UNDER, side="5/8", slide="15", depth_less="3/8")
    assert said["verdict"] == "Box 16 1/8″ wide, 4 15/16″ high, 14 5/8″ deep"
    assert texts(said)["slide"] == "15″"
    assert texts(said)["face_height"] == "6 3/4″"
    whole = reckon(KEY, **DRAWER, **UNDER, made="part", front_joint="rabbet")
    assert texts(whole)["slide"] == "15″"  # every 3 in under a box (common practice, no source)
    assert "1 5/16″ up from the bottom edge" in about(whole, "face")  # 3/8 + 9/16 + 3/8


def test_a_drawer_in_millimeters_has_slides_by_fifty():
    """Common practice, no source: slides of 250 to 700 mm, 13 mm each side."""
    said = reckon(KEY, {"unit": "mm"}, width="420", height="150", depth="400")
    assert texts(said)["slide"] == "350 mm"
    assert texts(said)["box_width"] == "394 mm"


@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({}, "Get the slides before you cut."),
        ({"groove": "3/8"}, "Half the side’s thickness"),
        ({"front_joint": "box"}, "Keep the bottom groove within a pin of the sides"),
        ({"front_joint": "dovetail"}, "Keep the bottom groove within a tail of the sides"),
        ({"front_joint": "half_blind"}, "Keep the bottom groove within a tail of the sides"),
        ({"back_joint": "box", "back": "full"}, "Keep the bottom groove within a pin"),
        ({"front_joint": "butt"}, "won’t hold a butt corner"),
        ({"back_joint": "butt"}, "won’t hold a butt corner"),
        ({"made": "part", "front_joint": "butt", "back_joint": "dado"}, "won’t hold a butt"),
        (UNDER, "holes or notches in the back"),
        ({"front_joint": "dowel"}, "Set a stop before you drill the sides"),
        ({"runs": "wood"}, "No wood movement is figured in"),
        ({"solid": "bottom", **MAPLE}, "half again their species average"),
    ],
)
def test_what_may_spoil_the_drawer_is_told(values, words):
    assert any(words in each for each in reckon(KEY, **DRAWER | values)["cautions"])


def test_the_drawing_tells_the_opening_and_the_box():
    said = reckon(KEY, **DRAWER)["drawing"]
    told = {each["text"]: each.get("field") for each in said["shapes"] if "text" in each}
    assert (told["16 1/2″"], told["6″"]) == ("width", "height")
    assert {"box 15 1/2″", "5 1/4″", "box depth 14″"} <= set(told)
    assert "15 1/2″ wide and 5 1/4″ high" in said["words"]


def test_a_coarse_mark_does_not_let_the_bottom_drop_out():
    """By hand: 14 1/2 + 2 × 1/4 − 1/16 = 14 15/16; down to a half it would be 14 1/2, as wide as
    the box is inside."""
    said = reckon(KEY, {"mark": "1/2"}, **DRAWER)
    assert texts(said)["bottom_width"] == "14 15/16″"


def test_what_is_typed_off_the_marks_still_goes_in():
    said = reckon(KEY, **DRAWER | {"width": "16 1/7"}, side="12 mm")["by_key"]
    assert Fraction(said["box_width"]["mark"]) <= Fraction(113, 7) - 1
    assert exact(said["box_width"]) <= Fraction(113, 7) - 1
