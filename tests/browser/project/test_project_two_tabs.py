"""Two tabs on one project: each keeps what was typed in it, and shows what the other kept."""

from playwright.sync_api import expect

from tests.browser.conftest import PATIENCE
from tests.browser.hand import choose, chosen, keep_as, open_place, type_into
from tests.browser.project.in_project import (
    fill_linked_rail,
    keep_reading,
    open_entry,
    type_reading,
)
from tests.browser.start.start_support import eventually
from tests.browser.words import (
    EDIT,
    LABELS_CHANGED,
    LIGHT_OR_HEAVY,
    READING,
    ROUGH_LENGTH,
    SAVE,
    SAVE_CHANGE,
    SAVED,
    UNDID,
)

MEANWHILE = "Kerf was changed in another tab: it’s 5/32 there."


def put(page, label, text):
    """Type into a field and leave it."""
    field = page.get_by_label(label, exact=True)
    field.fill(text)
    leave(page, field)


def leave(page, field):
    """With the keypad's own key, where the field has one."""
    if field.get_attribute("data-keypad"):
        page.get_by_role("button", name="Done").tap()
    else:
        field.blur()


def shows(page, label, text):
    """Wait until a field holds `text`."""
    expect(page.get_by_label(label, exact=True)).to_have_value(text, timeout=PATIENCE)


def test_each_tab_keeps_only_what_was_typed_in_it(phone, server):
    context = phone(service_workers="block")
    one = context.pages[0]
    one.goto(server.address)
    keep_reading(one, "Alcove width", "37 9/16")
    two = context.new_page()
    two.goto(server.address)
    for tab in (one, two):
        tab.get_by_role("link", name="Settings").tap()
        tab.get_by_text("Clearances", exact=True).tap()
    put(two, "Shelf on pins", "1/8")
    shows(one, "Shelf on pins", "1/8")
    put(one, "Kerf", "3/32")
    shows(two, "Kerf", "3/32")
    shows(two, "Shelf on pins", "1/8")

    one.get_by_label("Kerf", exact=True).fill("1/16")
    put(two, "Kerf", "5/32")
    put(two, "Shelf on pins", "1/16")
    shows(one, "Shelf on pins", "1/16")
    leave(one, one.get_by_label("Kerf", exact=True))
    one.get_by_text(MEANWHILE).wait_for()
    shows(one, "Kerf", "1/16")
    choose(one, "Rounding", "Down to the last mark")
    chosen(two, "Rounding", "Down to the last mark").wait_for()
    shows(two, "Kerf", "5/32")
    put(one, "Kerf", "1/16")
    shows(two, "Kerf", "1/16")

    for tab in (one, two):
        open_entry(tab, "Alcove width", EDIT)
    put(two, "Where", "At the floor")
    two.get_by_text("Updated Alcove width.").wait_for()
    shows(one, "Where", "At the floor")
    choose(one, LIGHT_OR_HEAVY, "Light")
    one.get_by_text("Updated Alcove width.").wait_for()
    chosen(two, LIGHT_OR_HEAVY, "Light").wait_for()
    shows(two, "Where", "At the floor")

    put(two, READING, "37 5/8")
    two.locator("output.result").get_by_role("button", name=SAVE_CHANGE).tap()
    shows(one, READING, "37 5/8")

    one.bring_to_front()
    fill_linked_rail(one)
    keep_as(one, "Top rail")
    for tab in (one, two):
        open_place(tab, "At the saw")
        tab.get_by_role("button", name="About this piece").tap()
    two.get_by_label("Material", exact=True).fill("Oak")
    type_into(one, ROUGH_LENGTH, "1/2")
    two.get_by_role("button", name=SAVE, exact=True).tap()
    shows(one, "Material", "Oak")
    one.get_by_role("button", name="Done").tap()
    one.get_by_role("button", name=SAVE, exact=True).tap()
    one.locator("#place[data-shows=saw]").wait_for()
    one.get_by_role("button", name="About this piece").tap()
    shows(one, "Material", "Oak")
    shows(one, ROUGH_LENGTH, "1/2")

    for tab in (one, two):
        tab.goto(f"{server.address}#labels")
        tab.get_by_text("1 label").wait_for()
    one.get_by_label("Labels down", exact=True).fill("5")
    put(two, "Labels down", "7")
    put(two, "Labels down", "8")
    eventually(lambda: kept_labels(two).get("rows") == "8")
    put(one, "Labels down", "6")
    one.get_by_text(LABELS_CHANGED).wait_for()
    shows(one, "Labels down", "6")
    assert kept_labels(two).get("rows") == "8"
    put(one, "Labels down", "4")
    eventually(lambda: kept_labels(two).get("rows") == "4")


