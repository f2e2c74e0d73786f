"""A case carried round the turn of a stair: textbook, by hand, tried place by place and sampled."""

from fractions import Fraction
from itertools import pairwise
from math import hypot, sqrt

import pytest
from asking import ask, errors, inches, reckon
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from projects import acts, begun, entry

from sawside.reckoners.case.shared.way_in.turn import goes_round
from tests.core.oracles.carried_round import rounds
from tests.core.oracles.round_a_corner import goes_round as walked_round

KEY = "getting_it_in"
CASE = {"height": "76", "depth": "15", "width": "40", "ceiling": "96"}
STAIR = {"door": "stair", "stair_below": "36", "headroom": "60"}


@pytest.mark.parametrize(("below", "above"), [(27, 64), (64, 27)])
def test_a_ladder_goes_round_a_corner_as_every_calculus_text_has_it(below, above):
    """(27^(2/3) + 64^(2/3))^(3/2) = (9 + 16)^(3/2) = 125 (calculus textbooks, from memory)."""
    nothing, halls = Fraction(0), (Fraction(below), Fraction(above))
    assert goes_round(Fraction(125), nothing, *halls)
    assert not goes_round(Fraction(125) + Fraction(1, 10**6), nothing, *halls)


@given(st.integers(10, 90), st.integers(10, 90))
def test_the_longest_ladder_is_that_of_the_closed_form(below, above):
    longest = (below ** (2 / 3) + above ** (2 / 3)) ** 1.5
    halls = Fraction(below), Fraction(above)
    assert goes_round(Fraction(longest - 1e-6), Fraction(0), *halls)
    assert not goes_round(Fraction(longest + 1e-6), Fraction(0), *halls)


@pytest.mark.parametrize(
    ("below", "above", "across"), [(6, 6, 2), (5, 8, 1.5), (7, 4, 2), (6, 7, 3), (9, 4, 1)]
)
def test_what_goes_round_is_walked_round_place_by_place(below, above, across):
    """A tenth shorter than the longest is walked round, 4% longer is not: the walk has steps."""
    halls = Fraction(below), Fraction(above)
    fits = [n for n in range(1, 4000) if goes_round(Fraction(n, 100), Fraction(across), *halls)]
    longest = max(fits)
    assert walked_round(longest / 100 * 0.9, across, below, above, 0.25, 45)
    assert not walked_round(longest / 100 * 1.04, across, below, above, 0.25, 45)


def test_between_flights_as_wide_as_each_other_the_longest_is_worked_by_hand():
    """Tightest at 45°: 2 × (36 × √2 − 15) = 71.8234 long where it's 15 across; 40 is its height
    lying on its side, under 60 of headroom. 60 upright would be less."""
    said = reckon(KEY, **CASE, **STAIR | {"headroom": "40"})
    assert said["verdict"].startswith("Not whole: in 2 boxes. Tips up")
    assert said["verdict"].endswith("; won’t go round the stair")
    assert said["by_key"]["tallest_round"]["text"] == "71 13/16″"
    assert 2 * (36 * sqrt(2) - 15) == pytest.approx(71.8234, abs=1e-4)
    assert said["by_key"]["boxes"]["text"] == "2"
    whole = reckon(KEY, **CASE | {"height": "71 13/16"}, **STAIR | {"headroom": "40"})
    assert whole["verdict"].startswith("Yes, it goes in whole. ")
    assert whole["verdict"].endswith("; round the stair on its side")
    more = reckon(KEY, **CASE | {"height": "71 7/8"}, **STAIR | {"headroom": "40"})
    assert more["answers"][0]["text"] == "Not whole: in 2 boxes"


def test_with_headroom_an_end_is_tilted_up_and_it_goes_round_that_would_not_level():
    """74 × 15 × 15 in flights of 36: level 71.82 is the most. Tilted under 32: its diagonal is
    75.505, asin(32/75.505) − atan(15/74) = 25.07° − 11.46° = 13.61°, so in plan it's 74 × cos + 15
    × sin of that, 75.45: longer. Under 60: 52.62° − 11.46° = 41.16°, 65.6 in plan, which goes."""
    case = CASE | {"height": "74", "width": "15"}
    low = reckon(KEY, **case, **STAIR | {"headroom": "32"})
    assert low["by_key"]["round"]["text"].startswith("No")
    high = reckon(KEY, **case, **STAIR)
    assert high["by_key"]["round"]["text"] == "On its side, tilted top up"
    lines = [each["text"] for each in high["working"]]
    (line,) = [each for each in lines if each.startswith("Length in plan")]
    assert "= 65.58" in line


