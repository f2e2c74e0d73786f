"""What fills an opening of a case, or goes around it, is drawn there; what is left out is named."""

from fractions import Fraction
from itertools import combinations

import pytest
from drawn_cases import carcass, cases, drawn, frame, line, outlines
from projects import view

import sawside
from sawside.project.evaluation.evaluate import Evaluation
from sawside.project.standing import opening_named, standing

SAMPLE = sawside.handle({"do": "describe"})["case"]


def test_no_two_parts_of_the_sample_are_in_one_place():
    """Save for what goes into a joint: a shelf, the top, the bottom and a divider 1/4, the back
    3/8. The frame, the doors and the crown have no part in any other."""
    [(_, lines)] = standing_in(SAMPLE)
    boxes = [
        (identity, part, box)
        for identity, place in lines
        for part, several in place.parts.items()
        for box in several
    ]
    assert {identity for identity, *_ in boxes} == {"12", "15", "19", "18"}
    for (one, part, box), (two, other, second) in combinations(boxes, 2):
        deep = shared(box, second)
        assert deep is None or (one == two == "12" and min(deep) <= Fraction(3, 8)), (part, other)


def standing_in(document):
    """(id of its case, (id, `Placed`) of each line that stands in it) of each case."""
    evaluation = Evaluation(document)
    for told in view(document)["cases"]:
        keys = dict.fromkeys((told["entry"], *(part["entry"] for part in told["parts"])))
        known = evaluation.graph.known
        lines = tuple(
            (key, evaluation.worked[key], opening_named(known, evaluation.worked, key))
            for key in keys
        )
        yield told["entry"], [(key, place) for key, _, place in standing(lines, None).lines]


def shared(one, two):
    """How far two boxes are in each other along each axis; None where they are not."""
    pairs = [(one.across, two.across), (one.upward, two.upward), (one.inward, two.inward)]
    deep = [min(a[1], b[1]) - max(a[0], b[0]) for a, b in pairs]
    return deep if min(deep) > 0 else None


def doors(of, name="Doors", across=1, up=1, **values):
    sizes = {"width": f"[{of}: Opening width {across}]", "height": f"[{of}: Opening height {up}]"}
    return line(name, "doors", **{"gap": "1/8", "made": "slab"} | sizes | values)


GRID = {"middle_stiles": "1", "middle_rails": "1", "heights": ["6"], "rows": "given"}
"""By hand, over a case 36 × 30 with a kick of 3 1/2 and 1/4 past both sides: a frame 36 1/2 wide
from -1/4 on, 3 1/2 to 30 high. Stiles of 1 1/2 leave 2 openings of 16, rails of 1 1/2 an upper one
of 6 below 28 1/2, and below the middle rail, whose top is at 22 1/2, one from 5 to 21."""


@pytest.mark.parametrize(
    ("across", "up", "corner"),
    [
        (1, 1, (1.25, -28.5, 17.25, -22.5)),
        (2, 1, (18.75, -28.5, 34.75, -22.5)),
        (1, 2, (1.25, -21, 17.25, -5)),
        (2, 2, (18.75, -21, 34.75, -5)),
    ],
)
def test_doors_stand_in_the_opening_of_the_frame_that_they_name(across, up, corner):
    """With 1/8 all around, as an outline: what is behind them shows."""
    stands = (
        carcass(fixed="1"),
        frame("Carcass", **GRID),
        doors("Face frame", "Doors", across, up),
    )
    [case] = cases(*stands)
    left, top, right, bottom = corner
    gap = 0.125
    assert [*outlines(drawn(case)["front"], "slab", "ghost")] == [
        (left + gap, top + gap, right - gap, bottom - gap)
    ]
    assert case["note"] == ""
    assert len([*outlines(drawn(case)["front"], "fixed", "stock")]) == 1


def test_columns_of_their_own_count_their_openings_as_the_frame_lists_them():
    """The second column alone has a middle rail; the frame lists its openings as 2 and 3."""
    own = {"middle_stiles": "1", "rows": "columns", "column_rails": [{"column": "2"}]}
    stands = (carcass(), frame("Carcass", **own), doors("Face frame", across=2, up=3))
    [case] = cases(*stands)
    [(left, top, _, bottom)] = outlines(drawn(case)["front"], "slab", "ghost")
    assert left == 18.75 + 0.125
    assert bottom == -5 - 0.125
    assert top > -17
    [case] = cases(*stands[:2], doors("Face frame", across=1, up=3))
    assert case["note"].startswith("“Doors” is left out: it’s for another size")


def test_the_first_of_two_lines_for_one_opening_is_drawn_and_the_other_one_named():
    stands = (carcass(), frame("Carcass", **GRID), doors("Face frame"), doors("Face frame", "Pair"))
    [case] = cases(*stands)
    assert len([*outlines(drawn(case)["front"], "slab")]) == 1
    assert case["note"] == "“Pair” is left out: “Doors” is drawn in that opening."


def test_doors_for_half_an_opening_are_left_out():
    half = {"width": "[Face frame: Opening width 1] / 2"}
    [case] = cases(carcass(), frame("Carcass", **GRID), doors("Face frame", **half))
    assert [*outlines(drawn(case)["front"], "slab")] == []
    assert case["note"] == "“Doors” is left out: it’s for another size than this case has there."


