"""A kept plan at the saw: pieces are ticked and scrapped, boards are bad, and it is planned again.

What is expected is worked out by hand, with kerfs of 1/8; plans are sawn by `oracles/sawn_plan.py`.
"""

import pytest
from planned import by_hand, kept, nothing_to_help_on_sale, on_hand, planned, wanted
from projects import acts, change, changed, lasting, view

from tests.core.oracles.sawn_plan import faults, fixed
from tests.core.projects import begun

CUT = {"part": "piece", "by": 1}


def rails():
    """Two boards of 8 ft: 60 and 30 on one, 60 and 30 on the other."""
    return kept(acts(begun(), by_hand("Long", "60", count="2"), by_hand("Short", "30", count="2")))


def boards(document):
    """(name, state, how many of its pieces are left) of each board, and the groups at the saw."""
    seen = view(document, order="plan", drawings=False)
    told = [b for group in seen["plan"]["groups"] for b in group["boards"]]
    lefts = {group.get("board"): group["left"] for group in seen["cuts"]["groups"]}
    return [(board["name"], board["state"], lefts.get(board["key"])) for board in told]


def test_the_saw_has_a_group_for_each_board_with_what_is_left_of_it():
    document = rails()
    assert boards(document) == [("Board 1", "to cut", 2), ("Board 2", "to cut", 2)]
    group = view(document, order="plan")["cuts"]["groups"][0]
    assert group["said"] == "Board 1, 8 ft × 2 1/4″ × 3/4″: 2 cuts"
    assert group["pieces"] == [{"entry": "1", "part": "piece"}, {"entry": "2", "part": "piece"}]


def test_the_nth_piece_of_a_part_is_at_its_nth_place_and_a_cut_is_done_once_it_came_off():
    document = changed(rails(), "cut", id="2", **CUT)
    assert boards(document) == [("Board 1", "begun", 1), ("Board 2", "to cut", 2)]
    document = changed(document, "cut", id="1", **CUT)
    assert boards(document)[0] == ("Board 1", "cut", 0)
    document = changed(document, "cut", id="1", **CUT)
    assert boards(document)[1] == ("Board 2", "begun", 1)
    told = view(document)["plan"]["groups"][0]["boards"][1]
    assert [cut["done"] for cut in told["cuts"]] == [True, False]
    assert told["left"] == [{"entry": "2", "part": "piece"}]
    assert view(document)["plan"]["stale"] == ""


def test_each_cut_says_which_pieces_have_to_wait_for_it():
    # Lengths of 40 and of 30 come off one sheet: each is there before strips are ripped out of it.
    document = kept(
        acts(
            begun(),
            on_hand({"form": "sheet", "width": "48"}),
            by_hand("Wide", "40", width="20", count="2"),
            by_hand("Narrow", "30", width="15", count="3"),
        )
    )
    (board,) = view(document)["plan"]["groups"][0]["boards"]
    waiting = {cut["said"]: [each["entry"] for each in cut["before"]] for cut in board["cuts"]}
    assert waiting == {
        "Set the stop to 40″. Crosscut 1.": ["2", "3"],
        "Set the stop to 30″. Crosscut 1.": ["3"],
        "Set the fence to 20″. Rip 2: 2 × Wide.": [],
        "Set the fence to 15″. Rip 3: 3 × Narrow.": [],
    }
    document = changed(document, "cut", id="2", **CUT)
    (board,) = view(document)["plan"]["groups"][0]["boards"]
    waiting = {cut["said"]: [each["entry"] for each in cut["before"]] for cut in board["cuts"]}
    assert [*waiting.values()] == [[], ["3"], [], []]


def test_without_a_plan_all_is_in_one_group_that_says_so():
    document = acts(begun(), by_hand("Long", "60", count="2"))
    (group,) = view(document, order="plan")["cuts"]["groups"]
    assert group["said"] == "No plan yet: 2 cuts"
    assert view(document)["plan"] is None


def test_what_is_not_in_the_plan_stands_behind_its_boards():
    document = acts(rails(), by_hand("Later", "10"))
    assert view(document, order="plan")["cuts"]["groups"][-1]["said"] == "Not in the plan: 1 cut"
    assert view(document)["plan"]["stale"] == "The plan lacks 1 piece: Later. Plan again."


