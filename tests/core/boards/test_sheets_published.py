"""One sheet gives what published sets say, and sheets that were cut apart go together again."""

import random
from fractions import Fraction

import pytest

from sawside.boards.fills import Steps
from sawside.boards.sheets.fullest import fullest
from sawside.boards.sheets.planner import plan_sheets
from sawside.boards.sheets.recursion import Recursion
from sawside.boards.sheets.request import Panel, Sheet, SheetRequest
from sawside.boards.sheets.trees import used
from sawside.boards.sheets.whole import Item
from tests.core.oracles.sawn_sheets import cut_apart, faults, most_of_one_sheet, planted, published

GCUT, CGCUT = list(published("gcut")), list(published("cgcut"))
STEPS = 1_000_000


def kinds_of(pieces):
    """Published pieces as `Recursion` takes them."""
    return [
        (length, width, value, ("item", place, False))
        for place, (length, width, value, _) in enumerate(pieces)
    ]


@pytest.mark.parametrize(("name", "sheet", "best", "pieces"), GCUT, ids=[e[0] for e in GCUT])
def test_a_sheet_gives_the_published_area_with_any_number_of_each_piece(name, sheet, best, pieces):
    """OR-Library, gcut (Beasley 1985): unconstrained, not turned, any number of stages."""
    found = Recursion(kinds_of(pieces), sheet, Steps(STEPS))
    assert found.most(*sheet) == best, name
    assert sum(pieces[place][2] for place in used(found.tree(*sheet))) == best


@pytest.mark.parametrize(("name", "sheet", "best", "pieces"), GCUT, ids=[e[0] for e in GCUT])
def test_the_published_area_is_what_a_plain_recursion_finds(name, sheet, best, pieces):
    """For the best values are from memory."""
    assert most_of_one_sheet([piece[:3] for piece in pieces], *sheet) == best, name


@pytest.mark.parametrize(("name", "sheet", "best", "pieces"), CGCUT, ids=[e[0] for e in CGCUT])
def test_a_sheet_is_worth_what_is_published_with_so_many_of_each_piece(name, sheet, best, pieces):
    """OR-Library, cgcut (Christofides and Whitlock 1977)."""
    items = [Item(length, width, most, False, ()) for length, width, _, most in pieces]
    counts = [item.count for item in items]
    found, proved = fullest(items, counts, [p[2] for p in pieces], sheet, Steps(STEPS))
    assert (found.used, proved) == (best, True), name
    taken = list(used(found.tree()))
    assert all(taken.count(place) <= count for place, count in enumerate(counts))
    assert sum(pieces[place][2] for place in taken) == best


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize("pieces", [4, 8, 12, 18, 25])
@pytest.mark.parametrize("sheets", [1, 2, 3])
def test_sheets_that_were_cut_apart_go_together_again(sheets, pieces, turned):
    """With a kerf and without a rest."""
    for seed in range(4):
        request = planted(random.Random(seed), sheets, pieces, turned)
        found = plan_sheets(request, STEPS)
        assert faults(request, found) == []
        assert (found.value, found.bound) == (sheets, sheets)


@pytest.mark.parametrize(("sheets", "seed"), [(2, 3), (2, 9), (3, 9)])
def test_of_many_small_pieces_that_may_be_turned_every_sheet_is_found_again(sheets, seed):
    """Those of the first twelve that took the longest."""
    request = planted(random.Random(seed), sheets, 25, True)
    assert plan_sheets(request, STEPS).value == sheets


def test_a_sheet_that_was_cut_apart_is_planned_with_its_trim():
    kerf, trim = Fraction(1, 8), Fraction(1, 4)
    pieces = cut_apart(random.Random(5), 9, Fraction(191, 2), Fraction(95, 2), kerf)
    sold = Sheet(Fraction(96), Fraction(48))
    request = SheetRequest(tuple(Panel(*size) for size in pieces), (), (sold,), kerf, trim)
    found = plan_sheets(request)
    assert faults(request, found) == []
    assert (found.value, found.bound) == (1, 1)
    assert found.sheets[0].offcuts == ()
