"""A project as one file: out, wiped, in again, the same; merged by a rule; tables out and in.

The share sheet is replaced at the browser's boundary only.
"""

import gzip
import json

from tests.browser.hand import keep_as, open_place, type_into
from tests.browser.project.in_project import (
    correct,
    fill_linked_rail,
    keep_reading,
    open_entry,
    open_projects,
    picture,
)
from tests.browser.start.start_support import eventually
from tests.browser.words import BACKUP_FILE, CHANGE_LOG, EDIT, HOW_ACCURATE, NOTE, READING, SAVE

SHARE = """
window.shared = [];
navigator.canShare = ({ files }) => files.every((each) => each.name.endsWith(".txt"));
navigator.share = async ({ files }) => {
  window.shared.push([files[0].name, await files[0].text()]);
};
"""


def open_phone(phone, server, profile):
    """A phone of its own, with a share sheet."""
    context = phone(profile=profile, service_workers="block")
    context.add_init_script(SHARE)
    page = context.pages[0]
    page.goto(server.address)
    return page


def downloaded(page, name):
    """What a button puts among the downloads: the file's name and its text."""
    name, content = downloaded_bytes(page, name)
    return name, content.decode()


def downloaded_bytes(page, name):
    """The same, with the file's bytes as they are."""
    with page.expect_download() as waiting:
        page.get_by_role("button", name=name, exact=True).tap()
    return waiting.value.suggested_filename, waiting.value.path().read_bytes()


def give(page, label, text, name="backup.sawside.json"):
    """Choose a file of the device."""
    content = text if isinstance(text, bytes) else text.encode()
    file = {"name": name, "mimeType": "text/plain", "buffer": content}
    page.get_by_label(label, exact=True).set_input_files(file)


def open_backup(page):
    """The place for backups, from the project."""
    open_place(page, "Project")
    page.get_by_role("button", name="Back up", exact=True).tap()


