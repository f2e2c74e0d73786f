"""Face frames: known ones by hand, and every one laid out again from its cut list."""

import re
from fractions import Fraction
from itertools import pairwise, product

import pytest
from asking import ask, errors, exact, reckon
from hypothesis import given, settings
from hypothesis import strategies as st
from projects import acts, begun, view

KEY = "face_frame"
CABINET = {"width": "36", "height": "34 1/2", "kick": "3 1/2", "side": "3/4"}
ALONE = {"size_of": "frame", "width": "30", "height": "24"}


OUTER = "Top rail and bottom rail, 2 pieces"
NAMED = re.compile(r"((?:\w+ )?(?:stile|rail))(?: \(bays? ([\d, and]+)\))?", re.IGNORECASE)


def items(said, key):
    """{label: exact length} of an answer that is a list."""
    return {each["label"]: exact(each) for each in said["by_key"][key]["items"]}


def test_a_cabinet_front_with_a_door_under_a_drawer_is_cut_as_by_hand():
    """By hand: 36 − 2 × 1 1/2 = 33 between the stiles; 34 1/2 − 3 1/2 = 31 high, less three rails
    of 1 1/2 is 26 1/2: a drawer of 5 leaves a door of 21 1/2. Sides of 3/4 leave 1 1/2 − 3/4 of
    the stile inside, and the bottom, 3 1/2 + 3/4 up, is 3/4 below the top of its rail."""
    said = reckon(KEY, **CABINET, rows="given", heights=["5 in"])
    assert items(said, "rails") == {"Top rail, bottom rail and middle rail, 3 pieces": 33}
    assert items(said, "stiles") == {"Stile, 2 pieces": 31}
    assert items(said, "opening_widths") == {"Every opening": 33}
    assert items(said, "opening_heights") == {
        "Row 1 from the top": 5,
        "Row 2 from the top": Fraction(43, 2),
    }
    assert items(said, "covers") == {"Left": Fraction(3, 4), "Right": Fraction(3, 4)}
    assert exact(said["by_key"]["lip"]) == Fraction(3, 4)
    assert exact(said["by_key"]["total"]) == 3 * 33 + 2 * 31
    assert "shoulders" not in said["by_key"]
    sizes = [
        [part["name"], part["count"], *(part[each]["text"] for each in ("length", "thickness"))]
        for part in said["parts"]
    ]
    assert sizes == [
        ["Stile", 2, "31″", "3/4″"],
        ["Top rail", 1, "33″", "3/4″"],
        ["Bottom rail", 1, "33″", "3/4″"],
        ["Middle rail", 1, "33″", "3/4″"],
    ]


def test_the_openings_have_names_for_doors_and_drawers_in_a_project():
    """The openings of the frame above: 33 wide, a drawer of 5 over a door of 21 1/2."""
    values = CABINET | {"rows": "given", "heights": ["5 in"]}
    line = {"name": "Front", "reckoner": KEY, "values": values}
    texts = ("[Front: Opening width 1]", "[Front: Opening height 1]", "[Front: Opening height 2]")
    readings = [
        ("keep_reading", {"name": f"Size {number}", "text": text})
        for number, text in enumerate(texts)
    ]
    seen = view(acts(begun(), ("keep_line", line), *readings))
    assert [exact(each["headline"]) for each in seen["entries"][1:]] == [33, 5, Fraction(43, 2)]


def test_stiles_that_run_to_the_floor_are_the_case_s_height_and_leave_the_openings_as_they_are():
    """34 1/2 and what goes past the top, and the same rows as above the toe kick."""
    short = reckon(KEY, **CABINET, middle_rails="1", top_past="1/2")
    long = reckon(KEY, **CABINET, middle_rails="1", top_past="1/2", stiles_run="floor")
    assert items(long, "stiles") == {"Stile, 2 pieces": 35}
    assert items(short, "stiles") == {"Stile, 2 pieces": Fraction(63, 2)}
    assert items(long, "opening_heights") == items(short, "opening_heights")
    assert exact(long["by_key"]["lip"]) == exact(short["by_key"]["lip"])