sizes = st.integers(16, 140).map(float)
halls = st.integers(24, 60).map(float)


@settings(max_examples=120)
@given(sizes, st.integers(6, 40).map(float), st.integers(6, 60).map(float), halls, halls, halls)
def test_any_face_down_level_or_tilted_it_goes_round_where_sampled_angles_say_so(
    high, deep, wide, below, above, more
):
    case, headroom = (high, wide, deep), more + 36
    surely = rounds([each * 1.006 for each in case], below, above, headroom)
    maybe = rounds([each * 0.994 for each in case], below, above, headroom)
    assume(surely == maybe)
    said = reckon(
        KEY,
        height=inches(high),
        depth=inches(deep),
        width=inches(wide),
        ceiling="200 in",
        door="stair",
        stair_below=inches(below),
        stair_above=inches(above),
        headroom=inches(headroom),
    )
    assert said["by_key"]["round"]["text"].startswith("No") != surely
    if "tallest_round" in said["by_key"]:
        told = float(Fraction(said["by_key"]["tallest_round"]["mark"]))
        thin = [each * 0.99 for each in (wide, deep)]
        assert rounds([told * 0.99, *thin], below, above, headroom)
        assert not rounds([told * 1.01 + 1 / 16, wide * 1.01, deep * 1.01], below, above, headroom)


@pytest.mark.parametrize(
    ("form", "verdict"),
    [
        ({}, "Yes, it goes in whole. Tips up, ≈ 18 1/2″ to spare; round the stair upright"),
        (
            {"headroom": "30"},
            "Not whole: in 2 boxes. Tips up, ≈ 18 1/2″ to spare; won’t go round the stair",
        ),
        (
            {"width": "60", "depth": "40", "headroom": "30"},
            "No, it doesn’t go in. Tips up, ≈ 10 1/16″ to spare; won’t go round the stair",
        ),
        (
            {"height": "97"},
            "No, it doesn’t go in. Taller than the ceiling, which is 96″; won’t go round the stair",
        ),
        (
            {"door": "both", "door_width": "14", "door_height": "14"},
            "No, it doesn’t go in. Tips up, ≈ 18 1/2″ to spare; won’t go through the doorway; "
            "round the stair upright",
        ),
    ],
)
def test_yes_or_no_comes_first_and_then_every_part_of_the_way(form, verdict):
    said = reckon(KEY, **CASE | STAIR | {"headroom": "80", "width": "30"} | form)
    assert said["verdict"] == verdict
    assert said["answers"][0]["text"] == verdict.split(".")[0]


def test_what_never_goes_round_is_told_at_any_height_and_what_is_in_boxes_how_many():
    """By hand: 120 under 150 in four boxes of 30; three would be 40 long in plan, and a turn of 24
    and 24 takes 2 × (24 × √2 − 15) = 37.88."""
    never = reckon(KEY, **CASE | {"width": "60", "depth": "40"}, **STAIR | {"headroom": "30"})
    assert "tallest_round" not in never["by_key"]
    assert any("won’t go round the stair at any height" in each for each in never["cautions"])
    tall = CASE | {"height": "120", "width": "23", "ceiling": "150"}
    said = reckon(KEY, **tall, **STAIR | {"stair_below": "24", "headroom": "23"})
    assert said["by_key"]["boxes"]["text"] == "4"
    assert any("or stack 4 boxes of one height" in each for each in said["cautions"])


def test_a_case_on_a_separate_base_is_carried_without_it():
    """By hand: 76 less 5 is 71, under 71.82 (above)."""
    form = CASE | STAIR | {"headroom": "40"}
    assert reckon(KEY, **form, kick="5")["by_key"]["round"]["text"] == "On its side"
    assert reckon(KEY, **form, kick="4")["by_key"]["round"]["text"].startswith("No")
    cautions = reckon(KEY, **form, kick="4")["cautions"]
    (remedy,) = [each for each in cautions if "round the stair whole" in each]
    assert "71 13/16″ without its toe kick" in remedy


def test_in_millimeters_it_goes_round_a_turn_of_900():
    """By hand: 2 × (900 × √2 − 400) = 1745.58, down to 1745."""
    metric = {"unit": "mm", "mark": "1 mm"}
    form = {"depth": "400", "width": "1000", "ceiling": "2400", "door": "stair"}
    said = reckon(KEY, metric, height="1900", **form, stair_below="900", headroom="1000")
    assert said["by_key"]["tallest_round"]["text"] == "1745 mm"
    assert not any("″" in each for each in said["cautions"])


