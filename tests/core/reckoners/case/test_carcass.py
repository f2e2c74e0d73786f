"""What parts a case is cut from: cases worked by hand."""

import pytest
from asking import exact, reckon

from tests.core.reckoners.case.carcasses import CABINET, about, sizes


def test_a_butted_case_by_hand():
    """36 × 30 × 12 of 3/4, no back, one shelf. Between the sides: 36 − 2 × 3/4 = 34 1/2; between
    bottom and top: 30 − 2 × 3/4 = 28 1/2. All is 12 deep. Arithmetic."""
    said = reckon("carcass", **CABINET, fixed="1", joint="butt", back="none", banding="none")
    assert sizes(said) == {
        "side": (2, "30″", "12″", "3/4″"),
        "top": (1, "34 1/2″", "12″", "3/4″"),
        "bottom": (1, "34 1/2″", "12″", "3/4″"),
        "fixed": (1, "34 1/2″", "12″", "3/4″"),
    }
    assert said["verdict"] == "Sides 30″, top and bottom 34 1/2″"
    told = {key: each["text"] for key, each in said["by_key"].items() if "text" in each}
    assert told["inside_width"] == "34 1/2″"
    assert told["inside_height"] == "28 1/2″"
    assert told["inside_depth"] == told["outside_depth"] == "12″"
    assert "edging" not in told
    # One face: 2 × 30 × 12 + 3 × 34 1/2 × 12 = 720 + 1242 = 1962 in², 13.625 ft²; both 27.25.
    assert told["sheets"] == "3/4″ thick: 13.6 ft²"
    assert told["finish"] == "27.2 ft²"
    # 13.625 ft² × 1/16 ft = .8516 ft³, at 34 lb for plywood (common practice, no source) 28.95 lb.
    assert told["weight"] == "29 lb (13.1 kg)"
    assert about(said, "side") == [
        "Grain runs up, along the length.",
        "Bottom: flush with the bottom end.",
        "Top: flush with the top end.",
        "Fixed shelf: its lower face 14 5/8″ from the bottom end.",
        "Left and right are mirror images.",
    ]


def test_a_dadoed_case_with_a_rabbeted_back_and_a_notched_kick_by_hand():
    """36 × 30 × 12 of 3/4; joints 1/4, back 1/4 in rabbets 3/8 deep, kick 3 1/2 high, recess 3.

    Inside 34 1/2 wide, 30 − 3 1/2 − 1 1/2 = 25 high, 12 − 1/4 = 11 3/4 deep. Bottom, top and shelf
    are 34 1/2 + 2 × 1/4 = 35 long. The back goes from the underside of the bottom to the top, 30 −
    3 1/2 = 26 1/2, and is 34 1/2 + 2 × 3/8 = 35 1/4 wide, each less 1/16 of room: 26 7/16 and
    35 3/16.
    """
    said = reckon("carcass", **CABINET, fixed="1", kick="notched")
    assert sizes(said) == {
        "side": (2, "30″", "12″", "3/4″"),
        "top": (1, "35″", "11 3/4″", "3/4″"),
        "bottom": (1, "35″", "11 3/4″", "3/4″"),
        "fixed": (1, "35″", "11 3/4″", "3/4″"),
        "back": (1, "26 7/16″", "35 3/16″", "1/4″"),
        "kick": (1, "34 1/2″", "3 1/2″", "3/4″"),
    }
    assert about(said, "side") == [
        "Grain runs up, along the length.",
        "Edging on the front edge.",
        "Notch 3 1/2″ high, 3″ deep in the bottom front corner, for the toe kick.",
        "Dado 3/4″ wide, 1/4″ deep in the inside face, bottom edge 3 1/2″ from the bottom end, for "
        "the bottom.",
        "Rabbet 3/4″ wide, 1/4″ deep in the inside face, across the top end, for the top.",
        "Dado 3/4″ wide, 1/4″ deep in the inside face, bottom edge 16 3/8″ from the bottom end, "
        "for a fixed shelf.",
        "Rabbet 1/4″ wide, 3/8″ deep in the inside face, along the back edge, for the back.",
        "Left and right are mirror images.",
    ]
    # Edging: sides 2 × 26 1/2, top and bottom 2 × 34 1/2 between them, the shelf 35 with what is
    # in its dadoes: 53 + 69 + 35 = 157, and a tenth: 172.7, up to 172 3/4.
    assert said["by_key"]["edging"]["text"] == "172 3/4″"


