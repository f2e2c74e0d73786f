"""A back wall out of plumb, a ceiling that sags, walls that bow and lean: by hand and tried.

Tried in a space built of its faces, which shares no code with the core: the case that is told goes
in, and one that is a mark more doesn't.
"""

from fractions import Fraction

import pytest
from asking import ask, errors, exact, inches, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.crooked_space import STEPS, Space
from tests.core.reckoners.case.spaces import KEY, MARK, WALLS, leaning, leans, sixteenths, texts

HIGH = 96


@pytest.mark.parametrize(
    ("way", "read_at", "depth", "gaps"),
    [
        ("in", "floor", "15 1/2″", ["1/2″", "0″"]),
        ("away", "floor", "16″", ["0″", "1/2″"]),
        ("in", "ceiling", "16″", ["1/2″", "0″"]),
        ("away", "ceiling", "15 1/2″", ["0″", "1/2″"]),
    ],
)
def test_a_back_wall_out_of_plumb_takes_depth_where_it_stands_furthest_in(
    way, read_at, depth, gaps
):
    """By hand: 16 read at the foot of a wall that leans in by 1/2 is 15 1/2 at the top; read at the
    top, the floor has 1/2 more."""
    form = {"left_depth": "16", "back_lean": way, "back_out": "1/2", "depth_at": read_at}
    said = reckon(KEY, **WALLS | form)["by_key"]
    assert said["depth"]["text"] == depth
    assert [text for _, text in texts(said["behind"])] == gaps


@given(st.integers(200, 400), leans, st.integers(0, 24), st.booleans())
def test_the_depth_that_is_told_goes_before_the_back_wall_and_a_mark_more_does_not(
    deep, lean, thick, from_above
):
    space = Space(Fraction(37), 0, 0, (0, 0), (HIGH, HIGH), deep=Fraction(deep, 16), back=lean)
    base, part = Fraction(thick, 16), Fraction(int(from_above))
    form = leaning("back", lean) | {
        "left_depth": inches(space.depth(part)),
        "depth_at": "ceiling" if from_above else "floor",
        "baseboard": inches(base),
        "at_baseboard": "front",
    }
    said = reckon(KEY, **WALLS | form)["by_key"]
    told = Fraction(said["depth"]["mark"])
    assert space.takes_depth(told, base)
    assert not space.takes_depth(told + MARK, base)
    if lean:
        floor, ceiling = (exact(each) for each in said["behind"]["items"])
        assert floor == space.depth(Fraction(0)) - told
        assert ceiling == space.depth(Fraction(1)) - told


def test_a_lean_that_readings_by_height_take_the_place_of_is_said_not_to_be_used():
    """The straight wall's lean is used, that of the bowed one isn't."""
    rows = [{"height": up, "width": "37"} for up in ("0", "90")]
    form = {"bowed": "left", "by_height": rows}
    for side, told in (("left", False), ("right", True)):
        said = reckon(KEY, **WALLS | form, **{f"{side}_lean": "in", f"{side}_out": "1/4"})
        unused = [each for each in said["cautions"] if "isn’t used" in each]
        assert bool(unused) == told
        assert all("the right wall" in each for each in unused)


def test_a_wall_that_leans_away_by_all_of_the_depth_is_told_of_its_own_field():
    form = {"left_depth": "15", "back_lean": "away", "back_out": "15", "depth_at": "ceiling"}
    error = errors(ask(KEY, **WALLS | form))["back_out"]
    assert error["message"].startswith("The back wall leans away by 15″")


def test_a_gap_behind_the_case_leaves_less_to_notch_around_the_baseboard():
    """By hand: 5/8 of baseboard, 1/2 of gap behind: 1/8; a gap of 3/4 leaves nothing."""
    form = {"left_depth": "16", "back_lean": "in", "baseboard": "5/8"}
    said = reckon(KEY, **WALLS | form, back_out="1/2")["by_key"]
    assert texts(said["notches"])[0] == ("Back", "1/8″")
    said = reckon(KEY, **WALLS | form, back_out="3/4")["by_key"]
    assert [where for where, _ in texts(said["notches"])] == ["Left side", "Right side"]


