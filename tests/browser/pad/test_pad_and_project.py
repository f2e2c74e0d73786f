"""Lines of the pad and numbers of the project: each name means what it meant, and all follows."""

from tests.browser.hand import keep_as, open_place, tap_keys
from tests.browser.pad.in_pad import key
from tests.browser.project.in_project import accept, correct, keep_reading, open_entry
from tests.browser.words import FROM_PROJECT, HISTORY, MORE_KEYS, NOTHING_SAVED, START, history_of


def pick_on_the_pad(page, name):
    """Take a number from the project into the pad."""
    key(page, FROM_PROJECT)
    page.get_by_role("dialog").get_by_role("button", name=name).first.tap()


def open_tally(page, lines):
    """All lines of the pad."""
    open_place(page, "Pad")
    page.get_by_role("link", name=f"{HISTORY}, {lines}").tap()


def test_the_pad_takes_a_number_from_the_project_and_its_lines_and_what_is_kept_follow(page):
    keep_reading(page, "Alcove width", "37 9/16")
    page.get_by_role("button", name="Clear", exact=True).tap()
    pick_on_the_pad(page, "Alcove width")
    tap_keys(page, "−1/4")
    assert page.get_by_role("textbox", name="Length or sum").input_value() == "[Alcove width] − 1/4"
    page.locator("output[name=pad-answer]").get_by_text("thirty-seven and five").wait_for()
    keep_as(page, "Shelf")
    page.get_by_role("group", name="Keypad").get_by_role("button", name="Enter").tap()
    page.get_by_role("link", name=history_of(1)).wait_for()
    correct(page, "Alcove width", "37 7/16")
    accept(page)
    shelf = page.get_by_role("listitem").filter(has_text="Shelf")
    shelf.get_by_text("thirty-seven and three sixteenths inches").wait_for()
    open_place(page, "Pad")
    page.get_by_role("link", name=history_of(1)).tap()
    page.get_by_role("listitem").get_by_text("thirty-seven and three sixteenths inches").wait_for()


def test_a_line_of_the_tally_keeps_to_its_project_and_follows_a_name_that_is_changed(page):
    keep_reading(page, "A", "10")
    page.get_by_role("button", name="Clear", exact=True).tap()
    page.get_by_role("textbox", name="Length or sum").fill("[A] + 1")
    page.get_by_role("group", name="Keypad").get_by_role("button", name="Enter").tap()
    page.get_by_role("link", name=history_of(1)).wait_for()
    open_entry(page, "A", "Rename")
    page.get_by_role("textbox", name="Name").fill("Width")
    page.get_by_role("dialog").get_by_role("button", name="Rename").tap()
    page.get_by_role("listitem").filter(has_text="Width").wait_for()

    def line(says):
        open_place(page, "Pad")
        page.get_by_role("link", name=history_of(1)).tap()
        page.get_by_role("listitem").get_by_text(says).wait_for()

    line("[Width] + 1")
    line("eleven inches")
    page.evaluate("location.hash = 'projects'")
    page.get_by_role("button", name="New project").tap()
    page.get_by_role("textbox", name="Name").fill("Bench")
    page.get_by_role("dialog").get_by_role("button", name=START).tap()
    page.get_by_text(NOTHING_SAVED).wait_for()
    open_place(page, "Pad")
    page.locator("output[name=pad-answer]").get_by_text("Type a length or some math").wait_for()
    keep_reading(page, "Width", "50")
    line("This line uses a name from My project, which isn’t open.")
    assert page.get_by_text("fifty-one").count() == 0
    page.reload()
    line("This line uses a name from My project, which isn’t open.")
    page.evaluate("location.hash = 'projects'")
    page.get_by_role("button", name="My project", exact=True).tap()
    page.get_by_role("heading", name="My project").wait_for()
    line("eleven inches")


def test_a_chain_of_the_pad_is_kept_whole_follows_a_correction_and_is_listed_with_it(page):
    """31 7/8 − 3 × 1/8 = 31 1/2, and half of it 15 3/4; an inch more makes 32 1/2 and 16 1/4."""
    keep_reading(page, "Rail", "31 7/8")
    page.get_by_role("button", name="Clear", exact=True).tap()
    pick_on_the_pad(page, "Rail")
    tap_keys(page, "−3×1/8")
    key(page, "Enter")
    page.get_by_role("link", name=history_of(1)).wait_for()
    key(page, MORE_KEYS)
    key(page, "half")
    page.locator("output[name=pad-answer]").get_by_text("fifteen and three quarters").wait_for()
    keep_as(page, "Half rail")
    open_tally(page, "2 lines")
    page.get_by_text("Line 1", exact=True).tap()
    keep_as(page, "Whole rail")

    open_place(page, "Project")
    entry = page.get_by_role("listitem").filter
    entry(has_text="Half rail").get_by_text("(Rail − 3 × 1/8″) ÷ 2").wait_for()
    correct(page, "Rail", "32 7/8")
    review = page.get_by_role("dialog", name="What this changes")
    for name, words in (("Half rail", "sixteen and one quarter"), ("Whole rail", "thirty-two and")):
        review.get_by_role("listitem").filter(has_text=name).get_by_text(words).wait_for()
    accept(page)
    entry(has_text="Half rail").get_by_text("sixteen and one quarter inches").wait_for()
    entry(has_text="Whole rail").get_by_text("thirty-two and one half inches").wait_for()


def test_no_line_comes_to_another_number_by_a_name_given_in_the_tally_or_in_the_project(page):
    keep_reading(page, "Side", "3/4")
    page.get_by_role("button", name="Clear", exact=True).tap()
    tap_keys(page, "12")
    key(page, "Enter")
    page.get_by_role("link", name=history_of(1)).wait_for()
    pick_on_the_pad(page, "Side")
    tap_keys(page, "+1")
    key(page, "Enter")
    open_tally(page, "2 lines")
    page.get_by_text("Line 1", exact=True).tap()
    page.get_by_role("button", name="Name", exact=True).first.tap()
    dialog = page.get_by_role("dialog")
    dialog.get_by_role("textbox", name="Name").fill("side")
    dialog.get_by_role("button", name="Name", exact=True).tap()
    dialog.get_by_text("Line 2 uses “side” from My project. Choose another name.").wait_for()
    dialog.get_by_role("textbox", name="Name").fill("Shelf")
    dialog.get_by_role("button", name="Name", exact=True).tap()
    page.get_by_text("Shelf", exact=True).wait_for()

    open_entry(page, "Side", "Rename")
    page.get_by_role("textbox", name="Name").fill("Shelf")
    page.get_by_role("dialog").get_by_role("button", name="Rename").tap()
    page.get_by_role("listitem").filter(has_text="Shelf").wait_for()
    open_tally(page, "2 lines")
    line = page.get_by_role("listitem").filter(has_text="[Side] + 1")
    line.get_by_text("one and three quarters inches").wait_for()

    open_place(page, "Pad")
    pick_on_the_pad(page, "Shelf")
    page.get_by_text("Line 1 in the history is named Shelf too").wait_for()
    field = page.get_by_role("textbox", name="Length or sum")
    assert field.input_value() == ""
    field.fill("2 × shelf")
    page.get_by_text(
        "“shelf” means the line in the history here, not the one in My proj"
    ).wait_for()
    page.locator("output[name=pad-answer]").get_by_text("twenty-four inches").wait_for()
