"""The largest case that goes into a space: by hand, and tried in a space built of its faces."""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, inches, reckon
from hypothesis import given
from hypothesis import strategies as st
from projects import acts, begun, change, entry

from tests.core.oracles.crooked_space import STEPS, Space
from tests.core.reckoners.case.spaces import KEY, MARK, WALLS, leaning, leans, sixteenths, texts


def test_between_plumb_walls_the_smallest_width_counts_less_both_scribes():
    """By hand: 37 1/2 less 2 × 1/4 is 37; the largest is 1/8 more, which the scribe covers."""
    said = reckon(KEY, **WALLS | {"widths": ["37 9/16", "37 1/2", "37 5/8"]})
    assert said["by_key"]["width"]["text"] == "37″"
    assert texts(said["by_key"]["rip"]) == [("Left", "3/8″"), ("Right", "3/8″")]
    assert said["answers"][0]["label"] == "Case width"


@pytest.mark.parametrize(
    ("left", "right", "widths", "width"),
    [
        ("1/2", "1/2", ["37 1/2", "37", "36 1/2"], "36″"),  # both into it: the top counts
        ("-1/2", "-1/2", ["36 1/2", "37", "37 1/2"], "36″"),  # both away: the floor counts
        ("1/2", "-1/2", ["37", "37", "37"], "36″"),  # a parallelogram: 37 − 1/2 − 2 × 1/4
        ("-1/2", "1/2", ["37", "37", "37"], "36″"),
        ("1/2", "-1/4", ["37 1/4", "37 1/8", "37"], "36 1/4″"),  # 37 − 1/4 − 2 × 1/4
        ("-1/4", "1/2", ["37 1/4", "37"], "36 1/4″"),
        ("1/2", "0", ["37 1/2", "37"], "36 1/2″"),
    ],
)
def test_walls_that_lean_the_same_way_take_more_than_the_smallest_width(left, right, widths, width):
    form = leaning("left", Fraction(left)) | leaning("right", Fraction(right))
    said = reckon(KEY, **WALLS | {"widths": widths} | form)
    assert said["by_key"]["width"]["text"] == width


@given(st.integers(320, 900), leans, leans, sixteenths)
def test_no_point_of_the_case_is_outside_and_one_mark_more_would_be(wide, left, right, scribe):
    space = Space(Fraction(wide, 16), left, right, (0, 0), (96, 96))
    readings = [inches(space.reading(Fraction(part, 2))) for part in (1, 0, 2)]
    form = leaning("left", left) | leaning("right", right)
    said = reckon(KEY, **WALLS | {"widths": readings, "scribe": inches(scribe), **form})["by_key"]
    told = Fraction(said["width"]["mark"])
    assert space.takes_width(told, scribe)
    assert not space.takes_width(told + MARK, scribe)
    if scribe or left or right:
        check_strips(space, told, said)


def check_strips(space, told, said):
    """Strips as wide as they are told close the gaps of a case that stands amid the free width."""
    start = space.amid(told)
    gaps = [gap for part in (0, 1) for gap in space.gaps(start, told, part)]
    strips = {item["label"]: item for item in said["strips"]["items"]}
    names = [f"{side}, at the {end}" for end in ("floor", "ceiling") for side in ("Left", "Right")]
    for name, gap in zip(names, gaps, strict=True):
        assert exact(strips[name]) == gap
        assert gap <= Fraction(strips[name]["mark"]) < gap + MARK


@given(
    st.integers(1400, 1700), st.integers(-24, 24), st.integers(-24, 24), st.booleans(), sixteenths
)
def test_a_level_case_stands_on_the_high_point_and_touches_no_ceiling(
    high, slope, tilt, flipped, above
):
    """Floor and ceiling slope as they like; the heights are what a tape reads at each side."""
    drop, rise = Fraction(slope, 16), Fraction(tilt, 16)
    floor = (0, -drop) if flipped else (-drop, 0)
    space = Space(Fraction(36), 0, 0, floor, (Fraction(high, 16), Fraction(high, 16) + rise))
    left, right = space.heights()
    high_side = "level" if not slope else "left" if floor[0] > floor[1] else "right"
    said = reckon(
        KEY,
        **WALLS
        | {
            "left_height": inches(left),
            "right_height": inches(right),
            "floor": high_side,
            "floor_out": inches(abs(drop)),
            "above": inches(above),
            "line": "10",
        },
    )["by_key"]
    told = Fraction(said["height"]["mark"])
    assert space.takes_height(told, above)
    assert not space.takes_height(told + MARK, above)
    if slope:
        low = "Left" if high_side == "right" else "Right"
        ((name, shim),) = [(each["label"], exact(each)) for each in said["shims"]["items"]]
        assert (name, shim) == (f"{low} end", max(floor) - min(floor))
        level = {each["label"]: exact(each) for each in said["level"]["items"]}
        assert level["Left"] + floor[0] == level["Right"] + floor[1] == max(floor) + 10


