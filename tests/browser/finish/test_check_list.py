"""The steps of a question: a list, and of a kept line a list to tick off."""

from datetime import timedelta

import pytest
from playwright.sync_api import expect

from tests.browser.conftest import LARGE, SMALL
from tests.browser.finish.in_steps import START, keep_coats, moments, open_steps, rows, tick
from tests.browser.hand import field_called, try_example
from tests.browser.test_accessible import SCRIPTS, axe
from tests.browser.words import SAVE_TO_PROJECT

DAY = timedelta(days=1)


def test_a_coat_late_by_a_day_moves_what_follows_by_a_day_and_nothing_before_it(phone, server):
    """By hand: a day later, at the same hour, for the hours at home are the same every day."""
    page = phone(service_workers="block").pages[0]
    page.clock.set_fixed_time("2026-12-02T18:30")
    keep_coats(page, server)
    open_steps(page)
    expect(page.locator(".check-due").first).to_be_visible()
    before = moments(page)
    names = [said for said, _ in before]
    at = names.index("Second coat")
    assert str(before[at][1]) == "2026-12-01 18:30:00"
    tick(page, "Second coat")
    assert rows(page)[at][1].startswith("Done Wed Dec 2, 6:30 PM")
    after = moments(page)
    assert len(after) == len(before) > at + 3
    assert after[:at] == before[:at]
    assert [when for _, when in before[at + 1 :]] == [when - DAY for _, when in after[at + 1 :]]
    third = names.index("Third coat")
    assert str(after[third][1]) == "2026-12-03 19:00:00"


def test_a_tap_ticks_now_undo_takes_it_back_and_the_next_tap_unticks(phone, server):
    page = phone(service_workers="block").pages[0]
    page.clock.set_fixed_time(START)
    keep_coats(page, server)
    open_steps(page)
    tick(page, "First coat")
    page.locator("#notices").get_by_text("First coat: done Mon Nov 30, 6:00 PM.").wait_for()
    assert rows(page)[0] == ("First coat", "Done Mon Nov 30, 6:00 PM", True)
    # Who walks with the keyboard is where they were.
    assert page.evaluate("document.activeElement.dataset.step") == "coat1"
    page.locator("#notices").get_by_role("button", name="Undo").tap()
    first = page.get_by_role("checkbox", name="First coat", exact=True)
    expect(first).not_to_be_checked()
    first.focus()
    page.keyboard.press("Space")
    expect(first).to_be_checked()
    page.keyboard.press("Space")
    expect(first).not_to_be_checked()
    page.locator("#notices").get_by_text("Unticked a step of Varnish.").wait_for()


def test_a_start_that_nobody_typed_is_the_first_tap(phone, server):
    page = phone(service_workers="block").pages[0]
    page.clock.set_fixed_time(START)
    page.goto(f"{server.address}#work-out/coats")
    keep_coats(page, server)
    open_steps(page)
    field_called(page, "Start").fill("")
    hint = page.get_by_text("Save your change to tick these.")
    hint.wait_for()
    assert page.get_by_role("checkbox").count() == 0
    page.get_by_role("button", name="Save change").tap()
    page.locator("#place[data-shows^='project']").wait_for()
    open_steps(page)
    assert {when for _, when in moments(page)} == {None}
    tick(page, "First coat")
    second = next(when for said, when in moments(page) if said == "Second coat")
    assert str(second) == "2026-12-01 18:30:00"


def test_outside_a_project_the_list_stands_without_checks_and_says_how_to_get_them(page, server):
    page.goto(f"{server.address}#work-out/before_finish")
    try_example(page)
    listed = page.get_by_role("region", name="Steps")
    listed.get_by_text("Save to project to tick these.").wait_for()
    assert page.get_by_role("checkbox").count() == 0
    assert len(rows(page)) > 3
    listed.locator("summary").first.tap()
    listed.locator("details[open] > p").first.wait_for()


def test_two_taps_of_one_finger_tick_once(phone, server):
    page = phone(service_workers="block").pages[0]
    page.clock.set_fixed_time(START)
    keep_coats(page, server)
    open_steps(page)
    page.get_by_role("checkbox", name="First coat", exact=True).evaluate(
        "(box) => { box.click(); box.click(); }"
    )
    expect(page.get_by_role("checkbox", name="First coat", exact=True)).to_be_checked()
    page.evaluate("location.hash = 'project'")
    page.get_by_text("Change log").tap()
    page.get_by_text("First coat: done").first.wait_for()
    assert page.locator(".log li").get_by_text("First coat: done").count() == 1


