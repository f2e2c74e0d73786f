"""A change of the project is whole with what hangs on it, or it is not there at all.

The moment of a kill is made, not drawn: the page's worker is not given what it would be asked next,
and then the browser is ended as a dead battery would.
"""

import json

import pytest

from tests.browser.hand import keep_as, open_piece, open_place, type_into
from tests.browser.project.in_project import (
    correct,
    keep_reading,
    open_entry,
    open_projects,
    picture,
    take,
)
from tests.browser.project.kills import kill, opened
from tests.browser.project.test_project_backup import downloaded, give, open_backup
from tests.browser.project.test_project_bound import begin_project
from tests.browser.start.start_support import eventually
from tests.browser.words import BACKUP_FILE, EDIT, OUT_OF_SPACE, history_of

# What is held is not sent to the core, as when the page is ended before it could be.
HOLD = """
const post = Worker.prototype.postMessage;
const put = IDBObjectStore.prototype.put;
window.held = [];
Worker.prototype.postMessage = function (message, ...more) {
  if (window.held.some((each) => message.text?.includes(`"do":"${each}"`))) return;
  return post.call(this, message, ...more);
};
IDBObjectStore.prototype.put = function (value, ...key) {
  if (window.refused && window.refused === key[0])
    throw new DOMException("No room.", "QuotaExceededError");
  return put.call(this, value, ...key);
};
"""
STORED = """
() => new Promise((resolve) => {
  const opening = indexedDB.open("sawside");
  opening.onsuccess = () => {
    const reading = opening.result.transaction(["projects", "page"]);
    const records = reading.objectStore("projects").getAll();
    const tally = reading.objectStore("page").get("tally");
    reading.oncomplete = () => {
      opening.result.close();
      const lines = tally.result?.tally.lines ?? [];
      resolve({
        entries: records.result.flatMap(({ document }) => document.entries),
        tally: lines.map(({ text }) => text),
      });
    };
  };
})
"""
PHOTOS = """
() => new Promise((resolve) => {
  const opening = indexedDB.open("sawside");
  opening.onsuccess = () => {
    const keys = opening.result.transaction("photos").objectStore("photos").getAllKeys();
    keys.onsuccess = () => resolve(keys.result.length);
  };
})
"""
MANY = 150
OLD_SIZE = "This size is from before your last change."


class Phone:
    """A browser whose page can be held, killed and opened again."""

    def __init__(self, player, profile, address):
        self.how = player, profile, address

    def __enter__(self):
        return self.open()

    def open(self, *held):
        """Open the page again; what is `held` the core isn't asked."""
        player, profile, address = self.how
        self.opened = opened(player, profile, "about:blank")
        self.page = self.opened.__enter__()
        self.opened.context.add_init_script(HOLD)
        self.opened.context.add_init_script(f"window.held = {list(held)}")
        self.page.goto(address)
        return self.page

    def kill(self):
        """End it at once."""
        kill(self.how[1])
        self.opened.__exit__()

    def __exit__(self, *_):
        self.opened.__exit__()


@pytest.fixture
def held_phone(player, server, tmp_path):
    """A phone of which `page` is open; see `Phone`."""
    phone = Phone(player, tmp_path / "phone", server.address)
    with phone:
        yield phone


def stored(page):
    """The entries of all projects and the texts of the tally, as they are on the disk."""
    return page.evaluate(STORED)


def enter_line(page, text):
    """Enter a line that names something of the project on the tally."""
    open_place(page, "Pad")
    page.get_by_role("button", name="Clear", exact=True).tap()
    page.get_by_role("textbox", name="Length or sum").fill(text)
    page.get_by_role("group", name="Keypad").get_by_role("button", name="Enter").tap()
    page.get_by_role("link", name=history_of(1)).wait_for()


def rename(page, name, new):
    """Type another name for an entry and submit it."""
    open_entry(page, name, "Rename")
    page.get_by_role("textbox", name="Name").fill(new)
    page.get_by_role("dialog").get_by_role("button", name="Rename").tap()


def test_a_kill_just_after_a_rename_is_stored_leaves_the_tally_linked(held_phone):
    page = held_phone.page
    keep_reading(page, "Alcove", "37 1/2")
    enter_line(page, "[Alcove] - 1")
    page.evaluate("window.held = ['view']")
    rename(page, "Alcove", "Niche")
    eventually(lambda: stored(page)["entries"][0]["name"] == "Niche")
    held_phone.kill()

    page = held_phone.open()
    assert stored(page)["tally"] == ["[Niche] - 1"]
    page.get_by_role("link", name=history_of(1)).tap()
    page.get_by_text("[Niche] - 1").wait_for()
    page.get_by_role("listitem").get_by_text("thirty-six and one half inches").wait_for()


