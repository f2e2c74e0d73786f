"""What an earlier version kept, and what was typed with it, is there in the questions of today."""

from playwright.sync_api import expect

from tests.browser.conftest import PATIENCE
from tests.browser.project.in_project import open_entry
from tests.browser.words import SAVE_CHANGE, UNSAVED_EDIT

KEPT = """() => new Promise((resolve) => {
    const opening = indexedDB.open("sawside");
    opening.onsuccess = () => {
        const transaction = opening.result.transaction(["page", "projects"], "readwrite");
        const values = { corners: "4", width: "2 1/4", heel: "0", toe: "1/32" };
        const line = { id: "1", kind: "line", name: "Gap", unit: "in", values };
        const entries = [{ ...line, reckoner: "fault_of_a_gap" }];
        const document = { schema: 5, name: "Record cabinet", settings: {}, next: 2, entries };
        const record = { id: "before", revision: 1, document, undo: [], redo: [] };
        transaction.objectStore("projects").put(record);
        const page = transaction.objectStore("page");
        page.delete("described");
        page.put("before", "openProject");
        const typed = { values: { ...values, toe: "1/16" }, changed: true, unit: "in" };
        page.put(typed, "draft:before/1");
        const asked = { width: "36 1/8", height: "41 1/4" };
        page.put({ values: asked, changed: true, unit: "in" }, "draft:diagonal");
        transaction.oncomplete = resolve;
    };
})"""


def opened_again(page, server):
    """Open the page with what an earlier version left in its store, and no description of today."""
    # Drawn out of its store, which is therefore there.
    page.locator("#place[data-shows]").wait_for()
    page.goto(f"{server.address}manifest.webmanifest")
    page.evaluate(KEPT)
    page.goto(f"{server.address}#project", wait_until="commit")


def test_a_correction_typed_with_an_earlier_version_goes_on_in_the_question_of_today(page, server):
    opened_again(page, server)
    line = page.get_by_role("listitem").filter(has_text="Gap")
    line.get_by_text(UNSAVED_EDIT, exact=True).wait_for()
    open_entry(page, "Gap", "Open")
    expect(page).to_have_url(f"{server.address}#work-out/miter_gap/1")
    toe = page.get_by_label("Gap at the toe", exact=True)
    expect(toe).to_have_value("1/16")
    page.get_by_role("button", name=SAVE_CHANGE, exact=True).tap()
    expect(page).to_have_url(f"{server.address}#project/1", timeout=PATIENCE)


def test_what_was_typed_into_a_question_that_became_part_of_another_waits_there(page, server):
    opened_again(page, server)
    page.goto(f"{server.address}#work-out/square")
    page.get_by_label("Width", exact=True).wait_for()
    expect(page.get_by_label("Width", exact=True)).to_have_value("36 1/8")
    expect(page.get_by_label("Height", exact=True)).to_have_value("41 1/4")
