"""How sure a number is, on a phone: another number, a rule for tapes, a fit, what a person says."""

from tests.browser.hand import (
    choose,
    chosen,
    field_called,
    keep_as,
    open_place,
    open_question,
    tap_keys,
    try_example,
    type_into,
)
from tests.browser.project.in_project import keep_reading, open_entry, take
from tests.browser.words import HOW_ACCURATE


def take_into(page, label, then=""):
    """Take the only reading of the project into a field, and go on typing."""
    field_called(page, label).tap()
    take(page, "Alcove width")
    tap_keys(page, then)
    page.get_by_role("button", name="Done").tap()


def say_off(page, by):
    """Say what the reading may be off by, where it is corrected."""
    type_into(page, "Good to within ±", by)
    page.get_by_role("button", name="Done").tap()
    page.get_by_text("Updated Alcove width.").first.wait_for()


def test_any_number_of_a_line_tells_how_sure_it_is_and_whether_it_fits(phone, server):
    page = phone().pages[0]
    page.goto(server.address)
    keep_reading(page, "Alcove width", "37 9/16")
    open_question(page, "shelf pins", "Shelf length")
    take_into(page, "Case width", "−30")
    choose(page, "Width measured", "Inside, between the sides")
    choose(page, "Shelf fit", "Loose, on pins or cleats")
    keep_as(page, "Shelf")
    open_entry(page, "Shelf", "Open")
    page.get_by_role("button", name=HOW_ACCURATE).tap()
    page.get_by_role("heading", name="How accurate: Shelf").wait_for()
    page.get_by_text("7 7/16″, probably within 1/32″, 1/32″ at the outside.").wait_for()
    page.get_by_text("the total clearance of 1/8″ covers it.").wait_for()

    choose(page, "Which number", "Inside width")
    page.get_by_text("7 9/16″, probably within 1/32″, 1/32″ at the outside.").wait_for()
    choose(page, "Tapes you haven’t checked", "NIST Handbook 44")
    page.get_by_text("7 9/16″, probably within 1/16″, 1/16″ at the outside.").wait_for()
    page.get_by_text("Alcove width: 37 9/16, ± 1/16″").wait_for()
    assert chosen(page, "Which number", "Inside width").is_visible()
    page.reload()
    page.get_by_text("7 9/16″, probably within 1/16″, 1/16″ at the outside.").wait_for()
    assert chosen(page, "Tapes you haven’t checked", "NIST Handbook 44").is_visible()

    page.get_by_role("button", name="Measure Alcove width again").tap()
    say_off(page, "1/4")
    open_entry(page, "Shelf", HOW_ACCURATE)
    page.get_by_text("7 7/16″, probably within 1/4″, 1/4″ at the outside.").wait_for()
    page.get_by_text("the total clearance of 1/8″ isn’t enough for that.").wait_for()

    page.get_by_role("button", name="Measure Alcove width again").tap()
    say_off(page, "8")
    open_entry(page, "Shelf", HOW_ACCURATE)
    page.get_by_text("With Alcove width 8″ less there’s no answer").wait_for()
    page.get_by_text("leaves no answer").wait_for()
    choose(page, "Which number", "Shelf minus inside width")
    page.get_by_text("−1/8″, but it’s at its limit.").wait_for()

    open_question(page, "stick", "How many fit")
    take_into(page, "Stick", "+10 7/16")
    type_into(page, "Piece", "11 29/32")
    page.get_by_role("button", name="Done").tap()
    keep_as(page, "Slats")
    open_entry(page, "Slats", HOW_ACCURATE)
    page.get_by_text("4, between 3 and 4 at the outside.").wait_for()
    page.get_by_text("At worst", exact=True).wait_for()


def test_what_is_told_in_words_alone_is_not_asked_how_accurate_it_is(phone, server):
    page = phone().pages[0]
    page.goto(f"{server.address}#work-out/finish_amount")
    try_example(page)
    keep_as(page, "Oil")
    open_place(page, "Project")
    page.get_by_text("Buy 1 quart").first.wait_for()
    assert page.get_by_role("button", name=HOW_ACCURATE).count() == 0
    open_entry(page, "Oil", "Open")
    page.get_by_text("Show the math").wait_for()
    assert page.get_by_role("button", name=HOW_ACCURATE).count() == 0
