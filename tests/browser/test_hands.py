"""What a thumb stumbles over: large text, a field filled before, red too early, a change not kept.

Each test walks a whole job, in the record cabinet's numbers.
"""

from tests.browser.hand import (
    choose,
    field_called,
    keep_as,
    open_place,
    open_question,
    tap_keys,
    type_into,
)
from tests.browser.words import SAVE, SAVED, STILL_NEED, UNSAVED_EDIT, YOU_HAVE_UNSAVED_EDIT


def key(page, name):
    """Tap one key by its name."""
    page.get_by_role("group", name="Keypad").get_by_role("button", name=name, exact=True).tap()


ON_TOP = """(each) => {
    const { left, top, width, height } = each.getBoundingClientRect();
    const touched = document.elementFromPoint(left + width / 2, top + height / 2);
    return width > 0 && each.contains(touched);
}"""


def is_on_top(locator):
    """Whether the middle of an element is what a thumb would touch there, once the page is still.

    Nothing is scrolled for it.
    """
    for _ in range(100):
        if locator.evaluate(ON_TOP):
            return True
        locator.page.wait_for_timeout(50)
    return False


def enlarge(page):
    """Twice the text size."""
    page.evaluate("document.documentElement.style.fontSize = '200%'")


def fill_rail(page):
    """A rail of the cabinet with a miter at both ends, and its answer."""
    open_question(page, "picture frame", "Mitered length")
    type_into(page, "Measured length", "31 5/8")
    type_into(page, "Stock width", "2 1/4")
    page.get_by_role("button", name="Done").tap()
    choose(page, "Left end", "45° miter")
    choose(page, "Right end", "45° miter")
    page.locator("output[name=result]").get_by_text("thirty-six and one eighth inches").wait_for()


def test_at_twice_the_text_size_nothing_covers_what_the_hand_needs(page):
    enlarge(page)
    page.get_by_role("textbox", name="Length or sum").fill("31 5/8 + 2 1/4")
    answer = page.locator("output[name=pad-answer] .fraction-seen")
    answer.wait_for()
    page.locator("#place").evaluate("(place) => place.scrollTo(0, 0)")
    keypad = page.get_by_role("group", name="Keypad")
    seen = [page.get_by_role("textbox", name="Length or sum"), answer]
    seen += [keypad.get_by_role("button", name=name, exact=True) for name in ("7", "9", "plus")]
    assert [is_on_top(each) for each in seen] == [True] * 5
    key(page, "1")
    assert page.get_by_role("textbox", name="Length or sum").input_value().endswith("1/41")

    keep_as(page, "A long name for the alcove and its record cabinet")
    settings = page.get_by_role("link", name="Settings")
    assert is_on_top(settings)
    head = page.locator(".title-block").bounding_box()
    assert head["height"] < 100
    notice = page.locator(".notice")
    assert notice.bounding_box()["y"] >= head["y"] + head["height"] - 1

    fill_rail(page)
    page.get_by_label("Stock width", exact=True).tap()
    assert is_on_top(page.get_by_label("Stock width", exact=True))
    assert is_on_top(keypad.get_by_role("button", name="7", exact=True))
    page.get_by_role("button", name="Done").tap()
    keep_as(page, "Top rail")
    open_place(page, "At the saw")
    assert is_on_top(page.locator(".piece .fraction-seen"))
    page.get_by_role("button", name="Cut one", exact=True).tap()
    page.get_by_text("All pieces cut").wait_for()


def test_a_filled_field_is_replaced_by_typing_and_a_second_touch_places_the_caret(page):
    open_question(page, "miter", "Mitered length")
    field = page.get_by_label("Measured length", exact=True)
    type_into(page, "Measured length", "31 5/8")
    key(page, "Next")
    type_into(page, "Measured length", "29")
    assert field.input_value() == "29"
    field.tap()
    tap_keys(page, "1/2")
    assert field.input_value() in {"291/2", "21/29", "1/229"}
    page.get_by_role("button", name="Clear the field").tap()
    assert field.input_value() == ""


def test_nothing_is_red_before_a_field_is_left_and_a_hardware_enter_goes_on(page):
    tap_keys(page, "31 5/")
    error = page.locator(".pad-head .error:not(:empty)")
    error.and_(page.locator(".quiet")).wait_for()
    key(page, "Enter")
    error.and_(page.locator(":not(.quiet)")).wait_for()
    tap_keys(page, "8")
    page.locator("output[name=pad-answer] .tape").wait_for()

    open_question(page, "shelf spacing", "Shelf spacing")
    page.get_by_text(STILL_NEED).or_(page.locator("output[name=result] .help")).first.wait_for()
    assert page.locator(".error:not(:empty)").count() == 0

    open_question(page, "miter", "Mitered length")
    field = page.locator(".field", has=page.get_by_label("Measured length", exact=True))
    type_into(page, "Measured length", "31 5/")
    field.locator(".error.quiet:not(:empty)").wait_for()
    assert field.locator("input").get_attribute("aria-invalid") == "false"
    page.keyboard.press("Enter")
    assert page.get_by_label("Stock width", exact=True).evaluate(
        "(each) => each === document.activeElement"
    )
    field.locator(".error:not(.quiet):not(:empty)").wait_for()
    assert field.locator("input").get_attribute("aria-invalid") == "true"

    field_called(page, "How many").fill("dozen")
    field = page.locator(".field", has=page.get_by_label("How many", exact=True))
    field.locator(".error:not(:empty)").get_by_text("dozen").wait_for()


