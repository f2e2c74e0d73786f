"""What to buy and which piece comes out of which board, worked out by hand and sawn again.

By hand, kerf 1/8: 30 1/4 + 30 1/4 + 16 1/2 + 16 1/2 and 3 kerfs are 93 7/8 of 96; twelve pieces of
together 340 and 12 kerfs don't go into three boards of 96 1/8 each (288 3/8), so four are bought.
"""

import pytest
from planned import (
    by_hand,
    kept,
    nothing_to_help_on_sale,
    on_hand,
    on_sale,
    planned,
    said_of,
    wanted,
)
from projects import acts, ask, begun, changed, view

from sawside.reckoners import RECKONERS
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


def test_with_wood_on_hand_alone_what_it_lacks_is_bought_in_usual_sizes_and_it_says_so():
    document = acts(
        begun(),
        on_hand({"width": "2 1/4", "count": "1"}),
        by_hand("Rail", "40", count="4"),
        by_hand("Back", "40", "30", "1/4"),
    )
    answer = planned(document)
    told = answer["plan"]
    # Two rails come out of the board on hand, two out of one that is bought.
    assert told["said"] == "Buy 1 board and 1 sheet: 5 pieces to cut from 2 boards and 1 sheet"
    assert [each["said"] for each in told["buy"]] == [
        "1 sheet, 8 ft × 4 ft × 1/4″",
        "1 board, 8 ft × 2 1/4″ × 3/4″",
    ]
    assert told["note"].startswith("No wood to buy on the project yet: what you lack is planned")
    assert answer["progress"] == "1 board and 1 sheet to buy. No plan buys less."
    assert faults(answer["act"]["plan"], wanted(document)) == []


def test_what_nobody_said_the_sheet_of_comes_out_of_the_only_sheets_that_thick():
    # 42 5/16 × 36 1/4 and 35 7/8 × 13 go into one sheet of 96 × 48 side by side.
    document = acts(
        begun(),
        by_hand("Back", "42 5/16", "36 1/4", "1/4", about={"material": "Birch plywood"}),
        by_hand("Panel", "35 7/8", "13", "1/4"),
    )
    told = planned(document)["plan"]
    assert [each["said"] for each in told["buy"]] == ["1 sheet, Birch plywood 8 ft × 4 ft × 1/4″"]
    assert told["groups"][0]["material"] == "Birch plywood, 1/4″ thick"
    # With two kinds of such sheets nobody knows which one it is.
    other = by_hand("Top", "40", "30", "1/4", about={"material": "Hardboard"})
    assert len(planned(acts(document, other))["plan"]["buy"]) == 3


def test_crown_comes_out_of_sticks_and_not_out_of_a_board():
    crown = {
        "of": "one",
        "found": "legs",
        "drop": "1 1/2",
        "projection": "1 1/8",
        "left_end": "outside",
        "left_corner": "90",
        "right_end": "square",
        "measured": "36",
    }
    line = {"name": "Crown", "reckoner": "crown", "values": crown}
    document = acts(begun(), ("keep_line", line))
    told = planned(document)["plan"]
    assert [each["said"] for each in told["buy"]] == ["1 stick, Crown molding 8 ft × 1 7/8″"]
    assert told["groups"][0]["material"] == "Crown molding"
    board = on_sale({"sold": "softwood", "nominal": "1 x 6", "length": "96"})
    (left,) = planned(acts(document, board))["plan"]["left_out"]
    assert left["error"]["message"] == "Crown: the project has no Crown molding."


def test_a_piece_that_no_wood_holds_is_told_and_does_not_stop_the_others():
    document = acts(
        begun(),
        on_hand({"width": "2 1/4"}),
        by_hand("Rail", "40"),
        by_hand("Beam", "120"),
        by_hand("Back", "30", "20", "1/4"),
        nothing_to_help_on_sale(),
    )
    answer = planned(document)
    errors = {each["name"]: each["error"] for each in answer["plan"]["left_out"]}
    assert errors["Beam"]["message"] == (
        "Beam takes 120″ × 2 1/4″. The largest wood listed is 96″ × 2 1/4″."
    )
    assert (
        errors["Back"]["message"]
        == "Back: the project has no wood 1/4″ thick, only 3/4″ and Cork 2″."
    )
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


def test_bad_wood_in_between_is_crosscut_at_and_off_the_end_and_slivers_go_on_no_pile():
    """By hand: the first blade is in the bad wood, 44 − 40 1/8 = 3 7/8 of it are left on the end;
    96 − 44 = 52, less the stile and a kerf 7/8, and 40 less the rail and a kerf 3/8."""
    document = acts(
        begun(),
        on_hand({"width": "2 1/4", "bad": "40 to 44"}),
        by_hand("Rail", "39 1/2"),
        by_hand("Stile", "51"),
    )
    (board,) = planned(document)["plan"]["groups"][0]["boards"]
    said = {cut["said"]: cut["pile"] for cut in board["cuts"]}
    assert said == {
        "Crosscut at 40″, clear of the bad wood.": "40″ × 2 1/4″",
        "Crosscut 3 7/8″ of bad wood off the end.": "",
        "Set the stop to 51″. Crosscut 1: Stile.": "",
        "Set the stop to 39 1/2″. Crosscut 1: Rail.": "",
    }