def test_a_case_with_two_dividers_by_hand():
    """38 × 32 × 14 of 3/4, top over the sides, back on the back, joints 1/4; bays 10, 12, the rest.

    Inside 36 1/2; bays 10 + 12 + (36 1/2 − 2 × 3/4 − 22 = 13). Sides 32 − 3/4 + 1/4 = 31 1/2 go
    1/4 into the top. Dividers 30 1/2 + 2 × 1/4 = 31. In the bottom, 37 long, they are 1/4 + 10 =
    10 1/4 and 10 1/4 + 3/4 + 12 = 23 from its left end; in the top, 38 long, 10 3/4 and 23 1/2.
    """
    case = {"width": "38", "height": "32", "depth": "14", "thickness": "3/4"}
    more = {"dividers": "2", "bay_widths": ["10", "12"], "fixed": "2", "adjustable": "1"}
    said = reckon("carcass", **case, **more, top="over", back="on")
    assert sizes(said) == {
        "side": (2, "31 1/2″", "13 3/4″", "3/4″"),
        "top": (1, "38″", "13 3/4″", "3/4″"),
        "bottom": (1, "37″", "13 3/4″", "3/4″"),
        "divider": (2, "31″", "13 3/4″", "3/4″"),
        "fixed_1": (2, "10 1/2″", "13 3/4″", "3/4″"),
        "fixed_2": (2, "12 1/2″", "13 3/4″", "3/4″"),
        "fixed_3": (2, "13 1/2″", "13 3/4″", "3/4″"),
        "adjustable_1": (1, "9 7/8″", "13 3/4″", "3/4″"),
        "adjustable_2": (1, "11 7/8″", "13 3/4″", "3/4″"),
        "adjustable_3": (1, "12 7/8″", "13 3/4″", "3/4″"),
        "back": (1, "32″", "38″", "1/4″"),
    }
    assert [each["text"] for each in said["by_key"]["bays"]["items"]] == ["10″", "12″", "13″"]
    assert [line.split(", ")[2] for line in about(said, "bottom") if "divider" in line] == [
        "left edge 10 1/4″ from the left end",
        "left edge 23″ from the left end",
    ]
    assert [line.split(", ")[2] for line in about(said, "top") if "divider" in line] == [
        "left edge 10 3/4″ from the left end",
        "left edge 23 1/2″ from the left end",
    ]
    assert "bottom edges 9 15/16″ and 20 5/16″ from the bottom" in " ".join(about(said, "divider"))
    assert "in both faces" in " ".join(about(said, "divider"))


def test_a_back_in_a_groove_leaves_its_setback_behind_it():
    """12 deep, back 1/4, 1/2 behind it: 11 1/4 inside; 34 1/2 + 2 × 1/4 = 35 wide, 28 1/2 + 1/2 =
    29 high, each less 1/16 of room; a shelf ends at its front, sides, top and bottom go on."""
    said = reckon("carcass", **CABINET, fixed="1", back="groove")
    told = sizes(said)
    assert told["back"] == (1, "28 15/16″", "34 15/16″", "1/4″")
    assert told["fixed"][2] == "11 1/4″"
    assert {told[key][2] for key in ("side", "top", "bottom")} == {"12″"}
    groove = (
        "Groove 1/4″ wide, 1/4″ deep in the inside face, 1/2″ from the back edge, for the back."
    )
    assert groove in about(said, "side")


def test_a_back_has_the_room_around_it_that_one_gives_it():
    """In all, each way: 35 less 1/8 and less nothing. One that is on the back needs none."""
    for room, size in {"1/8": ("28 7/8″", "34 7/8″"), "0": ("29″", "35″")}.items():
        said = reckon("carcass", **CABINET, back="groove", back_room=room)
        assert sizes(said)["back"] == (1, *size, "1/4″")
    assert sizes(reckon("carcass", **CABINET, back="on"))["back"] == (1, "30″", "36″", "1/4″")