def test_a_scrapped_piece_is_lacked_and_planned_again_on_what_is_left():
    document = acts(rails(), ("cut", {"id": "2"} | CUT), ("spoil", {"id": "2", "part": "piece"}))
    told = view(document)["plan"]
    assert told["stale"] == "The plan lacks 1 piece: Short. Plan again."
    # Board 2 is bought by now: 96 − 60 − 30 − 2 × 1/8 = 5 3/4 is left of it, so one more is bought.
    answer = planned(document)
    assert answer["plan"]["said"].startswith("Buy 1 board: 4 pieces to cut")
    again = changed(document, **answer["act"])
    assert view(again)["plan"]["stale"] == ""
    assert faults(again["plan"], wanted(again)) == []
    assert [len(those) for those in fixed(again["plan"]).values()] == [1]


def test_nothing_that_is_cut_moves_when_it_is_planned_again_and_what_was_bought_is_there():
    document = changed(rails(), "cut", id="1", **CUT)
    before = view(document)["plan"]
    again = kept(document)
    after = view(again)["plan"]
    assert before["buy"] != []
    assert after["buy"] == []
    assert after["said"] == "Nothing to buy: 3 pieces to cut from 2 boards"
    assert boards(again) == [("Board 1", "begun", 1), ("Board 2", "to cut", 2)]
    assert kept(again)["plan"] == again["plan"]


def test_what_is_to_be_bought_stays_on_the_list_while_only_wood_on_hand_is_cut():
    document = kept(
        acts(
            begun(),
            on_hand({"width": "2 1/4"}),
            by_hand("Long", "60", count="2"),
            by_hand("Short", "30", count="1"),
        )
    )
    assert [name for name, *_ in boards(document)] == ["Board 1", "Board 2"]
    document = acts(document, ("cut", {"id": "2"} | CUT), ("spoil", {"id": "2", "part": "piece"}))
    again = planned(document)["plan"]
    # Board 1 is the one on hand, and 96 − 60 − 1/8 is left of it; Board 2 was not cut of yet.
    assert again["said"] == "Buy 2 boards: 3 pieces to cut from 3 boards"
    document = changed(kept(document), "cut", id="2", **CUT)
    # That one came off a board that was bought, so what else is on the list was brought with it.
    assert planned(document)["plan"]["said"] == "Nothing to buy: 2 pieces to cut from 3 boards"


def test_a_board_on_hand_keeps_its_number_when_it_is_planned_again():
    document = kept(
        acts(
            begun(),
            on_hand({"width": "4"}, {"width": "2 1/4"}),
            by_hand("Wide", "60", width="4"),
            by_hand("Long", "60"),
            by_hand("Longer", "95", count="2"),
        )
    )
    before = {board["key"]: board.get("from") for board in document["plan"]["boards"]}
    assert len(before) == 4
    document = kept(changed(document, "cut", id="4", **CUT))
    after = {board["key"]: board.get("from") for board in document["plan"]["boards"]}
    assert after == before


def test_before_anything_is_cut_a_plan_is_made_anew_and_buys_as_much():
    document = rails()
    assert kept(document)["plan"] == document["plan"]


def test_a_bad_board_gives_nothing_more_and_what_it_had_waits():
    document = acts(rails(), ("cut", {"id": "1"} | CUT), ("board_bad", {"board": "1"}))
    assert [state for _, state, _ in boards(document)] == ["bad", "to cut"]
    assert view(document)["plan"]["stale"] == "The plan lacks 1 piece: Short. Plan again."
    document = changed(document, "cut", id="2", **CUT)
    assert boards(document)[1] == ("Board 2", "begun", 1)
    again = kept(document)
    assert view(again)["plan"]["stale"] == ""
    assert faults(again["plan"], wanted(again)) == []
    assert sum(board.get("bought", False) for board in again["plan"]["boards"]) == 1
    said = change(document, "board_bad", board="1")["error"]
    assert said["message"] == "Board 1 is marked bad already."
    assert change(document, "board_bad", board="9")["error"]["kind"] == "unknown"


