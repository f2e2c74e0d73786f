"""Where the parts of a case are said to stand is where they go when it is put together."""

from collections import Counter
from fractions import Fraction
from itertools import combinations

from asking import found, reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from sawside.geometry.case import Case, Shelving
from sawside.lengths.marks import exact_of
from sawside.reckoners import RECKONERS
from tests.core.oracles.assembled_case import assembled, panels_cut
from tests.core.oracles.laid_out_frame import CABINET as FRAMED
from tests.core.oracles.random_case import random_case, values_of
from tests.core.reckoners.case import carcasses

CABINET = carcasses.CABINET | {
    "joint": "butt",
    "back": "none",
    "kick": "notched",
    "kick_height": "3",
    "recess": "2",
}
"""A record cabinet for an alcove, nailed together without a joint, for sums in the head."""


def placed(values, bottoms=None, inside=None):
    """The `Placed` case of a form; `bottoms` are shelves that were laid out in a height."""
    shelving = None
    if bottoms:
        shelving = Shelving(Case(inside), tuple(bottoms), (Fraction(1),) * len(bottoms))
    return found("carcass", values).place(shelving)


def edges(box):
    """A box as the oracle writes it: y from front to back, z up."""
    return (box.left, box.right, box.front, box.back, box.low, box.high)


@settings(max_examples=150, deadline=None)
@given(st.randoms(use_true_random=False))
def test_parts_stand_where_a_case_that_is_put_together_has_them(random):
    """Boxes of `assembled_case`, which knows only the cut list and the joints: no two of its parts
    are in one place. A shelf in a dado reaches as far into its neighbor as the dado is deep."""
    asked = random_case(random)
    asked.shelves = asked.shelves[:1] * len(asked.bays)
    made, *_ = assembled(asked, panels_cut(values_of(asked)))
    faults, *_ = made.filled([])
    assert faults == set()
    case = placed(values_of(asked), sorted(asked.shelves[0]), asked.inside_height)
    boxes = Counter(edges(each) for several in case.parts.values() for each in several)
    assert boxes == Counter(box for _, box, _ in made.parts)
    assert case.levelled


@settings(max_examples=60, deadline=None)
@given(st.randoms(use_true_random=False))
def test_every_part_has_as_many_places_as_there_are_of_it(random):
    """And each place is as large as the part: its sizes in some order."""
    values = values_of(random_case(random))
    said = found("carcass", values)
    case = said.place(None)
    assert set(case.parts) == {part.key for part in said.parts}
    for part in said.parts:
        assert len(case.parts[part.key]) == part.count
        size = sorted(exact_of(each) for each in (part.length, part.width, part.thickness))
        for box in case.parts[part.key]:
            sides = (box.across, box.upward, box.inward)
            assert sorted(end - start for start, end in sides) == size


@settings(max_examples=60, deadline=None)
@given(st.randoms(use_true_random=False))
def test_without_a_joint_no_part_reaches_into_another(random):
    asked = random_case(random)
    asked.joint, asked.back = "butt", "none"
    asked.back_thickness = asked.behind = asked.shelf_band = asked.case_band = Fraction(0)
    case = placed(values_of(asked))
    boxes = [(key, box) for key, several in case.parts.items() for box in several]
    notches = [box.notch for _, box in boxes if box.notch]
    for (key, one), (other, two) in combinations(boxes, 2):
        common = shared(one, two)
        cut_out = any(common and inside(common, notch) for notch in notches)
        assert common is None or cut_out, (key, other)


def shared(one, two):
    """What two boxes have in common, as (from, to) of each axis; None for nothing."""
    pairs = [(one.across, two.across), (one.upward, two.upward), (one.inward, two.inward)]
    spans = [(max(a[0], b[0]), min(a[1], b[1])) for a, b in pairs]
    return spans if all(low < high for low, high in spans) else None


def inside(spans, box):
    """Whether spans of three axes are all in a box."""
    outer = (box.across, box.upward, box.inward)
    return all(b[0] <= a[0] and a[1] <= b[1] for a, b in zip(spans, outer, strict=True))


def test_loose_shelves_that_nobody_laid_out_are_spread_evenly():
    """By hand: 30 − 3 − 2 × 3/4 = 25 1/2 inside; 2 shelves of 3/4 leave 3 openings of 8. The floor
    of the inside is 3 3/4 up. A loose one is in the middle of its opening: (8 − 3/4) ÷ 2."""
    case = placed(CABINET | {"fixed": "2", "adjustable": "1"})
    assert [box.low for box in case.parts["fixed"]] == [Fraction("11.75"), Fraction("20.5")]
    assert [box.low for box in case.parts["adjustable"]] == [Fraction("7.375")]
    assert [high - low for low, high in case.openings] == [8, 8, 8]
    assert not case.levelled
    assert placed(CABINET | {"fixed": "2"}).levelled


def test_shelves_go_where_they_are_laid_out():
    """A fixed shelf 10 above the bottom, a loose one at 18, above it: 3 openings of 25 1/2."""
    values = CABINET | {"fixed": "1", "shelf_heights": ["10"], "adjustable": "1"}
    case = placed(values, [Fraction(10), Fraction(18)], Fraction("25.5"))
    assert [box.low for box in case.parts["fixed"]] == [Fraction("13.75")]
    assert [box.low for box in case.parts["adjustable"]] == [Fraction("21.75")]
    assert [high - low for low, high in case.openings] == [10, Fraction("7.25"), Fraction("6.75")]
    assert case.levelled
    assert case.agrees


