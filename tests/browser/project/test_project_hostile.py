"""A backup from a stranger: markup in its texts is shown as text, and nothing of it is run."""

import json

import sawside
from tests.browser.hand import open_place
from tests.browser.project.test_project_backup import give
from tests.browser.start.start_support import eventually
from tests.browser.words import BACKUP_FILE, NOTHING_SAVED
from tests.core.hostile import SCRIPT, WHEN

PLACES = (
    "project",
    "project/1",
    "reading/1",
    "sure/1",
    "note/3",
    "projects",
    "shop-sheet",
    "labels",
    "backup",
    "work-out/piece_by_hand/2",
    "saw",
    "about/2/piece",
    "try/2/piece",
    "settings",
)


def hostile_backup():
    """A project with markup wherever a person writes words."""
    about = dict.fromkeys(("material", "grain", "place"), SCRIPT)
    piece = {"length": f"[{SCRIPT}] ÷ 2", "count": "2"}
    document = None
    for act in (
        {"act": "begin", "name": SCRIPT},
        {"act": "keep_reading", "name": SCRIPT, "text": "37 9/16", "where": SCRIPT},
        {"act": "keep_line", "name": f"2 {SCRIPT}", "reckoner": "piece_by_hand", "values": piece},
        {"act": "keep_note", "text": SCRIPT},
        {"act": "about", "id": "2", "part": "piece", "about": about},
        {"act": "set", "settings": {"tapes": [{"name": "<b>bold</b>"}]}},
    ):
        said = sawside.handle({"do": "change", "document": document, "act": act})
        assert said["ok"], said
        document = said["document"]
    message = {"do": "backup", "document": document, "when": WHEN, "photos": {}}
    return sawside.handle(message)["text"]


def test_markup_in_a_backup_is_shown_as_text_and_never_run(phone, server):
    page = phone(service_workers="block").pages[0]
    ran = []
    page.on("dialog", lambda dialog: (ran.append(dialog.message), dialog.dismiss()))
    page.goto(server.address)
    open_backup_of_nothing(page)
    text = hostile_backup()
    give(page, BACKUP_FILE, text)
    page.get_by_role("button", name="As a new project").tap()
    page.get_by_role("listitem").filter(has_text=SCRIPT).first.wait_for()
    for place in PLACES:
        page.evaluate("(place) => (location.hash = place)", place)
        page.locator(f'#place[data-shows="{place}"]').wait_for()
        eventually(lambda: len(page.locator("#place").text_content()) > 20)
        assert page.locator("#place script, #place img[src=x], #notices img").count() == 0
    assert ran == []


def test_a_backup_that_reaches_for_what_all_objects_share_is_refused(phone, server):
    page = phone(service_workers="block").pages[0]
    page.goto(server.address)
    open_backup_of_nothing(page)
    whole = json.loads(hostile_backup())
    places = {
        "the backup": whole,
        "the document": whole["document"],
        "entries[0]": whole["document"]["entries"][0],
    }
    for place, into in places.items():
        into["__proto__"] = {"polluted": "yes"}
        give(page, BACKUP_FILE, json.dumps(whole))
        page.locator(".error").get_by_text(f"{place} holds “__proto__”").wait_for()
        del into["__proto__"]
    assert page.evaluate("({}).polluted === undefined")
    open_place(page, "Project")
    page.get_by_text(NOTHING_SAVED).wait_for()


def open_backup_of_nothing(page):
    """The place for backups where nothing is kept yet."""
    open_place(page, "Project")
    page.get_by_role("button", name="Restore a backup").tap()
