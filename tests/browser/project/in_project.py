"""What a thumb does with a project: readings kept, taken into fields, corrected."""

import struct
import zlib

from tests.browser.hand import choose, keep_as, open_place, open_question, tap_keys, type_into
from tests.browser.words import ALL_PROJECTS, EDIT, READING, SAVE_CHANGE

DRAFTS = """
() => new Promise((resolve) => {
    const opening = indexedDB.open("sawside");
    opening.onsuccess = () => {
        const store = opening.result.transaction("page").objectStore("page");
        const keys = store.getAllKeys();
        const values = store.getAll();
        values.onsuccess = () => resolve(
            keys.result.filter((key, at) => key.startsWith("draft:") && values.result[at])
        );
    };
})
"""


def type_reading(page, text):
    """Type a reading on the pad, and wait until it is read; a message may stand for its tape."""
    open_place(page, "Pad")
    page.get_by_role("textbox", name="Length or sum").fill(text)
    page.locator("output[name=pad-answer] .tape").wait_for(state="attached")


def keep_reading(page, name, text):
    """Keep a reading from the pad."""
    type_reading(page, text)
    keep_as(page, name)


def open_projects(page):
    """The list of all projects."""
    open_place(page, "Project")
    page.get_by_role("button", name=ALL_PROJECTS).tap()


def start_sample_case(page):
    """A project begun with the sample case, all of its lines told."""
    open_projects(page)
    page.get_by_role("button", name="Start with a sample case").tap()
    page.get_by_role("heading", name="Record cabinet").wait_for()
    page.get_by_text("Carcass", exact=True).first.wait_for()


def take(page, name):
    """Take a number from the project into the field that is being typed in."""
    page.get_by_role("button", name="From project").tap()
    page.get_by_role("dialog").get_by_role("button", name=name).first.tap()


def fill_linked_rail(page, name="Alcove width", then="−1/4"):
    """A rail with a miter at both ends, as wide as something of the project."""
    open_question(page, "picture frame", "Mitered length")
    page.get_by_label("Measured length", exact=True).tap()
    take(page, name)
    tap_keys(page, then)
    type_into(page, "Stock width", "2 1/4")
    page.get_by_role("button", name="Done").tap()
    choose(page, "Left end", "45° miter")
    choose(page, "Right end", "45° miter")


def open_entry(page, name, act):
    """Open a line of the project and do one of its acts; the one that deletes says what."""
    open_place(page, "Project")
    line = page.get_by_role("listitem").filter(has_text=name).first
    line.get_by_text(name, exact=True).first.tap()
    called = f"{act} {name}" if act == "Delete" else act
    line.get_by_role("button", name=called, exact=True).tap()


def correct(page, name, text):
    """Type another text for a reading and save it."""
    open_entry(page, name, EDIT)
    page.get_by_label(READING).fill(text)
    page.locator("output.result").get_by_role("button", name=SAVE_CHANGE).tap()


def accept(page):
    """Accept what a correction changes, and wait until it is kept: the project is then shown."""
    page.get_by_role("dialog").get_by_role("button", name="Accept").tap()
    page.locator("#place[data-shows^='project/']").wait_for()


def picture(width, height):
    """A gray PNG, larger than what is kept of it."""

    def chunk(kind, body):
        whole = kind + body
        return struct.pack(">I", len(body)) + whole + struct.pack(">I", zlib.crc32(whole))

    header = struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0)
    rows = zlib.compress((b"\0" + b"\x80" * width) * height)
    start = b"\x89PNG\r\n\x1a\n"
    return start + chunk(b"IHDR", header) + chunk(b"IDAT", rows) + chunk(b"IEND", b"")


def drafts(page):
    """Where something is typed that is not kept."""
    return page.evaluate(DRAFTS)
