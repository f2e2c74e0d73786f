"""A choice is a row: few short words side by side, all others in a list that the row opens."""

from tests.browser.hand import choice_of, chosen, open_place, open_question
from tests.browser.words import EXAMPLE


def open_ends(page):
    """The list of the ends of a mitered piece."""
    open_question(page, "picture frame", "Mitered length")
    page.get_by_role("button", name=EXAMPLE).tap()
    choice_of(page, "Both ends").locator(".picked").tap()
    return page.get_by_role("dialog", name="Both ends")


def test_the_choices_of_a_list_are_large_and_have_a_picture_where_it_tells_more(page):
    dialog = open_ends(page)
    options = dialog.get_by_role("radio")
    assert options.count() == 6
    heights = options.evaluate_all("(all) => all.map((each) => each.offsetHeight)")
    assert min(heights) >= 56
    assert dialog.locator(".choice-picture").count() == 6
    assert dialog.get_by_role("radio", checked=True).text_content() == "45° miter"
    assert dialog.get_by_text("A miter cuts across the face.").is_visible()
    dialog.get_by_role("radio", name="Square").tap()
    chosen(page, "Both ends", "Square").wait_for()
    assert page.get_by_role("dialog").count() == 0
    page.locator("svg.drawing").get_by_text("long point 31 5/8″").wait_for()


def test_a_keyboard_walks_the_list_and_escape_leaves_all_as_it_was(page):
    dialog = open_ends(page)
    page.keyboard.press("Escape")
    dialog.wait_for(state="detached")
    assert chosen(page, "Both ends", "45° miter").is_visible()
    row = choice_of(page, "Both ends").locator(".picked")
    assert row.evaluate("(each) => each === document.activeElement")
    page.keyboard.press("Enter")
    dialog.wait_for()
    page.keyboard.press("ArrowUp")
    page.keyboard.press("Enter")
    dialog.wait_for(state="detached")
    assert chosen(page, "Both ends", "Square").is_visible()
    assert row.evaluate("(each) => each === document.activeElement")


def test_few_short_words_stand_in_the_row_and_the_one_chosen_has_a_mark(page):
    open_question(page, "planter", "Box with sloping sides")
    page.locator(".fold-row").tap()
    row = choice_of(page, "Wider at")
    assert row.locator(".field-row").bounding_box()["height"] <= 58
    row.get_by_text("Bottom", exact=True).tap()
    mark = "(each) => getComputedStyle(each, '::after').content"
    assert row.get_by_text("Bottom", exact=True).evaluate(mark) == '"✓"'
    assert row.get_by_text("Top", exact=True).evaluate(mark) == "none"


def test_a_list_in_the_settings_is_kept_as_it_is_picked(page):
    page.get_by_role("link", name="Settings").tap()
    choice_of(page, "Round to").locator(".picked").tap()
    dialog = page.get_by_role("dialog", name="Round to")
    dialog.get_by_role("radio", name="1/16 in", exact=True).or_(
        dialog.get_by_role("radio").nth(1)
    ).first.tap()
    open_place(page, "Project")
    page.locator("button:enabled", has_text="Undo").wait_for()


def test_a_choice_whose_picture_has_a_hole_opens_as_any_other(page):
    open_question(page, "shelf", "Shelf length")
    choice_of(page, "Shelf fit").locator(".picked").tap()
    dialog = page.get_by_role("dialog", name="Shelf fit")
    assert dialog.locator(".choice-picture circle").count() == 1
