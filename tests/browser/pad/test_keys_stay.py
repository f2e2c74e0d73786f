"""Whatever is said, the keys stay under the thumb, and the entry with its number stays whole."""

from tests.browser.hand import tap_keys
from tests.browser.pad.in_pad import key
from tests.browser.project.in_project import keep_reading
from tests.browser.project.test_project_never_lost import FULL
from tests.browser.words import AGAIN, EDIT, OUT_OF_SPACE, history_of

PLACES = """
() => {
  const box = (each) => {
    const { top, bottom } = document.querySelector(each).getBoundingClientRect();
    return [top, bottom];
  };
  const keys = [...document.querySelectorAll(".key")].map((each) => {
    const { left, top } = each.getBoundingClientRect();
    return [left, top];
  });
  const [top] = box("#place");
  const [bottom] = box(".pad-foot");
  const whole = ["#pad-input", ".pad-card > .primary", ".pad-answer .fraction", "#pad-error"];
  const cut = (each) => box(each)[0] < top - 1 || box(each)[1] > bottom + 1;
  const isThere = (each) => document.querySelector(each)?.offsetParent;
  return { keys, cut: whole.filter(isThere).filter(cut) };
}
"""


def test_no_message_moves_a_key_or_covers_the_entry_and_its_number(phone, server):
    context = phone(service_workers="block")
    context.add_init_script(FULL)
    page = context.pages[0]
    page.goto(server.address)
    keep_reading(page, "Alcove width", "37 9/16")
    tap_keys(page, "12")
    key(page, "Enter")
    page.locator(".tally-line").wait_for()
    page.get_by_role("button", name="Close the message").tap()
    before = page.evaluate(PLACES)

    def stays():
        now = page.evaluate(PLACES)
        assert now["keys"] == before["keys"]
        assert now["cut"] == []

    stays()
    key(page, AGAIN)
    page.locator("#notices").get_by_text("has no step to repeat").wait_for()
    stays()
    # Beside the message of the last act, what the app has to tell of its own accord.
    page.evaluate("window.full = true")
    tap_keys(page, "31 5")
    page.locator("#notices").get_by_text(OUT_OF_SPACE).wait_for()
    stays()
    page.locator("#pad-error strong").wait_for()
    stays()
    page.get_by_role("textbox", name="Length or sum").fill("31 5/8")
    page.locator("output[name=pad-answer]:not(.waiting) .fraction").wait_for()
    page.locator("#pad-error").wait_for(state="hidden")
    stays()
    # It floats over the lines until it is closed.
    closing = page.get_by_role("button", name="Close the message")
    for _ in range(closing.count()):
        closing.first.tap()
    stays()
    page.get_by_role("link", name=history_of(1)).tap()
    page.get_by_text("Line 1").tap()
    page.get_by_role("button", name=EDIT).tap()
    page.get_by_text("Editing line 1").wait_for()
    page.locator("output[name=pad-answer]:not(.waiting) .fraction").wait_for()
    stays()
