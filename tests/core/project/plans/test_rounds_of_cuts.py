"""How sheets of a project are broken down is as its settings say."""

import pytest
from asking import ask, errors, reckon
from planned import by_hand, on_hand, planned, wanted
from projects import acts, begun, change

from tests.core.oracles.sawn_plan import faults, inches, sawn

SIZES = [("30", "11 1/4"), ("17 1/2", "22"), ("45", "9"), ("12", "14"), ("26", "18 3/4")]


def rounds(board):
    """[(which way the cuts of a round go)] of each part's making, the longest of them; trims are no
    round of their own."""
    made, longest = {0: ()}, ()
    for number, cut in enumerate(board["cuts"]):
        ways = made[cut["part"]]
        if not cut.get("trim") and (not ways or ways[-1] != cut["way"]):
            ways = (*ways, cut["way"])
        longest = max(longest, ways, key=len)
        made |= {2 * number + 1: ways, 2 * number + 2: ways}
    return longest


def cut_after_the_first_round(board):
    """(long side, short side) of each part that the second round of cuts begins with."""
    parts, _ = sawn(board, inches("1/8 in"))
    made = {0: ()}
    for number, cut in enumerate(board["cuts"]):
        ways = made[cut["part"]]
        if not cut.get("trim") and (not ways or ways[-1] != cut["way"]):
            if len(ways) == 1:
                yield tuple(sorted(parts[cut["part"]][2:], reverse=True))
            ways = (*ways, cut["way"])
        made |= {2 * number + 1: ways, 2 * number + 2: ways}


def sheets(settings, *more):
    """The boards of the plan of parts out of sheets."""
    parts = [by_hand(f"Part {n}", *size, "23/32", count="4") for n, size in enumerate(SIZES, 1)]
    document = acts(begun(), ("set", {"settings": settings}), *more, *parts)
    answer = planned(document)
    assert faults(answer["act"]["plan"], wanted(document)) == []
    assert answer["unplanned"] == 0
    return answer["act"]["plan"]["boards"], answer["plan"]


@pytest.mark.parametrize("way", ["rip", "crosscut"])
def test_the_first_cuts_of_each_sheet_go_the_way_of_the_settings(way):
    boards, _ = sheets({"first_cut": way})
    assert boards
    assert {rounds(board)[0] for board in boards} == {way}


@pytest.mark.parametrize("most", ["2", "3"])
def test_a_sheet_takes_no_more_rounds_of_cuts_than_the_settings_allow(most):
    boards, told = sheets({"rounds": most})
    assert all(len(rounds(board)) <= int(most) for board in boards)
    assert "rounds of cuts" not in told["note"]


def test_without_a_setting_sheets_are_cut_in_as_many_rounds_as_it_takes():
    boards, _ = sheets({})
    assert max(len(rounds(board)) for board in boards) > 2


def test_what_two_rounds_can_not_cut_is_cut_in_more_and_that_is_said():
    """Two that match side by side are ripped off as one, crosscut, and ripped apart."""
    odd = on_hand({"form": "sheet", "thickness": "1/2", "width": "20", "length": "20"})
    part = by_hand("Front", "9", "9", "1/2", count="2", about={"grain": "matched"})
    document = acts(begun(), ("set", {"settings": {"first_cut": "rip", "rounds": "2"}}), odd, part)
    answer = planned(document)
    assert faults(answer["act"]["plan"], wanted(document)) == []
    assert answer["unplanned"] == 0
    assert "more rounds of cuts than the settings allow" in answer["plan"]["note"]


@pytest.mark.parametrize(
    ("settings", "long", "short"),
    [
        ({"part_length": "50", "part_width": "48"}, 50, 48),
        ({"part_length": "60"}, 60, 60),
        ({"part_width": "24", "first_cut": "rip"}, 96, 24),
    ],
)
def test_what_the_first_cuts_leave_to_cut_is_no_larger_than_one_can_handle(settings, long, short):
    boards, told = sheets(settings)
    largest = [size for board in boards for size in cut_after_the_first_round(board)]
    assert largest
    assert all(one <= long and other <= short for one, other in largest)
    assert "larger parts" not in told["note"]


def test_without_a_limit_larger_parts_are_left_to_cut():
    boards, _ = sheets({})
    largest = [size for board in boards for size in cut_after_the_first_round(board)]
    assert any(one > 60 for one, _ in largest)


def test_a_piece_that_only_comes_out_of_a_larger_part_is_planned_and_that_is_said():
    """90 × 40 comes out of a strip 96 × 40, or a part 90 × 48, which is cut once more."""
    part = by_hand("Back", "90", "40", "23/32")
    document = acts(begun(), ("set", {"settings": {"part_length": "60"}}), part)
    answer = planned(document)
    assert faults(answer["act"]["plan"], wanted(document)) == []
    assert answer["unplanned"] == 0
    assert "larger parts than the settings allow" in answer["plan"]["note"]


@pytest.mark.parametrize(("unit", "text"), [("in", "12 ft 97 in"), ("mm", "10"), ("in", "0")])
def test_a_largest_part_that_is_none_is_refused_at_its_setting(unit, text):
    said = change(begun(), "set", settings={"unit": unit, "part_length": text})
    assert said["error"]["field"] == "settings.part_length"
    assert said["error"]["message"].startswith("Largest part, long side must be from 6 in to 20 ft")


def test_the_question_takes_the_largest_part_of_the_settings_where_its_own_is_blank():
    """A sheet of 96 × 48 ripped to 40 leaves 96 × 40, and crosscut to 90 leaves 90 × 48."""
    values = {"pieces": [{"length": "90", "width": "40"}]}
    settings = {"part_length": "60"}
    reckon("sheets", **values)
    assert "part_length" in errors(ask("sheets", settings, **values))
    reckon("sheets", settings, **values, part_length="96")


def test_boards_are_ripped_and_crosscut_whatever_is_said_of_sheets():
    board = on_hand({"thickness": "3/4", "width": "7 1/2", "length": "96"})
    rails = by_hand("Rail", "40", "2 1/4", count="4")
    ways = {}
    for way in ("", "crosscut"):
        document = acts(begun(), ("set", {"settings": {"first_cut": way}}), board, rails)
        ways[way] = planned(document)["act"]["plan"]["boards"]
    assert ways[""] == ways["crosscut"]
