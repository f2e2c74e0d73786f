"""Number, mark, tape and keys are whole on the screen: upright, on its side, and at twice the text.

What is typed is what takes most room: long sums, numbers rounded away, negative ones.
"""

import pytest

from tests.browser.conftest import LARGE, SMALL
from tests.browser.hand import choose, chosen, keep_as, open_place, tap_keys
from tests.browser.pad.in_pad import key
from tests.browser.pad.in_sight import (
    KEYS,
    NUMBER,
    PLACE,
    SIDEWAYS,
    enlarge,
    fill_tally,
    out_of_sight,
    type_whole,
)
from tests.browser.start.start_support import eventually
from tests.browser.words import AGAIN, MORE_KEYS

TEXTS = [
    "31 5/8 + 2 1/4",
    "1.078",
    "1/3",
    "946.3 mm",
    "1954.52 mm",
    "7-13/16",
    "33 45/64",
    "6' 7 9/32",
]
UNITS = {"Inches": "in", "Millimeters": "mm"}


def set_unit(page, name):
    """What a plain number means; it is inches at first, and then there is nothing to undo."""
    page.get_by_role("link", name="Settings").tap()
    choose(page, "Plain numbers are in", name)
    chosen(page, "Plain numbers are in", name).wait_for()
    if UNITS[name] != "in":
        open_place(page, "Project")
        page.locator("button:enabled", has_text="Undo").wait_for()
    open_place(page, "Pad")


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("size", [SMALL, LARGE, SIDEWAYS], ids=["small", "large", "sideways"])
def test_number_mark_tape_and_keys_are_whole_with_a_full_tally_and_without(
    phone, server, size, unit
):
    page = phone(size, service_workers="block").pages[0]
    page.goto(server.address)
    set_unit(page, unit)
    for lines in (0, 12):
        if lines:
            fill_tally(page, UNITS[unit], lines)
        for text in TEXTS:
            type_whole(page, text)
            assert out_of_sight(page, NUMBER + PLACE + KEYS) == [], (text, lines)
    type_whole(page, "-946.3 mm")  # which is on no tape
    assert out_of_sight(page, NUMBER + PLACE[:1] + KEYS) == []


@pytest.mark.parametrize("size", [SMALL, SIDEWAYS], ids=["upright", "sideways"])
def test_a_message_floats_covers_no_key_and_no_number_and_moves_nothing(phone, server, size):
    page = phone(size, service_workers="block").pages[0]
    page.goto(server.address)
    fill_tally(page)
    type_whole(page, "31 5/8 + 2 1/4")
    whole = "(all) => [...all].map((each) => JSON.stringify(each.getBoundingClientRect()))"
    everything = page.locator(".pad :is(.key, .strip, .pad-card, .pad-entry, .tally-line)")
    before = everything.evaluate_all(whole)
    keep_as(page, "Alcove width")
    page.locator(".notice").wait_for()
    assert everything.evaluate_all(whole) == before
    assert out_of_sight(page, NUMBER + PLACE + KEYS) == []


def test_at_twice_the_text_size_the_number_and_every_key_are_on_the_screen(page):
    enlarge(page)
    for text in TEXTS[:4]:
        type_whole(page, text)
        assert out_of_sight(page, NUMBER + KEYS) == [], text
    key(page, MORE_KEYS)
    assert out_of_sight(page, NUMBER + KEYS) == []


def test_on_its_side_at_twice_the_text_size_the_number_stands_beside_its_keys(phone, server):
    page = phone(SIDEWAYS, service_workers="block").pages[0]
    page.goto(server.address)
    enlarge(page)
    for text in TEXTS[:4]:
        type_whole(page, text)
        assert out_of_sight(page, NUMBER + KEYS) == [], text


def test_what_is_not_finished_shows_a_dash_and_not_the_answer_before(page):
    tap_keys(page, "31 5")
    number = page.locator(".pad-answer .fraction")
    page.get_by_text("31 and 5 over what?").wait_for()
    assert number.count() == 0
    assert page.locator(".pad-none").text_content().startswith("–")
    assert page.locator(".pad-card > .primary").is_disabled()
    assert out_of_sight(page, [*NUMBER[1:], ".pad-none", "#pad-error", *KEYS]) == []
    tap_keys(page, "/8")
    number.get_by_text("thirty-one and five eighths inches").wait_for()
    tap_keys(page, "+")
    page.locator(".pad-none").wait_for()
    assert number.count() == 0


def test_half_a_line_of_the_tally_is_never_shown(page):
    fill_tally(page)
    for text in (*TEXTS, "31 5/"):
        page.get_by_role("textbox", name="Length or sum").fill(text)
        page.locator(f'output[name=pad-answer][data-for="{text}"]').wait_for()
        height = page.locator(".pad-lines").evaluate("(each) => each.clientHeight")
        assert height == 0 or height >= 56


def test_a_pad_that_has_less_room_shows_its_last_line(phone, server):
    page = phone(LARGE, service_workers="block").pages[0]
    page.goto(server.address)
    fill_tally(page)
    page.set_viewport_size(dict(zip(("width", "height"), SMALL, strict=True)))
    eventually(
        lambda: page.locator(".pad-lines").evaluate(
            "(all) => all.getBoundingClientRect().bottom"
            " - all.lastElementChild.getBoundingClientRect().bottom > -1"
        )
    )


def test_again_is_on_the_first_page_after_enter_and_nothing_moves_by_it(page):
    tap_keys(page, "31 5/8+2 1/4")
    places = "(all) => [...all].map((each) => JSON.stringify(each.getBoundingClientRect()))"
    keys = page.locator(".keypad .key")
    page.locator("output[name=pad-answer]:not(.waiting) .tape").wait_for()
    before = keys.evaluate_all(places)
    key(page, "Enter")
    key(page, AGAIN)
    page.locator(".tally-line").nth(1).wait_for()
    assert keys.evaluate_all(places) == before
