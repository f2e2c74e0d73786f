"""What was rounded away is in sight beside its number, however long it is and whatever is said."""

import pytest

from tests.browser.hand import choose, keep_as, open_place

# Rounded to whole millimeters or sixteenths, which must be told.
LENGTHS = ["946.3 mm", "1954.52 mm", "-946.3 mm", "1/3 in"]


def check_mark_in_sight(page, text):
    """The small print of the number stands above the keypad, and Keep beside the number."""
    page.get_by_role("textbox", name="Length or sum").fill(text)
    page.locator(f"output[name=pad-answer][data-for='{text}']:not(.waiting) .small-print").wait_for(
        state="attached"
    )
    head = page.locator(".pad-head").bounding_box()
    mark = page.locator(".pad-answer .small-print .aside").first.bounding_box()
    keep = page.locator(".pad-card > .primary").bounding_box()
    number = page.locator(".pad-answer .fraction-seen").bounding_box()
    assert mark["y"] + mark["height"] <= head["y"] + head["height"], text
    assert number["x"] + number["width"] <= keep["x"], text


@pytest.mark.parametrize("unit", ["Inches", "Millimeters"])
def test_a_number_on_the_pad_and_its_mark_never_part(page, unit):
    page.get_by_role("link", name="Settings").tap()
    choose(page, "Plain numbers are in", unit)
    open_place(page, "Pad")
    for text in LENGTHS:
        check_mark_in_sight(page, text)
    keep_as(page, "Third")
    for text in LENGTHS:
        check_mark_in_sight(page, text)