@pytest.mark.parametrize(("size", "dark"), [(SMALL, False), (LARGE, True)], ids=["light", "dark"])
def test_steps_are_large_enough_readable_and_named_at_twice_the_text_too(phone, server, size, dark):
    page = phone(size, dark=dark, service_workers="block").pages[0]
    page.clock.set_fixed_time("2026-12-01T18:30")
    keep_coats(page, server)
    script = SCRIPTS[1].read_text(encoding="utf-8")
    for place in ("work-out/coats/1", "step/1/coat2", "project"):
        page.evaluate("(place) => { location.hash = place; }", place)
        page.locator(f'#place[data-shows="{place}"]').wait_for()
        if place.startswith("work-out"):
            page.locator(".check-box").first.wait_for()
            tick(page, "First coat")
        assert axe(page)["wrong"] == []
        assert page.evaluate(f"() => {{ {script}\nreturn sawsideSmallTargets(); }}") == []
        page.evaluate("document.documentElement.style.fontSize = '200%'")
        assert page.evaluate("document.querySelector('#place').scrollWidth <= innerWidth"), place
        assert page.evaluate(f"() => {{ {script}\nreturn sawsideBrokenWords(); }}") == [], place
        page.evaluate("document.documentElement.style.fontSize = ''")


def test_at_twice_the_text_notices_leave_most_of_the_screen_to_the_steps(phone, server):
    page = phone(service_workers="block").pages[0]
    page.clock.set_fixed_time("2026-12-02T18:30")
    keep_coats(page, server, "coats")
    open_steps(page)
    tick(page, "First coat")
    page.clock.set_fixed_time("2026-12-02T19:05")
    page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    page.locator("#notices").get_by_text("Due: Spread the rags").wait_for(timeout=20_000)
    tick(page, "Second coat")
    page.evaluate("document.documentElement.style.fontSize = '200%'")
    of = "(selector) => document.querySelector(selector).clientHeight / innerHeight"
    assert page.evaluate(of, "#notices") <= 0.4
    assert page.evaluate(of, "#place") >= 0.35
    # What is out of sight is scrolled to, by the keyboard too.
    for name in ("Open", "Undo"):
        key = page.locator("#notices").get_by_role("button", name=name)
        key.focus()
        expect(key).to_be_in_viewport(ratio=0.9)


def test_saving_leads_to_the_steps_and_a_second_time_says_that_it_is_one(phone, server):
    page = phone(service_workers="block").pages[0]
    page.clock.set_fixed_time(START)
    page.goto(f"{server.address}#work-out/coats")
    for saved in (1, 2):
        try_example(page)
        page.get_by_role("button", name=SAVE_TO_PROJECT).tap()
        dialog = page.get_by_role("dialog")
        again = dialog.get_by_text("Coats in this project is the same. Saving lists it twice.")
        expect(again).to_have_count(saved - 1)
        dialog.get_by_role("button", name="Save", exact=True).tap()
        page.locator(f"#place[data-shows='work-out/coats/{saved}//coat1']").wait_for()
        expect(page.get_by_role("checkbox", name="First coat")).to_be_in_viewport(ratio=1)
        # What was filled in is in its line: the question begins anew.
        page.evaluate("location.hash = 'work-out/coats'")
        page.get_by_text("3 days after the first, or later").first.wait_for()


def test_how_a_step_that_waits_is_done_is_with_its_details_and_each_caution_once_in_the_list(
    phone, server
):
    page = phone(service_workers="block").pages[0]
    page.clock.set_fixed_time(START)
    keep_coats(page, server, "before_finish", "Before")
    open_steps(page, "before_finish")
    listed = page.locator(".check-list")
    listed.get_by_text("below the surface").wait_for()  # the next step, how to set nails
    vacuum = "Vacuum with a brush, then wipe with a clean cloth."
    assert listed.get_by_text(vacuum).count() == 0
    for caution in ("Wear a dust respirator to sand", "No flames, sparks or pilot lights"):
        assert listed.locator("summary").get_by_text(caution).count() == 1
    assert page.evaluate("document.querySelector('#place').scrollHeight") < 2 * 740
    page.get_by_role("button", name="Details: Take off the dust").tap()
    page.get_by_text(vacuum).wait_for()
    page.get_by_text("Wear a dust respirator to sand").first.wait_for()


def test_a_line_that_was_not_changed_has_no_edits_to_undo(phone, server):
    page = phone(service_workers="block").pages[0]
    page.clock.set_fixed_time(START)
    keep_coats(page, server)
    open_steps(page)
    undo = page.get_by_role("button", name="Undo my edits")
    expect(undo).to_be_hidden()
    expect(page.get_by_role("button", name="Try an example")).to_be_hidden()
    field_called(page, "Time between coats, h").fill("12")
    undo.tap()
    expect(undo).to_be_hidden()
    expect(field_called(page, "Time between coats, h")).to_have_value("24")