def test_a_correction_typed_but_not_kept_is_marked_until_it_is_kept_beside_done(page):
    fill_rail(page)
    keep_as(page, "Top rail")
    open_place(page, "Project")
    line = page.get_by_role("listitem").filter(has_text="Top rail")
    line.get_by_text("Top rail", exact=True).tap()
    line.get_by_role("button", name="Open").tap()
    type_into(page, "Measured length", "31 1/2")
    page.locator("#sheet").get_by_text("36″").wait_for()
    page.get_by_role("button", name="Done").tap()
    page.locator("output[name=result]:focus").wait_for()

    open_place(page, "At the saw")
    page.get_by_text(YOU_HAVE_UNSAVED_EDIT).wait_for()
    open_place(page, "Project")
    line.get_by_text(UNSAVED_EDIT).wait_for()
    line.get_by_text("Top rail", exact=True).tap()
    line.get_by_role("button", name="Open").tap()
    assert page.get_by_label("Measured length", exact=True).input_value() == "31 1/2"
    page.get_by_label("Measured length", exact=True).tap()
    page.locator("#sheet").get_by_role("button", name="Save").tap()
    line.get_by_text("thirty-six inches").wait_for()
    assert line.get_by_text(UNSAVED_EDIT).count() == 0
    assert line.locator("summary").evaluate("(each) => each === document.activeElement")


def test_at_the_saw_the_setting_stands_under_the_length_and_cut_pieces_lead_to_the_next(page):
    fill_rail(page)
    keep_as(page, "Top rail")
    type_into(page, "Measured length", "29")
    page.locator("#sheet").get_by_role("button", name=SAVE).tap()
    page.get_by_role("textbox", name="Name").fill("Side rail")
    page.get_by_role("dialog").get_by_role("button", name=SAVE).tap()
    page.get_by_text(f"{SAVED} Side rail").wait_for()
    page.get_by_role("button", name="Close the message").tap()
    open_place(page, "At the saw")
    page.get_by_role("heading", name="Top rail").wait_for()
    ends = page.locator(".ends")
    assert is_on_top(ends.get_by_text("Left: miter"))
    assert is_on_top(ends.get_by_text("45°").first)
    length = page.locator(".piece-length").bounding_box()
    assert length["y"] + length["height"] <= ends.bounding_box()["y"]
    small = page.locator(".saw-key, nav a, #to-settings").evaluate_all(
        "(all) => all.filter((each) => each.getBoundingClientRect().height < 72).length"
    )
    assert small == 0
    page.get_by_role("button", name="Cut one", exact=True).tap()
    page.locator(".piece-done", has_text="All cut").wait_for()
    page.get_by_role("button", name="Next uncut").tap()
    page.get_by_role("heading", name="Side rail").wait_for()


def test_what_is_typed_and_not_kept_goes_on_meaning_what_it_meant_when_the_unit_changes(page):
    fill_rail(page)
    page.get_by_role("link", name="Settings").tap()
    choose(page, "Plain numbers are in", "Millimeters")
    open_place(page, "Project")
    page.locator("button:enabled", has_text="Undo").wait_for()
    open_question(page, "miter", "Mitered length")
    page.get_by_text("Plain numbers here are still inches").wait_for()
    # 36 1/8 in is 917.575 mm.
    page.locator("output[name=result]").get_by_text("nine hundred eighteen millimeters").wait_for()
    page.get_by_role("button", name="Clear", exact=True).tap()
    type_into(page, "Measured length", "800")
    page.get_by_text(f"{STILL_NEED}: Stock width").first.wait_for()
    assert page.get_by_text("Plain numbers here are still").is_hidden()


def test_after_a_rename_or_a_deletion_the_focus_is_on_the_line_that_changed(page):
    for text, name in (("31 5/8", "Alcove width"), ("37 9/16", "Alcove height")):
        page.get_by_role("textbox", name="Length or sum").fill(text)
        page.locator("output[name=pad-answer] .tape").wait_for()
        keep_as(page, name)
    open_place(page, "Project")
    focused = page.locator("summary:focus")
    page.get_by_role("listitem").get_by_text("Alcove width", exact=True).tap()
    page.get_by_role("listitem").get_by_role("button", name="Rename").first.tap()
    page.get_by_role("textbox", name="Name").fill("Width of the alcove")
    page.get_by_role("dialog").get_by_role("button", name="Rename").tap()
    focused.get_by_text("Width of the alcove", exact=True).wait_for()
    page.keyboard.press("Enter")
    page.get_by_role("listitem").get_by_role("button", name="Delete").first.tap()
    focused.get_by_text("Alcove height", exact=True).wait_for()