def test_a_rename_whose_tally_finds_no_room_is_not_kept_either(held_phone):
    page = held_phone.page
    keep_reading(page, "Alcove", "37 1/2")
    enter_line(page, "[Alcove] - 1")
    page.evaluate("window.refused = 'tally'")
    rename(page, "Alcove", "Niche")
    page.get_by_role("dialog").get_by_text(OUT_OF_SPACE).wait_for()
    assert stored(page)["entries"][0]["name"] == "Alcove"
    page.evaluate("window.refused = null")
    page.get_by_role("dialog").get_by_role("button", name="Rename").tap()
    page.get_by_role("listitem").filter(has_text="Niche").wait_for()
    assert stored(page)["tally"] == ["[Niche] - 1"]


def test_a_correction_undone_reaches_the_tally_in_the_same_step(held_phone):
    page = held_phone.page
    keep_reading(page, "Alcove", "37 1/2")
    enter_line(page, "[Alcove] - 1")
    rename(page, "Alcove", "Niche")
    page.get_by_role("listitem").filter(has_text="Niche").wait_for()
    page.evaluate("window.held = ['view']")
    page.locator("#place").get_by_role("button", name="Undo").tap()
    eventually(lambda: stored(page)["entries"][0]["name"] == "Alcove")
    held_phone.kill()
    assert stored(held_phone.open())["tally"] == ["[Alcove] - 1"]


def test_a_size_from_before_the_last_change_says_so_until_the_core_has_answered(held_phone):
    page = held_phone.page
    keep_reading(page, "Alcove", "37 1/2")
    open_piece(page)
    page.get_by_label("Length", exact=True).tap()
    take(page, "Alcove")
    type_into(page, "How many", "2")
    page.get_by_role("button", name="Done").tap()
    keep_as(page, "Shelf")
    page.evaluate("window.held = ['view']")
    correct(page, "Alcove", "36 1/4")
    page.get_by_role("dialog").get_by_role("button", name="Accept").tap()
    eventually(lambda: stored(page)["entries"][0]["text"] == "36 1/4")
    held_phone.kill()

    page = held_phone.open("view")
    open_place(page, "At the saw")
    page.locator(".piece").get_by_text("thirty-seven and one half inches").wait_for()
    page.locator(".piece").get_by_text(OLD_SIZE).wait_for()
    page.locator("#status").get_by_text("from before your last change").wait_for()
    # Opened once more, and the core is asked.
    held_phone.kill()
    page = held_phone.open()
    open_place(page, "At the saw")
    page.locator(".piece").get_by_text("thirty-six and one quarter inches").wait_for()
    assert page.get_by_text("from before your last change").count() == 0
    page.reload()
    page.locator(".piece").get_by_text("thirty-six and one quarter inches").wait_for()
    assert page.get_by_text("from before your last change").count() == 0


def with_many_photos(page):
    """A backup whose readings each have a photo of their own."""
    keep_reading(page, "Alcove", "37 1/2")
    open_entry(page, "Alcove", EDIT)
    photo = {"name": "alcove.png", "mimeType": "image/png", "buffer": picture(64, 48)}
    page.get_by_label("Photo", exact=True).set_input_files(photo)
    page.get_by_role("img", name="Where Alcove was measured").wait_for()
    open_backup(page)
    backup = json.loads(downloaded(page, "Download")[1])
    (reading,) = backup["document"]["entries"]
    (address,) = backup["photos"].values()
    ids = range(int(reading["id"]), int(reading["id"]) + MANY)
    backup["document"]["entries"] = [
        reading | {"id": str(at), "name": f"Alcove {at}", "photo": f"p{at}"} for at in ids
    ]
    backup["document"]["next"] = ids[-1] + 1
    backup["photos"] = {f"p{at}": address for at in ids}
    return json.dumps(backup)


def test_a_project_deleted_in_another_tab_takes_no_photo_of_a_restore_under_way(phone, server):
    context = phone(service_workers="block")
    one = context.pages[0]
    one.goto(server.address)
    backup = with_many_photos(one)
    for name in ("Second", "Third", "Fourth"):
        begin_project(one, name)
    two = context.new_page()
    two.goto(server.address)
    open_projects(two)
    open_backup(one)
    give(one, BACKUP_FILE, backup)
    one.get_by_role("button", name="As a new project").tap()
    for name in ("My project", "Second", "Third"):
        two.get_by_role("button", name=f"Delete {name}", exact=True).tap()
        two.get_by_role("dialog").get_by_role("button", name=f"Delete {name}", exact=True).tap()
        two.get_by_text(f"Deleted {name}.").wait_for()
    one.get_by_text("Restored.").wait_for()
    assert one.evaluate(PHOTOS) == MANY