def test_in_millimeters_what_goes_upright_is_as_tall_as_the_headroom():
    """By hand: 860 × 380 slides round between walls of 860, upright under 2000."""
    metric = {"unit": "mm", "mark": "1 mm"}
    form = {"depth": "380", "width": "860", "ceiling": "2440", "door": "stair"}
    said = reckon(KEY, metric, height="2100", **form, stair_below="860", headroom="2000")
    assert said["by_key"]["tallest_round"]["text"] == "2000 mm"
    lines = [each["text"] for each in said["working"]]
    at = lines.index("The tallest that goes round is 2000 high, upright")
    assert lines[at + 1] == "Under the headroom: 2000 − 2000 = 0"
    goes = reckon(KEY, metric, height="1990", **form, stair_below="860", headroom="2000")
    assert not any("The tallest that goes round" in each["text"] for each in goes["working"])


def test_one_height_is_told_to_build_no_higher_where_neither_ceiling_nor_stair_takes_it():
    """By hand: √(96² − 15²) = 94.82 tips up, and 78 goes upright under 78 of headroom: 78 does for
    both. Under 95 1/2 of it the ceiling's is the lower one."""
    form = CASE | STAIR | {"height": "95 7/8", "width": "36"}
    for stair, height, other in (("36", "78″", "94 13/16″"), ("48", "94 13/16″", "95")):
        room = {"stair_below": stair, "headroom": "78" if stair == "36" else "95 1/2"}
        cautions = [
            each for each in reckon(KEY, **form | room)["cautions"] if "Build it no higher" in each
        ]
        assert len(cautions) == 1
        assert height in cautions[0]
        assert other not in cautions[0]


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"stair_below": ""}, "stair_below", "missing"),
        ({"headroom": ""}, "headroom", "missing"),
        ({"width": ""}, "width", "missing"),
        ({"stair_above": "x"}, "stair_above", "unreadable"),
        ({"headroom": "0"}, "headroom", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    assert errors(ask(KEY, **CASE | STAIR | values))[field]["kind"] == kind


def test_the_drawing_has_the_case_between_both_outer_walls_and_clear_of_the_inner_corner():
    shapes = reckon(KEY, **CASE | STAIR | {"height": "70", "headroom": "40"})["drawing"]["shapes"]
    (box,) = [each["points"] for each in shapes if each.get("role") == "stock"]
    lengths = [hypot(x - u, y - v) for (x, y), (u, v) in pairwise(box)]
    assert lengths == pytest.approx([70, 15, 70], abs=1e-3)
    assert min(x for x, _ in box) == min(y for _, y in box) == 0
    sides = zip(box, [*box[1:], box[0]], strict=True)
    crosses = [(u - x) * (36 - y) - (v - y) * (36 - x) for (x, y), (u, v) in sides]
    assert min(crosses) < 0 < max(crosses)
    fields = [each["field"] for each in shapes if each.get("role") == "given"]
    assert fields == ["stair_below", "stair_below"]


def test_its_cautions_keep_people_from_under_it():
    """Common practice, no source."""
    cautions = " ".join(reckon(KEY, **CASE | STAIR)["cautions"])
    assert "keep everybody out from under it" in cautions
    assert "level, square turn" in cautions


def test_the_name_of_a_line_alone_still_stands_for_its_diagonal():
    """By hand: √(72² + 54²) = 90, and 1 more is 91: a project of before has it so in its sums."""
    values = {"height": "72", "depth": "54", "ceiling": "96"}
    document = acts(
        begun(),
        ("keep_line", {"name": "Tipped", "reckoner": KEY, "values": values}),
        ("keep_reading", {"name": "Needed", "text": "[Tipped] + 1"}),
    )
    assert entry(document, "Needed")["headline"]["text"] == "91″"


@pytest.mark.parametrize(
    ("more", "tight"),
    [
        ({}, False),
        ({"headroom": "76"}, True),
        ({"headroom": "76 1/2"}, False),
        ({"stair_above": "15 1/4"}, True),
        ({"headroom": "40", "height": "71 3/4"}, True),
    ],
)
def test_hardly_any_room_round_the_stair_is_warned_of(more, tight):
    """By hand: 76 upright under 76; 15 deep in 15 1/4; 71 3/4 where 71.82 turns (above)."""
    form = CASE | STAIR | {"headroom": "80", "width": "30"} | more
    if "height" in more:
        form |= {"width": "40"}
    said = reckon(KEY, **form)
    assert not said["by_key"]["round"]["text"].startswith("No")
    assert any("hardly any room to spare round" in each for each in said["cautions"]) == tight
