"""A step that was ticked elsewhere meanwhile: what was written down of it is never lost unsaid."""

from playwright.sync_api import expect

from tests.browser.finish.in_steps import START, keep_coats, open_steps, tick
from tests.browser.words import NOTE, SAVE_CHANGE

TICK = "Tick this step"


def note_shown(page):
    """What is told of the first coat that is done, once it is."""
    page.locator(".check-when").get_by_text("Done Mon Nov 30, 6:00 PM: Thin").wait_for()


def test_a_check_of_before_does_not_tick_again_what_has_a_note_by_now(phone, server):
    page = phone(service_workers="block").pages[0]
    page.clock.set_fixed_time(START)
    keep_coats(page, server)
    open_steps(page)
    old = page.get_by_role("checkbox", name="First coat", exact=True).element_handle()
    page.get_by_role("button", name="Details: First coat").tap()
    page.get_by_label(NOTE).fill("Thin")
    page.get_by_role("button", name=TICK).tap()
    note_shown(page)
    # As one that is shown from before, until the list is here anew.
    old.evaluate("(box) => box.click()")
    page.locator("#notices").get_by_text("That step is ticked already.").wait_for()
    note_shown(page)


def test_details_changed_in_another_tab_are_told_before_they_are_replaced(phone, server):
    context = phone(service_workers="block")
    one = context.pages[0]
    one.clock.set_fixed_time(START)
    keep_coats(one, server)
    one.evaluate("location.hash = 'step/1/coat1'")
    one.get_by_label(NOTE).fill("Mine")
    two = context.new_page()
    two.clock.set_fixed_time(START)
    two.goto(f"{server.address}#work-out/coats/1")
    tick(two, "First coat")
    one.get_by_role("button", name=TICK).tap()
    one.locator("#notices").get_by_text("This step was changed in another tab.").wait_for()
    assert one.get_by_label(NOTE).input_value() == "Mine"
    one.get_by_role("button", name=TICK).or_(one.get_by_role("button", name=SAVE_CHANGE)).tap()
    one.locator(".check-when").get_by_text("6:00 PM: Mine").wait_for()
    two.locator(".check-when").get_by_text("6:00 PM: Mine").wait_for()
    expect(two.get_by_role("checkbox", name="First coat", exact=True)).to_be_checked()