def test_solid_edging_is_part_of_the_size_and_tape_is_not():
    """Strips 3/4 thick: sides 12 − 3/4 = 11 1/4, shelves 12 − 1/4 − 3/4 = 11. Arithmetic."""
    tape, solid = (reckon("carcass", **CABINET, fixed="1", band=band) for band in ("0", "3/4"))
    assert (sizes(tape)["side"][2], sizes(tape)["fixed"][2]) == ("12″", "11 3/4″")
    assert (sizes(solid)["side"][2], sizes(solid)["fixed"][2]) == ("11 1/4″", "11″")
    assert solid["by_key"]["inside_depth"]["text"] == "11 3/4″"
    said = "Edging 3/4″ thick on the front edge, already taken off the width."
    assert said in about(solid, "fixed")


def test_a_shelf_behind_a_door_has_a_stopped_dado():
    said = reckon("carcass", **CABINET, fixed="1", setback="1")
    assert sizes(said)["fixed"][2] == "10 3/4″"
    assert any(
        "stopped 1″ from the front edge, for a fixed" in line for line in about(said, "side")
    )


@pytest.mark.parametrize(("width", "pieces"), [("36", 2), ("36 1/8", 3)])
def test_a_separate_base_has_a_crosspiece_in_the_center_past_36(width, pieces):
    """Common practice, no source. 12 deep, recess 3, two rails of 3/4: 12 − 3 − 1 1/2 = 7 1/2; the
    sides stand on it, 30 − 3 1/2 = 26 1/2."""
    said = reckon("carcass", **CABINET | {"width": width}, kick="base")
    told = sizes(said)
    assert told["base_crosspiece"] == (pieces, "7 1/2″", "3 1/2″", "3/4″")
    assert told["base_rail"] == (2, f"{width}″", "3 1/2″", "3/4″")
    assert told["side"][1] == "26 1/2″"


def test_a_size_may_be_known_inside_and_each_by_itself():
    """Records want 13 inside: 13 + 1/4 of the back; 34 1/2 inside is 36. Arithmetic."""
    inside = {"width": "34 1/2", "height": "28 1/2", "depth": "11 3/4", "thickness": "3/4"}
    outside = reckon("carcass", **CABINET)
    said = reckon("carcass", **inside, known="inside")
    assert sizes(said) == sizes(outside)
    each = {"known": "each", "width_is": "outside", "height_is": "inside", "depth_is": "inside"}
    mixed = reckon("carcass", **CABINET | {"height": "28 1/2", "depth": "13"}, **each)
    assert exact(mixed["by_key"]["outside_height"]) == 30
    assert mixed["by_key"]["outside_depth"]["text"] == "13 1/4″"


def test_equal_bays_that_miss_the_marks_are_what_the_dividers_leave_on_marks():
    """35 − 4 × 3/4 = 32, in 3 bays: 10 2/3. Dividers at 10 2/3 and 22 1/12, marked 10 11/16 and
    22 1/16; 22 1/16 − 10 11/16 − 3/4 = 10 5/8; 33 1/2 − 22 1/16 − 3/4 = 10 11/16. Arithmetic."""
    said = reckon("carcass", **CABINET | {"width": "35"}, dividers="2")
    bays = [each["text"] for each in said["by_key"]["bays"]["items"]]
    assert bays == ["10 11/16″", "10 5/8″", "10 11/16″"]
    assert said["by_key"]["bay"]["text"] == "10 5/8″"
    working = [line["text"] for line in said["working"]]
    assert "Across: 3/4 + 10 11/16 + 3/4 + 10 5/8 + 3/4 + 10 11/16 + 3/4 = 35" in working
    assert "Divider 2, from the left side: 2 × 10 2/3 + 3/4 = 22 1/12 → 22 1/16″" in working
    assert "Bay 2: 22 1/16 − 10 11/16 − 3/4 = 10 5/8" in working
    assert "Last bay: 33 1/2 − 22 1/16 − 3/4 = 10 11/16" in working


