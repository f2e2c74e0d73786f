"""The pad: every kind of entry, the strip of marks, and a tally that can be corrected.

Sums are worked by hand, in the record cabinet's numbers.
"""

import pytest

from tests.browser.hand import choose, keep_as, open_place, tap_keys
from tests.browser.start.start_support import eventually

ON_THEIR_WAY = """
() => new Promise((resolve) => {
  const opening = indexedDB.open("sawside");
  opening.onsuccess = () => {
    const asked = opening.result.transaction("page").objectStore("page").get("entering");
    asked.onsuccess = () => {
      opening.result.close();
      resolve(asked.result?.length);
    };
  };
})
"""


@pytest.fixture
def page(phone, server):
    """The pad of a phone just opened."""
    opened = phone().pages[0]
    opened.goto(server.address)
    return opened


def answer(page, words):
    """Wait until the answer of the pad says these words."""
    page.locator("output[name=pad-answer]").get_by_text(words, exact=True).wait_for()


def key(page, name):
    """Tap one key by its name."""
    page.get_by_role("group", name="Keypad").get_by_role("button", name=name, exact=True).tap()


def entry(page):
    """The field of the pad."""
    return page.get_by_role("textbox", name="Length or sum")


def lines(page):
    """The words of the tally's lines, as on the pad."""
    return page.locator(".tally-line .fraction .heard").all_text_contents()


def enter(page, text):
    """Tap a line and Enter, and wait until it stands in the tally."""
    before = page.locator(".tally-line").count()
    tap_keys(page, text)
    key(page, "Enter")
    page.locator(".tally-line").nth(before).wait_for()


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


def test_whatever_form_the_hand_knows_is_read_also_by_paste(page):
    for text, words in FORMS.items():
        entry(page).fill(text)
        answer(page, words)


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


def test_a_mark_touched_on_the_strip_completes_the_number_and_slides(page):
    key(page, "7")
    strip = page.get_by_role("slider", name="An inch")
    box = strip.bounding_box()

    def touch(part):
        page.touchscreen.tap(box["x"] + box["width"] * part, box["y"] + box["height"] / 2)

    touch(5 / 8)
    assert entry(page).input_value() == "7 5/8"
    answer(page, "seven and five eighths inches")
    touch(9 / 16)
    # Half of a 1/2 beside it would make 1 9/16 of it.
    assert strip.locator(".strip-label").locator("visible=true").all_text_contents() == [
        "1/4",
        "3/4",
    ]
    touch(11 / 16)
    assert entry(page).input_value() == "7 11/16"
    assert strip.get_attribute("aria-valuetext") == "eleven sixteenths"
    key(page, "more signs")
    key(page, "one mark more")
    assert entry(page).input_value() == "7 3/4"
    strip.focus()
    page.keyboard.press("ArrowLeft")
    assert entry(page).input_value() == "7 11/16"
    touch(0.001)
    assert entry(page).input_value() == "7"
    key(page, "Enter")
    key(page, "9")
    touch(11 / 16)
    assert entry(page).input_value() == "9 11/16"


def test_a_finger_slides_along_the_strip_and_sees_the_fraction_spelled_out(page):
    key(page, "3")
    strip = page.get_by_role("slider", name="An inch")
    box = strip.bounding_box()
    height = box["y"] + box["height"] / 2
    page.mouse.move(box["x"] + box["width"] / 4, height)
    page.mouse.down()
    spelled = strip.locator(".strip-spelled")
    assert spelled.text_content() == "1/4"
    page.mouse.move(box["x"] + box["width"] * 3 / 8, height, steps=4)
    assert spelled.text_content() == "3/8"
    page.mouse.up()
    page.mouse.move(box["x"] + box["width"] * 7 / 8, height)
    assert entry(page).input_value() == "3 3/8"
    answer(page, "three and three eighths inches")


def test_a_mark_after_a_sign_goes_to_the_number_being_typed(page):
    tap_keys(page, "31 5/8+2")
    strip = page.get_by_role("slider", name="An inch")
    box = strip.bounding_box()
    page.touchscreen.tap(box["x"] + box["width"] / 4, box["y"] + box["height"] / 2)
    assert entry(page).input_value() == "31 5/8 + 2 1/4"


