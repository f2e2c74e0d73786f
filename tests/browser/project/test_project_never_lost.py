"""Nothing is lost: no room, a store held by another tab, two tabs at once.

What the browser says no to is replaced at its boundary; the tabs are real.
"""

import pytest

from tests.browser.hand import keep_as, open_place
from tests.browser.project.in_project import (
    correct,
    keep_reading,
    open_entry,
    open_projects,
    type_reading,
)
from tests.browser.start.start_support import eventually
from tests.browser.words import (
    BACKUP_FILE,
    EDIT,
    NOT_LET_SAVE,
    NOT_SAVED_ON_CLOSE,
    NOTHING_SAVED,
    OUT_OF_SPACE,
    READING,
    SAVE_CHANGE,
    SAVE_TO_PROJECT,
    history_of,
)

FULL = """
const put = IDBObjectStore.prototype.put;
IDBObjectStore.prototype.put = function (...all) {
  if (window.full) throw new DOMException("No room.", "QuotaExceededError");
  return put.apply(this, all);
};
window.persistAsked = 0;
navigator.storage.persisted = async () => false;
navigator.storage.persist = async () => { window.persistAsked += 1; return false; };
"""
STORED = """
(makeNewer) => new Promise((resolve) => {
  const opening = indexedDB.open("sawside");
  opening.onsuccess = () => {
    const store = opening.result.transaction("projects", "readwrite").objectStore("projects");
    const all = store.getAll();
    all.onsuccess = () => {
      const [record] = all.result;
      const newer = { ...record.document, schema: 99, beams: [] };
      if (makeNewer) store.put({ ...record, document: newer });
      resolve(record.document);
    };
  };
})
"""
NO_ROOM = (
    "Couldn’t save: the browser is out of space. "
    "Free up some space on your device, then try again. What you typed is still here."
)


@pytest.fixture
def context(phone):
    """A browser with a boundary of its own."""
    opened = phone(service_workers="block")
    opened.add_init_script(FULL)
    return opened


def open_tab(context, server, tab=None):
    """A tab with the page."""
    page = tab or context.new_page()
    page.goto(server.address)
    return page


def test_with_no_room_left_it_is_said_and_what_was_typed_stays(context, server):
    page = open_tab(context, server, context.pages[0])
    page.get_by_role("textbox", name="Length or sum").wait_for()
    assert page.evaluate("window.persistAsked") == 0
    keep_reading(page, "Alcove width", "37 9/16")
    eventually(lambda: page.evaluate("window.persistAsked === 1"))
    open_entry(page, "Alcove width", EDIT)
    page.evaluate("window.full = true")
    page.get_by_label(READING).fill("37 7/16")
    page.get_by_role("button", name="Done").tap()
    page.get_by_text(OUT_OF_SPACE).wait_for()
    page.locator("output.result").get_by_role("button", name=SAVE_CHANGE).tap()
    page.get_by_text(NO_ROOM, exact=True).wait_for()
    assert page.get_by_label(READING).input_value() == "37 7/16"
    page.evaluate("window.full = false")
    page.locator("output.result").get_by_role("button", name=SAVE_CHANGE).tap()
    page.get_by_role("listitem").get_by_text("thirty-seven and seven sixteenths").wait_for()
    page.get_by_role("link", name="Settings").tap()
    page.get_by_text("The browser can erase this if space runs low").wait_for()


def test_two_tabs_show_one_project_and_neither_overwrites_the_other(context, server):
    one = open_tab(context, server, context.pages[0])
    keep_reading(one, "Alcove width", "37 9/16")
    open_place(one, "Project")
    two = open_tab(context, server)
    keep_reading(two, "Alcove height", "80 1/4")
    one.get_by_role("listitem").filter(has_text="Alcove height").wait_for()

    for tab in (one, two):
        open_place(tab, "Pad")
        tab.get_by_role("textbox", name="Length or sum").fill("7 1/2")
        tab.get_by_role("button", name="Enter", exact=True).tap()
    for tab in (one, two):
        tab.get_by_role("link", name=history_of(2)).wait_for()

    open_entry(one, "Alcove width", EDIT)
    one.get_by_label(READING).fill("37 1/2")
    correct(two, "Alcove width", "37 7/16")
    width = two.get_by_role("listitem").filter(has_text="Alcove width")
    width.get_by_text("thirty-seven and seven sixteenths").wait_for()
    save = one.locator("output.result").get_by_role("button", name=SAVE_CHANGE)
    save.tap()
    one.get_by_text("was changed in another tab: it’s 37 7/16 there").wait_for()
    assert one.get_by_label(READING).input_value() == "37 1/2"
    save.tap()
    width.get_by_text("thirty-seven and one half inches").wait_for()


