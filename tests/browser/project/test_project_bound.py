"""An act is done to the project it was begun in, or not at all.

What was typed goes with its document, and comes back with it.
"""

from tests.browser.hand import open_place
from tests.browser.project.in_project import keep_reading, open_entry, open_projects, type_reading
from tests.browser.project.test_project_backup import downloaded, give, open_backup
from tests.browser.words import (
    BACKUP_FILE,
    EDIT,
    READING,
    SAVE_TO_PROJECT,
    SAVED,
    START,
    UNSAVED_EDIT,
    history_of,
)


def begin_project(page, name):
    """A second project, which is then the open one."""
    open_projects(page)
    page.get_by_role("button", name="New project").tap()
    page.get_by_role("textbox", name="Name").fill(name)
    page.get_by_role("button", name=START, exact=True).tap()
    page.get_by_role("heading", name=name).wait_for()


def keep_door_height_with_two_quick_submits(page):
    """Both come before the first is answered; a dialog takes one."""
    type_reading(page, "80")
    page.get_by_role("button", name=SAVE_TO_PROJECT).tap()
    page.get_by_role("textbox", name="Name").fill("Door height")
    page.get_by_role("dialog").locator("form").evaluate(
        "(form) => { form.requestSubmit(); form.requestSubmit(); }"
    )
    page.get_by_text(f"{SAVED} Door height").wait_for()
    open_place(page, "Project")
    entry(page, "Door height").first.wait_for()


def entry(page, name):
    """A line of the project's list."""
    return page.get_by_role("listitem").filter(has_text=name)


def test_an_act_begun_on_one_project_or_document_is_never_done_to_another(phone, server):
    context = phone(service_workers="block")
    one = context.pages[0]
    one.goto(server.address)
    keep_reading(one, "Alcove width", "37 9/16")
    open_backup(one)
    backup = downloaded(one, "Download")[1]
    begin_project(one, "Second")
    keep_door_height_with_two_quick_submits(one)
    open_entry(one, "Door height", EDIT)
    one.get_by_label(READING).fill("79 3/4")

    two = context.new_page()
    two.goto(server.address)
    open_place(two, "Project")
    entry(two, "Door height").first.wait_for()
    assert entry(two, "Door height").count() == 1
    open_backup(two)
    give(two, BACKUP_FILE, backup)
    two.get_by_role("button", name="Replace Second").tap()
    entry(two, "Alcove width").wait_for()
    assert two.get_by_text(UNSAVED_EDIT).count() == 0
    one.get_by_text("That item isn’t in the project you have open").wait_for()
    entry(one, "Alcove width").wait_for()
    assert one.get_by_label(READING).count() == 0
    assert one.get_by_text(UNSAVED_EDIT).count() == 0
    two.locator("#place").get_by_role("button", name="Undo").tap()
    entry(one, "Door height").get_by_text(UNSAVED_EDIT).wait_for()

    entry(one, "Door height").get_by_text("Door height", exact=True).first.tap()
    one.get_by_role("button", name="Rename", exact=True).last.tap()
    one.get_by_role("textbox", name="Name").fill("Door")
    open_projects(two)
    two.get_by_role("button", name="Delete Second, open now").tap()
    two.get_by_role("dialog").get_by_role("button", name="Delete Second, open now").tap()
    one.get_by_text("Second was deleted in another tab.").wait_for()
    one.get_by_text("Typed there but not saved: 79 3/4").wait_for()
    dialog = one.get_by_role("dialog")
    dialog.get_by_role("button", name="Rename", exact=True).tap()
    dialog.get_by_text("Another project is open now. Nothing changed.").wait_for()
    assert dialog.get_by_role("textbox", name="Name").input_value() == "Door"
    dialog.get_by_role("button", name="Cancel").tap()
    entry(one, "Alcove width").wait_for()
    assert entry(one, "Door").count() == 0


def test_a_line_of_the_pad_means_the_document_it_was_entered_on_also_after_a_restore(page):
    """The backup's first entry is a depth; the tally's line means the width that is first here."""
    keep_reading(page, "Depth", "12")
    open_backup(page)
    backup = downloaded(page, "Download")[1]
    begin_project(page, "Second")
    keep_reading(page, "Width", "36")
    page.get_by_role("button", name="Clear", exact=True).tap()
    page.get_by_role("textbox", name="Length or sum").fill("[Width] + 1")
    page.get_by_role("group", name="Keypad").get_by_role("button", name="Enter").tap()
    page.get_by_role("link", name=history_of(1)).wait_for()
    open_backup(page)
    give(page, BACKUP_FILE, backup)
    page.get_by_role("button", name="Replace Second").tap()
    page.get_by_text("1 line of the history uses names from it, so it has no number").wait_for()
    entry(page, "Depth").wait_for()

    def line(says):
        open_place(page, "Pad")
        page.get_by_role("link", name=history_of(1)).tap()
        page.get_by_role("listitem").get_by_text(says).wait_for()

    line("This line uses a name from Second, which isn’t open.")
    line("[Width] + 1")
    page.reload()
    line("This line uses a name from Second, which isn’t open.")
    assert page.get_by_text("thirteen").count() == 0
    open_place(page, "Project")
    page.locator("#place").get_by_role("button", name="Undo").tap()
    entry(page, "Width").wait_for()
    line("thirty-seven inches")
