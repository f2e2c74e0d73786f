"""Next goes on in a list without a trap; a text is echoed only where that says more.

Heights of the record cabinet's shelves and readings of its alcove.
"""

from tests.browser.hand import choose, open_question, tap_keys, type_into
from tests.browser.project.in_project import fill_linked_rail, keep_reading, take


def key(page, name):
    """Tap one key by its name."""
    page.get_by_role("group", name="Keypad").get_by_role("button", name=name, exact=True).tap()


def rows_of(page):
    """The texts of the list."""
    rows = page.locator(".field-many .row input[type=text]")
    return rows.evaluate_all("(all) => all.map((each) => each.value)")


def test_next_adds_a_row_and_goes_on_from_one_that_is_left_empty(page):
    open_question(page, "smallest", "Opening")
    page.locator(".field-many .row input").first.tap()
    for text in ("48", "47 7/8"):
        tap_keys(page, text)
        key(page, "Next")
    tap_keys(page, "47")
    key(page, "Next")
    assert rows_of(page) == ["48", "47 7/8", "47", ""]
    key(page, "Next")
    assert rows_of(page) == ["48", "47 7/8", "47"]
    assert not page.evaluate("Boolean(document.activeElement.closest('.field-many'))")


def test_a_list_that_hangs_on_a_choice_can_be_filled_in_once_it_is_asked(page):
    open_question(page, "hole grid", "Shelves on a hole grid")
    choose(page, "Spacing", "My own heights")
    page.locator(".field-many .row input").first.tap()
    tap_keys(page, "12")
    assert rows_of(page) == ["12"]


def test_only_what_says_more_than_was_typed_is_echoed(page):
    open_question(page, "picture frame", "Mitered length")
    type_into(page, "Stock width", "2 1/4")
    page.get_by_label("Measured length", exact=True).fill("31.625")
    length = page.locator(".field", has=page.get_by_label("Measured length", exact=True))
    assert length.locator(".echo").text_content() == ""
    page.get_by_label("Measured length", exact=True).fill("3 ft")
    length.locator(".echo").get_by_text("= 3′").wait_for()
    width = page.locator(".field", has=page.get_by_label("Stock width", exact=True))
    assert width.locator(".echo").text_content() == ""


def test_a_linked_name_is_shown_whole_with_its_number(page):
    name = "Alcove width behind the record cabinet"
    keep_reading(page, name, "37 9/16")
    open_question(page, "picture frame", "Mitered length")
    type_into(page, "Stock width", "2 1/4")
    page.get_by_label("Measured length", exact=True).tap()
    take(page, name)
    chip = page.locator(".chip")
    chip.get_by_text("37 9/16″").wait_for()
    assert chip.get_by_text(name).is_visible()
    assert chip.evaluate("(each) => each.scrollWidth <= each.clientWidth")


def test_a_sum_with_a_name_is_told_whole_beside_what_the_name_stands_for(page):
    keep_reading(page, "Alcove width", "37 9/16")
    fill_linked_rail(page)
    length = page.locator(".field", has=page.get_by_label("Measured length", exact=True))
    length.locator(".echo").get_by_text("= Alcove width − 1/4″", exact=True).wait_for()
    assert length.locator(".chip").get_by_text("37 9/16″").is_visible()


PLACES = "(all) => all.map((each) => [each.textContent, each.getBoundingClientRect().top])"


def test_the_keys_stay_where_they_are_while_what_is_said_above_them_changes(page):
    open_question(page, "picture frame", "Mitered length")
    page.get_by_label("Measured length", exact=True).tap()
    keys = page.locator("#sheet .key")
    before = keys.evaluate_all(PLACES)
    tap_keys(page, "31 5/")
    assert keys.evaluate_all(PLACES) == before
    tap_keys(page, "8")
    key(page, "Next")
    tap_keys(page, "2 1/4")
    page.locator("#sheet").get_by_text("36 1/8″").wait_for()
    assert keys.evaluate_all(PLACES) == before


def test_a_number_is_not_echoed_for_its_unit_alone(page):
    open_question(page, "humidity", "Moisture from the air")
    temperature = page.get_by_label("Temperature, °F", exact=True)
    temperature.fill("68")
    page.get_by_label("Relative humidity, %", exact=True).fill("45")
    page.locator("output[name=result]").get_by_text("Wood settles at").first.wait_for()
    assert page.locator(".field", has=temperature).locator(".echo").text_content() == ""
