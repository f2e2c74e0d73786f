"""A browser told to let the site keep nothing: what it refuses is said once, and all else works.

The first test blocks site data in the browser's own settings. What other browsers refuse then is
replaced at the boundary, one by one.
"""

import json

import pytest

from tests.browser.hand import open_place, tap_keys
from tests.browser.project.in_project import correct, keep_reading, open_entry, picture
from tests.browser.words import (
    EDIT,
    NOT_LET_SAVE,
    NOT_OFFLINE,
    NOT_SAVED_ON_CLOSE,
    NOTHING_ENTERED,
    history_of,
)

BLOCK_ALL = 2
BLOCKED = {"profile": {"default_content_setting_values": {"cookies": BLOCK_ALL}}}
REFUSING = {
    "a store, locks, channels and workers": """
      const refuses = { get() { throw refusal; } };
      Object.defineProperty(Navigator.prototype, "serviceWorker", refuses);
      Object.defineProperty(globalThis, "caches", refuses);
      indexedDB.open = () => { throw refusal; };
      globalThis.BroadcastChannel = function () { throw refusal; };
      for (const each of ["persisted", "persist"])
        StorageManager.prototype[each] = async () => { throw refusal; };
      LockManager.prototype.request = async () => { throw refusal; };""",
    "what only a page with HTTPS has": """
      delete Crypto.prototype.randomUUID;
      for (const each of ["locks", "clipboard", "wakeLock", "serviceWorker", "storage"])
        Object.defineProperty(Navigator.prototype, each, { value: undefined });
      delete globalThis.caches;""",
}


def works(page):
    """Everything that keeps: the tally, the project, a photo, the saw's light and screen."""
    tap_keys(page, "31 5/8")
    page.get_by_role("button", name="Enter", exact=True).tap()
    page.get_by_role("link", name=history_of(1)).tap()
    page.get_by_role("listitem").get_by_text("thirty-one and five eighths").wait_for()
    page.get_by_role("button", name="Clear").tap()
    page.get_by_text(NOTHING_ENTERED).wait_for()
    page.get_by_role("button", name="Undo").tap()
    page.get_by_role("listitem").get_by_text("thirty-one and five eighths").wait_for()
    keep_reading(page, "Alcove width", "37 9/16")
    correct(page, "Alcove width", "37 7/16")
    page.get_by_role("listitem").get_by_text("thirty-seven and seven sixteenths").wait_for()
    open_entry(page, "Alcove width", EDIT)
    photo = {"name": "alcove.png", "mimeType": "image/png", "buffer": picture(64, 48)}
    page.get_by_label("Photo", exact=True).set_input_files(photo)
    page.get_by_role("img", name="Where Alcove width was measured").wait_for()
    open_place(page, "At the saw")
    page.get_by_text("No pieces yet").wait_for()


def test_where_the_browser_blocks_site_data_it_is_said_and_all_works(phone, server, tmp_path):
    settings = tmp_path / "phone" / "Default" / "Preferences"
    settings.parent.mkdir(parents=True)
    settings.write_text(json.dumps(BLOCKED))
    page = phone().pages[0]
    failed = []
    page.on("pageerror", lambda error: failed.append(str(error)))
    page.goto(server.address)
    page.get_by_text(NOT_LET_SAVE).wait_for()
    page.get_by_text(NOT_SAVED_ON_CLOSE).wait_for()
    works(page)
    page.get_by_role("link", name="Settings").tap()
    page.get_by_text(NOT_OFFLINE).wait_for()
    assert failed == []


@pytest.mark.parametrize("refused", REFUSING)
def test_what_a_browser_refuses_besides_is_done_without(phone, server, refused):
    context = phone()
    context.add_init_script(
        f"const refusal = new DOMException('refused', 'SecurityError'); {REFUSING[refused]};"
    )
    page = context.pages[0]
    failed = []
    page.on("pageerror", lambda error: failed.append(str(error)))
    page.goto(server.address)
    works(page)
    open_entry(page, "Alcove width", EDIT)
    page.get_by_role("button", name="Copy").tap()
    page.locator("#notices").get_by_text("cop").wait_for()
    assert failed == []
