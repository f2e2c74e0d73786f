"""The tally of the pad: a step done again, a line kept, named, corrected, there after a kill.

Sums are worked by hand, in the record cabinet's numbers.
"""

from playwright.sync_api import expect

from tests.browser.hand import choose, keep_as, open_place, tap_keys
from tests.browser.pad.in_pad import answer, enter, entry, key, lines
from tests.browser.words import AGAIN, EDIT, MORE_KEYS, NOTHING_ENTERED, history_of


def test_the_same_step_is_repeated_with_one_key_and_halved_and_doubled(pad):
    enter(pad, "31 5/8+2 1/4")
    key(pad, AGAIN)
    pad.locator(".tally-line").nth(1).wait_for()
    key(pad, MORE_KEYS)
    key(pad, "half")
    pad.locator(".tally-line").nth(2).wait_for()
    # The keypad is back at its digits.
    key(pad, "7")
    key(pad, "delete")
    key(pad, MORE_KEYS)
    key(pad, "double")
    pad.locator(".tally-line").nth(3).wait_for()
    assert lines(pad) == [
        "thirty-three and seven eighths inches",
        "thirty-six and one eighth inches",
        "eighteen and one sixteenth inches",
        "thirty-six and one eighth inches",
    ]


def test_the_kerf_of_the_settings_is_taken_away_with_one_touch(pad):
    enter(pad, "12")
    key(pad, MORE_KEYS)
    key(pad, "subtract a kerf")
    pad.locator(".tally-line").nth(1).wait_for()
    assert lines(pad)[1] == "eleven and seven eighths inches"  # 1/8 in, until it is measured

    pad.get_by_role("link", name="Settings").tap()
    pad.get_by_label("Kerf", exact=True).fill("3/32")
    pad.get_by_role("button", name="Done").tap()
    open_place(pad, "Project")
    pad.locator("button:enabled", has_text="Undo").wait_for()
    open_place(pad, "Pad")
    key(pad, MORE_KEYS)
    key(pad, "subtract a kerf")
    pad.locator(".tally-line").nth(2).wait_for()
    # An exact thirty-second is told as such, on sixteenths too.
    assert lines(pad)[2] == "eleven and twenty-five thirty-seconds inches"
    pad.locator("output[name=pad-answer]").get_by_text(
        "halfway between 11 3/4 and 11 13/16"
    ).wait_for()
    pad.get_by_role("link", name=history_of(3)).tap()
    pad.get_by_text("[2] − 3/32").wait_for()


def test_after_enter_the_answer_stays_until_the_next_key_and_is_what_keep_keeps(pad):
    enter(pad, "31 5/8+2 1/4")
    assert entry(pad).input_value() == ""
    answer(pad, "thirty-three and seven eighths inches")
    keep_as(pad, "Alcove width")
    key(pad, "7")
    answer(pad, "seven inches")
    open_place(pad, "Project")
    kept = pad.get_by_role("listitem").filter(has_text="Alcove width")
    kept.get_by_text("thirty-three and seven eighths inches").wait_for()
    kept.get_by_text("31 5/8″ + 2 1/4″").wait_for()


def test_a_line_is_kept_in_the_unit_that_it_was_entered_in(pad):
    enter(pad, "25")
    pad.get_by_role("link", name="Settings").tap()
    choose(pad, "Plain numbers are in", "Millimeters")
    open_place(pad, "Project")
    pad.locator("button:enabled", has_text="Undo").wait_for()
    open_place(pad, "Pad")
    pad.get_by_role("link", name=history_of(1)).tap()
    pad.get_by_text("Line 1", exact=True).tap()
    keep_as(pad, "Old width")
    open_place(pad, "Project")
    kept = pad.get_by_role("listitem").filter(has_text="Old width")
    kept.get_by_text("twenty-five inches").wait_for()


def set_unit(pad, name):
    """Choose what a plain number means, and wait until it is kept."""
    pad.get_by_role("link", name="Settings").tap()
    choose(pad, "Plain numbers are in", name)
    open_place(pad, "Project")
    pad.locator("button:enabled", has_text="Undo").wait_for()
    open_place(pad, "Pad")


def test_what_is_typed_tells_when_it_is_read_in_another_unit_than_it_was_typed_in(pad):
    tap_keys(pad, "23/32−1")
    answer(pad, "minus nine thirty-seconds of an inch")
    set_unit(pad, "Millimeters")
    assert entry(pad).input_value() == "23/32 − 1"
    echo = pad.locator(".pad .echo")
    echo.get_by_text("it’s now read in millimeters. Add units or clear it").wait_for()
    expect(echo).to_contain_text("You typed this in inches")
    expect(echo).to_contain_text("Read as 23/32 mm − 1 mm")
    pad.get_by_role("button", name="Clear").tap()
    tap_keys(pad, "31.5")
    answer(pad, "thirty-one point five millimeters")
    assert echo.text_content() == ""