def test_a_flush_stile_is_as_wide_as_the_side_and_what_goes_past_it():
    """23/32 + 1/4 to scribe is 31/32; the right one 23/32; past the inside by 1/4 more."""
    case = CABINET | {"side": "23/32", "left_past": "1/4", "right_past": "0"}
    flush = reckon(KEY, **case, edge="flush")
    assert items(flush, "stiles") == {"Left stile and right stile, 2 pieces": 31}
    widths = [part["width"]["text"] for part in flush["parts"][:2]]
    assert widths == ["31/32″", "23/32″"]
    assert items(flush, "covers") == {"Left": 0, "Right": 0}
    assert items(flush, "opening_widths")["Every opening"] == 36 - 2 * Fraction(23, 32)
    past = reckon(KEY, **case, edge="past", reveal="1/4")
    assert items(past, "covers") == {"Left": Fraction(1, 4), "Right": Fraction(1, 4)}
    typed = reckon(KEY, **case, edge="flush", left_stile="3")
    assert items(typed, "covers") == {"Left": 3 - Fraction(31, 32), "Right": 0}


@pytest.mark.parametrize(
    ("values", "wide", "lip"),
    [
        ({"bottom_edge": "flush", "bottom_height": "5"}, "1 1/2″", "0″"),
        ({"bottom_edge": "above", "bottom_height": "5", "lip": "1/4"}, "1 3/4″", "1/4″"),
        ({"bottom_edge": "flush"}, "3/4″", "0″"),
        ({"bottom_rail": "2"}, "2″", "1 1/4″"),
        ({"bottom_rail": "2", "bottom_edge": "flush"}, "2″", "1 1/4″"),
    ],
)
def test_a_bottom_rail_is_flush_with_the_case_s_bottom_or_above_it(values, wide, lip):
    """On a kick of 3 1/2: 5 − 3 1/2 = 1 1/2; the bottom is 3/4 thick where nothing says more."""
    said = reckon(KEY, **CABINET | values)
    rail = next(part for part in said["parts"] if part["name"] == "Bottom rail")
    assert (rail["width"]["text"], said["by_key"]["lip"]["text"]) == (wide, lip)


@pytest.mark.parametrize(
    ("joint", "rail", "middle"),
    [
        ({"joint": "screws"}, 27, 21),
        ({"joint": "dowels"}, 27, 21),
        ({"joint": "tenon", "tenon": "3/8"}, Fraction(111, 4), Fraction(87, 4)),
        ({"joint": "through"}, 30, 24),
    ],
)
def test_a_joint_adds_to_a_rail_what_goes_into_the_stiles(joint, rail, middle):
    """30 − 2 × 1 1/2 = 27 between shoulders; butted nothing, 2 × 3/8, or both stiles' width."""
    said = reckon(KEY, **ALONE, middle_stiles="1", **joint)
    assert items(said, "rails") == {OUTER: rail}
    stiles = {("Stile", None): 24, ("Middle stile", None): middle}
    assert by_name(said, "stiles") == stiles
    if rail != 27:
        assert items(said, "shoulders") == {"Middle stile": 21, OUTER: 27}


def test_through_tenons_from_both_sides_meet_in_the_middle_of_a_middle_stile():
    """(30 − 3 × 1 1/2) ÷ 2 = 12 3/4, and 1 1/2 through the end stile, 3/4 into the middle one."""
    said = reckon(KEY, **ALONE, middle_stiles="1", middle_rails="1", joint="through")
    assert by_name(said, "rails")["Middle rail", None] == 15
    assert any("stop half way" in each for each in said["cautions"])


def test_middle_stiles_that_run_through_split_the_top_and_bottom_rails():
    said = reckon(KEY, **ALONE, bays="given", widths=["10"], middle_stiles_run="through")
    assert items(said, "stiles") == {"Stile and middle stile, 3 pieces": 24}
    assert items(said, "rails") == {
        "Top rail (bay 1) and bottom rail (bay 1), 2 pieces": 10,
        "Top rail (bay 2) and bottom rail (bay 2), 2 pieces": Fraction(31, 2),
    }