def test_the_floor_high_at_the_left_takes_height_at_the_right():
    """By hand: right 96 1/8 less a drop of 3/8 is 95 3/4; the line is 4 and 4 3/8 up."""
    form = {"right_height": "96 1/8", "floor": "left", "floor_out": "3/8", "line": "4"}
    said = reckon(KEY, **WALLS | {"left_height": "96 1/4"} | form)["by_key"]
    assert said["height"]["text"] == "95 3/4″"
    assert texts(said["shims"]) == [("Right end", "3/8″")]
    assert texts(said["level"]) == [("Left", "4″"), ("Right", "4 3/8″")]
    other = reckon(KEY, **WALLS | {"left_height": "96 1/4"} | form | {"floor": "right"})["by_key"]
    assert other["height"]["text"] == "95 7/8″"
    assert texts(other["shims"]) == [("Left end", "3/8″")]


@pytest.mark.parametrize(
    ("built", "width", "strips"),
    [
        ("walls", "37″", ["Left", "Right"]),
        ("left", "37 1/4″", ["Left"]),
        ("right", "37 1/4″", ["Right"]),
        ("free", "37 1/2″", None),
    ],
)
def test_only_a_side_with_a_wall_has_a_strip(built, width, strips):
    said = reckon(KEY, **WALLS | {"built": built})["by_key"]
    assert said["width"]["text"] == width
    assert (strips is None) == ("rip" not in said)
    assert strips is None or [item["label"] for item in said["rip"]["items"]] == strips


def test_a_case_in_a_corner_is_narrower_by_what_its_wall_leans_where_one_width_is_all_there_is():
    """By hand: 37 1/2 read once, at the floor as it may be, less a lean of 1/2 and one scribe."""
    form = {"built": "left", **leaning("left", Fraction(1, 2))}
    said = reckon(KEY, **WALLS | form)
    assert said["by_key"]["width"]["text"] == "36 3/4″"
    assert any("right at the floor and right at the ceiling" in each for each in said["cautions"])


def test_widths_that_vary_more_than_the_walls_lean_leave_room_for_a_bow_of_each():
    """A wall that bows 5/8 low and another 5/8 high leave 37 − 5/8; the widths never read less than
    37 (by hand). A strip is then up to 5/16 + 5/8."""
    said = reckon(KEY, **WALLS | {"widths": ["37", "37 1/2", "37 5/8"]})
    assert said["by_key"]["width"]["text"] == "36 3/8″"
    assert texts(said["by_key"]["rip"])[0] == ("Left", "15/16″")
    assert any("enter how they lean" in each for each in said["cautions"])


@given(st.integers(400, 900), sixteenths, sixteenths, st.sets(st.integers(1, 47), min_size=2))
def test_a_case_goes_between_plumb_walls_that_bow_each_at_its_own_height(wide, left, right, steps):
    """Read at every step of the height: no width shows that both walls stand out."""
    low, *_, high = sorted(steps)
    bows = {low: (left, 0), high: (0, right)}
    space = Space(Fraction(wide, 16), 0, 0, (0, 0), (96, 96), bows)
    readings = [inches(space.reading(Fraction(step, STEPS))) for step in (0, low, high)]
    said = reckon(KEY, **WALLS | {"widths": readings})["by_key"]
    told = Fraction(said["width"]["mark"])
    assert space.takes_width(told, 0)
    for strip in said["rip"]["items"]:
        assert Fraction(strip["mark"]) >= (space.wide - told) / 2


def test_readings_that_differ_say_why_more_than_the_scribes_is_left_free():
    """By hand: 41 − 40 is 1, more than 2 × 1/4; 40 − 1 is 39."""
    said = reckon(KEY, **WALLS | {"widths": ["40", "41"]})
    assert said["by_key"]["width"]["text"] == "39″"
    assert (
        "The readings differ by 41 − 40 = 1, which is more than the scribes’ 2 × 1/4 = 1/2, so "
        "1 is left free for bowed walls"
    ) in [line["text"] for line in said["working"]]
    leans = reckon(KEY, **WALLS | {"widths": ["40", "41"]} | leaning("left", Fraction(1, 4)))
    assert (
        "The readings differ by 41 − 40 − 1/4 = 3/4 more than the walls lean, which is more than "
        "the scribes’ 2 × 1/4 = 1/2, so 3/4 is left free for bowed walls"
    ) in [line["text"] for line in leans["working"]]


