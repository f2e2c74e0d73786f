"""Both ends of a piece are asked for once, until somebody makes them different."""

import re

from tests.browser.hand import choose, chosen, keep_as, open_question, try_example
from tests.browser.project.in_project import open_entry

ANSWER = "output[name=result] .main-answer"


def open_example(page):
    """A rail of the record cabinet's frame: 31 5/8 inside, 2 1/4 wide, 45 at both ends."""
    open_question(page, "picture frame", "Mitered length")
    try_example(page)


def test_what_is_chosen_for_both_ends_is_answered_for_both(page):
    open_example(page)
    assert page.get_by_text("Left end", exact=True).count() == 0
    choose(page, "Both ends", "Square")
    page.locator("svg.drawing").get_by_text("long point 31 5/8″").wait_for()
    choose(page, "Both ends", "Other angle")
    page.get_by_label("Both ends angle", exact=True).fill("45")
    # At 45 an end adds the width of the stock: 31 5/8 + 2 x 2 1/4.
    page.locator(ANSWER).get_by_text("thirty-six and one eighth inches").first.wait_for()


def test_ends_made_different_are_two_rows_and_go_back_to_one(page):
    open_example(page)
    page.get_by_role("button", name="Different ends").tap()
    choose(page, "Right end", "Square")
    # One miter: 31 5/8 + 2 1/4.
    page.locator(ANSWER).get_by_text("thirty-three and seven eighths inches").first.wait_for()
    page.get_by_role("button", name="Same ends").tap()
    page.locator(ANSWER).get_by_text("thirty-six and one eighth inches").first.wait_for()
    assert page.get_by_text("Right end", exact=True).is_hidden()
    # What the right end was comes back with it.
    page.get_by_role("button", name="Different ends").tap()
    chosen(page, "Right end", "Square").wait_for()


def test_a_kept_line_with_different_ends_opens_as_two_rows(page):
    open_example(page)
    choose(page, "Right end", "Square")
    page.locator(ANSWER).get_by_text("thirty-three and seven eighths inches").first.wait_for()
    keep_as(page, "Top rail")
    open_entry(page, "Top rail", "Open")
    chosen(page, "Left end", "45° miter").wait_for()
    chosen(page, "Right end", "Square").wait_for()
    choose(page, "Left end", "Square")
    page.get_by_role("button", name="Clear", exact=True).tap()
    page.get_by_text(re.compile("^Both ends")).first.wait_for()
