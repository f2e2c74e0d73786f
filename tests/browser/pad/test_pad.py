"""What is typed on the pad: every kind of entry, and where a number begins.

Sums are worked by hand, in the record cabinet's numbers.
"""

from tests.browser.hand import keep_as, open_place, tap_keys
from tests.browser.pad.in_pad import answer, entry, key
from tests.browser.words import MORE_KEYS

FORMS = {
    "7-13/16": "seven and thirteen sixteenths inches",
    "5½": "five and one half inches",
    "6'-7-9/32\"": "seventy-nine and nine thirty-seconds inches",
    "10′6": "one hundred twenty-six inches",
    "2 × 3/4 + 31 5/8": "thirty-three and one eighth inches",
    "1/2 of 37 9/16": "eighteen and twenty-five thirty-seconds inches",
    "25.4 mm + 1": "two inches",
    ".0625": "one sixteenth of an inch",
}


def test_whatever_form_the_hand_knows_is_read_also_by_paste(pad):
    for text, words in FORMS.items():
        entry(pad).fill(text)
        answer(pad, words)


def test_after_keep_the_next_number_begins_anew_and_a_sign_goes_on(phone, server):
    page = phone().pages[0]
    page.goto(server.address)
    entry = page.get_by_role("textbox", name="Length or sum")
    tap_keys(page, "37 9/16")
    keep_as(page, "Alcove width")
    tap_keys(page, "−1/8")
    assert entry.input_value() == "[Alcove width] − 1/8"
    page.locator("output[name=pad-answer]").get_by_text("thirty-seven and seven").wait_for()
    keep_as(page, "Case width")
    tap_keys(page, "15 3/4")
    assert entry.input_value() == "15 3/4"
    page.locator("output[name=pad-answer]").get_by_text("fifteen and three quarters").wait_for()
    keep_as(page, "Case depth")
    # Wherever the caret is by then, and on another keyboard too, in a pad that was left meanwhile.
    entry.tap()
    page.keyboard.press("End")
    tap_keys(page, "5/8")
    assert entry.input_value() == "5/8"
    page.locator("output[name=pad-answer]").get_by_text("five eighths of an inch").wait_for()
    keep_as(page, "Ply")
    open_place(page, "Project")
    open_place(page, "Pad")
    assert entry.input_value() == "5/8"
    entry.tap()
    page.keyboard.press("End")
    page.keyboard.type("12")
    assert entry.input_value() == "12"
    page.locator("output[name=pad-answer]").get_by_text("twelve inches").wait_for()
    keep_as(page, "Shelf")
    key(page, "Enter")
    page.locator(".tally-line").get_by_text("12", exact=True).first.wait_for()
    tap_keys(page, "5")
    assert entry.input_value() == "5"
    # A second touch places the caret, to go on with what was kept.
    page.locator("output[name=pad-answer]").get_by_text("five inches").wait_for()
    keep_as(page, "Rail")
    entry.tap()
    entry.tap()
    page.keyboard.press("End")
    tap_keys(page, "6")
    assert entry.input_value() == "56"


def test_a_sign_alone_goes_on_from_the_last_line_and_one_delete_takes_that_away(pad):
    tap_keys(pad, "37 9/16")
    key(pad, "Enter")
    tap_keys(pad, "−2×1/8")
    answer(pad, "thirty-seven and five sixteenths inches")
    assert entry(pad).input_value() == "[1] − 2 × 1/8"
    key(pad, "Enter")
    pad.locator(".tally-line").nth(1).wait_for()
    key(pad, MORE_KEYS)
    key(pad, "divided by")
    assert entry(pad).input_value() == "[2] ÷ "
    key(pad, "delete")
    key(pad, "delete")
    assert entry(pad).input_value() == ""
    tap_keys(pad, "1/3")
    key(pad, "Enter")
    last = pad.locator(".tally-line").nth(2)
    assert last.locator(".briefly").text_content().startswith("≈ ")


def test_a_hardware_keyboard_types_enters_and_clears(pad):
    # Nothing has the focus yet: the pad is where one types.
    pad.locator("output[name=pad-answer]").wait_for()
    pad.keyboard.type("12 1/2 + 3/4")
    answer(pad, "thirteen and one quarter inches")
    pad.keyboard.press("Enter")
    pad.locator(".tally-line").wait_for()
    assert entry(pad).input_value() == ""


def test_an_area_is_said_in_square_feet_as_well(pad):
    entry(pad).fill("18 in × 24 in")
    answer(pad, "432 square inches")
    pad.get_by_text("3 ft²").wait_for()
