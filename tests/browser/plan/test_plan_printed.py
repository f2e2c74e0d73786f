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


def test_a_plan_goes_to_the_yard_on_paper_before_it_is_used_from_its_first_page_on(phone, server):
    page = phone(service_workers="block").pages[0]
    keep_carcass(page, server)
    open_plan(page)
    page.get_by_role("button", name="Use this plan").wait_for()
    page.get_by_role("button", name="Print", exact=True).tap()
    page.locator(".plan-sheet").wait_for()
    choose(page, "Paper", "Letter")
    assert axe(page)["wrong"] == []
    bought = page.locator(".plan-sheet .plan-said").all_text_contents()
    printed = texts(page)
    assert bought
    assert all(says(printed[0], told) for told in bought)
    assert not any(says(each, "Readings") for each in printed)
    page.get_by_role("link", name="Cutting plan").tap()
    page.get_by_role("button", name="Use this plan").wait_for()


def test_without_a_plan_there_is_none_to_print(phone, server):
    page = phone(service_workers="block").pages[0]
    page.goto(f"{server.address}#plan-sheet")
    page.get_by_text("No cutting plan to print yet.").wait_for()
