"""What the wood of a project lacks: bought in usual sizes, or told with what helps."""

from planned import by_hand, nothing_to_help_on_sale, on_hand, on_sale, planned, wanted
from projects import acts, begun

from sawside.reckoners import RECKONERS
from tests.core.oracles.sawn_plan import faults


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


def test_a_piece_wider_than_all_boards_may_be_glued_up():
    board = on_hand({"width": "6"})
    document = acts(begun(), board, nothing_to_help_on_sale(), by_hand("Top", "40", "11"))
    (left,) = planned(document)["plan"]["left_out"]
    assert left["error"]["message"] == ("Top takes 40″ × 11″. The largest wood listed is 96″ × 6″.")
    assert left["error"]["remedy"] == "Add wider wood, or glue up a panel for it."


def test_pieces_without_wood_are_not_called_nothing_to_cut():
    board = on_hand({"width": "2"})
    document = acts(begun(), board, nothing_to_help_on_sale(), by_hand("Rail", "40", count="2"))
    assert planned(document)["plan"]["said"] == "No wood for 2 pieces"
    document = acts(document, by_hand("Strip", "40", "1 3/4"))
    assert planned(document)["plan"]["said"] == (
        "No wood for 2 pieces. Nothing to buy: 1 piece to cut from 1 board"
    )


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
        nothing_to_help_on_sale(),
    )
    (left,) = planned(document)["plan"]["left_out"]
    assert left["error"]["message"] == (
        "Rail: the project has no White oak 3/4″ thick, "
        "only white OAK 1/2″, Birch 3/4″ and Cork 2″."
    )