def test_the_sides_are_of_the_panel_that_a_case_starts_with():
    """1 1/2 − 23/32 = 25/32; 40 − 18 = 22 mm."""
    case = {"width": "36 in", "height": "34 in"}
    for unit, covered in (("in", Fraction(25, 32)), ("mm", Fraction(22 * 5, 127))):
        said = reckon(KEY, {"unit": unit}, **case)
        assert items(said, "covers") == {"Left": covered, "Right": covered}


def test_a_metric_frame_starts_with_members_of_40_mm():
    """900 − 2 × 40 = 820; (720 − 100 − 3 × 40) ÷ 2 = 250."""
    case = {"width": "900", "height": "720", "kick": "100", "middle_rails": "1"}
    said = reckon(KEY, {"unit": "mm"}, **case)["by_key"]
    assert said["rails"]["text"] == "820 mm"
    assert said["stiles"]["text"] == "620 mm"
    assert said["opening_heights"]["text"] == "250 mm, 250 mm"


def by_name(said, key):
    """{(name, bay or None): exact length} of the same, whatever shares a length."""
    return {name: length for label, length in items(said, key).items() for name in named(label)}


def named(label):
    """Each (name, bay or None) that a label names."""
    for name, bays in NAMED.findall(label.replace(" and ", ", ")):
        for bay in re.findall(r"\d+", bays) or [None]:
            yield name.capitalize(), bay and int(bay)


# An oracle that knows only the cut list, the openings and how a frame goes together.


def pieces(said):
    """{(name, bay or None): (shoulder, width)} of the list as it is told."""
    widths = {}
    for part in said["parts"]:
        widths |= dict.fromkeys(named(part["name"]), exact(part["width"]))
    told = by_name(said, "stiles") | by_name(said, "rails")
    if "shoulders" in said["by_key"]:
        told |= by_name(said, "shoulders")
    return {key: (length, widths[key]) for key, length in told.items()}


def laid_out(said, *, through, foot):
    """(rectangles of wood, rectangles of the openings) from the upper left corner, y down."""
    found = pieces(said)
    wide, high = (exact(said["by_key"][key]) for key in ("frame_width", "frame_height"))
    columns, rows = (list(items(said, f"opening_{key}").values()) for key in ("widths", "heights"))
    stile = {side: found.get((f"{side} stile", None)) or found["Stile", None] for side in SIDES}
    wood = [
        (0, 0, stile["Left"][1], stile["Left"][0]),
        (wide - stile["Right"][1], 0, wide, stile["Right"][0]),
    ]
    rail = {
        name: next(each for (kind, _), each in found.items() if kind == name)
        for name in ("Top rail", "Bottom rail", "Middle rail")
        if any(kind == name for kind, _ in found)
    }
    lefts, x = [], stile["Left"][1]
    for width in columns:
        lefts.append(x)
        x += width + found.get(("Middle stile", None), (0, 0))[1]
    tops, y = [], rail["Top rail"][1]
    for height in rows:
        tops.append(y)
        y += height + rail.get("Middle rail", (0, 0))[1]
    for left, width in list(zip(lefts, columns, strict=True))[:-1]:
        long, across = found["Middle stile", None]
        start = 0 if through else rail["Top rail"][1]
        wood.append((left + width, start, left + width + across, start + long))
    levels = {"Top rail": [0], "Bottom rail": [high - foot - rail["Bottom rail"][1]]}
    levels["Middle rail"] = [top + height for top, height in zip(tops, rows, strict=True)][:-1]
    for name, places in levels.items():
        split = len(columns) > 1 and (through or name == "Middle rail")
        for place, bay in product(places, range(len(columns)) if split else [0]):
            long, across = found.get((name, bay + 1)) or found[name, None]
            wood.append((lefts[bay], place, lefts[bay] + long, place + across))
    openings = [
        (left, top, left + width, top + height)
        for (top, height), (left, width) in product(
            zip(tops, rows, strict=True), list(zip(lefts, columns, strict=True))
        )
    ]
    return wood, openings


SIDES = ("Left", "Right")
CROSSED = {"joint": "tenon", "middle_stiles": "1", "middle_rails": "1"}