def test_a_molding_is_bought_as_sticks_or_comes_out_of_boards_of_just_its_size():
    run = RECKONERS["molding_run"].example
    document = acts(
        begun(), ("keep_line", {"name": "Base", "reckoner": "molding_run", "values": run})
    )
    told = planned(document)["plan"]
    assert {each["said"].split(",")[0].split()[1] for each in told["buy"]} <= {"stick", "sticks"}
    assert all("Molding 8 ft" in each["said"] for each in told["buy"])
    assert [group["material"] for group in told["groups"]] == [
        "Molding, 1/2″ thick",
        "Molding, 3/4″ thick",
    ]
    # A board of 3/4 × 3 1/2 is what the first layer is; a wider one would be ripped, which no
    # profile outlives.
    for width, comes in (("3 1/2", True), ("5 1/2", False)):
        more = acts(document, on_hand({"width": width}))
        plan = planned(more)["act"]["plan"]
        used = [board for board in plan["boards"] if not board.get("bought")]
        assert bool(used) == comes


def test_a_narrow_strip_as_thin_as_a_sheet_is_not_sawn_out_of_one():
    strip, panel = (by_hand(name, "40", width, "1/4") for name, width in (("A", "1"), ("B", "10")))
    bought = [planned(acts(begun(), each))["plan"]["buy"][0]["said"] for each in (strip, panel)]
    assert bought == ["1 board, 8 ft × 1″ × 1/4″", "1 sheet, 8 ft × 4 ft × 1/4″"]


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
    board = on_hand({"width": "6"})
    document = acts(begun(), board, nothing_to_help_on_sale(), by_hand("Top", "40", "11"))
    (left,) = planned(document)["plan"]["left_out"]
    assert left["error"]["message"] == ("Top takes 40″ × 11″. The largest wood listed is 96″ × 6″.")
    assert left["error"]["remedy"] == "Add wider wood, or glue up a panel for it."


def test_what_is_bought_is_called_what_it_is_while_it_is_looked_for():
    document = acts(begun(), by_hand("Side", "30", "20", "23/32", count="2"))
    assert planned(document)["progress"] == "1 sheet to buy. No plan buys less."
    both = acts(document, by_hand("Rail", "40"))
    assert planned(both)["progress"] == "1 board and 1 sheet to buy. No plan buys less."
    there = acts(begun(), on_hand(SHEET), by_hand("S", "9", "9", "23/32"))
    assert planned(there)["progress"] == ""


def test_pieces_without_wood_are_not_called_nothing_to_cut():
    board = on_hand({"width": "2"})
    document = acts(begun(), board, nothing_to_help_on_sale(), by_hand("Rail", "40", count="2"))
    assert planned(document)["plan"]["said"] == "No wood for 2 pieces"
    document = acts(document, by_hand("Strip", "40", "1 3/4"))
    assert planned(document)["plan"]["said"] == (
        "No wood for 2 pieces. Nothing to buy: 1 piece to cut from 1 board"
    )


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
    assert any("Narrow rip: use a push block." in each for each in said)
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
    assert told["text"].splitlines()[-2:] == ["Total $125.00", told["waste"]]
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


def test_every_piece_of_a_drawing_has_its_mark_and_the_list_below_its_name_and_size():
    document = acts(
        begun(),
        on_hand({"width": "6", "bad": "40 to 46"}),
        by_hand("Stile", "39", "1 1/2", count="3"),
        by_hand("A rail with a long name", "13", "2", count="2"),
    )
    (board,) = planned(document)["plan"]["groups"][0]["boards"]
    texts = [s["text"] for s in board["drawing"]["shapes"] if s["kind"] == "label"]
    marked = [text.split()[0] for text in texts if text != "offcut"]
    assert sorted(marked) == ["a", "a", "a", "b", "b"]
    assert board["marks"] == [
        {"mark": "a", "name": "Stile", "size": "39″ × 1 1/2″", "count": 3},
        {"mark": "b", "name": "A rail with a long name", "size": "13″ × 2″", "count": 2},
    ]
    crossed = [s for s in board["drawing"]["shapes"] if s["kind"] == "line"]
    assert {place[0] for line in crossed for place in (line["from"], line["to"])} == {40, 46}
    assert "crossed out" in board["drawing"]["words"]


def test_a_part_has_the_same_mark_on_every_board_and_after_it_is_planned_again():
    document = kept(rails())

    def marks(document):
        told = [b for group in view(document)["plan"]["groups"] for b in group["boards"]]
        return {(each["mark"], each["name"]) for board in told for each in board["marks"]}

    assert marks(document) == {("a", "Stile"), ("b", "Rail"), ("c", "Long rail")}
    again = kept(changed(document, "cut", id="3", part="piece", by=1))
    assert marks(again) == marks(document)


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


@pytest.mark.parametrize(
    ("asked", "there", "comes"),
    [
        ("Plywood", "Birch plywood", True),
        ("Birch plywood", "plywood", True),
        ("White oak", "Oak, white", True),
        ("Red oak", "White oak", False),
        ("Birch", "Birch plywood", False),
        ("Plywood", "MDF", False),
    ],
)
def test_wood_is_known_by_a_name_that_says_more_or_less(asked, there, comes):
    document = acts(
        begun(),
        on_hand({"width": "2 1/4", "material": there}),
        by_hand("Rail", "40", about={"material": asked}),
        nothing_to_help_on_sale(),
    )
    assert planned(document)["unplanned"] == (0 if comes else 1)


def test_wood_of_another_thickness_or_material_is_not_cut_up():
    oak = {"material": "White oak"}
    document = acts(
        begun(),
        on_hand(
            {"width": "2 1/4", "material": "Birch"},
            {"width": "2 1/4", "material": "white OAK", "thickness": "1/2"},
        ),
        by_hand("Rail", "40", about=oak),
        nothing_to_help_on_sale(),
    )
    (left,) = planned(document)["plan"]["left_out"]
    assert left["error"]["message"] == (
        "Rail: the project has no White oak 3/4″ thick, "
        "only white OAK 1/2″, Birch 3/4″ and Cork 2″."
    )
