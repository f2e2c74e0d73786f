"""A phone in the garage answers a mitered length, without network, and keeps it.

The lengths are worked by hand from the rule that at a 45 a piece grows by the stock's width per
mitered end (common practice, no source): 31 5/8 + 2 × 2 1/4 = 36 1/8.
"""

import re

from tests.browser.hand import choose, keep_as, open_place, open_question, tap_keys, type_into
from tests.browser.words import NOTHING_SAVED, READY_OFFLINE, SAVE_CHANGE


def open_page(context, address):
    """The page of a browser just opened."""
    page = context.pages[0]
    page.goto(address)
    return page


def fill_rail(page, length, width):
    """A rail of the record cabinet with a miter at both ends."""
    type_into(page, "Measured length", length)
    type_into(page, "Stock width", width)
    page.get_by_role("button", name="Done").tap()
    choose(page, "Left end", "45° miter")
    choose(page, "Right end", "45° miter")


def main_answer(page):
    """The large answer of a question."""
    return page.locator("output[name=result] .main-answer")


def test_a_mitered_length_is_typed_answered_kept_and_there_again_without_network(phone, server):
    context = phone()
    page = open_page(context, server.address)
    open_question(page, "picture frame", "Mitered length")
    fill_rail(page, "31 5/8", "2 1/4")

    main_answer(page).get_by_text("thirty-six and one eighth inches").wait_for()
    picture = page.locator(".asked-picture svg.drawing")
    assert "long point" in picture.text_content().lower()
    assert "short point" in picture.text_content().lower()
    page.get_by_text("Show the math").tap()
    page.get_by_text(re.compile(r"31\s5/8 \+ 2\s1/4 \+ 2\s1/4 = 36\s1/8")).wait_for()

    keep_as(page, "Top rail")
    page.get_by_role("link", name="Settings").tap()
    page.locator("#place").get_by_text(READY_OFFLINE).wait_for()
    context.close()
    server.stop()

    page = open_page(phone(), server.address)
    open_place(page, "Project")
    kept = page.get_by_role("listitem").filter(has_text="Top rail")
    kept.get_by_text("thirty-six and one eighth inches").wait_for()
    open_question(page, "rail", "Mitered length")
    page.get_by_role("button", name="Clear").tap()
    fill_rail(page, "20 1/4", "2")
    main_answer(page).get_by_text("twenty-four and one quarter inches").wait_for()


def test_the_pad_reads_a_sum_as_it_is_typed_and_keeps_it_as_a_reading(phone, server):
    page = open_page(phone(), server.address)
    tap_keys(page, "31 5/8+2 1/4")
    page.locator("output[name=pad-answer]").get_by_text(
        "thirty-three and seven eighths inches"
    ).wait_for()
    keep_as(page, "Alcove width")
    open_place(page, "Project")
    page.get_by_role("listitem").filter(has_text="Alcove width").wait_for()


def test_text_typed_before_the_core_is_up_is_answered_when_it_arrives(phone, server):
    page = open_page(phone(), server.address)
    page.get_by_role("textbox", name="Length or sum").fill("7-13/16")
    page.locator("output[name=pad-answer]").get_by_text(
        "seven and thirteen sixteenths inches"
    ).wait_for()


def test_an_unreadable_text_gets_a_sentence_beside_the_field_and_stays_as_typed(phone, server):
    page = open_page(phone(), server.address)
    open_question(page, "miter", "Mitered length")
    type_into(page, "Stock width", "3//4")
    error = page.locator(".field", has_text="Stock width").locator(".error")
    error.get_by_text("Write it as 3/4").wait_for()
    assert page.get_by_label("Stock width", exact=True).input_value() == "3//4"


def test_a_kept_line_is_renamed_corrected_deleted_and_brought_back(phone, server):
    page = open_page(phone(), server.address)
    open_question(page, "miter", "Mitered length")
    fill_rail(page, "31 5/8", "2 1/4")
    keep_as(page, "Top rail")
    open_place(page, "Project")

    page.get_by_role("listitem").get_by_text("Top rail", exact=True).tap()
    page.get_by_role("listitem").get_by_role("button", name="Rename").tap()
    page.get_by_role("textbox", name="Name").fill("Bottom rail")
    page.get_by_role("button", name="Rename", exact=True).last.tap()
    page.get_by_role("listitem").get_by_text("Bottom rail").wait_for()

    page.get_by_role("listitem").get_by_text("Bottom rail").tap()
    page.get_by_role("button", name="Open").tap()
    page.get_by_label("Measured length", exact=True).fill("31 1/2")
    main_answer(page).get_by_text("thirty-six inches").wait_for()
    page.get_by_role("button", name="Done").tap()
    page.get_by_role("button", name=SAVE_CHANGE).tap()
    page.get_by_role("listitem").get_by_text("thirty-six inches").wait_for()

    page.get_by_role("listitem").get_by_text("Bottom rail").tap()
    page.get_by_role("button", name="Delete").tap()
    page.get_by_text(NOTHING_SAVED).wait_for()
    page.locator("#notices").get_by_role("button", name="Undo").tap()
    page.get_by_role("listitem").get_by_text("Bottom rail").wait_for()


def test_the_pieces_of_the_project_are_cut_one_at_a_time_at_the_saw(phone, server):
    page = open_page(phone(), server.address)
    open_question(page, "miter", "Mitered length")
    fill_rail(page, "31 5/8", "2 1/4")
    keep_as(page, "Top rail")
    open_place(page, "At the saw")
    page.get_by_role("heading", name="Top rail").wait_for()
    page.get_by_text("1 left of 1").wait_for()
    page.get_by_role("button", name="Cut one", exact=True).tap()
    page.get_by_text("All pieces cut").wait_for()
    page.get_by_role("button", name="Uncut one").tap()
    page.get_by_text("1 left of 1").wait_for()