def covered_once(box, rectangles):
    """Whether rectangles fill the box, and no two have a point inside in common."""
    xs = sorted({*box[::2], *(x for each in rectangles for x in each[::2])})
    ys = sorted({*box[1::2], *(y for each in rectangles for y in each[1::2])})
    for (left, right), (top, low) in product(pairwise(xs), pairwise(ys)):
        inside = [
            each
            for each in rectangles
            if each[0] <= left and right <= each[2] and each[1] <= top and low <= each[3]
        ]
        within = box[0] <= left and right <= box[2] and box[1] <= top and low <= box[3]
        if len(inside) != within:
            return False
    return True


def small(low, high):
    return st.fractions(min_value=low, max_value=high, max_denominator=16)


forms = st.fixed_dictionaries(
    {
        "size_of": st.sampled_from(["case", "frame"]),
        "width": small(30, 70),
        "height": small(30, 90),
        "kick": small(0, 4),
        "side": small("1/2", 1),
        "edge": st.sampled_from(["width", "flush", "past"]),
        "reveal": small(0, "3/4"),
        "left_past": small(0, "3/4"),
        "right_past": small(0, "3/4"),
        "top_past": small(0, "3/4"),
        "stiles_run": st.sampled_from(["kick", "floor"]),
        "bottom_edge": st.sampled_from(["width", "flush", "above"]),
        "lip": small(0, "3/4"),
        "stile": small(1, 3),
        "left_stile": st.none() | small(1, 3),
        "middle_stile": st.none() | small(1, 3),
        "top_rail": st.none() | small(1, 4),
        "bottom_rail": st.none() | small(1, 4),
        "middle_rail": st.none() | small(1, 3),
        "middle_stiles_run": st.sampled_from(["between", "through"]),
        "joint": st.sampled_from(["screws", "dowels", "tenon", "through"]),
        "tenon": small("1/8", "3/8"),
    }
)


cuts = st.integers(0, 3) | st.lists(small(2, 5), min_size=1, max_size=3)
"""Openings across or down: a count of middle members, or a list of openings."""


@settings(max_examples=200)
@given(forms, cuts, cuts)
def test_the_parts_of_a_frame_fill_its_outside_around_its_openings(form, across, down):
    """Laid out again in exact rationals: no overlap, no gap, openings and toe kick left free."""
    values = {
        key: each if isinstance(each, str) else f"{each} in"
        for key, each in form.items()
        if each is not None
    }
    for cut, kind, count, listed in (
        (across, "bays", "middle_stiles", "widths"),
        (down, "rows", "middle_rails", "heights"),
    ):
        equal = isinstance(cut, int)
        values[kind] = "equal" if equal else "given"
        values[count if equal else listed] = str(cut) if equal else [f"{each} in" for each in cut]
    case = form["size_of"] == "case"
    said = reckon(KEY, **values)
    wide, high = form["width"], form["height"]
    foot = form["kick"] if case and form["stiles_run"] == "floor" else 0
    if case:
        wide += form["left_past"] + form["right_past"]
        high += form["top_past"] - (form["kick"] if form["stiles_run"] == "kick" else 0)
    through = form["middle_stiles_run"] == "through"
    wood, openings = laid_out(said, through=through, foot=foot)
    space = [(wood[0][2], high - foot, wood[1][0], high)] if foot else []
    assert covered_once((0, 0, wide, high), [*wood, *openings, *space])
    assert len(wood) == sum(part["count"] for part in said["parts"])
    _check_tenons(form, said)
    drawn = [
        (*shape["points"][0], *shape["points"][2])
        for shape in said["drawing"]["shapes"]
        if shape.get("role") == "stock"
    ]
    assert len(drawn) == len(wood)
    for box in wood:
        assert any(each == pytest.approx(tuple(map(float, box)), abs=1e-3) for each in drawn)