def test_a_sign_alone_goes_on_from_the_last_line_and_one_delete_takes_that_away(page):
    tap_keys(page, "37 9/16")
    key(page, "Enter")
    tap_keys(page, "−2×1/8")
    answer(page, "thirty-seven and five sixteenths inches")
    assert entry(page).input_value() == "[1] − 2 × 1/8"
    key(page, "Enter")
    page.locator(".tally-line").nth(1).wait_for()
    key(page, "more signs")
    key(page, "divided by")
    assert entry(page).input_value() == "[2] ÷ "
    key(page, "delete")
    key(page, "delete")
    assert entry(page).input_value() == ""
    key(page, "digits")
    tap_keys(page, "1/3")
    key(page, "Enter")
    last = page.locator(".tally-line").nth(2)
    assert last.locator(".briefly").text_content().startswith("≈ ")


def test_the_same_step_is_repeated_with_one_key_and_halved_and_doubled(page):
    enter(page, "31 5/8+2 1/4")
    key(page, "again, repeat the last step")
    page.locator(".tally-line").nth(1).wait_for()
    key(page, "more signs")
    key(page, "half")
    page.locator(".tally-line").nth(2).wait_for()
    # The keypad is back at its digits.
    key(page, "7")
    key(page, "delete")
    key(page, "more signs")
    key(page, "double")
    page.locator(".tally-line").nth(3).wait_for()
    assert lines(page) == [
        "thirty-three and seven eighths inches",
        "thirty-six and one eighth inches",
        "eighteen and one sixteenth inches",
        "thirty-six and one eighth inches",
    ]


def test_the_kerf_of_the_settings_is_taken_away_with_one_touch(page):
    enter(page, "12")
    key(page, "more signs")
    key(page, "subtract a kerf")
    page.locator(".tally-line").nth(1).wait_for()
    assert lines(page)[1] == "eleven and seven eighths inches"  # 1/8 in, until it is measured

    page.get_by_role("link", name="Settings").tap()
    page.get_by_label("Kerf", exact=True).fill("3/32")
    page.get_by_role("button", name="Done").tap()
    open_place(page, "Project")
    page.locator("button:enabled", has_text="Undo").wait_for()
    open_place(page, "Pad")
    key(page, "more signs")
    key(page, "subtract a kerf")
    page.locator(".tally-line").nth(2).wait_for()
    # An exact thirty-second is told as such, on sixteenths too.
    assert lines(page)[2] == "eleven and twenty-five thirty-seconds inches"
    page.locator("output[name=pad-answer]").get_by_text(
        "halfway between 11 3/4 and 11 13/16"
    ).wait_for()
    page.get_by_role("link", name="Tally, 3 lines").tap()
    page.get_by_text("[2] − 3/32").wait_for()


def test_after_enter_the_answer_stays_until_the_next_key_and_is_what_keep_keeps(page):
    enter(page, "31 5/8+2 1/4")
    assert entry(page).input_value() == ""
    answer(page, "thirty-three and seven eighths inches")
    keep_as(page, "Alcove width")
    key(page, "7")
    answer(page, "seven inches")
    open_place(page, "Project")
    kept = page.get_by_role("listitem").filter(has_text="Alcove width")
    kept.get_by_text("thirty-three and seven eighths inches").wait_for()
    kept.get_by_text("Reading: 31 5/8″ + 2 1/4″").wait_for()


def test_a_line_is_kept_in_the_unit_that_it_was_entered_in(page):
    enter(page, "25")
    page.get_by_role("link", name="Settings").tap()
    choose(page, "A bare number means", "Millimeters")
    open_place(page, "Project")
    page.locator("button:enabled", has_text="Undo").wait_for()
    open_place(page, "Pad")
    page.get_by_role("link", name="Tally, 1 line").tap()
    page.get_by_text("Line 1", exact=True).tap()
    keep_as(page, "Old width")
    open_place(page, "Project")
    kept = page.get_by_role("listitem").filter(has_text="Old width")
    kept.get_by_text("Reading: 25″").wait_for()


def test_an_earlier_line_is_corrected_in_place_and_later_ones_follow_and_undo_brings_it_back(page):
    enter(page, "37 9/16")
    page.get_by_role("button", name="Use line 1").tap()
    tap_keys(page, "−1/4")
    key(page, "Enter")
    page.locator(".tally-line").nth(1).wait_for()
    page.get_by_role("link", name="Tally, 2 lines").tap()
    page.get_by_text("Line 1").tap()
    page.get_by_role("button", name="Correct").first.tap()
    assert entry(page).input_value() == "37 9/16"
    entry(page).fill("37 7/16")
    key(page, "Enter")
    page.get_by_role("button", name="thirty-seven and three sixteenths inches").wait_for()
    page.get_by_role("link", name="Tally, 2 lines").tap()
    page.get_by_role("button", name="Undo").tap()
    page.get_by_text("thirty-seven and five sixteenths inches").wait_for()


