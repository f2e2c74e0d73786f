"""Screws into the studs behind a case: by hand, and every one tried in a wall of its own."""

from fractions import Fraction
from itertools import pairwise

import pytest
from asking import ask, errors, exact, inches, items, reckon, texts
from hypothesis import assume, given
from hypothesis import strategies as st
from oracles.put_up import BESIDE, hittable, is_clear, is_hit, stud_centers

KEY = "studs"
CASE = {"studs": ["22 3/8"], "left": "12 1/4", "width": "37 1/8", "height": "76"}
STUD, SIDE, CLEAR = Fraction(3, 2), Fraction(3, 4), Fraction(1)
"""Studs are 1 1/2 wide (PS 20); the rest is common practice, no source."""
SIXTEENTHS = st.integers(0, 16 * 30).map(lambda number: Fraction(number, 16))


def test_studs_from_one_and_their_spacing_by_hand():
    """22 3/8 − 12 1/4 = 10 1/8, 16 more is 26 1/8; 42 1/8 is past 37 1/8. 16 in on center: common
    framing (IRC R602.3, from memory). Inside, 3/4 less."""
    said = reckon(KEY, **CASE)
    assert items(said, "outside") == [Fraction(81, 8), Fraction(209, 8)]
    assert items(said, "inside") == [Fraction(75, 8), Fraction(203, 8)]
    assert said["verdict"] == "Screws at 10 1/8″ and 26 1/8″; length"
    assert "without" not in said["by_key"]


def test_studs_before_the_first_one_that_was_found_are_figured_too():
    said = reckon(KEY, **CASE | {"studs": ["38 3/8"]})
    assert items(said, "outside") == [Fraction(81, 8), Fraction(209, 8)]


@pytest.mark.parametrize(("at", "read"), [("left", "21 5/8"), ("right", "23 1/8")])
def test_an_edge_that_was_read_is_half_a_stud_from_its_center(at, read):
    said = reckon(KEY, **CASE | {"studs": [read], "at": at})
    assert items(said, "outside") == [Fraction(81, 8), Fraction(209, 8)]


def test_studs_that_were_all_found_are_where_they_were_found_and_no_others():
    said = reckon(KEY, **CASE | {"studs": ["18", "30 1/4", "80"]})
    assert items(said, "outside") == [Fraction(23, 4), Fraction(18)]
    assert [each["label"] for each in said["by_key"]["without"]["items"]] == ["18″ to 37 1/8″"]


@pytest.mark.parametrize(
    ("size", "long", "bite"),
    [("8", "2 1/4″", "1″"), ("10", "2 1/2″", "1 1/4″"), ("12", "2 3/4″", "1 1/2″")],
)
def test_the_screw_goes_through_strip_and_wall_and_six_diameters_or_an_inch_in(size, long, bite):
    """Through 3/4 + 1/2. Shanks of ASME B18.6.1: 6 × .164 = .984, less than 1; 6 × .190 = 1.14;
    6 × .216 = 1.296. Stock lengths every 1/4 from 1 to 3."""
    said = reckon(KEY, **CASE, size=size)
    assert texts(said)["screw"] == long
    assert texts(said)["bite"] == bite
    deep = [each for each in said["cautions"] if "steel plate. Use a shorter" in each]
    assert bool(deep) == (size == "12")  # National Electrical Code 300.4: 1 1/4 from the edge


def test_a_screw_of_ones_own_is_taken_as_it_is_and_a_short_one_is_told_so():
    said = reckon(KEY, **CASE, length="2")
    assert texts(said)["bite"] == "3/4″"
    assert any(each.startswith("It bites only 3/4″") for each in said["cautions"])


