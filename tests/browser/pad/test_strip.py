"""The strip of marks: touched, slid on and stepped along; under a thumb it has room for one."""

from itertools import pairwise

import pytest

from tests.browser.hand import choose, open_place, tap_keys
from tests.browser.pad.in_pad import answer, entry, key, strip, touch

MARK_LESS, MARK_MORE = "one mark less", "one mark more"


def step(page, name):
    """Tap one of the two keys beside the strip."""
    page.get_by_role("button", name=name, exact=True).tap()


def test_a_mark_touched_on_the_strip_completes_the_number(pad):
    key(pad, "7")
    touch(pad, 5 / 8)
    assert entry(pad).input_value() == "7 5/8"
    answer(pad, "seven and five eighths inches")
    touch(pad, 9 / 16)
    # Half of a 1/2 beside it would make 1 9/16 of it.
    labels = strip(pad).locator(".strip-label").locator("visible=true")
    assert labels.all_text_contents() == ["1/4"]
    touch(pad, 11 / 16)
    assert entry(pad).input_value() == "7 11/16"
    touch(pad, 0.001)
    assert entry(pad).input_value() == "7"
    key(pad, "Enter")
    key(pad, "9")
    touch(pad, 11 / 16)
    assert entry(pad).input_value() == "9 11/16"


def test_a_thumb_at_the_end_of_the_strip_means_the_last_mark_and_takes_nothing_away(pad):
    tap_keys(pad, "7 1/2")
    touch(pad, 0.999)
    assert entry(pad).input_value() == "7 15/16"


def test_the_keys_beside_the_strip_go_one_mark_on_and_back_and_end_where_it_ends(pad):
    key(pad, "7")
    touch(pad, 11 / 16)
    step(pad, MARK_MORE)
    assert entry(pad).input_value() == "7 3/4"
    step(pad, MARK_LESS)
    step(pad, MARK_LESS)
    assert entry(pad).input_value() == "7 5/8"
    touch(pad, 15 / 16)
    assert pad.get_by_role("button", name=MARK_MORE).is_disabled()
    assert pad.get_by_role("button", name=MARK_LESS).is_enabled()
    touch(pad, 0.001)
    assert pad.get_by_role("button", name=MARK_LESS).is_disabled()


@pytest.mark.parametrize(
    ("typed", "less", "more"),
    [("7 25/32", "7 3/4", "7 13/16"), ("1.078", "1 1/16", "1 1/8"), (".718", "11/16", "3/4")],
)
def test_from_between_two_marks_a_step_goes_to_the_next_on_its_side(pad, typed, less, more):
    """25/32 is halfway from 24/32 to 26/32; 1.078 from 1.0625 to 1.125; .718 from .6875 to .75."""
    for name, reached in ((MARK_LESS, less), (MARK_MORE, more)):
        entry(pad).fill(typed)
        step(pad, name)
        assert entry(pad).input_value() == reached


@pytest.mark.parametrize(("typed", "named"), [("23/32", "23/32"), ("7 3/4", "3/4"), ("81/16", "")])
def test_what_lies_between_two_marks_is_shown_as_neither_of_them(pad, typed, named):
    entry(pad).fill(typed)
    shown = "(named) => document.querySelector('.strip-spelled').textContent === named"
    pad.wait_for_function(shown, arg=named)
    if named == "23/32":
        face = pad.locator(".strip-picture").bounding_box()
        cursor = pad.locator(".strip-cursor").bounding_box()
        part = (cursor["x"] + cursor["width"] / 2 - face["x"]) / face["width"]
        assert part == pytest.approx(23 / 32, abs=0.005)
        assert strip(pad).get_attribute("aria-valuetext") == "23/32"


def test_in_millimeters_a_step_goes_on_from_the_last_digit_and_a_touch_adds_one(pad):
    pad.get_by_role("link", name="Settings").tap()
    choose(pad, "Plain numbers are in", "Millimeters")
    open_place(pad, "Pad")
    centimeter = pad.get_by_role("slider", name="Part of a centimeter")
    centimeter.wait_for()
    tap_keys(pad, "803")
    step(pad, MARK_MORE)
    assert entry(pad).input_value() == "804"
    entry(pad).fill("27.38")
    step(pad, MARK_LESS)
    assert entry(pad).input_value() == "27"
    entry(pad).fill("80")
    box = centimeter.bounding_box()
    pad.touchscreen.tap(box["x"] + box["width"] * 0.3, box["y"] + box["height"] / 2)
    assert entry(pad).input_value() == "803"
    answer(pad, "eight hundred three millimeters")


def test_for_who_hears_it_the_strip_is_a_slider_with_a_value(pad):
    key(pad, "7")
    slider = strip(pad)
    slider.wait_for()
    slider.focus()
    heard = [slider.get_attribute("aria-valuetext")]
    for pressed in ("PageUp", "ArrowRight", "ArrowLeft", "End", "Home"):
        pad.keyboard.press(pressed)
        heard.append(slider.get_attribute("aria-valuetext"))
    quarter, fifth, last = "one quarter", "five sixteenths", "fifteen sixteenths"
    assert heard == ["no fraction", quarter, fifth, quarter, last, "no fraction"]
    assert slider.get_attribute("aria-valuemax") == "15"
    assert slider.get_attribute("aria-valuenow") == "0"


def test_marks_grow_under_a_thumb_to_the_width_of_a_key_and_it_slides_from_one_to_the_next(pad):
    key(pad, "3")
    box = strip(pad).bounding_box()
    height = box["y"] + box["height"] / 2
    at = box["x"] + box["width"] / 4
    pad.mouse.move(at, height)
    pad.mouse.down()
    ticks = (
        strip(pad)
        .locator(".tape-tick")
        .evaluate_all("(all) => all.map((each) => each.getBoundingClientRect().left)")
    )
    assert all(abs(right - left - 56) < 2 for left, right in pairwise(ticks))
    # What is touched stays under the thumb, and a thumb that trembles changes nothing.
    assert min(abs(each - at) for each in ticks) < 4
    pad.mouse.move(at + 20, height)
    assert entry(pad).input_value() == "3 1/4"
    pad.mouse.move(at + 2 * 56, height, steps=4)
    assert strip(pad).locator(".strip-spelled").text_content() == "3/8"
    pad.mouse.up()
    pad.mouse.move(at + 4 * 56, height)
    assert entry(pad).input_value() == "3 3/8"
    answer(pad, "three and three eighths inches")
    assert strip(pad).locator(".strip-face").bounding_box()["width"] == pytest.approx(box["width"])


def test_a_mark_after_a_sign_goes_to_the_number_being_typed(pad):
    tap_keys(pad, "31 5/8+2")
    touch(pad, 1 / 4)
    assert entry(pad).input_value() == "31 5/8 + 2 1/4"


def test_how_the_strip_is_used_is_said_until_it_was(pad):
    said = pad.locator("output[name=pad-answer]").get_by_text("‹ and › move one mark")
    said.wait_for()
    key(pad, "7")
    touch(pad, 1 / 2)
    pad.get_by_role("button", name="Clear").tap()
    pad.locator("output[name=pad-answer]").get_by_text("Type a length or some math").wait_for()
    assert said.count() == 0
    pad.reload()
    pad.locator("output[name=pad-answer]").get_by_text("Type a length or some math").wait_for()
    strip(pad).wait_for()
    assert said.count() == 0