def _check_tenons(form, said):
    """What is cut is longer than between shoulders by the stub at both ends, or not at all."""
    cut = by_name(said, "stiles") | by_name(said, "rails")
    between = by_name(said, "shoulders") if "shoulders" in said["by_key"] else {}
    more = {label: cut[label] - length for label, length in between.items()}
    if form["joint"] in ("screws", "dowels"):
        assert more == {}
    elif form["joint"] == "tenon":
        assert set(more.values()) == {2 * form["tenon"]}
        assert set(by_name(said, "rails")) <= set(more)


@pytest.mark.parametrize(
    ("values", "field", "kind"),
    [
        ({"width": "3"}, "width", "impossible"),
        ({"width": "3 1/2"}, "width", None),
        ({"width": "3.49"}, "width", "impossible"),
        ({"middle_stiles": "11", "stile": "3"}, "middle_stiles", "impossible"),
        ({"height": "6"}, "height", "impossible"),
        ({"height": "3 1/2"}, "kick", "impossible"),
        ({"middle_rails": "11", "middle_rail": "3"}, "middle_rails", "impossible"),
        ({"bays": "given", "widths": ["20", "11"]}, "widths", "impossible"),
        ({"bays": "given", "widths": ["1/4"]}, "widths", "range"),
        ({"bays": "given", "widths": []}, "widths", "missing"),
        ({"rows": "given", "heights": ["28"]}, "heights", "impossible"),
        ({"joint": "tenon", "tenon": "1 1/2"}, "tenon", "impossible"),
        ({"joint": "tenon", "tenon": "1", "middle_stiles": "1"}, "tenon", None),
        (
            {"joint": "tenon", "tenon": "1", "middle_stiles": "1", "middle_rails": "1"},
            "tenon",
            "impossible",
        ),
        (
            {"joint": "tenon", "tenon": "1", "middle_stiles": "1", "top_rail": "1"},
            "tenon",
            "impossible",
        ),
        ({"joint": "tenon", "tenon": "1 3/8"}, "tenon", None),
        ({"joint": "tenon", "tenon": "1 13/32"}, "tenon", "impossible"),
        *(
            (CROSSED | {"tenon": tenon}, "tenon", kind)
            for tenon, kind in (("11/16", None), ("45/64", "impossible"), ("3/4", "impossible"))
        ),
        ({"size_of": "frame", "bays": "centered"}, "bays", "impossible"),
        ({"bays": "centered", "middle_stiles": "11", "stile": "3"}, "middle_stiles", "impossible"),
        ({"bays": "centered", "middle_stiles": "8", "side": "4"}, "side", "impossible"),
        ({"bays": "centered", "middle_stiles": "1", "left_stile": "18"}, "bays", "impossible"),
        ({"edge": "past", "reveal": "2"}, "reveal", "impossible"),
        ({"left_past": "1 1/2"}, "left_past", "impossible"),
        ({"right_past": "1 1/2"}, "right_past", "impossible"),
        ({"top_past": "1 1/2"}, "top_past", "impossible"),
        ({"bottom_edge": "flush", "bottom_height": "3"}, "bottom_height", "impossible"),
        ({"stile": "0"}, "stile", "range"),
    ],
)
def test_what_cannot_be_is_told_of_its_field(values, field, kind):
    """A stub tenon leaves an eighth of the 1 1/2 past it, and two leave it between them: common
    practice, no source."""
    said = ask(KEY, **(CABINET | values))
    assert (None if said["ok"] else errors(said)[field]["kind"]) == kind


@pytest.mark.parametrize(
    ("values", "warned"),
    [
        ({"left_past": "1"}, "left stile leaves 1/4″ of the side’s edge showing"),
        ({"bottom_height": "5 1/4"}, "leaves 1/4″ of the case bottom’s edge showing"),
        ({}, "cover up to 3/4″ of the inside"),
    ],
)
def test_what_shows_or_is_covered_is_warned_of_first(values, warned):
    assert warned in reckon(KEY, **CABINET | values)["cautions"][0]


def told(said, key):
    """{label: the length that is told, in inches} of an answer that is a list."""
    return {each["label"]: Fraction(each["mark"]) for each in said["by_key"][key]["items"]}


