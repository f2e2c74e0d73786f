"""The case on a page of the shop sheet: four views with their sizes, its parts by letters."""

import pytest

from tests.browser.hand import choose, keep_as, try_example
from tests.browser.print.on_paper import pages, says, texts
from tests.browser.project.in_project import start_sample_case
from tests.browser.test_accessible import axe

TITLE = "Carcass: front, side, section, plan"
SIZES = ("37″", "45 7/8″", "15 3/4″", "15 1/2″", "17 27/64″", "20 7/64″", "37 1/2″", "42 3/8″")
"""Of the sample: the answers of its lines, as the core's own tests have them."""
PARTS = (
    "A Carcass: Side, 2× 45 7/8″ × 15 3/4″ × 23/32″",
    "E Carcass: Fixed shelf, 2× 17 59/64″ × 15 1/2″ × 23/32″",
    "L Face frame: Bottom rail, 1×",
    "O Doors: Panel, 1×",
    "P Crown, 1×",
)


@pytest.fixture
def sheet(phone, server):
    """The shop sheet of the sample case, on a phone in the dark."""
    page = phone(dark=True, service_workers="block").pages[0]
    page.goto(server.address)
    start_sample_case(page)
    page.get_by_role("button", name="Shop sheet").tap()
    page.locator(".case-sheet").wait_for()
    return page


@pytest.mark.parametrize(("paper", "size"), [("Letter", (215.9, 279.4)), ("A4", (210, 297))])
def test_the_case_is_a_page_of_the_shop_sheet(sheet, paper, size):
    choose(sheet, "Paper", paper)
    assert axe(sheet)["wrong"] == []
    printed = texts(sheet)
    at = [number for number, text in enumerate(printed) if says(text, TITLE)]
    assert len(at) == 1
    [number] = at
    page = printed[number]
    for told in ("Front", "Side", "Section", "Plan", *SIZES, *PARTS):
        assert says(page, told), told
    for other in ("Cuts by stop", "Readings", "Touch a part"):
        assert not says(page, other)
    assert says(printed[number + 1], "Parts")
    width, height, ink = list(pages(sheet))[number]
    assert (width, height) == pytest.approx(size, abs=0.2)
    assert 0.005 < ink.mean() < 0.08
    assert ink.max() > 0.95
    # Nothing of the dark screen: the ground is white up to the margins.
    assert ink[:100].max() == 0


def test_a_project_without_a_case_has_no_such_page(phone, server):
    page = phone(service_workers="block").pages[0]
    page.goto(f"{server.address}#work-out/mitered_frame")
    try_example(page)
    keep_as(page, "Frame")
    page.goto(f"{server.address}#shop-sheet")
    page.locator(".shop-sheet").wait_for()
    assert page.locator(".case-sheet").count() == 0