def test_a_spacing_of_the_fixed_shelves_alone_agrees_within_a_mark():
    values = CABINET | {"fixed": "1", "shelf_heights": ["10"], "adjustable": "1"}
    inside_height = Fraction("25.5")
    assert placed(values, [Fraction("10.0625")], inside_height).agrees
    assert not placed(values, [Fraction("10.1")], inside_height).agrees


def test_shelves_laid_out_for_another_case_are_not_taken():
    """25 1/2 inside: another height, more shelves, one in the top; the joints stay at 12 3/8."""
    for bottoms, inside_height in ((["12.375"], 26), ([5, 10, 15], "25.5"), ([25], "25.5")):
        levels = [Fraction(each) for each in bottoms]
        case = placed(CABINET | {"fixed": "1"}, levels, Fraction(inside_height))
        assert not case.agrees
        assert [box.low for box in case.parts["fixed"]] == [Fraction("16.125")]


def test_a_side_over_a_toe_kick_has_its_notch():
    """3 high and 2 deep, as asked."""
    for box in placed(CABINET).parts["side"]:
        assert edges(box.notch) == (*box.across, 0, 2, 0, 3)


def test_a_frame_stands_in_front_of_its_case():
    """34 1/2 over a kick of 3 1/2, 1/4 past both sides: by hand from −1/4 to 36 1/4, from 3 1/2 up,
    its 3/4 before the front of the case."""
    frame = found("face_frame", FRAMED | {"left_past": "1/4", "thickness": "3/4"}).place(None)
    quarter = Fraction(1, 4)
    assert edges(frame.outside) == (
        -quarter,
        36 + quarter,
        Fraction(-3, 4),
        0,
        Fraction("3.5"),
        Fraction("34.5"),
    )
    through = found("face_frame", FRAMED | {"stiles_run": "floor"}).place(None)
    assert {box.low for box in through.parts["stile"]} == {0}


@settings(max_examples=60, deadline=None)
@given(
    st.integers(0, 3),
    st.integers(0, 3),
    st.sampled_from(["between", "through"]),
    st.sampled_from(["screws", "tenon"]),
)
def test_the_parts_of_a_frame_lie_beside_each_other(stiles, rails, run, joint):
    """What they cover and the openings are the whole frame, and no two share a place."""
    values = FRAMED | {
        "middle_stiles": str(stiles),
        "middle_rails": str(rails),
        "middle_stiles_run": run,
        "joint": joint,
    }
    said = found("face_frame", values)
    frame = said.place(None)
    assert {part.key: part.count for part in said.parts} == {
        key: len(boxes) for key, boxes in frame.parts.items()
    }
    boxes = [box for several in frame.parts.values() for box in several]
    assert all(shared(one, two) is None for one, two in combinations(boxes, 2))
    wide, high = (opening_sizes(said, *each) for each in (("widths", stiles), ("heights", rails)))
    assert sum(map(face, boxes)) + sum(wide) * sum(high) == face(frame.outside)


def opening_sizes(said, which, between):
    """Each width or height of the openings; equal ones are told once."""
    told = [size for _, size in said.answers[f"opening_{which}"]]
    return told * (between + 1) if len(told) == 1 else told


def face(box):
    return (box.right - box.left) * (box.high - box.low)


def test_a_frame_of_its_own_size_stands_before_no_case():
    alone = {"size_of": "frame", "width": "30", "height": "24"}
    assert found("face_frame", alone).place is None


def parts_drawn(said):
    return {shape["part"] for shape in said["drawing"]["shapes"] if "part" in shape}


def test_what_is_drawn_of_a_case_says_which_part_it_is():
    """Two bays that differ have two kinds of shelves; a base its rails."""
    values = CABINET | {"back": "rabbet", "fixed": "1", "adjustable": "1", "dividers": "1"}
    said = reckon("carcass", **values, bay_widths=["12"])
    keys = {part["key"] for part in said["parts"]}
    assert {"fixed_1", "fixed_2", "kick", "back"} < keys
    assert parts_drawn(said) == keys
    said = reckon("carcass", **CABINET | {"kick": "base"})
    keys = {part["key"] for part in said["parts"]}
    assert parts_drawn(said) == keys - {"base_crosspiece"}


def test_what_is_drawn_of_a_frame_says_which_part_it_is():
    said = reckon("face_frame", **RECKONERS["face_frame"].example)
    assert parts_drawn(said) == {part["key"] for part in said["parts"]}


def test_strips_in_the_section_say_what_they_are():
    """Those of sides and dividers are behind the cut, and seen from the front only at their end."""
    said = reckon("carcass", **CABINET | {"banding": "all", "band": "1/4", "fixed": "1"})
    strips = {part["key"] for part in said["parts"] if part["key"].startswith("strip")}
    assert strips == {"strip_side", "strip_top", "strip_bottom", "strip_fixed"}
    assert strips - parts_drawn(said) == {"strip_side"}
