"""The bar of a question has all of its text, at any size, and what scrolls ends above it."""

import pytest

from tests.bench.page import hand
from tests.browser.hand import try_example
from tests.browser.test_hands import enlarge

CUT = """
() => [...document.querySelectorAll(".bar-said, .bar-said *:not(.heard)")]
  .filter((each) => getComputedStyle(each).overflowY !== "visible")
  .filter((each) => each.scrollHeight > each.clientHeight + 1)
  .map((each) => each.textContent)
"""
ENDS_ABOVE = """
async () => {
  const place = document.querySelector("#place");
  const bar = document.querySelector(".answer-bar");
  await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
  place.scrollTop = place.scrollHeight;
  const whole = [...document.querySelectorAll(".asked > *:not(.answered), .answer-whole")];
  const end = Math.max(...whole.map((each) => each.getBoundingClientRect().bottom));
  const room = bar.getBoundingClientRect().top - end;
  place.scrollTop = 0;
  return room;
}
"""


def open_question(page, server, key):
    page.goto(f"{server.address}#work-out/{key}")
    page.locator(f'#place[data-shows="work-out/{key}"]').wait_for()
    page.locator("button[name=example]").wait_for()


@pytest.mark.parametrize("large", [False, True], ids=["usual", "large"])
def test_no_verdict_is_cut_and_the_rest_ends_above_it(page, server, large):
    page.goto(server.address)
    if large:
        enlarge(page)
    cut, behind = {}, {}
    for key in hand.questions():
        open_question(page, server, key)
        try_example(page)
        if found := page.evaluate(CUT):
            cut[key] = found
        if (room := page.evaluate(ENDS_ABOVE)) < -1:
            behind[key] = room
    assert cut == {}
    assert behind == {}


def test_with_large_text_all_that_is_needed_is_named_and_large(page, server):
    page.goto(server.address)
    enlarge(page)
    open_question(page, server, "seasonal_movement")
    needed = page.locator(".bar-said").get_by_text("Still need: Width, Wood, Meter reading")
    needed.wait_for()
    assert page.evaluate(CUT) == []
    assert needed.evaluate("(each) => parseFloat(getComputedStyle(each).fontSize)") > 26
