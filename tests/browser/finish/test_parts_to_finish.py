"""The parts of a project are listed for a finish with one tap, and taken back with another."""

from playwright.sync_api import expect

from tests.browser.hand import choose, open_question
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
    # Where one looks: the line with what to buy, not the key at the foot of the page.
    expect(told).to_be_in_viewport(ratio=1)
    page.locator("#notices").get_by_role("button", name="Undo").tap()
    told.wait_for(state="detached")


def test_a_project_without_parts_offers_no_list_of_them(page):
    page.evaluate("location.hash = 'project'")
    page.get_by_role("button", name="Add a piece").wait_for()
    assert page.get_by_role("button", name=LIST, exact=True).count() == 0


def test_an_area_takes_by_name_what_is_an_area_and_a_length_what_is_a_length(page):
    page.set_viewport_size({"width": 360, "height": 740})
    start_sample_case(page)
    open_question(page, "how much finish", LIST)
    page.locator(".fold > summary").first.tap()
    choose(page, "Parts by", "Area")
    page.get_by_label("Area of one face, ft²").first.tap()
    assert offered(page) == ["Area of parts"]
    page.get_by_role("dialog").get_by_role("button", name="Area of parts").tap()
    page.get_by_text("Carcass: Area of parts is 41.4 ft²").wait_for()
    choose(page, "Parts by", "Size")
    page.get_by_label("Length", exact=True).first.tap()
    others = offered(page)
    assert "Inside width" in others
    assert not {"Area of parts", "Weight"}.intersection(others)


def offered(page):
    """What the project offers of its case for the field that was tapped, beside its main number."""
    page.get_by_role("button", name="From project").tap()
    dialog = page.get_by_role("dialog")
    dialog.get_by_role("button", name="Other numbers from Carcass", exact=True).tap()
    dialog.locator(".pick-others .pick-name").first.wait_for()
    return dialog.locator(".pick-others .pick-name > span:first-child").all_inner_texts()
