"""What the plain case does not need folds behind one row, and is never hidden where it matters.

Numbers of the record cabinet's face frame.
"""

from tests.browser.hand import choose, keep_as, open_question, tap_keys, try_example, type_into
from tests.browser.project.in_project import open_entry
from tests.browser.words import EXAMPLE

MORE = ".fold-row"
IN_SIGHT = """
() => [...document.querySelectorAll("#place .form :is(input, select, button, summary)")]
  .filter((each) => each.checkVisibility()).length
"""


def open_miter(page):
    """A question whose thickness, rabbet and number of pieces fold."""
    open_question(page, "picture frame", "Mitered length")


def test_a_mitered_length_asks_for_four_things_and_says_what_the_others_are(page):
    open_miter(page)
    try_example(page)
    assert page.evaluate(IN_SIGHT) <= 6
    now = page.locator(MORE).locator(".fold-now")
    assert now.text_content() == "How many 1"
    page.locator(MORE).tap()
    type_into(page, "Rabbet", "3/8")
    page.get_by_role("button", name="Done").tap()
    page.locator(MORE).tap()
    assert now.text_content() == "Rabbet 3/8, how many 1"


def test_a_percentage_that_folds_has_no_space_before_its_sign(page):
    open_question(page, "how much finish", "How much finish")
    try_example(page)
    now = page.locator(MORE).locator(".fold-now").text_content().replace("\xa0", " ")
    assert "loss 10%" in now


def test_a_fold_opens_where_something_in_it_is_needed_or_wrong(page):
    open_miter(page)
    page.get_by_role("button", name=EXAMPLE).tap()
    thickness = page.get_by_label("Stock thickness", exact=True)
    assert not thickness.is_visible()
    choose(page, "Both ends", "Bevel")
    thickness.wait_for()
    page.locator(MORE).tap()
    page.get_by_label("Rabbet", exact=True).evaluate("(each) => { each.value = '3//8'; }")
    page.get_by_label("Rabbet", exact=True).dispatch_event("input")
    page.locator(".fold .error:not(:empty)").wait_for()
    assert page.get_by_label("Rabbet", exact=True).is_visible()


def test_what_was_typed_into_a_fold_is_in_sight_when_the_line_is_opened_again(page):
    open_miter(page)
    page.get_by_role("button", name=EXAMPLE).tap()
    type_into(page, "Rabbet", "3/8")
    page.get_by_role("button", name="Done").tap()
    keep_as(page, "Top rail")
    open_entry(page, "Top rail", "Open")
    page.get_by_label("Rabbet", exact=True).wait_for()


def test_a_field_shows_its_help_while_it_is_gone_to_and_tells_it_to_a_screen_reader(page):
    open_miter(page)
    width = page.get_by_label("Stock width", exact=True)
    known = page.get_by_label("Measured length", exact=True)
    help_text = page.get_by_text("Across the face, where you see the miter.")
    assert not help_text.is_visible()
    described = width.evaluate(
        "(each) => each.getAttribute('aria-describedby').split(' ')"
        ".map((id) => document.getElementById(id).textContent).join(' ')"
    )
    assert "Across the face" in described
    width.tap()
    help_text.wait_for()
    known.tap()
    help_text.wait_for(state="hidden")
    tap_keys(page, "31")
    assert known.input_value() == "31"
