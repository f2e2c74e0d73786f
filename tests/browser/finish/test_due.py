"""While the page is open it tells when a step comes due, and the project what is next."""

from playwright.sync_api import expect

from tests.browser.finish.in_steps import START, keep_coats, open_steps, tick
from tests.browser.hand import keep_as, open_place, try_example
from tests.browser.plan.in_plan import WATCHED, asked

DUE = "[data-kind=due]"
HOUR = 60 * 60 * 1000
DAY = 24 * HOUR

SLOW_VIEWS = """
const { postMessage: toWorker } = Worker.prototype;
window.slow = false;
window.late = [];
Worker.prototype.postMessage = function (message, ...more) {
  const send = () => toWorker.call(this, message, ...more);
  if (window.slow && message.text?.includes('"do":"view"')) window.late.push(send);
  else send();
};
"""
"""What is asked of a project while `slow` waits in `late`."""


def phone_with_clock(phone, now=START):
    """A phone whose clock can be put forward, and whose workers are watched."""
    context = phone(service_workers="block")
    context.add_init_script(WATCHED)
    page = context.pages[0]
    page.clock.install(time=now)
    return page


def test_the_project_says_what_is_next_and_leads_there(phone, server):
    page = phone_with_clock(phone, "2026-11-30T12:00")
    keep_coats(page, server)
    following = page.get_by_role("region", name="Next step")
    following.get_by_text("Next: First coat, from Mon Nov 30, 6:00 PM").tap()
    page.locator("#place[data-shows^='work-out/coats/1']").wait_for()
    first = page.get_by_role("checkbox", name="First coat")
    expect(first).to_be_focused()
    # At the step itself: nothing is scrolled to, as the fields stand above the steps.
    expect(first).to_be_in_viewport(ratio=1)
    expect(page.get_by_role("heading", name="Coats: Varnish")).not_to_be_in_viewport()


def test_steps_without_a_time_have_a_next_one_and_no_calendar(phone, server):
    page = phone_with_clock(phone)
    keep_coats(page, server, "before_finish", "Before")
    following = page.get_by_role("region", name="Next step")
    first = page.locator(".next-step-line").inner_text().removeprefix("Next: ")
    assert following.get_by_role("button", name="Calendar").count() == 0
    open_steps(page, "before_finish")
    assert page.get_by_role("button", name="Calendar").count() == 0
    tick(page, first)
    open_place(page, "Project")
    page.locator(".next-step-line").get_by_text("Next: ").wait_for()
    assert first not in page.locator(".next-step-line").inner_text()


def test_a_step_that_comes_due_is_told_once_wherever_one_is(phone, server):
    page = phone_with_clock(phone, "2026-11-30T12:00")
    keep_coats(page, server)
    open_place(page, "Pad")
    page.wait_for_timeout(500)
    assert page.locator(DUE).count() == 0
    page.clock.fast_forward("05:59:00")
    page.wait_for_timeout(500)
    assert page.locator(DUE).count() == 0
    page.clock.fast_forward("02:00")
    page.locator(DUE).get_by_text("Due: First coat, from Mon Nov 30, 6:00 PM.").wait_for()
    assert page.locator("#notices").get_attribute("role") == "status"  # It is said aloud, politely.
    page.clock.fast_forward("00:20")
    page.locator(DUE).get_by_role("button", name="Open").tap()
    page.locator("#place[data-shows^='work-out/coats/1']").wait_for()
    assert page.locator(DUE).count() == 0
    expect(page.get_by_role("checkbox", name="First coat")).to_be_in_viewport(ratio=1)
    open_place(page, "Project")
    page.get_by_text("Due: First coat, from Mon Nov 30, 6:00 PM").wait_for()
    page.reload()
    page.get_by_role("region", name="Next step").wait_for()
    page.wait_for_timeout(500)
    assert page.locator(DUE).count() == 0


