"""The cutting plan on the shop sheet: what to buy, every board with its drawing and its cuts."""

import pytest

from tests.browser.hand import choose
from tests.browser.plan.in_plan import keep_carcass, open_plan, use_plan
from tests.browser.print.on_paper import pages, says, texts
from tests.browser.test_accessible import axe


@pytest.fixture
def sheet(phone, server):
    """The shop sheet of a carcass that is planned, on a phone in the dark."""
    page = phone(dark=True, service_workers="block").pages[0]
    keep_carcass(page, server)
    open_plan(page)
    use_plan(page)
    page.evaluate("location.hash = 'shop-sheet'")
    page.locator(".plan-sheet").wait_for()
    return page


@pytest.mark.parametrize(("paper", "size"), [("Letter", (215.9, 279.4)), ("A4", (210, 297))])
def test_every_board_is_printed_with_its_cuts_and_the_buy_list(sheet, paper, size):
    choose(sheet, "Paper", paper)
    assert axe(sheet)["wrong"] == []
    boards = sheet.locator(".plan-sheet-board")
    assert boards.count() > 0
    assert boards.locator("svg.drawing").count() == boards.count()
    printed = texts(sheet)
    [first] = [number for number, text in enumerate(printed) if says(text, "Cutting plan")]
    bought = sheet.locator(".plan-sheet .plan-said").all_text_contents()
    for told in bought:
        assert says(printed[first], told)
    for board in boards.all():
        name = board.locator("h6").inner_text()
        cuts = board.locator(".plan-cut-said").all_text_contents()
        # A board is never parted: its name and all of its cuts are on one page.
        assert any(
            says(page, name) and all(says(page, cut) for cut in cuts) for page in printed[first:]
        ), name
    widths = [(width, height) for width, height, ink in pages(sheet) if ink[:100].max() == 0]
    assert len(widths) == len(printed)
    assert all(each == pytest.approx(size, abs=0.2) for each in widths)
