"""What to buy and which piece comes out of which board, worked out by hand and sawn again.

By hand, kerf 1/8: 30 1/4 + 30 1/4 + 16 1/2 + 16 1/2 and 3 kerfs are 93 7/8 of 96; twelve pieces of
together 340 and 12 kerfs don't go into three boards of 96 1/8 each (288 3/8), so four are bought.
"""

import pytest
from planned import (
    by_hand,
    nothing_to_help_on_sale,
    on_hand,
    on_sale,
    planned,
    rails,
    said_of,
    wanted,
)
from projects import acts, ask, begun, changed

from tests.core.oracles.sawn_plan import faults

SHEET = {"form": "sheet", "thickness": "23/32", "width": "48", "length": "96"}


def test_without_wood_boards_as_wide_as_the_pieces_are_bought_and_it_says_so():
    answer = planned(rails())
    told = answer["plan"]
    assert told["said"] == "Buy 4 boards: 12 pieces to cut"
    assert [each["said"] for each in told["buy"]] == ["4 boards, 8 ft × 2 1/4″ × 3/4″"]
    assert told["note"].startswith("No wood on the project yet: planned on usual sizes.")
    assert told["groups"][0]["best"] == "Fewer can’t do it"
    assert (answer["more"], answer["unplanned"]) == (False, 0)
    assert faults(answer["act"]["plan"], wanted(rails())) == []


def test_what_is_on_hand_is_used_before_anything_is_bought_and_no_more_of_it_than_there_is():
    document = acts(
        begun(),
        on_hand({"width": "2 1/4", "count": "1"}),
        by_hand("Rail", "40", count="4"),
        nothing_to_help_on_sale(),
    )
    answer = planned(document)
    assert answer["unplanned"] == 2
    (left,) = answer["plan"]["left_out"]
    assert left["error"]["message"] == "2 pieces of Rail won’t come out of the wood on hand."
    assert left["error"]["remedy"] == "Add wood 3/4″ thick to the wood to buy."
    said = answer["plan"]["said"]
    assert said == "No wood for 2 pieces. Nothing to buy: 2 pieces to cut from 1 board"
    assert answer["progress"] == ""


def test_bad_wood_is_cut_out_and_no_piece_lies_in_it():
    document = acts(
        begun(),
        on_hand({"width": "2 1/4", "bad": "0 to 3, 40 to 44"}),
        by_hand("Rail", "36 3/4"),
        by_hand("Stile", "51"),
    )
    answer = planned(document)
    assert answer["unplanned"] == 0
    assert faults(answer["act"]["plan"], wanted(document)) == []
    assert said_of(answer["plan"])["Board 1"][0] == "Trim 3″ off one end."


def test_rough_allowances_are_cut_and_grain_across_is_turned():
    document = acts(
        begun(),
        on_hand(SHEET),
        by_hand("Door", "20", "40", "23/32", about={"grain": "across"}),
        by_hand("Side", "20", "10", "23/32", about={"rough_length": "1", "rough_width": "1/4"}),
    )
    answer = planned(document)
    assert answer["unplanned"] == 0
    assert faults(answer["act"]["plan"], wanted(document)) == []
    turned = [p for b in answer["act"]["plan"]["boards"] for p in b["pieces"] if p.get("turned")]
    assert [each["entry"] for each in turned] == ["2"]


def test_more_pieces_than_a_plan_has_are_a_sentence_before_the_work_starts():
    lines = [by_hand(f"Slat {n}", "10", count="1000") for n in range(11)]
    said = ask("plan", acts(begun(), *lines))
    assert said["error"]["message"] == "That’s 11,000 pieces. The most in one plan is 10,000."
    assert said["error"]["kind"] == "range"


def test_what_is_bought_is_called_what_it_is_while_it_is_looked_for():
    document = acts(begun(), by_hand("Side", "30", "20", "23/32", count="2"))
    assert planned(document)["progress"] == "1 sheet to buy. No plan buys less."
    both = acts(document, by_hand("Rail", "40"))
    assert planned(both)["progress"] == "1 board and 1 sheet to buy. No plan buys less."
    there = acts(begun(), on_hand(SHEET), by_hand("S", "9", "9", "23/32"))
    assert planned(there)["progress"] == ""


def test_where_one_board_is_needed_nothing_costs_less_than_one():
    """40 of 96 in are not half of a board, and no yard sells less than one."""
    row = {"sold": "board", "thickness": "3/4", "width": "6", "length": "96", "price": "20"}
    document = acts(begun(), on_sale(row | {"per": "piece"}), by_hand("Rail", "40", count="2"))
    answer = planned(document)
    assert answer["plan"]["groups"][0]["best"] == "Nothing costs less"
    assert answer["more"] is False


def test_a_project_without_pieces_has_nothing_to_cut_and_nothing_to_keep():
    answer = planned(begun())
    assert answer["plan"]["said"] == "Nothing to cut"
    assert answer["act"] is None


@pytest.mark.parametrize("effort", [0, 1, 2])
def test_the_same_effort_gives_the_same_plan_and_more_never_a_worse_one(effort):
    document = rails()
    first, again = planned(document, effort), planned(document, effort)
    assert first == again
    assert len(first["plan"]["buy"]) <= len(planned(document, max(effort - 1, 0))["plan"]["buy"])


def test_a_metric_project_is_planned_on_metric_sheets():
    document = changed(begun(), "set", settings={"unit": "mm", "display": "mm", "mark": "1 mm"})
    document = acts(document, by_hand("Side", "800", "300", "18", count="4"))
    (buy,) = planned(document)["plan"]["buy"]
    assert buy["said"] == "1 sheet, 2440 mm × 1220 mm × 18 mm"