def test_a_ceiling_that_sags_in_the_middle_takes_height():
    """By hand: 96 at both ends, 95 1/4 in the middle, where the floor is half of 1/2 low: 95."""
    said = reckon(KEY, **WALLS, between=["95 1/4"])
    assert said["by_key"]["height"]["text"] == "95 1/4″"
    assert any(each.startswith("Find the lowest place of the ceiling") for each in said["cautions"])
    floor = {"floor": "left", "floor_out": "1/2", "right_height": "96 1/2"}
    said = reckon(KEY, **WALLS, **floor, between=["95 1/4"])["by_key"]
    assert said["height"]["text"] == "95″"


@given(st.lists(st.integers(1400, 1600), min_size=3, max_size=8), st.integers(-24, 24), sixteenths)
def test_under_any_ceiling_the_height_that_is_told_goes_in_and_a_mark_more_does_not(
    heights, slope, above
):
    """The ceiling at even steps; the places of the box between them are tried by the oracle."""
    floor = (0, Fraction(-slope, 16)) if slope > 0 else (Fraction(slope, 16), 0)
    ceiling = tuple(Fraction(each, 16) for each in heights)
    space = Space(Fraction(36), 0, 0, floor, ceiling)
    steps = len(heights) - 1
    left, *between, right = (space.height(Fraction(at, steps)) for at in range(steps + 1))
    side = "level" if not slope else "left" if slope > 0 else "right"
    form = {
        "left_height": inches(left),
        "right_height": inches(right),
        "between": [inches(each) for each in between],
        "floor": side,
        "floor_out": inches(Fraction(abs(slope), 16)),
        "above": inches(above),
    }
    told = Fraction(reckon(KEY, **WALLS | form)["by_key"]["height"]["mark"])
    assert lowest_room(space, steps) - above - MARK < told
    assert told <= lowest_room(space, steps) - above


def lowest_room(space, steps):
    """From the floor's high point to the ceiling, tried at sixteen places of each step."""
    high = max(space.floor)
    return min(
        space.height(part) + floor_at(space, part) - high
        for part in (Fraction(at, 16 * steps) for at in range(16 * steps + 1))
    )


def floor_at(space, part):
    """The floor's height at a part of the width."""
    return space.floor[0] * (1 - part) + space.floor[1] * part


def up(step):
    """The height of a step of the oracle, as it is filled in."""
    return inches(Fraction(HIGH * step, STEPS))


def reading(space, step):
    return inches(space.reading(Fraction(step, STEPS)))


bowed_steps = st.dictionaries(
    st.integers(1, STEPS - 1), st.integers(-20, 20).map(lambda each: Fraction(each, 16)), max_size=4
)


@given(
    st.integers(320, 900), leans, leans, bowed_steps, sixteenths, st.sampled_from(("left", "right"))
)
def test_beside_a_straight_wall_that_leans_the_other_one_may_bow_as_it_likes(
    wide, left, right, bows, scribe, straight
):
    by = {step: (0, bow) if straight == "left" else (bow, 0) for step, bow in bows.items()}
    space = Space(Fraction(wide, 16), left, right, (0, 0), (HIGH, HIGH), by)
    lean = left if straight == "left" else right
    rows = [{"height": up(step), "width": reading(space, step)} for step in (*bows, 0, STEPS)]
    form = leaning(straight, lean) | {"bowed": straight, "by_height": rows}
    widths = [reading(space, 0)]
    check_bowed(space, form | {"widths": widths}, scribe, (0, *bows, STEPS))


