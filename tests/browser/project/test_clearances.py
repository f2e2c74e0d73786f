"""A clearance set for the project: seen where it is left blank, followed when it is changed.

By hand: 36 5/8 + 2 × 1/4 − 2 × 1/32 = 37 1/16; with 3/32 it is 36 15/16.
"""

from tests.browser.hand import choose, field_called, keep_as, open_place
from tests.browser.start.start_support import eventually
from tests.browser.test_accessible import axe


def test_a_blank_clearance_follows_the_settings_and_can_be_taken_back(phone, server):
    page = phone(service_workers="block").pages[0]
    page.goto(f"{server.address}#work-out/shelf_length")
    page.get_by_label("Case width", exact=True).fill("36 5/8")
    choose(page, "Width measured", "Inside, between the sides")
    choose(page, "Shelf fit", "In dadoes or rabbets")
    clearance = field_called(page, "Clearance at each end")
    assert clearance.get_attribute("placeholder") == "1/32 in (Settings)"
    keep_as(page, "Shelf")

    page.get_by_role("link", name="Settings").tap()
    in_dado = page.get_by_label("Shelf end in a dado", exact=True)
    assert not in_dado.is_visible()
    page.get_by_text("Clearances", exact=True).tap()
    assert axe(page)["wrong"] == []
    in_dado.fill("3")
    page.get_by_role("button", name="Done").tap()
    page.get_by_text("Shelf end in a dado must be from 0 in to 1/4 in.").wait_for()
    in_dado.fill("3/32")
    page.get_by_role("button", name="Done").tap()
    review = page.get_by_role("dialog", name="What this changes")
    review.get_by_role("listitem").filter(has_text="Shelf length").first.wait_for()
    review.get_by_role("button", name="Accept").tap()

    open_place(page, "Project")
    shelf = page.get_by_role("listitem").filter(has_text="Shelf")
    shelf.get_by_text("thirty-six and fifteen sixteenths inches").wait_for()
    page.locator("#place").get_by_role("button", name="Undo").tap()
    shelf.get_by_text("thirty-seven and one sixteenth inches").wait_for()


def test_what_is_filled_in_keeps_its_unit_when_the_unit_is_changed(phone, server):
    page = phone(service_workers="block").pages[0]
    page.goto(server.address)
    page.get_by_role("link", name="Settings").tap()
    page.get_by_label("Kerf", exact=True).fill("3/32")
    page.get_by_role("button", name="Done").tap()
    choose(page, "Plain numbers are in", "Millimeters")
    kerf = page.get_by_label("Kerf", exact=True)
    eventually(lambda: kerf.input_value() == "3/32 in")
    choose(page, "Rounding", "Up to the next mark")
    assert kerf.input_value() == "3/32 in"
    assert page.locator(".error:not(:empty)").count() == 0