def test_a_project_is_backed_up_wiped_restored_and_is_the_same(phone, server):
    page = open_phone(phone, server, "old")
    keep_reading(page, "Alcove width", "37 9/16")
    open_entry(page, "Alcove width", EDIT)
    photo = {"name": "alcove.png", "mimeType": "image/png", "buffer": picture(64, 48)}
    page.get_by_label("Photo", exact=True).set_input_files(photo)
    page.get_by_role("img", name="Where Alcove width was measured").wait_for()
    fill_linked_rail(page)
    keep_as(page, "Top rail")
    open_place(page, "At the saw")
    page.get_by_role("button", name="Cut one", exact=True).tap()
    page.get_by_text("All pieces cut").wait_for()
    open_place(page, "Project")
    page.get_by_text("Not backed up").wait_for()
    open_backup(page)
    name, text = downloaded(page, "Download")
    assert name.endswith(".sawside.json")
    kept = json.loads(text)
    assert len(kept["document"]["entries"]) == 2
    assert len(kept["photos"]) == 1
    page.get_by_text("Last backed up").wait_for()
    page.get_by_role("button", name="Share").tap()
    eventually(lambda: page.evaluate("window.shared.length === 1"))
    assert json.loads(page.evaluate("window.shared[0][1]"))["document"] == kept["document"]
    readings = downloaded(page, "Export readings")[1]
    assert "Alcove width" in readings
    open_place(page, "Project")
    assert page.get_by_text("since the last backup").count() == 0

    page = open_phone(phone, server, "new")
    open_place(page, "Project")
    page.get_by_role("button", name="Restore a backup").tap()
    give(page, BACKUP_FILE, text[: len(text) // 2])
    page.get_by_text("This isn’t a backup").wait_for()
    give(page, BACKUP_FILE, text)
    page.get_by_text("2 entries, 1 piece cut, saved").wait_for()
    page.get_by_role("button", name="As a new project").tap()
    page.get_by_role("listitem").filter(has_text="Top rail").wait_for()
    open_backup(page)
    again = json.loads(downloaded(page, "Download")[1])
    assert (again["document"], again["photos"]) == (kept["document"], kept["photos"])
    page.get_by_role("button", name="Close the message").tap()

    give(page, "Import readings", readings.replace("37 9/16", "37 7/16"), "readings.csv")
    page.get_by_role("dialog").get_by_text("can be cut down by 1/8″").wait_for()
    page.get_by_role("button", name="Accept").tap()
    give(page, "Import readings", readings.replace("37 9/16", "37 //16"), "readings.csv")
    page.get_by_text("Row 2").wait_for()
    give(page, BACKUP_FILE, text)
    page.get_by_role("button", name="Merge into My project").tap()
    page.get_by_text("added under a numbered name").wait_for()
    page.get_by_role("button", name="Merge", exact=True).tap()
    page.get_by_role("listitem").filter(has_text="Alcove width 2").first.wait_for()
    open_backup(page)
    give(page, BACKUP_FILE, text)
    page.get_by_role("button", name="Replace My project").tap()
    page.get_by_role("listitem").filter(has_text="Top rail").wait_for()
    page.get_by_role("listitem").filter(has_text="Alcove width 2").wait_for(state="detached")
    page.locator("#place").get_by_role("button", name="Undo").tap()
    page.get_by_role("listitem").filter(has_text="Alcove width 2").first.wait_for()

    open_backup(page)
    give(page, BACKUP_FILE, text)
    page.get_by_role("button", name="As a new project").tap()
    page.get_by_role("listitem").filter(has_text="Top rail").wait_for()
    open_projects(page)
    page.get_by_role("button", name="Delete My project", exact=True).tap()
    page.get_by_role("dialog").get_by_role("button", name="Delete My project").tap()
    page.get_by_role("button", name="Delete My project", exact=True).wait_for(state="detached")
    page.get_by_role("button", name="My project", exact=True).tap()
    open_entry(page, "Alcove width", EDIT)
    page.get_by_role("img", name="Where Alcove width was measured").wait_for()


def test_what_a_reading_leaves_unsure_is_told_and_which_to_measure_again(phone, server):
    page = open_phone(phone, server, "phone")
    keep_reading(page, "Alcove width", "37 9/16")
    fill_linked_rail(page)
    keep_as(page, "Top rail")
    open_entry(page, "Top rail", HOW_ACCURATE)
    page.get_by_text("41 13/16″, probably within 1/32″, 1/32″ at the outside.").wait_for()
    page.get_by_role("button", name="Measure Alcove width again").tap()
    type_into(page, READING, "37 5/8")
    page.get_by_role("button", name="Done").tap()
    open_place(page, "Project")
    open_entry(page, "Alcove width", HOW_ACCURATE)
    page.get_by_text("37 9/16″, probably within").wait_for()
    page.get_by_role("link", name="‹ Project").tap()

    page.get_by_role("button", name="Add a note").tap()
    page.get_by_label(NOTE).fill("Wall is out of plumb.\nScribe the left side.")
    page.reload()
    assert page.get_by_label(NOTE).input_value().endswith("Scribe the left side.")
    page.get_by_role("button", name=SAVE).tap()
    note = page.get_by_role("listitem").filter(has_text="Wall is out of plumb.")
    note.wait_for()
    correct(page, "Alcove width", "37 5/8")
    page.get_by_role("button", name="Accept").tap()
    page.get_by_text(CHANGE_LOG).tap()
    page.get_by_text("Corrected Alcove width: 37 9/16 → 37 5/8.").last.wait_for()


def test_a_compressed_backup_is_the_same_and_one_that_swells_or_breaks_off_is_refused(
    phone, server
):
    page = open_phone(phone, server, "phone")
    keep_reading(page, "Alcove width", "37 9/16")
    open_backup(page)
    name, content = downloaded_bytes(page, "Download compressed")
    assert name.endswith(".sawside.json.gz")
    plain = json.loads(downloaded(page, "Download")[1])
    assert json.loads(gzip.decompress(content))["document"] == plain["document"]
    for wrong in (gzip.compress(b" " * 70_000_000), content[:-20], b"\x1f\x8b nothing"):
        give(page, BACKUP_FILE, wrong)
        page.get_by_text("can’t read this file, or it’s too big for a backup").wait_for()
        give(page, BACKUP_FILE, content)
        page.get_by_text("1 entry, 0 pieces cut, saved").wait_for()
    for name in ("Alcove depth", "Alcove height"):
        keep_reading(page, name, "15 3/4")
    open_place(page, "Project")
    page.get_by_text("2 changes since the last backup.", exact=True).wait_for()


UNSET = """
const Clock = Date;
globalThis.Date = class extends Clock {
  constructor(...given) {
    if (given.length) super(...given);
    else super("+010000-01-01T00:00:00Z");
  }
};
"""


def test_by_a_clock_in_the_year_10000_all_is_kept_backed_up_and_merged(phone, server):
    context = phone(profile="old", service_workers="block")
    context.add_init_script(UNSET)
    page = context.pages[0]
    page.goto(server.address)
    keep_reading(page, "Alcove width", "37 9/16")
    correct(page, "Alcove width", "37 5/8")
    open_backup(page)
    name, text = downloaded(page, "Download")
    assert name == "my-project-backup.sawside.json"
    page.get_by_text("Last backed up, time unknown.").wait_for()
    kept = json.loads(text)
    assert (kept["when"], kept["document"]["entries"][0]["text"]) == ("", "37 5/8")
    give(page, "Import readings", "Name,Text\r\nDepth,12\r\n", "readings.csv")
    page.get_by_text("Imported 1 row of readings.").wait_for()
    give(page, BACKUP_FILE, text)
    page.get_by_text("My project: 1 entry, 0 pieces cut.").wait_for()
    page.get_by_role("button", name="Merge into My project").tap()
    page.get_by_text("Added 0 of 1 entries").wait_for()


def test_a_table_is_read_as_a_spreadsheet_of_another_country_writes_its_file(phone, server):
    page = open_phone(phone, server, "old")
    keep_reading(page, "Höhe", "37 9/16")
    open_backup(page)
    table = "sep=;\r\nName;Text\r\nHöhe;{}\r\n"
    for inches, encoding in (
        ("30,5", "utf-8"),
        ("31½", "utf-8-sig"),
        ("32,5", "utf-16"),
        ("33 ½", "utf-16-be"),
    ):
        mark = "\ufeff" if encoding == "utf-16-be" else ""
        give(
            page, "Import readings", (mark + table.format(inches)).encode(encoding), "readings.txt"
        )
        page.get_by_role("dialog").get_by_role("button", name="Accept").tap()
        page.get_by_text("Imported 1 row of readings.").wait_for()
        page.get_by_role("button", name="Close the message").tap()
        _, readings = downloaded(page, "Export readings")
        assert f"Höhe,{inches.replace(',', '.')},in" in readings
    for bytes_ in (table.format(34).encode("cp1252"), table.format(34).encode("utf-16-le") + b"x"):
        give(page, "Import readings", bytes_, "readings.csv")
        page.get_by_text("Save the table as CSV UTF-8").wait_for()
    assert downloaded(page, "Export readings")[1] == readings