def in_bay(name="Doors", width="Bay width", height="Inside height", **values):
    sizes = {"width": f"[Carcass: {width}]", "height": f"[Carcass: {height}]"}
    return line(name, "doors", **{"gap": "0", "made": "slab", "thickness": "3/4"} | sizes | values)


def test_doors_without_a_frame_stand_in_the_bays_of_the_case():
    """By hand: 36 − 3 × 3/4 = 33 3/4 in two bays of 16 7/8, from 3/4 and from 18 3/8 on; 3 1/2 of
    kick with 3/4 of bottom, 3/4 of top. The next door for a bay takes the next bay."""
    kick = {"kick": "notched", "kick_height": "3 1/2", "dividers": "1"}
    [case] = cases(carcass(**kick), in_bay(), in_bay("More"), in_bay("Too many"))
    assert [*outlines(drawn(case)["front"], "slab", "ghost")] == [
        (0.75, -29.25, 17.625, -4.25),
        (18.375, -29.25, 35.25, -4.25),
    ]
    assert case["note"] == "“Too many” is left out: “Doors” is drawn in that opening."


def test_doors_stand_between_fixed_shelves_too():
    """30 − 3 1/2 − 1 1/2 = 25 inside; a shelf of 3/4 leaves 12 1/8 below it and 12 1/8 above."""
    kick = {"kick": "notched", "kick_height": "3 1/2", "fixed": "1", "shelf_heights": ["10"]}
    upper = in_bay(width="Inside width", height="Openings between fixed shelves 2", fit="overlay")
    [case] = cases(carcass(**kick), upper)
    half = 0.5
    [door] = outlines(drawn(case)["front"], "slab", "ghost")
    assert door == (0.75 - half, -29.25 - half, 35.25 + half, -15 + half)
    [(start, _, end, _)] = outlines(drawn(case)["section"], "slab", "stock")
    assert (start, end) == (-0.75, 0)


def base(**values):
    wide, deep = (f"[Carcass: Outside {each}]" for each in ("width", "depth"))
    sizes = {"case_width": wide, "case_depth": deep}
    return line("Base", "case_molding", **{"molding": "base"} | sizes | values)


def test_a_base_is_drawn_around_its_case():
    """3/4 out from a case 36 × 30 × 12, 3 high on the floor; from the side it hides its foot."""
    [case] = cases(carcass(), base(molding_height="3", thickness="3/4"))
    views = drawn(case)
    assert [*outlines(views["front"], "front", "stock")] == [(-0.75, -3, 36.75, 0)]
    assert [*outlines(views["side"], "right_side", "stock")] == [(0, -3, 12, 0)]
    assert {each["part"] for each in case["parts"]} >= {"front", "left_side", "right_side"}
    assert case["note"] == ""


def test_a_base_for_another_width_is_left_out():
    [case] = cases(carcass(), base(case_width="[Carcass: Outside width] - 1", molding_height="3"))
    assert [*outlines(drawn(case)["front"], "front")] == []
    assert case["note"] == "“Base” is left out: it’s for another size than this case has there."


def test_the_section_cuts_the_doors_and_the_crown_of_the_sample():
    """By hand, in the frame of 3/4: the crown projects 1 1/8 before it; rails of 2 and a panel of
    1/4 in its middle are cut, the stile behind them is an outline."""
    [case] = view(SAMPLE)["cases"]
    section = drawn(case)["section"]
    [(front, top, back, bottom)] = outlines(section, "front", "stock")
    assert (front, back, bottom - top) == (-0.75 - 1.125, -0.75, 1.5)
    assert [(left, right) for left, _, right, _ in outlines(section, "panel", "stock")] == [
        (-0.5, -0.25)
    ]
    assert len([*outlines(section, "rail", "stock")]) == 2
    doors = next(each["entry"] for each in case["parts"] if each["part"] == "panel")
    stiles = [each for each in section["shapes"] if each.get("part") == f"{doors}/stile"]
    assert [each["role"] for each in stiles] == ["ghost"]


def test_a_drawer_stands_in_the_opening_of_the_frame_that_it_names():
    """An inset front with 1/8 all around in the upper left opening of `GRID`, 16 × 6 from 1 1/4 on
    and up to 28 1/2; its box of 10 behind it, from the back of its front of 3/4 on."""
    sizes = {"width": "[Face frame: Opening width 1]", "height": "[Face frame: Opening height 1]"}
    how = {"depth": "11", "front": "inset", "gap": "1/8", "face": "3/4", "slide": "10"}
    drawer = line("Drawer", "drawer_box", **sizes | how)
    [case] = cases(carcass(), frame("Carcass", **GRID), drawer, doors("Face frame"))
    views = drawn(case)
    assert [*outlines(views["front"], "face", "ghost")] == [(1.375, -28.375, 17.125, -22.625)]
    [(front, _, back, _)] = outlines(views["section"], "face", "stock")
    assert (front, back) == (-0.75, 0)
    assert case["note"] == "“Doors” is left out: “Drawer” is drawn in that opening."
    keys = {each["part"] for each in case["parts"]}
    assert keys >= {"face", "side", "back", "bottom"}


def test_the_section_goes_through_a_door_and_not_between_two():
    """A pair in the one bay of a case: its left leaf is cut."""
    [case] = cases(carcass(), in_bay(doors="2", between="1/8"))
    assert len([*outlines(drawn(case)["front"], "slab", "ghost")]) == 2
    assert len([*outlines(drawn(case)["section"], "slab", "stock")]) == 1