def test_a_stud_behind_a_divider_is_told_and_one_at_its_edge_is_dodged_as_far_as_it_goes():
    """The stud at 10 1/8: behind a divider at 10. A divider at 11 1/2 (face 11 1/8) leaves 1 to
    10 1/8; one at 11 7/16 leaves it to 10 1/16, 1/16 of the 1/8 that it may be off."""
    said = reckon(KEY, **CASE, dividers=["10"])
    assert texts(said)["hidden"] == "at 10 1/8″ (behind divider 1)"
    assert items(said, "outside") == [Fraction(209, 8)]
    assert any(each.startswith("Only one stud") for each in said["cautions"])
    for divider, place in (("11 1/2", Fraction(81, 8)), ("11 7/16", Fraction(161, 16))):
        assert items(reckon(KEY, **CASE, dividers=[divider]), "outside")[0] == place
    moved = reckon(KEY, **CASE, dividers=["11 7/16"])["working"]
    assert any("moved clear of divider 1: 11 1/16 − 1 = 10 1/16" in each["text"] for each in moved)


def test_where_no_stud_is_the_anchors_are_told_to_be_weaker():
    said = reckon(KEY, studs=["0"], left="3", width="10", height="30")
    assert said["verdict"] == "No stud to screw into"
    assert items(said, "without") == [10]
    assert "outside" not in said["by_key"]
    assert "Hollow-wall anchors hold much less" in said["cautions"][0]
    assert [each["field"] for each in said["fixes"]] == ["left", "studs"]


def test_wires_pipes_and_tipping_are_always_warned_of():
    said = reckon(KEY, **CASE)["cautions"]
    assert any("within 1 1/4″ of a stud’s edge" in each for each in said)
    assert any("see Tip-over" in each for each in said)
    metric = ask(KEY, {"display": "mm"}, **CASE)["cautions"]
    assert any("within 32 mm of a stud’s edge" in each for each in metric)


@given(
    SIXTEENTHS,
    SIXTEENTHS,
    st.integers(16 * 6, 16 * 60).map(lambda number: Fraction(number, 16)),
    st.sampled_from((12, 16, Fraction(96, 5), 24)),
    st.integers(0, 6).map(lambda number: Fraction(number, 16)),
    st.lists(st.integers(16 * 2, 16 * 58), max_size=3, unique=True),
    st.sampled_from(("1/4", "1/16", "1/64", "1 mm")),
)
def test_every_screw_hits_its_stud_wherever_it_is_and_no_stud_that_can_be_hit_is_left_out(
    first, left, width, spacing, off, dividers, mark
):
    centers = sorted(Fraction(each, 16) for each in dividers)
    uprights = [(-SIDE, SIDE), *((each - SIDE / 2, each + SIDE / 2) for each in centers)]
    uprights.append((width - SIDE, width + SIDE))
    assume(all(a[1] <= b[0] for a, b in pairwise(uprights)))
    said = reckon(
        KEY,
        {"mark": mark},
        studs=[inches(first)],
        left=inches(left),
        width=inches(width),
        height="60",
        spacing=inches(spacing),
        off=inches(off),
        dividers=[inches(each) for each in centers],
    )
    studs = stud_centers(first, spacing, left, width, STUD)
    told = said["by_key"].get("outside", {"items": []})["items"]
    for each in told:
        place = Fraction(each["mark"])
        assert any(is_hit(place, center, STUD, off) for center in studs)
        assert is_clear(place, uprights, CLEAR)
    inside = said["by_key"].get("inside", {"items": []})["items"]
    assert [exact(each) for each in inside] == [Fraction(each["mark"]) - SIDE for each in told]
    if spacing != Fraction(96, 5):  # its centers are on no 64th: the oracle can't try them all
        assert len(told) == hittable(studs, STUD, off, uprights, CLEAR, width)


def test_a_stud_is_surely_hit_only_where_wood_is_left_beside_the_screw():
    """The oracle itself: 3/8 of a stud 1 1/2 wide that may be 1/4 off leaves 1/8 either way."""
    assert is_hit(Fraction(81, 8), Fraction(10), STUD, Fraction(1, 4))
    assert not is_hit(Fraction(163, 16), Fraction(10), STUD, Fraction(1, 4))
    assert Fraction(3, 8) == BESIDE