def test_equal_openings_are_on_marks_and_rails_fill_the_frame():
    """By hand: 36 1/8 − 4 × 1 1/2 = 30 1/8 is 482 sixteenths: 160, 161 and 161 of them, where
    three of 10 1/16 would take 30 3/16."""
    frame = {"size_of": "frame", "width": "36 1/8", "height": "30", "middle_stiles": "2"}
    said = reckon(KEY, **frame, middle_rails="1")
    widths = list(told(said, "opening_widths").values())
    assert widths == [10, Fraction(161, 16), Fraction(161, 16)]
    assert told(said, "rails") == {
        "Top rail and bottom rail, 2 pieces": Fraction(265, 8),
        "Middle rail (bay 1)": 10,
        "Middle rail (bays 2 and 3), 2 pieces": Fraction(161, 16),
    }
    assert "differ by up to 1/16″" in said["cautions"][0]
    even = reckon(KEY, **frame | {"width": "36"}, middle_rails="1")
    assert len(told(even, "rails")) == 2
    assert not any("differ" in each for each in even["cautions"])
    drawn = [shape.get("text") for shape in said["drawing"]["shapes"]]
    assert (drawn.count("10″"), drawn.count("10 1/16″")) == (1, 1)


def test_flush_stiles_that_are_off_the_marks_do_not_widen_the_frame():
    """0.73 + 1/4 = 0.98, a hair under an inch: told as 31/32, and the rail between as no more."""
    said = reckon(KEY, **CABINET | {"side": "0.73", "left_past": "1/4"}, edge="flush")
    stile, rail = said["parts"][:2]
    assert Fraction(stile["width"]["mark"]) == Fraction(31, 32)
    cut = 2 * Fraction(stile["width"]["mark"]) + Fraction(rail["length"]["mark"])
    assert Fraction(73, 2) - Fraction(1, 8) < cut <= Fraction(73, 2)
    notes = [shape.get("text", "") for shape in said["drawing"]["shapes"]]
    assert "stiles ≈ 31/32″ (down); rails 1 1/2″" in notes
    worked = [line["text"] for line in said["working"]]
    assert "Left stile width: 1/4 + 73/100 = 49/50 → 31/32″ (down)" in worked
    assert "Bottom rail above the case bottom: 3 1/2 + 1 1/2 − 4 23/100 = 77/100 → 3/4″" in worked


def test_middle_stiles_are_centered_on_the_dividers_of_equal_bays():
    """By hand: (36 − 4 × 3/4) ÷ 3 = 11 and a divider’s center at 3/4 + 11 + 3/8 = 12 1/8; less
    half of 1 1/2 and the stile, 9 7/8. From divider to divider 11 3/4, less 1 1/2, is 10 1/4."""
    said = reckon(KEY, **CABINET, bays="centered", middle_stiles="2")
    assert list(items(said, "opening_widths").values()) == [
        Fraction(79, 8),
        Fraction(41, 4),
        Fraction(79, 8),
    ]
    assert not any("differ" in each for each in said["cautions"])
    drawn = [shape.get("text") for shape in said["drawing"]["shapes"]]
    assert (drawn.count("9 7/8″"), drawn.count("10 1/4″")) == (1, 1)


@given(
    st.integers(128, 640).map(lambda number: Fraction(number, 32)),
    st.integers(16, 32).map(lambda number: Fraction(number, 32)),
    st.integers(32, 64).map(lambda number: Fraction(number, 32)),
    st.integers(0, 16).map(lambda number: Fraction(number, 32)),
    st.integers(0, 4),
)
def test_walked_along_the_frame_every_middle_stile_is_over_its_divider(
    bay, side, stile, past, number
):
    """Two walks from the left, over what is told of the frame and over the case behind it."""
    wide = (number + 1) * bay + (number + 2) * side
    values = CABINET | {"width": f"{wide} in", "side": f"{side} in", "middle_stile": f"{stile} in"}
    values |= {"bays": "centered", "middle_stiles": str(number), "left_past": f"{past} in"}
    said = reckon(KEY, **values)
    at, centers = Fraction(3, 2) - past, []
    for width in told(said, "opening_widths").values():
        centers.append(at + width + stile / 2)
        at += width + stile
    assert at - stile + Fraction(3, 2) == wide + past
    behind, dividers = side, []
    for _ in range(number):
        dividers.append(behind + bay + side / 2)
        behind += bay + side
    assert centers[:-1] == dividers


