"""Parts whose grain is to match are cut next to each other out of one board, sawn by the oracle."""

from fractions import Fraction

import pytest
from planned import by_hand, nothing_to_help_on_sale, on_hand, planned, wanted
from projects import acts, begun

from tests.core.oracles.sawn_plan import faults, inches, sawn

SHEET = {"form": "sheet", "thickness": "23/32", "width": "48", "length": "96"}
KERF = Fraction(1, 8)


def fronts(grain, count="3", size=("20", "7")):
    """Drawer fronts whose grain is told so."""
    return by_hand("Front", *size, "23/32", count=count, about={"grain": grain})


def places(document, part="2"):
    """{board: rectangles, sorted} of a part's pieces, as they are sawn."""
    plan = planned(document)["act"]["plan"]
    assert faults(plan, wanted(document)) == []
    found = {}
    for board in plan["boards"]:
        parts, _ = sawn(board, inches(plan["kerf"]))
        mine = sorted(parts[p["of"]][:2] for p in board["pieces"] if p["entry"] == part)
        if mine:
            found[board["key"]] = mine
    return found


@pytest.mark.parametrize("grain", ["matched", "Match them", "in sequence, along"])
def test_matched_parts_lie_side_by_side_with_a_kerf_between(grain):
    others = [by_hand(f"Side {n}", str(30 + n), str(9 + n), "23/32", count="3") for n in range(3)]
    ((first, second, third),) = places(
        acts(begun(), on_hand(SHEET | {"count": "2"}), fronts(grain), *others)
    ).values()
    assert first[0] == second[0] == third[0]
    assert third[1] - second[1] == second[1] - first[1] == 7 + KERF


def test_parts_matched_end_to_end_lie_in_a_row():
    document = acts(
        begun(), on_hand(SHEET), fronts("matched end to end"), by_hand("Side", "60", "20", "23/32")
    )
    ((first, second, third),) = places(document).values()
    assert first[1] == second[1] == third[1]
    assert third[0] - second[0] == second[0] - first[0] == 20 + KERF


def test_matched_parts_come_out_of_one_board_where_two_would_hold_them_apart():
    """Two boards 8 wide hold two of 7 each, none holds two side by side."""
    board = {"thickness": "23/32", "width": "8", "length": "20", "count": "2"}
    document = acts(begun(), on_hand(board), nothing_to_help_on_sale(), fronts("matched", "2"))
    (left,) = planned(document)["plan"]["left_out"]
    assert left["error"]["message"] == (
        "2 matched pieces of Front take 20″ × 14 1/8″. The largest wood listed is 20″ × 8″."
    )
    assert left["error"]["remedy"] == "Add larger wood, or match fewer of them."
    assert planned(acts(begun(), on_hand(board), fronts("along", "2")))["unplanned"] == 0


@pytest.mark.parametrize("thickness", ["3/4", "23/32"])
@pytest.mark.parametrize("size", [("20", "3"), ("20", "7"), ("60", "10")])
@pytest.mark.parametrize("grain", ["matched", "matched end to end"])
def test_without_wood_matched_parts_have_a_usual_board_or_sheet_that_holds_them(
    grain, size, thickness
):
    document = acts(begun(), by_hand("Front", *size, thickness, count="3", about={"grain": grain}))
    longest = 3 * Fraction(size[0]) + 2 * KERF
    if longest > (96 if thickness == "23/32" else 192) and "end" in grain:
        return
    assert planned(document)["unplanned"] == 0


def test_one_matched_part_is_cut_as_any_other():
    board = {"width": "7", "thickness": "23/32"}
    assert planned(acts(begun(), on_hand(board), fronts("matched", "1")))["unplanned"] == 0
