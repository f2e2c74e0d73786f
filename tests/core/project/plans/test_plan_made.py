"""What to buy and which piece comes out of which board, worked out by hand and sawn again.

By hand, kerf 1/8: 30 1/4 + 30 1/4 + 16 1/2 + 16 1/2 and 3 kerfs are 93 7/8 of 96; twelve pieces of
together 340 and 12 kerfs don't go into three boards of 96 1/8 each (288 3/8), so four are bought.
"""

import pytest
from planned import by_hand, kept, on_hand, on_sale, planned, said_of, wanted
from projects import acts, ask, begun, changed, view

from tests.core.oracles.sawn_plan import faults

SHEET = {"form": "sheet", "thickness": "23/32", "width": "48", "length": "96"}


def rails():
    return acts(
        begun(),
        by_hand("Stile", "30 1/4", count="4"),
        by_hand("Rail", "16 1/2", count="6"),
        by_hand("Long rail", "60", count="2"),
    )


def test_without_wood_boards_as_wide_as_the_pieces_are_bought_and_it_says_so():
    answer = planned(rails())
    told = answer["plan"]
    assert told["said"] == "Buy 4 boards: 12 pieces to cut"
    assert [each["said"] for each in told["buy"]] == ["4 boards, 8 ft × 2 1/4″ × 3/4″"]
    assert told["note"].startswith("No wood on the project yet: planned on usual sizes.")
    assert told["groups"][0]["best"] == "Fewer can’t do it"
    assert (answer["more"], answer["unplanned"]) == (False, 0)
    assert faults(answer["act"]["plan"], wanted(rails())) == []


def test_cuts_of_one_setting_stand_together_and_boards_that_share_it_are_named():
    told = planned(rails())["plan"]
    assert said_of(told)["Board 1"] == [
        "Set the stop to 30 1/4″. Crosscut 2: 2 × Stile.",
        "Set the stop to 16 1/2″. Crosscut 2: 2 × Rail.",
    ]
    assert told["groups"][0]["together"][0] == (
        "Set the stop to 60″: crosscut 2 times, 1 from Board 2 and 1 from Board 3."
    )


def test_a_sheet_is_broken_down_before_anything_is_cut_to_length():
    document = acts(begun(), on_hand(SHEET), by_hand("Side", "30", "11 1/4", "23/32", count="6"))
    told = planned(document)["plan"]
    assert told["said"] == "Nothing to buy: 6 pieces to cut from 1 sheet"
    cuts = told["groups"][0]["boards"][0]["cuts"]
    assert [cut["way"] for cut in cuts] == sorted((cut["way"] for cut in cuts), reverse=True)
    assert cuts[0]["said"].startswith("Set the fence to 11 1/4″. Rip ")
    assert [piece for cut in cuts for piece in cut["pieces"]] == [
        {"entry": "2", "part": "piece"}
    ] * 6


def test_what_is_on_hand_is_used_before_anything_is_bought_and_no_more_of_it_than_there_is():
    document = acts(
        begun(), on_hand({"width": "2 1/4", "count": "1"}), by_hand("Rail", "40", count="4")
    )
    answer = planned(document)
    assert answer["unplanned"] == 2
    (left,) = answer["plan"]["left_out"]
    assert left["error"]["message"] == "2 pieces of Rail won’t come out of the wood on hand."
    assert left["error"]["remedy"] == "Add wood 3/4″ thick to the wood to buy."


def test_a_piece_that_no_wood_holds_is_told_and_does_not_stop_the_others():
    document = acts(
        begun(),
        on_hand({"width": "2 1/4"}),
        by_hand("Rail", "40"),
        by_hand("Beam", "120"),
        by_hand("Back", "30", "20", "1/4"),
    )
    answer = planned(document)
    errors = {each["name"]: each["error"] for each in answer["plan"]["left_out"]}
    assert errors["Beam"]["message"] == (
        "Beam takes 120″ × 2 1/4″. The largest wood listed is 96″ × 2 1/4″."
    )
    assert errors["Back"]["message"] == "Back: the project has no wood 1/4″ thick, only 3/4″."
    assert all(error["remedy"] for error in errors.values())
    assert [len(board["pieces"]) for board in answer["act"]["plan"]["boards"]] == [1]


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


def test_a_piece_wider_than_all_boards_may_be_glued_up():
    document = acts(begun(), on_hand({"width": "6"}), by_hand("Top", "40", "11"))
    (left,) = planned(document)["plan"]["left_out"]
    assert left["error"]["message"] == ("Top takes 40″ × 11″. The largest wood listed is 96″ × 6″.")
    assert left["error"]["remedy"] == "Add wider wood, or glue up a panel for it."


