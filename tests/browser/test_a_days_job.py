"""One day with the record cabinet: measured, worked out, corrected, cut, printed, kept, finished.

The lengths are worked by hand: a shelf has the alcove's width less 1/8 at each side (37 9/16 − 1/4
= 37 5/16), and a rail grows by the stock's width per mitered end (common practice, no source).
"""

from tests.browser.hand import keep_as, open_place, tap_keys, type_into
from tests.browser.print.on_paper import says, texts
from tests.browser.project.in_project import accept, correct, fill_linked_rail, keep_reading, take
from tests.browser.words import BACKUP_FILE, SCRAP


def keep_shelves(page):
    """Three shelves that follow the alcove's width."""
    open_place(page, "Project")
    page.get_by_role("button", name="Add a piece").tap()
    page.get_by_label("Length", exact=True).tap()
    take(page, "Alcove width")
    tap_keys(page, "−1/4")
    type_into(page, "How many", "3")
    page.get_by_role("button", name="Done").tap()
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    keep_as(page, "Shelf")


def tap(page, name):
    """Tap a button of the place."""
    page.locator("#place").get_by_role("button", name=name, exact=True).tap()


def stop(page, sentence):
    """Wait for what the saw's stop is to be set to, and how many cuts are left with it."""
    page.get_by_text(f"Stop at {sentence}", exact=True).wait_for()


def test_a_record_cabinet_from_the_tape_to_the_last_cut(phone, server):
    page = phone(profile="old", service_workers="block").pages[0]
    page.goto(server.address)
    keep_reading(page, "Alcove width", "37 9/16")
    keep_shelves(page)
    fill_linked_rail(page)
    keep_as(page, "Top rail")

    open_place(page, "At the saw")
    stop(page, "41 13/16″: 1 cut")
    tap(page, "Cut one")
    tap(page, "Next uncut")
    stop(page, "37 5/16″: 3 cuts")
    tap(page, "Cut one")
    stop(page, "37 5/16″: 2 cuts")
    correct(page, "Alcove width", "37 7/16")
    review = page.get_by_role("dialog", name="What this changes")
    review.get_by_text("Top rail: 1 piece can be cut down by 1/8″.").wait_for()
    review.get_by_text("Shelf: 1 piece can be cut down by 1/8″.").wait_for()
    accept(page)
    tap(page, "Shop sheet")
    page.locator("#place").get_by_text("Shelf: 1 piece can be cut down by 1/8″.").wait_for()

    open_place(page, "At the saw")
    for name, then in (("Shelf", "‹ Back"), ("Top rail", "Next uncut")):
        page.get_by_role("heading", name=name).wait_for()
        tap(page, "Done: cut down by 1/8″")
        page.locator(".piece-wrong").wait_for(state="detached")
        tap(page, then)
    stop(page, "37 3/16″: 2 cuts")
    tap(page, "Cut one")
    stop(page, "37 3/16″: 1 cut")
    tap(page, SCRAP)
    stop(page, "37 3/16″: 2 cuts")

    open_place(page, "Project")
    tap(page, "Shop sheet")
    page.locator("#place").get_by_text("Cuts by stop").first.wait_for()
    printed = " ".join(texts(page))
    for told in ("Cuts by stop", "41 11/16″ Top rail", "37 3/16″ Shelf", "Alcove width"):
        assert says(printed, told)
    open_place(page, "Project")
    tap(page, "Back up")
    with page.expect_download() as download:
        tap(page, "Download")
    file = download.value.path()

    page = phone(profile="new", service_workers="block").pages[0]
    page.goto(f"{server.address}#backup")
    page.get_by_label(BACKUP_FILE, exact=True).set_input_files(file)
    page.get_by_text("3 entries, 2 pieces cut, saved").wait_for()
    tap(page, "As a new project")
    page.get_by_role("listitem").filter(has_text="Shelf").wait_for()
    open_place(page, "At the saw")
    stop(page, "37 3/16″: 2 cuts")
    tap(page, "Cut one")
    stop(page, "37 3/16″: 1 cut")
    tap(page, "Cut one")
    page.get_by_text("All pieces cut").wait_for()