def test_a_line_is_corrected_in_the_unit_that_it_was_entered_in(pad):
    enter(pad, "25")
    set_unit(pad, "Millimeters")
    pad.get_by_role("link", name=history_of(1)).tap()
    pad.get_by_text("Line 1", exact=True).tap()
    pad.get_by_role("button", name=EDIT).tap()
    echo = pad.locator(".pad .echo")
    echo.get_by_text(
        "Plain numbers here are inches, as they were when you entered this line"
    ).wait_for()
    entry(pad).fill("26")
    answer(pad, "six hundred sixty point four millimeters")
    key(pad, "Enter")
    pad.get_by_role("button", name="six hundred sixty point four millimeters").wait_for()
    tap_keys(pad, "26")
    answer(pad, "twenty-six millimeters")


def test_an_earlier_line_is_corrected_in_place_and_later_ones_follow_and_undo_brings_it_back(pad):
    enter(pad, "37 9/16")
    pad.get_by_role("button", name="Use line 1").tap()
    tap_keys(pad, "−1/4")
    key(pad, "Enter")
    pad.locator(".tally-line").nth(1).wait_for()
    pad.get_by_role("link", name=history_of(2)).tap()
    pad.get_by_text("Line 1").tap()
    pad.get_by_role("button", name=EDIT).first.tap()
    assert entry(pad).input_value() == "37 9/16"
    entry(pad).fill("37 7/16")
    key(pad, "Enter")
    pad.get_by_role("button", name="thirty-seven and three sixteenths inches").wait_for()
    pad.get_by_role("link", name=history_of(2)).tap()
    pad.get_by_role("button", name="Undo").tap()
    pad.get_by_text("thirty-seven and five sixteenths inches").wait_for()


def test_a_line_is_named_copied_used_by_name_kept_in_the_project_and_deleted(pad):
    pad.context.grant_permissions(["clipboard-read", "clipboard-write"])
    enter(pad, "3/4")
    pad.get_by_role("link", name=history_of(1)).tap()
    pad.get_by_text("Line 1").tap()
    pad.get_by_role("button", name="Name").tap()
    pad.get_by_role("textbox", name="Name").fill("side")
    pad.get_by_role("dialog").get_by_role("button", name="Name").tap()
    pad.get_by_text("side", exact=True).tap()
    pad.get_by_role("button", name="Copy").tap()
    pad.get_by_text("Copied").wait_for()
    copied = pad.evaluate("navigator.clipboard.readText()")
    keep_as(pad, "Side thickness")
    open_place(pad, "Pad")
    entry(pad).fill("37 - 2 * side")
    answer(pad, "thirty-five and one half inches")
    entry(pad).focus()
    pad.keyboard.press("Control+A")
    pad.keyboard.press("Control+V")
    assert entry(pad).input_value() == copied
    answer(pad, "three quarters of an inch")
    open_place(pad, "Project")
    pad.get_by_role("listitem").filter(has_text="Side thickness").wait_for()
    open_place(pad, "Pad")
    pad.get_by_role("link", name=history_of(1)).tap()
    pad.get_by_text("side", exact=True).tap()
    pad.get_by_role("button", name="Delete").tap()
    pad.get_by_text(NOTHING_ENTERED).wait_for()
    pad.locator("#place").get_by_role("button", name="Undo").tap()
    pad.get_by_text("side", exact=True).wait_for()


def test_the_tally_and_what_is_being_typed_are_there_after_the_phone_was_killed(phone, server):
    context = phone()
    page = context.pages[0]
    page.goto(server.address)
    enter(page, "31 5/8+2 1/4")
    tap_keys(page, "14 15/16")
    answer(page, "fourteen and fifteen sixteenths inches")
    context.close()
    page = phone().pages[0]
    page.goto(server.address)
    page.get_by_role("button", name="thirty-three and seven eighths inches").wait_for()
    assert entry(page).input_value() == "14 15/16"


def test_what_is_typed_when_a_line_is_corrected_comes_back_afterwards(pad):
    enter(pad, "12")
    tap_keys(pad, "7 1/2")
    pad.get_by_role("link", name=history_of(1)).tap()
    pad.get_by_text("Line 1").tap()
    pad.get_by_role("button", name=EDIT).tap()
    assert entry(pad).input_value() == "12"
    entry(pad).fill("13")
    key(pad, "Enter")
    pad.get_by_role("button", name="thirteen inches").wait_for()
    assert entry(pad).input_value() == "7 1/2"
