"""Enter while the core starts: every line is taken as it was, in order and once, or comes back."""

from tests.browser.hand import stored, tap_keys
from tests.browser.pad.in_pad import entry, key
from tests.browser.start.start_support import eventually
from tests.browser.words import MORE_KEYS


def wake(page):
    """Let the core start."""
    page.evaluate("window.wake()")


def texts(page):
    """The lines of the tally as they were entered."""
    return page.locator(".tally-line .tally-text").all_text_contents()


def entered(page, *expected):
    """Wait until these lines are on the tally, and nothing is on its way."""
    page.locator(".tally-line").nth(len(expected) - 1).wait_for()
    assert texts(page) == list(expected)
    eventually(lambda: page.locator(".tally-waiting").count() == 0)


def test_enter_takes_the_text_of_its_moment_while_the_core_starts(waking):
    for text in ("31", "12", "7"):
        tap_keys(waking, text)
        key(waking, "Enter")
        assert entry(waking).input_value() == ""
    tap_keys(waking, "5")
    assert waking.locator(".tally-waiting").all_text_contents() == ["…31", "…12", "…7"]
    wake(waking)
    entered(waking, "31", "12", "7")
    assert entry(waking).input_value() == "5"


def test_what_was_entered_while_the_core_starts_outlives_the_page_and_comes_once(waking, server):
    for text in ("31", "12"):
        tap_keys(waking, text)
        key(waking, "Enter")
    eventually(lambda: len(stored(waking, "entering") or ()) == 2)
    waking.reload()
    other = waking.context.new_page()
    other.goto(server.address)
    for page in (waking, other):
        page.locator(".tally-waiting").nth(1).wait_for()
        assert page.locator(".tally-waiting").all_text_contents() == ["…31", "…12"]
    for page in (waking, other):
        wake(page)
    for page in (waking, other):
        entered(page, "31", "12")
    waking.reload()
    wake(waking)
    entered(waking, "31", "12")


def test_a_sign_and_a_step_go_on_from_a_line_that_is_still_on_its_way(waking):
    tap_keys(waking, "31")
    key(waking, "Enter")
    tap_keys(waking, "−1/8")
    key(waking, "Enter")
    key(waking, MORE_KEYS)
    key(waking, "half")
    tap_keys(waking, "×2")
    wake(waking)
    entered(waking, "31", "[1] − 1/8", "[2] ÷ 2")
    assert entry(waking).input_value() == "[3] × 2"


def test_an_unreadable_line_comes_back_and_what_was_typed_since_stays(waking):
    for text in ("31", "12 1/", "7"):
        tap_keys(waking, text)
        key(waking, "Enter")
    tap_keys(waking, "5 1/2")
    wake(waking)
    waking.get_by_text("“12 1/” wasn’t entered.").wait_for()
    assert entry(waking).input_value() == "5 1/2"
    assert texts(waking) == ["31"]
    waking.get_by_role("button", name="Fix it").tap()
    assert entry(waking).input_value() == "12 1/"
    tap_keys(waking, "4")
    key(waking, "Enter")
    entered(waking, "31", "12 1/4", "7")
    assert entry(waking).input_value() == "5 1/2"


def test_an_unreadable_line_that_is_left_out_takes_nothing_with_it_and_nothing_goes_on_from_it(
    waking,
):
    for text in ("31", "12 1/"):
        tap_keys(waking, text)
        key(waking, "Enter")
    tap_keys(waking, "−1/8")
    key(waking, "Enter")
    tap_keys(waking, "7")
    key(waking, "Enter")
    wake(waking)
    waking.get_by_role("button", name="Fix it").tap()
    waking.get_by_role("button", name="Clear", exact=True).tap()
    # Eight of an inch less than what? It may not be taken from 31.
    waking.get_by_text("This builds on a line that wasn’t entered.").wait_for()
    assert texts(waking) == ["31"]
    waking.get_by_role("button", name="Fix it").tap()
    entry(waking).fill("12 1/4 - 1/8")
    key(waking, "Enter")
    entered(waking, "31", "12 1/4 - 1/8", "7")


def test_an_unreadable_line_with_nothing_typed_since_stands_in_the_entry_again(waking):
    tap_keys(waking, "12 1/")
    key(waking, "Enter")
    assert entry(waking).input_value() == ""
    wake(waking)
    waking.get_by_text("This line wasn’t entered").wait_for()
    assert entry(waking).input_value() == "12 1/"
    waking.reload()
    wake(waking)
    assert entry(waking).input_value() == "12 1/"
    tap_keys(waking, "4")
    key(waking, "Enter")
    entered(waking, "12 1/4")


def test_before_the_core_the_strip_is_there_and_after_it_the_keys_stay_on_their_page(waking):
    waking.locator(".strip").wait_for()
    key(waking, MORE_KEYS)
    keys = waking.get_by_role("group", name="Keypad")
    keys.get_by_role("button", name="half").wait_for()
    wake(waking)
    entry(waking).fill("3")
    waking.locator("output[name=pad-answer] .tape").wait_for()
    assert keys.get_by_role("button", name="half").is_visible()
