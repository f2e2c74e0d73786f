"""A form on a phone on its side, and with text of twice the size."""

from tests.browser.hand import choice_of, open_question, tap_keys, try_example
from tests.browser.test_hands import enlarge, is_on_top

ON_ITS_SIDE = (740, 360)


def open_example(page):
    """A mitered rail of the record cabinet's frame."""
    open_question(page, "picture frame", "Mitered length")
    try_example(page)


def test_on_its_side_the_keys_stand_beside_the_form_and_both_are_whole(phone, server):
    page = phone(ON_ITS_SIDE, service_workers="block").pages[0]
    page.goto(server.address)
    open_example(page)
    field = page.get_by_label("Stock width", exact=True)
    field.tap()
    tap_keys(page, "3")
    assert field.input_value() == "3"
    keys = page.locator("#sheet .keypad .key")
    boxes = keys.evaluate_all("(all) => all.map((each) => each.getBoundingClientRect().toJSON())")
    assert max(each["bottom"] for each in boxes) <= ON_ITS_SIDE[1]
    assert min(each["height"] for each in boxes) >= 56
    assert is_on_top(field)
    place = page.locator("#place").bounding_box()
    assert place["x"] + place["width"] <= min(each["left"] for each in boxes)
    # Nothing but its number: 31 5/8 + 2 x 3.
    assert is_on_top(page.locator("#sheet").get_by_text("37 5/8″"))


def test_with_large_text_a_label_stands_above_its_field_and_a_list_can_be_left(page):
    enlarge(page)
    open_example(page)
    label = page.get_by_text("Stock width", exact=True)
    field = page.get_by_label("Stock width", exact=True)
    # Both at one moment: the drawing may still be getting higher.
    tops = "(all) => all.map((each) => each.getBoundingClientRect().top)"
    of_label, of_field = page.evaluate(tops, [label.element_handle(), field.element_handle()])
    assert of_label < of_field
    choice_of(page, "Both ends").locator(".picked").tap()
    dialog = page.get_by_role("dialog", name="Both ends")
    assert is_on_top(dialog.get_by_role("radio", checked=True))
    assert is_on_top(dialog.get_by_role("button", name="Cancel"))
    wide = "(each) => each.scrollWidth > each.clientWidth"
    assert not dialog.evaluate(wide)
    assert not dialog.get_by_role("radio").evaluate_all(f"(all) => all.some({wide})")