def test_one_reading_is_not_called_the_smallest():
    for built in ("walls", "left", "free"):
        lines = [line["text"] for line in reckon(KEY, **WALLS | {"built": built})["working"]]
        assert not any(line.startswith("Smallest of") for line in lines)
        assert any(line.startswith("Case width") for line in lines)


def test_in_millimeters_the_scribe_is_6_and_no_inch_is_told():
    """By hand: 950 less 2 × 6 is 938."""
    metric = {"unit": "mm", "mark": "1 mm"}
    form = {"built": "walls", "widths": ["950", "951"], "left_height": "2440"}
    said = reckon(KEY, metric, **form)
    assert said["by_key"]["width"]["text"] == "938 mm"
    assert not any("″" in each for each in said["cautions"])
    assert any("6 mm" in each for each in reckon(KEY, metric, **form, scribe="2")["cautions"])


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"widths": []}, "widths", "missing"),
        ({"widths": ["37", "x"]}, "widths", "unreadable"),
        ({"left_height": ""}, "left_height", "missing"),
        ({"scribe": "12", "widths": ["20"]}, "scribe", "impossible"),
        ({"widths": ["3"], "left_lean": "in", "left_out": "4"}, "widths", "impossible"),
        ({"above": "96"}, "above", "impossible"),
        ({"left_height": "10", "floor": "left", "floor_out": "12"}, "left_height", "impossible"),
        (
            {"left_depth": "1/2", "baseboard": "1/2", "at_baseboard": "front"},
            "baseboard",
            "impossible",
        ),
        ({"kick": "96"}, "kick", "impossible"),
        ({"floor": "left", "floor_out": "1/2", "line": "97"}, "line", "impossible"),
        ({"floor": "left", "floor_out": "1/2", "line": "50", "above": "46"}, "line", "impossible"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    assert errors(ask(KEY, **WALLS | values))[field]["kind"] == kind


def test_the_case_follows_the_reading_that_becomes_the_smallest():
    form = WALLS | {"widths": ["[Floor]", "[Top]"]}
    document = acts(
        begun(),
        ("keep_reading", {"name": "Floor", "text": "37 9/16"}),
        ("keep_reading", {"name": "Top", "text": "37 5/8"}),
        ("keep_line", {"name": "Case", "reckoner": KEY, "values": form}),
    )
    top = entry(document, "Top")["id"]
    (follow,) = change(document, "correct", id=top, text="37 1/2")["follows"]
    assert (follow["before"]["text"], follow["after"]["text"]) == ("37 1/16″", "37″")


def test_the_drawing_has_the_sizes_as_answers_and_says_what_is_exaggerated():
    form = leaning("left", Fraction(1, 2)) | {"floor": "left", "floor_out": "3/8"}
    drawing = reckon(KEY, **WALLS | {"widths": ["37 1/2", "37"], "left_depth": "15"} | form)[
        "drawing"
    ]
    shapes = drawing["shapes"]
    answers = [each["text"] for each in shapes if each.get("role") == "answer"]
    assert answers == ["36 1/2″", "95 5/8″", "3/4″", "1/4″", "1/4″", "1/4″", "shim 3/8″"]
    notes = [each["text"] for each in shapes if each["kind"] == "label"]
    assert notes == ["level line", "15″ deep", "not to scale, gaps exaggerated"]
    assert drawing["words"].endswith("Gaps and slopes are exaggerated.")


@pytest.mark.parametrize(("lean", "way"), [("1/2", 1), ("-1/2", -1)])
def test_a_wall_is_drawn_leaning_the_way_it_does(lean, way):
    """The hatched face of the left wall is the third surface: its foot, then its head."""
    form = WALLS | {"built": "left", "widths": ["37 1/2", "37"]} | leaning("left", Fraction(lean))
    shapes = reckon(KEY, **form)["drawing"]["shapes"]
    hatched = [each["points"] for each in shapes if each.get("role") == "hatch"]
    assert len(hatched) == 3
    (foot, low), (head, high), *_ = hatched[2]
    assert (head - foot) * way > 0
    assert high < low