def test_a_shelf_for_bays_that_differ_says_that_it_is_cut_for_the_narrowest():
    line = "Cut for the narrowest of its bays: all are alike."
    said = reckon("carcass", **CABINET | {"width": "35"}, dividers="2", fixed="1", adjustable="1")
    assert line in about(said, "fixed")
    assert line in about(said, "adjustable")
    even = reckon("carcass", **CABINET, dividers="2", fixed="1")
    assert line not in about(even, "fixed")


def test_metric_bays_lie_on_millimeters():
    """905 of 18: 869 − 36 = 833, in 3: 277 2/3. Dividers at 277 2/3 and 573 1/3, marked 278 and
    573: bays of 278, 573 − 278 − 18 = 277 and 869 − 573 − 18 = 278; shelves 277 + 2 × 6 = 289."""
    case = {"width": "905", "height": "720", "depth": "350", "dividers": "2", "fixed": "1"}
    said = reckon("carcass", {"unit": "mm"}, **case)
    bays = [each["text"] for each in said["by_key"]["bays"]["items"]]
    assert bays == ["278 mm", "277 mm", "278 mm"]
    assert sizes(said)["fixed"][:2] == (3, "289 mm")


def test_a_metric_case_starts_with_metric_stock():
    """900 × 720 × 350 of 18: inside 864; joints 6: 876; back 6 in 9: 882 × 720, each
    less 1 of room; 344 deep."""
    said = reckon("carcass", {"unit": "mm"}, width="900", height="720", depth="350", fixed="1")
    assert sizes(said) == {
        "side": (2, "720 mm", "350 mm", "18 mm"),
        "top": (1, "876 mm", "344 mm", "18 mm"),
        "bottom": (1, "876 mm", "344 mm", "18 mm"),
        "fixed": (1, "876 mm", "344 mm", "18 mm"),
        "back": (1, "719 mm", "881 mm", "6 mm"),
    }
    # Faces: 2 × 720 × 350 + 3 × 876 × 344 = 504,000 + 904,032 mm²; 719 × 881 = 633,439.
    assert said["by_key"]["sheets"]["text"] == "18 mm thick: 1.41 m²; 6 mm thick: 0.63 m²"
    assert said["by_key"]["weight"]["text"].endswith(" kg")


def test_strips_of_solid_edging_weigh_as_much_as_what_is_taken_off_for_them():
    """Boards butted all the way to the front: 3/4 of each is cut off and comes back as a strip, so
    29 lb as without any. Proud, 2 × 30 + 3 × 34 1/2 = 163 1/2 of 3/4 × 3/4 is more: 91.97 in³,
    .0532 ft³, at 34 lb (common practice, no source) 1.81 lb on 28.95."""
    plain = CABINET | {"fixed": "1", "joint": "butt", "back": "none", "band": "3/4"}
    weights = [
        reckon("carcass", **plain | more)["by_key"]["weight"]["text"]
        for more in ({"banding": "none"}, {}, {"solid_edging": "proud"}, {"band": "0"})
    ]
    assert weights == ["29 lb (13.1 kg)", "29 lb (13.1 kg)", "30.8 lb (14 kg)", "29 lb (13.1 kg)"]


def test_a_material_of_their_own_without_a_weight_leaves_only_the_weight_out():
    own = {"materials": [{"name": "Salvaged shelving", "stiffness": "1.3"}]}
    said = reckon("carcass", own, **CABINET, material="own: Salvaged shelving")
    assert sizes(said) == sizes(reckon("carcass", **CABINET))
    assert "weight" not in said["by_key"]
    assert "There’s no weight on file for Salvaged shelving" in said["cautions"][0]


def test_what_goes_in_is_rounded_down_and_what_agrees_is_not():
    """A gap of 1/7 on each side of an adjustable shelf in 34 1/2: 34 3/14, down to 34 3/16."""
    said = reckon("carcass", **CABINET, adjustable="1", gap="1/7")
    (shelf,) = said["by_key"]["adjustable"]["items"]
    assert shelf["text"] == "34 3/16″"
    assert shelf["why"] == "rounded down so it fits"
    part = next(each for each in said["parts"] if each["key"] == "adjustable")
    assert part["length"]["mark"] == shelf["mark"]
