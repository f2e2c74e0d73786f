"""How sheets of a project are broken down is as its settings say."""

import pytest
from planned import by_hand, on_hand, planned, wanted
from projects import acts, begun

from tests.core.oracles.sawn_plan import faults

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


def test_boards_are_ripped_and_crosscut_whatever_is_said_of_sheets():
    board = on_hand({"thickness": "3/4", "width": "7 1/2", "length": "96"})
    rails = by_hand("Rail", "40", "2 1/4", count="4")
    ways = {}
    for way in ("", "crosscut"):
        document = acts(begun(), ("set", {"settings": {"first_cut": way}}), board, rails)
        ways[way] = planned(document)["act"]["plan"]["boards"]
    assert ways[""] == ways["crosscut"]