def test_a_store_that_another_tab_holds_is_said_and_opened_when_it_lets_go(context, server):
    holder = context.pages[0]
    holder.goto(f"{server.address}manifest.webmanifest")
    holder.evaluate(
        """() => new Promise((resolve) => {
            const opening = indexedDB.open("sawside", 1);
            opening.onupgradeneeded = () => {
                opening.result.createObjectStore("page");
                opening.result.createObjectStore("projects", { keyPath: "id" });
            };
            opening.onsuccess = () => resolve((window.held = opening.result) && true);
        })"""
    )
    page = open_tab(context, server)
    page.get_by_text("Sawside is open in another tab. Close that tab").wait_for()
    holder.evaluate("window.held.close()")
    page.get_by_role("textbox", name="Length or sum").fill("37 9/16")
    page.locator("output[name=pad-answer] .tape").wait_for()
    keep_as(page, "Alcove width")


def test_a_store_closed_by_a_newer_version_in_another_tab_is_said_and_what_was_typed_stays(
    context, server
):
    page = open_tab(context, server, context.pages[0])
    keep_reading(page, "Alcove width", "37 9/16")
    open_entry(page, "Alcove width", EDIT)
    newer = context.new_page()
    newer.goto(f"{server.address}manifest.webmanifest")
    newer.evaluate(
        """() => new Promise((resolve) => {
            indexedDB.open("sawside", 99).onsuccess = () => resolve();
        })"""
    )
    page.bring_to_front()
    page.get_by_label(READING).fill("37 7/16")
    page.get_by_role("button", name="Done").tap()
    page.locator("output.result").get_by_role("button", name=SAVE_CHANGE).tap()
    page.get_by_text(
        "Couldn’t save: the browser closed Sawside’s storage. That happens when a newer version "
        "opens in another tab. What you typed is still here. Write it down, then reload this page.",
        exact=True,
    ).wait_for()
    assert page.get_by_label(READING).input_value() == "37 7/16"


def test_where_nothing_may_be_stored_it_is_said_and_all_works_until_the_page_closes(phone, server):
    context = phone(service_workers="block")
    context.add_init_script(
        "indexedDB.open = () => { throw new DOMException('Denied.', 'SecurityError'); };"
    )
    page = open_tab(context, server, context.pages[0])
    page.get_by_text(NOT_LET_SAVE).wait_for()
    page.get_by_text(NOT_SAVED_ON_CLOSE).wait_for()
    keep_reading(page, "Alcove width", "37 9/16")
    open_place(page, "Project")
    page.get_by_role("listitem").filter(has_text="Alcove width").wait_for()


def clear_store(page, server):
    """What a system does that is short of room: the store goes, the page stays open."""
    session = page.context.new_cdp_session(page)
    what = {"origin": server.address.rstrip("/"), "storageTypes": "indexeddb"}
    session.send("Storage.clearDataForOrigin", what)


def test_a_store_cleared_under_an_open_page_is_filled_again_by_the_next_change(context, server):
    page = open_tab(context, server, context.pages[0])
    keep_reading(page, "Alcove width", "37 9/16")
    clear_store(page, server)
    keep_reading(page, "Alcove height", "80 1/4")
    page.reload()
    open_place(page, "Project")
    for name in ("Alcove width", "Alcove height"):
        page.get_by_role("listitem").filter(has_text=name).wait_for()


ERASE = """
() => new Promise((resolve) => {
  indexedDB.deleteDatabase("sawside").onsuccess = () => resolve();
})
"""


