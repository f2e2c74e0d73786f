"""Which wood a piece comes out of: rough boards planed, sheets a little off their name, names that
mean one wood.

4/4 hardwood is 1 in rough and 13/16 in surfaced on two sides (NHLA, `hardwood_thickness.csv`); a
sheet sold as 3/4 in measures 23/32 in (PS 1) or 18 mm: both make what a cut list calls 3/4 in.
"""

import pytest
from planned import by_hand, kept, nothing_to_help_on_sale, on_hand, on_sale, planned, wanted
from projects import acts, begun, changed, view

from tests.core.oracles.sawn_plan import faults

SHEET = {"form": "sheet", "thickness": "23/32", "width": "48", "length": "96"}
ROUGH = {"thickness": "1", "width": "6"}
FOUR_QUARTER = {"sold": "hardwood", "quarters": "thickness_4_4", "average": "6", "length": "96"}


def boards_of(told):
    """The boards of a plan as it is told."""
    return [board for group in told["groups"] for board in group["boards"]]


def stocks(document):
    """What each board of a document's plan is, in words."""
    return [board["stock"] for board in boards_of(planned(document)["plan"])]


def left(document):
    """What is said of the only part that is left out."""
    (only,) = planned(document)["plan"]["left_out"]
    return only["error"]["message"]


def test_pieces_come_out_of_a_rough_board_that_is_planed_and_it_says_so_everywhere():
    document = acts(begun(), on_hand(ROUGH), by_hand("Rail", "40", count="2"))
    answer = planned(document)
    assert answer["unplanned"] == 0
    assert faults(answer["act"]["plan"], wanted(document)) == []
    assert stocks(document) == ["8 ft × 6″ × 1″, plane to 3/4″"]
    assert (
        "Joint an edge before you rip: the plan counts on straight ones" in (answer["plan"]["note"])
    )
    seen = view(kept(document), order="plan")
    assert seen["plan"]["stale"] == ""
    assert seen["cuts"]["groups"][0]["said"] == "Board 1, 8 ft × 6″ × 1″, plane to 3/4″: 2 cuts"


def test_rough_hardwood_is_bought_for_what_is_planed_out_of_it():
    document = acts(begun(), on_sale(FOUR_QUARTER), by_hand("Rail", "40", count="2"))
    told = planned(document)["plan"]
    assert [each["said"] for each in told["buy"]] == ["1 board, 4/4 8 ft × 6″ × 1″"]
    assert stocks(document) == ["4/4 8 ft × 6″ × 1″, plane to 3/4″"]


def test_wood_of_the_thickness_asked_for_is_taken_before_what_has_to_be_planed():
    exact = {"width": "2 1/4", "count": "2"}
    document = acts(begun(), on_hand(ROUGH, exact), by_hand("Rail", "60", count="2"))
    assert stocks(document) == ["8 ft × 2 1/4″ × 3/4″"] * 2


def test_what_is_on_hand_is_planed_before_anything_is_bought():
    sold = {"sold": "board", "thickness": "3/4", "width": "6", "length": "96"}
    document = acts(begun(), on_hand(ROUGH), on_sale(sold), by_hand("Rail", "40", count="2"))
    assert planned(document)["plan"]["buy"] == []


def test_thick_parts_have_the_thick_board_that_thin_ones_could_be_planed_from():
    document = acts(
        begun(),
        on_hand(ROUGH),
        nothing_to_help_on_sale(),
        by_hand("Thin", "80", "5"),
        by_hand("Thick", "80", "5", "15/16"),
    )
    assert left(document).startswith("1 piece of Thin")


@pytest.mark.parametrize(
    ("have", "thickness", "left_out"),
    [("1", "1/2", 0), ("1", "7/16", 1), ("2", "1 1/2", 0), ("2", "1 7/16", 1), ("3/4", "1/4", 1)],
)
def test_a_board_is_planed_by_half_an_inch_and_half_of_it_at_most(have, thickness, left_out):
    board = {"thickness": have, "width": "6"}
    slat = by_hand("Slat", "40", "2", thickness)
    document = acts(begun(), on_hand(board), nothing_to_help_on_sale(), slat)
    assert planned(document)["unplanned"] == left_out


@pytest.mark.parametrize("sheet", ["23/32", "18 mm"])
def test_a_sheet_sold_by_a_thickness_that_it_falls_short_of_is_taken_and_told(sheet):
    document = acts(
        begun(), on_hand(SHEET | {"thickness": sheet}), by_hand("Side", "30", "20", count="2")
    )
    told = planned(document)["plan"]
    assert planned(document)["unplanned"] == 0
    assert stocks(document)[0].endswith(", for 3/4″ parts")
    assert ", not 3/4″: size joints and inside parts to that." in told["note"]
    assert view(kept(document))["plan"]["stale"] == ""