def test_a_line_is_named_copied_used_by_name_kept_in_the_project_and_deleted(page):
    page.context.grant_permissions(["clipboard-read", "clipboard-write"])
    enter(page, "3/4")
    page.get_by_role("link", name="Tally, 1 line").tap()
    page.get_by_text("Line 1").tap()
    page.get_by_role("button", name="Name").tap()
    page.get_by_role("textbox", name="Name").fill("side")
    page.get_by_role("dialog").get_by_role("button", name="Name").tap()
    page.get_by_text("side", exact=True).tap()
    page.get_by_role("button", name="Copy").tap()
    page.get_by_text("Copied").wait_for()
    copied = page.evaluate("navigator.clipboard.readText()")
    keep_as(page, "Side thickness")
    open_place(page, "Pad")
    entry(page).fill("37 - 2 * side")
    answer(page, "thirty-five and one half inches")
    entry(page).focus()
    page.keyboard.press("Control+A")
    page.keyboard.press("Control+V")
    assert entry(page).input_value() == copied
    answer(page, "three quarters of an inch")
    open_place(page, "Project")
    page.get_by_role("listitem").filter(has_text="Side thickness").wait_for()
    open_place(page, "Pad")
    page.get_by_role("link", name="Tally, 1 line").tap()
    page.get_by_text("side", exact=True).tap()
    page.get_by_role("button", name="Delete").tap()
    page.get_by_text("Nothing entered yet").wait_for()
    page.locator("#place").get_by_role("button", name="Undo").tap()
    page.get_by_text("side", exact=True).wait_for()


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


def test_a_hardware_keyboard_types_enters_and_clears(page):
    # Nothing has the focus yet: the pad is where one types.
    page.locator("output[name=pad-answer]").wait_for()
    page.keyboard.type("12 1/2 + 3/4")
    answer(page, "thirteen and one quarter inches")
    page.keyboard.press("Enter")
    page.locator(".tally-line").wait_for()
    assert entry(page).input_value() == ""


def test_an_area_is_said_in_square_feet_as_well(page):
    entry(page).fill("18 in × 24 in")
    answer(page, "432 square inches")
    page.get_by_text("3 ft²").wait_for()


@pytest.fixture
def waking(phone, server):
    """The pad while the core is not there yet: it is held until `wake(page)`."""
    context = phone(service_workers="block")
    context.add_init_script(
        """
        const post = Worker.prototype.postMessage;
        const waiting = [];
        window.asleep = true;
        window.wake = () => {
          window.asleep = false;
          for (const each of waiting) post.apply(...each);
        };
        Worker.prototype.postMessage = function (...message) {
          if (window.asleep) waiting.push([this, message]);
          else post.apply(this, message);
        };
        """
    )
    opened = context.pages[0]
    opened.goto(server.address)
    entry(opened).wait_for()
    return opened


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
    assert page.locator(".tally-waiting").count() == 0


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
    eventually(lambda: waking.evaluate(ON_THEIR_WAY) == 2)
    waking.reload()
    other = waking.context.new_page()
    other.goto(server.address)
    for page in (waking, other):
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
    key(waking, "more signs")
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
    waking.get_by_text("“12 1/” wasn't entered.").wait_for()
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
    waking.get_by_text("It goes on from a line that was not entered.").wait_for()
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
    waking.get_by_text("This line wasn't entered").wait_for()
    assert entry(waking).input_value() == "12 1/"
    waking.reload()
    wake(waking)
    assert entry(waking).input_value() == "12 1/"
    tap_keys(waking, "4")
    key(waking, "Enter")
    entered(waking, "12 1/4")


def test_what_is_typed_when_a_line_is_corrected_comes_back_afterwards(page):
    enter(page, "12")
    tap_keys(page, "7 1/2")
    page.get_by_role("link", name="Tally, 1 line").tap()
    page.get_by_text("Line 1").tap()
    page.get_by_role("button", name="Correct").tap()
    assert entry(page).input_value() == "12"
    entry(page).fill("13")
    key(page, "Enter")
    page.get_by_role("button", name="thirteen inches").wait_for()
    assert entry(page).input_value() == "7 1/2"
