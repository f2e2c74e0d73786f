"""Box joints and dovetails: known ones by hand, what can't be cut, the drawings."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, reckon

BOX = {"height": "5", "thickness": "1/2", "pin": "1/4"}
TAILS = {"height": "5", "tails": "3", "pin_board": "3/4", "tail_board": "1/2"}


def items(said, key):
    """The texts of an answer that is a list."""
    return [each["text"] for each in said["by_key"][key]["items"]]


@pytest.mark.parametrize(
    ("count", "high", "first"),
    [
        ("any", "5″", "Sides: 10 pins; front and back: 10"),
        ("odd", "4 3/4″", "Sides: 10 pins; front and back: 9"),
        ("even", "5″", "Sides: 10 pins; front and back: 10"),
    ],
)
def test_a_board_is_ripped_to_whole_pins(count, high, first):
    """By hand: 5 ÷ 1/4 = 20; the odd number below it is 19, 19 × 1/4 = 4 3/4."""
    said = reckon("box_joint", **BOX, count=count)["by_key"]
    assert (said["height"]["text"], said["first"]["text"]) == (high, first)
    assert said["side_slots"]["text"] == "17/32″"


def test_pins_fill_a_board_that_keeps_its_width():
    """By hand: 5 ÷ 21 = 0.2381 is nearer to 1/4 than 5 ÷ 19 = 0.2632."""
    said = reckon("box_joint", **BOX, gives="pin", count="odd", other="3/4", starts="ends")
    told = said["by_key"]
    assert exact(told["pin"]) == Fraction(5, 21)
    assert told["pin"]["text"] == "0.238″"
    assert told["first"]["text"] == "Front and back: 11 pins; sides: 10"
    assert (told["side_slots"]["text"], told["end_slots"]["text"]) == ("25/32″", "17/32″")
    assert "height" not in told
    assert said["verdict"] == "21 pins, ≈ 0.238″ wide each"


@pytest.mark.parametrize(
    ("values", "drift", "least"), [({}, "5/32″", "0.0031″"), ({"pin": "3/8"}, "3/32″", "0.0052″")]
)
def test_a_setting_error_adds_up_over_the_pins_of_one_board(values, drift, least):
    """By hand: the jig spaces the cuts of one board, and a slot is as wide as the cutter. Of 20
    only 10 are that board's pins: 10 × 1/64 = 5/32, and to end within 1/32 each has to be within
    1/320 = 0.0031. Of 13 its last line has 6 pins before it: 6/64, and 1/192 = 0.0052."""
    said = reckon("box_joint", **BOX | values)
    assert said["by_key"]["drift"]["text"] == drift
    assert f"set the jig to ≈ {least} or better" in said["cautions"][0]


def test_boards_whose_pins_stay_proud_are_cut_longer():
    """By hand: 17/32 is cut at both ends where the drawer box counts on 1/2, so each board needs
    2 × 1/32 = 1/16 more, or the box and the grooves for its bottom come out 1/16 too small."""
    said = reckon("box_joint", **BOX)
    assert said["by_key"]["extra"]["text"] == "1/16″"
    assert "extra" not in reckon("box_joint", **BOX, proud="0")["by_key"]


@pytest.mark.parametrize(
    ("values", "place"),
    [
        ({}, "1/2″ to 3/4″"),
        ({"starts": "ends"}, "1/4″ to 1/2″"),
        ({"pin": "3/8"}, "3/4″ to 1 1/8″"),
        ({"pin": "3/8", "starts": "ends"}, "3/8″ to 3/4″"),
        ({"gives": "pin", "count": "odd"}, "≈ 31/64″ to ≈ 45/64″"),
    ],
)
def test_a_bottom_groove_hides_in_a_pin_of_the_sides(values, place):
    """Common practice, no source. By hand: sides that begin with a pin have their next one from 2
    to 3 pin widths, others from 1 to 2; 2 × 5/21 = 0.476 and 3 × 5/21 = 0.714, told inward."""
    told = reckon("box_joint", **BOX | values)["by_key"]["hidden"]["text"]
    assert told.startswith(f"{place} from the reference edge")


def test_two_pins_have_no_place_to_hide_a_groove():
    assert "hidden" not in reckon("box_joint", height="1", pin="1/2")["by_key"]


@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({"pin": "3"}, "no room for two pins 3″ wide"),
        ({"height": "1", "pin": "1/2", "count": "odd"}, "needs three"),
        ({"height": "48", "pin": "1/32"}, "That makes 1536 pins."),
        ({"height": "5", "pin": "5/2", "count": "odd"}, "needs three"),
    ],
)
def test_pins_that_dont_come_out_are_refused(values, words):
    said = errors(ask("box_joint", **BOX | values))
    assert words in said["pin"]["message"]
    assert said["pin"]["remedy"]


def test_the_drawing_of_a_box_joint_opens_the_pin():
    shapes = reckon("box_joint", **BOX)["drawing"]["shapes"]
    told = {each["text"]: each.get("field") for each in shapes if "text" in each}
    assert told["1/4″"] == "pin"
    assert {"side", "front", "deep 17/32″"} <= set(told)


def test_three_half_blind_tails_as_by_hand():
    """By hand: 3/4 − 1/4 = 1/2 long; (5 − 4 × 1/4) ÷ 3 = 1 1/3; 1/2 ÷ 8 = 1/16 in at each side."""
    said = reckon("dovetail_layout", **TAILS, kind="blind")
    told = said["by_key"]
    assert exact(told["tail"]) == Fraction(4, 3)
    assert told["wide_pin"]["text"] == "3/8″"
    assert (told["tail_line"]["text"], told["pin_line"]["text"]) == ("1/2″", "1/2″")
    ends = [exact(each) for each in told["at_end"]["items"]]
    assert ends[:2] == [Fraction(1, 4), Fraction(19, 12)]
    assert ends[-1] == 5 - Fraction(1, 4)
    shoulder = [exact(each) for each in told["at_shoulder"]["items"]]
    assert shoulder[0] - ends[0] == ends[1] - shoulder[1] == Fraction(1, 16)


@pytest.mark.parametrize(("slope", "angle"), [("8", "7.13°"), ("7", "8.13°"), ("6", "9.46°")])
def test_a_slope_is_told_in_degrees(slope, angle):
    """Plane geometry: arctan 1/8 = 7.125°, 1/7 = 8.130°, 1/6 = 9.462°."""
    said = reckon("dovetail_layout", **TAILS, slope=slope)["by_key"]
    assert said["angle"]["text"].removeprefix("≈ ") == angle


def test_a_blank_count_of_tails_is_about_one_for_every_inch_and_a_half():
    """Common practice, no source."""
    for high, tails in (("1", "1"), ("3", "2"), ("5", "3"), ("12", "8")):
        said = reckon("dovetail_layout", height=high, pin_board="1/2")["by_key"]
        assert said["tails"]["text"] == tails


@pytest.mark.parametrize(
    ("values", "field", "words"),
    [
        ({"kind": "blind", "lap": "3/4"}, "lap", "all of a front"),
        ({"pin": "2"}, "pin", "nothing is left for the tails"),
        ({"tails": "12"}, "tails", "run to a point"),
        ({"height": "1 1/2", "pin": "1/2", "half": "1/2", "tails": ""}, "slope", "run to a point"),
    ],
)
def test_tails_that_cant_be_cut_are_refused(values, field, words):
    values = TAILS | {"pin_board": "3/4", "slope": "3"} | values
    said = errors(ask("dovetail_layout", **values))
    assert words in said[field]["message"]


@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({"pin": "1/8"}, "no room for a 1/4″ chisel or bit"),
        ({"tails": "8"}, "narrower than the 1/4″ chisel"),
        ({"half": "1/64", "pin": "1/2"}, "thin half pin"),
        ({"half": "1/16", "pin": "1/4", "pin_board": "1/2"}, "thin half pin"),
        ({"slope": "4"}, "A slope of 6 to 1"),
        ({}, "Clamp the board"),
    ],
)
def test_what_is_hard_to_cut_or_weak_is_told(values, words):
    said = reckon("dovetail_layout", **TAILS | values)["cautions"]
    assert any(words in each for each in said)


@pytest.mark.parametrize(
    ("values", "place"),
    [
        ({"kind": "blind", "height": "4 3/4"}, "5/16″ to 1 7/16″"),
        ({"kind": "blind"}, "5/16″ to ≈ 1 33/64″"),
        ({"height": "4 3/4"}, "11/32″ to 1 13/32″"),
    ],
)
def test_a_bottom_groove_hides_in_the_first_tail(values, place):
    """Common practice, no source. By hand: (4 3/4 − 4 × 1/4) ÷ 3 = 1 1/4 from 1/4 on, and 1/2 ÷ 8 =
    1/16 in at both sides; 3/4 ÷ 8 = 3/32 in for a through joint; 1/4 + 4/3 − 1/16 = 1.5208."""
    told = reckon("dovetail_layout", **TAILS | values)["by_key"]["hidden"]["text"]
    assert told.startswith(f"{place} from the reference edge")


def test_the_drawing_of_dovetails_tells_the_first_tail():
    shapes = reckon("dovetail_layout", **TAILS)["drawing"]["shapes"]
    told = {each["text"]: each.get("field") for each in shapes if "text" in each}
    assert told["5″"] == "height"
    assert {"1/4″", "tail ≈ 1 21/64″", "long 3/4″"} <= set(told)
