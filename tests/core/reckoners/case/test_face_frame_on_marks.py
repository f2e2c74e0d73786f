"""Face frames as they are told: what is cut to the marks goes together."""

from fractions import Fraction

from asking import reckon
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.core.oracles.laid_out_frame import CABINET, KEY, items, named


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
