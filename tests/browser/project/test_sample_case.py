"""A whole case from one set of readings, by thumb on a small phone: its taps are counted."""

import re

import pytest

from tests.browser.hand import open_place, tap_keys
from tests.browser.project.in_project import accept, open_entry, start_sample_case
from tests.browser.words import EDIT, READING, SAVE_CHANGE

MOST_TAPS = 120
COUNTING = (
    "() => { self.taps = 0; addEventListener('click', (e) => e.detail && self.taps++, true); }"
)
MEASURED = {
    "Alcove width, bottom": "41 3/8",
    "Alcove width, middle": "41 5/16",
    "Alcove width, top": "41 1/4",
    "Alcove height, left": "90 1/4",
    "Alcove height, right": "90 1/8",
    "Alcove depth": "14 1/2",
    "Open above the cabinet": "48",
}
"""Of another alcove. Its narrowest width less the wall's lean and two strips is the case."""


@pytest.fixture
def started(page):
    """The sample case, begun with the first taps; from there on they are counted."""
    page.set_viewport_size({"width": 360, "height": 740})
    page.evaluate(COUNTING)
    start_sample_case(page)
    return page


def corrected(page, name, text):
    """Another reading typed in place of the one that is selected, and what follows accepted.

    Nothing follows of a width that isn't the narrowest.
    """
    open_entry(page, name, EDIT)
    page.get_by_label(READING).tap()
    tap_keys(page, text)
    page.get_by_role("button", name="Done").tap()
    page.locator("output.result").get_by_role("button", name=SAVE_CHANGE).tap()
    brings = page.get_by_role("dialog").get_by_role("button", name="Accept")
    kept = page.locator("#place[data-shows^='project/']")
    brings.or_(kept).first.wait_for()
    if brings.is_visible():
        accept(page)
    kept.wait_for()


def test_the_whole_parts_list_of_another_alcove_takes_few_taps(started):
    page = started
    for name, text in MEASURED.items():
        corrected(page, name, text)
    open_place(page, "At the saw")
    page.get_by_text("Carcass: Side").first.wait_for()
    page.get_by_role("button", name="List").tap()
    for part in ("Carcass: Bottom", "Carcass: Back", "Face frame: Top rail", "Crown"):
        page.get_by_text(part).first.wait_for()
    taps = page.evaluate("() => self.taps")
    print(f"{taps} taps")
    assert len(MEASURED) * 5 < taps <= MOST_TAPS


def saw_list(page):
    """The list of all pieces, at the saw."""
    open_place(page, "At the saw")
    page.get_by_role("button", name="List").tap()
    page.get_by_role("heading", name="All pieces").wait_for()
    return page.locator(".piece-line")


def test_a_corrected_reading_reaches_the_last_molding_and_judges_what_is_cut(started):
    page = started
    saw_list(page).filter(has_text="Crown").tap()
    page.get_by_role("heading", name="Crown").wait_for()
    page.get_by_role("button", name="Cut one", exact=True).tap()
    page.get_by_text("All cut", exact=True).wait_for()
    open_entry(page, "Alcove width, top", EDIT)
    page.get_by_label(READING).fill("37 3/8")
    page.locator("output.result").get_by_role("button", name=SAVE_CHANGE).tap()
    changes = page.get_by_role("dialog")
    changes.get_by_text(re.compile(r"^\d+ lines change")).tap()
    for line in ("Space", "Carcass", "Face frame", "Crown"):
        changes.get_by_text(line).first.wait_for()
    changes.get_by_text("Crown: 1 piece can be cut down by 1/8″.").wait_for()
    accept(page)
    crown = saw_list(page).filter(has_text="Crown")
    crown.get_by_text("1 piece can be cut down by 1/8″.").wait_for()
    crown.get_by_text("thirty-seven and three eighths inches").wait_for()