def test_a_frame_off_the_marks_is_centered_to_less_than_one():
    """(36 − 4 × 23/32) ÷ 3 = 11 1/24: the openings are on marks and fill the 36."""
    said = reckon(KEY, **CABINET | {"side": "23/32"}, bays="centered", middle_stiles="2")
    first, second, last = told(said, "opening_widths").values()
    assert first + second + last == 36 - 4 * Fraction(3, 2)
    center = Fraction(23, 32) * Fraction(3, 2) + 11 + Fraction(1, 24)
    assert abs(Fraction(3, 2) + first + Fraction(3, 4) - center) < Fraction(1, 16)


def about(said):
    """{name of a part: what is said of it}."""
    return {part["name"]: part["about"] for part in said["parts"]}


def test_the_list_says_where_what_meets_each_piece():
    """By hand: a foot of 3 1/2 and a rail of 1 1/2, and (34 1/2 − 3 1/2 − 4 1/2) ÷ 2 = 13 1/4 on
    top of them, 18 1/4 from the floor and 13 1/4 up the middle stile, 3/8 more with its tenon;
    33 ÷ 2 − 3/4 = 15 3/4 to the middle stile along a rail."""
    values = CABINET | {"middle_stiles": "1", "middle_rails": "1", "stiles_run": "floor"}
    grain = "Grain runs along the length."
    said = about(reckon(KEY, **values))
    holes = "Pocket holes in the back at both ends."
    assert said["Stile"] == [
        grain,
        "Bottom rail: its bottom edge 3 1/2″ from the bottom end.",
        "Middle rail: its bottom edge 18 1/4″ from the bottom end.",
    ]
    assert said["Middle rail"] == [grain, holes]
    assert said["Bottom rail"] == [
        grain,
        holes,
        "Middle stile: its left edge 15 3/4″ from the left end.",
    ]
    tenoned = about(reckon(KEY, **values, joint="tenon", tenon="3/8"))
    assert tenoned["Middle stile"] == [
        grain,
        "Tenon 3/8″ long at both ends.",
        "Middle rail: its bottom edge 13 5/8″ from the bottom end, tenon included.",
    ]
    assert tenoned["Stile"] == said["Stile"]
    doweled = about(reckon(KEY, **values, joint="dowels"))
    assert doweled["Top rail"][1] == "Dowels at both ends: see Dowel layout."


def test_the_list_says_how_long_a_through_tenon_is_at_which_end():
    """Through an outer stile of 2 and half of a middle one of 1 1/2; through rails of 3 and 2.
    24 − 2 − 3 − 3 = 16 is 256 sixteenths, 85, 85 and 86: 3 + 5 3/8, and 1 1/2 + 5 5/16 more."""
    values = ALONE | {"middle_stiles": "2", "middle_rails": "2", "joint": "through"}
    said = about(reckon(KEY, **values, left_stile="2", top_rail="2", bottom_rail="3"))
    assert said["Middle rail (bay 1)"][1] == (
        "Tenon 3/4″ long at the end in the middle stile, 2″ at the other."
    )
    assert said["Middle stile"][1] == "Tenon 3″ long at the bottom end, 2″ at the top end."
    assert said["Top rail"][1] == "Tenon 2″ long at the left end, 1 1/2″ at the right end."
    assert [each for each in said["Right stile"] if "Middle rails" in each] == [
        "Middle rails: their bottom edges 8 3/8″ and 15 3/16″ from the bottom end."
    ]


marked = st.integers(0, 64 * 40).map(lambda number: 30 + Fraction(number, 64))
few = st.integers(0, 6)