def test_a_store_erased_by_another_tab_is_filled_again_from_the_open_page(context, server):
    page = open_tab(context, server, context.pages[0])
    keep_reading(page, "Alcove width", "37 9/16")
    page.get_by_role("textbox", name="Length or sum").fill("7 1/2")
    page.get_by_role("button", name="Enter", exact=True).tap()
    page.get_by_role("link", name=history_of(1)).wait_for()
    page.get_by_role("textbox", name="Length or sum").fill("5")
    other = context.new_page()
    other.goto(f"{server.address}manifest.webmanifest")
    other.evaluate(ERASE)
    page.bring_to_front()
    page.get_by_text("Another tab or the browser erased your Sawside data.").wait_for()
    page.get_by_text("The open project and the history are saved again").wait_for()
    page.get_by_role("button", name="Back up").wait_for()
    page.reload()
    page.get_by_role("link", name=history_of(1)).wait_for()
    assert page.get_by_role("textbox", name="Length or sum").input_value() == "5"
    open_place(page, "Project")
    page.get_by_role("listitem").filter(has_text="Alcove width").wait_for()
    page.get_by_role("button", name="Undo").first.tap()
    page.get_by_text(NOTHING_SAVED).wait_for()


def test_an_erased_store_that_finds_no_room_advises_a_backup_before_a_reload(context, server):
    page = open_tab(context, server, context.pages[0])
    keep_reading(page, "Alcove width", "37 9/16")
    page.evaluate("window.full = true")
    other = context.new_page()
    other.goto(f"{server.address}manifest.webmanifest")
    other.evaluate(ERASE)
    page.bring_to_front()
    page.get_by_text("Back up before you reload.").wait_for()
    page.get_by_role("button", name="Back up").last.tap()
    with page.expect_download():
        page.get_by_role("button", name="Download", exact=True).tap()


def test_a_store_cleared_while_the_page_was_closed_is_said(context, server):
    page = open_tab(context, server, context.pages[0])
    keep_reading(page, "Alcove width", "37 9/16")
    page.evaluate(
        """() => new Promise((resolve) => {
            const opening = indexedDB.open("sawside");
            opening.onsuccess = () => {
                const clearing = opening.result.transaction("projects", "readwrite");
                clearing.objectStore("projects").clear();
                clearing.oncomplete = resolve;
            };
        })"""
    )
    page.reload()
    page.get_by_text("The browser erased your Sawside data").wait_for()
    page.get_by_role("button", name="Restore a backup").tap()
    page.get_by_label(BACKUP_FILE, exact=True).wait_for()


def test_a_project_of_a_newer_version_is_said_and_left_as_it_is(context, server):
    page = open_tab(context, server, context.pages[0])
    keep_reading(page, "Alcove width", "37 9/16")
    page.evaluate(STORED, True)
    page.reload()
    open_place(page, "Project")
    page.get_by_text("saved by a newer version of Sawside").wait_for()
    type_reading(page, "80 1/4")
    page.get_by_role("button", name=SAVE_TO_PROJECT).tap()
    page.locator("#notices").get_by_text("saved by a newer version of Sawside").wait_for()
    kept = page.evaluate(STORED, False)
    assert (kept["schema"], kept["beams"], len(kept["entries"])) == (99, [], 1)


def test_the_open_project_can_be_deleted_and_the_other_tab_is_told(context, server):
    one = open_tab(context, server, context.pages[0])
    keep_reading(one, "Alcove width", "37 9/16")
    two = open_tab(context, server)
    open_place(two, "Project")
    two.get_by_role("listitem").filter(has_text="Alcove width").wait_for()
    open_projects(one)
    one.get_by_role("button", name="Delete My project, open now").tap()
    one.get_by_role("dialog").get_by_role("button", name="Delete My project, open now").tap()
    one.get_by_text("Deleted My project, open now.").wait_for()
    two.get_by_text("My project was deleted in another tab.").wait_for()
    two.get_by_text(NOTHING_SAVED).wait_for()
    keep_reading(two, "Alcove height", "80 1/4")
    open_place(two, "Project")
    two.get_by_role("listitem").filter(has_text="Alcove height").wait_for()
    assert two.get_by_role("listitem").filter(has_text="Alcove width").count() == 0