def test_what_is_bought_is_called_what_it_is_while_it_is_looked_for():
    document = acts(begun(), by_hand("Side", "30", "20", "23/32", count="2"))
    assert planned(document)["progress"] == "1 sheet to buy. No plan buys less."
    both = acts(document, by_hand("Rail", "40"))
    assert planned(both)["progress"] == "1 board and 1 sheet to buy. No plan buys less."
    assert planned(acts(begun(), on_hand(SHEET), by_hand("S", "9", "9", "23/32")))["progress"] == (
        "Nothing to buy."
    )


def test_pieces_without_wood_are_not_called_nothing_to_cut():
    document = acts(begun(), on_hand({"width": "2"}), by_hand("Rail", "40", count="2"))
    assert planned(document)["plan"]["said"] == "No wood for 2 pieces"
    document = acts(document, by_hand("Strip", "40", "1 3/4"))
    assert planned(document)["plan"]["said"] == "Nothing to buy: 1 piece to cut from 1 board"


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


def test_narrow_and_short_cuts_say_how_they_are_held():
    document = acts(begun(), on_hand(SHEET), by_hand("Cleat", "5", "2", "23/32", count="2"))
    said = [each for cuts in said_of(planned(document)["plan"]).values() for each in cuts]
    assert any("Under 3″ wide: use a push block." in each for each in said)
    assert any("Under 8″: clamp it" in each for each in said)


def test_the_buy_list_is_a_text_to_share_and_a_table():
    wood = {
        "sold": "sheet",
        "length": "96",
        "width": "48",
        "thickness": "23/32",
        "price": "62.50",
        "sheet_per": "piece",
    }
    document = acts(begun(), on_sale(wood), by_hand("Side", "30", "23 3/4", "23/32", count="7"))
    told = planned(document)["plan"]
    assert told["cost"] == "$125.00"
    assert told["text"].splitlines()[-1] == "Total $125.00"
    table = ask("csv", kept(document), what="buy")["text"].splitlines()
    assert table[1].endswith(",96,48,0.71875,62.50,125.00")
    assert ask("take_csv", document, what="buy", text="Count\r\n1")["ok"] is False


def test_the_drawing_shows_each_piece_where_it_is_sawn():
    document = kept(rails())
    boards = [b for group in view(document)["plan"]["groups"] for b in group["boards"]]
    drawn = [s for s in boards[0]["drawing"]["shapes"] if s.get("part")]
    assert [shape["part"] for shape in drawn] == ["1/piece", "1/piece", "2/piece", "2/piece"]
    assert [shape["points"][0][0] for shape in drawn] == [0, 30.375, 60.75, 77.375]
    bare = view(document, drawings=False)["plan"]["groups"][0]["boards"][0]
    assert bare["drawing"] is None


def test_a_trimmed_sheet_is_squared_on_all_four_sides_before_it_is_broken_down():
    """By hand: 48 − 2 × 1/2 = 47 to rip, 96 − 2 × 1/2 = 95 to crosscut."""
    row = {"sold": "sheet", "thickness": "23/32", "width": "48", "length": "96", "trim": "1/2"}
    document = acts(begun(), on_sale(row), by_hand("Side", "95", "23 7/16", "23/32", count="2"))
    answer = planned(document)
    assert faults(answer["act"]["plan"], wanted(document)) == []
    assert said_of(answer["plan"])["Sheet 1"] == [
        "Trim 1/2″ off one edge.",
        "Trim the other edge at 47″.",
        "Trim 1/2″ off one end.",
        "Trim the other end at 95″.",
        "Set the fence to 23 7/16″. Rip 1: 2 × Side.",
    ]


def test_a_list_of_wood_without_an_answer_is_named():
    values = {"wood": [{"form": "board", "thickness": "3/4", "width": "[Gone]", "length": "96"}]}
    document = acts(begun(), on_hand({"width": "2 1/4"}), by_hand("Rail", "40"))
    document["entries"][0]["values"] = values
    note = planned(document)["plan"]["note"]
    assert note.startswith("Fix Wood on hand first: that wood isn’t planned on.")


def test_wood_of_another_thickness_or_material_is_not_cut_up():
    oak = {"material": "White oak"}
    document = acts(
        begun(),
        on_hand(
            {"width": "2 1/4", "material": "Birch"},
            {"width": "2 1/4", "material": "white OAK", "thickness": "1/2"},
        ),
        by_hand("Rail", "40", about=oak),
    )
    (left,) = planned(document)["plan"]["left_out"]
    assert left["error"]["message"] == (
        "Rail: the project has no White oak 3/4″ thick, only white OAK 1/2″ and Birch 3/4″."
    )