def test_a_sheet_of_another_thickness_is_not_taken_and_what_there_is_is_named():
    back = by_hand("Back", "30", "20", "1/2")
    document = acts(begun(), on_hand(SHEET), nothing_to_help_on_sale(), back)
    assert left(document) == "Back: the project has no wood 1/2″ thick, only 23/32″ and Cork 2″."


def test_a_board_that_is_a_hair_off_is_the_wood_that_was_asked_for():
    """19 mm is 0.748 in: no saw or planer tells it from 3/4."""
    document = acts(
        begun(), on_hand({"thickness": "19 mm"} | {"width": "6"}), by_hand("Rail", "40")
    )
    (said,) = stocks(document)
    assert "plane" not in said
    assert planned(document)["unplanned"] == 0


def test_a_board_thinner_than_the_part_is_not_taken():
    thin = on_hand({"thickness": "11/16", "width": "6"})
    document = acts(begun(), thin, nothing_to_help_on_sale(), by_hand("Rail", "40"))
    assert left(document) == "Rail: the project has no wood 3/4″ thick, only 11/16″ and Cork 2″."


@pytest.mark.parametrize(
    ("listed", "asked"),
    [
        ("white oak", "Oak, white"),
        ("Birch plywood", "birch ply"),
        ("birch plywood", "plywood"),
        ("hard maple", "Maple"),
        ("  Cherry ", "cherry"),
    ],
)
def test_one_wood_by_two_names_is_one_wood(listed, asked):
    document = acts(
        begun(),
        on_hand({"width": "6", "material": listed}),
        by_hand("Rail", "40", about={"material": asked}),
    )
    assert planned(document)["unplanned"] == 0


@pytest.mark.parametrize(
    ("listed", "asked"),
    [("white oak", "red oak"), ("birch plywood", "birch"), ("oak", "cherry"), ("MDF", "plywood")],
)
def test_two_woods_are_two_and_the_sentence_names_what_there_is(listed, asked):
    document = acts(
        begun(),
        on_hand({"width": "6", "material": listed}),
        nothing_to_help_on_sale(),
        by_hand("Rail", "40", about={"material": asked}),
    )
    assert left(document) == (
        f"Rail: the project has no {asked} 3/4″ thick, only {listed} 3/4″ and Cork 2″."
    )


def test_a_stick_of_any_size_is_as_wide_as_what_comes_out_of_it_and_bought_so():
    document = acts(
        begun(),
        on_sale({"sold": "stick", "length": "96"}),
        by_hand("Rail", "40", count="2"),
        by_hand("Strip", "40", "1 1/2", count="2"),
    )
    said = [each["said"] for each in planned(document)["plan"]["buy"]]
    assert said == ["1 stick, 8 ft × 2 1/4″ × 3/4″", "1 stick, 8 ft × 1 1/2″ × 3/4″"]
    assert faults(planned(document)["act"]["plan"], wanted(document)) == []


def test_no_part_of_a_case_is_cut_out_of_a_stick_where_a_sheet_holds_it():
    sheet = {"sold": "sheet", "length": "96", "width": "48", "thickness": "3/4"}
    document = acts(
        begun(),
        on_sale({"sold": "stick", "length": "96"}, sheet),
        by_hand("Side", "36", "11", count="2"),
    )
    assert [each["said"] for each in planned(document)["plan"]["buy"]] == [
        "1 sheet, 8 ft × 4 ft × 3/4″"
    ]


def test_no_stick_is_as_wide_as_a_panel():
    document = acts(
        begun(), on_sale({"sold": "stick", "length": "96"}), by_hand("Side", "40", "20")
    )
    assert left(document) == "Side takes 40″ × 20″. The largest wood listed is 96″."


def test_a_correction_that_the_board_can_still_be_planed_to_leaves_the_plan():
    document = kept(acts(begun(), on_hand({"width": "6"}), by_hand("Rail", "40")))
    thinner = by_hand("", "40", thickness="5/8")[1]["values"]
    document = changed(document, "correct", id="2", values=thinner)
    seen = view(document)["plan"]
    assert seen["stale"] == ""
    assert boards_of(seen)[0]["stock"] == "8 ft × 6″ × 3/4″, plane to 5/8″"
    thicker = by_hand("", "40", thickness="1")[1]["values"]
    document = changed(document, "correct", id="2", values=thicker)
    assert view(document)["plan"]["stale"] == "Other sizes now: Rail. Plan again."
