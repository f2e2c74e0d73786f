"""The keypad writes into the field that is in sight and lit up, and into no other.

Lengths of the record cabinet's opening, measured at several heights.
"""

import pytest

from tests.browser.hand import open_question, tap_keys
from tests.browser.project.in_project import keep_reading, take
from tests.browser.words import REMOVE

OPENING = "Opening"


@pytest.fixture
def several(page):
    """The question with a list of readings, and a reading that can be picked."""
    keep_reading(page, "Alcove width", "37 9/16")
    open_question(page, "smallest", OPENING)
    return page


def fields(page):
    """The texts of the list's fields."""
    rows = page.locator(".field-many .row input[type=text]")
    return [rows.nth(at).input_value() for at in range(rows.count())]


def row(page, number):
    """A row of the list by its number."""
    return page.locator(".field-many .row").nth(number - 1)


def test_an_added_row_takes_the_keypad_and_the_name_that_is_picked(several):
    row(several, 1).locator("input").tap()
    tap_keys(several, "48")
    several.get_by_role("button", name="Add").tap()
    tap_keys(several, "47")
    assert fields(several) == ["48", "47"]
    several.get_by_role("button", name="Add").tap()
    take(several, "Alcove width")
    assert fields(several)[-1] == "[Alcove width]"
    assert several.evaluate("document.activeElement.value") == "[Alcove width]"


def test_a_row_that_is_taken_away_takes_its_keypad_along(several):
    row(several, 1).locator("input").tap()
    tap_keys(several, "48")
    several.get_by_role("button", name="Add").tap()
    tap_keys(several, "47")
    before = fields(several)
    several.locator(".field-many .row").last.get_by_role("button", name=REMOVE).tap()
    several.locator("#sheet").wait_for(state="hidden")
    assert fields(several) == before[:-1]
    names = several.locator(".field-many .row").evaluate_all(
        "(all) => all.map((each) => each.getAttribute('aria-label'))"
    )
    assert len(set(names)) == len(names)
    row(several, 1).locator("input").tap()
    tap_keys(several, "9")
    assert fields(several)[0] == "9"


def test_a_form_filled_anew_under_the_keypad_leaves_it_in_a_field_that_is_there(several):
    row(several, 1).locator("input").tap()
    tap_keys(several, "48")
    several.get_by_role("button", name="Clear", exact=True).tap()
    assert fields(several)[0] == ""
    tap_keys(several, "31")
    assert fields(several)[0] == "31"


def test_a_page_that_is_left_takes_the_list_of_names_and_the_keypad_along(several):
    row(several, 1).locator("input").tap()
    several.get_by_role("button", name="From project").tap()
    several.evaluate("history.back()")
    several.get_by_role("searchbox", name="Find a question").wait_for()
    assert several.get_by_role("dialog").count() == 0
    assert several.locator("#sheet").is_hidden()


def test_a_field_for_words_does_not_leave_the_keypad_with_the_field_before(page):
    page.evaluate("location.hash = 'settings'")
    kerf = page.get_by_label("Kerf", exact=True)
    kerf.tap()
    page.locator("#sheet").wait_for()
    page.get_by_role("button", name="Add tape").tap()
    page.get_by_role("group", name="Tape 1", exact=True).get_by_label("Name", exact=True).tap()
    page.locator("#sheet").wait_for(state="hidden")