@settings(max_examples=100)
@given(st.integers(320, 900), leans, leans, bowed_steps, bowed_steps, sixteenths)
def test_measured_from_a_plumb_line_both_walls_may_bow_and_lean(
    wide, left, right, bows, others, scribe
):
    steps = {0, STEPS, *bows, *others}
    by = {step: (bows.get(step, 0), others.get(step, 0)) for step in steps}
    space = Space(Fraction(wide, 16), left, right, (0, 0), (HIGH, HIGH), by)
    line = Fraction(wide, 40)
    rows = []
    for step in steps:
        one, other = space.faces(Fraction(step, STEPS))
        rows.append({"height": up(step), "left": inches(line - one), "right": inches(other - line)})
    form = {"bowed": "line", "off_line": rows, "widths": [reading(space, 0)]}
    check_bowed(space, form, scribe, sorted(steps))


def check_bowed(space, form, scribe, steps):
    """The case that is told goes in with its strips, a mark more doesn't; the strips close its
    gaps at every reading."""
    said = reckon(KEY, **WALLS | form | {"scribe": inches(scribe)})["by_key"]
    told = Fraction(said["width"]["mark"])
    assert space.takes_width(told, scribe)
    assert not space.takes_width(told + MARK, scribe)
    if "strips" not in said:
        return
    strips = {each["label"]: exact(each) for each in said["strips"]["items"]}
    rips = [Fraction(each["mark"]) for each in said["rip"]["items"]]
    start = space.amid(told)
    at_readings = [space.gaps(start, told, Fraction(step, STEPS)) for step in sorted(steps)]
    assert sorted(strips.values()) == sorted(gap for gaps in at_readings for gap in gaps)
    for side in (0, 1):
        assert rips[side] >= max(gaps[side] for gaps in at_readings)


def test_a_wall_that_bows_beside_one_that_leans_is_worked_by_hand():
    """The left wall leans in 1/2 over 96: 1/4 at 48. The right one is 1/4 + 37 = 37 1/4 off the
    left one's foot there, and 36 3/4 past its head: less 2 × 1/4 is 36 1/4."""
    rows = [
        {"height": "0", "width": "37 1/2"},
        {"height": "48", "width": "37"},
        {"height": "96", "width": "37 1/4"},
    ]
    form = leaning("left", Fraction(1, 2)) | {"bowed": "left", "by_height": rows}
    said = reckon(KEY, **WALLS | form)
    assert said["by_key"]["width"]["text"] == "36 1/4″"
    assert texts(said["by_key"]["strips"])[3:5] == [
        ("Right, 0″ up", "1/2″"),
        ("Right, 48″ up", "1/4″"),
    ]
    assert any(each.startswith("Nothing is known between") for each in said["cautions"])
    assert "Right wall 48 up: 37 + 1/4 = 37 1/4" in [line["text"] for line in said["working"]]


def test_another_width_that_is_less_than_what_is_clear_counts():
    """By hand: 18 + 19 is 37, but one width read elsewhere is 36 1/2: less 2 × 1/4 is 36."""
    rows = [{"height": "0", "left": "18", "right": "19"}]
    said = reckon(KEY, **WALLS | {"bowed": "line", "off_line": rows, "widths": ["36 1/2"]})
    assert said["by_key"]["width"]["text"] == "36″"


ROW = {"height": "10", "width": "37"}


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"bowed": "left"}, "by_height", "missing"),
        ({"bowed": "line"}, "off_line", "missing"),
        ({"bowed": "left", "by_height": [ROW | {"height": "97"}]}, "by_height", "impossible"),
        ({"bowed": "right", "by_height": [ROW | {"width": "x"}]}, "by_height", "unreadable"),
        (
            {"bowed": "line", "off_line": [{"height": "1", "left": "0", "right": "0"}]},
            "off_line",
            "impossible",
        ),
        ({"between": ["0.5"]}, "between", "range"),
        ({"left_depth": "1/2", "back_lean": "in", "back_out": "1/2"}, "back_out", "impossible"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    assert errors(ask(KEY, **WALLS | values))[field]["kind"] == kind


def test_a_ceiling_that_sags_is_drawn_lowest_in_the_middle():
    shapes = reckon(KEY, **WALLS, between=["95"])["drawing"]["shapes"]
    hatched = [each["points"] for each in shapes if each.get("role") == "hatch"]
    (_, left), (_, middle), (_, right), *_ = hatched[1]
    assert middle > left == right  # y is down
