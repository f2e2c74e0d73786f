"""A project in groups that fold, each entry with a sentence; its name once, all of it at hand."""

import pytest

from tests.browser.hand import keep_as, open_place, stored, try_example
from tests.browser.project.in_project import (
    accept,
    correct,
    fill_linked_rail,
    keep_reading,
    open_projects,
)
from tests.browser.start.start_support import eventually
from tests.browser.words import ALL_PROJECTS, NOTE, SAVE, START


@pytest.fixture
def page(page, server):
    """A record cabinet: two readings, an answer without pieces, a rail that hangs on a reading."""
    keep_reading(page, "Alcove width", "37 9/16")
    keep_reading(page, "Alcove height", "41 1/4")
    page.goto(f"{server.address}#work-out/middle")
    try_example(page)
    keep_as(page, "Alcove center")
    fill_linked_rail(page)
    page.locator("output[name=result]:not(.waiting) .main-answer").wait_for()
    keep_as(page, "Top rail")
    open_place(page, "Project")
    page.locator(".group").first.wait_for()
    return page


def group(page, title):
    """A group of the project by its heading."""
    return page.locator(".group").filter(has=page.get_by_role("heading", name=title, exact=True))


def is_open(page, title):
    return group(page, title).evaluate("(node) => node.open")


def fold(page, title):
    """Tap the heading of a group."""
    group(page, title).get_by_role("heading", name=title).tap()


def test_readings_answers_and_pieces_stand_each_under_their_own_heading(page):
    names = page.locator(".group").evaluate_all(
        """(groups) => groups.map((group) => [
            group.querySelector("h3").textContent,
            [...group.querySelectorAll(".entry-name")].map((each) => each.textContent),
        ])"""
    )
    assert names == [
        ["Readings", ["Alcove width", "Alcove height"]],
        ["Answers", ["Alcove center"]],
        ["Pieces", ["Top rail"]],
    ]
    rail = group(page, "Pieces").locator(".entry-summary")
    rail.get_by_text("2 1/4″ stock, 45° miter both ends", exact=False).wait_for()
    assert group(page, "Readings").locator(".entry-summary").count() == 0


def test_what_is_folded_stays_folded_until_something_in_it_changes(page):
    fold(page, "Pieces")
    fold(page, "Answers")
    eventually(lambda: len(stored(page, "folded") or {}) == 2)
    page.reload()
    page.locator(".group").first.wait_for()
    assert [is_open(page, each) for each in ("Readings", "Answers", "Pieces")] == [
        True,
        False,
        False,
    ]
    correct(page, "Alcove width", "37 7/16")
    accept(page)
    page.locator(".group[data-group=pieces][open]").wait_for()
    assert not is_open(page, "Answers")


def test_a_group_with_an_error_is_open(page):
    fold(page, "Pieces")
    page.get_by_role("listitem").filter(has_text="Alcove width").get_by_text("Alcove width").tap()
    page.get_by_role("button", name="Delete Alcove width").tap()
    page.get_by_role("dialog").get_by_role("button", name="Accept").tap()
    page.locator(".group[data-group=pieces][open] .error").wait_for()


def test_the_name_stands_once_and_what_is_printed_is_in_sight(page):
    assert page.get_by_text("My project", exact=True).count() == 1
    assert page.title() == "My project · Sawside"
    for name in ("Shop sheet", "Labels", ALL_PROJECTS, "Rename"):
        box = page.get_by_role("button", name=name, exact=True).bounding_box()
        assert 0 < box["y"] < 740 - 72
    page.get_by_role("button", name="Shop sheet").tap()
    page.wait_for_function("() => document.title === 'Shop sheet · Sawside'")
    assert page.locator("#project-name").text_content() == "My project"


def test_the_project_opened_last_comes_first_with_what_is_left_to_cut(page):
    for name in ("Bench", "Attic shelf"):
        open_projects(page)
        page.get_by_role("button", name="New project").tap()
        page.get_by_role("textbox", name="Name").fill(name)
        page.get_by_role("button", name=START, exact=True).tap()
        page.get_by_role("heading", name=name).wait_for()
    page.evaluate(BEFORE)
    page.reload()
    open_projects(page)
    rows = page.locator(".project-open")
    rows.nth(2).wait_for()
    assert rows.locator("strong").all_text_contents() == ["Attic shelf", "My project", "Bench"]
    assert rows.locator(".project-about").all_text_contents() == [
        "Open now",
        "Last opened Nov 3, 2020, 1 piece left to cut",
        "Last opened Nov 2, 2020",
    ]
    page.get_by_role("button", name="My project", exact=True).tap()
    page.get_by_role("heading", name="My project").wait_for()
    open_projects(page)
    rows.nth(2).wait_for()
    assert rows.locator("strong").first.text_content() == "My project"


BEFORE = """() => new Promise((resolve) => {
    const opening = indexedDB.open("sawside");
    opening.onsuccess = () => {
        const transaction = opening.result.transaction(["page", "projects"], "readwrite");
        const page = transaction.objectStore("page");
        const all = transaction.objectStore("projects").getAll();
        all.onsuccess = () => {
            const day = { "My project": "2020-11-03", Bench: "2020-11-02" };
            const asked = page.get("lastOpened");
            asked.onsuccess = () => {
                const opened = asked.result;
                for (const { id, document: { name } } of all.result)
                    if (day[name])
                        opened[id] = { ...opened[id], at: Date.parse(`${day[name]}T12:00`) };
                page.put(opened, "lastOpened");
            };
        };
        transaction.oncomplete = resolve;
    };
})"""


def test_restore_stands_beside_new_project(page):
    open_projects(page)
    new, restore = (
        page.get_by_role("button", name=name).bounding_box()
        for name in ("New project", "Restore a backup")
    )
    assert new["y"] == restore["y"]
    page.get_by_role("button", name="Restore a backup").tap()
    page.get_by_role("heading", name="Restore a backup").wait_for()
    page.get_by_label("Backup file").wait_for()


def save_key(page):
    return page.locator("#place").get_by_role("button", name=SAVE).first


def test_a_correction_is_saved_only_when_something_was_changed_and_says_so(page):
    group(page, "Readings").get_by_text("Alcove width", exact=True).tap()
    page.get_by_role("button", name="Edit").first.tap()
    why = page.get_by_text("you haven’t changed anything")
    why.wait_for()
    assert save_key(page).is_disabled()
    field = page.get_by_label("Tape reading")
    field.tap()
    assert page.locator("#sheet").get_by_role("button", name=SAVE).count() == 0
    field.fill("37 1/2")
    page.locator("#sheet").get_by_role("button", name=SAVE).wait_for()
    assert save_key(page).is_enabled()
    field.fill("37 9/16")
    why.wait_for()
    field.fill("37 9//")
    page.get_by_text("Fix the reading to save it.").wait_for()
    assert save_key(page).is_disabled()


def test_a_note_is_saved_once_something_is_written(page):
    page.get_by_role("button", name="Add a note").tap()
    assert save_key(page).is_disabled()
    page.get_by_label(NOTE).fill("Wall is out of plumb.")
    assert save_key(page).is_enabled()
    save_key(page).tap()
    group(page, "Notes").get_by_text("Wall is out of plumb.").first.wait_for()