@pytest.mark.parametrize(
    ("values", "field", "words"),
    [
        ({"off": "1/2"}, "off", "can miss it"),
        ({"studs": ["10", "11"]}, "studs", "can’t be at both 10″ and 11″"),
        ({"width": "8", "spacing": "8", "stud": "1 1/2", "off": "3"}, "off", "can miss it"),
        ({"side": "3", "width": "5"}, "side", "leave nothing"),
        ({"dividers": ["36 3/4"]}, "dividers", "runs into a side"),
        ({"dividers": ["12", "12 1/2"]}, "dividers", "or another divider"),
        ({"strips": ["80"]}, "strips", "is above a case 76″ high"),
        ({"length": "1"}, "length", "doesn’t get through"),
        ({"length": "6"}, "length", "comes through the far face"),
        ({"over": "3", "wall": "1 1/2", "size": "8"}, "size", "longest stock No. 8 screw, 3 1/2″"),
        ({"width": "1"}, "width", "at least"),
    ],
)
def test_what_can_not_be_is_refused_at_its_field(values, field, words):
    error = errors(ask(KEY, **CASE | values))[field]
    assert words in error["message"]


def test_the_largest_error_that_the_remedy_names_is_taken():
    remedy = errors(ask(KEY, **CASE, off="1/2"))["off"]["remedy"]
    assert "enter 3/8″ or less" in remedy
    assert ask(KEY, **CASE, off="3/8")["ok"]


def test_a_metric_case_has_metric_studs_and_screws():
    """38 mm studs 400 mm on center, 5 mm screws; 18 + 12 mm through and six diameters, 30 mm."""
    form = {"studs": ["568"], "left": "311", "width": "943", "height": "1930"}
    said = reckon(KEY, {"unit": "mm", "display": "mm", "mark": "1 mm"}, **form)
    assert said["by_key"]["outside"]["text"] == "257 mm, 657 mm"
    assert texts(said)["screw"] == "60.0 mm"
    assert texts(said)["bite"] == "30.0 mm"


def test_the_drawing_has_studs_behind_the_case_and_a_screw_at_each_strip():
    said = reckon(KEY, **CASE, strips=["4", "72"], dividers=["18 1/2"])
    shapes = said["drawing"]["shapes"]
    studs = [each for each in shapes if each.get("role") == "ghost"]
    centers = [sum(x for x, _ in each["points"]) / 4 for each in studs]
    assert centers == pytest.approx([10.125, 26.125])
    screws = [each for each in shapes if each.get("role") == "hatch"]
    middles = sorted(round(sum(x for x, _ in each["points"]) / 4, 3) for each in screws)
    assert middles == [10.125, 10.125, 26.125, 26.125]
    told = {each.get("text") for each in shapes}
    assert {"1: 10 1/8″", "2: 26 1/8″", "height not to scale"} <= told
    assert said["by_key"]["count"]["text"] == "4"


def test_a_stud_that_the_case_hides_half_of_is_drawn_and_not_screwed_into():
    """Its center is 1/2 left of the case; the next one 15 1/2 right of its left side."""
    said = reckon(KEY, **CASE | {"studs": ["11 3/4"]}, spacing="16")
    ghosts = [each for each in said["drawing"]["shapes"] if each.get("role") == "ghost"]
    assert sum(x for x, _ in ghosts[0]["points"]) / 4 == pytest.approx(-0.5)
    assert items(said, "outside") == [Fraction(31, 2), Fraction(63, 2)]
    assert "hidden" not in said["by_key"]


def test_a_case_without_a_height_is_drawn_and_its_strips_too():
    said = reckon(KEY, **{key: CASE[key] for key in ("studs", "left", "width")}, strips=["4", "72"])
    shapes = said["drawing"]["shapes"]
    tops = {min(y for _, y in each["points"]) for each in shapes if each.get("role") == "hatch"}
    assert len(tops) == 2
    assert not [each for each in shapes if each.get("field") == "height"]


def test_more_screws_than_can_be_dimensioned_are_numbered():
    said = reckon(KEY, **CASE | {"width": "110"})
    labels = [each["text"] for each in said["drawing"]["shapes"] if each["kind"] == "label"]
    assert labels[:6] == ["1", "2", "3", "4", "5", "6"]
    assert said["verdict"] == "Screws in 7 studs; length"