def test_a_board_on_hand_that_was_used_up_is_not_there_again():
    document = acts(
        begun(),
        on_hand({"width": "2 1/4", "count": "2"}),
        by_hand("Long", "60", count="3"),
        nothing_to_help_on_sale(),
    )
    answer = planned(document)
    assert answer["unplanned"] == 1
    document = acts(changed(document, **answer["act"]), ("cut", {"id": "2"} | CUT))
    again = planned(document)
    assert again["unplanned"] == 1
    assert faults(again["act"]["plan"], {("2", "piece"): (60, None, 1)}, on_hand={"1:1": 2}) == []


def test_a_correction_makes_the_plan_stale_and_says_which_pieces():
    document = rails()
    values = by_hand("", "59", count="2")[1]["values"]
    document = changed(document, "correct", id="1", values=values)
    assert view(document)["plan"]["stale"] == "Other sizes now: Long. Plan again."
    fewer = by_hand("", "60", count="1")[1]["values"]
    document = changed(rails(), "correct", id="1", values=fewer)
    assert view(document)["plan"]["stale"] == (
        "The plan has more than you need of Long. Plan again."
    )
    document = changed(rails(), "delete", id="1")
    assert view(document)["plan"]["stale"] == (
        "2 pieces of it are no longer in the project. Plan again."
    )


@pytest.mark.parametrize(
    ("act", "more"),
    [("keep_plan", {}), ("board_bad", {"board": "1"}), ("board_bad", {"board": "2"})],
)
def test_each_act_on_a_plan_is_undone(act, more):
    document = changed(rails(), "cut", id="2", **CUT)
    said = change(document, act, **more)
    assert lasting(said["document"]) != lasting(document)
    assert lasting(changed(said["document"], **said["undo"])) == lasting(document)


def test_a_first_plan_is_undone_to_none():
    bare = acts(begun(), by_hand("Long", "60"))
    said = change(bare, **planned(bare)["act"])
    assert said["said"] == "Saved a cutting plan of 1 board."
    assert changed(said["document"], **said["undo"]).get("plan") is None


def test_offcuts_worth_saving_go_into_the_wood_on_hand_and_are_there_once():
    document = kept(acts(begun(), by_hand("Side", "60", "24", "23/32")))
    assert change(document, "save_offcuts", board="1")["error"]["message"] == (
        "Sheet 1 isn’t all cut yet."
    )
    document = changed(document, "cut", id="1", **CUT)
    offcuts = view(document)["plan"]["groups"][0]["boards"][0]["offcuts"]
    said = change(document, "save_offcuts", board="1")
    assert said["said"] == "Saved 2 offcuts of Sheet 1 to the wood on hand."
    rows = said["document"]["entries"][-1]["values"]["wood"]
    sizes = [tuple(row[key].removesuffix(" in") for key in ("length", "width")) for row in rows]
    assert [f"{length}″ × {width}″" for length, width in sizes] == offcuts
    assert {row["thickness"] for row in rows} == {"23/32 in"}
    assert lasting(changed(said["document"], **said["undo"])) == lasting(document)
    again = change(said["document"], "save_offcuts", board="1")["error"]
    assert again["message"] == "The offcuts of Sheet 1 are on the list already."
    # 96 × 48 less 60 × 24: both ways of cutting leave 24 less a kerf, so one more goes in, not two.
    more = acts(said["document"], by_hand("More", "30", "23 1/2", "23/32", count="2"))
    plan = planned(more)["act"]["plan"]
    assert faults(plan, wanted(more), on_hand={"2:1": 1, "2:2": 1}) == []
    assert [board["key"] for board in plan["boards"] if board.get("saved")] == ["1"]


def test_offcuts_are_added_to_the_wood_that_is_listed_already():
    document = acts(begun(), on_hand({"width": "2 1/4"}), by_hand("Rail", "40"))
    document = acts(kept(document), ("cut", {"id": "2"} | CUT), ("save_offcuts", {"board": "1"}))
    rows = document["entries"][0]["values"]["wood"]
    assert [row["length"] for row in rows] == ["96", "55 7/8 in"]
    # The board itself is used up, and what is left of it is on the list.
    more = acts(document, by_hand("Stile", "50", count="2"), nothing_to_help_on_sale())
    assert planned(more)["unplanned"] == 1
