"""The answer stays in sight, leads with its verdict, and its drawing opens the fields."""

import re

import pytest

from tests.bench.page import hand
from tests.browser.hand import tap_keys, try_example, type_into
from tests.browser.words import STILL_NEED

LIMITS = {"screens": 2, "controls": 7, "words": 60}
"""The most that the median question may have; .95 of them show their answer at once."""
BAR = ".answer-bar"


@pytest.fixture
def question(page, server):
    """Open a question by its key; `filled` presses its example."""

    def open_question(key, *, filled=True):
        page.goto(f"{server.address}#work-out/{key}")
        page.locator(f'#place[data-shows="work-out/{key}"]').wait_for()
        page.locator("button[name=example]").wait_for()
        if filled:
            try_example(page)
        return page

    return open_question


def test_what_a_hand_meets_in_a_question_stays_within_its_limits(page, server):
    seen = {key: hand.look_at(page, server.address, key) for key in hand.questions()}
    found = dict(hand.figures(seen))
    assert found.pop("hand.answer_in_sight") >= 0.95
    assert {name: found[f"hand.{name}_median"] <= most for name, most in LIMITS.items()} == (
        dict.fromkeys(LIMITS, True)
    ), found


def test_a_dimension_that_is_touched_opens_its_field(question):
    page = question("mitered_length")
    page.get_by_role("button", name="Change Stock width").tap()
    assert page.evaluate("document.activeElement.name") == "width"
    tap_keys(page, "3")
    page.locator(f"{BAR} .main-answer").get_by_text("thirty-seven and five eighths").wait_for()


def test_a_dimension_is_reached_and_pressed_with_the_keyboard(question):
    page = question("mitered_length")
    page.get_by_role("button", name="Change Measured length").focus()
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.name") == "known"


def test_the_verdict_says_what_to_do_and_needs_no_unfolding(question):
    page = question("over_or_under")
    verdict = page.locator(f"{BAR} .main-answer")
    assert verdict.inner_text() == "1/32″ long: move the stop toward the blade"


def test_a_number_that_equals_one_told_beside_it_still_stands_in_the_bar(question):
    page = question("set_up_by_lengths")
    type_into(page, "Angle", "45")
    bar = page.locator(f"{BAR} .main-answer")
    bar.get_by_text("twelve inches").wait_for()
    lead = bar.locator(".bar-lead").inner_text().replace("\xa0", " ")
    assert lead == "Rise (on a run of 12″; sets 45° exactly)"


def test_a_field_stays_where_it_is_on_the_screen_when_the_drawing_appears(question):
    page = question("chamfer", filled=False)
    page.locator("#status").wait_for(state="hidden")  # What is said of a first visit's loading.
    field = page.locator("input[name=measure]")
    field.tap()
    picture = page.locator(".asked-picture")
    low, before = picture.bounding_box()["height"], field.bounding_box()["y"]
    tap_keys(page, "1")
    picture.locator("svg").wait_for()
    assert picture.bounding_box()["height"] > low + 50
    assert field.bounding_box()["y"] == pytest.approx(before, abs=2)


def test_the_bar_says_what_is_still_needed_and_a_press_leads_there(question):
    page = question("mitered_length", filled=False)
    needed = page.locator(BAR).get_by_text(STILL_NEED)
    needed.wait_for()
    needed.tap()
    assert page.evaluate("document.activeElement.name") == "known"


def test_a_caution_is_told_in_full_once_a_day_and_its_short_line_after_that(question):
    page = question("mitered_length")
    in_full = page.get_by_role("complementary", name="Cautions in full")
    in_full.get_by_text(re.compile("clear a jam")).wait_for()
    page.get_by_role("button", name="Got it").tap()
    in_full.wait_for(state="hidden")
    short = page.get_by_role("complementary", name="Cautions", exact=True)
    short.get_by_text("Unplug before you change a setting.").wait_for()
    assert short.get_by_text("clear a jam").is_hidden()
    short.locator("summary").tap()
    short.get_by_text("clear a jam").wait_for()
    page.reload()
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    assert in_full.is_hidden()


def test_only_the_main_answer_is_read_aloud_as_it_changes(question):
    page = question("mitered_length")
    result = page.locator("output[name=result]")
    assert result.get_attribute("aria-live") == "off"
    assert result.locator("[role=status]").count() == 1
    assert result.locator("[role=status] .main-answer").count() == 1


def test_a_press_on_the_bar_shows_the_whole_answer(question):
    page = question("mitered_length")
    page.get_by_role("button", name="Show the whole answer").tap()
    whole = page.locator(".answer-whole")
    top = page.locator("#place").bounding_box()["y"]
    page.wait_for_function(
        "([node, top]) => node.getBoundingClientRect().top <= top + 60",
        arg=[whole.element_handle(), top],
    )


def test_the_example_is_read_from_the_top(question):
    page = question("crown")
    assert page.evaluate("document.querySelector('#place').scrollTop") == 0


def test_above_the_keypad_the_answer_is_in_a_line_of_its_own_and_not_twice(question):
    page = question("mitered_length")
    type_into(page, "Measured length", "29")
    page.locator("#sheet .peek-answer").get_by_text("33 1/2″").wait_for()
    assert page.locator(BAR).evaluate("(bar) => getComputedStyle(bar).pointerEvents") == "none"
