"""The parts of a project are listed for a finish with one tap, and taken back with another."""

from tests.browser.project.in_project import start_sample_case

PARTS = "The area of parts of Carcass"
LIST = "How much finish"


def test_the_parts_of_a_project_are_listed_for_how_much_finish_they_take(page):
    page.set_viewport_size({"width": 360, "height": 740})
    start_sample_case(page)
    button = page.get_by_role("button", name=LIST, exact=True)
    button.tap()
    page.locator("#notices").get_by_text("Took both faces of the parts of 4 lines.").wait_for()
    told = page.locator("#place").get_by_text(PARTS)
    told.wait_for()
    page.locator("#notices").get_by_role("button", name="Undo").tap()
    told.wait_for(state="detached")


def test_a_project_without_parts_offers_no_list_of_them(page):
    page.evaluate("location.hash = 'project'")
    page.get_by_role("button", name="Add a piece").wait_for()
    assert page.get_by_role("button", name=LIST, exact=True).count() == 0