def test_the_undo_beside_what_was_kept_takes_back_that_and_nothing_else(phone, server):
    context = phone(service_workers="block")
    one = context.pages[0]
    one.goto(server.address)
    keep_reading(one, "Alcove width", "37 9/16")
    two = context.new_page()
    two.goto(server.address)
    type_reading(two, "24 1/8")
    type_reading(one, "80 1/4")
    keep_as(one, "Alcove height")
    keep_as(two, "Alcove depth")
    said = one.locator("#notices .notice")
    said.get_by_role("button", name="Undo").tap()
    said.get_by_text(f"{UNDID}: {SAVED} Alcove height.").wait_for()
    for tab in (one, two):
        open_place(tab, "Project")
        tab.get_by_text("Alcove depth", exact=True).wait_for()
        tab.get_by_text("Alcove width", exact=True).wait_for()
        tab.get_by_text("Alcove height", exact=True).wait_for(state="detached")

    open_place(two, "At the saw")
    fill_linked_rail(one)
    one.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    keep_as(one, "Top rail")
    two.get_by_role("button", name="Cut one", exact=True).tap()
    two.get_by_text("all cut").wait_for()
    said.get_by_role("button", name="Undo").tap()
    said.get_by_text(f"Can’t undo this by itself: {SAVED} Top rail.").wait_for()
    two.get_by_text("all cut").wait_for()
    open_place(one, "At the saw")
    one.get_by_text("all cut").wait_for()


# What the core is asked to change waits until it is let go.
HELD = """
const post = Worker.prototype.postMessage;
window.held = null;
Worker.prototype.postMessage = function (...all) {
    const send = () => post.apply(this, all);
    if (window.held && all[0].text?.includes('"do":"change"')) window.held.push(send);
    else send();
};
window.letGo = () => {
    const sends = window.held;
    window.held = null;
    for (const send of sends) send();
};
"""


def test_what_is_typed_on_while_it_is_being_saved_is_not_taken_for_the_other_tabs(phone, server):
    context = phone(service_workers="block")
    context.add_init_script(HELD)
    page = context.pages[0]
    page.goto(server.address)
    keep_reading(page, "Alcove width", "37 9/16")
    page.get_by_role("link", name="Settings").tap()
    page.evaluate("window.held = []")
    put(page, "Kerf", "3/32")
    page.wait_for_function("() => window.held.length === 1")
    put(page, "Kerf", "1/16")
    page.evaluate("window.letGo()")
    eventually(lambda: kept(page)["settings"].get("kerf") == "1/16")
    assert page.locator(".error:not(:empty)").count() == 0


def kept_labels(page):
    """The grid of the stickers as it is in the browser's store."""
    return kept(page).get("labels", {}).get("values", {})


def kept(page):
    """The only project as it is in the browser's store."""
    return page.evaluate(
        """() => new Promise((resolve) => {
            indexedDB.open("sawside").onsuccess = ({ target }) => {
                const all = target.result.transaction("projects").objectStore("projects").getAll();
                all.onsuccess = () => resolve(all.result[0].document);
            };
        })"""
    )