@settings(max_examples=150)
@given(
    marked,
    marked,
    few,
    few,
    st.integers(64, 160).map(lambda number: Fraction(number, 64)),
    st.sampled_from(["between", "through"]),
    st.sampled_from(["screws", "tenon"]),
    st.sampled_from([("in", "1/16"), ("in", "1/8"), ("in", ".01 in"), ("mm", "1 mm")]),
)
def test_what_is_told_cut_exactly_so_adds_up_to_the_frame(
    wide, high, stiles, rails, stile, run, joint, marks
):
    """Added up from the told numbers alone: what is on a 64th in comes out exactly, what is on no
    mark of the person's short by less than one; never longer. No two differ by more than one."""
    unit, grid = marks
    values = {"size_of": "frame", "width": f"{wide} in", "height": f"{high} in"}
    values |= {"middle_stiles": str(stiles), "middle_rails": str(rails), "stile": f"{stile} in"}
    values |= {"middle_stiles_run": run, "joint": joint, "tenon": "1/4 in"}
    said = reckon(KEY, {"unit": unit, "display": unit, "mark": grid}, **values)
    key = "shoulders" if joint == "tenon" else "rails"
    long = {name: length for label, length in told(said, key).items() for name in named(label)}
    step = Fraction(5, 127) if unit == "mm" else Fraction(1, 100) if "." in grid else Fraction(grid)
    exactly = grid in ("1/16", "1/8")
    columns, rows = (list(told(said, f"opening_{each}").values()) for each in ("widths", "heights"))
    sums = [(wide, sum(columns) + (stiles + 2) * stile), (high, sum(rows) + (rails + 2) * stile)]
    sums += [
        (
            wide,
            sum(long.get((name, bay), long.get((name, None), 0)) for bay in bays)
            + (len(bays) + 1) * stile,
        )
        for name in ("Top rail", "Bottom rail", *(["Middle rail"] if rails else []))
        for bays in [range(1, stiles + 2) if run == "through" or name[0] == "M" else [None]]
    ]
    for whole, cut in sums:
        assert whole - step < cut <= whole
        assert cut == whole or not exactly
    for sizes in (columns, rows):
        assert max(sizes) - min(sizes) <= step


@pytest.mark.parametrize(
    ("values", "warned"),
    [
        ({"edge": "flush"}, "a stile 3/4″ wide"),
        ({"edge": "flush", "joint": "dowels"}, None),
        ({"stile": "1 1/4"}, None),
        ({"right_stile": "1 7/32"}, "a stile 1 7/32″ wide"),
        ({"middle_stile": "1", "middle_stiles": "1", "middle_rails": "1"}, "a stile 1″ wide"),
        ({"middle_stile": "1", "middle_stiles": "1"}, None),
        ({"bottom_edge": "flush", "middle_stiles": "1"}, "a rail 3/4″ wide"),
        ({"bottom_edge": "flush"}, None),
    ],
)
def test_pocket_screws_into_a_narrow_edge_are_warned_of(values, warned):
    """A usual 1 1/4 screw through 3/4 stock; common practice, no source."""
    said = [each for each in reckon(KEY, **CABINET | values)["cautions"] if "come through" in each]
    assert [warned in each for each in said] == ([] if warned is None else [True])


@pytest.mark.parametrize("joint", ["screws", "dowels", "tenon", "through"])
def test_every_joint_has_its_caution_and_defers_to_instructions(joint):
    said = reckon(KEY, **ALONE, joint=joint)["cautions"]
    assert any("instructions" in each or "maker calls for" in each for each in said)
    assert any("Unplug" in each for each in said)


def test_a_given_number_of_the_drawing_opens_its_field():
    said = reckon(
        KEY,
        **CABINET,
        bays="given",
        widths=["10"],
        rows="given",
        heights=["5"],
        stiles_run="floor",
        stile="2",
    )
    opened = {
        shape["text"]: shape["field"]
        for shape in said["drawing"]["shapes"]
        if shape.get("field") and shape["kind"] == "dimension"
    }
    assert opened == {
        "36″": "width",
        "34 1/2″": "height",
        "10″": "widths",
        "5″": "heights",
        "3 1/2″": "kick",
    }
    notes = [
        shape for shape in said["drawing"]["shapes"] if shape.get("text") == "stiles and rails 2″"
    ]
    assert [note["field"] for note in notes] == ["stile"]
