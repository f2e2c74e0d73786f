"""A plan is looked for in a worker of its own: other questions are answered, and it can be stopped.

A worker's silence, death or absence is made at the browser's boundary only.
"""

import pytest

from tests.browser.hand import open_place
from tests.browser.plan.in_plan import (
    BEFORE_A_BETTER_ONE,
    WATCHED,
    asked,
    keep_carcass,
    keep_panels,
    open_plan,
    use_plan,
    watched_phone,
)
from tests.browser.start.start_support import eventually, open_at, wait_until_kept
from tests.browser.words import PLAN_AGAIN, USE_PLAN

HARD = [(49, 16, 9), (41, 14, 9), (20, 32, 3)]
"""Five sheets at once; that no plan buys less is not found for a long time."""

BETTER = [(32, 20, 8), (30, 25, 4), (23, 20, 4), (41, 29, 8), (18, 29, 9)]
"""Nine sheets at once; eight, and no plan buys less, after a search."""

ALONE = "couldn’t look for a better one"
SO_FAR = "This is the best plan so far."
NO_SECOND = """
const Real = Worker;
let made = 0;
window.Worker = class extends Real {
  constructor(...given) {
    if (made > 0) throw new Error("no more workers");
    super(...given);
    made += 1;
  }
};
"""


@pytest.fixture
def running(phone, server):
    """A plan that is found, and a better one that is still looked for."""
    page = watched_phone(phone, server, BEFORE_A_BETTER_ONE)
    keep_panels(page, server, HARD)
    open_plan(page)
    page.wait_for_function("() => window.held")
    return page


def is_running(page):
    """Whether a plan is looked for yet."""
    return page.get_by_role("button", name="Stop", exact=True).is_visible()


def test_the_pad_answers_while_a_plan_is_looked_for(running):
    open_place(running, "Pad")
    running.get_by_role("textbox", name="Length or sum").fill("31 5/8 + 2 1/4")
    answer = running.locator("output[name=pad-answer]")
    answer.get_by_text("thirty-three and seven eighths inches").wait_for()
    planner = asked(running, "plan")[-1]["worker"]
    assert {each["worker"] for each in asked(running, "read")} == {0}
    assert planner != 0
    running.evaluate("location.hash = 'plan'")
    running.get_by_role("heading", name="Cutting plan").wait_for()
    assert is_running(running)
    assert planner not in running.evaluate("window.ended")


def test_there_is_a_plan_at_once_and_it_only_gets_better(phone, server):
    page = watched_phone(phone, server, BEFORE_A_BETTER_ONE)
    keep_panels(page, server, BETTER)
    open_plan(page)
    page.locator(".plan-verdict", has_text="Buy 9 sheets").wait_for()
    page.get_by_role("button", name="Stop", exact=True).tap()
    page.evaluate("window.holdFrom = Infinity")
    page.get_by_role("button", name=PLAN_AGAIN).tap()
    page.locator(".plan-verdict", has_text="Buy 8 sheets").wait_for()
    page.get_by_text("No plan buys less.").wait_for()
    assert page.get_by_role("button", name="Stop", exact=True).is_hidden()
    use_plan(page)
    assert "Buy 8 sheets" in page.locator(".plan-verdict").inner_text()


def test_what_was_found_stays_when_the_search_is_stopped(running):
    verdict = running.locator(".plan-verdict").inner_text()
    planner = asked(running, "plan")[-1]["worker"]
    stop = running.get_by_role("button", name="Stop", exact=True)
    stop.focus()
    stop.tap()
    running.get_by_text(SO_FAR).wait_for()
    assert planner in running.evaluate("window.ended")
    assert running.locator(".plan-verdict").inner_text() == verdict
    use = running.get_by_role("button", name=USE_PLAN)
    # Who pressed Stop by keyboard is not thrown back to the top of the page.
    assert use.evaluate("(key) => key === document.activeElement")
    use.tap()
    running.locator("#place").get_by_role("button", name="At the saw").wait_for()


def test_a_worker_that_dies_over_a_better_plan_leaves_the_first_one(running):
    verdict = running.locator(".plan-verdict").inner_text()
    running.evaluate("window.held.onmessage({ data: { say: 'failed', reason: 'died' } })")
    running.get_by_text(ALONE).wait_for()
    assert not is_running(running)
    assert running.locator(".plan-verdict").inner_text() == verdict


def test_without_a_second_worker_the_first_gives_a_quick_plan(phone, server):
    page = watched_phone(phone, server, NO_SECOND)
    keep_panels(page, server, HARD)
    open_plan(page)
    page.get_by_text(ALONE).wait_for()
    assert [each["effort"] for each in asked(page, "plan")] == [0]
    assert asked(page, "plan")[0]["worker"] == 0
    page.get_by_role("button", name=USE_PLAN).wait_for()


def test_a_change_of_the_project_ends_the_search_for_what_was(running, server):
    planner = asked(running, "plan")[-1]["worker"]
    keep_carcass(running, server)
    eventually(lambda: planner in running.evaluate("window.ended"))
    running.evaluate("window.holdFrom = Infinity")
    open_plan(running)
    assert asked(running, "plan")[-1]["worker"] != planner


def test_who_watches_a_search_is_told_that_the_project_changed_under_it(running):
    running.get_by_role("button", name="Stop", exact=True).wait_for()
    other = running.context.new_page()
    other.goto(running.url.split("#")[0] + "#project")
    other.get_by_role("button", name="Undo", exact=True).first.tap()
    running.get_by_text("The project changed, so the search ended. Plan again.").wait_for()
    assert not is_running(running)
    running.get_by_role("button", name="Plan the cuts").tap()
    running.wait_for_function("() => window.asked.filter((each) => each.do === 'plan').length > 2")


def test_the_worker_ends_once_it_has_rested(phone, server):
    page = watched_phone(phone, server, has_clock=True)
    keep_carcass(page, server)
    open_plan(page)
    page.wait_for_function("() => window.made() > 1")
    assert page.evaluate("window.ended") == []
    page.clock.fast_forward(61_000)
    eventually(lambda: 1 in page.evaluate("window.ended"))


def test_the_worker_comes_from_the_snapshot_and_reads_what_it_needs_for_a_plan(phone, server):
    context = phone()
    context.add_init_script(WATCHED)
    page = open_at(context, server.address)
    wait_until_kept(page)
    keep_carcass(page, server)
    open_plan(page)
    page.get_by_role("button", name=USE_PLAN).wait_for()
    first = asked(page, "plan")[0]
    assert first["effort"] == 0
    # The one that views the project is the first core: the quick plan is not asked of it.
    assert first["worker"] not in {each["worker"] for each in asked(page, "view")}
    assert page.locator(".plan-head .error").is_hidden()
