"""The parts of a project are listed for a finish with one tap, and taken back with another."""

from playwright.sync_api import expect

from tests.browser.project.in_project import start_sample_case

PARTS = "14 parts"
LIST = "How much finish"


def test_the_parts_of_a_project_are_listed_for_how_much_finish_they_take(page):
    page.set_viewport_size({"width": 360, "height": 740})
    start_sample_case(page)
    button = page.get_by_role("button", name=LIST, exact=True)
    button.tap()
    page.locator("#notices").get_by_text("Listed 14 sizes of parts to finish.").wait_for()
    told = page.locator("#place").get_by_text(PARTS)
    told.wait_for()
    # Where one looks: the line with what to buy, not the key at the foot of the page.
    expect(told).to_be_in_viewport(ratio=1)
    page.locator("#notices").get_by_role("button", name="Undo").tap()
    told.wait_for(state="detached")


def test_a_project_without_parts_offers_no_list_of_them(page):
    page.evaluate("location.hash = 'project'")
    page.get_by_role("button", name="Add a piece").wait_for()
    assert page.get_by_role("button", name=LIST, exact=True).count() == 0