def test_what_is_due_is_led_to_again_where_its_line_is_shown_already(phone, server):
    page = phone_with_clock(phone, "2026-11-30T17:59:30")
    keep_coats(page, server)
    page.locator(".next-step-line").tap()
    first = page.get_by_role("checkbox", name="First coat")
    expect(first).to_be_focused()
    page.evaluate("document.querySelector('#place').scrollTop = 10000")
    expect(first).not_to_be_in_viewport()
    page.clock.fast_forward("01:00")
    page.locator(DUE).get_by_role("button", name="Open").tap()
    expect(first).to_be_in_viewport(ratio=1)


def test_what_is_said_goes_once_its_step_is_ticked(phone, server):
    page = phone_with_clock(phone, "2026-11-30T17:59:30")
    keep_coats(page, server)
    open_steps(page)
    page.clock.fast_forward("01:00")
    page.locator(DUE).wait_for()
    expect(page.locator(".check-due").first).to_contain_text("First coat")
    tick(page, "First coat")
    page.locator(DUE).wait_for(state="detached")
    page.locator("#notices").get_by_role("button", name="Undo").tap()
    expect(page.get_by_role("checkbox", name="First coat")).not_to_be_checked()
    page.wait_for_timeout(300)
    assert page.locator(DUE).count() == 0  # It was told already.


def test_a_line_that_is_late_keeps_no_other_from_being_told(phone, server):
    """Of the late one the second coat has a time that has gone by, and waits for the first."""
    page = phone_with_clock(phone, "2026-12-07T12:00")
    keep_coats(page, server)
    page.locator(DUE).get_by_text("Due: First coat, from Mon Nov 30, 6:00 PM").wait_for()
    page.goto(f"{server.address}#work-out/coats")
    try_example(page)
    page.locator("input[type=datetime-local]").first.fill("2026-12-07T18:00")
    keep_as(page, "Oil")
    page.wait_for_timeout(500)
    page.clock.fast_forward("06:01:00")
    page.locator(DUE).get_by_text("First coat, from Mon Dec 7, 6:00 PM").wait_for()


def test_who_comes_back_to_the_page_is_told_what_came_due_meanwhile(phone, server):
    page = phone_with_clock(phone, "2026-11-30T12:00")
    keep_coats(page, server)
    # The device slept: its clock went on, no timer did.
    page.clock.set_fixed_time("2026-12-01T09:00")
    page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    told = page.locator(DUE)
    told.get_by_text("Due: First coat, from Mon Nov 30, 6:00 PM; Spread the rags").wait_for()


def test_a_step_further_away_than_any_timer_waits_is_told_in_its_time(phone, server):
    """A browser's timer takes at most 2**31 - 1 milliseconds, and fires at once for more."""
    page = phone_with_clock(phone, "2026-09-01T12:00")
    keep_coats(page, server)
    page.wait_for_timeout(1000)
    before = len(asked(page, "view"))
    page.wait_for_timeout(2500)
    assert len(asked(page, "view")) == before
    for _ in range(4):
        page.clock.fast_forward(24 * DAY)
    page.locator(DUE).get_by_text("Due: First coat").wait_for()


def test_a_step_whose_time_comes_while_the_core_answers_is_told_too(phone, server):
    page = phone_with_clock(phone, "2026-11-05T12:00")
    page.context.add_init_script(SLOW_VIEWS)
    keep_coats(page, server)
    page.wait_for_timeout(500)
    page.evaluate("window.slow = true")
    page.clock.fast_forward(24 * DAY)
    page.clock.fast_forward(21 * HOUR)
    page.wait_for_function("window.late.length > 0")
    page.clock.fast_forward(DAY)
    page.evaluate("window.slow = false; window.late.forEach((send) => send())")
    page.locator(DUE).get_by_text("Due: First coat").wait_for()


def test_by_a_clock_in_another_century_the_project_opens_and_nothing_is_due(phone, server):
    page = phone_with_clock(phone, "1970-01-01T00:00")
    keep_coats(page, server)
    open_steps(page)
    assert page.locator(".check-due").count() == 0
    page.reload()
    page.locator(".check-box").first.wait_for()
    assert page.locator(DUE).count() == 0
