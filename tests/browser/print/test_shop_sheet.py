"""The project on paper: a shop sheet and labels, black on white whatever the screen looks like."""

import json

import pytest

from tests.browser.hand import choose, keep_as, open_place, try_example
from tests.browser.print.on_paper import pages, says, texts
from tests.browser.test_accessible import axe, fill_project
from tests.browser.words import CHANGE_LOG, LABELS_CHANGED


def keep_frame(page, server):
    """A second line, which makes two parts of two pieces each."""
    page.goto(f"{server.address}#work-out/mitered_frame")
    try_example(page)
    keep_as(page, "Door frame")


def choose_paper(page, paper):
    choose(page, "Paper", paper)


# Backed up in the very moment in which leaving the labels begins to keep what was typed there.
BACK_UP_AT_ONCE = """
const tap = () => document.querySelector("#place .primary").click();
addEventListener("hashchange", tap, { once: true });
location.hash = "backup";
"""

LABELS_OF_STORE = """
(wanted) => new Promise((tell) => {
  const opening = indexedDB.open("sawside");
  opening.onsuccess = () => {
    const all = opening.result.transaction("projects").objectStore("projects").getAll();
    all.onsuccess = () => {
      opening.result.close();
      const { rows, first } = all.result[0].document.labels?.values ?? {};
      tell(`${rows} ${first}` === wanted);
    };
  };
})
"""

# The store has written what the page sent, and the page is closed before it hears of it.
UNHEARD = """
() => {
  const listen = EventTarget.prototype.addEventListener;
  IDBTransaction.prototype.addEventListener = function (kind, ...rest) {
    const isWriting = this.mode === "readwrite" && this.objectStoreNames.contains("projects");
    if (kind === "complete" && isWriting) return;
    listen.call(this, kind, ...rest);
  };
}
"""


def check_paper(page, size):
    """Every page has the size, little more ink than text takes, and no dark ground."""
    for width, height, ink in pages(page):
        assert (width, height) == pytest.approx(size, abs=0.2)
        assert ink.mean() < 0.08
        assert ink[:100].max() == 0
        assert ink.max() > 0.95


def test_the_project_is_printed_to_be_ticked_off_and_its_pieces_labeled(phone, server):
    page = phone(dark=True).pages[0]
    fill_project(page, server)
    keep_frame(page, server)
    open_place(page, "Project")
    page.get_by_role("button", name="Shop sheet").tap()
    choose_paper(page, "A4")
    assert axe(page)["wrong"] == []

    page.emulate_media(media="print")
    assert not page.get_by_role("navigation", name="Places").is_visible()
    assert not page.get_by_role("button", name="Print", exact=True).is_visible()
    page.emulate_media(media="null")
    check_paper(page, (210, 297))
    text = " ".join(texts(page))
    for told in (
        "Cuts by stop",
        "Top rail",
        "36 1/8″",
        "Door frame: Left and right",
        "Alcove width",
        "33 7/8″",
        "1 / ",
    ):
        assert says(text, told)
    for unprinted in ("At the saw", "Settings", "Undo"):
        assert not says(text, unprinted)
    assert page.get_by_role("img", name="0 of 2 cut").count() == 2

    open_place(page, "At the saw")
    page.get_by_role("button", name="Cut one", exact=True).tap()
    page.locator(".piece-done", has_text="All cut").wait_for()
    page.goto(f"{server.address}#shop-sheet")
    page.get_by_role("img", name="1 of 1 cut").wait_for()

    page.goto(f"{server.address}#labels")
    choose_paper(page, "Letter")
    page.get_by_text("5 labels").wait_for()
    assert axe(page)["wrong"] == []
    page.get_by_role("textbox", name="Labels down").fill("2")
    page.get_by_text("≈ 2 9/16″ × 5 1/8″").wait_for()
    page.get_by_role("textbox", name="First free label").fill("4")
    page.locator("ol.on-letter li").nth(1).wait_for()
    check_paper(page, (215.9, 279.4))
    first, second = texts(page)
    assert says(first, "Top rail 36 1/8″")
    assert says(first, "1 of 2, My project")
    assert says(second, "Door frame")
    page.get_by_role("textbox", name="Labels down").fill("29")
    page.get_by_text("29 labels down come out").wait_for()
    assert page.get_by_role("button", name="Print", exact=True).is_disabled()

    page.reload()
    page.get_by_text("29 labels down come out").wait_for()

    with page.expect_download() as waiting:
        page.evaluate(BACK_UP_AT_ONCE)
    grid = json.loads(waiting.value.path().read_text(encoding="utf-8"))["document"]["labels"]
    assert (grid["unit"], grid["values"]["rows"], grid["values"]["first"]) == ("in", "29", "4")
    open_place(page, "Project")
    page.get_by_text(CHANGE_LOG, exact=True).tap()
    page.get_by_text("Changed the labels.").first.wait_for()
    page.goto(f"{server.address}#labels")
    page.get_by_text("29 labels down come out").wait_for()


def test_what_a_page_kept_before_it_was_closed_is_not_taken_for_another_tabs(phone, server):
    page = phone().pages[0]
    fill_project(page, server)
    page.goto(f"{server.address}#labels")
    page.evaluate(UNHEARD)
    page.get_by_role("textbox", name="Labels down").fill("2")
    page.get_by_role("textbox", name="First free label").fill("4")
    page.wait_for_function(LABELS_OF_STORE, arg="2 ")
    page.get_by_text("≈ 2 9/16″ × 5 1/8″").wait_for()

    page.reload()
    page.get_by_text("≈ 2 9/16″ × 5 1/8″").wait_for()
    open_place(page, "Project")
    page.wait_for_function(LABELS_OF_STORE, arg="2 4")
    assert not page.get_by_text(LABELS_CHANGED).count()
