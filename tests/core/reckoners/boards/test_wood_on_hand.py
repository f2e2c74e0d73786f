"""Wood on hand: how much there is, what is clear of it, and what it offers."""

from fractions import Fraction

import pytest
from asking import ask, errors, found, items, reckon, texts
from hypothesis import given
from hypothesis import strategies as st

from sawside.boards.offer import Offer
from tests.core.oracles.counted_wood import longest_clear

BOARD = {"thickness": "13/16", "width": "6 3/8", "length": "85 1/2"}
SHEET = {"form": "sheet", "thickness": "23/32", "width": "23 7/8", "length": "48"}


def have(*rows, settings=None):
    return reckon("wood_on_hand", settings, wood=list(rows))


def offers(*rows, settings=None):
    return found("wood_on_hand", {"wood": list(rows)}, settings).stock


def refused(**row):
    return errors(ask("wood_on_hand", wood=[BOARD | row]))["wood"]


def test_what_is_there_is_offered_as_it_was_measured():
    row = BOARD | {
        "material": "cherry",
        "count": "3",
        "bad": "0 to 1 1/2, 40 to 44",
        "note": "rack",
    }
    assert offers(row) == (
        Offer(
            "1",
            "board",
            "cherry",
            Fraction(171, 2),
            Fraction(51, 8),
            Fraction(13, 16),
            count=3,
            bad=((0, Fraction(3, 2)), (40, 44)),
            name="rack",
        ),
    )


def test_a_stick_may_leave_its_width_open_and_a_sheet_may_not():
    [stick] = offers({"form": "stick", "length": "61 in"})
    assert (stick.width, stick.thickness, stick.count) == (None, None, 1)
    said = errors(ask("wood_on_hand", wood=[SHEET | {"thickness": ""}]))["wood"]
    assert (said["part"], said["message"]) == ("thickness", "Wood 1: Thickness is blank.")


def test_boards_are_added_up_in_board_feet_sheets_in_square_feet_and_sticks_in_length():
    """1 × 6 × 96 ÷ 144 = 4 board feet, two of them 8; 24 × 48 ÷ 144 = 8 sq ft; 3 × 60 = 180."""
    said = have(
        {"thickness": "1", "width": "6", "length": "96", "count": "2"},
        SHEET | {"width": "24"},
        {"form": "stick", "length": "60", "count": "3"},
    )
    told = texts(said)
    assert (told["pieces"], told["board_feet"], told["area"]) == ("6", "8 board feet", "8 sq ft")
    assert told["sticks"] == "180″"
    assert said["verdict"] == "2 boards, 1 sheet and 3 sticks on hand"


def test_the_longest_clear_stretch_is_between_the_bad_ones():
    """85 1/2 − 44 = 41 1/2, and 40 − 1 1/2 = 38 1/2."""
    said = have(BOARD | {"bad": "0 to 1 1/2; 40 to 44"})
    assert items(said, "clear") == [Fraction(83, 2)]
    assert "clear" not in texts(have(BOARD))


def test_bad_stretches_that_meet_are_one_and_their_order_does_not_matter():
    [board] = offers(BOARD | {"bad": "40 to 44 and 10 to 12, 42 to 50"})
    assert board.bad == ((10, 12), (40, 50))


@pytest.mark.parametrize(
    "text",
    [
        "12 to 15, 40 to 41 1/2",
        "12-15; 40-41 1/2,",
        "12 – 15 AND 40 – 41 1/2",
        "1 ft to 15,40-41.5",
        "12 - 15,40 To 41-1/2",
    ],
)
def test_a_bad_stretch_is_read_in_every_form_that_one_would_write(text):
    [board] = offers(BOARD | {"bad": text})
    assert board.bad == ((12, 15), (40, Fraction(83, 2)))


def test_a_bad_stretch_has_the_unit_of_the_project_or_its_own():
    row = {"thickness": "20", "width": "150", "length": "2000", "bad": "254 to 508, 30 in to 40 in"}
    [board] = offers(row, settings={"unit": "mm"})
    assert board.bad == ((10, 20), (30, 40))


def test_a_bad_stretch_may_run_to_the_end():
    [board] = offers(BOARD | {"bad": "80 to end, 10 to 12"})
    assert board.bad == ((10, 12), (80, Fraction(171, 2)))


@pytest.mark.parametrize(
    ("bad", "says"),
    [
        ("31 36", "I can’t read the bad stretch “31 36”"),
        ("31 to x", "Wood 1"),
        ("36 to 31", "runs backward"),
        ("36 to 36", "ends where it starts"),
        ("80 to 90", "runs past the end, 85 1/2″"),
        ("0 to 85 1/2", "take all of it"),
        ("-3 to 4", "starts before the end of the board"),
    ],
)
def test_a_bad_stretch_that_is_none_says_so_beside_it(bad, says):
    said = refused(bad=bad)
    assert says in said["message"]
    assert said["remedy"].endswith(".")
    assert (said["row"], said["part"]) == (0, "bad")


@pytest.mark.parametrize("part", ["length", "width", "thickness"])
def test_a_board_without_one_of_its_sizes_is_refused_there(part):
    said = refused(**{part: ""})
    assert (said["part"], said["kind"]) == (part, "missing")
    assert said["remedy"]


def test_the_drawing_marks_what_is_bad_and_says_how_much_it_leaves_out():
    drawn = have(BOARD | {"bad": "40 to 44"})["drawing"]
    [bad] = [shape for shape in drawn["shapes"] if shape.get("role") == "ghost"]
    assert {x for x, _ in bad["points"]} == {40, 44}
    many = have(*(BOARD | {"width": str(3 + number)} for number in range(7)))["drawing"]
    assert "The first 5 of 7." in many["words"]


ticks = st.integers(0, 60 * 16)


@given(st.lists(st.tuples(ticks, ticks), min_size=1, max_size=3))
def test_the_longest_clear_stretch_is_that_of_a_board_marked_tick_by_tick(pairs):
    bad = [
        tuple(Fraction(each, 16) for each in sorted(pair)) for pair in pairs if len({*pair}) == 2
    ]
    clear = longest_clear(60, bad)
    if not bad:
        return
    row = {"thickness": "3/4", "width": "6", "length": "60"}
    row["bad"] = "; ".join(f"{start} to {end}" for start, end in bad)
    if not clear:
        assert "take all" in errors(ask("wood_on_hand", wood=[row]))["wood"]["message"]
        return
    assert items(have(row, settings={"mark": "1/64"}), "clear") == [clear]
