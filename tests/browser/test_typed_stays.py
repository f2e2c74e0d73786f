"""What is typed and not yet kept is there again when the page is loaded anew or was left."""

from tests.browser.hand import keep_as, open_piece, open_place, type_into
from tests.browser.project.in_project import drafts, keep_reading, open_entry
from tests.browser.start.start_support import eventually
from tests.browser.words import (
    EDIT,
    NOT_SAVED_YET,
    NOTE,
    READING,
    REMOVE,
    ROUGH_LENGTH,
    SAVE,
    SAVE_TO_PIECE,
    TEST_CUT,
    TOLERANCE,
    UNSAVED_EDIT,
)


def box(page, name):
    """A field for text by its label."""
    return page.get_by_role("textbox", name=name, exact=True)


def reload(page):
    """Load the page anew once what was typed is written: a reading of the store waits for that."""
    drafts(page)
    page.reload()


def tap(page, name):
    """Tap a button of the place."""
    page.locator("#place").get_by_role("button", name=name, exact=True).tap()


def has(page, name, text):
    """Wait for a field, and see what stands in it."""
    box(page, name).wait_for()
    assert box(page, name).input_value() == text


def error_of(page, name):
    """What is said to be wrong below a field."""
    return page.locator(".field", has=box(page, name)).locator(".error").last


def test_what_is_typed_of_a_piece_and_of_a_trial_stays_until_it_is_kept(page):
    open_piece(page)
    type_into(page, "Length", "30 1/3")
    page.get_by_role("button", name="Done").tap()
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    keep_as(page, "Shelf")
    open_place(page, "At the saw")

    tap(page, "About this piece")
    box(page, "Material").fill("White oak")
    box(page, ROUGH_LENGTH).fill("1/")
    reload(page)
    has(page, "Material", "White oak")
    page.get_by_role("link", name="‹ At the saw").tap()
    tap(page, "About this piece")
    has(page, ROUGH_LENGTH, "1/")
    box(page, ROUGH_LENGTH).fill("1/2")
    page.get_by_role("button", name="Done").tap()
    tap(page, SAVE)
    page.locator(".saw-tools").get_by_text("White oak").wait_for()

    # One aims at the mark: 30 5/16 is on it, and not 1/48 under 30 1/3.
    tap(page, TEST_CUT)
    box(page, "Measured").fill("30 5/16")
    reload(page)
    has(page, "Measured", "30 5/16")
    result = page.locator("output[name=result]")
    result.get_by_text("Leave the stop alone").first.wait_for()
    tap(page, SAVE_TO_PIECE)
    page.get_by_text("Last test cut: 0″, On the mark. Leave the stop alone").wait_for()
    tap(page, TEST_CUT)
    has(page, "Measured", "")
    assert not [key for key in drafts(page) if "/1/" in key]


def test_what_is_typed_and_not_kept_when_its_field_is_left_is_there_again_and_marked(page):
    keep_reading(page, "Alcove width", "37 9/16")
    open_entry(page, "Alcove width", EDIT)
    box(page, "Where").fill("at the floor")
    reload(page)
    has(page, "Where", "at the floor")
    assert NOT_SAVED_YET in error_of(page, "Where").text_content()
    open_place(page, "Project")
    page.get_by_text(UNSAVED_EDIT).wait_for()
    open_entry(page, "Alcove width", EDIT)
    box(page, "Where").focus()
    box(page, "Where").blur()
    error_of(page, "Where").get_by_text(NOT_SAVED_YET).wait_for(state="detached")
    reload(page)
    has(page, "Where", "at the floor")
    assert NOT_SAVED_YET not in page.locator("#place").text_content()

    # Refused when the field is left: what is wrong stays as it was typed.
    page.get_by_role("link", name="Settings").tap()
    typed = {TOLERANCE: "1/", "Kerf": "3//"}
    for name, text in typed.items():
        box(page, name).fill(text)
        box(page, name).blur()
        page.locator(".field", has=box(page, name)).locator(".error:not(:empty)").wait_for()
    for name, row, field in (("tape", "Tape 1", "Case length"), ("material", "Material 1", "Note")):
        group = page.get_by_role("group", name=row, exact=True)
        page.get_by_role("button", name=f"Add {name}").tap()
        group.get_by_label(field, exact=True).fill(f"of the {name}")
    page.locator("summary", has_text="Clearances").tap()
    box(page, "Shelf on pins").fill("1/3")
    reload(page)
    for name, text in typed.items():
        has(page, name, text)
        assert NOT_SAVED_YET in error_of(page, name).text_content()
    for name, row, field in (("tape", "Tape 1", "Case length"), ("material", "Material 1", "Note")):
        group = page.get_by_role("group", name=row, exact=True)
        assert group.get_by_label(field, exact=True).input_value() == f"of the {name}"
    has(page, "Shelf on pins", "1/3")

    for name, text in ((TOLERANCE, "1/32"), ("Kerf", "3/32")):
        box(page, name).fill(text)
        box(page, name).blur()
    for row in ("Tape 1", "Material 1"):
        group = page.get_by_role("group", name=row, exact=True)
        group.get_by_role("button", name=REMOVE).tap()
    eventually(lambda: page.get_by_text(NOT_SAVED_YET).count() == 0)
    reload(page)
    has(page, "Kerf", "3/32")
    has(page, TOLERANCE, "1/32")
    assert NOT_SAVED_YET not in page.locator("#place").text_content()
    assert not [key for key in drafts(page) if key.endswith(("settings", "tolerance"))]


HALF_TYPED = {
    "pad": ("Length or sum", "31 5/"),
    "work-out/mitered_length": ("Measured length", "40 3/"),
    "new-reading": (READING, "80 1/"),
    "note": (NOTE, "Scribe to the wall"),
    "reading/1": (READING, "37 7/"),
    "labels": ("Top margin", "1 5/"),
}
"""By the address of a place: a field, and a text that can't be kept as it is."""


def test_what_is_half_typed_in_any_other_place_is_there_when_the_page_is_loaded_anew(page):
    keep_reading(page, "Alcove width", "37 9/16")
    for place, (name, text) in HALF_TYPED.items():
        page.evaluate("(place) => { location.hash = place; }", place)
        page.locator(f"#place[data-shows='{place}']").wait_for()
        box(page, name).fill(text)
    reload(page)
    for place, (name, text) in HALF_TYPED.items():
        page.evaluate("(place) => { location.hash = place; }", place)
        page.locator(f"#place[data-shows='{place}']").wait_for()
        has(page, name, text)
